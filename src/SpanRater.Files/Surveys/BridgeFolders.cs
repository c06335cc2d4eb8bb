namespace SpanRater.Files;

/// <summary>What a survey passed over on its way.</summary>
/// <param name="Shown">Its path from the folder that was surveyed.</param>
/// <param name="IsLink">Whether it is a link that leads to a folder; else a folder that could not be searched, or a link that leads nowhere: bridges may be lost there.</param>
/// <param name="Why">Why, with the mend.</param>
public sealed record PassedOver(string Shown, bool IsLink, string Why);

/// <summary>The bridge folders below a folder, itself among them, and what was passed over.</summary>
/// <param name="Found">Each with its path, and its path from the folder in forward slashes; "." is the folder itself. In ordinal order of the latter.</param>
/// <param name="NotSearched">Links and folders that were not searched.</param>
public sealed record BridgeFolders(IReadOnlyList<(string Path, string Shown)> Found, IReadOnlyList<PassedOver> NotSearched)
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
        var passed = new List<PassedOver>();
        var left = new Stack<(string Path, string Shown)>([(folder, ".")]);
        while (left.TryPop(out (string Path, string Shown) at))
        {
            stop.ThrowIfCancellationRequested();

            // A name tells a bridge, even where nothing of the folder may be opened.
            bool isBridge = false;
            try
            {
                foreach (FileSystemInfo below in new DirectoryInfo(at.Path).EnumerateFileSystemInfos())
                {
                    isBridge |= Marks.Contains(below.Name);
                    string shown = at.Shown == "." ? PrintableText.Of(below.Name) : $"{at.Shown}/{PrintableText.Of(below.Name)}";
                    if (below.LinkTarget is not null)
                    {
                        PassLink(below, shown, passed);
                    }
                    else if (below is DirectoryInfo && !below.Name.StartsWith('.'))
                    {
                        left.Push((Path.Combine(at.Path, below.Name), shown));
                    }
                }
            }
            catch (Exception e) when (e is IOException or UnauthorizedAccessException)
            {
                passed.Add(new PassedOver(at.Shown, IsLink: false, "could not be searched: access is denied, or it is gone: see that you may read it, and run the survey again."));
            }

            if (isBridge)
            {
                found.Add(at);
            }
        }

        return new BridgeFolders([.. found.OrderBy(f => f.Shown, StringComparer.Ordinal)], [.. passed.OrderBy(p => p.Shown, StringComparer.Ordinal)]);
    }

    // A link to a file is read where a bridge has it; editors leave hidden ones that lead nowhere.
    private static void PassLink(FileSystemInfo link, string shown, List<PassedOver> passed)
    {
        if (Directory.Exists(link.FullName))
        {
            passed.Add(new PassedOver(shown, IsLink: true, "is a link, and links are not followed: name the folder that it leads to on its own."));
        }
        else if (!link.Name.StartsWith('.') && LeadsNowhere(link))
        {
            passed.Add(new PassedOver(shown, IsLink: false, "is a link that leads nowhere, or where access is denied: if a bridge was there, bring its folder back; else delete the link."));
        }
    }

    private static bool LeadsNowhere(FileSystemInfo link)
    {
        try
        {
            return link.ResolveLinkTarget(returnFinalTarget: true) is not { Exists: true };
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            // Links in a circle.
            return true;
        }
    }
}
