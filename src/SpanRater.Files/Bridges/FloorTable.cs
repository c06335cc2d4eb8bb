namespace SpanRater.Files;

/// <summary>floor.csv: deck, stringers, floorbeams and their hangers, one part a row, each standing for all alike at their worst.</summary>
internal sealed class FloorTable
{
    private static readonly TableColumn[] Columns =
    [
        new("part", Required: true),
        new("kind", Required: true),
        new("type"),
        new("section"),
        new("material"),
        new("spacing", Quantity.Length),
        new("span", Quantity.Length),
        new("count", Quantity.Number),
        new("at"),
        new("x", Quantity.Length),
        new("unbraced", Quantity.Length),
        new("bearing", Quantity.Length, Units: "in or mm"),
        new("end"),
        new("end depth", Quantity.Length, Units: "in or mm"),
        new("continuous"),
        .. FloorTrussing.Columns,
        new("source"),
    ];

    private FloorTable()
    {
    }

    /// <summary>The rows that could be read.</summary>
    public List<FloorRow> Rows { get; } = [];

    /// <summary>Names of the parts.</summary>
    public IEnumerable<string> Names => Rows.Select(r => r.Name);

    /// <summary>Names that findings.csv may have: of the parts, and of the rods of trussed floorbeams.</summary>
    public IEnumerable<string> NamesToFind => Names.Concat(Rows.Where(r => r.Trussing is not null).Select(r => FloorTrussing.RodOf(r.Name)));

    /// <summary>The section of a part, or of a rod; null where there is none.</summary>
    public MemberSection? SectionOf(string name) => Find(name) is { } row ? row.Section : Rows.Find(r => r.Trussing is not null && FloorTrussing.RodOf(r.Name) == name)?.Trussing!.Rod;

    /// <summary>The row of a part; null where there is none.</summary>
    public FloorRow? Find(string part) => Rows.Find(r => r.Name == part);

    /// <summary>The parts; null where the table cannot be used.</summary>
    /// <param name="text">The text.</param>
    /// <param name="file">The file's name in findings.</param>
    /// <param name="members">Names of the truss members; null where they could not be read.</param>
    /// <param name="sections">The sections; null where there are none.</param>
    /// <param name="materials">The materials; null where there are none.</param>
    /// <param name="findings">Takes what is wrong.</param>
    public static FloorTable? Read(string text, string file, IReadOnlyList<string>? members, SectionsTable? sections, MaterialsToml? materials, FindingList findings)
    {
        if (TableReader.Read(text, file, Columns, findings) is not { } table)
        {
            return null;
        }

        var floor = new FloorTable();
        foreach (TableRow row in table.Rows)
        {
            if (FloorRow.Read(row, sections, materials, findings) is not { } part)
            {
                continue;
            }

            if (floor.Find(part.Name) is { } first)
            {
                findings.Error(row["part"].Where, $"part \"{part.Name}\" is there twice, here and on line {first.Row.Where.Line}: give each a name of its own.");
            }
            else if (members?.Contains(part.Name) == true)
            {
                findings.Error(row["part"].Where, $"part \"{part.Name}\" has the name of a truss member: findings could be of either. Give it another.");
            }
            else
            {
                floor.Rows.Add(part);
            }
        }

        if (table.Rows.Count == 0)
        {
            findings.Warning(new Place(file), "holds no part: write a row for each kind of part, or remove the file.");
        }

        foreach (FloorRow row in floor.Rows.Where(r => floor.Rows.Exists(t => t.Trussing is not null && FloorTrussing.RodOf(t.Name) == r.Name)))
        {
            findings.Error(row.Row["part"].Where, $"part \"{row.Name}\" has the name that findings give the rod of a trussed floorbeam: give it another.");
        }

        foreach (FloorRow second in floor.Rows.Where(r => r.Kind == PartKind.Deck).Skip(1))
        {
            findings.Error(second.Row["kind"].Where, $"part \"{second.Name}\" is a second deck: keep the one that the wheels stand on; what lies on it is weight, deck_dc or deck_dw under [floor].");
        }

        return table.HasBrokenRows ? null : floor;
    }
}
