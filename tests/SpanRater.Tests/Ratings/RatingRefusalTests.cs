using static SpanRater.Tests.Ratings.KingPostBridge;

namespace SpanRater.Tests.Ratings;

/// <summary>A truss that statics cannot solve gets no rating at all, never a part of one.</summary>
public class RatingRefusalTests
{
    [Fact]
    public void Rate_HangerMissing_RefusesTheMechanism() =>
        Assert.IsType<Refusal.Mechanism>(RefusalOf(members => [.. members.Where(m => m.Name != "L1U1")]));

    [Fact]
    public void Rate_StrutThatOnlyPulls_RefusesAndNamesIt()
    {
        Refusal refusal = RefusalOf(members => [.. members.Select(m => m with { TensionOnly = m.Name == "L0U1" })]);

        Assert.Equal("L0U1", Assert.IsType<Refusal.UncarriedCompression>(refusal).Member);
    }

    private static Refusal RefusalOf(Func<IReadOnlyList<Member>, Member[]> change)
    {
        Bridge bridge = Of(40);
        bridge = bridge with { Truss = Truss.Create(bridge.Truss.Joints, change(bridge.Truss.Members)).Truss! };

        Outcome<BridgeRating> outcome = BridgeRater.Rate(bridge, RatingMethod.Find("LRFR")!, [OneAxle(VehicleClass.Legal)]);

        Assert.False(outcome.TryGet(out _, out Refusal? refusal));
        return refusal;
    }
}
