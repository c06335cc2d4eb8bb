using System.Globalization;

namespace SpanRater.Files;

/// <summary>What a row of floor.csv says, before it meets the truss.</summary>
/// <param name="Row">The row.</param>
/// <param name="Name">Name of the part.</param>
/// <param name="Kind">Its kind.</param>
internal sealed record FloorRow(TableRow Row, string Name, PartKind Kind)
{
    public DeckType? Deck { get; init; }

    public MemberSection? Section { get; init; }

    public Material? Material { get; init; }

    public double? Spacing { get; init; }

    public double? Span { get; init; }

    public int? Count { get; init; }

    /// <summary>Names of panel points; empty where none are named.</summary>
    public IReadOnlyList<string> At { get; init; } = [];

    /// <summary>Station; null where none is given [m].</summary>
    public double? X { get; init; }

    public double? Unbraced { get; init; }

    public double? Bearing { get; init; }

    public bool IsTapered { get; init; }

    public double? EndDepth { get; init; }

    public bool IsContinuous { get; init; }

    /// <summary>Rod and posts; null of a part that has none.</summary>
    public FloorTrussing? Trussing { get; init; }

    /// <summary>The row; null where it has no usable name or kind. Every cell is looked at, so that all that is wrong is told in one go.</summary>
    public static FloorRow? Read(TableRow row, SectionsTable? sections, MaterialsToml? materials, FindingList findings)
    {
        string? name = row.Required("part"), word = row.Required("kind");
        int kind = Array.FindIndex(FloorWords.Kinds, k => string.Equals(k.Word, word, StringComparison.OrdinalIgnoreCase));
        if (word is not null && kind < 0)
        {
            findings.Error(row["kind"].Where, $"kind \"{word}\" is not known.{NearestName.Question(word, FloorWords.Kinds.Select(k => k.Word))} Write {string.Join(", ", FloorWords.Kinds.Select(k => k.Word))}.");
        }

        var read = new FloorRow(row, name ?? "", kind < 0 ? PartKind.Deck : FloorWords.Kinds[kind].Kind)
        {
            Deck = DeckOf(row, kind < 0 ? null : FloorWords.Kinds[kind].Kind, findings),
            Section = SectionOf(row, "section", sections, findings),
            Material = MaterialOf(row, "material", materials, findings),
            Spacing = row.PositiveValue("spacing", "spacing"),
            Span = row.PositiveValue("span", "span"),
            Count = SectionCells.CountOf(row, "count", 1, 200, findings, blank: null),
            At = row["at"].Text.Split(' ', StringSplitOptions.RemoveEmptyEntries),
            X = row.Value("x"),
            Unbraced = NotNegative(row, "unbraced", "0 where the deck or beams hold it all along", findings),
            Bearing = row.PositiveValue("bearing", "bearing"),
            IsTapered = EndOf(row, findings) ?? false,
            EndDepth = row.PositiveValue("end depth", "end depth"),
            IsContinuous = row.YesOrNo("continuous") ?? false,
            Trussing = FloorTrussing.Read(row, kind < 0 ? null : FloorWords.Kinds[kind].Kind, sections, materials, findings),
        };
        if (name is null || kind < 0)
        {
            return null;
        }

        SayWhatHasNoMeaning(row, read.Kind, findings);
        if (read.Kind == PartKind.Stringer && row["spacing"].IsBlank)
        {
            findings.Error(row["spacing"].Where, $"stringer \"{name}\" has no spacing: write the distance from one to the next across the deck.");
        }

        if (row["end"].IsBlank != row["end depth"].IsBlank)
        {
            findings.Error(row["end"].Where, $"\"{name}\": end and end depth go together: write notched or tapered, and the depth that is left over the bearing.");
        }

        if (!row["at"].IsBlank && !row["x"].IsBlank)
        {
            findings.Error(row["x"].Where, $"\"{name}\" has both at and x: name its panel points, or give the station of one, not both.");
        }

        return read;
    }

    private static DeckType? DeckOf(TableRow row, PartKind? kind, FindingList findings)
    {
        string choice = string.Join(", ", FloorWords.Decks.Select(d => d.Word));
        if (row["type"].IsBlank)
        {
            if (kind == PartKind.Deck)
            {
                findings.Error(row["type"].Where, $"what deck is it? Write type: {choice}.");
            }

            return null;
        }

        int index = Array.FindIndex(FloorWords.Decks, d => string.Equals(d.Word, row["type"].Text, StringComparison.OrdinalIgnoreCase));
        if (index >= 0)
        {
            return FloorWords.Decks[index].Type;
        }

        if (kind is null or PartKind.Deck)
        {
            findings.Error(row["type"].Where, $"deck type \"{row["type"].Text}\" is not known.{NearestName.Question(row["type"].Text, FloorWords.Decks.Select(d => d.Word))} Write {choice}.");
        }

        return null;
    }

    internal static MemberSection? SectionOf(TableRow row, string column, SectionsTable? sections, FindingList findings)
    {
        if (row[column].IsBlank)
        {
            return null;
        }

        string name = row[column].Text;
        if (sections?.Names.Contains(name) == true)
        {
            return sections.Find(name);
        }

        findings.Error(row[column].Where, sections is null
            ? $"section \"{name}\" is named, and there is no {BridgeFolder.SectionsFile}: write its parts there."
            : $"there is no section \"{name}\" in {BridgeFolder.SectionsFile}.{NearestName.Question(name, sections.Names)}");
        return null;
    }

    internal static Material? MaterialOf(TableRow row, string column, MaterialsToml? materials, FindingList findings)
    {
        if (row[column].IsBlank)
        {
            return null;
        }

        string name = row[column].Text;
        if (materials?.Has(name) == true)
        {
            return materials.Find(name);
        }

        findings.Error(row[column].Where, $"material \"{name}\" is not known.{NearestName.Question(name, materials?.Materials.Select(m => m.Name) ?? [])} Write a name of {BridgeFolder.MaterialsFile}, or leave it blank: then the part is not rated.");
        return null;
    }

    internal static double? NotNegative(TableRow row, string column, string mend, FindingList findings)
    {
        double? value = row.Value(column);
        if (value is not < 0)
        {
            return value;
        }

        findings.Error(row[column].Where, string.Create(CultureInfo.InvariantCulture, $"{column} = {row[column].Text} is below zero: write a length, {mend}."));
        return null;
    }

    private static bool? EndOf(TableRow row, FindingList findings)
    {
        if (row["end"].IsBlank)
        {
            return null;
        }

        int index = Array.FindIndex(FloorWords.Ends, e => string.Equals(e.Word, row["end"].Text, StringComparison.OrdinalIgnoreCase));
        if (index >= 0)
        {
            return FloorWords.Ends[index].IsTapered;
        }

        findings.Error(row["end"].Where, $"end \"{row["end"].Text}\" is not known.{NearestName.Question(row["end"].Text, FloorWords.Ends.Select(e => e.Word))} Write notched, tapered, or leave it blank where the beam has its full depth over the bearing.");
        return null;
    }

    private static void SayWhatHasNoMeaning(TableRow row, PartKind kind, FindingList findings)
    {
        string[] meant = [.. FloorWords.ColumnsOf(kind)];
        foreach (string column in ((string[])["type", "spacing", "span", "count", "at", "x", "unbraced", "bearing", "end", "end depth", "continuous", .. FloorTrussing.Names]).Except(meant).Where(c => !row[c].IsBlank))
        {
            findings.Error(row[column].Where, $"{column} has no meaning for a {FloorWords.Kinds.First(k => k.Kind == kind).Word}: clear it.");
        }
    }
}
