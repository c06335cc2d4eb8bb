using System.Globalization;

namespace SpanRater.Files;

/// <summary>The words of sections.csv and findings.csv.</summary>
internal static class SectionWords
{
    private static readonly (ShapeDimension Dimension, string Word)[] DimensionWords =
    [
        (ShapeDimension.Width, "width"),
        (ShapeDimension.Depth, "depth"),
        (ShapeDimension.Thickness, "thickness"),
        (ShapeDimension.UprightLeg, "upright leg"),
        (ShapeDimension.FlatLeg, "flat leg"),
        (ShapeDimension.Web, "web"),
        (ShapeDimension.Flange, "flange"),
        (ShapeDimension.TopFlange, "top flange"),
        (ShapeDimension.BottomFlange, "bottom flange"),
        (ShapeDimension.TopWidth, "top flange width"),
        (ShapeDimension.BottomWidth, "bottom flange width"),
        (ShapeDimension.Diameter, "diameter"),
        (ShapeDimension.Root, "root"),
        (ShapeDimension.HeadWidth, "head width"),
        (ShapeDimension.PinHole, "pin hole"),
    ];

    /// <summary>The kinds that a cell may name; a plate lies or stands by the dimension it is given.</summary>
    public static IReadOnlyList<ShapeKind> Kinds { get; } = [.. ShapeKind.All.Where(k => k != ShapeKind.StandingPlate)];

    /// <summary>Columns that give a dimension.</summary>
    public static IReadOnlyList<ShapeDimension> Columns { get; } =
    [
        ShapeDimension.Width, ShapeDimension.Depth, ShapeDimension.Thickness, ShapeDimension.Web, ShapeDimension.Flange,
        ShapeDimension.Diameter, ShapeDimension.Root, ShapeDimension.HeadWidth, ShapeDimension.PinHole,
    ];

    public static string Of(ShapeDimension dimension) => DimensionWords.First(w => w.Dimension == dimension).Word;

    public static string Of(IEnumerable<ShapeDimension> dimensions) => string.Join(", ", dimensions.Select(Of));

    public static ShapeDimension? FindDimension(string word) =>
        DimensionWords.Where(w => string.Equals(w.Word, word, StringComparison.OrdinalIgnoreCase)).Select(w => (ShapeDimension?)w.Dimension).FirstOrDefault();

    public static ShapeKind? FindKind(string word) =>
        Kinds.FirstOrDefault(k => string.Equals(k.Name.Replace('-', ' '), word.Replace('-', ' '), StringComparison.OrdinalIgnoreCase));

    /// <summary>a plate, an angle.</summary>
    public static string WithArticle(ShapeKind kind) => kind == ShapeKind.StandingPlate ? "a plate" : $"{("aeiI".Contains(kind.Name[0], StringComparison.Ordinal) ? "an" : "a")} {kind.Name}";

    /// <summary>A length as a tape and a caliper show it.</summary>
    public static string Length(double metres) => string.Create(CultureInfo.InvariantCulture, $"{metres / 0.0254:0.###} in ({metres * 1000:0.#} mm)");
}
