using SpanRater.Files;

namespace SpanRater.Cli.Commands;

/// <summary>The names that a shell may complete: bridge folders, members, load cases, vehicles, forms of truss. Never fails: no name is better than a message.</summary>
internal static class NamesToComplete
{
    /// <summary>Folders that hold a bridge, or may lead to one, below what was typed.</summary>
    public static IEnumerable<string> BridgeFolders(string typed)
    {
        string parent = Path.GetDirectoryName(typed) ?? "";
        string at = parent.Length == 0 ? "." : parent;
        if (!Directory.Exists(at))
        {
            return [];
        }

        return Directory.EnumerateDirectories(at)
            .Select(d => Path.Combine(parent, Path.GetFileName(d)))
            .Where(d => !Path.GetFileName(d).StartsWith('.') && d.StartsWith(typed, StringComparison.OrdinalIgnoreCase))
            .Select(d => File.Exists(Path.Combine(d, BridgeFolder.BridgeFile)) ? d : d + Path.DirectorySeparatorChar)
            .Order(StringComparer.Ordinal);
    }

    public static IEnumerable<string> Members(string? folder) => Read(folder)?.Truss.Members.Select(m => m.Name) ?? [];

    public static IEnumerable<string> Parts(string? folder) => Read(folder) is { } bridge ? BridgeInput.PartNames(bridge) : [];

    public static IEnumerable<string> Joints(string? folder) => Read(folder)?.Truss.Joints.Select(j => j.Name) ?? [];

    public static IEnumerable<string> Cases(string? folder) => Read(folder)?.Cases.Select(c => c.Name) ?? [];

    public static IEnumerable<string> Trusses(string? folder) => Read(folder)?.Deck.TrussNames ?? [];

    public static IEnumerable<string> Vehicles(string? folder) =>
        string.IsNullOrWhiteSpace(folder) || !Directory.Exists(folder)
            ? Catalogue.Shipped(new FindingList()).Names
            : BridgeFolder.Read(folder, []).Catalogue.Names;

    public static IEnumerable<string> Forms() => FormKind.All.Select(k => k.Key);

    private static Bridge? Read(string? folder) =>
        string.IsNullOrWhiteSpace(folder) || !Directory.Exists(folder) ? null : BridgeFolder.Read(folder, []).Bridge;
}
