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
        string full = Path.GetFullPath(path);
        if (Directory.Exists(full))
        {
            throw new IOException("it is a folder");
        }

        string beside = $"{full}.{Guid.NewGuid():N}.part";
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
}
