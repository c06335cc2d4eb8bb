namespace SpanRater.Files;

/// <summary>Reads a bridge: a folder with one bridge.toml and tables.</summary>
public static class BridgeFolder
{
    /// <summary>What is said once about a bridge.</summary>
    public const string BridgeFile = "bridge.toml";

    /// <summary>The table of joints.</summary>
    public const string JointsFile = "joints.csv";

    /// <summary>The table of members.</summary>
    public const string MembersFile = "members.csv";

    /// <summary>The table of static loads.</summary>
    public const string LoadsFile = "loads.csv";

    /// <summary>The table of what the dead load is made of.</summary>
    public const string DeadFile = "dead.csv";

    /// <summary>The bridge's own vehicles.</summary>
    public const string VehiclesFile = "vehicles.csv";

    /// <summary>The bridge's own loadings, crowds and tracked vehicles.</summary>
    public const string LoadingsFile = "vehicles.toml";

    /// <summary>The user's own partial factors.</summary>
    public const string FactorsFile = "factors.toml";

    /// <summary>The table of what members are made of.</summary>
    public const string SectionsFile = "sections.csv";

    /// <summary>The table of what holds the parts of built-up sections together.</summary>
    public const string LacingFile = "lacing.csv";

    /// <summary>The table of the parts of the floor.</summary>
    public const string FloorFile = "floor.csv";

    /// <summary>The table of connections.</summary>
    public const string ConnectionsFile = "connections.csv";

    /// <summary>The table of what is packed on pins.</summary>
    public const string PackingFile = "packing.csv";

    /// <summary>The table of what was seen on the members.</summary>
    public const string FindingsFile = "findings.csv";

    /// <summary>What the members are made of.</summary>
    public const string MaterialsFile = "materials.toml";

    /// <summary>More crossings than these are told in one warning: a web of two systems has one in every panel.</summary>
    private const int MostCrossingsToldApart = 3;

    private static readonly string[] KnownFiles = [BridgeFile, JointsFile, MembersFile, SectionsFile, LacingFile, MaterialsFile, FloorFile, ConnectionsFile, PackingFile, FindingsFile, DeadFile, LoadsFile, VehiclesFile, LoadingsFile, FactorsFile];

    /// <summary>Reads everything in the folder and finds every fault in one go.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="cataloguePaths">Catalogues to add to the shipped ones.</param>
    public static BridgeReading Read(string folder, IReadOnlyList<string> cataloguePaths)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(folder);
        var findings = new FindingList();
        if (!IsBridgeFolder(folder, findings))
        {
            return new BridgeReading(null, Catalogue.Shipped(findings), DisplayUnits.Si, findings, new Place(folder));
        }

        SayWhatIsUnknown(folder, findings);
        JointsTable? joints = ReadTable(folder, JointsFile, findings, JointsTable.Read);
        MembersTable? members = ReadTable(folder, MembersFile, findings, MembersTable.Read);
        (string Text, string File)[] own =
        [
            .. ((string[])[VehiclesFile, LoadingsFile]).Where(f => Exists(folder, f))
                .Select(f => (Text: TextFile.Read(Path.Combine(folder, f), f, findings), File: f)).Where(f => f.Text is not null).Select(f => (f.Text!, f.File)),
        ];
        Catalogue catalogue = Catalogue.Read(cataloguePaths, own, findings);

        BridgeToml? said = TextFile.Read(Path.Combine(folder, BridgeFile), BridgeFile, findings) is { } toml
            ? BridgeToml.Read(toml, BridgeFile, catalogue, FactorsOf(folder, findings), findings)
            : null;

        MaterialsToml? materials = Exists(folder, MaterialsFile)
            ? ReadTable(folder, MaterialsFile, findings, (text, file, list) => MaterialsToml.Read(text, file, said?.Built, said is not null, list))
            : null;

