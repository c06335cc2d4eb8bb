namespace SpanRater.Files;

/// <summary>A file of a folder that is written.</summary>
/// <param name="Name">Its path within the folder, parts joined by a slash.</param>
/// <param name="Bytes">What it shall hold.</param>
public sealed record NewFile(string Name, byte[] Bytes);

/// <summary>Writes a folder that was not there, or was empty: all of its files or none, and never over anything.</summary>
public static class NewFolder
{
    /// <summary>Why a folder cannot be written there; null where it can.</summary>
    /// <param name="path">The folder.</param>
    public static string? WhyNot(string path)
    {
        if (string.IsNullOrWhiteSpace(path))
        {
            return "a folder needs a name.";
        }

        if (File.Exists(path))
        {
            return "is a file: name a folder that is not there yet.";
        }

        if (Directory.Exists(path))
        {
            return Directory.EnumerateFileSystemEntries(path).Any() ? "holds files already, and nothing is ever overwritten: name a folder that is not there yet, or an empty one." : null;
        }

        string parent = ParentOf(path);
        return Directory.Exists(parent) ? null : $"cannot be made: the folder {parent} is not there.";
    }

    /// <summary>Writes the folder.</summary>
    /// <param name="path">Where it shall stand; not there yet, or empty.</param>
    /// <param name="files">Its files.</param>
    /// <exception cref="IOException">It cannot be written, or something stands there; nothing is left behind.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be written; nothing is left behind.</exception>
    public static void Write(string path, IReadOnlyList<NewFile> files)
    {
        ArgumentNullException.ThrowIfNull(files);
        if (WhyNot(path) is { } why)
        {
            throw new IOException(why);
        }

        string full = Path.TrimEndingDirectorySeparator(Path.GetFullPath(path));

        // Made whole beside its place, or within it where the empty folder is there, then moved: a move never replaces.
        bool isThere = Directory.Exists(full);
        string beside = isThere ? Path.Combine(full, $".{Guid.NewGuid():N}.part") : $"{full}.{Guid.NewGuid():N}.part";
        var moved = new List<string>();
        try
        {
            foreach (NewFile file in files)
            {
                string at = Path.Combine([beside, .. file.Name.Split('/')]);
                Directory.CreateDirectory(Path.GetDirectoryName(at)!);
                using FileStream stream = new(at, FileMode.CreateNew, FileAccess.Write);
                stream.Write(file.Bytes);
            }

            if (!isThere)
            {
                Directory.Move(beside, full);
                return;
            }

            foreach (string entry in Directory.EnumerateFileSystemEntries(beside).Order(StringComparer.Ordinal))
            {
                string to = Path.Combine(full, Path.GetFileName(entry));
                Directory.Move(entry, to);
                moved.Add(to);
            }

            Directory.Delete(beside);
        }
        catch
        {
            foreach (string entry in moved)
            {
                Remove(entry);
            }

            Remove(beside);
            throw;
        }
    }

    private static string ParentOf(string path) =>
        Path.GetDirectoryName(Path.TrimEndingDirectorySeparator(Path.GetFullPath(path))) is { Length: > 0 } parent ? parent : Path.GetFullPath(path);

    private static void Remove(string entry)
    {
        if (Directory.Exists(entry))
        {
            Directory.Delete(entry, recursive: true);
        }
        else
        {
            File.Delete(entry);
        }
    }
}
