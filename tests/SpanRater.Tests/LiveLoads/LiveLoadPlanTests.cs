namespace SpanRater.Tests.LiveLoads;

/// <summary>What acts together, and the length that the formula for impact takes, on a line with two stretches of a sense.</summary>
public class LiveLoadPlanTests
{
    // Positive from 0 to 10 with 1 in the middle, and from 14 to 44 with 0.2; negative between, from 10 to 14 with -1.
    private static readonly InfluenceLine Line = new([0, 5, 10, 12, 14, 29, 44], [0, 1, 0, -1, 0, 0.2, 0]);

    private static readonly Vehicle Axle = new("one axle", VehicleClass.Design, new AxleTrain([100], []), Vehicle.StandardGauge, "made up for the test");

    // 20 a metre on areas of 5 and 3, and the concentrated load on the larger peak; the impact length of both is 10 + 30.
    [Fact]
    public void EffectsOn_ALaneInPlaceOfTheTruck_AreApartAndTakeAllAdverseLength()
    {
        LiveEffect[] effects = Effects(new LaneLoad(Constant(20), PointOnChords: 70, PointOnOthers: 90, TakesImpact: true), Sense.Tension);

        Assert.Equal([100.0, 160 + 90], effects.Select(e => e.Force));
        Assert.Equal([10.0], effects[0].Parts.Select(p => p.LoadedLength));
        Assert.Equal([40.0, 40.0], effects[1].Parts.Select(p => p.LoadedLength));
    }

    [Fact]
    public void EffectsOn_AChord_TakeTheConcentratedLoadForMoments()
    {
        var plan = new LiveLoadPlan(Line.Stations, new Loading("both", VehicleClass.Design, [], new LaneLoad(Constant(20), 70, 90), "made up for the test"));

        Assert.Equal(160 + 70, plan.MostOn(Line, Sense.Tension, isChord: true)!.Force, 1e-12);
        Assert.Equal(160 + 90, plan.MostOn(Line, Sense.Tension)!.Force, 1e-12);
        Assert.Equal(-(20 * 2) - 90, plan.MostOn(Line, Sense.Compression)!.Force, 1e-12);
    }

    [Fact]
    public void EffectsOn_ALaneWithTheTruck_AddUp()
    {
        LiveEffect effect = Assert.Single(Effects(new LaneLoad(Constant(20)), Sense.Tension));

        Assert.Equal(100 + 160, effect.Force, 1e-12);
        Assert.Equal([10.0, 40], effect.Parts.Select(p => p.LoadedLength));
    }

    [Fact]
    public void EffectsOn_TheOtherSense_LoadTheOtherStretch() =>
        Assert.Equal(-100 - 40, Assert.Single(Effects(new LaneLoad(Constant(20)), Sense.Compression)).Force, 1e-12);

    private static ConstantLineLoad Constant(double load) => new(load, "made up for the test");

    private static LiveEffect[] Effects(LaneLoad lane, Sense sense) =>
        [.. new LiveLoadPlan(Line.Stations, new Loading("both", VehicleClass.Design, [Axle], lane, "made up for the test")).EffectsOn(Line, sense)];
}
