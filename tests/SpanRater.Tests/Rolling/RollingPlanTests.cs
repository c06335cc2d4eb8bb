namespace SpanRater.Tests;

/// <summary>Peaks that can be found by hand.</summary>
public class RollingPlanTests
{
    private static readonly double[] Stations = [0, 4, 8, 12, 16];
    private static readonly InfluenceLine Chord = new(Stations, [0, 0.5, 1, 0.5, 0]);
    private static readonly InfluenceLine Web = new(Stations, [0, -3, 3, 1.5, 0]);
    private static readonly InfluenceLine TwoHumps = new(Stations, [0, 1, 0, 1, 0]);
    private static readonly InfluenceLine Jumping = new([0, 4], [1, -1]);

    [Fact]
    public void PeaksOf_SingleAxle_StandsOnTheLargestOrdinate()
    {
        PeakPair peaks = PeaksOf(Web, Train([10]));
        AssertPeak(30, 8, Direction.Right, [], peaks.Tension);
        AssertPeak(-30, 4, Direction.Right, [], peaks.Compression);
        Assert.Same(peaks.Tension, peaks.Of(Sense.Tension));
        Assert.Same(peaks.Compression, peaks.Of(Sense.Compression));
    }

    [Fact]
    public void PeaksOf_LineOfOneSense_HasNoPeakInTheOther() => Assert.Null(PeaksOf(Chord, Train([10])).Compression);

    // The heavy axle at midspan, the light one 4 m ahead: 30 x 1 + 10 x 0.5.
    [Fact]
    public void PeaksOf_TwoAxles_HeavyOneStandsAtMidspan()
    {
        Peak? peak = PeaksOf(Chord, Train([10, 30], 4)).Tension;
        AssertPeak(35, 12, Direction.Right, [4], peak);
        Assert.Equal([new AxleEffect(10, 12, 0.5, 5), new AxleEffect(30, 8, 1, 30)], peak!.Axles);
    }

    // The ordinate falls from 1 to 0.25 to the right of the peak: the heavy front axle stands on it only when driving left.
    [Fact]
    public void PeaksOf_HeavyFrontAxle_DrivesLeft() =>
        AssertPeak(32.5, 4, Direction.Left, [4], PeaksOf(new([0, 4, 8, 12], [0, 1, 0.25, 0]), Train([30, 10], 4)).Tension);

    [Fact]
    public void PeaksOf_TrainLongerThanTheSpan_OneAxleAtATime() =>
        AssertPeak(10, 4, Direction.Right, [10, 10], PeaksOf(new([0, 4, 8], [0, 1, 0]), Train([10, 10, 10], 10, 10)).Tension);

    // Two humps 8 m apart, which lies within the gap's range: an axle on each.
    [Fact]
    public void PeaksOf_VaryingGapThatFits_PutsAnAxleOnEachHump() => AssertPeak(
        20, 12, Direction.Right, [8], PeaksOf(TwoHumps, new AxleTrain([10, 10], [new AxleGap(3, 10)])).Tension);

    // At most 6 m: one axle on a hump, the other 2 m short of the next, where the ordinate is 0.5.
    [Fact]
    public void PeaksOf_VaryingGapTooShort_StandsAtItsLimit() => AssertPeak(
        15, 10, Direction.Right, [6], PeaksOf(TwoHumps, new AxleTrain([10, 10], [new AxleGap(3, 6)])).Tension);

    // Three axles 4 m apart on a line of -3, 3, -3: two relieve whenever one pulls.
    [Fact]
    public void PeaksOf_RelievingAxles_CountOrAreLeftOut()
    {
        var line = new InfluenceLine(Stations, [0, -3, 3, -3, 0]);
        PeakPair counted = PeaksOf(line, Train([10, 10, 10], 4, 4));
        Assert.Null(counted.Tension);
        AssertPeak(-30, 4, Direction.Right, [4, 4], counted.Compression);

        PeakPair leftOut = PeaksOf(line, new AxleTrain([10, 10, 10], [AxleGap.Fixed(4), AxleGap.Fixed(4)], RelievingAxles.LeftOut));
        AssertPeak(30, 8, Direction.Right, [4, 4], leftOut.Tension);
        AssertPeak(-60, 12, Direction.Right, [4, 4], leftOut.Compression);
        Assert.Equal([-30.0, 0.0, -30.0], leftOut.Compression!.Axles.Select(a => a.Effect));
    }

