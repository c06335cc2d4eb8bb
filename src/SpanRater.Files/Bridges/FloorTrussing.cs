namespace SpanRater.Files;

/// <summary>What a row of floor.csv says of the rod and posts under a trussed floorbeam; what is null is not given.</summary>
/// <param name="Posts">Posts, 1 or 2.</param>
/// <param name="Drop">Rod below the beam's axis at the posts [m].</param>
/// <param name="Spacing">Between two posts [m].</param>
/// <param name="Rod">Section of the rod, or of rods side by side.</param>
/// <param name="Material">Material of the rod.</param>
/// <param name="HeldBelow">Distance between the points that hold the beam's lower side [m].</param>
internal sealed record FloorTrussing(int? Posts, double? Drop, double? Spacing, MemberSection? Rod, Material? Material, double? HeldBelow)
{
    /// <summary>What stands under type in the row of such a floorbeam.</summary>
    public const string Word = "trussed";

    /// <summary>Columns of the table.</summary>
    public static readonly TableColumn[] Columns =
    [
        new("rod"), new("rod material"), new("posts", Quantity.Number), new("drop", Quantity.Length, Units: "ft, in, m or mm"), new("post spacing", Quantity.Length), new("unbraced below", Quantity.Length),
    ];

    /// <summary>Names of the columns.</summary>
    public static IEnumerable<string> Names => Columns.Select(c => c.Name);

    /// <summary>Name under which findings.csv has the rod of a part.</summary>
    /// <param name="part">Name of the part.</param>
    public static string RodOf(string part) => $"{part} rod";

    /// <summary>The trussing; null of a part that has none. Every cell is looked at.</summary>
    public static FloorTrussing? Read(TableRow row, PartKind? kind, SectionsTable? sections, MaterialsToml? materials, FindingList findings)
    {
        var read = new FloorTrussing(
            SectionCells.CountOf(row, "posts", 1, 2, findings, blank: null),
            row.PositiveValue("drop", "drop"),
            row.PositiveValue("post spacing", "post spacing"),
            FloorRow.SectionOf(row, "rod", sections, findings),
            FloorRow.MaterialOf(row, "rod material", materials, findings),
            FloorRow.NotNegative(row, "unbraced below", "0 where its lower side is held all along", findings));
        if (kind != PartKind.Floorbeam)
        {
            return null;
        }

        TableCell type = row["type"];
        bool isTrussed = string.Equals(type.Text, Word, StringComparison.OrdinalIgnoreCase);
        if (!type.IsBlank && !isTrussed)
        {
            findings.Error(type.Where, $"floorbeam type \"{type.Text}\" is not known.{NearestName.Question(type.Text, [Word])} Write {Word} where a rod over posts stiffens it from below, or leave it blank.");
        }

        if (type.IsBlank)
        {
            foreach (string column in Names.Where(c => !row[c].IsBlank))
            {
                findings.Error(row[column].Where, $"{column} has no meaning for a floorbeam that is not trussed: write {Word} under type, or clear it.");
            }
        }

        if (isTrussed && read.Posts == 1 && !row["post spacing"].IsBlank)
        {
            findings.Error(row["post spacing"].Where, "post spacing has no meaning for one post, which stands in the middle: clear it, or write posts = 2.");
        }

        return isTrussed ? read : null;
    }
}
