namespace SpanRater.Tests.Rolling;

/// <summary>Peaks that can be worked by hand.</summary>
public class RollingPlanTests
{
    // Zero at both ends, 1 at 4, −0.5 at 8.
    private static readonly InfluenceLine Line = new([0, 4, 8, 12], [0, 1, -0.5, 0]);
    private static readonly InfluenceLine Tent = new([0, 5, 10], [0, 1, 0]);

    [Fact]
    public void PeaksOf_SingleAxle_StandsOnThePeakOrdinates()
    {
        PeakPair peaks = Roll(Line, new AxleTrain([100], []));

        Assert.Equal((100.0, 4.0, Direction.Right), (peaks.Tension!.Force, peaks.Tension.Station, peaks.Tension.Direction));
        Assert.Equal((-50.0, 8.0, Direction.Right), (peaks.Compression!.Force, peaks.Compression.Station, peaks.Compression.Direction));
    }

    // Driving right with the heavy rear axle on the apex: 80 · 1 + 20 · (10 − 7)/5 = 92; driving left the same, so right counts.
    [Fact]
    public void PeaksOf_TwoAxles_HeavyOneStandsOnTheApex()
    {
        PeakPair peaks = Roll(Tent, new AxleTrain([20, 80], [AxleGap.Fixed(2)]));

        Assert.Equal(92, peaks.Tension!.Force, 1e-9);
        Assert.Equal((7.0, Direction.Right), (peaks.Tension.Station, peaks.Tension.Direction));
        Assert.Equal([12, 80], peaks.Tension.Axles.Select(a => Math.Round(a.Effect, 9)));
        Assert.Equal([7, 5], peaks.Tension.Axles.Select(a => a.Station));
        Assert.Null(peaks.Compression);
    }

    // The apex at 8 of 10: the light front axle should be on the flat side, so the vehicle drives left: 80 + 20 · 6/8 = 95.
    [Fact]
    public void PeaksOf_LopsidedLine_DrivesTheWayThatGivesMore()
    {
        PeakPair peaks = Roll(new InfluenceLine([0, 8, 10], [0, 1, 0]), new AxleTrain([20, 80], [AxleGap.Fixed(2)]));

        Assert.Equal(95, peaks.Tension!.Force, 1e-9);
        Assert.Equal((6.0, Direction.Left), (peaks.Tension.Station, peaks.Tension.Direction));
    }

    // 30 m of train on a span of 10: only one axle is on the deck at a time, the heaviest counts.
    [Fact]
    public void PeaksOf_TrainLongerThanTheSpan_AxlesOffTheDeckCountNothing()
    {
        Peak peak = Roll(Tent, new AxleTrain([50, 70, 60], [AxleGap.Fixed(15), AxleGap.Fixed(15)])).Tension!;

        Assert.Equal((70.0, 20.0), (peak.Force, peak.Station));
        Assert.Equal([0, 70, 0], peak.Axles.Select(a => a.Effect));
    }

    // Two apexes of 1 at 2 and 8 with 0.5 between: the gap of 6 puts both axles on them, neither limit does.
    [Fact]
    public void PeaksOf_VaryingGap_PutsBothAxlesOnThePeaks()
    {
        Peak peak = Roll(new InfluenceLine([0, 2, 5, 8, 10], [0, 1, 0.5, 1, 0]), new AxleTrain([40, 60], [new AxleGap(4, 9)])).Tension!;

        Assert.Equal(100, peak.Force, 1e-9);
        Assert.Equal((8.0, 6.0), (peak.Station, Assert.Single(peak.Gaps)));
    }

    // On one tent nearer is better: the gap is at its smallest, 60 + 40 · 3/5.
    [Fact]
    public void PeaksOf_VaryingGapOverOneApex_StaysAtItsSmallest()
    {
        Peak peak = Roll(Tent, new AxleTrain([40, 60], [new AxleGap(2, 9)])).Tension!;

        Assert.Equal(84, peak.Force, 1e-9);
        Assert.Equal([2], peak.Gaps);
    }

    // A deck of 20 m, +1 from 6 to 14 and −1 over its outer 5 m. Axles 30, 60, 30, each 5.5 m behind the other: with the
    // middle one on the plateau one neighbour at most is on it too, and the other is on the deck, where the line is −1.
    [Theory]
    [InlineData(RelievingAxles.Counted, 60 + 30 - 30)]
    [InlineData(RelievingAxles.LeftOut, 60 + 30)]
    public void PeaksOf_RelievingAxle_CountsOrNotAsTheTrainSays(RelievingAxles relieving, double force)
    {
        var line = new InfluenceLine([0, 5, 6, 14, 15, 20], [-1, -1, 1, 1, -1, -1]);
        Peak peak = Roll(line, new AxleTrain([30, 60, 30], [AxleGap.Fixed(5.5), AxleGap.Fixed(5.5)], relieving)).Tension!;

        Assert.Equal(force, peak.Force, 1e-9);
        AxleEffect relieves = Assert.Single(peak.Axles, a => a.Ordinate < 0);
        Assert.Equal((-1.0, relieving == RelievingAxles.LeftOut ? 0.0 : -30.0), (relieves.Ordinate, relieves.Effect));
    }

    // +1 at the left end, −1 just beyond: two axles 1 m apart. With the rear on the end it counts +1 · 30 against the front's
    // −1 · 50; in the limit just before the rear comes on, the front alone gives −50.
    [Fact]
    public void PeaksOf_JumpAtTheDeckEnd_TakesTheLimitBeforeTheAxleComesOn()
    {
        var line = new InfluenceLine([0, 1, 2], [1, -1, 0]);
        Peak peak = Roll(line, new AxleTrain([50, 30], [AxleGap.Fixed(1)])).Compression!;

        Assert.Equal((-50.0, 1.0, Direction.Right), (peak.Force, peak.Station, peak.Direction));
        Assert.Equal([-50, 0], peak.Axles.Select(a => a.Effect));
        Assert.Equal(0, peak.Axles[1].Station);
    }

    [Fact]
    public void PeaksOf_AxleOnTheDeckEnd_Counts()
    {
        Peak peak = Roll(new InfluenceLine([0, 10], [1, 0]), new AxleTrain([70], [])).Tension!;

        Assert.Equal((70.0, 0.0), (peak.Force, peak.Station));
    }

    [Fact]
    public void PeaksOf_LineOfZeros_HasNoPeaks() =>
        Assert.Equal(new PeakPair(null, null), Roll(new InfluenceLine([0, 5, 10], [0, 0, 0]), new AxleTrain([70], [])));

    // 1e-10 per unit load is under 1e-9 of the weight: round-off, no force.
    [Fact]
    public void PeaksOf_ForceBelowRoundOff_IsNone() =>
        Assert.Null(Roll(new InfluenceLine([0, 5, 10], [0, 1e-10, 0]), new AxleTrain([70], [])).Tension);

    [Fact]
    public void PeaksOf_LineOverOtherStations_IsRefused() =>
        Assert.Throws<ArgumentException>("line", () => new RollingPlan([0, 5, 11], new AxleTrain([70], [])).PeaksOf(Tent));

    private static PeakPair Roll(InfluenceLine line, AxleTrain train) => new RollingPlan(line.Stations, train).PeaksOf(line);
}
