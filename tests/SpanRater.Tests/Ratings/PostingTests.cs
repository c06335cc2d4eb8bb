namespace SpanRater.Tests.Ratings;

/// <summary>
/// Postings worked by hand on the hanger of a king post with a share of 1 and no dead load: one axle brings its weight into the
/// hanger, so that RF = C / (gLL P (1 + IM)). The capacity is chosen for the factor that a test asks for.
/// </summary>
public class PostingTests
{
    private const double Ton = 8.896443230521;

    private static readonly GivenCapacity[] Kinds = Enum.GetValues<GivenCapacity>();

    // LRFR, ADTT unknown: 1.45 × 1.33 for legal types; a type of 10 US tons.
    [Theory]
    [InlineData(1.0, PostingVerdict.NotNeeded, 10.0, null)]
    [InlineData(0.999, PostingVerdict.Posted, 10 / 0.7 * 0.699, 9)]
    [InlineData(0.65, PostingVerdict.Posted, 5.0, 5)]
    [InlineData(0.3, PostingVerdict.Posted, 0.0, 0)]
    [InlineData(0.29, PostingVerdict.Barred, 0.0, 0)]
    public void Legal_ByLoadAndResistanceFactors_FollowsTheReducedRule(double factor, PostingVerdict verdict, double tons, int? posted)
    {
        PostingRow row = Assert.Single(Legal("LRFR", Axle(10), factor * 1.45 * 1.33 * 10).Legal);

        Assert.Equal(factor, row.Lowest!.Factor!.Value, 1e-9);
        Assert.Equal(verdict, row.Verdict);
        Assert.Equal(tons, row.SafeLoad!.Value / SafeLoad.UsTon, 1e-6);
        Assert.Equal(posted, row.Tons);
    }

    // LFR: A2 = 1.3 and 2.17; ASR: 1. Impact 50/245 for the line of 120 ft.
    [Theory]
    [InlineData("LFR", false, 1.3)]
    [InlineData("LFR", true, 2.17)]
    [InlineData("ASR", false, 1.0)]
    [InlineData("ASR", true, 1.0)]
    public void Legal_ByTheOlderMethods_IsFactorTimesWeightAtTheLevelAsked(string method, bool atInventory, double liveFactor)
    {
        SpanRater.Posting posting = Legal(method, Axle(10), 0.2 * liveFactor * (1 + KingPostBridge.ImpactOf120Feet) * 10, atInventory);

        PostingRow row = Assert.Single(posting.Legal);
        Assert.Equal(atInventory ? "inventory" : "operating", row.Level.Name);
        Assert.Equal((PostingVerdict.Posted, 2), (row.Verdict, row.Tons));
        Assert.Equal(2.0, row.SafeLoad!.Value / SafeLoad.UsTon, 1e-9);
        Assert.True(posting.Closure);
    }

    [Theory]
    [InlineData(12.999, 12)]
    [InlineData(13.0, 13)]
    [InlineData(12.99999999999, 13)]
    [InlineData(0.999, 0)]
    public void WholeTons_OfALoad_AreRoundedDown(double tons, int whole) => Assert.Equal(whole, SafeLoad.WholeTons(tons * SafeLoad.UsTon));

    // The line of 3 US tons is held against the load before it is rounded to tons.
    [Theory]
    [InlineData(2.999, true)]
    [InlineData(3.0, false)]
    [InlineData(3.2, false)]
    public void Closure_OfTheSmallestSafeLoad_LooksBeforeRounding(double tons, bool closes) =>
        Assert.Equal(closes, Legal("ASR", Axle(10), tons * (1 + KingPostBridge.ImpactOf120Feet)).Closure);

    [Theory]
    [InlineData("LRFR")]
    [InlineData("LFR")]
    [InlineData("ASR")]
    public void Closure_OfADeadLoadThatUsesUpTheCapacity_IsTold(string method)
    {
        Bridge bridge = KingPostBridge.Of(components: 500);
        SpanRater.Posting posting = SpanRater.Posting.Of(KingPostBridge.Rate(bridge, method, Axle(10, VehicleClass.Farm)));

        Assert.Empty(posting.Legal);
        Assert.True(posting.Closure);
        Assert.False(posting.IsComplete);
        PostingRow legal = Assert.Single(SpanRater.Posting.Of(KingPostBridge.Rate(bridge, method, Axle(10))).Legal);
        Assert.Equal((PostingVerdict.Barred, 0.0), (legal.Verdict, legal.SafeLoad));
    }

    // A small vehicle of a strong bridge is no ground to close it: its safe load is RF × W.
    [Fact]
    public void Closure_OfALightTypeWithAFactorOfTwo_IsNone()
    {
        SpanRater.Posting posting = Legal("LRFR", Axle(2), 2 * 1.45 * 1.33 * 2);

        Assert.False(posting.Closure);
        Assert.Equal(4.0, posting.Smallest!.SafeLoad!.Value / SafeLoad.UsTon, 1e-6);
        Assert.Equal(PostingVerdict.NotNeeded, posting.Common.Verdict);
    }

