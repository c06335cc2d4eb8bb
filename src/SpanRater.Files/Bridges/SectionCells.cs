using System.Globalization;

namespace SpanRater.Files;

/// <summary>Reads the cells of one part of sections.csv.</summary>
internal static class SectionCells
{
    /// <summary>No rolled shape, bar or timber is larger [m].</summary>
    private const double TooLarge = 2;

    /// <summary>A wall above this is worth a second look [m].</summary>
    private const double Thick = 0.1;

    /// <summary>A wall below this is a slip of units [m].</summary>
    private const double Thin = 0.001;

    private const int MostPieces = 100;

    /// <summary>The name of a part: as written, or its shape.</summary>
    public static string NameOf(TableRow row) => row["part"].IsBlank ? row["shape"].Text : row["part"].Text;

    /// <summary>The part; null with findings where it cannot be made.</summary>
    public static SectionPart? PartOf(TableRow row, FindingList findings)
    {
        string name = NameOf(row);
        int? count = CountOf(row, "count", 1, MostPieces, findings, blank: 1);
        SectionShape? shape = ShapeOf(row, name, findings);
        if (count is null || shape is null)
        {
            return null;
        }

        IReadOnlyList<PiecePlacement?>? places = SectionPlaceCells.PlacesOf(row, name, shape, count.Value, findings);
        bool holesAreGood = SectionHoleCells.HolesOf(row, name, shape, findings, out HolePath? holes);
        return places is null || !holesAreGood
            ? null
            : new SectionPart(name, [.. places.Select(p => new SectionPiece(shape, p))]) { Holes = holes, Note = row["note"].Text };
    }

    /// <summary>A whole number; null with a finding where it is none.</summary>
    public static int? CountOf(TableRow row, string column, int least, int most, FindingList findings, int? blank)
    {
        if (row[column].IsBlank)
        {
            return blank;
        }

        double? value = row.Value(column);
        if (value is { } number && number >= least && number <= most && number == Math.Floor(number))
        {
            return (int)number;
        }

        if (value is not null)
        {
            findings.Error(row[column].Where, string.Create(CultureInfo.InvariantCulture, $"{column} = {row[column].Text}: write a whole number from {least} to {most}."));
        }

        return null;
    }

    private static SectionShape? ShapeOf(TableRow row, string name, FindingList findings)
    {
        if (row.Required("shape") is not { } word)
        {
            return null;
        }

        // Every cell is read, so that all that is wrong is told in one go.
        int before = Errors(findings);
        var given = new Dictionary<ShapeDimension, double>();
        foreach (ShapeDimension dimension in SectionWords.Columns)
        {
            string column = SectionWords.Of(dimension);
            if (row.PositiveValue(column, $"part \"{name}\": {column}") is { } value)
            {
                given.Add(dimension, value);
                CheckSize(row, name, dimension, value, findings);
            }
        }

        if (row.PositiveValue("root area", $"part \"{name}\": root area") is { } area && !given.TryAdd(ShapeDimension.Root, Math.Sqrt(4 * area / Math.PI)))
        {
            findings.Error(row["root area"].Where, $"part \"{name}\" has root and root area: clear one of them.");
        }

        if (Errors(findings) > before)
        {
            return null;
        }

        if (SectionWords.FindKind(word) is { } kind)
        {
            return Drawn(row, name, kind == ShapeKind.Plate && given.ContainsKey(ShapeDimension.Depth) ? ShapeKind.StandingPlate : kind, given, findings);
        }

        if (ShapeTable.Find(word) is not { } published)
        {
            findings.Error(row["shape"].Where, $"shape \"{word}\" is not known.{NearestName.Question(word, [.. SectionWords.Kinds.Select(k => k.Name), .. ShapeTable.All.Select(s => s.Name)])} Write what it is ({string.Join(", ", SectionWords.Kinds.Select(k => k.Name))}) and its dimensions, or a name of the shape table.");
            return null;
        }

        foreach (ShapeDimension dimension in given.Keys.Order())
        {
            findings.Error(CellOf(row, dimension).Where, $"part \"{name}\": {published.Name} has its dimensions from the shape table, and {SectionWords.Of(dimension)} has no meaning beside it: clear it, or write {published.Shape.Kind.Name} under shape and all dimensions.");
        }

        return given.Count > 0 ? null : published.Shape;
    }

    private static int Errors(FindingList findings) => findings.All.Count(f => f.Severity == FindingSeverity.Error);

    private static TableCell CellOf(TableRow row, ShapeDimension dimension) =>
        row[dimension == ShapeDimension.Root && row["root"].IsBlank ? "root area" : SectionWords.Of(dimension)];

    private static void CheckSize(TableRow row, string name, ShapeDimension dimension, double value, FindingList findings)
    {
        TableCell cell = row[SectionWords.Of(dimension)];
        string told = $"part \"{name}\": {SectionWords.Of(dimension)} {cell.Text} is {SectionWords.Length(value)}";
        bool isWall = dimension is ShapeDimension.Thickness or ShapeDimension.Web or ShapeDimension.Flange;
        if (value > TooLarge || value < Thin)
        {
            findings.Error(cell.Where, $"{told}, {(value > TooLarge ? "more than any part of a member" : "less than any part of a bridge")}: check the number and the unit in the heading.");
        }
        else if (isWall && value > Thick)
        {
            findings.Warning(cell.Where, $"{told}, much for a thickness: check the number and the unit in the heading.");
        }
    }

    private static SectionShape? Drawn(TableRow row, string name, ShapeKind kind, Dictionary<ShapeDimension, double> given, FindingList findings)
    {
        ShapeCheck check = SectionShape.Create(kind, given);
        string needs = kind == ShapeKind.Plate || kind == ShapeKind.StandingPlate
            ? "a plate is given by width and thickness where it lies, by depth and thickness where it stands"
            : $"{SectionWords.WithArticle(kind)} is given by {SectionWords.Of(kind.Needed)}{(kind.Optional.Count > 0 ? $", and may have {SectionWords.Of(kind.Optional)}" : "")}";
        foreach (ShapeFault fault in check.Faults)
        {
            TableCell cell = CellOf(row, fault.Dimension);
            string word = SectionWords.Of(fault.Dimension), shown = $"part \"{name}\": {word} {cell.Text}";
            string Other(ShapeDimension other) => $"{SectionWords.Of(other)} {CellOf(row, other).Text}";
            (Place where, string what) = fault switch
            {
                ShapeFault.Missing => (row["shape"].Where, $"part \"{name}\" has no {word}: {needs}."),
                ShapeFault.NotOfShape => (cell.Where, $"part \"{name}\": {SectionWords.WithArticle(kind)} has no {word}: clear it; {needs}."),
                ShapeFault.HalfOrMore half => (cell.Where, $"{shown} is half of {Other(half.Of)} or more, which no {kind.Name} is: check both, and their units."),
                ShapeFault.NotSmaller smaller => (cell.Where, $"{shown} is not below {Other(smaller.Than)}: are they exchanged?"),
                ShapeFault.TapersToNothing => (cell.Where, $"{shown} comes to nothing before the edge at a slope of 1 in 6: write the thickness in the middle of the overhang, or a shape with parallel flanges ({ShapeKind.ParallelChannel.Name}, {ShapeKind.WideFlange.Name})."),
                _ => (cell.Where, $"{shown}: it must be above zero."),
            };
            findings.Error(where, what);
        }

        return check.Shape;
    }
}
