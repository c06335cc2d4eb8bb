namespace SpanRater.Tests.Influence;

public class InfluenceLineTests
{
    // +1 at 0, −1 at 4, −1 at 6, 0 at 8, +2 at 10: zero at 2 and from −1 to +2 through 8.
    private static readonly InfluenceLine Line = new([0, 4, 6, 8, 10], [1, -1, -1, 0, 2]);

    [Theory]
    [InlineData(-1e-9, 0)]
    [InlineData(0, 1)]
    [InlineData(1, 0.5)]
    [InlineData(5, -1)]
    [InlineData(7, -0.5)]
    [InlineData(10, 2)]
    [InlineData(10.000001, 0)]
    public void OrdinateAt_Station_IsStraightBetweenPanelPointsAndZeroOffTheDeck(double station, double ordinate) =>
        Assert.Equal(ordinate, Line.OrdinateAt(station), 1e-15);

    [Fact]
    public void Regions_LineOfBothSigns_EndAtNeutralPointsAndDeckEnds()
    {
        Assert.Equal([new DeckStretch(0, 2), new DeckStretch(8, 10)], Line.Regions(Sense.Tension));
        Assert.Equal([new DeckStretch(2, 8)], Line.Regions(Sense.Compression));
    }

    [Fact]
    public void NeutralPoints_LineOfBothSigns_AreWhereTheSignChanges() => Assert.Equal([2, 8], Line.NeutralPoints());

    [Fact]
    public void NeutralPoints_StretchOfZeros_IsItsMiddle() =>
        Assert.Equal([3], new InfluenceLine([0, 1, 2, 4, 5], [0, 1, 0, 0, -1]).NeutralPoints());

    [Fact]
    public void NeutralPoints_LineThatOnlyTouchesZero_AreNone() =>
        Assert.Empty(new InfluenceLine([0, 1, 2], [1, 0, 1]).NeutralPoints());

    // Tension: 2 · 1 / 2 + 2 · 2 / 2 = 3; compression: 2 · 1 / 2 + 2 · 1 + 2 · 1 / 2 = 4, negative.
    [Fact]
    public void Area_EachSense_IsTheSumOfItsTriangles()
    {
        Assert.Equal(3, Line.Area(Sense.Tension), 1e-12);
        Assert.Equal(-4, Line.Area(Sense.Compression), 1e-12);
    }

    [Fact]
    public void InfluenceLine_StationsThatDoNotIncrease_AreRefused() =>
        Assert.Throws<ArgumentException>("stations", () => new InfluenceLine([0, 2, 2], [0, 1, 0]));

    [Fact]
    public void InfluenceLine_OneOrdinateShort_IsRefused() =>
        Assert.Throws<ArgumentException>("ordinates", () => new InfluenceLine([0, 1, 2], [0, 1]));

    [Fact]
    public void InfluenceLine_OrdinateThatIsNoNumber_IsRefused() =>
        Assert.Throws<ArgumentException>("ordinates", () => new InfluenceLine([0, 1], [0, double.NaN]));
}
