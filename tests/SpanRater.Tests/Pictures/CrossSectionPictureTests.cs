using SpanRater.Files;
using SpanRater.Pictures;

namespace SpanRater.Tests.Pictures;

/// <summary>The cross-section stands for the engine's numbers: every mark where the wheel, kerb or truss is.</summary>
public class CrossSectionPictureTests
{
    private const double Foot = 0.3048;
    private const double Tolerance = 1e-9;

    // Trusses 22 ft apart, roadway 20 ft: wheels 3, 9, 13 and 19 ft from the left truss, which is 11 ft left of the middle.
    [Fact]
    public void Of_TwoTrucksAbreast_DrawsWheelsKerbsAndTrussesWhereTheyAre()
    {
        Drawing drawing = Assert.Single(SectionsOf(ExamplePictures.CrossSectionOf(22, 20, 0)));

        Same([-8, -2, 2, 8], Middles(drawing, "wheel"));
        Same([-8, -2, 2, 8], drawing.Strokes.Where(s => s.Shows == "wheel load").Select(s => s.Points[0].X));
        Same([-10], drawing.Parts.OfType<Area>().Where(a => a.Shows == "left kerb").Select(a => a.Points.Max(p => p.X)));
        Same([10], drawing.Parts.OfType<Area>().Where(a => a.Shows == "right kerb").Select(a => a.Points.Min(p => p.X)));
        Same([-11], Middles(drawing, "truss 0"));
        Same([11], Middles(drawing, "truss 1"));
        Same([-11, 11], drawing.Parts.OfType<Area>().Where(a => a.Shows == "floorbeam").SelectMany(a => a.Points.Select(p => p.X)).Distinct());
        Same([-11], drawing.Strokes.Where(s => s.Shows == "reaction").Select(s => s.Points[0].X));
        Same([11], Middles(drawing, "pivot"));
        Assert.Equal(4, Texts(drawing, "wheel load").Count(t => t == "½ P"));
    }

    [Fact]
    public void Of_TwoTrucksAbreast_WritesEveryDistanceAndTheShare()
    {
        Picture picture = ExamplePictures.CrossSectionOf(22, 20, 0);
        Drawing drawing = Assert.Single(SectionsOf(picture));

        Assert.Equal(["2 ft", "6 ft", "4 ft", "6 ft", "2 ft"], drawing.Texts.Where(t => t.Shows == "between kerbs").OrderBy(t => t.At.X).Select(t => t.Content));
        Assert.Equal(["3 ft", "9 ft", "13 ft", "19 ft"], Texts(drawing, "from truss").Take(4));
        Assert.Equal(["0.864", "0.591", "0.409", "0.136"], Texts(drawing, "part"));
        Assert.Equal(["roadway 20 ft"], Texts(drawing, "roadway"));
        Assert.Equal(["trusses 22 ft apart, centre to centre"], Texts(drawing, "trusses"));
        Assert.Equal(["R = 1.000 P"], Texts(drawing, "reaction"));
        Assert.Equal(["north truss"], Texts(drawing, "truss 0"));
        Assert.Contains(picture.Texts, t => t.Content == "R = ½ P × (0.864 + 0.591 + 0.409 + 0.136) = 1.000 P; times the presence factor 1.00: share 1.000.");
        Assert.Contains(picture.Texts, t => t.Content == "Type 3: two vehicles abreast count. The north truss is considered; the south truss carries the same, mirrored.");
        Assert.Contains(picture.Texts, t => t.Content == Words.Caution);
    }

    [Fact]
    public void Of_TheEnginesWheels_StandAtTheirDistancesFromTheTrussConsidered()
    {
        Deck deck = ExamplePictures.DeckOf(25, 19, 1.5);
        var found = (ShareOutcome.Found)LeverRule.Share(deck, Vehicle.StandardGauge, null, RatingMethod.All[0].Presence);
        Drawing[] drawings = SectionsOf(ExamplePictures.CrossSectionOf(25, 19, 1.5));

        Assert.Equal(2, drawings.Length);
        Assert.All(found.Left.Wheels.Zip(Middles(drawings[0], "wheel").Order()), p => Assert.Equal(p.First, p.Second + (deck.TrussSpacing!.Value / 2), Tolerance));
        Assert.All(found.Right.Wheels.Zip(Middles(drawings[1], "wheel").OrderDescending()), p => Assert.Equal(p.First, (deck.TrussSpacing!.Value / 2) - p.Second, Tolerance));
        double spacing = deck.TrussSpacing!.Value;
        Assert.Equal($"R = {ResultTable.Figure(found.Right.Wheels.Sum(w => (spacing - w) / spacing) / 2, 3)} P", Texts(drawings[1], "reaction").Single());
    }

