namespace SpanRater.Files;

/// <summary>connections.csv: pins, eyebar heads, pin plates, rivets, bolts and gusset plates, one connection a row, with what packing.csv says of the pins.</summary>
internal sealed class ConnectionsTable
{
    private static readonly TableColumn[] Columns =
    [
        new("connection", Required: true),
        new("kind", Required: true),
        new("joint", Required: true),
        new("member"),
        new("material"),
        new("grade"),
        new("count", Quantity.Number),
        Inches("diameter"),
        Inches("thickness"),
        Inches("remaining"),
        Inches("width"),
        Inches("hole"),
        new("planes", Quantity.Number),
        new("lines", Quantity.Number),
        new("per line", Quantity.Number),
        Inches("gauge"),
        Inches("pitch"),
        Inches("edge"),
        Inches("middle length"),
        Inches("length"),
        Inches("holes"),
        new("source"),
    ];

    private readonly Truss truss;
    private readonly FindingList findings;
    private readonly MaterialsToml? materials;
    private readonly int? built;
    private readonly List<(TableRow Row, Connection Connection)> read = [];

    private ConnectionsTable(Truss truss, MaterialsToml? materials, int? built, FindingList findings)
    {
        this.truss = truss;
        this.materials = materials;
        this.built = built;
        this.findings = findings;
    }

    /// <summary>The connections; null where the table cannot be used.</summary>
    /// <param name="text">The text.</param>
    /// <param name="file">The file's name in findings.</param>
    /// <param name="truss">The truss.</param>
    /// <param name="packing">What is packed on pins; null where there is no such table.</param>
    /// <param name="materials">The materials; null where there are none.</param>
    /// <param name="built">The year the bridge was built; null where it is not said.</param>
    /// <param name="otherNames">Names of members and parts of the floor, which a connection may not have.</param>
    /// <param name="findings">Takes what is wrong.</param>
    public static List<Connection>? Read(string text, string file, Truss truss, PackingTable? packing, MaterialsToml? materials, int? built, IReadOnlyList<string> otherNames, FindingList findings)
    {
        if (TableReader.Read(text, file, Columns, findings) is not { } table)
        {
            return null;
        }

        var connections = new ConnectionsTable(truss, materials, built, findings);
        var pins = new List<string>();
        foreach (TableRow row in table.Rows)
        {
            connections.Add(row, packing, otherNames, pins);
        }

        if (table.Rows.Count == 0)
        {
            findings.Warning(new Place(file), "holds no connection: write a row for each, or remove the file.");
        }

        foreach (var stray in packing?.Bars.Where(b => !pins.Contains(b.Pin)).DistinctBy(b => b.Pin) ?? [])
        {
            findings.Error(stray.Row["pin"].Where, $"pin \"{stray.Pin}\" is packed, and {BridgeFolder.ConnectionsFile} has no pin of that name.{NearestName.Question(stray.Pin, pins)}");
        }

        return table.HasBrokenRows ? null : connections.read.ConvertAll(r => r.Connection);
    }

    private static TableColumn Inches(string name) => new(name, Quantity.Length, Units: "in or mm");

    private void Add(TableRow row, PackingTable? packing, IReadOnlyList<string> otherNames, List<string> pins)
    {
        string? name = row.Required("connection"), word = row.Required("kind"), jointName = row.Required("joint");
        int kind = Array.FindIndex(ConnectionWords.Kinds, k => string.Equals(k.Word, word, StringComparison.OrdinalIgnoreCase));
        if (word is not null && kind < 0)
        {
            findings.Error(row["kind"].Where, $"kind \"{word}\" is not known.{NearestName.Question(word, ConnectionWords.Kinds.Select(k => k.Word))} Write {string.Join(", ", ConnectionWords.Kinds.Select(k => k.Word))}.");
        }

        int? joint = jointName is null ? null : truss.FindJoint(jointName);
        if (jointName is not null && joint is null)
        {
            findings.Error(row["joint"].Where, $"joint \"{jointName}\" is not in {BridgeFolder.JointsFile}.{NearestName.Question(jointName, truss.Joints.Select(j => j.Name))}");
        }

        if (name is not null && read.Find(r => r.Connection.Name == name).Row is { } first)
        {
            findings.Error(row["connection"].Where, $"connection \"{name}\" is there twice, here and on line {first.Where.Line}: give each a name of its own.");
            return;
        }

        if (name is not null && otherNames.Contains(name))
        {
            findings.Error(row["connection"].Where, $"connection \"{name}\" has the name of a member or part: give it another.");
            return;
        }

        if (name is null || kind < 0)
        {
            return;
        }

        if (ConnectionWords.Kinds[kind].Kind == PartKind.Pin)
        {
            pins.Add(name);
        }

        Material? material = MaterialOf(row);
        int? member = joint is null ? null : MemberOf(row, joint.Value);
        bool isWhole = IsWhole(row, ConnectionWords.Kinds[kind].Kind, !row["member"].IsBlank);
        if (joint is { } at && isWhole && Made(row, name, ConnectionWords.Kinds[kind].Kind, at, member, packing) is { } connection)
        {
            read.Add((row, connection with { Material = material, Size = SizeOf(row, ConnectionWords.Kinds[kind].Kind) }));
        }
    }

