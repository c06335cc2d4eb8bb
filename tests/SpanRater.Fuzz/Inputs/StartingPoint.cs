namespace SpanRater.Fuzz;

/// <summary>What reads the files of a starting point.</summary>
public enum InputKind
{
    /// <summary>A bridge folder.</summary>
    Bridge,

    /// <summary>A folder of vehicle catalogues.</summary>
    Catalogue,

    /// <summary>Answers to an exercise, and its key.</summary>
    Exercise,
}

/// <summary>Files that are read without a fault, from which spoiled ones are made.</summary>
/// <param name="Name">The folder they are from.</param>
/// <param name="Kind">What reads them.</param>
/// <param name="Files">Names and contents, in the order of names.</param>
/// <param name="IsSmall">True where a rating of it takes little time.</param>
public sealed record StartingPoint(string Name, InputKind Kind, IReadOnlyList<KeyValuePair<string, byte[]>> Files, bool IsSmall)
{
    /// <summary>The small bridge of every table, the samples with their variants, the shipped catalogues, and an exercise.</summary>
    /// <param name="root">The root of the repository.</param>
    /// <param name="exercise">A folder that holds answers.csv and key.csv.</param>
    public static IReadOnlyList<StartingPoint> All(string root, string exercise)
    {
        ArgumentNullException.ThrowIfNull(root);
        var all = new List<StartingPoint>();
        foreach (string bridge in Directory.EnumerateDirectories(Path.Combine(root, "tests", "SpanRater.Fuzz", "starts")).Order(StringComparer.Ordinal))
        {
            all.Add(Of(root, bridge, InputKind.Bridge, isSmall: true));
        }

        string[] samples = [.. Directory.EnumerateFiles(Path.Combine(root, "samples"), "bridge.toml", SearchOption.AllDirectories).Order(StringComparer.Ordinal)];
        all.AddRange(samples.Select(s => Of(root, Path.GetDirectoryName(s)!, InputKind.Bridge, isSmall: false)));
        all.Add(Of(root, Path.Combine(root, "vehicles"), InputKind.Catalogue, isSmall: true));
        all.Add(Of(root, exercise, InputKind.Exercise, isSmall: true));
        return all;
    }

    private static StartingPoint Of(string root, string folder, InputKind kind, bool isSmall) => new(
        Path.GetRelativePath(root, folder).Replace('\\', '/'),
        kind,
        [.. Directory.EnumerateFiles(folder).Where(IsRead).Order(StringComparer.Ordinal).Select(f => KeyValuePair.Create(Path.GetFileName(f), File.ReadAllBytes(f)))],
        isSmall);

    private static bool IsRead(string file) => Path.GetExtension(file) is ".csv" or ".toml";
}