    [Fact]
    public void Emergency_WithASingleRearAxleAndATandem_HasTheLimitsOfEach()
    {
        Vehicle single = Emergency("one behind", [24, 33.5], [15]), tandem = Emergency("two behind", [24, 31, 31], [15, 4]);
        BridgeRating rating = KingPostBridge.Rate(Strong(26 * Ton), "LRFR", single, tandem);
        SpanRater.Posting posting = SpanRater.Posting.Of(rating);

        PostingRow ofSingle = posting.Emergency.Single(r => r.Vehicle == single), ofTandem = posting.Emergency.Single(r => r.Vehicle == tandem);
        double first = ofSingle.Lowest!.Factor!.Value, second = ofTandem.Lowest!.Factor!.Value;
        Assert.InRange(first, 0.3, 0.9);
        Assert.Equal(first * 33.5 / 2, ofSingle.SingleAxle!.Value / SafeLoad.UsTon, 1e-9);
        Assert.Null(ofSingle.Tandem);
        Assert.Equal(first * 57.5 / 2, ofSingle.SafeLoad!.Value / SafeLoad.UsTon, 1e-9);
        Assert.Null(ofTandem.SingleAxle);
        Assert.Equal(second * 62 / 2, ofTandem.Tandem!.Value / SafeLoad.UsTon, 1e-9);
        Assert.Equal(second * 86 / 2, ofTandem.SafeLoad!.Value / SafeLoad.UsTon, 1e-9);
        Assert.Empty(posting.Legal);
        Assert.False(posting.Closure);
    }

    [Fact]
    public void Classes_OtherThanLegalAndEmergency_TakeNoPart()
    {
        VehicleClass[] others = [VehicleClass.Screening, VehicleClass.Farm, VehicleClass.Maintenance, VehicleClass.Design];
        BridgeRating rating = KingPostBridge.Rate(Strong(10 * Ton), "LRFR", [Axle(50), .. others.Select(c => Axle(90, c))]);

        SpanRater.Posting posting = SpanRater.Posting.Of(rating);

        Assert.Equal(VehicleClass.Legal, Assert.Single(posting.Legal).Vehicle.Class);
        Assert.Equal(others.Order(), posting.Others.Select(o => o.Vehicle.Class).Order());
        Assert.Empty(posting.Emergency);
    }

    [Fact]
    public void LoadsWithoutAPostingRule_KeepTheirLowestFactor_AndAreTooHeavyBelowOne()
    {
        // The capacity carries an axle of 50 t and not one of 90 t.
        LiveLoad heavy = Axle(90, VehicleClass.Farm), light = Axle(5, VehicleClass.Maintenance), notional = Axle(90, VehicleClass.Screening);
        BridgeRating rating = KingPostBridge.Rate(Strong(10 * Ton), "LRFR", [heavy, light, notional]);

        SpanRater.Posting posting = SpanRater.Posting.Of(rating);

        OtherLoad Of(LiveLoad load) => posting.Others.Single(o => o.Vehicle == load);
        Assert.Equal(rating.Rows.Where(r => r.Vehicle == heavy).Min(r => r.Factor), Of(heavy).Deciding!.Factor);
        Assert.True(Of(heavy).Deciding!.Factor < 1);
        Assert.Equal(OtherVerdict.TooHeavy, Of(heavy).Verdict);
        Assert.True(Of(light).Deciding!.Factor > 1);
        Assert.Equal(OtherVerdict.Carried, Of(light).Verdict);
        Assert.Equal(OtherVerdict.StandsForOthers, Of(notional).Verdict);
    }

    [Fact]
    public void Limit_WithATypeThatIsNotRated_IsNotGiven()
    {
        Vehicle unrated = KingPostBridge.OneAxle(VehicleClass.Legal, "some loading") with { Name = "with a lane load" };
        SpanRater.Posting posting = SpanRater.Posting.Of(KingPostBridge.Rate(Strong(10 * Ton), "ASR", Axle(20), unrated));

        Assert.Equal(PostingVerdict.NotGiven, posting.Common.Verdict);
        Assert.False(posting.IsClosureKnown);
        Assert.Null(posting.Common.SetBy);
        Assert.False(posting.IsComplete);
        PostingRow row = posting.Legal.Single(r => r.Vehicle == unrated);
        Assert.Null(row.SafeLoad);
        Assert.IsType<NotRatedReason.PartOfLoading>(row.Reason);
    }

