using static SpanRater.Tests.Ratings.KingPostBridge;

namespace SpanRater.Tests.Ratings;

/// <summary>
/// An emergency vehicle with a legal one in the next lane, by hand on the king post: 20 ft of roadway between trusses 22 ft apart,
/// wheels 3, 9, 13 and 19 ft from the truss, so that the nearer vehicle has 32/44 on it and the other 12/44, presence 1.00.
/// The legal vehicle keeps its place and factor of 1.45 while the emergency vehicle, 1.30, is scaled.
/// </summary>
public class NeighbourTests
{
    private const double Tolerance = 1e-9, Near = 32 / 44.0, Far = 12 / 44.0;

    private static readonly Bridge Bridge = Of(40) with { Deck = new Deck { TrussSpacing = 22 * Foot, Roadway = 20 * Foot } };

    private static readonly Vehicle Emergency = OneAxle(VehicleClass.Emergency);

    [Fact]
    public void Factor_BesideALightTruck_IsLowestWithTheEmergencyVehicleNearer()
    {
        MemberRow row = Assert.Single(HangerRowsBeside(Bridge, Emergency, Legal(60)));

        Assert.Equal((350 - (1.45 * 60 * Far * 1.33)) / (1.30 * 100 * Near * 1.33), row.Factor!.Value, Tolerance);
        Assert.Equal(1000 * 1.45 * 60 * Far * 1.33, row.Beside!.Factored, 1e-6);
        Assert.Equal(Near, row.Share!.Value, Tolerance);
        Assert.Equal(1, row.Share.Presence);
    }

    [Fact]
    public void Factor_BesideAHeavyTruck_IsLowestWithTheTruckNearer()
    {
        MemberRow row = Assert.Single(HangerRowsBeside(Bridge, Emergency, Legal(230)));

        Assert.Equal((350 - (1.45 * 230 * Near * 1.33)) / (1.30 * 100 * Far * 1.33), row.Factor!.Value, Tolerance);
        Assert.Equal(Far, row.Share!.Value, Tolerance);
    }

    [Fact]
    public void Factor_BesideATruckThatTakesAllThereIs_IsNone() =>
        Assert.Equal(0, Assert.Single(HangerRowsBeside(Bridge, Emergency, Legal(400))).Factor);

    // Both leave nothing: the one that takes more is named, wherever it stands in the list.
    [Fact]
    public void Neighbour_OfTwoThatTakeAllThereIs_IsTheHeavier()
    {
        MemberRow row = Assert.Single(HangerRowsBeside(Bridge, Emergency, Legal(400), Legal(500), Legal(450)));

        Assert.Equal("legal 500", row.Beside!.Vehicle.Name);
        Assert.Equal(1000 * ((1.45 * 500 * Near * 1.33) - 350), row.Shortfall, 1e-6);
    }

    [Fact]
    public void Factor_BesideSeveralTrucks_IsOfTheWorst()
    {
        MemberRow row = Assert.Single(HangerRowsBeside(Bridge, Emergency, Legal(60), Legal(90), Legal(30)));

        Assert.Equal((350 - (1.45 * 90 * Far * 1.33)) / (1.30 * 100 * Near * 1.33), row.Factor!.Value, Tolerance);
        Assert.Equal("legal 90", row.Beside!.Vehicle.Name);
    }

    // 8 and 6 ft with 4 between fit with 1 ft to the kerbs: the emergency vehicle at 2 and 10, the truck at 14 and 20 ft.
    [Fact]
    public void Factor_OfAWiderVehicle_IsOfItsOwnWheels()
    {
        MemberRow row = Assert.Single(HangerRowsBeside(Bridge, Emergency with { Gauge = 8 * Foot }, Legal(60)));

        Assert.Equal((350 - (1.45 * 60 * (8 + 2) / 44 * 1.33)) / (1.30 * 100 * (20 + 12) / 44 * 1.33), row.Factor!.Value, Tolerance);
    }

    // 1.3 for both by LFR, and impact by the length of the line.
    [Fact]
    public void Factor_ByLoadFactor_TakesTheLevelOfTheRow()
    {
        MemberRow[] rows = HangerRowsBeside("LFR", Bridge, Emergency, Legal(60));

        foreach ((string level, double factor) in (ReadOnlySpan<(string, double)>)[("inventory", 2.17), ("operating", 1.30)])
        {
            double allowed = 1 + ImpactOf120Feet;
            Assert.Equal(
                (400 - (1.3 * 40) - (factor * 60 * Far * allowed)) / (factor * 100 * Near * allowed),
                rows.Single(r => r.Level.Name == level).Factor!.Value,
                Tolerance);
        }
    }

    // 1 ft to the right: wheels 4, 10, 14, 20 ft from the left truss, 2, 8, 12, 18 ft from the right one.
    [Fact]
    public void Factor_RoadwayOffCentre_IsEachTrusssOwn()
    {
        Bridge bridge = Bridge with { Deck = Bridge.Deck with { RoadwayOffset = 1 * Foot } };

        MemberRow[] rows = HangerRowsBeside(bridge, Emergency, Legal(60));

        foreach ((string truss, double near, double far) in (ReadOnlySpan<(string, double, double)>)[("left", 30 / 44.0, 10 / 44.0), ("right", 34 / 44.0, 14 / 44.0)])
        {
            Assert.Equal((350 - (1.45 * 60 * far * 1.33)) / (1.30 * 100 * near * 1.33), rows.Single(r => r.Truss == truss).Factor!.Value, Tolerance);
        }
    }

    [Fact]
    public void Rows_RoadwayOfOneLane_AreAloneAndSaySo()
    {
        BridgeRating rating = Rate(Bridge with { Deck = Bridge.Deck with { Roadway = 17 * Foot } }, "LRFR", Emergency, Legal(60));

        Assert.All(rating.MemberRows, r => Assert.Null(r.Beside));
        Assert.Contains(new Stamp.EmergencyAlone(), rating.Stamps);
    }

    [Fact]
    public void Rows_TwoLanes_KeepTheEmergencyVehicleAloneAsWell()
    {
        BridgeRating rating = Rate(Bridge, "LRFR", Emergency, Legal(60));

        MemberRow alone = rating.MemberRows.Single(r => r is { MemberIndex: Hanger, Sense: Sense.Tension, Beside: null } && r.Vehicle == Emergency);
        Assert.Equal(350 / (1.30 * 100 * 1.2 * Near * 1.33), alone.Factor!.Value, Tolerance);
        Assert.DoesNotContain(new Stamp.EmergencyAlone(), rating.Stamps);
    }

    private static Vehicle Legal(double kilonewtons) =>
        new($"legal {kilonewtons:0}", VehicleClass.Legal, new AxleTrain([1000 * kilonewtons], []), Vehicle.StandardGauge, "made up for the test");

    private static MemberRow[] HangerRowsBeside(Bridge bridge, params LiveLoad[] vehicles) => HangerRowsBeside("LRFR", bridge, vehicles);

    private static MemberRow[] HangerRowsBeside(string method, Bridge bridge, params LiveLoad[] vehicles) =>
        [.. Rate(bridge, method, vehicles).MemberRows.Where(r => r is { MemberIndex: Hanger, Sense: Sense.Tension, Beside: not null })];
}