    private static MeasuredSize SizeOf(TableRow row, PartKind kind)
    {
        double size = row.Value(SizeColumn(kind))!.Value;
        return new MeasuredSize(size, row.Value("remaining") ?? size, row["source"].Text.Trim());
    }

    private static string SizeColumn(PartKind kind) => kind == PartKind.Pin ? "diameter" : "thickness";

    // Every measure is looked at, so that all that is wrong is told in one go.
    private bool IsWhole(TableRow row, PartKind kind, bool hasMember)
    {
        (string[] needs, string[] may) = ConnectionWords.ColumnsOf(kind, hasMember);
        string word = ConnectionWords.Kinds.First(k => k.Kind == kind).Word;
        string[] blank = [.. needs.Where(c => row[c].IsBlank)];
        if (blank.Length > 0)
        {
            findings.Error(row["kind"].Where, $"{word} needs {string.Join(", ", blank)}: write {(blank.Length == 1 ? "it" : "them")}.");
        }

        bool whole = blank.Length == 0;
        foreach (string column in ConnectionWords.Measures.Where(c => !row[c].IsBlank))
        {
            if (!needs.Contains(column) && !may.Contains(column))
            {
                findings.Error(row[column].Where, $"{column} has no meaning for {word}{(kind == PartKind.Gusset && !hasMember ? " without a member, which is its plane in shear" : "")}: clear it.");
                whole = false;
            }
            else if (column is not ("member" or "grade") && (column is "count" or "planes" or "lines" or "per line"
                ? SectionCells.CountOf(row, column, 1, column == "planes" ? 2 : 500, findings, blank: null) is null
                : column == "holes" ? row.Value(column) is null or < 0 : row.PositiveValue(column, column) is null))
            {
                whole = false;
            }
        }

        string size = SizeColumn(kind);
        if (whole && !row["remaining"].IsBlank && row.Value("remaining") > row.Value(size))
        {
            findings.Error(row["remaining"].Where, $"remaining {row["remaining"].Text} is more than the {size} of {row[size].Text}: rust scale measured? Clean it, or correct the {size}.");
            whole = false;
        }

        return whole;
    }

