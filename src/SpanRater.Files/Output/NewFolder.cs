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

        if (files.FirstOrDefault(f => f.Name.Split('/').Any(p => !FileNames.IsSafe(p))) is { } stray)
        {
            throw new ArgumentException($"\"{stray.Name}\" is no name of a file within a folder on every system.", nameof(files));
        }

        string full = Path.TrimEndingDirectorySeparator(Path.GetFullPath(path));

        // Made whole beside its place, then moved: a move never replaces. An empty folder that is there makes way, unless it is the current one or a link, or the folder
        // above may not be written; then it is filled by one move for each of its entries.
        bool isFilled = Directory.Exists(full) && !MakesWay(full);
        string beside = isFilled ? Path.Combine(full, WholeFile.PartBeside("")) : WholeFile.PartBeside(full);
        var moved = new List<string>();
        try
        {
            foreach (NewFile file in files)
            {
                string at = Path.Combine([beside, .. file.Name.Split('/')]);
                Directory.CreateDirectory(Path.GetDirectoryName(at)!);
                WholeFile.WriteNew(at, stream => stream.Write(file.Bytes));
            }

            if (!isFilled)
            {
                if (Directory.Exists(full))
                {
                    Directory.Delete(full);
                }

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

    // The folder above must take a new one.
    private static bool MakesWay(string full)
    {
        if (new DirectoryInfo(full).LinkTarget is not null || (Directory.GetCurrentDirectory() + Path.DirectorySeparatorChar).StartsWith(full + Path.DirectorySeparatorChar, StringComparison.Ordinal))
        {
            return false;
        }

        string aside = WholeFile.PartBeside(full);
        try
        {
            Directory.CreateDirectory(aside);
            Directory.Delete(aside);
            return true;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return false;
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
