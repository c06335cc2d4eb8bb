using static SpanRater.Tests.Ratings.KingPostBridge;

namespace SpanRater.Tests.Ratings;

/// <summary>The rating equation by hand on a hanger that carries 40 kN of components, 20 kN of surface and an axle of 100 kN.</summary>
public class RatingEquationTests
{
    private const double Tolerance = 1e-12;

    [Fact]
    public void Factor_LrfrLegal_IsTheHandValue()
    {
        MemberRow row = HangerRow(Rate(Of(40, 20), "LRFR", OneAxle(VehicleClass.Legal)), "legal");

        Assert.Equal(RatingStatus.Rated, row.Status);
        Assert.Equal((400 - (1.25 * 40) - (1.50 * 20)) / (1.45 * 100 * 1.33), row.Factor!.Value, Tolerance);
        Assert.Equal(100_000, row.Live!.Value, 1e-6);
        Assert.Equal(80_000, row.FactoredDead, 1e-6);
        Assert.Equal(120 * Foot, row.LoadedLength!.Value, 1e-9);
        Assert.Equal(0.33, row.Impact);
    }

    [Theory]
    [InlineData("inventory", 1.75)]
    [InlineData("operating", 1.35)]
    public void Factor_LrfrDesign_IsTheHandValue(string level, double liveFactor) =>
        Assert.Equal(
            320 / (liveFactor * 133),
            HangerRow(Rate(Of(40, 20), "LRFR", OneAxle(VehicleClass.Design)), level).Factor!.Value,
            Tolerance);

    [Theory]
    [InlineData("inventory", 2.17)]
    [InlineData("operating", 1.30)]
    public void Factor_Lfr_IsTheHandValue(string level, double liveFactor) =>
        Assert.Equal(
            (400 - (1.3 * 60)) / (liveFactor * 100 * (1 + ImpactOf120Feet)),
            HangerRow(Rate(Of(40, 20), "LFR", OneAxle(VehicleClass.Legal)), level).Factor!.Value,
            Tolerance);

    [Theory]
    [InlineData("inventory", 220)]
    [InlineData("operating", 300)]
    public void Factor_Asr_TakesTheCapacityOfItsLevel(string level, double capacity)
    {
        var capacities = new Dictionary<GivenCapacity, double>
        {
            [GivenCapacity.InventoryTension] = 220,
            [GivenCapacity.OperatingTension] = 300,
            [GivenCapacity.Tension] = 999,
        };

        Assert.Equal(
            (capacity - 60) / (100 * (1 + ImpactOf120Feet)),
            HangerRow(Rate(Of(40, 20, capacities), "ASR", OneAxle(VehicleClass.Legal)), level).Factor!.Value,
            Tolerance);
    }

    // A rafter is pressed: 5/8 of the loads at L1, each positive in the sense rated.
    [Fact]
    public void Factor_OfAPressedMember_CountsDeadAndLiveInItsOwnSense()
    {
        MemberRow row = Rate(Of(40, 20), "LRFR", OneAxle(VehicleClass.Legal)).MemberRows.Single(r => r.MemberIndex == Rafter && r.Sense == Sense.Compression);

        Assert.Equal((400 - (0.625 * 80)) / (1.45 * 62.5 * 1.33), row.Factor!.Value, Tolerance);
        Assert.Equal(-62_500, row.Live!.Value, 1e-6);
        Assert.Equal(-25_000, row.DeadComponents, 1e-6);
    }

    // Dead load that lifts the hanger relieves it, and counts with the smallest factors: 0.90 and 0.65 by LRFR.
    [Theory]
    [InlineData("LRFR", "legal", 400 + (0.90 * 40) + (0.65 * 20), 1.45 * 133)]
    [InlineData("LFR", "operating", 400 + 60.0, 1.3 * 100 * (1 + ImpactOf120Feet))]
    [InlineData("ASR", "operating", 400 + 60.0, 100 * (1 + ImpactOf120Feet))]
    public void Factor_DeadLoadRelieves_CountsLittleOfIt(string method, string level, double room, double live) =>
        Assert.Equal(room / live, HangerRow(Rate(Of(-40, -20), method, OneAxle(VehicleClass.Legal)), level).Factor!.Value, Tolerance);

