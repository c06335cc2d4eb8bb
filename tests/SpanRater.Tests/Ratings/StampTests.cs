using static SpanRater.Tests.Ratings.KingPostBridge;

namespace SpanRater.Tests.Ratings;

/// <summary>What a rating tells its reader that it assumed.</summary>
public class StampTests
{
    [Fact]
    public void Stamps_LegalTruckOnScantInput_NameEveryAssumption() =>
        Assert.Equal(
            [new Stamp.NoWearingSurface(), new Stamp.GivenCapacities(CapacityMeaning.FactoredResistance), new Stamp.GivenShare(1, null), new Stamp.UnknownTruckTraffic(1.45)],
            Rate(Of(40), "LRFR", OneAxle(VehicleClass.Legal)).Stamps);

    [Fact]
    public void Stamps_NothingAssumed_AreNone()
    {
        Bridge bridge = Of(40, 20, []) with
        {
            Deck = new Deck { TrussSpacing = 18 * Foot, Roadway = 14 * Foot },
            Rating = new RatingSettings { TruckTraffic = 100 },
        };

        Assert.Empty(Rate(bridge, "LRFR", OneAxle(VehicleClass.Legal)).Stamps);
    }

    // Load factor and allowable stress rating have one live factor a level, whatever the traffic.
    [Theory]
    [InlineData("LFR")]
    [InlineData("ASR")]
    public void Stamps_MethodWithoutTruckTraffic_DoNotAskForIt(string method) =>
        Assert.DoesNotContain(Rate(Of(40), method, OneAxle(VehicleClass.Legal)).Stamps, s => s is Stamp.UnknownTruckTraffic);

    [Theory]
    [InlineData(VehicleClass.Design)]
    [InlineData(VehicleClass.Permit)]
    [InlineData(VehicleClass.Emergency)]
    public void Stamps_ClassWithoutTruckTraffic_DoNotAskForIt(VehicleClass vehicleClass) =>
        Assert.DoesNotContain(Rate(Of(40), "LRFR", OneAxle(vehicleClass)).Stamps, s => s is Stamp.UnknownTruckTraffic);

    [Fact]
    public void Stamps_EmergencyVehicle_TellThatItIsAlone()
    {
        Assert.Contains(new Stamp.EmergencyAlone(), Rate(Of(40), "LRFR", OneAxle(VehicleClass.Emergency)).Stamps);
        Assert.DoesNotContain(new Stamp.EmergencyAlone(), Rate(Of(40), "LRFR", OneAxle(VehicleClass.Legal)).Stamps);
    }

    [Fact]
    public void Stamps_SeveralMaintenanceVehicles_TellOnceThatImpactIsLeftOut()
    {
        Vehicle vehicle = OneAxle(VehicleClass.Maintenance);

        BridgeRating rating = Rate(Of(40), "LRFR", vehicle, vehicle with { Name = "another" });

        Assert.Equal(new Stamp.NoImpact(VehicleClass.Maintenance), Assert.Single(rating.Stamps, s => s is Stamp.NoImpact));
    }

    [Theory]
    [InlineData(VehicleClass.Emergency, "one axle", "emergency factor", 1.30)]
    [InlineData(VehicleClass.Screening, "one axle", "special hauling factor", 1.45)]
    [InlineData(VehicleClass.Legal, "SU5", "special hauling factor", 1.45)]
    public void Stamps_FactorInDoubt_AskToConfirmItUntilTheUserHas(VehicleClass vehicleClass, string name, string clause, double factor)
    {
        Vehicle vehicle = OneAxle(vehicleClass) with { Name = name };
        Clause doubtful = Clauses.FindToConfirm(clause)!;
        var toConfirm = new Stamp.DefaultToConfirm(doubtful, factor);

        BridgeRating unconfirmed = Rate(Of(40), "LRFR", vehicle, vehicle);
        BridgeRating confirmed = Rate(Of(40) with { Rating = new RatingSettings { Confirmed = [clause] } }, "LRFR", vehicle);

        Assert.Single(unconfirmed.Stamps, toConfirm);
        Assert.DoesNotContain(unconfirmed.Stamps, s => s is Stamp.ConfirmedByUser);
        Assert.Contains(new Stamp.ConfirmedByUser(doubtful, factor), confirmed.Stamps);
        Assert.DoesNotContain(toConfirm, confirmed.Stamps);
    }