        SectionsTable? sections = Exists(folder, SectionsFile) ? ReadTable(folder, SectionsFile, findings, SectionsTable.Read) : null;
        LacingTable? lacing = Exists(folder, LacingFile) ? ReadTable(folder, LacingFile, findings, (text, file, list) => LacingTable.Read(text, file, sections, list)) : null;
        members?.Complete(sections, materials);
        Truss? truss = joints is null || members is null ? null : TrussOf(joints, members, findings);
        FloorTable? floor = Exists(folder, FloorFile)
            ? ReadTable(folder, FloorFile, findings, (text, file, list) => FloorTable.Read(text, file, members?.Members.ConvertAll(m => m.Name), sections, materials, list))
            : null;
        FindingsTable? seen = Exists(folder, FindingsFile)
            ? ReadTable(folder, FindingsFile, findings, (text, file, list) => FindingsTable.Read(text, file, members?.Members.ConvertAll(m => m.Name), [.. floor?.NamesToFind ?? []], said?.Deck, said?.Built, SectionOf, list))
            : null;
        MemberSection? SectionOf(string member) =>
            members?.Members.FindIndex(m => m.Name == member) is { } at and >= 0 && members.Holds[at].Section is { } name ? sections?.Find(name) : floor?.SectionOf(member);

        DeadTable? dead = Exists(folder, DeadFile) ? ReadTable(folder, DeadFile, findings, (text, file, list) => DeadTable.Read(text, file, joints, said?.Deck, list)) : null;
        LoadsTable? loads = Exists(folder, LoadsFile) ? ReadTable(folder, LoadsFile, findings, (text, file, list) => LoadsTable.Read(text, file, joints, list)) : null;
        DeadLoads? deadLoads = truss is null || said is null ? null : DeadLoads.Of(truss, said, members!, sections, materials, dead, loads, findings);

        if (members is not null)
        {
            MemberMakes.Check(members, sections, materials, findings);
        }

        (IReadOnlyList<MemberMake?> Left, IReadOnlyList<MemberMake?>? Right) makes = truss is null || said is null ? ([], null)
            : new MemberMakes(members!, sections, lacing, materials, seen, said, findings).On(truss);
        Floor? parts = floor is null || truss is null || said is null || truss.Stations.Count < 2 ? null : new FloorParts(floor, truss, said, seen, dead, deadLoads!.Cases, findings).Put();
        if (floor is null && said?.Floor is { } settings)
        {
            findings.Warning(settings.Where, $"[floor] says what the floor bears, and there is no {FloorFile}: it has no effect.");
        }

