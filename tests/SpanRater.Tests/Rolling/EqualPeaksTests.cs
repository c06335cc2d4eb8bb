namespace SpanRater.Tests.Rolling;

/// <summary>Of equal peaks: right before left, then the smaller gaps, then the smaller station.</summary>
public class EqualPeaksTests
{
    [Fact]
    public void PeaksOf_SameBothWays_GoesRight()
    {
        Peak peak = Roll(new([0, 5, 10], [0, 1, 0]), [60, 60], AxleGap.Fixed(2));

        Assert.Equal((Direction.Right, 5.0), (peak.Direction, peak.Station));
    }

    // To the left the front axle would stand at 2 instead of 4: the direction is asked first.
    [Fact]
    public void PeaksOf_SmallerStationOnlyToTheLeft_StillGoesRight()
    {
        Peak peak = Roll(new([0, 2, 4, 10], [0, 1, 1, 0]), [60, 60], AxleGap.Fixed(2));

        Assert.Equal((Direction.Right, 4.0), (peak.Direction, peak.Station));
    }

    // A plateau from 2 to 8: any gap from 3 to 6 has both axles on it; the smallest counts, and with it the smallest station.
    [Fact]
    public void PeaksOf_PlateauAndVaryingGap_TakesTheSmallerGapThenTheSmallerStation()
    {
        Peak peak = Roll(new([0, 2, 8, 10], [0, 1, 1, 0]), [40, 60], new AxleGap(3, 6));

        Assert.Equal([3], peak.Gaps);
        Assert.Equal((5.0, Direction.Right), (peak.Station, peak.Direction));
    }

    // Apexes at 2, 6, 12, 14, all 1: gaps of 2, 4, 6 and more put both axles on one; 4 at front 6 and 2 at front 14. The
    // smaller gap wins over the smaller station.
    [Fact]
    public void PeaksOf_SmallerGapAtTheLargerStation_TakesTheSmallerGap()
    {
        Peak peak = Roll(new([0, 2, 4, 6, 8, 12, 13, 14, 16], [0, 1, 0, 1, 0, 1, 0, 1, 0]), [40, 60], new AxleGap(1.5, 5));

        Assert.Equal([2], peak.Gaps);
        Assert.Equal(14, peak.Station);
    }

    // Three axles on a level line: all gaps at their smallest, and the last axle on the left end.
    [Fact]
    public void PeaksOf_LevelLine_TakesEveryGapAtItsSmallest()
    {
        Peak peak = Roll(new([0, 10, 20], [1, 1, 1]), [10, 10, 10], new AxleGap(1, 5), new AxleGap(2, 5));

        Assert.Equal([1, 2], peak.Gaps);
        Assert.Equal(3, peak.Station);
    }

    // Apexes at 0, 1, 4 and at 20, 22, 23, each 1: driving right, front to back, the gaps are (3, 1) or (1, 2). The first
    // gap is asked first, so (1, 2) wins although its station is the larger and its second gap too.
    [Fact]
    public void PeaksOf_TwoVaryingGaps_AsksTheFrontGapFirst()
    {
        InfluenceLine line = new([0, 0.5, 1, 2, 4, 5, 19, 20, 21, 22, 22.5, 23, 24], [1, 0, 1, 0, 1, 0, 0, 1, 0, 1, 0, 1, 0]);
        Peak peak = Roll(line, [10, 20, 30], new AxleGap(0.7, 3), new AxleGap(0.7, 3));

        Assert.Equal([1, 2], peak.Gaps);
        Assert.Equal((23.0, Direction.Right), (peak.Station, peak.Direction));
    }

    [Fact]
    public void PeaksOf_SingleAxleOnTwoApexes_TakesTheSmallerStation() =>
        Assert.Equal(2, Roll(new([0, 2, 4, 6, 8], [0, 1, 0, 1, 0]), [60]).Station);

    // A difference of less than 1e-9 of the weight is no difference.
    [Fact]
    public void PeaksOf_LaterApexHigherByRoundOff_TakesTheSmallerStation() =>
        Assert.Equal(2, Roll(new([0, 2, 4, 6, 8], [0, 1, 0, 1 + 1e-12, 0]), [60]).Station);

    private static Peak Roll(InfluenceLine line, double[] loads, params AxleGap[] gaps) =>
        new RollingPlan(line.Stations, new AxleTrain(loads, gaps)).PeaksOf(line).Tension!;
}
