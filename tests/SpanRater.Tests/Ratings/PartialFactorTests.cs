using SpanRater.Files;
using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests.Ratings;

/// <summary>The rating by factors that the user gives: by hand, and against a method that has the same factors built in.</summary>
public class PartialFactorTests
{
    private static readonly PartialFactors Given = new(
        "made up for the test", "no standard", "assessment", new DeadFactors(1.2, 1.4, 0.9, 0.8), new TrafficFactors(1.5, 0.25, [1.0, 0.9]), 1.6);

    // The hanger of the king post takes the load at L1 whole: (400 − 1.2 × 100 − 1.4 × 20) / (γ × 100 × (1 + IM)).
    [Theory]
    [InlineData(VehicleClass.Legal, 1.5, 0.25)]
    [InlineData(VehicleClass.Design, 1.5, 0.25)]
    [InlineData(VehicleClass.Permit, 1.5, 0.25)]
    [InlineData(VehicleClass.Farm, 1.5, 0.25)]
    [InlineData(VehicleClass.Maintenance, 1.6, 0)]
    public void Rate_OneAxle_IsTheEquationByHand(VehicleClass vehicleClass, double factor, double impact)
    {
        MemberRow row = KingPostBridge.HangerRow(Rate(KingPostBridge.Of(100, 20), Given, KingPostBridge.OneAxle(vehicleClass)), "assessment");

        Assert.Equal((400 - (1.2 * 100) - (1.4 * 20)) / (factor * 100 * (1 + impact)), row.Factor!.Value, 1e-12);
    }

    // Dead load pulls at the hanger, and a capacity in compression is helped by it at the factor where it relieves.
    [Fact]
    public void DeadFactors_OfWhatRelieves_AreTheFavourableOnes()
    {
        MemberRow row = KingPostBridge.HangerRow(Rate(KingPostBridge.Of(100, 20), Given, KingPostBridge.OneAxle(VehicleClass.Legal)), "assessment", Sense.Compression);

        Assert.Equal((0.9, 0.8), (row.ComponentsFactor, row.WearingFactor));
        Assert.Equal(-((0.9 * 100_000) + (0.8 * 20_000)), row.FactoredDead, 1e-6);
    }

    [Theory]
    [InlineData(VehicleClass.Maintenance, true)]
    [InlineData(VehicleClass.Legal, false)]
    public void Rate_LoadWithoutAFactor_IsNotRated(VehicleClass vehicleClass, bool hasTraffic)
    {
        PartialFactors factors = hasTraffic ? Given with { Crowd = null } : Given with { Traffic = null };
        BridgeRating rating = Rate(KingPostBridge.Of(10), factors, KingPostBridge.OneAxle(vehicleClass));

        Assert.Null(rating.Governing);
        Assert.All(rating.MemberRows, r => Assert.Equal((RatingStatus.NotRated, (double?)null), (r.Status, r.Factor)));
        Assert.All(rating.MemberRows, r => Assert.IsType<NotRatedReason.NoPartialFactor>(r.Reason));
    }

    [Fact]
    public void Rule_OfTheClasses_IsCrowdOrTraffic()
    {
        var method = new PartialFactorRating(Given);

        Assert.All(Enum.GetValues<VehicleClass>(), c =>
        {
            bool isTraffic = c is not (VehicleClass.Crowd or VehicleClass.Maintenance);
            Assert.Equal(new ClassRule(isTraffic, RatingMethod.All[0].RuleOf(c).MostLanes, isTraffic), method.RuleOf(c));
        });
        Assert.Equal([1.0, 0.9, 0.9], Enumerable.Range(1, 3).Select(method.Presence));
    }

    [Fact]
    public void Method_OfGivenFactors_SaysWhoseTheyAre()
    {
        var method = new PartialFactorRating(Given);

        Assert.Contains("made up for the test (no standard)", method.Source, StringComparison.Ordinal);
        Assert.False(method.HasPosting);
        Assert.Null(RatingMethod.Find(method.Name));
        Assert.All(RatingMethod.All, m => Assert.True(m.HasPosting));
    }

    [Fact]
    public void Method_WithoutAnyFactorOnLiveLoad_IsABugOfTheCaller()
    {
        Assert.Equal("factors", Assert.Throws<ArgumentException>(() => new PartialFactorRating(Given with { Traffic = null, Crowd = null })).ParamName);
        Assert.Equal("factors", Assert.Throws<ArgumentException>(() => new PartialFactorRating(Given with { Traffic = new TrafficFactors(1, 0, []) })).ParamName);
    }

    // With the factors of load factor rating at operating level, and the same impact, every row is that of load factor rating.
    [Theory]
    [InlineData(VehicleClass.Legal, "garrow-landing")]
    [InlineData(VehicleClass.Design, "garrow-landing")]
    [InlineData(VehicleClass.Maintenance, "garrow-landing")]
    [InlineData(VehicleClass.Legal, "hollis-fork")]
    public void Rate_WithTheFactorsOfLoadFactorRating_IsLoadFactorRating(VehicleClass vehicleClass, string sample)
    {
        var random = new Random(20_251);
        Bridge bridge = BridgeFolder.Read(Repository.Sample(sample), []).Bridge!;
        bridge = bridge with { Rating = new RatingSettings() };
        var same = new PartialFactors("b", "s", "operating", new DeadFactors(1.3, 1.3, 1.0, 1.0), new TrafficFactors(1.3, 0.28, [1.00, 1.00, 0.90, 0.75]), 1.3);
        bool takesImpact = !PartialFactors.IsCrowd(vehicleClass);
        for (int i = 0; i < 10; i++)
        {
            Bridge strong = bridge with { Capacities = [.. bridge.Capacities.Select(_ => Random(random))] };
            Vehicle vehicle = new(
                "random", vehicleClass, new AxleTrain([20_000 + (80_000 * random.NextDouble()), 40_000 + (80_000 * random.NextDouble())], [new AxleGap(3 + random.NextDouble(), 5)]), 1.8, "random");
            Bridge withImpact = takesImpact ? strong with { Rating = new RatingSettings { Impact = 0.28 } } : strong;
            IEnumerable<MemberRow> expected = RateBy(withImpact, RatingMethod.Find("LFR")!, vehicle).MemberRows.Where(r => r.Level.Name == "operating");
            IReadOnlyList<MemberRow> rows = Rate(strong, same, vehicle).MemberRows;

            Assert.NotEmpty(rows);
            Assert.Contains(rows, r => r.Factor > 0);
            Assert.Equal(expected.Select(Key), rows.Select(Key));
        }
    }

    private static (string?, string, Sense, RatingStatus, double) Key(MemberRow row) =>
        (row.Truss, row.Member.Name, row.Sense, row.Status, Math.Round(row.Factor ?? -1, 9));

    private static GivenCapacities Random(Random random) => new(new Dictionary<GivenCapacity, double>
    {
        [GivenCapacity.Tension] = 1e6 * (0.5 + random.NextDouble()),
        [GivenCapacity.Compression] = 1e6 * (0.5 + random.NextDouble()),
    });

    private static BridgeRating Rate(Bridge bridge, PartialFactors factors, LiveLoad load) => RateBy(bridge, new PartialFactorRating(factors), load);

    private static BridgeRating RateBy(Bridge bridge, RatingMethod method, LiveLoad load)
    {
        Assert.True(BridgeRater.Rate(bridge, method, [load]).TryGet(out BridgeRating? rating, out Refusal? refusal), $"{refusal}");
        return rating;
    }
}
