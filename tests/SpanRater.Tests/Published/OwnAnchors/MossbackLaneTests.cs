using static SpanRater.Tests.Published.CustomaryUnits;

namespace SpanRater.Tests.Published.OwnAnchors;

/// <summary>
/// The invented Mossback Lane bridge: timber queen post of 36 ft in three panels of 12 ft, 9 ft high, crossed rods in the middle
/// panel, dead load 0.30 kip a foot of truss. Our own regression anchors, computed independently by an elimination
/// solver, not published. Tolerance: half of the last digit.
/// </summary>
public class MossbackLaneTests
{
    private const double Tolerance = 0.005 + 1e-9;

    private static readonly Bridge Bridge = RodAnchors.Read("mossback-lane");

    // Standard Specifications, 17th ed., 3.7 (from memory): H10, axles of 4 and 16 kip, 14 ft apart.
    private static readonly Vehicle H10 = new(
        "H10 by hand", VehicleClass.Design, new AxleTrain([4 * Kip, 16 * Kip], [AxleGap.Fixed(14 * Foot)]), Vehicle.StandardGauge, "made up for the test");

    // A reaction of 3.6 kip beside the half panel over it, on a 3-4-5 strut.
    [Theory]
    [InlineData("L0U1", -6.00)]
    [InlineData("U1U2", -4.80)]
    [InlineData("L1U1", 3.60)]
    [InlineData("U1L2", 0)]
    [InlineData("L1U2", 0)]
    public void Force_DeadLoad_IsTheAnchor(string member, double kips) => Assert.Equal(kips, RodAnchors.Dead(Bridge, member), 1e-6);

    [Theory]
    [InlineData("L0U1", Sense.Compression, -19.63)]
    [InlineData("U1L2", Sense.Tension, 8.89)]
    [InlineData("L1U2", Sense.Tension, 8.89)]
    [InlineData("L1U1", Sense.Tension, 11.78)]
    [InlineData("L1L2", Sense.Tension, 11.68)]
    public void Roll_H10WithDeadLoadOn_IsTheAnchor(string member, Sense sense, double kips) =>
        Assert.Equal(kips, RodAnchors.Roll(Bridge, member, H10).Of(sense)!.Force / Kip, Tolerance);

    // No axle is on a panel point: the shear of the middle panel is zero there, and both rods are slack.
    [Fact]
    public void Roll_TheMiddleOfTheLowerChord_PeaksWhereTheRodsGoSlack()
    {
        Peak peak = RodAnchors.Roll(Bridge, "L1L2", H10).Tension!;

        Assert.Equal(17.43, peak.Axles[1].Station / Foot, Tolerance);
        Assert.Equal(31.43, peak.Axles[0].Station / Foot, Tolerance);

        // By hand: rear axle at a = 17 3/7 ft, 16 (24 - a)/12 on L1 and 16 (a - 12)/12 on L2, and 4 (36 - 31.43)/12 more on L2.
        double a = 122 / 7.0, onL1 = 16 * (24 - a) / 12, onL2 = (16 * (a - 12) / 12) + (4 * (36 - a - 14) / 12);
        Assert.Equal(onL1, onL2, 1e-9);
        Assert.Equal(onL1 * 12 / 9, peak.Force / Kip, 1e-9);
    }

    // With the wrong rod the hanger would hold the whole axle.
    [Fact]
    public void Lines_OfTheOtherRod_GiveTheHangerTheWholeAxle()
    {
        Truss truss = Bridge.Truss;
        InfluenceLines lines = RodTruss.Of(truss).Value!.Lines([truss.FindMember("U1L2")!.Value]).Value!, others = RodTruss.Of(truss).Value!.Lines([truss.FindMember("L1U2")!.Value]).Value!;
        int hanger = truss.FindMember("L1U1")!.Value;
        double[] peaks = [.. new[] { lines, others }.Select(l => new RollingPlan(truss.Stations, H10.Train).PeaksOf(l.Members[hanger].Line).Tension!.Force / Kip)];

        Assert.Equal(16.00, peaks.Max(), Tolerance);
        Assert.True(RodAnchors.Roll(Bridge, "L1U1", H10).Tension!.Force / Kip < peaks.Max());
    }
}
