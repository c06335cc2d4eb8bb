namespace SpanRater.Tests.Ratings;

/// <summary>
/// What would help, worked by hand on the hanger of a king post by LFR: RF = (400 − 1.3 (100 + 50)) / (1.3 × 100 × share × (1 + 50/245)).
/// Trusses 22 ft apart, roadway 20 ft, wheels 6 ft apart: 3 and 9 ft from the truss at the kerb, 13 and 19 ft those of a second
/// vehicle, 8 and 14 ft on the middle.
/// </summary>
public class AlternativesTests
{
    private const double OneAtKerb = (19 + 13) / 22.0 / 2, TwoAbreast = (19 + 13 + 9 + 3) / 22.0 / 2, OnMiddle = (14 + 8) / 22.0 / 2;

    private static readonly Vehicle Legal = KingPostBridge.OneAxle(VehicleClass.Legal);

    [Fact]
    public void All_OfAWideBridge_StandInTheOrderOfTheirGain()
    {
        Alternatives alternatives = Of(Wide(), Legal);

        double present = Factor(195, TwoAbreast, KingPostBridge.ImpactOf120Feet);
        Assert.Equal(present, alternatives.Lowest!.Factor!.Value, 1e-9);
        Assert.Equal(
            [AlternativeKind.HeldToMiddle, AlternativeKind.OneLane, AlternativeKind.OverlayOff, AlternativeKind.CrawlSpeed, AlternativeKind.AllTogether],
            alternatives.All.Select(a => a.Kind));
        double[] factors =
        [
            Factor(195, OnMiddle, KingPostBridge.ImpactOf120Feet), Factor(195, OneAtKerb, KingPostBridge.ImpactOf120Feet),
            Factor(130, TwoAbreast, KingPostBridge.ImpactOf120Feet), Factor(195, TwoAbreast, 0), Factor(130, OnMiddle, 0),
        ];
        Assert.All(alternatives.All.Zip(factors), pair =>
        {
            Assert.Equal(pair.Second, pair.First.Lowest!.Factor!.Value, 1e-9);
            Assert.Equal(pair.Second - present, pair.First.Gain!.Value, 1e-9);
            Assert.Equal(KingPostBridge.Hanger, pair.First.Lowest.Order);
        });
        Assert.Equal((AlternativeKind.AsBuilt, NotOfferedReason.NothingLost), Assert.Single(alternatives.NotOffered));
    }

    [Fact]
    public void Posting_OfAnAlternative_IsThatOfTheBridgeWithTheChange()
    {
        Bridge weak = Wide(capacity: 300);
        Alternatives alternatives = Of(weak, Legal);

        Assert.Equal(PostingVerdict.Posted, alternatives.Present.Common.Verdict);
        Assert.Equal(PostingVerdict.NotNeeded, alternatives.All.Single(a => a.Kind == AlternativeKind.HeldToMiddle).Posting!.Common.Verdict);
        Posting overlayOff = SpanRater.Posting.Of(KingPostBridge.Rate(weak with { Cases = [weak.Cases[0]] }, "LFR", Legal));
        Assert.Equal(overlayOff.Common.SetBy?.Tons, alternatives.All.Single(a => a.Kind == AlternativeKind.OverlayOff).Posting!.Common.SetBy?.Tons);
    }

    [Fact]
    public void Of_AtInventoryLevel_StaysAtThatLevel()
    {
        var posting = SpanRater.Posting.Of(KingPostBridge.Rate(Wide(), "LFR", Legal), atInventory: true);
        Alternatives alternatives = Alternatives.Of(posting, [Legal])!;

        Assert.All(alternatives.All, a => Assert.Equal("inventory", a.Lowest!.Level.Name));
        Assert.Equal(Factor(195, OnMiddle, KingPostBridge.ImpactOf120Feet) * 1.3 / 2.17, alternatives.Offered[0].Lowest!.Factor!.Value, 1e-9);
    }

    [Fact]
    public void NotOffered_WithAGivenShareAndNoSurface_SaysWhy()
    {
        Alternatives alternatives = Of(KingPostBridge.Of(components: 100), Legal);

        Assert.Equal(
            [(AlternativeKind.OneLane, NotOfferedReason.GivenShare), (AlternativeKind.HeldToMiddle, NotOfferedReason.GivenShare), (AlternativeKind.OverlayOff, NotOfferedReason.NoWearingSurface), (AlternativeKind.AsBuilt, NotOfferedReason.NothingLost)],
            alternatives.NotOffered);
        Assert.Equal(AlternativeKind.CrawlSpeed, Assert.Single(alternatives.All).Kind);
        Assert.Null(alternatives.AllTogether);
    }

