namespace SpanRater.Tests;

/// <summary>Of equal peaks: right before left, then the smaller gaps, then the smaller station.</summary>
public class EqualPeaksTests
{
    [Fact]
    public void PeaksOf_SymmetricLine_RightBeforeLeft()
    {
        Peak peak = Tension([0, 4, 8, 12, 16], [0, 0.5, 1, 0.5, 0], [10, 10], AxleGap.Fixed(4));
        Assert.Equal((Direction.Right, 8.0), (peak.Direction, peak.Station));
    }

    // Heavy axle on 1, light on 0.5: driving right that takes a gap of 8 m, driving left only 4 m. Each gives 25.
    [Fact]
    public void PeaksOf_LeftHasTheSmallerGap_RightStillComesFirst()
    {
        Peak peak = Tension([0, 4, 8, 12, 16, 20], [0, 1, 0, 0.5, 1, 0], [10, 20], new AxleGap(4, 8));
        Assert.Equal((25.0, Direction.Right, 12.0), (peak.Force, peak.Direction, peak.Station));
        Assert.Equal([8.0], peak.Gaps);
    }

    // Humps at 4, 16 and 24 m: gap 12 with the front axle at 16, or gap 8 with the front axle at 24. Each gives 20.
    [Fact]
    public void PeaksOf_SmallerGapAtTheLargerStation_SmallerGapComesFirst()
    {
        Peak peak = Tension([0, 4, 8, 12, 16, 20, 24, 28], [0, 1, 0, 0, 1, 0, 1, 0], [10, 10], new AxleGap(6, 14));
        Assert.Equal((20.0, Direction.Right, 24.0), (peak.Force, peak.Direction, peak.Station));
        Assert.Equal([8.0], peak.Gaps);
    }

    [Fact]
    public void PeaksOf_LevelLine_SmallestGapsThenSmallestStation()
    {
        Peak peak = Tension([0, 4, 8, 12], [1, 1, 1, 1], [10, 10, 10], new AxleGap(1, 2), new AxleGap(2, 3));
        Assert.Equal((30.0, Direction.Right, 3.0), (peak.Force, peak.Direction, peak.Station));
        Assert.Equal([1.0, 2.0], peak.Gaps);
    }

    // Humps at 2, 6, 12 and 16 m: 30 with the gaps 4 and 6 m (front at 16) or 6 and 4 m (front at 12).
    [Fact]
    public void PeaksOf_EitherGapMayBeSmall_TheFrontGapIsComparedFirst()
    {
        Peak peak = Tension([0, 2, 4, 6, 8, 10, 12, 14, 16, 18, 20], [0, 1, 0, 1, 0, 0, 1, 0, 1, 0, 0], [10, 10, 10], new AxleGap(4, 6), new AxleGap(4, 6));
        Assert.Equal((30.0, 16.0), (peak.Force, peak.Station));
        Assert.Equal([4.0, 6.0], peak.Gaps);
    }

    [Fact]
    public void PeaksOf_TwoEqualHumps_SmallerStationComesFirst() =>
        Assert.Equal(4, Tension([0, 4, 8, 12, 16], [0, 1, 0, 1, 0], [10]).Station);

    [Theory]
    [InlineData(1e-14, 4)]
    [InlineData(1e-10, 12)]
    public void PeaksOf_HumpsThatDifferByAHair_AreEqualWithinRoundOffOnly(double more, double station) =>
        Assert.Equal(station, Tension([0, 4, 8, 12, 16], [0, 1, 0, 1 + more, 0], [10]).Station);

    private static Peak Tension(double[] stations, double[] ordinates, double[] loads, params AxleGap[] gaps) =>
        new RollingPlan(stations, new AxleTrain(loads, gaps)).PeaksOf(new InfluenceLine(stations, ordinates)).Tension!;
}
