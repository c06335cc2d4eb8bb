using static SpanRater.Tests.Published.CustomaryUnits;

namespace SpanRater.Tests.Published.OwnAnchors;

/// <summary>
/// The invented Garrow Landing road bridge: K-truss of 144 ft in eight panels of 18 ft, 28 ft deep, mid-joints at 14 ft,
/// trusses 22 ft apart, roadway 20 ft, dead load 0.90 kip a foot of truss. Our own regression anchors, computed
/// independently by an elimination solver, not published.
/// </summary>
public class GarrowLandingTests
{
    /// <summary>Dead load of one panel, 0.90 klf on 18 ft [kip].</summary>
    private const double Panel = 0.90 * 18;

    /// <summary>Half the second decimal [kip].</summary>
    private const double Tolerance = 0.005;

    private static readonly SolvedTruss Truss = ParallelChordTruss.K(8, 18 * Foot, 28 * Foot);

    [Fact]
    public void Truss_OfEightPanels_HasTwentyTwoJointsAndFortyOneMembers()
    {
        Assert.Equal(22, Truss.Truss.Joints.Count);
        Assert.Equal(41, Truss.Truss.Members.Count);
    }

    [Theory]
    [InlineData("M1U2", -32.98)]
    [InlineData("M1L2", 32.98)]
    [InlineData("U1U2", -36.45)]
    [InlineData("U3U4", -78.11)]
    [InlineData("L4U4", 8.10)]
    public void Force_DeadLoadOnTheLowerChord_IsTheAnchor(string member, double kips)
    {
        Assert.Equal(kips, DeadForce(member), Tolerance);
        Assert.Equal(kips, DeadForceByHand(member), Tolerance);
        Assert.Equal(DeadForceByHand(member), DeadForce(member), 1e-9);
    }

    [Theory]
    [InlineData(2, 1.00)]
    [InlineData(1, 0.727)]
    public void Share_OfOneTruss_IsTheAnchor(int lanes, double share)
    {
        var deck = new Deck { TrussSpacing = 22 * Foot, Roadway = 20 * Foot };

        var found = Assert.IsType<ShareOutcome.Found>(LeverRule.Share(deck, Vehicle.StandardGauge, lanes, _ => 1));

        Assert.Equal(lanes, found.Left.Lanes);
        Assert.Equal(share, found.Left.Value, 0.0005);
    }

    private static double DeadForce(string member) =>
        Truss.Force(member, Enumerable.Range(0, 9).Select(i => ($"L{i}", Panel * Kip * (i is 0 or 8 ? 0.5 : 1)))) / Kip;

    // Sections by hand. The reaction without the half panel over the support is 3.5 panels, 56.7 kip. A section through a
    // panel and along the vertical before it leaves only the chords with a moment about that vertical's foot; a section
    // through the K cuts both arms, which share the shear as half each on a rise of 14 ft and a run of 18 ft.
    private static double DeadForceByHand(string member)
    {
        double reaction = 3.5 * Panel, arm = Math.Sqrt((14 * 14) + (18 * 18));
        return member switch
        {
            "M1U2" => -(reaction - Panel) / 2 * arm / 14,
            "M1L2" => (reaction - Panel) / 2 * arm / 14,
            "U1U2" => -reaction * 18 / 28,
            "U3U4" => -((reaction * 54) - (Panel * (36 + 18))) / 28,

            // Half of the fourth panel's shear comes down each of the two lower arms; the vertical holds up the rest.
            "L4U4" => Panel - (reaction - (3 * Panel)),
            _ => throw new ArgumentOutOfRangeException(nameof(member), member, "No section was cut for it."),
        };
    }
}