    // 14 ft between the kerbs is one lane already; kerb 4 ft from the truss, wheels 6 and 12 ft, on the middle 8 and 14 ft.
    [Fact]
    public void OneLane_OnANarrowRoadway_IsNotOfferedAndCentredIs()
    {
        Alternatives alternatives = Of(Wide() with { Deck = Deck(14) }, Legal);

        Assert.Contains((AlternativeKind.OneLane, NotOfferedReason.OneLaneAlready), alternatives.NotOffered);
        Assert.Equal(Factor(195, (16 + 10) / 22.0 / 2, KingPostBridge.ImpactOf120Feet), alternatives.Lowest!.Factor!.Value, 1e-9);
        Assert.Equal(Factor(195, OnMiddle, KingPostBridge.ImpactOf120Feet), alternatives.All.Single(a => a.Kind == AlternativeKind.HeldToMiddle).Lowest!.Factor!.Value, 1e-9);
    }

    [Theory]
    [InlineData(0.15, true)]
    [InlineData(0.0, false)]
    public void CrawlSpeed_WhereImpactIsGiven_ReplacesItUnlessItIsNone(double impact, bool offered)
    {
        Alternatives alternatives = Of(Wide() with { Rating = new RatingSettings { Impact = impact } }, Legal);

        Assert.Equal(!offered, alternatives.NotOffered.Contains((AlternativeKind.CrawlSpeed, NotOfferedReason.NoImpact)));
        Assert.Equal(Factor(195, TwoAbreast, impact), alternatives.Lowest!.Factor!.Value, 1e-9);
        Assert.All(alternatives.Offered.Where(a => a.Kind == AlternativeKind.CrawlSpeed), a => Assert.Equal(Factor(195, TwoAbreast, 0), a.Lowest!.Factor!.Value, 1e-9));
    }

    // Beside a legal vehicle now, alone with one lane: presence 1.0 by LFR.
    [Fact]
    public void OneLane_OfAnEmergencyVehicle_LeavesItsNeighbourOut()
    {
        Vehicle emergency = KingPostBridge.OneAxle(VehicleClass.Emergency);
        Alternatives alternatives = Of(Wide(), Legal, emergency);

        Assert.NotNull(Alternatives.Types(alternatives.Present).Single(r => r.Vehicle == emergency).Lowest!.Beside);
        RatingRow alone = Alternatives.Types(alternatives.All.Single(a => a.Kind == AlternativeKind.OneLane).Posting!).Single(r => r.Vehicle == emergency).Lowest!;
        Assert.Null(alone.Beside);
        Assert.Equal(Factor(195, OneAtKerb, KingPostBridge.ImpactOf120Feet), alone.Factor!.Value, 1e-9);
    }

    [Fact]
    public void Of_ClassesWithoutPosting_IsNone()
    {
        Vehicle farm = KingPostBridge.OneAxle(VehicleClass.Farm);

        Assert.Null(Alternatives.Of(SpanRater.Posting.Of(KingPostBridge.Rate(Wide(), "LFR", farm)), [farm]));
    }

    // RT = RF × W, Manual for Bridge Evaluation 6B.4.1, from memory.
    [Fact]
    public void EquivalentLoad_OfARow_IsFactorTimesWeight()
    {
        MemberRow row = KingPostBridge.HangerRow(KingPostBridge.Rate(Wide(), "LFR", Legal), "operating");

        Assert.Equal(Factor(195, TwoAbreast, KingPostBridge.ImpactOf120Feet) * 100_000, SafeLoad.EquivalentLoad(row)!.Value, 1e-4);
        Assert.Null(SafeLoad.EquivalentLoad(row with { Factor = null }));
        Assert.Null(SafeLoad.EquivalentLoad(row with { Vehicle = new Loading("pair", VehicleClass.Legal, [Legal], null, "made up") }));
    }

    private static double Factor(double factoredDead, double share, double impact) => (400 - factoredDead) / (1.3 * 100 * share * (1 + impact));

    private static Deck Deck(double roadway) =>
        new() { TrussSpacing = 22 * KingPostBridge.Foot, Roadway = roadway * KingPostBridge.Foot };

    private static Bridge Wide(double capacity = 400)
    {
        Bridge bridge = KingPostBridge.Of(components: 100, wearingSurface: 50);
        var capacities = new GivenCapacities(Enum.GetValues<GivenCapacity>().ToDictionary(k => k, _ => 1000 * capacity));
        return bridge with { Deck = Deck(20), Capacities = [.. bridge.Capacities.Select(_ => capacities)] };
    }

    private static Alternatives Of(Bridge bridge, params LiveLoad[] vehicles) =>
        Alternatives.Of(SpanRater.Posting.Of(KingPostBridge.Rate(bridge, "LFR", vehicles)), vehicles)!;
}
