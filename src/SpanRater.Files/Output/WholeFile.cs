namespace SpanRater.Files;

/// <summary>Writes files that appear whole or not at all: written beside, then renamed.</summary>
public static class WholeFile
{
    /// <summary>Writes a file.</summary>
    /// <param name="path">Where it shall stand; a file there is replaced.</param>
    /// <param name="bytes">What it shall hold.</param>
    /// <exception cref="IOException">It cannot be written; nothing is left behind.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written; nothing is left behind.</exception>
    public static void Write(string path, ReadOnlySpan<byte> bytes)
    {
        string beside = Beside(path, out string full);
        try
        {
            using (FileStream stream = new(beside, FileMode.CreateNew, FileAccess.Write))
            {
                stream.Write(bytes);
            }

            File.Move(beside, full, overwrite: true);
        }
        catch
        {
            File.Delete(beside);
            throw;
        }
    }

    /// <summary>Writes a file that is too long to be held as bytes.</summary>
    /// <param name="path">Where it shall stand; a file there is replaced.</param>
    /// <param name="write">Writes what it shall hold.</param>
    /// <exception cref="IOException">It cannot be written; nothing is left behind.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written; nothing is left behind.</exception>
    public static void Write(string path, Action<Stream> write)
    {
        ArgumentNullException.ThrowIfNull(write);
        string beside = Beside(path, out string full);
        try
        {
            using (FileStream stream = new(beside, FileMode.CreateNew, FileAccess.Write, FileShare.Read, 1 << 16))
            {
                write(stream);
            }

            File.Move(beside, full, overwrite: true);
        }
        catch
        {
            File.Delete(beside);
            throw;
        }
    }

    private static string Beside(string path, out string full)
    {
        full = Path.GetFullPath(path);
        if (Directory.Exists(full))
        {
            throw new IOException("it is a folder");
        }

        return $"{full}.{Guid.NewGuid():N}.part";
    }
}
