namespace SpanRater.Tests;

/// <summary>The search for recorded traffic on lines so simple that each peak follows on paper.</summary>
public class CrossingSearchTests
{
    private const double Equal = 1e-12;

    // Moment at a quarter of a simple span of 20 m: 15 x 5 / 20 = 3.75 m there, straight to zero at both ends (any text on influence lines).
    private static readonly InfluenceLine QuarterPoint = new([0, 5, 10, 15, 20], [0, 3.75, 2.5, 1.25, 0]);

    [Fact]
    public void Cross_OneAxle_BringsItsLoadTimesTheGreatestOrdinate()
    {
        (double greatest, double least) = Cross(QuarterPoint, [80], []);

        Assert.Equal(80 * 3.75, greatest, Equal);
        Assert.Equal(0, least);
    }

    // Heavy axle at 5 m: the light one 4 m from it stands at 9 m (ordinate 11/4) or at 1 m (ordinate 3/4). The first is more.
    [Theory]
    [InlineData(40, 120)]
    [InlineData(120, 40)]
    public void Cross_EitherWay_TakesTheWorse(double front, double rear) =>
        Assert.Equal((120 * 3.75) + (40 * 2.75), Cross(QuarterPoint, [front, rear], [4]).Greatest, Equal);

    // A shear line has both signs: -1/4 just left of the cut's panel, +1/2 right of it, zero in between at 20/3 m.
    [Fact]
    public void Cross_LineOfBothSigns_FindsBoth()
    {
        (double greatest, double least) = Cross(new InfluenceLine([0, 5, 10, 20], [0, -0.25, 0.5, 0]), [100, 60], [10]);

        // 100 at 10 m, 60 at 20 m or at 0; and 100 at 5 m with 60 off the deck.
        Assert.Equal(100 * 0.5, greatest, Equal);
        Assert.Equal(-100 * 0.25, least, Equal);
    }

    // Both ends belong to the deck: the rear axle is on before the front one is off, however the sum of the gaps is rounded.
    [Fact]
    public void Cross_TrainAsLongAsTheDeckOnALineThatJumpsAtBothEnds_HasBothAxlesOnForAnInstant()
    {
        var line = new InfluenceLine([0, 10.1, 20.4], [1, -2, 1]);

        Assert.Equal(30 + 50, Cross(line, [30, 50], [20.4]).Greatest, Equal);
        Assert.Equal(30 + 50, Cross(line, [30, 0, 0, 50], [0.1 + 0.2, 20.1 - 10, 10]).Greatest, Equal);
    }

    // The reaction at the left end jumps from zero to one; of two axles at one place both come on together.
    [Fact]
    public void Cross_GapOfZeroOnALineThatJumps_CountsBothAxles() =>
        Assert.Equal(70, Cross(new InfluenceLine([0, 8], [1, 0]), [30, 40], [0]).Greatest, Equal);

    [Fact]
    public void Cross_LineThatIsZero_HasNoEffect() => Assert.Equal((0, 0), Cross(new InfluenceLine([0, 5, 8], [0, 1e-12, 0]), [1e5, 1e5], [1.2]));

    // End reaction of a simple span of 100 ft under HS20-44 (8, 32, 32 kip, 14 ft apart): 65.3 kip. AASHTO Standard Specifications, appendix A, from memory;
    // by hand 32 + 32 x 86/100 + 8 x 72/100 = 65.28.
    [Fact]
    public void Cross_Hs20OnAHundredFeet_GivesThePublishedEndReaction() =>
        Assert.Equal(65.3, Cross(new InfluenceLine([0, 25, 50, 75, 100], [1, 0.75, 0.5, 0.25, 0]), [8, 32, 32], [14, 14]).Greatest, 0.05);

    [Fact]
    public void Cross_OneTrainAfterAnother_RemembersNothing()
    {
        var lines = CrossedLines.Of(QuarterPoint.Stations, [QuarterPoint]);
        var search = new CrossingSearch(lines);
        double[] greatest = [1e9], least = [-1e9];
        search.Cross([500, 400, 300], [3, 4], greatest, least);
        search.Cross([80], [], greatest, least);

        Assert.Equal(80 * 3.75, greatest[0], Equal);
        Assert.Equal(0, least[0]);
    }

    // Most members of a Pratt truss share their line with others, up to a factor: chords of a panel, diagonal and post.
    [Fact]
    public void Of_PrattTrussOfSixteenPanels_FindsHalfAsManyShapesAsMembers()
    {
        IReadOnlyList<InfluenceEffect> members = InfluenceLines.Of(new PrattTruss(16, 5, 7).Build()).Value!.Members;
        var lines = CrossedLines.Of(members[0].Line.Stations, [.. members.Select(m => m.Line)]);

        // Moments about 15 panel points and shears of 14 panels that are not at an end, and two hangers. The end posts go with the first moment.
        Assert.Equal(61, lines.Count);
        Assert.Equal(31, lines.Shapes);
        Assert.True(lines.Shaped.Mirrored);
    }

    [Fact]
    public void Of_LineOverOtherStations_Throws() => Assert.Equal(
        "Line 1 must have the stations given. (Parameter 'lines')",
        Assert.Throws<ArgumentException>(() => CrossedLines.Of(QuarterPoint.Stations, [QuarterPoint, new InfluenceLine([0, 20], [0, 0])])).Message);

    [Theory]
    [InlineData(new double[0], new double[0], "0 gaps for 0 axles; there must be an axle, and one gap less than axles. (Parameter 'gaps')")]
    [InlineData(new double[] { 1, 2 }, new double[0], "0 gaps for 2 axles; there must be an axle, and one gap less than axles. (Parameter 'gaps')")]
    [InlineData(new double[] { 1, -2 }, new double[] { 1 }, "Axle loads and gaps must be finite and not negative. (Parameter 'loads')")]
    [InlineData(new double[] { double.NaN }, new double[0], "Axle loads and gaps must be finite and not negative. (Parameter 'loads')")]
    [InlineData(new double[] { 1, 2 }, new double[] { double.PositiveInfinity }, "Axle loads and gaps must be finite and not negative. (Parameter 'gaps')")]
    [InlineData(new double[] { 1, 2 }, new double[] { -1 }, "Axle loads and gaps must be finite and not negative. (Parameter 'gaps')")]
    public void Cross_BadTrain_Throws(double[] loads, double[] gaps, string message) =>
        Assert.Equal(message, Assert.Throws<ArgumentException>(() => Cross(QuarterPoint, loads, gaps)).Message);

    [Fact]
    public void Cross_RoomForAnotherNumberOfLines_Throws()
    {
        var search = new CrossingSearch(CrossedLines.Of(QuarterPoint.Stations, [QuarterPoint]));

        Assert.Equal(
            "Room for 2 greatest and 1 least effects; there must be 1 of each. (Parameter 'greatest')",
            Assert.Throws<ArgumentException>(() => search.Cross([1], [], new double[2], new double[1])).Message);
    }

    private static (double Greatest, double Least) Cross(InfluenceLine line, double[] loads, double[] gaps)
    {
        double[] greatest = [0], least = [0];
        new CrossingSearch(CrossedLines.Of(line.Stations, [line])).Cross(loads, gaps, greatest, least);
        return (greatest[0], least[0]);
    }
}