    // What is drawn, but for the slashes of dimensions and for texts, lies mirrored where the roadway lies mirrored.
    [Fact]
    public void Of_MirroredRoadway_IsTheMirroredDrawing()
    {
        Drawing[] drawn = SectionsOf(ExamplePictures.CrossSectionOf(25, 19, 1.5)), mirrored = SectionsOf(ExamplePictures.CrossSectionOf(25, 19, -1.5));

        for (int truss = 0; truss < 2; truss++)
        {
            foreach (string shows in (string[])["wheel", "wheel load", "vehicle", "floorbeam", "deck", "reaction", "pivot", "part", "guide", "roadway centre", "middle", "lever rule"])
            {
                string[] one = Points(drawn[truss], shows, 1), other = Points(mirrored[1 - truss], shows, -1);
                Assert.NotEmpty(one);
                Assert.Equal(one, other);
            }

            Assert.Equal(Points(drawn[truss], "left kerb", 1), Points(mirrored[1 - truss], "right kerb", -1));
            Assert.Equal(Points(drawn[truss], "truss 0", 1), Points(mirrored[1 - truss], "truss 1", -1));
        }
    }

    [Fact]
    public void Of_RoadwayOffCentre_SaysByHowMuchAndWhere()
    {
        Assert.Contains(ExamplePictures.CrossSectionOf(25, 19, 1.5).Texts, t => t.Content == "centre of the roadway, 1.5 ft to the right of the middle between the trusses (dotted)");
        Assert.Contains(ExamplePictures.CrossSectionOf(25, 19, -1.5).Texts, t => t.Content == "centre of the roadway, 1.5 ft to the left of the middle between the trusses (dotted)");
    }

    [Fact]
    public void Of_Strips_DrawsHatchedBlocksFromEdgeToEdge()
    {
        Drawing drawing = Assert.Single(SectionsOf(ExamplePictures.Strips()));

        Same([-10, 0, 0, 10], drawing.Parts.OfType<Area>().Where(a => a.Shows == "strip").SelectMany(a => (double[])[a.Points.Min(p => p.X), a.Points.Max(p => p.X)]));
        Assert.True(drawing.Strokes.Count(s => s.Shows == "strip hatching") > 50);
        Assert.Equal(["lane load 10 ft", "lane load 10 ft"], Texts(drawing, "strip"));
        Assert.Equal(["0.727", "0.273"], Texts(drawing, "part"));
    }

    [Fact]
    public void Of_AGivenShare_SaysThatTheLeverRuleIsNotWhatIsRatedWith() =>
        Assert.Contains(
            ExamplePictures.CrossSectionOf(22, 20, 0, share: 0.7).Texts,
            t => t.Shows == "warning" && t.Content.StartsWith("Not what is rated with: truss_share 0.700 is given in bridge.toml and replaces the lever rule, and no reason is given", StringComparison.Ordinal));

    [Fact]
    public void Of_NoVehicleWithAShare_IsRefused() => Assert.Throws<ArgumentException>("shares", () => ExamplePictures.CrossSectionOf(22, 7, 0));

    private static Drawing[] SectionsOf(Picture picture) => [.. picture.Panels.Skip(1).Select(p => p.Drawing)];

    private static IEnumerable<double> Middles(Drawing drawing, string shows) =>
        drawing.Parts.OfType<Area>().Where(a => a.Shows == shows).Select(a => (a.Points.Min(p => p.X) + a.Points.Max(p => p.X)) / 2);

    private static IEnumerable<string> Texts(Drawing drawing, string shows) => drawing.Texts.Where(t => t.Shows == shows).Select(t => t.Content);

    private static void Same(double[] feet, IEnumerable<double> metres) =>
        Assert.Equal(feet, metres.Order().Select(x => Math.Round(x / Foot, 9)).Select(x => x + 0.0));

    private static string[] Points(Drawing drawing, string shows, int sign) =>
    [
        .. drawing.Parts.Where(p => p.Shows == shows).SelectMany(part => part switch
        {
            Stroke stroke => stroke.Points,
            Area area => area.Points,
            Mark mark => [mark.At],
            _ => (IEnumerable<DrawingPoint>)[],
        }).Select(p => FormattableString.Invariant($"{Math.Round(sign * p.X, 6) + 0.0:0.000000} {p.Y:0.000000}")).Order(StringComparer.Ordinal),
    ];
}
