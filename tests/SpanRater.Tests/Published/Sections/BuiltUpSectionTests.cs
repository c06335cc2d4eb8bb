using System.Globalization;

namespace SpanRater.Tests.Published.Sections;

/// <summary>Double angles and laced channels as handbooks print them, and net sections with staggered holes, each row with its source.</summary>
public class BuiltUpSectionTests
{
    private const double Inch = 0.0254;

    public static IEnumerable<TheoryDataRow<string, string, string, double>> Rows() =>
        from row in PublishedTable.Read("Sections/built-up.csv")
        select new TheoryDataRow<string, string, string, double>(row["member"], row["quantity"], row["expression"], row.Number("value"))
        {
            Label = row.Label($"{row["member"]}: {row["quantity"]} {row["value"]}"),
        };

    public static IEnumerable<TheoryDataRow<PublishedPath>> Paths() =>
        from row in PublishedTable.Read("Sections/net-section.csv")
        select new TheoryDataRow<PublishedPath>(new PublishedPath(
            row.Number("gross_width_in"), row.Whole("holes"), row.Number("hole_in"), row["staggers"], row.Number("thickness_in"), row.Number("value"), row.Number("tolerance")))
        {
            Label = row.Label($"{row["case"]}: {row["value"]}"),
        };

    [Theory]
    [MemberData(nameof(Rows))]
    public void Together_OfPublishedParts_IsThePrintedValue(string member, string quantity, string expression, double printed)
    {
        if (expression.StartsWith("2L:", StringComparison.Ordinal))
        {
            double[] d = [.. expression.Split(':', '|').Skip(1).Select(n => double.Parse(n, CultureInfo.InvariantCulture) * Inch)];
            SectionShape angle = SectionsByHand.Shape(ShapeKind.Angle, (ShapeDimension.Depth, d[0]), (ShapeDimension.Width, d[1]), (ShapeDimension.Thickness, d[2]));
            MemberSection pair = SectionsByHand.Section(SectionsByHand.Part("angles", angle, 2, new PieceArrangement.Backs(false, d[3], null)));
            Assert.Equal(printed, pair.Properties!.Ry / Inch, 0.005);
        }
        else if (member.StartsWith("2C12x30", StringComparison.Ordinal))
        {
            SectionProperties laced = SectionsByHand.Section(
                SectionsByHand.Part("channels", ShapeTable.Find("C12x30")!.Shape, 2, new PieceArrangement.Backs(true, 12 * Inch, null))).Properties!;
            (double value, double tolerance) = quantity switch
            {
                "Ix" => (laced.Ix / Math.Pow(Inch, 4), 0.5),
                "Iy" => (laced.Iy / Math.Pow(Inch, 4), 1),
                _ => (laced.Rx / Inch, 0.005),
            };
            Assert.Equal(printed, value, tolerance);
        }
        else
        {
            // 2 ISMC 300: 4564 mm² each, own radius 26.1 mm, centroids 23.6 mm from the backs, 180 mm between backs.
            double own = 4564 * 26.1 * 26.1;
            var pair = SectionProperties.Together([.. ((double[])[-1, 1]).Select(side =>
                new SectionProperties(4564, side * (90 + 23.6), 0, 1, own, 0, side * 90, side * 90, -150, 150))]);
            (double value, double tolerance) = quantity.StartsWith("ry", StringComparison.Ordinal) ? (pair.Ry, 0.1)
                : quantity.StartsWith("slenderness", StringComparison.Ordinal) ? (5000 / pair.Ry, 0.05)
                : (pair.Area * 137 / 1000, 0.6);
            Assert.Equal(printed, value, tolerance);
        }
    }

    // A plate as wide as the path is long; thickness 1 where the width is printed.
    [Theory]
    [MemberData(nameof(Paths))]
    public void NetArea_OfAStaggeredPath_IsThePrintedValue(PublishedPath path)
    {
        SectionShape plate = SectionsByHand.Shape(ShapeKind.Plate, (ShapeDimension.Width, path.Width * Inch), (ShapeDimension.Thickness, path.Thickness * Inch));
        Stagger[] staggers =
        [
            .. path.Staggers.Split(';', StringSplitOptions.RemoveEmptyEntries).Select(s => s.Split('/').Select(n => double.Parse(n, CultureInfo.InvariantCulture) * Inch).ToArray())
                .Select(s => new Stagger(s[0], s[1])),
        ];
        Assert.Equal(path.Printed, plate.NetArea(new HolePath(path.Holes, path.Hole * Inch, staggers))!.Value / (Inch * Inch), path.Tolerance + 1e-9);
    }

    public sealed record PublishedPath(double Width, int Holes, double Hole, string Staggers, double Thickness, double Printed, double Tolerance);
}
