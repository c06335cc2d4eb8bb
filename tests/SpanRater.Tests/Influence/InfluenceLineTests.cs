namespace SpanRater.Tests;

public class InfluenceLineTests
{
    private static readonly double[] Stations = [0, 4, 8, 12, 16];

    // The line of a web member: -3 at 4 m, +3 at 8 m, and so zero at 6 m.
    private static readonly InfluenceLine Web = new(Stations, [0, -3, 3, 1.5, 0]);

    [Theory]
    [InlineData(0, 0)]
    [InlineData(2, -1.5)]
    [InlineData(4, -3)]
    [InlineData(5, -1.5)]
    [InlineData(6, 0)]
    [InlineData(8, 3)]
    [InlineData(9, 2.625)]
    [InlineData(16, 0)]
    [InlineData(-0.001, 0)]
    [InlineData(16.001, 0)]
    [InlineData(double.NaN, 0)]
    public void OrdinateAt_OnAndBetweenPanelPoints_IsStraight(double station, double ordinate) => Assert.Equal(ordinate, Web.OrdinateAt(station), 12);

    [Fact]
    public void OrdinateAt_DeckEndsThatAreNotZero_BelongToTheDeck()
    {
        var line = new InfluenceLine([0, 4], [2, -1]);
        Assert.Equal((2.0, -1.0, 0.0, 0.0), (line.OrdinateAt(0), line.OrdinateAt(4), line.OrdinateAt(-1e-9), line.OrdinateAt(4 + 1e-9)));
    }

    [Fact]
    public void Regions_SignChangeBetweenPanelPoints_EndAtTheNeutralPoint()
    {
        Assert.Equal([new DeckStretch(6, 16)], Web.Regions(Sense.Tension));
        Assert.Equal([new DeckStretch(0, 6)], Web.Regions(Sense.Compression));
        Assert.Equal(10, Web.Regions(Sense.Tension)[0].Length, 12);
    }

    [Fact]
    public void Regions_ZeroAtAPanelPointWithinASense_PartsTheRegion()
    {
        var line = new InfluenceLine(Stations, [1, 2, 0, 2, 1]);
        Assert.Equal([new DeckStretch(0, 8), new DeckStretch(8, 16)], line.Regions(Sense.Tension));
        Assert.Empty(line.Regions(Sense.Compression));
    }

    [Fact]
    public void Regions_AllZero_None() => Assert.Empty(new InfluenceLine(Stations, [0, 0, 0, 0, 0]).Regions(Sense.Tension));

    [Fact]
    public void NeutralPoints_ChangesOfSign_FoundBetweenAndOverZeroStretches()
    {
        Assert.Equal([6.0], Web.NeutralPoints());
        Assert.Equal([8.0], new InfluenceLine(Stations, [0, 1, 0, -1, 0]).NeutralPoints());
        Assert.Equal([6.0], new InfluenceLine(Stations, [-1, 0, 0, 1, 1]).NeutralPoints());
        Assert.Empty(new InfluenceLine(Stations, [0, 1, 0, 1, 0]).NeutralPoints());
    }

    // Triangles: -3 x 6 / 2 = -9; 3 x 2 / 2 + (3 + 1.5) x 4 / 2 + 1.5 x 4 / 2 = 15.
    [Fact]
    public void Area_EachSense_IsTheSumOfItsTriangles()
    {
        Assert.Equal(15, Web.Area(Sense.Tension), 12);
        Assert.Equal(-9, Web.Area(Sense.Compression), 12);
        Assert.Equal(12, new InfluenceLine([0, 4], [3, 3]).Area(Sense.Tension), 12);
        Assert.Equal(0, new InfluenceLine([0, 4], [3, 3]).Area(Sense.Compression));
    }

    [Fact]
    public void Constructor_FaultyStations_NamesStations()
    {
        foreach (double[] stations in (double[][])[[], [0], [0, 0], [4, 0], [0, double.NaN], [double.NegativeInfinity, 0]])
        {
            Assert.Equal("stations", Assert.Throws<ArgumentException>(() => new InfluenceLine(stations, new double[stations.Length])).ParamName);
        }
    }

    [Fact]
    public void Constructor_FaultyOrdinates_NamesOrdinates()
    {
        Assert.Equal("ordinates", Assert.Throws<ArgumentException>(() => new InfluenceLine([0, 4], [1])).ParamName);
        Assert.Equal("ordinates", Assert.Throws<ArgumentException>(() => new InfluenceLine([0, 4], [1, double.NaN])).ParamName);
        Assert.Equal("ordinates", Assert.Throws<ArgumentNullException>(() => new InfluenceLine([0, 4], null!)).ParamName);
        Assert.Equal("stations", Assert.Throws<ArgumentNullException>(() => new InfluenceLine(null!, [1])).ParamName);
    }

    [Fact]
    public void Constructor_ListChangedAfterwards_LineStays()
    {
        double[] ordinates = [1, 2];
        var line = new InfluenceLine([0, 4], ordinates);
        ordinates[0] = 99;
        Assert.Equal(1, line.OrdinateAt(0));
    }
}