    private Connection? Made(TableRow row, string name, PartKind kind, int joint, int? member, PackingTable? packing)
    {
        double Of(string column) => row.Value(column)!.Value;
        int Count(string column) => (int)Of(column);
        double Left(string column) => row.Value("remaining") ?? Of(column);
        int index = read.Count;
        if (kind == PartKind.Pin)
        {
            return PackedPin(row, name, index, joint, Left("diameter"), packing);
        }

        if (member is null && !(kind == PartKind.Gusset && row["member"].IsBlank))
        {
            return null;
        }

        switch (kind)
        {
            case PartKind.EyebarHead:
                if (Of("hole") >= Of("width"))
                {
                    findings.Error(row["hole"].Where, $"the pin hole of {row["hole"].Text} is as wide as the head of {row["width"].Text} or wider: check both.");
                    return null;
                }

                return new HeadConnection(name, index, joint, member!.Value, Count("count") * (Of("width") - Of("hole")) * Left("thickness"));
            case PartKind.PinPlate:
                return new PinPlateConnection(name, index, joint, member!.Value, Count("count") * Left("thickness"), Of("diameter"));
            case PartKind.Rivets or PartKind.Bolts:
                return GradeOf(row, kind) is { } grade ? new FastenerConnection(name, index, kind, joint, member!.Value, grade, Count("count"), Of("diameter"), Count("planes"), Left("thickness")) : null;
            case PartKind.Gusset when member is { } one:
                var gusset = new GussetConnection(name, index, joint, one, Count("count"), Left("thickness"), Count("lines"), Count("per line"), Of("gauge"), Of("pitch"), Of("edge"), Of("hole"), row.Value("middle length"));
                if (gusset.WhitmoreWidth <= gusset.Lines * gusset.Hole)
                {
                    findings.Error(row["hole"].Where, "the holes take all of the Whitmore width: check lines, per line, gauge, pitch and hole.");
                    return null;
                }

                return gusset;
            default:
                double holes = row.Value("holes") ?? 0;
                if (holes >= Of("length"))
                {
                    findings.Error(row["holes"].Where, $"holes of {row["holes"].Text} take all of the plane's length of {row["length"].Text}: check both.");
                    return null;
                }

                return WebsOf(joint) is { Length: > 0 } webs ? new GussetShear(name, index, joint, webs, Count("count"), Left("thickness"), Of("length"), holes) : NoWebs(row, joint);
        }
    }

    private GussetShear? NoWebs(TableRow row, int joint)
    {
        findings.Error(row["joint"].Where, $"at joint \"{truss.Joints[joint].Name}\" no member stands off the chord: a plane in shear is where web members pull along a chord.");
        return null;
    }

    // Members that are not in line with another one through the joint along the chord: by their role, else by their slope.
    private int[] WebsOf(int joint)
    {
        int[] here = [.. Enumerable.Range(0, truss.Members.Count).Where(m => truss.FromJoint(m) == joint || truss.ToJoint(m) == joint)];
        return [.. here.Where(m => !truss.Members[m].IsChord && !truss.Members[m].Role.Contains("chord", StringComparison.OrdinalIgnoreCase))];
    }

    private PinConnection? PackedPin(TableRow row, string name, int index, int joint, double diameter, PackingTable? packing)
    {
        var bars = packing?.Bars.Where(b => b.Pin == name).ToList() ?? [];
        if (bars.Count < 2)
        {
            findings.Error(row["connection"].Where, $"pin \"{name}\" has no packing: write its bars in {BridgeFolder.PackingFile}, one a row in the order in which they stand along the pin, or remove the pin.");
            return null;
        }

        bool good = true;
        var packed = new List<PackedBar>();
        foreach ((TableRow at, _, string bar, double thickness, double gap) in bars)
        {
            if (LoadOf(bar, joint, at) is { } load)
            {
                packed.Add(new PackedBar(load, bar, thickness, gap));
            }
            else
            {
                good = false;
            }
        }

        int[] here = [.. Enumerable.Range(0, truss.Members.Count).Where(m => truss.FromJoint(m) == joint || truss.ToJoint(m) == joint)];
        string[] missing =
        [
            .. here.Where(m => !packed.Exists(b => b.Load is PinLoad.OfMember of && of.Member == m)).Select(m => truss.Members[m].Name),
            .. truss.PanelPoints.Contains(joint) && !packed.Exists(b => b.Load is PinLoad.OfFloor) ? [ConnectionWords.Floor] : Array.Empty<string>(),
            .. truss.Joints[joint].Support is not null && !packed.Exists(b => b.Load is PinLoad.OfBearing) ? [ConnectionWords.Bearing] : Array.Empty<string>(),
        ];
        if (good && missing.Length > 0)
        {
            findings.Error(bars[0].Row["pin"].Where, $"pin \"{name}\" at joint \"{truss.Joints[joint].Name}\" lacks {string.Join(", ", missing)} in its packing: its forces would not balance. Write a row for {(missing.Length == 1 ? "it" : "each")}.");
            return null;
        }

        return good ? new PinConnection(name, index, joint, diameter, packed) : null;
    }

