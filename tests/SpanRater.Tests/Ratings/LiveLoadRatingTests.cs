using SpanRater.Files;
using static SpanRater.Tests.Ratings.KingPostBridge;

namespace SpanRater.Tests.Ratings;

/// <summary>
/// Loadings, crowds, tracks and rows of trucks in the rating equation, by hand on the king post: every line is a triangle over
/// 120 ft, 1 high of the hanger. 2 kN/m on it give 2 x 36.576/2 = 36.576 kN. Dead load of 40 kN, 400 kN of capacity.
/// </summary>
public class LiveLoadRatingTests
{
    private const double Tolerance = 1e-9;

    /// <summary>2 kN/m on the whole triangle of the hanger [kN].</summary>
    private const double OfLane = 2 * 120 * Foot / 2;

    private static readonly ConstantLineLoad TwoKilonewtons = new(2_000, "made up for the test");

    private static readonly Vehicle Truck = OneAxle(VehicleClass.Design);

    // The lane, 36.576 and 80 kN, beats the axle of 100 kN. Its impact takes all adverse length, 120 ft.
    [Theory]
    [InlineData("inventory", 2.17)]
    [InlineData("operating", 1.30)]
    public void Factor_LfrTruckOrLane_IsOfTheWorstOfThem(string level, double liveFactor)
    {
        MemberRow row = HangerRow(Rate(Of(40), "LFR", TruckOrLane(point: 80)), level);

        Assert.Equal((400 - (1.3 * 40)) / (liveFactor * (OfLane + 80) * (1 + ImpactOf120Feet)), row.Factor!.Value, Tolerance);
        Assert.Equal(1000 * (OfLane + 80), row.Live!.Value, 1e-6);
        Assert.Null(row.Peak);
        Assert.Equal(120 * Foot, row.LoadedLength!.Value, Tolerance);
    }

    [Fact]
    public void Factor_LfrTruckOrALightLane_IsOfTheTruck()
    {
        MemberRow row = HangerRow(Rate(Of(40), "LFR", TruckOrLane(point: 60)), "operating");

        Assert.Equal((400 - (1.3 * 40)) / (1.3 * 100 * (1 + ImpactOf120Feet)), row.Factor!.Value, Tolerance);
        Assert.NotNull(row.Peak);
    }

    // The lower chord has 3/8 of the hanger's line, and as a chord the concentrated load for moments, 70 kN.
    [Theory]
    [InlineData("bottom chord", 70)]
    [InlineData("", 80)]
    public void Factor_LfrLaneOnAChord_TakesTheConcentratedLoadForMoments(string role, double point)
    {
        Bridge bridge = WithRole(Of(0), LowerChord, role);
        var load = TruckOrLane(80) with { Lane = new LaneLoad(TwoKilonewtons, 70_000, 80_000, TakesImpact: true) };

        MemberRow row = Rate(bridge, "LFR", load).MemberRows.Single(r => r.MemberIndex == LowerChord && r.Sense == Sense.Tension && r.Level.Name == "operating");

        Assert.Equal(400 / (1.3 * 0.375 * (OfLane + point) * (1 + ImpactOf120Feet)), row.Factor!.Value, Tolerance);
    }

    // HL-93: 33 % on the axle and none on the lane.
    [Theory]
    [InlineData("inventory", 1.75)]
    [InlineData("operating", 1.35)]
    public void Factor_LrfrTruckWithLane_HasImpactOnTheTruckOnly(string level, double liveFactor)
    {
        MemberRow row = HangerRow(Rate(Of(40), "LRFR", TruckWithLane(VehicleClass.Design)), level);

        Assert.Equal(350 / (liveFactor * ((100 * 1.33) + OfLane)), row.Factor!.Value, Tolerance);
        Assert.Equal((((100 * 1.33) + OfLane) / (100 + OfLane)) - 1, row.Impact!.Value, Tolerance);
        Assert.Equal([ImpactReason.OfMethod, ImpactReason.NoneOnLane], row.Effect!.Parts.Select(p => p.Impact.Reason));
    }

    // 18 ft of roadway between trusses 20 ft apart: two trucks and two lanes share evenly, presence 1.00, 1.0 of each; one of
    // them, with 1.20, is less: 1.2 x (15 + 9)/40 and 1.2 x 14/20.
    [Fact]
    public void Factor_LrfrTruckWithLaneOnEighteenFeet_LoadsBothLanes()
    {
        Bridge bridge = Of(40) with { Deck = new Deck { TrussSpacing = 20 * Foot, Roadway = 18 * Foot } };

        MemberRow row = HangerRow(Rate(bridge, "LRFR", TruckWithLane(VehicleClass.Design)), "inventory");

        Assert.Equal(2, row.Share!.Lanes);
        Assert.Equal(350 / (1.75 * ((100 * 1.33) + OfLane)), row.Factor!.Value, Tolerance);
    }

