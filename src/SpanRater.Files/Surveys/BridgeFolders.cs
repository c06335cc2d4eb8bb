namespace SpanRater.Files;

/// <summary>The bridge folders below a folder, itself among them, and what was passed over.</summary>
/// <param name="Found">Each with its path, and its path from the folder in forward slashes; "." is the folder itself. In ordinal order of the latter.</param>
/// <param name="NotSearched">Folders that were not searched, and why.</param>
public sealed record BridgeFolders(IReadOnlyList<(string Path, string Shown)> Found, IReadOnlyList<(string Shown, string Why)> NotSearched)
{
    // A folder whose bridge.toml is missing or misnamed is a broken bridge, and must not vanish.
    private static readonly string[] Marks = [BridgeFolder.BridgeFile, BridgeFolder.JointsFile, BridgeFolder.MembersFile];

    /// <summary>Searches a folder. Links are not followed, so that no bridge counts twice and no circle is walked; hidden folders are passed over.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="stop">Ends the search.</param>
    /// <exception cref="OperationCanceledException">The search was stopped.</exception>
    public static BridgeFolders Below(string folder, CancellationToken stop)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(folder);
        var found = new List<(string Path, string Shown)>();
        var passed = new List<(string Shown, string Why)>();
        var left = new Stack<(string Path, string Shown)>([(folder, ".")]);
        while (left.TryPop(out (string Path, string Shown) at))
        {
            stop.ThrowIfCancellationRequested();
            try
            {
                if (Marks.Any(m => Path.Exists(Path.Combine(at.Path, m))))
                {
                    found.Add(at);
                }

                foreach (DirectoryInfo below in new DirectoryInfo(at.Path).EnumerateDirectories())
                {
                    string shown = at.Shown == "." ? PrintableText.Of(below.Name) : $"{at.Shown}/{PrintableText.Of(below.Name)}";
                    if (below.LinkTarget is not null)
                    {
                        passed.Add((shown, "is a link, and links are not followed: name the folder that it leads to on its own."));
                    }
                    else if (!below.Name.StartsWith('.'))
                    {
                        left.Push((Path.Combine(at.Path, below.Name), shown));
                    }
                }
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                passed.Add((at.Shown, "could not be searched: access is denied, or it is gone."));
            }
        }

        return new BridgeFolders([.. found.OrderBy(f => f.Shown, StringComparer.Ordinal)], [.. passed.OrderBy(p => p.Shown, StringComparer.Ordinal)]);
    }
}
