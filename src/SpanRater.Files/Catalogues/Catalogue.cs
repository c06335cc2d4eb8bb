using System.Globalization;
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
    // The shipped files are the same for every bridge: they are read once.
    private static readonly Lazy<ShippedParts> ShippedOnce = new(ReadShipped);
    private static readonly Lazy<(Catalogue Catalogue, FindingList Findings)> ShippedAlone = new(() =>
    {
        var findings = new FindingList();
        return (Read(ShippedOnce.Value.Copy(), [], [], findings), findings);
    });

    private readonly List<CatalogueEntry> entries = [];
    private readonly Dictionary<string, int> places = new(StringComparer.OrdinalIgnoreCase);
    private readonly HashSet<string> named;

    private Catalogue(HashSet<string> named) => this.named = named;

    /// <summary>Every entry, shipped ones first.</summary>
    public IReadOnlyList<CatalogueEntry> Entries => entries;

    /// <summary>Every name.</summary>
    public IEnumerable<string> Names => entries.Select(e => e.Load.Name);

    /// <summary>The catalogue shipped with the program.</summary>
    /// <param name="findings">Takes what is wrong with it.</param>
    public static Catalogue Shipped(FindingList findings) => Read([], [], findings);

    /// <summary>The files of the shipped catalogue as they stand in the program, by their names without a folder.</summary>
    public static IReadOnlyList<NewFile> ShippedAsFiles() => [.. ShippedFiles().Select(f => new NewFile(Path.GetFileName(f.File), System.Text.Encoding.UTF8.GetBytes(f.Text)))];

    /// <summary>The shipped catalogue with others added.</summary>
    /// <param name="paths">Catalogue files, or folders of them.</param>
    /// <param name="own">Texts and names of a bridge folder's own vehicles and loadings.</param>
    /// <param name="findings">Takes what is wrong.</param>
    public static Catalogue Read(IReadOnlyList<string> paths, IReadOnlyList<(string Text, string File)> own, FindingList findings)
    {
        ArgumentNullException.ThrowIfNull(paths);
        ArgumentNullException.ThrowIfNull(own);
        ArgumentNullException.ThrowIfNull(findings);
        if (paths.Count > 0 || own.Count > 0)
        {
            return Read(ShippedOnce.Value.Copy(), paths, own, findings);
        }

        findings.AddAll(ShippedAlone.Value.Findings);
        return ShippedAlone.Value.Catalogue;
    }

    private static Catalogue Read(ShippedParts shipped, IReadOnlyList<string> paths, IReadOnlyList<(string Text, string File)> own, FindingList findings)
    {
        findings.AddAll(shipped.Findings);
        (List<CatalogueEntry> read, List<LoadingDraft> drafts, HashSet<string> named) = (shipped.Entries, shipped.Drafts, shipped.Named);
        int shippedDrafts = drafts.Count;
        foreach (string path in paths.SelectMany(p => FilesOf(p, findings)))
        {
            if (TextFile.Read(path, path, findings) is { } text)
            {
                read.AddRange(ReadFile(text, path, findings, named, drafts));
            }
        }

        foreach ((string text, string file) in own)
        {
            read.AddRange(ReadFile(text, file, findings, named, drafts));
        }

        var catalogue = new Catalogue(named);
        catalogue.Add(read, findings);
        catalogue.Add([.. drafts.Select((d, i) => (d, i < shippedDrafts))], findings);
        return catalogue;
    }

    /// <summary>The vehicle or loading of a name, whatever its case, or null.</summary>
    /// <param name="name">The name.</param>
    public LiveLoad? Find(string name) =>
        places.TryGetValue(name, out int at) ? entries[at].Load : null;

    /// <summary>Whether some catalogue names it, even if it could not be read whole.</summary>
    /// <param name="name">The name.</param>
    public bool HasNamed(string name) => named.Contains(name);

    private static List<CatalogueEntry> ReadFile(string text, string file, FindingList findings, HashSet<string> named, List<LoadingDraft> drafts) =>
        file.EndsWith(".toml", StringComparison.OrdinalIgnoreCase)
            ? LoadingFile.Read(text, file, findings, named, drafts)
            : VehicleTable.Read(text, file, findings, named);

    private static ShippedParts ReadShipped()
    {
        var parts = new ShippedParts([], [], new HashSet<string>(StringComparer.OrdinalIgnoreCase), new FindingList());
        foreach ((string file, string text) in ShippedFiles())
        {
            parts.Entries.AddRange(ReadFile(text, file, parts.Findings, parts.Named, parts.Drafts).Select(e => e with { IsShipped = true }));
        }

        return parts;
    }

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

        string[] files;
        try
        {
            files = [.. Directory.EnumerateFiles(path).Where(IsCatalogueFile).Order(StringComparer.Ordinal)];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            findings.Error(new Place(path), "its files cannot be listed: check that you may read the folder.");
            return [];
        }

        if (files.Length == 0)
        {
            findings.Error(new Place(path), "holds no catalogue: no .csv and no .toml file is in it.");
        }

        return files;
    }

    private static bool IsCatalogueFile(string path) => Path.GetExtension(path).ToUpperInvariant() is ".CSV" or ".TOML";

    private void Add(IReadOnlyList<CatalogueEntry> read, FindingList findings)
    {
        foreach (CatalogueEntry entry in read)
        {
            if (places.TryAdd(entry.Load.Name, entries.Count))
            {
                entries.Add(entry);
            }
            else
            {
                CatalogueEntry first = entries[places[entry.Load.Name]];
                findings.Error(entry.Where, $"the name \"{entry.Load.Name}\" is taken by {first.Where}{(first.IsShipped ? " (built in)" : "")}: vehicles and loadings share one name space, so give this one another, such as \"{entry.Load.Name}, ours\".");
            }
        }
    }

    // A loading may name vehicles of every catalogue, so that they are all read first.
    private void Add(IReadOnlyList<(LoadingDraft Draft, bool IsShipped)> drafts, FindingList findings)
    {
        var loadings = new List<CatalogueEntry>();
        foreach ((LoadingDraft draft, bool isShipped) in drafts)
        {
            var vehicles = new List<Vehicle>();
            foreach (string name in draft.Vehicles)
            {
                if (!places.TryGetValue(name, out int index) || entries[index].Load is not Vehicle vehicle)
                {
                    if (!named.Contains(name))
                    {
                        findings.Error(draft.Where, $"loading \"{draft.Loading.Name}\" names vehicle \"{name}\", which no catalogue has.{NearestName.Question(name, entries.Where(e => e.Load is Vehicle).Select(e => e.Load.Name))}");
                    }
                    else if (Find(name) is { } other)
                    {
                        findings.Error(draft.Where, $"loading \"{draft.Loading.Name}\" names \"{other.Name}\", which is no vehicle on axles: a loading is made of those.");
                    }

                    continue;
                }

                vehicles.Add(vehicle);

                // A design truck whose standard form has a lane load is never rated by its axles alone; the first such form is named,
                // so that a loading of one's own does not take the place of the standard one.
                if (draft.Loading is { Lane: not null, Class: VehicleClass.Design } && vehicle is { Class: VehicleClass.Design, LaneLoading: null })
                {
                    entries[index] = entries[index] with { Load = vehicle with { LaneLoading = draft.Loading.Name } };
                }
            }

            if (vehicles.Count == draft.Vehicles.Count && TrainsOf(draft, vehicles, findings) is { } trains)
            {
                Loading whole = draft.Loading with { Trains = trains };
                UnlikelyLoads.RefuseStrayWeight(whole, draft.WeightAt, findings);
                loadings.Add(new CatalogueEntry(whole, draft.Where) { IsShipped = isShipped });
            }
        }

        Add(loadings, findings);
    }

    private static List<Vehicle>? TrainsOf(LoadingDraft draft, List<Vehicle> vehicles, FindingList findings)
    {
        Vehicle Scaled(Vehicle v) => draft.Times == 1
            ? v with { Class = draft.Loading.Class }
            : v with { Name = string.Create(CultureInfo.InvariantCulture, $"{draft.Times:0.###} {v.Name}"), Class = draft.Loading.Class, Train = v.Train.Times(draft.Times) };
        if (!draft.InOneLane || vehicles.Count < 2)
        {
            return [.. vehicles.Select(Scaled)];
        }

        if (draft.Headway is not { } headway)
        {
            return null;
        }

        if (vehicles.Sum(v => v.Train.Gaps.Count(g => g.Varies)) + (headway.Varies ? vehicles.Count - 1 : 0) > AxleTrain.MostVaryingGaps)
        {
            findings.Error(draft.Where, $"loading \"{draft.Loading.Name}\" has more than {AxleTrain.MostVaryingGaps} gaps that vary, headways among them: fix some of them.");
            return null;
        }

        if (vehicles.Sum(v => v.Train.Loads.Count) > InputLimits.MostAxles)
        {
            findings.Error(draft.Where, string.Create(CultureInfo.InvariantCulture, $"loading \"{draft.Loading.Name}\" has more than {InputLimits.MostAxles} axles in one lane: write fewer vehicles."));
            return null;
        }

        if (vehicles.Select(v => v.Train.RelievingAxles).Distinct().Count() > 1)
        {
            findings.Error(draft.Where, $"loading \"{draft.Loading.Name}\" joins vehicles whose relieving axles are left out with others whose axles all count: such a row has no rule.");
            return null;
        }

        // The narrowest gauge brings most to a truss, and stands for all.
        return
        [
            Scaled(new Vehicle(
                string.Join(" + ", vehicles.Select(v => v.Name)),
                draft.Loading.Class,
                vehicles.Skip(1).Aggregate(vehicles[0].Train, (train, v) => train.FollowedBy(headway, v.Train)),
                vehicles.Min(v => v.Gauge),
                draft.Loading.Source)),
        ];
    }

    private sealed record ShippedParts(List<CatalogueEntry> Entries, List<LoadingDraft> Drafts, HashSet<string> Named, FindingList Findings)
    {
        /// <summary>A copy that other catalogues may be added to.</summary>
        public ShippedParts Copy() => new([.. Entries], [.. Drafts], new HashSet<string>(Named, Named.Comparer), Findings);
    }
}