    // Only the hanger has a capacity, so that the load of the type is an upper bound.
    [Fact]
    public void Legal_WithMembersWithoutCapacity_IsAtMostWhatTheOthersAllow()
    {
        Bridge bridge = KingPostBridge.Of(0, capacities: Kinds.ToDictionary(k => k, _ => 5 * Ton));
        SpanRater.Posting posting = SpanRater.Posting.Of(KingPostBridge.Rate(bridge, "ASR", Axle(10)));

        Assert.NotEmpty(Assert.Single(posting.Legal).Unrated);
        Assert.True(posting.Common.IsAtMost);
        Assert.Equal(PostingVerdict.Posted, posting.Common.Verdict);
    }

    // Over 200 ft LRFR has a lane-type legal load as well; the other methods, and emergency vehicles, have none.
    [Theory]
    [InlineData("LRFR", 2, true)]
    [InlineData("LRFR", 1, false)]
    [InlineData("LFR", 2, false)]
    public void Legal_OnADeckOver200Feet_IsAtMostWhatItsTruckAllows(string method, double scale, bool isAtMost)
    {
        Bridge bridge = Strong(1e6);
        Truss truss = bridge.Truss;
        Truss scaled = Truss.Create([.. truss.Joints.Select(j => j with { X = scale * j.X, Y = scale * j.Y })], [.. truss.Members]).Truss!;
        Vehicle emergency = Emergency("one behind", [24, 33.5], [15]);
        SpanRater.Posting posting = SpanRater.Posting.Of(KingPostBridge.Rate(bridge with { Truss = scaled }, method, Axle(20), emergency));

        Assert.Equal(isAtMost, posting.Common.IsAtMost);
        Assert.Equal(!isAtMost, posting.IsClosureKnown);
        Assert.False(Assert.Single(posting.Emergency).IsAtMost);
    }

    [Theory]
    [InlineData("Type 3", Silhouette.SingleUnit)]
    [InlineData("SU7", Silhouette.SingleUnit)]
    [InlineData("Type 3S2", Silhouette.TractorSemitrailer)]
    [InlineData("Type 3-3", Silhouette.TruckAndTrailer)]
    [InlineData("EV2", null)]
    [InlineData("NRL", null)]
    public void Silhouette_OfAShippedVehicle_IsThatOfItsSign(string name, Silhouette? silhouette) =>
        Assert.Equal(silhouette, SpanRater.Posting.SilhouetteOf(Published.PublishedVehicles.Shipped(name)));

    [Fact]
    public void Of_InventoryWhereTheMethodHasNone_IsRefused() =>
        Assert.Throws<ArgumentException>(() => SpanRater.Posting.Of(KingPostBridge.Rate(Strong(Ton), "LRFR", Axle(1)), atInventory: true));

    // More capacity never lowers a safe load, nor raises it past the weight before the type is free of posting.
    [Fact]
    public void SafeLoad_OfAHigherFactor_IsNeverLower()
    {
        var random = new Random(48);
        for (int i = 0; i < 2000; i++)
        {
            double weight = 1 + (99 * random.NextDouble()), low = 2 * random.NextDouble(), high = low + (random.NextDouble() * 0.5);
            foreach (PostingRule rule in Enum.GetValues<PostingRule>())
            {
                double less = SafeLoad.Of(weight, low, rule), more = SafeLoad.Of(weight, high, rule);
                Assert.True(more >= less, $"{rule}: {weight} at {low}: {less}, at {high}: {more}");
                Assert.True(low >= 1 || less < weight, $"{rule}: {weight} at {low}: {less}");
                Assert.True(SafeLoad.Of(weight, low, PostingRule.ReducedLegal) <= SafeLoad.Of(weight, low, PostingRule.FactorTimesWeight) + 1e-9);
            }
        }
    }

    private static SpanRater.Posting Legal(string method, Vehicle vehicle, double capacityInTons, bool atInventory = false) =>
        SpanRater.Posting.Of(KingPostBridge.Rate(Strong(capacityInTons * Ton), method, vehicle), atInventory);

    // Every member has a capacity; that of the hanger is the smallest against its force.
    private static Bridge Strong(double hangerInKilonewtons)
    {
        Bridge bridge = KingPostBridge.Of(0, capacities: Kinds.ToDictionary(k => k, _ => hangerInKilonewtons));
        var strong = new GivenCapacities(Kinds.ToDictionary(k => k, _ => 1e9));
        return bridge with { Capacities = [strong, strong, strong, strong, bridge.Capacities[KingPostBridge.Hanger]] };
    }

    private static Vehicle Axle(double tons, VehicleClass vehicleClass = VehicleClass.Legal) =>
        new($"one axle, {vehicleClass}", vehicleClass, new AxleTrain([tons * Ton * 1000], []), Vehicle.StandardGauge, "made up for the test");

    private static Vehicle Emergency(string name, double[] kips, double[] feet) =>
        new(name, VehicleClass.Emergency, new AxleTrain([.. kips.Select(k => k * Ton * 500)], [.. feet.Select(f => AxleGap.Fixed(f * KingPostBridge.Foot))]), Vehicle.StandardGauge, "made up for the test");
}
