namespace SpanRater.Files;

/// <summary>lacing.csv: how the parts of a built-up section are held together along the member, one section a row.</summary>
internal sealed class LacingTable
{
    private const string Single = "single lacing", Double = "double lacing", Battened = "battens", Rivets = "stitch rivets", Welds = "stitch welds", Plates = "plates";

    private static readonly (string Word, string[] Needed)[] Kinds =
    [
        (Single, ["pitch", "between", "width", "thickness", "planes"]),
        (Double, ["pitch", "between", "width", "thickness", "planes"]),
        (Battened, ["pitch", "between", "width", "thickness", "planes"]),
        (Rivets, ["pitch"]),
        (Welds, ["pitch"]),
        (Plates, []),
    ];

    private static readonly string[] Measures = ["pitch", "between", "width", "thickness", "planes"];

    private static readonly TableColumn[] Columns =
    [
        new("section", Required: true),
        new("held by", Required: true),
        new("pitch", Quantity.Length, Units: "in or mm"),
        new("between", Quantity.Length, Units: "in or mm"),
        new("width", Quantity.Length, Units: "in or mm"),
        new("thickness", Quantity.Length, Units: "in or mm"),
        new("planes", Quantity.Number),
    ];

    private readonly Dictionary<string, Binding?> bindings = [];

    private LacingTable()
    {
    }

    /// <summary>How a section's parts are held; null where it is not said, or said wrongly.</summary>
    public Binding? Find(string section) => bindings.GetValueOrDefault(section);

    /// <summary>The table; null where it cannot be used.</summary>
    public static LacingTable? Read(string text, string file, SectionsTable? sections, FindingList findings)
    {
        if (TableReader.Read(text, file, Columns, findings) is not { } table)
        {
            return null;
        }

        var lacing = new LacingTable();
        foreach (TableRow row in table.Rows)
        {
            string? section = row.Required("section");
            Binding? binding = BindingOf(row, findings);
            if (section is null)
            {
                continue;
            }

            if (sections?.Names.Contains(section) == false)
            {
                findings.Error(row["section"].Where, $"there is no section \"{section}\" in {BridgeFolder.SectionsFile}.{NearestName.Question(section, sections.Names)}");
            }
            else if (!lacing.bindings.TryAdd(section, binding))
            {
                findings.Error(row["section"].Where, $"section \"{section}\" is there twice: keep one row of it.");
            }
        }

        return table.HasBrokenRows ? null : lacing;
    }

    private static Binding? BindingOf(TableRow row, FindingList findings)
    {
        string? word = row.Required("held by")?.ToLowerInvariant();
        double?[] lengths = [.. Measures.Take(4).Select(c => row.PositiveValue(c, c))];
        int? planes = SectionCells.CountOf(row, "planes", 1, 2, findings, blank: null);
        if (word is null)
        {
            return null;
        }

        int kind = Array.FindIndex(Kinds, k => k.Word == word);
        if (kind < 0)
        {
            findings.Error(row["held by"].Where, $"held by \"{row["held by"].Text}\" is not known.{NearestName.Question(word, Kinds.Select(k => k.Word))} Write {string.Join(", ", Kinds.Select(k => k.Word))}.");
            return null;
        }

        string[] blank = [.. Kinds[kind].Needed.Where(c => row[c].IsBlank)];
        if (blank.Length > 0)
        {
            findings.Error(row["held by"].Where, $"{word} needs {string.Join(", ", blank)}: write {(blank.Length == 1 ? "it" : "them")}.");
        }

        foreach (string column in Measures.Except(Kinds[kind].Needed).Where(c => !row[c].IsBlank))
        {
            findings.Error(row[column].Where, $"{column} has no meaning beside {word}: clear it.");
        }

        if (blank.Length > 0 || Kinds[kind].Needed.Any(c => c == "planes" ? planes is null : lengths[Array.IndexOf(Measures, c)] is null))
        {
            return null;
        }

        double Length(int which) => lengths[which]!.Value;
        return word switch
        {
            Single or Double => new Binding.Laced(new Lacing(Length(0), Length(1), Length(2) * Length(3), planes!.Value, word == Double), 0),
            Battened => new Binding.Battened(Length(0), Length(1), planes!.Value * Length(3) * Math.Pow(Length(2), 3) / 12),
            Rivets => new Binding.Stitched(Length(0), BuiltUpConnection.Riveted),
            Welds => new Binding.Stitched(Length(0), BuiltUpConnection.Welded),
            _ => new Binding.Solid(),
        };
    }
}
