namespace SpanRater.Files;

/// <summary>
/// Writes files that appear whole or not at all: written beside, flushed to the disk, then renamed. A process that is killed at any moment leaves the old
/// file, the new one, or none, and at most what was written beside: a file whose name ends in .part, which nothing reads and anyone may delete.
/// </summary>
public static class WholeFile
{
    /// <summary>Writes a file.</summary>
    /// <param name="path">Where it shall stand; a file there is replaced. A device, such as a printer or the null device, is written to.</param>
    /// <param name="bytes">What it shall hold.</param>
    /// <exception cref="IOException">It cannot be written; nothing is left behind.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written; nothing is left behind.</exception>
    public static void Write(string path, ReadOnlySpan<byte> bytes)
    {
        byte[] whole = bytes.ToArray();
        Write(path, stream => stream.Write(whole));
    }

    /// <summary>Writes a file that may be too long to be held as bytes.</summary>
    /// <param name="path">Where it shall stand; a file there is replaced. A device is written to.</param>
    /// <param name="write">Writes what it shall hold.</param>
    /// <exception cref="IOException">It cannot be written; nothing is left behind.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written; nothing is left behind.</exception>
    public static void Write(string path, Action<Stream> write) => Write(path, write, toDisk: true);

    /// <summary>
    /// Writes one of thousands of files, each of which is made again where it cannot be read back: not flushed to the disk, which costs more than the rest. A killed
    /// process leaves it whole or not there all the same; after a power cut it may be empty.
    /// </summary>
    /// <param name="path">Where it shall stand; a file there is replaced.</param>
    /// <param name="bytes">What it shall hold.</param>
    /// <exception cref="IOException">It cannot be written; nothing is left behind.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written; nothing is left behind.</exception>
    public static void WriteReplaceable(string path, ReadOnlyMemory<byte> bytes) => Write(path, stream => stream.Write(bytes.Span), toDisk: false);

    private static void Write(string path, Action<Stream> write, bool toDisk)
    {
        ArgumentNullException.ThrowIfNull(write);
        string full = Path.GetFullPath(path);
        if (Directory.Exists(full))
        {
            throw new IOException("it is a folder");
        }

        if (IsDevice(full))
        {
            // It holds no file that could be half, and must not be replaced by one.
            using FileStream device = new(full, FileMode.Open, FileAccess.Write);
            write(device);
            return;
        }

        string beside = PartBeside(full);
        try
        {
            WriteNew(beside, write, toDisk);
            File.Move(beside, full, overwrite: true);
        }
        catch
        {
            File.Delete(beside);
            throw;
        }
    }

    /// <summary>The name of what is written beside a file or folder until it is whole.</summary>
    /// <param name="full">The full path of the file or folder.</param>
    internal static string PartBeside(string full) => $"{full}.{Guid.NewGuid():N}.part";

    /// <summary>Writes a file that is not there yet.</summary>
    /// <param name="path">Its path.</param>
    /// <param name="write">Writes what it shall hold.</param>
    /// <param name="toDisk">Whether down to the disk: after a power cut a rename must not lead to a file without its bytes.</param>
    internal static void WriteNew(string path, Action<Stream> write, bool toDisk = true)
    {
        using FileStream stream = new(path, FileMode.CreateNew, FileAccess.Write, FileShare.Read, 1 << 16);
        write(stream);
        stream.Flush(flushToDisk: toDisk);
    }

    // What Unix keeps there are devices and the streams of processes; only the shared memory holds files.
    private static bool IsDevice(string full) =>
        !OperatingSystem.IsWindows()
        && (full.StartsWith("/dev/", StringComparison.Ordinal) || full.StartsWith("/proc/", StringComparison.Ordinal))
        && !full.StartsWith("/dev/shm/", StringComparison.Ordinal);
}
