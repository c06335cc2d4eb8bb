using SpanRater.Files;
using SpanRater.Tests.Ratings;

namespace SpanRater.Tests.Published.UniformLoads;

/// <summary>The shipped loads whose intensity falls with the loaded length; rules from memory, forces by hand.</summary>
public class ShippedUniformLoadTests
{
    private static readonly Catalogue Shipped = Catalogue.Shipped(new FindingList());

    [Theory]
    [InlineData("EN crowd", typeof(FootbridgePressure))]
    [InlineData("AASHTO sidewalk crowd", typeof(SidewalkPressure))]
    public void Shipped_Crowd_FollowsItsRule(string name, Type rule)
    {
        var crowd = Assert.IsType<Crowd>(Shipped.Find(name));

        Assert.Equal(VehicleClass.Crowd, crowd.Class);
        Assert.IsType(rule, crowd.Intensity);
        Assert.Null(crowd.Width);
    }

    // UK BD 37/01, 6.2, from memory. The hanger of the king post has a triangle of 1 over 120 ft: half of 36.576 m times
    // 336 L^−0.67 kN/m, and the knife edge load of 120 kN on its apex. A truss that takes one lane whole; no impact.
    [Fact]
    public void HaLoading_OnAHanger_IsTheUniformLoadAndTheKnifeEdge()
    {
        LiveLoad loading = Shipped.Find("HA loading")!;
        MemberRow row = KingPostBridge.HangerRow(KingPostBridge.Rate(KingPostBridge.Of(10), "LFR", loading), "operating");
        const double Length = 120 * KingPostBridge.Foot;

        Assert.Equal((336 * Math.Pow(Length, -0.67) * Length / 2) + 120, row.Live!.Value / 1000, 1e-9);
        Assert.Equal(0, row.Impact);
        Assert.Equal(VehicleClass.Design, loading.Class);
    }
}