    [Fact]
    public void PeaksOf_AxleOnADeckEndThatIsNotZero_CountsThere()
    {
        PeakPair peaks = PeaksOf(Jumping, Train([10]));
        AssertPeak(10, 0, Direction.Right, [], peaks.Tension);
        AssertPeak(-10, 4, Direction.Right, [], peaks.Compression);
        Assert.Equal((Approach.At, Approach.At), (peaks.Tension!.Approach, peaks.Compression!.Approach));
    }

    // As long as the deck: with the heavy axle on the left end the light one, at -1, is just off the right end.
    [Fact]
    public void PeaksOf_TrainAsLongAsAJumpingDeck_TakesTheLimitJustPastTheEnd()
    {
        Peak? peak = PeaksOf(Jumping, Train([5, 10], 4)).Tension;
        AssertPeak(10, 4, Direction.Right, [4], peak);
        Assert.Equal([new AxleEffect(5, 4, 0, 0), new AxleEffect(10, 0, 1, 10)], peak!.Axles);
        Assert.Equal(Approach.JustRight, peak.Approach);
    }

    // The heavy axle on the hump wants the light ones off either end, 4 m apart, and the gaps reach 4 m and no further: one
    // of them stays on the deck, 10 - 2.
    [Fact]
    public void PeaksOf_VaryingGapAtItsLargest_LeavesNoRoomForBothOuterAxlesOffTheDeck() => AssertPeak(
        8,
        4,
        Direction.Right,
        [2, 1],
        PeaksOf(new([0, 1, 2, 3, 4], [-2, -2, 2, -2, -2]), new AxleTrain([1, 5, 1], [AxleGap.Fixed(2), new AxleGap(1, 2)])).Tension);

    // A little more of the gap, and both are off.
    [Fact]
    public void PeaksOf_VaryingGapBeyondTheDeck_BothOuterAxlesAreOffTheDeck() => AssertPeak(
        10,
        4,
        Direction.Right,
        [2, 2],
        PeaksOf(new([0, 1, 2, 3, 4], [-2, -2, 2, -2, -2]), new AxleTrain([1, 5, 1], [AxleGap.Fixed(2), new AxleGap(1, 3)])).Tension);

    // Both ends pull: the train as long as the deck counts at both of them in one position alone.
    [Fact]
    public void PeaksOf_TrainAsLongAsTheDeckAndBothEndsPull_TakesThePositionItself() =>
        AssertPeak(15, 4, Direction.Right, [4], PeaksOf(new([0, 2, 4], [1, 0, 1]), Train([5, 10], 4)).Tension);

    [Fact]
    public void PeaksOf_EffectBelowABillionthOfTheWeight_IsZero()
    {
        Assert.Null(PeaksOf(new([0, 4, 8], [0, 0.9e-9, 0]), Train([10])).Tension);
        Assert.NotNull(PeaksOf(new([0, 4, 8], [0, 1.1e-9, 0]), Train([10])).Tension);
    }

    [Fact]
    public void PeaksOf_LineOverOtherStations_Throws()
    {
        var plan = new RollingPlan([0, 4, 8], Train([10]));
        Assert.Equal("line", Assert.Throws<ArgumentException>(() => plan.PeaksOf(new InfluenceLine([0, 4, 9], [0, 1, 0]))).ParamName);
        Assert.Equal("line", Assert.Throws<ArgumentNullException>(() => plan.PeaksOf(null!)).ParamName);
    }

    [Fact]
    public void Constructor_FaultyArguments_NamesThem()
    {
        Assert.Equal("train", Assert.Throws<ArgumentNullException>(() => new RollingPlan([0, 4], null!)).ParamName);
        Assert.Equal("stations", Assert.Throws<ArgumentNullException>(() => new RollingPlan(null!, Train([10]))).ParamName);
        Assert.Equal("stations", Assert.Throws<ArgumentException>(() => new RollingPlan([0], Train([10]))).ParamName);
        Assert.Equal("stations", Assert.Throws<ArgumentException>(() => new RollingPlan([4, 0], Train([10]))).ParamName);
    }

    private static AxleTrain Train(double[] loads, params double[] gaps) => new(loads, [.. gaps.Select(AxleGap.Fixed)]);

    private static PeakPair PeaksOf(InfluenceLine line, AxleTrain train) => new RollingPlan(line.Stations, train).PeaksOf(line);

    private static void AssertPeak(double force, double station, Direction direction, double[] gaps, Peak? peak)
    {
        Assert.NotNull(peak);
        Assert.Equal(force, peak.Force, 1e-12 * Math.Abs(force));
        Assert.Equal((station, direction), (peak.Station, peak.Direction));
        Assert.Equal(gaps, peak.Gaps);
    }
}
