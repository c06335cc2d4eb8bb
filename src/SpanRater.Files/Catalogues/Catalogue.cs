using System.Reflection;

namespace SpanRater.Files;

/// <summary>An entry of a catalogue and where its name stands.</summary>
/// <param name="Load">The vehicle or loading.</param>
/// <param name="Where">Where its name stands.</param>
public sealed record CatalogueEntry(LiveLoad Load, Place Where)
{
    /// <summary>True where it comes with the program.</summary>
    public bool IsShipped { get; init; }
}

/// <summary>The vehicles and loadings in use: those shipped with the program, those added, and those of the bridge folder. One name space.</summary>
public sealed class Catalogue
{
    private readonly List<CatalogueEntry> entries = [];
    private readonly HashSet<string> named;

    private Catalogue(HashSet<string> named) => this.named = named;

    /// <summary>Every entry, shipped ones first.</summary>
    public IReadOnlyList<CatalogueEntry> Entries => entries;

    /// <summary>Every name.</summary>
    public IEnumerable<string> Names => entries.Select(e => e.Load.Name);

    /// <summary>The catalogue shipped with the program.</summary>
    /// <param name="findings">Takes what is wrong with it.</param>
    public static Catalogue Shipped(FindingList findings) => Read([], null, findings);

    /// <summary>The shipped catalogue with others added.</summary>
    /// <param name="paths">Catalogue files, or folders of them.</param>
    /// <param name="bridgeVehicles">Text and name of a bridge folder's own vehicles, or null.</param>
    /// <param name="findings">Takes what is wrong.</param>
    public static Catalogue Read(IReadOnlyList<string> paths, (string Text, string File)? bridgeVehicles, FindingList findings)
    {
        ArgumentNullException.ThrowIfNull(paths);
        ArgumentNullException.ThrowIfNull(findings);
        var read = new List<CatalogueEntry>();
        var named = new HashSet<string>(StringComparer.OrdinalIgnoreCase);
        foreach ((string file, string text) in ShippedFiles())
        {
            read.AddRange(ReadFile(text, file, findings, named).Select(e => e with { IsShipped = true }));
        }

        foreach (string path in paths.SelectMany(p => FilesOf(p, findings)))
        {
            if (TextFile.Read(path, path, findings) is { } text)
            {
                read.AddRange(ReadFile(text, path, findings, named));
            }
        }

        if (bridgeVehicles is { } own)
        {
            read.AddRange(ReadFile(own.Text, own.File, findings, named));
        }

        var catalogue = new Catalogue(named);
        catalogue.Add(read, findings);
        return catalogue;
    }

    /// <summary>The vehicle or loading of a name, whatever its case, or null.</summary>
    /// <param name="name">The name.</param>
    public LiveLoad? Find(string name) =>
        entries.Find(e => string.Equals(e.Load.Name, name, StringComparison.OrdinalIgnoreCase))?.Load;

    /// <summary>Whether some catalogue names it, even if it could not be read whole.</summary>
    /// <param name="name">The name.</param>
    public bool HasNamed(string name) => named.Contains(name);

    private static List<CatalogueEntry> ReadFile(string text, string file, FindingList findings, HashSet<string> named) =>
        file.EndsWith(".toml", StringComparison.OrdinalIgnoreCase)
            ? LoadingFile.Read(text, file, findings, named)
            : VehicleTable.Read(text, file, findings, named);

    private static IEnumerable<(string File, string Text)> ShippedFiles()
    {
        Assembly assembly = typeof(Catalogue).Assembly;
        foreach (string name in assembly.GetManifestResourceNames().Where(n => n.StartsWith("vehicles/", StringComparison.Ordinal)).Order(StringComparer.Ordinal))
        {
            using var reader = new StreamReader(assembly.GetManifestResourceStream(name)!);
            yield return (name, reader.ReadToEnd());
        }
    }

    private static string[] FilesOf(string path, FindingList findings)
    {
        if (!Directory.Exists(path))
        {
            return [path];
        }

        string[] files = [.. Directory.EnumerateFiles(path).Where(IsCatalogueFile).Order(StringComparer.Ordinal)];
        if (files.Length == 0)
        {
            findings.Error(new Place(path), "holds no catalogue: no .csv and no .toml file is in it.");
        }

        return files;
    }

    private static bool IsCatalogueFile(string path) => Path.GetExtension(path).ToUpperInvariant() is ".CSV" or ".TOML";

    private void Add(List<CatalogueEntry> read, FindingList findings)
    {
        var byName = new Dictionary<string, CatalogueEntry>(StringComparer.OrdinalIgnoreCase);
        foreach (CatalogueEntry entry in read)
        {
            if (byName.TryAdd(entry.Load.Name, entry))
            {
                entries.Add(entry);
            }
            else
            {
                findings.Error(entry.Where, $"the name \"{entry.Load.Name}\" is taken by {byName[entry.Load.Name].Where}{(byName[entry.Load.Name].IsShipped ? " (built in)" : "")}: vehicles and loadings share one name space, so give this one another, such as \"{entry.Load.Name}, ours\".");
            }
        }

        foreach (CatalogueEntry entry in read)
        {
            if (entry.Load is not Loading loading)
            {
                continue;
            }

            foreach (string name in loading.Vehicles)
            {
                int index = entries.FindIndex(e => e.Load is Vehicle && string.Equals(e.Load.Name, name, StringComparison.OrdinalIgnoreCase));
                if (index < 0)
                {
                    findings.Error(entry.Where, $"loading \"{loading.Name}\" names vehicle \"{name}\", which no catalogue has.{NearestName.Question(name, entries.Where(e => e.Load is Vehicle).Select(e => e.Load.Name))}");
                }
                else if (loading.HasLaneLoad && loading.Class == VehicleClass.Design && entries[index].Load is Vehicle { Class: VehicleClass.Design } vehicle)
                {
                    // A design truck whose standard form has a lane load is never rated by its axles alone.
                    entries[index] = entries[index] with { Load = vehicle with { LaneLoading = loading.Name } };
                }
            }
        }
    }
}
