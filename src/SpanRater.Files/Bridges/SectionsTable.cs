namespace SpanRater.Files;

/// <summary>sections.csv: what members are made of, one part a row.</summary>
internal sealed class SectionsTable
{
    private static readonly TableColumn[] Columns =
    [
        new("section", Required: true),
        new("part"),
        new("shape", Required: true),
        new("count", Quantity.Number),
        .. SectionWords.Columns.Select(d => Inches(SectionWords.Of(d))),
        new("root area", Quantity.Area),
        new("arrangement"),
        Inches("gap"),
        Inches("rise"),
        Inches("x"),
        Inches("y"),
        new("turned", Quantity.Angle),
        new("upside down"),
        new("holes", Quantity.Number),
        Inches("hole"),
        new("through"),
        new("staggers", Quantity.Number),
        Inches("pitch"),
        Inches("gauge"),
        new("source"),
    ];

    private readonly Dictionary<string, Place> places = [];

    private SectionsTable()
    {
    }

    /// <summary>The sections that could be read, in the order first named.</summary>
    public List<MemberSection> Sections { get; } = [];

    /// <summary>Names of all sections, those that could not be read included.</summary>
    public IReadOnlyCollection<string> Names => places.Keys;

    /// <summary>The section of that name; null where there is none or it could not be read.</summary>
    public MemberSection? Find(string name) => Sections.Find(s => s.Name == name);

    /// <summary>Where a section is first named.</summary>
    public Place PlaceOf(string name) => places[name];

    /// <summary>The sections; null where the table cannot be used.</summary>
    public static SectionsTable? Read(string text, string file, FindingList findings)
    {
        if (TableReader.Read(text, file, Columns, findings) is not { } table)
        {
            return null;
        }

        var sections = new SectionsTable();
        var parts = new Dictionary<string, List<SectionPart?>>();
        var rows = new Dictionary<(string Section, string Part), int>();
        foreach (TableRow row in table.Rows)
        {
            string? section = row.Required("section");
            SectionPart? part = SectionCells.PartOf(row, findings);
            if (section is null)
            {
                continue;
            }

            sections.places.TryAdd(section, row.Where);
            string name = part?.Name ?? SectionCells.NameOf(row);
            if (!rows.TryAdd((section, name), row.Where.Line!.Value))
            {
                TableCell cell = row[row["part"].IsBlank ? "shape" : "part"];
                findings.Error(cell.Where, $"section \"{section}\" has a part \"{name}\" already (line {rows[(section, name)]}): give each part a name of its own, or write count where they are alike.");
                part = null;
            }

            if (!parts.TryGetValue(section, out List<SectionPart?>? list))
            {
                parts[section] = list = [];
            }

            list.Add(part);
        }

        sections.Sections.AddRange(parts.Where(p => !p.Value.Contains(null)).Select(p => new MemberSection(p.Key, [.. p.Value.Select(part => part!)])));
        if (table.Rows.Count == 0)
        {
            findings.Warning(new Place(file), "holds no section: write a row a part, or remove the file.");
        }

        return table.HasBrokenRows ? null : sections;
    }

    private static TableColumn Inches(string name) => new(name, Quantity.Length, Units: "in or mm");
}