    // 14 ft of people, their middle 9 of 18 ft away: 7 ft of width on the truss. No impact, no presence.
    [Theory]
    [InlineData("LRFR", "inventory", 1.75, 350)]
    [InlineData("LRFR", "operating", 1.35, 350)]
    [InlineData("LFR", "operating", 1.30, 400 - (1.3 * 40))]
    public void Factor_OfACrowd_HasNeitherImpactNorPresence(string method, string level, double liveFactor, double room)
    {
        BridgeRating rating = Rate(OnDeck(18, 14), method, People(VehicleClass.Crowd));
        MemberRow row = HangerRow(rating, level);

        Assert.Equal(room / (liveFactor * 4 * 7 * Foot * 120 * Foot / 2), row.Factor!.Value, Tolerance);
        Assert.Equal(0, row.Impact!.Value);
        Assert.Contains(new Stamp.NoImpact(VehicleClass.Crowd), rating.Stamps);
    }

    // Cattle are of the class of farm vehicles, and take no impact either, which is told.
    [Fact]
    public void Factor_OfADrove_HasNoImpactAndSaysSo()
    {
        BridgeRating rating = Rate(OnDeck(18, 14), "LRFR", People(VehicleClass.Farm));

        Assert.Equal(350 / (1.45 * 4 * 7 * Foot * 120 * Foot / 2), HangerRow(rating, "legal").Factor!.Value, Tolerance);
        Assert.Contains(new Stamp.NoImpact(VehicleClass.Crowd), rating.Stamps);
    }

    // 30 ft of tracks on a triangle of 120: 200 x (1 - 30/240).
    [Fact]
    public void Factor_OfATrackedVehicle_IsTheHandValue()
    {
        var tracked = new TrackedVehicle("tracked", VehicleClass.Farm, 200_000, 30 * Foot, Vehicle.StandardGauge, "made up for the test");

        MemberRow row = HangerRow(Rate(Of(40), "LRFR", tracked), "legal");

        Assert.Equal(350 / (1.45 * 200 * (1 - (30.0 / 240)) * 1.33), row.Factor!.Value, Tolerance);
        Assert.Equal(45 * Foot, Assert.IsType<LivePart.Tracks>(row.Effect!.Parts[0].Part).Peak.Stretch.Left, Tolerance);
    }

    // Two axles of 100 kN, 24 ft apart: 100 at the middle and 100 x 36/60 beside it, as two vehicles that stand there.
    [Fact]
    public void Factor_OfTwoTrucksInARow_IsOfBothSuperposed()
    {
        Loading row = Row("headway = \"24 ft\"");
        MemberRow rated = HangerRow(Rate(Of(40), "LRFR", row), "legal");
        InfluenceLine hanger = new([0, 60, 120], [0, 1, 0]);

        Assert.Equal(100_000 * (hanger.OrdinateAt(60) + hanger.OrdinateAt(84)), rated.Live!.Value, 1e-6);
        Assert.Equal(350 / (1.45 * 160 * 1.33), rated.Factor!.Value, Tolerance);
    }

    // From 24 to 40 ft, the trucks come as near as they may; with three quarters of their weight, three quarters.
    [Fact]
    public void Factor_OfTwoTrucksWithAHeadwayThatVaries_TakesTheWorst() =>
        Assert.Equal(
            350 / (1.45 * 0.75 * 160 * 1.33),
            HangerRow(Rate(Of(40), "LRFR", Row("headway = \"24 ft\"\nheadway_max = \"40 ft\"\ntimes = 0.75")), "legal").Factor!.Value,
            Tolerance);

    private static Bridge OnDeck(double spacing, double roadway) =>
        Of(40) with { Deck = new Deck { TrussSpacing = spacing * Foot, Roadway = roadway * Foot } };

    private static Crowd People(VehicleClass vehicleClass) =>
        new("people", vehicleClass, new ConstantPressure(4_000, "made up for the test"), null, "made up for the test");

    private static Loading TruckOrLane(double point) =>
        new("truck or lane", VehicleClass.Design, [Truck], new LaneLoad(TwoKilonewtons, PointOnOthers: 1000 * point, TakesImpact: true), "made up for the test");

    private static Loading TruckWithLane(VehicleClass vehicleClass) =>
        new("truck with lane", vehicleClass, [Truck], new LaneLoad(TwoKilonewtons), "made up for the test");

    private static Loading Row(string keys)
    {
        var findings = new FindingList();
        Catalogue catalogue = Catalogue.Read(
            [],
            [
                ("vehicle,class,load [kN]\nAxle,legal,100\n", "vehicles.csv"),
                ($"[[loading]]\nname = \"In a row\"\nclass = \"legal\"\nvehicles = [\"Axle\", \"Axle\"]\ntake = \"sum\"\n{keys}\n", "vehicles.toml"),
            ],
            findings);
        Assert.False(findings.HasErrors);
        return Assert.IsType<Loading>(catalogue.Find("In a row"));
    }
}
