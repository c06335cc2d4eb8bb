using static SpanRater.Tests.Ratings.KingPostBridge;

namespace SpanRater.Tests.Ratings;

/// <summary>How the share of a truss enters its rating: 18 ft between trusses, roadway 14 ft, wheels 2 ft from the kerb.</summary>
public class LateralRatingTests
{
    private const double Tolerance = 1e-12;

    private static readonly Deck Deck = new() { TrussSpacing = 18 * Foot, Roadway = 14 * Foot, TrussNames = ["north", "south"] };

    // Wheels 4 and 10 ft from the truss: (14 + 8) / 36. One lane has a presence factor of 1.20 by LRFR, 1.00 by the others;
    // a permit vehicle has none.
    [Theory]
    [InlineData("LRFR", VehicleClass.Legal, "legal", 1.20)]
    [InlineData("LRFR", VehicleClass.Emergency, "emergency", 1.20)]
    [InlineData("LRFR", VehicleClass.Permit, "permit", 1.00)]
    [InlineData("LFR", VehicleClass.Legal, "operating", 1.00)]
    [InlineData("ASR", VehicleClass.Legal, "inventory", 1.00)]
    public void Live_OneLane_HoldsThePresenceFactor(string method, VehicleClass vehicleClass, string level, double presence)
    {
        Bridge bridge = Of(40) with { Deck = Deck, Rating = new RatingSettings { PermitFactor = 1.2 } };

        MemberRow row = HangerRow(Rate(bridge, method, OneAxle(vehicleClass)), level);

        Assert.Equal(presence * 22 / 36, row.Share!.Value, Tolerance);
        Assert.Equal(100_000 * presence * 22 / 36, row.Live!.Value, 1e-6);
        Assert.Null(row.Truss);
    }

    // 20 ft of roadway between trusses 22 ft apart: two trucks give 1.00, one gives 32/44 with 1.20.
    [Theory]
    [InlineData(VehicleClass.Legal, "legal", 1.00, 2)]
    [InlineData(VehicleClass.Emergency, "emergency", 1.20 * 32 / 44, 1)]
    [InlineData(VehicleClass.Farm, "legal", 1.20 * 32 / 44, 1)]
    public void Share_TwoLanes_AreLoadedByTrucksButNotByVehiclesAlone(VehicleClass vehicleClass, string level, double share, int lanes)
    {
        Bridge bridge = Of(40) with { Deck = new Deck { TrussSpacing = 22 * Foot, Roadway = 20 * Foot } };

        MemberRow row = HangerRow(Rate(bridge, "LRFR", OneAxle(vehicleClass)), level);

        Assert.Equal(share, row.Share!.Value, Tolerance);
        Assert.Equal(lanes, row.Share.Lanes);
    }

    [Fact]
    public void Rows_RoadwayOffCentre_RateBothTrussesApart()
    {
        Bridge bridge = Of(40) with { Deck = Deck with { RoadwayOffset = 1 * Foot } };

        BridgeRating rating = Rate(bridge, "LRFR", OneAxle(VehicleClass.Legal));

        MemberRow north = Hanger(rating, "north"), south = Hanger(rating, "south");
        Assert.Equal(350 / (1.45 * 133 * 1.2 * 20 / 36), north.Factor!.Value, Tolerance);
        Assert.Equal(350 / (1.45 * 133 * 1.2 * 24 / 36), south.Factor!.Value, Tolerance);
        Assert.Equal("south", rating.Governing!.Truss);
        Assert.Equal(2 * 5 * 2, rating.MemberRows.Count);
    }

    [Fact]
    public void Stamps_NarrowRoadway_TellThatTheWheelIsNearerToTheKerb()
    {
        Bridge bridge = Of(40) with { Deck = Deck with { Roadway = 9 * Foot } };

        Stamp stamp = Rate(bridge, "LRFR", OneAxle(VehicleClass.Legal)).Stamps.Single(s => s is Stamp.NearerToKerb);

        Assert.Equal(new Stamp.NearerToKerb("one axle", 1 * Foot), stamp);
    }

    [Fact]
    public void Stamps_MoreLanesThanVehiclesThatFit_TellSo()
    {
        // 18 ft has two lanes; two vehicles of 8 ft gauge need 22 ft.
        Bridge bridge = Of(40) with { Deck = new Deck { TrussSpacing = 22 * Foot, Roadway = 18 * Foot } };

        BridgeRating rating = Rate(bridge, "LRFR", OneAxle(VehicleClass.Legal) with { Gauge = 8 * Foot });

        Assert.Contains(new Stamp.FewerAbreast("one axle", 2, 1), rating.Stamps);
    }

    private static MemberRow Hanger(BridgeRating rating, string truss) =>
        rating.MemberRows.Single(r => r.Truss == truss && r.MemberIndex == KingPostBridge.Hanger && r.Sense == Sense.Tension);
}