        IReadOnlyList<Connection> connections = ConnectionsOf(folder, truss, materials, said?.Built, [.. members?.Members.Select(m => m.Name) ?? [], .. floor?.Names ?? []], findings);
        Bridge? bridge = findings.HasErrors || truss is null || said is null
            ? null
            : new Bridge(said.Name, said.Built, truss, said.Deck, said.Rating, deadLoads!.Cases, members!.Capacities) { RightCases = deadLoads.RightCases, DeadAccount = deadLoads.Account, Makes = makes.Left, RightMakes = makes.Right, Floor = parts, Connections = connections };
        return new BridgeReading(bridge, catalogue, joints?.Units ?? DisplayUnits.Si, findings, said?.MethodPlace ?? new Place(BridgeFile)) { Sections = sections, Seen = seen, Materials = materials };
    }

    private static List<Connection> ConnectionsOf(string folder, Truss? truss, MaterialsToml? materials, int? built, IReadOnlyList<string> otherNames, FindingList findings)
    {
        PackingTable? packing = Exists(folder, PackingFile) ? ReadTable(folder, PackingFile, findings, PackingTable.Read) : null;
        if (!Exists(folder, ConnectionsFile))
        {
            if (packing is { Bars: [var first, ..] })
            {
                findings.Error(first.Row["pin"].Where, $"pin \"{first.Pin}\" is packed, and there is no {ConnectionsFile}: write its joint and diameter there.");
            }

            return [];
        }

        return truss is null ? [] : ReadTable(folder, ConnectionsFile, findings, (text, file, list) => ConnectionsTable.Read(text, file, truss, packing, materials, built, otherNames, list)) ?? [];
    }

    private static (bool AreThere, PartialFactorRating? Method) FactorsOf(string folder, FindingList findings) =>
        (Exists(folder, FactorsFile), Exists(folder, FactorsFile) ? ReadTable(folder, FactorsFile, findings, FactorsToml.Read) : null);

    // A link that leads nowhere is there all the same: it is told when it is read, and never passed over.
    private static bool Exists(string folder, string file)
    {
        string path = Path.Combine(folder, file);
        return Path.Exists(path) || new FileInfo(path).LinkTarget is not null;
    }

    private static bool IsBridgeFolder(string folder, FindingList findings)
    {
        if (File.Exists(folder))
        {
            findings.Error(new Place(folder), $"is a file: name the bridge folder, the one that holds {BridgeFile}.");
            return false;
        }

        if (!Directory.Exists(folder))
        {
            findings.Error(new Place(folder), $"is not there: name a bridge folder, one that holds {BridgeFile}, {JointsFile} and {MembersFile}.");
            return false;
        }

        string[] missing = [.. new[] { BridgeFile, JointsFile, MembersFile }.Where(f => !Exists(folder, f))];
        if (missing.Length == 3)
        {
            findings.Error(new Place(folder), $"is not a bridge folder: it holds no {BridgeFile}, no {JointsFile} and no {MembersFile}.");
            return false;
        }

        foreach (string file in missing)
        {
            findings.Error(new Place(file), $"is missing from the bridge folder {folder}.");
        }

        // What is there is read all the same, so that its faults are told in the same go.
        return missing.Length == 0;
    }

    private static void SayWhatIsUnknown(string folder, FindingList findings)
    {
        string[] paths;
        try
        {
            paths = [.. Directory.EnumerateFiles(folder).Order(StringComparer.Ordinal)];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            findings.Error(new Place(folder), "its files cannot be listed: check that you may read the folder.");
            return;
        }

        foreach (string path in paths)
        {
            string file = Path.GetFileName(path);
            if (Path.GetExtension(file).ToUpperInvariant() is ".CSV" or ".TOML" && !KnownFiles.Contains(file))
            {
                findings.Error(new Place(file), $"is not a file of a bridge folder.{NearestName.Question(file, KnownFiles)} Its tables are {string.Join(", ", KnownFiles)}; notes go in .md or .txt files.");
            }
        }
    }

    private static T? ReadTable<T>(string folder, string file, FindingList findings, Func<string, string, FindingList, T?> read)
        where T : class =>
        TextFile.Read(Path.Combine(folder, file), file, findings) is { } text ? read(text, file, findings) : null;

    private static Truss? TrussOf(JointsTable joints, MembersTable members, FindingList findings)
    {
        var wording = new TrussFaultWording(joints, members);
        if (!joints.IsWhole)
        {
            // Geometry has to wait until every joint has its place; names need not.
            foreach (TrussFault.UnknownJoint fault in members.UnknownJoints(joints.Names))
            {
                (Place where, string what) = wording.Of(fault);
                findings.Error(where, what);
            }

            return null;
        }

        // The truss itself is not made of more, so that nobody waits for hours.
        foreach ((string file, string what, int count, int most) in ((string, string, int, int)[])
            [(JointsFile, "joints", joints.Joints.Count, InputLimits.MostJoints), (MembersFile, "members", members.Members.Count, InputLimits.MostMembers)])
        {
            if (count > most)
            {
                findings.Error(new Place(file), string.Create(System.Globalization.CultureInfo.InvariantCulture, $"has {count:N0} {what}, and a truss of at most {most:N0} is solved: give one span by itself."));
            }
        }

        if (joints.Joints.Count > InputLimits.MostJoints || members.Members.Count > InputLimits.MostMembers)
        {
            return null;
        }

        TrussCheck check = Truss.Create(joints.Joints, members.Members);
        TrussFault.CrossingMembers[] crossings = [.. check.Faults.OfType<TrussFault.CrossingMembers>()];
        bool manyCross = crossings.Length > MostCrossingsToldApart;
        if (manyCross)
        {
            (Place where, string what) = wording.OfMany(crossings);
            findings.Warning(where, what);
        }

        foreach (TrussFault fault in check.Faults.Where(f => !manyCross || f is not TrussFault.CrossingMembers))
        {
            (Place where, string what) = wording.Of(fault);
            if (fault.Severity == FaultSeverity.Error)
            {
                findings.Error(where, what);
            }
            else
            {
                findings.Warning(where, what);
            }
        }

        if (check.Truss is { } truss && SolvableTruss.Of(truss).Refusal is Refusal.NoAreas noAreas)
        {
            foreach (string name in noAreas.Members)
            {
                findings.Warning(members.PlaceOf(truss.FindMember(name)!.Value, "area"), $"member \"{name}\" has no area, and the truss is redundant: its stiffness divides the forces. Write its area.");
            }
        }

        return check.Truss;
    }
}