    [Fact]
    public void Factor_ComponentsAddAndSurfaceRelieves_EachHasItsOwnFactor() =>
        Assert.Equal(
            (400 - (1.25 * 40) + (0.65 * 20)) / (1.45 * 133),
            HangerRow(Rate(Of(40, -20), "LRFR", OneAxle(VehicleClass.Legal)), "legal").Factor!.Value,
            Tolerance);

    [Fact]
    public void Factor_RelievingFactorsGiven_ReplaceTheMethodsOwn()
    {
        Bridge bridge = Of(-40, -20);
        bridge = bridge with { Rating = bridge.Rating with { RelievingComponents = 0.5, RelievingWearingSurface = 0 } };

        Assert.Equal((400 + 20) / (1.45 * 133), HangerRow(Rate(bridge, "LRFR", OneAxle(VehicleClass.Legal)), "legal").Factor!.Value, Tolerance);
    }

    // AASHTO Manual for Bridge Evaluation, 3rd ed. (2018), 6A.4.4.2.3, from memory: straight from 1.30 at 1,000 trucks to 1.45 at 5,000.
    [Theory]
    [InlineData(null, 1.45)]
    [InlineData(9000.0, 1.45)]
    [InlineData(5000.0, 1.45)]
    [InlineData(3000.0, 1.375)]
    [InlineData(1000.0, 1.30)]
    [InlineData(50.0, 1.30)]
    public void LiveFactor_OfALegalTruck_FollowsTheTruckTraffic(double? traffic, double liveFactor)
    {
        Bridge bridge = Of(40);
        bridge = bridge with { Rating = bridge.Rating with { TruckTraffic = traffic } };

        MemberRow row = HangerRow(Rate(bridge, "LRFR", OneAxle(VehicleClass.Legal)), "legal");

        Assert.Equal(liveFactor, row.Level.LiveFactor!.Value, Tolerance);
        Assert.Equal(350 / (liveFactor * 133), row.Factor!.Value, Tolerance);
    }

    [Theory]
    [InlineData(VehicleClass.Emergency, "emergency", 1.30)]
    [InlineData(VehicleClass.Farm, "legal", 1.45)]
    [InlineData(VehicleClass.Screening, "legal", 1.45)]
    public void LiveFactor_OfAnotherClass_IsItsOwn(VehicleClass vehicleClass, string level, double liveFactor) =>
        Assert.Equal(350 / (liveFactor * 133), HangerRow(Rate(Of(40), "LRFR", OneAxle(vehicleClass)), level).Factor!.Value, Tolerance);

    [Fact]
    public void LiveFactor_OfAPermitVehicle_IsTheOneGiven()
    {
        Bridge bridge = Of(40);
        bridge = bridge with { Rating = bridge.Rating with { PermitFactor = 1.2 } };

        Assert.Equal(350 / (1.2 * 133), HangerRow(Rate(bridge, "LRFR", OneAxle(VehicleClass.Permit)), "permit").Factor!.Value, Tolerance);
    }

    [Theory]
    [InlineData("LRFR", "legal", 1.45 * 100 * 1.10, 350)]
    [InlineData("LFR", "operating", 1.3 * 100 * 1.10, 400 - (1.3 * 40))]
    public void Impact_Given_ReplacesTheMethodsOwn(string method, string level, double live, double room)
    {
        Bridge bridge = Of(40);
        bridge = bridge with { Rating = bridge.Rating with { Impact = 0.10 } };

        BridgeRating rating = Rate(bridge, method, OneAxle(VehicleClass.Legal));

        Assert.Equal(room / live, HangerRow(rating, level).Factor!.Value, Tolerance);
        Assert.Contains(new Stamp.GivenImpact(0.10, method == "LRFR" ? 0.33 : 0.30), rating.Stamps);
    }

    [Fact]
    public void Impact_OfAMaintenanceVehicle_IsNone()
    {
        BridgeRating rating = Rate(Of(40), "LRFR", OneAxle(VehicleClass.Maintenance));

        Assert.Equal(350 / (1.35 * 100), HangerRow(rating, "operating").Factor!.Value, Tolerance);
        Assert.Contains(new Stamp.NoImpact(VehicleClass.Maintenance), rating.Stamps);
    }
}
