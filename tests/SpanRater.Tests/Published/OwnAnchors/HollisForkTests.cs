using static SpanRater.Tests.Published.CustomaryUnits;

namespace SpanRater.Tests.Published.OwnAnchors;

/// <summary>
/// The invented Hollis Fork farm bridge: pin-connected Pratt of 96 ft in six panels of 16 ft, 20 ft deep, counters in the middle
/// panels, dead load 0.48 kip a foot of truss. Our own regression anchors, computed independently by an elimination
/// solver, not published. Tolerance: half of the last digit.
/// </summary>
public class HollisForkTests
{
    private const double Tolerance = 0.005 + 1e-9;

    private static readonly Bridge Bridge = RodAnchors.Read("hollis-fork");

    private static readonly Vehicle Type3 = PublishedVehicles.Shipped("Type 3");

    // Method of sections, from the reaction of 19.2 kip beside the half panel over it: moment over depth, shear over sine.
    [Theory]
    [InlineData("L2L3", 24.58, ((19.2 * 32) - (7.68 * 16)) / 20)]
    [InlineData("U2U3", -27.65, -((19.2 * 48) - (7.68 * (32 + 16))) / 20)]
    [InlineData("L1U1", 7.68, 7.68)]
    [InlineData("L2U3", 0, 0)]
    public void Force_AllDeadLoad_IsTheAnchor(string member, double kips, double byHand)
    {
        Assert.Equal(kips, RodAnchors.Dead(Bridge, member), Tolerance);
        Assert.Equal(byHand, RodAnchors.Dead(Bridge, member), 1e-6);
    }

    [Fact]
    public void Force_AllDeadLoadInTheMainOfTheMiddlePanel_IsTheAnchor() => Assert.Equal(4.92, RodAnchors.Dead(Bridge, "U2L3"), Tolerance);

    [Theory]
    [InlineData("L2L3", Sense.Tension, 47.13)]
    [InlineData("L1U1", Sense.Tension, 30.75)]
    [InlineData("L2U3", Sense.Tension, 11.46)]
    [InlineData("L3U3", Sense.Compression, -8.95)]
    [InlineData("U2L3", Sense.Tension, 27.05)]
    [InlineData("U2L3", Sense.Compression, -4.92)]
    public void Roll_TheWholeType3WithDeadLoadOn_IsTheAnchor(string member, Sense sense, double kips) =>
        Assert.Equal(kips, RodAnchors.Roll(Bridge, member, Type3).Of(sense)!.Force / Kip, Tolerance);

    // The main cannot lose more than its dead force: the counter takes the rest.
    [Fact]
    public void Roll_TheMainOfTheMiddlePanel_LosesItsDeadForceAndNoMore()
    {
        Assert.Equal(-RodAnchors.Dead(Bridge, "U2L3"), RodAnchors.Roll(Bridge, "U2L3", Type3).Compression!.Force / Kip, 1e-9);
        Assert.Equal(-16.38, RodAnchors.RollOnMains(Bridge, "U2L3", Type3.Train).Compression!.Force / Kip, Tolerance);
    }

    // The overlay of 2 in × 13 ft 4 in × 144 pcf is 0.32 klf, half of it on one truss, 16 ft of it on the hip vertical.
    [Fact]
    public void TakeOff_OfTheHipVertical_HoldsTheOverlayWithAThird()
    {
        TakeOff takeOff = Bridge.DeadAccount!.TakeOff!;
        double overlay = takeOff.JointWeights(DeadCase.WearingSurface, 0)[Bridge.Truss.FindJoint("L1")!.Value] / Kip;

        Assert.Equal(2.0 / 12 * (13 + (4 / 12.0)) * 0.144 / 2 * 16, overlay, 1e-9);
        Assert.Equal(2.56, overlay, Tolerance);
        Assert.Equal(7.68, overlay + (takeOff.JointWeights(DeadCase.Components, 0)[Bridge.Truss.FindJoint("L1")!.Value] / Kip), Tolerance);
        Assert.Equal(RodAnchors.Dead(Bridge, "L1U1"), overlay + 5.12, 1e-9);
    }

    // 0.625 of the truck with 30 % impact.
    [Theory]
    [InlineData("L2U3", Sense.Tension, 8.39)]
    [InlineData("L3U3", Sense.Compression, -6.55)]
    [InlineData("U2L3", Sense.Tension, 26.90)]
    public void Roll_TheShareOfOneTrussWithImpact_GivesTheAnchorAsATotal(string member, Sense sense, double kips)
    {
        double change = RodAnchors.Roll(Bridge, member, Type3, 0.625 * 1.30).Of(sense)!.Force / Kip;
        Assert.Equal(kips, RodAnchors.Dead(Bridge, member) + change, Tolerance);
    }

    [Theory]
    [InlineData(true, 0.888)]
    [InlineData(false, 0.990)]
    public void Rate_TheHipVerticalByAllowableStress_IsTheAnchor(bool hasWearingSurface, double factor)
    {
        Bridge bridge = hasWearingSurface ? Bridge : Bridge with { Cases = [.. Bridge.Cases.Where(c => c.Name != Bridge.WearingSurfaceCase)] };

        MemberRow row = Row(bridge, "L1U1", Sense.Tension, "operating");

        Assert.Equal(factor, row.Factor!.Value, 0.0005);
        Assert.Equal((29.86 - (hasWearingSurface ? 7.68 : 5.12)) / (30.75 * 0.625 * 1.30), row.Factor.Value, 1e-3);
    }

    // 2 w² × 0.75 × 26 ksi = 7.68 + 30.75 × 0.625 × 1.30: w = 0.915 in, and the bars were 0.875 in when new.
    [Fact]
    public void Measure_TheHipVerticalUnderType3_NeedsBarsThickerThanAsBuilt()
    {
        Assert.True(BridgeRater.Rate(Bridge, RatingMethod.Find("ASR")!, [Type3]).TryGet(out BridgeRating? rating, out Refusal? refusal), $"{refusal}");

        NeededDimension needed = MeasureFirst.Of(rating).Needed.Single(n => n.Row.Member.Name == "L1U1");

        Assert.Equal(ShapeDimension.Width, needed.Dimension);
        Assert.Equal(0.915, needed.Needed!.Value / Inch, 0.0005);
        Assert.Equal(Math.Sqrt((7.68 + (30.75 * 0.625 * 1.30)) / (2 * 0.75 * 26)), needed.Needed.Value / Inch, 1e-3);
        Assert.Equal(0.875, needed.Read!.Value / Inch, 1e-9);
        Assert.True(needed.IsThickerThanBuilt);
        Assert.False(needed.IsEnough);
    }

    private static MemberRow Row(Bridge bridge, string member, Sense sense, string level)
    {
        Assert.True(BridgeRater.Rate(bridge, RatingMethod.Find("ASR")!, [Type3]).TryGet(out BridgeRating? rating, out Refusal? refusal), $"{refusal}");
        return rating.MemberRows.Single(r => r.Member.Name == member && r.Sense == sense && r.Level.Name == level);
    }
}
