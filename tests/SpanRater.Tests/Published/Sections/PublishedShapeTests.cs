namespace SpanRater.Tests.Published.Sections;

/// <summary>Properties of angles, wide-flange beams and channels as handbooks print them, each row with its source.</summary>
public class PublishedShapeTests
{
    private const double Inch = 0.0254;

    public static IEnumerable<TheoryDataRow<string, string, string, string, double>> Rows() =>
        from row in PublishedTable.Read("Sections/shapes.csv")
        select new TheoryDataRow<string, string, string, string, double>(row["shape"], row["type"], row["dims"], row["property"], row.Number("value"))
        {
            Label = row.Label($"{row["shape"]}: {row["property"]} {row["value"]}"),
        };

    [Theory]
    [MemberData(nameof(Rows))]
    public void Find_AShapeOfTheTable_HasThePrintedProperty(string name, string type, string dims, string property, double printed)
    {
        PublishedShape found = Assert.IsType<PublishedShape>(ShapeTable.Find(name));
        Assert.Equal(Drawn(type, dims).Properties, Drawn(found));

        // Section moduli and radii follow from what is printed, and have its rounding in them: 2.42/(3 − 0.827) = 1.114 is printed 1.12.
        double tolerance = property is "A" or "Ix" or "Iy" or "x" or "y" or "rz" ? 1e-9 : 0.006;
        Assert.Equal(1, ValueOf(found.Shape.Properties, property, type) / printed, tolerance);
    }

    // The outlines have sharp corners. Older tables of angles have them too; beams and channels have fillets and rounded toes.
    [Theory]
    [MemberData(nameof(Rows))]
    public void Create_OfThePublishedDimensions_IsNearThePrintedProperty(string name, string type, string dims, string property, double printed)
    {
        Assert.NotEmpty(name);
        double ratio = ValueOf(Drawn(type, dims).Properties, property, type) / printed;
        (double least, double most) = (type, property) switch
        {
            ("angle", _) => (0.9955, 1.0045),
            ("W", "A") => (0.98, 0.997),
            ("W", "Ix" or "Sx") => (0.976, 0.9985),
            ("W", _) => (0.99, 1.012),
            (_, "A" or "Ix") => (0.9905, 0.997),
            (_, "Iy") => (1.007, 1.013),
            (_, "x") => (1.003, 1.0095),
            _ => (0.998, 1.009),
        };
        Assert.InRange(ratio, least, most);
    }

    private static double ValueOf(SectionProperties p, string property, string type) => property switch
    {
        "A" => p.Area / (Inch * Inch),
        "Ix" => p.Ix / Math.Pow(Inch, 4),
        "Iy" => p.Iy / Math.Pow(Inch, 4),
        "Sx" => p.TopModulus / Math.Pow(Inch, 3),
        "Sy" => p.RightModulus / Math.Pow(Inch, 3),
        "rx" => p.Rx / Inch,
        "ry" => p.Ry / Inch,
        "rz" => p.LeastRadius / Inch,
        "x" => p.X / Inch,
        "y" => p.Y / Inch,
        _ => throw new ArgumentOutOfRangeException(nameof(property), property, type),
    };

    private static SectionShape Drawn(string type, string dims)
    {
        double[] d = [.. dims.Split('|').Select(n => double.Parse(n, System.Globalization.CultureInfo.InvariantCulture) * Inch)];
        return type == "angle"
            ? SectionsByHand.Shape(ShapeKind.Angle, (ShapeDimension.Depth, d[0]), (ShapeDimension.Width, d[1]), (ShapeDimension.Thickness, d[2]))
            : SectionsByHand.Shape(
                type == "W" ? ShapeKind.WideFlange : ShapeKind.Channel,
                (ShapeDimension.Depth, d[0]), (ShapeDimension.Web, d[1]), (ShapeDimension.Width, d[2]), (ShapeDimension.Flange, d[3]));
    }

    // The dimensions of the table, drawn without its properties.
    private static SectionProperties Drawn(PublishedShape found)
    {
        SectionShape shape = found.Shape;
        return SectionsByHand.Shape(shape.Kind, [.. shape.Kind.Needed.Select(d => (d, shape[d]!.Value))]).Properties;
    }
}
