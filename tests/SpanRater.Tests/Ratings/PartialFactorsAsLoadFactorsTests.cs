using static SpanRater.Tests.Ratings.KingPostBridge;

namespace SpanRater.Tests.Ratings;

/// <summary>
/// Partial factors set to those of load factor rating at operating level give its factors: the two methods share one equation.
/// Load factor rating: AASHTO Manual for Bridge Evaluation, 3rd ed. (2018), 6B.4.3, from memory.
/// </summary>
public class PartialFactorsAsLoadFactorsTests
{
    private static readonly PartialFactorRating SameAsLoadFactors = new(new PartialFactors(
        "as LFR", "the test", "operating", new DeadFactors(1.3, 1.3, 1.0, 1.0), new TrafficFactors(1.3, ImpactOf120Feet, [1.00, 1.00, 0.90, 0.75]), 1.3));

    // One lane, and two: 20 ft of roadway between trusses 22 ft apart.
    public static IEnumerable<TheoryDataRow<VehicleClass, double, double>> Classes() =>
        from vehicleClass in Enum.GetValues<VehicleClass>()
        from deck in ((double Spacing, double Roadway)[])[(18, 14), (22, 20)]
        select new TheoryDataRow<VehicleClass, double, double>(vehicleClass, deck.Spacing, deck.Roadway);

    [Theory]
    [MemberData(nameof(Classes))]
    public void Rate_FactorsOfLoadFactorRating_GiveItsFactors(VehicleClass vehicleClass, double spacing, double roadway)
    {
        Bridge bridge = Of(40, 20) with { Deck = new Deck { TrussSpacing = spacing * Foot, Roadway = roadway * Foot } };
        MemberRow[] published = [.. Rate(bridge, "LFR", OneAxle(vehicleClass)).MemberRows.Where(r => r.Level.Name == "operating")];

        Assert.True(BridgeRater.Rate(bridge, SameAsLoadFactors, [OneAxle(vehicleClass)]).TryGet(out BridgeRating? rating, out _));

        Assert.Equal(published.Length, rating.MemberRows.Count);
        Assert.Contains(published, r => r.Factor is not null);
        Assert.All(published, p =>
        {
            MemberRow own = Assert.Single(rating.MemberRows, r => (r.MemberIndex, r.Sense, r.Truss) == (p.MemberIndex, p.Sense, p.Truss));
            Assert.Equal(p.Status, own.Status);
            Assert.Equal(p.Factor ?? 0, own.Factor ?? 0, 1e-12);
        });
    }

    // The stamp says that it is alone: then no second one may stand beside it.
    [Fact]
    public void Rate_EmergencyVehicleThatIsToldToBeAlone_IsInOneLane()
    {
        Bridge bridge = Of(40) with { Deck = new Deck { TrussSpacing = 22 * Foot, Roadway = 20 * Foot } };

        Assert.True(BridgeRater.Rate(bridge, SameAsLoadFactors, [OneAxle(VehicleClass.Emergency)]).TryGet(out BridgeRating? rating, out _));

        Assert.Contains(new Stamp.EmergencyAlone(), rating.Stamps);
        Assert.Equal(1, HangerRow(rating, "operating").Share!.Lanes);
    }
}