    private PinLoad? LoadOf(string bar, int joint, TableRow row)
    {
        string at = truss.Joints[joint].Name;
        switch (bar)
        {
            case ConnectionWords.Floor when truss.PanelPoints.Contains(joint):
                return new PinLoad.OfFloor();
            case ConnectionWords.Floor:
                findings.Error(row["bar"].Where, $"joint \"{at}\" is no panel point, and the floor brings nothing to it: remove the row, or write yes under deck in {BridgeFolder.JointsFile}.");
                return null;
            case ConnectionWords.Bearing when truss.Joints[joint].Support is not null:
                return new PinLoad.OfBearing();
            case ConnectionWords.Bearing:
                findings.Error(row["bar"].Where, $"joint \"{at}\" has no support, and no bearing holds it: remove the row.");
                return null;
        }

        if (truss.FindMember(bar) is not { } member)
        {
            findings.Error(row["bar"].Where, $"bar \"{bar}\" is no member, nor floor or bearing.{NearestName.Question(bar, [.. truss.Members.Select(m => m.Name), ConnectionWords.Floor, ConnectionWords.Bearing])}");
            return null;
        }

        if (truss.FromJoint(member) == joint || truss.ToJoint(member) == joint)
        {
            return new PinLoad.OfMember(member);
        }

        findings.Error(row["bar"].Where, $"member \"{bar}\" does not end at joint \"{at}\", where the pin is: check the bar, or the joint of the pin.");
        return null;
    }

    private int? MemberOf(TableRow row, int joint)
    {
        if (row["member"].IsBlank)
        {
            return null;
        }

        string name = row["member"].Text;
        if (truss.FindMember(name) is not { } member)
        {
            findings.Error(row["member"].Where, $"member \"{name}\" is not in {BridgeFolder.MembersFile}.{NearestName.Question(name, truss.Members.Select(m => m.Name))}");
            return null;
        }

        if (truss.FromJoint(member) == joint || truss.ToJoint(member) == joint)
        {
            return member;
        }

        findings.Error(row["member"].Where, $"member \"{name}\" does not end at joint \"{truss.Joints[joint].Name}\": check both.");
        return null;
    }

    private Material? MaterialOf(TableRow row)
    {
        if (row["material"].IsBlank)
        {
            return null;
        }

        string name = row["material"].Text;
        if (materials?.Has(name) == true)
        {
            return materials.Find(name);
        }

        findings.Error(row["material"].Where, $"material \"{name}\" is not known.{NearestName.Question(name, materials?.Materials.Select(m => m.Name) ?? [])} Write a name of {BridgeFolder.MaterialsFile}, or leave it blank: then the connection is not rated.");
        return null;
    }

    private FastenerGrade? GradeOf(TableRow row, PartKind kind)
    {
        string word = row["grade"].Text;
        (string Word, FastenerGrade Grade)[] grades = kind == PartKind.Rivets ? ConnectionWords.RivetGrades : ConnectionWords.BoltGrades;
        string[] words = [.. grades.Select(g => g.Word), .. kind == PartKind.Rivets ? [ConnectionWords.ByYear, ConnectionWords.Unknown] : Array.Empty<string>()];
        int known = Array.FindIndex(grades, g => string.Equals(g.Word, word, StringComparison.OrdinalIgnoreCase));
        if (known >= 0)
        {
            return grades[known].Grade;
        }

        if (kind == PartKind.Rivets && string.Equals(word, ConnectionWords.Unknown, StringComparison.OrdinalIgnoreCase))
        {
            return FastenerGrade.RivetBefore1936;
        }

        if (kind == PartKind.Rivets && string.Equals(word, ConnectionWords.ByYear, StringComparison.OrdinalIgnoreCase))
        {
            if (built is { } year)
            {
                return year < 1936 ? FastenerGrade.RivetBefore1936 : FastenerGrade.RivetFrom1936;
            }

            findings.Error(row["grade"].Where, $"grade \"{word}\" goes by the year of building, and {BridgeFolder.BridgeFile} has no built: write it, or grade unknown.");
            return null;
        }

        findings.Error(row["grade"].Where, $"grade \"{word}\" is not known.{NearestName.Question(word, words)} Write {string.Join(", ", words)}.");
        return null;
    }
}
