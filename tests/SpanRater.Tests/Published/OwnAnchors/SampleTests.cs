using SpanRater.Files;
using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests.Published.OwnAnchors;

/// <summary>
/// The samples are the bridges of our own regression anchors, computed independently by an elimination solver; they are not
/// published values. Tolerance: half of the last printed digit.
/// </summary>
public class SampleTests
{
    [Theory]
    [InlineData("M1U2", -32.98)]
    [InlineData("M1L2", 32.98)]
    [InlineData("U1U2", -36.45)]
    [InlineData("U3U4", -78.11)]
    [InlineData("U4L4", 8.10)]
    public void GarrowLanding_DeadLoadOfNineTenthsKipPerFoot_GivesTheAnchors(string member, double kips)
    {
        Bridge bridge = Read("garrow-landing");
        double newtons = ForceUnder(bridge, "DC", member) + ForceUnder(bridge, "DW", member);
        Assert.Equal(kips, newtons / Unit.Find("kip")!.Size, 0.005);
    }

    [Theory]
    [InlineData("L2L3", 101.25)]
    [InlineData("U1U2", -90.0)]
    [InlineData("U1L2", 39.36)]
    [InlineData("L2U3", -13.12)]
    [InlineData("L2U2", 0)]
    public void TansyWeir_FullCrowd_GivesTheAnchors(string member, double kilonewtons) =>
        Assert.Equal(kilonewtons, ForceUnder(Read("tansy-weir"), "crowd", member) / 1000, 0.005);

    [Theory]
    [InlineData("garrow-landing", "Type 3", 1.000)]
    [InlineData("garrow-landing", "EV3", 0.727 * 1.20)]
    [InlineData("tansy-weir", "EN service vehicle", 0.604 * 1.20)]
    public void Sample_ShareOfOneTruss_IsTheAnchorTimesPresence(string sample, string vehicle, double share)
    {
        Bridge bridge = Read(sample);
        Catalogue catalogue = BridgeFolder.Read(Repository.Sample(sample), []).Catalogue;
        Assert.True(BridgeRater.Rate(bridge, bridge.Rating.Method!, [catalogue.Find(vehicle)!]).TryGet(out BridgeRating? rating, out _));
        Assert.All(rating.MemberRows.Where(r => r.Live is not null), row => Assert.Equal(share, row.Share!.Value, 0.0005 * 1.20));
    }

    private static double ForceUnder(Bridge bridge, string name, string member)
    {
        Assert.True(DeterminateTruss.Of(bridge.Truss).TryGet(out DeterminateTruss? system, out _));
        Assert.True(system.Solve(bridge.FindCase(name)!).TryGet(out ForceSolution? solution, out _));
        return solution.MemberForces[bridge.Truss.FindMember(member)!.Value];
    }

    private static Bridge Read(string sample)
    {
        BridgeReading reading = BridgeFolder.Read(Repository.Sample(sample), []);
        Assert.Empty(reading.Findings.All);
        return reading.Bridge!;
    }
}