    [Theory]
    [InlineData("LRFR", VehicleClass.Legal, "Type 3")]
    [InlineData("LFR", VehicleClass.Emergency, "EV2")]
    [InlineData("ASR", VehicleClass.Legal, "SU5")]
    public void Stamps_FactorNotInDoubt_AskNothing(string method, VehicleClass vehicleClass, string name) =>
        Assert.DoesNotContain(Rate(Of(40), method, OneAxle(vehicleClass) with { Name = name }).Stamps, s => s is Stamp.DefaultToConfirm or Stamp.ConfirmedByUser);

    // Hanger of 400 kN with 40 kN of dead load, one axle of 100 kN: (400 − 1.25 × 40) / (1.20 × 100 × 1.33) by hand.
    [Fact]
    public void Stamps_EmergencyFactorGiven_ReplacesTheOneInDoubt()
    {
        Bridge bridge = Of(40) with { Rating = new RatingSettings { EmergencyFactor = 1.20, Confirmed = ["emergency factor"] } };

        BridgeRating rating = Rate(bridge, "LRFR", OneAxle(VehicleClass.Emergency));

        Assert.Single(rating.Stamps, new Stamp.GivenEmergencyFactor(1.20, 1.30));
        Assert.DoesNotContain(rating.Stamps, s => s is Stamp.DefaultToConfirm or Stamp.ConfirmedByUser);
        Assert.Equal(350 / (1.20 * 133), HangerRow(rating, "emergency").Factor!.Value, 1e-12);
    }

    // It is the factor of one method; the others rate an emergency vehicle at their two levels.
    [Theory]
    [InlineData("LFR", 1.3)]
    [InlineData("ASR", 1.0)]
    public void Stamps_EmergencyFactorGivenToAnotherMethod_ChangesNothing(string method, double factor)
    {
        Bridge bridge = Of(40) with { Rating = new RatingSettings { EmergencyFactor = 1.20 } };

        BridgeRating rating = Rate(bridge, method, OneAxle(VehicleClass.Emergency));

        Assert.Equal(factor, HangerRow(rating, "operating").Level.LiveFactor);
        Assert.DoesNotContain(rating.Stamps, s => s is Stamp.GivenEmergencyFactor);
    }

    [Fact]
    public void Stamps_LoadingOfSpecialHaulingVehicles_AsksToConfirmTheirFactor()
    {
        var loading = new Loading("worst of two", VehicleClass.Legal, [OneAxle(VehicleClass.Legal), OneAxle(VehicleClass.Legal) with { Name = "SU4" }], null, "made up for the test");

        Assert.Contains(new Stamp.DefaultToConfirm(FactorClauses.SpecialHauling, 1.45), Rate(Of(40), "LRFR", loading).Stamps);
    }

    // An allowance that was given holds for every vehicle, so none is left out.
    [Fact]
    public void Stamps_ImpactGiven_StandsInPlaceOfImpactLeftOut()
    {
        Bridge bridge = Of(40) with { Rating = new RatingSettings { Impact = 0.10 } };

        BridgeRating rating = Rate(bridge, "LRFR", OneAxle(VehicleClass.Maintenance));

        Assert.Contains(new Stamp.GivenImpact(0.10, 0.33), rating.Stamps);
        Assert.DoesNotContain(rating.Stamps, s => s is Stamp.NoImpact);
        Assert.Equal(350 / (1.35 * 110), HangerRow(rating, "operating").Factor!.Value, 1e-12);
    }
}
