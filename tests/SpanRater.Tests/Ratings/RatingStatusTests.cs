using static SpanRater.Tests.Ratings.KingPostBridge;

namespace SpanRater.Tests.Ratings;

/// <summary>What comes of a row where there is no factor to work out.</summary>
public class RatingStatusTests
{
    private static readonly Dictionary<GivenCapacity, double> Weak = new()
    {
        [GivenCapacity.Tension] = 40,
        [GivenCapacity.Compression] = 40,
    };

    [Theory]
    [InlineData(40)]
    [InlineData(32)]
    public void Status_DeadLoadUsesUpTheCapacity_IsDeadExceedsWithFactorZero(double components)
    {
        // 1.25 x 32 kN is all of the 40 kN there are.
        MemberRow row = HangerRow(Rate(Of(components, capacities: Weak), "LRFR", OneAxle(VehicleClass.Legal)), "legal");

        Assert.Equal(RatingStatus.DeadExceeds, row.Status);
        Assert.Equal(0, row.Factor);
        Assert.Null(row.Reason);
    }

    [Fact]
    public void Status_DeadLoadExceedsUnderAVehicleThatIsNotRated_IsDeadExceeds()
    {
        MemberRow row = HangerRow(Rate(Of(40, capacities: Weak), "LRFR", OneAxle(VehicleClass.Permit)), "permit");

        Assert.Equal(RatingStatus.DeadExceeds, row.Status);
    }

    [Fact]
    public void Status_NothingActsInThatSense_IsNotLoaded()
    {
        MemberRow row = HangerRow(Rate(Of(40), "LRFR", OneAxle(VehicleClass.Legal)), "legal", Sense.Compression);

        Assert.Equal(RatingStatus.NotLoaded, row.Status);
        Assert.Null(row.Factor);
        Assert.Null(row.Live);
    }

    [Fact]
    public void Status_CapacityMissingWhereNothingActs_IsNotLoaded()
    {
        BridgeRating rating = Rate(Of(40, capacities: new() { [GivenCapacity.Tension] = 400 }), "LRFR", OneAxle(VehicleClass.Legal));

        Assert.Equal(RatingStatus.NotLoaded, HangerRow(rating, "legal", Sense.Compression).Status);
    }

    [Theory]
    [InlineData("LRFR", "legal", GivenCapacity.Tension)]
    [InlineData("LFR", "inventory", GivenCapacity.Tension)]
    [InlineData("ASR", "inventory", GivenCapacity.InventoryTension)]
    [InlineData("ASR", "operating", GivenCapacity.OperatingTension)]
    public void Status_CapacityMissing_NamesIt(string method, string level, GivenCapacity missing)
    {
        MemberRow row = HangerRow(Rate(Of(40, capacities: new() { [GivenCapacity.Compression] = 400 }), method, OneAxle(VehicleClass.Legal)), level);

        Assert.Equal(RatingStatus.NotRated, row.Status);
        Assert.Equal(new NotRatedReason.NoCapacity(missing), row.Reason);
        Assert.Null(row.Factor);
    }

    [Fact]
    public void Status_CapacityMissingWhereDeadLoadAloneActs_NamesIt()
    {
        // The axle pulls the hanger and the dead load, here an uplift, presses it.
        MemberRow row = HangerRow(
            Rate(Of(-40, capacities: new() { [GivenCapacity.Tension] = 400 }), "LRFR", OneAxle(VehicleClass.Legal)), "legal", Sense.Compression);

        Assert.Equal(new NotRatedReason.NoCapacity(GivenCapacity.Compression), row.Reason);
    }

    [Fact]
    public void Status_PermitVehicleWithoutItsFactor_IsNotRated()
    {
        MemberRow row = HangerRow(Rate(Of(40), "LRFR", OneAxle(VehicleClass.Permit)), "permit");

        Assert.Equal(RatingStatus.NotRated, row.Status);
        Assert.Equal(new NotRatedReason.NoPermitFactor(), row.Reason);
    }

    [Fact]
    public void Status_VehicleOfALoadingWithALaneLoad_IsNotRated()
    {
        MemberRow row = HangerRow(Rate(Of(40), "LRFR", OneAxle(VehicleClass.Design, "design loading")), "operating");

        Assert.Equal(new NotRatedReason.PartOfLoading("design loading"), row.Reason);
        Assert.Null(row.Peak);
    }

    [Fact]
    public void Status_NoLateralShare_SaysWhy()
    {
        Bridge bridge = Of(40) with { Deck = new Deck { TrussSpacing = 5 } };

        MemberRow row = HangerRow(Rate(bridge, "LRFR", OneAxle(VehicleClass.Legal)), "legal");

        Assert.Equal(RatingStatus.NotRated, row.Status);
        Assert.Equal(new NotRatedReason.NoShare(new ShareOutcome.NotGiven(TrussSpacing: false, Roadway: true)), row.Reason);
        Assert.Null(row.Share);
    }

    [Fact]
    public void Rate_WithoutDeadLoad_IsTheCallersMistake()
    {
        Bridge bridge = Of(40) with { Cases = [] };

        ArgumentException mistake = Assert.Throws<ArgumentException>(() => Rate(bridge, "LRFR", OneAxle(VehicleClass.Legal)));
        Assert.Equal("bridge", mistake.ParamName);
    }
}
