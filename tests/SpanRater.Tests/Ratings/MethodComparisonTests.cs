namespace SpanRater.Tests.Ratings;

/// <summary>The hanger of a king post with a share of 1, DC of 100 kN and one axle of 100 kN, by every method, by hand.</summary>
public class MethodComparisonTests
{
    private const double Impact = KingPostBridge.ImpactOf120Feet;

    private static readonly Vehicle Legal = KingPostBridge.OneAxle(VehicleClass.Legal);

    [Theory]
    [InlineData("LRFR", "legal", (400 - 125) / (1.45 * 100 * 1.33))]
    [InlineData("LFR", "operating", (400 - 130) / (1.3 * 100 * (1 + Impact)))]
    [InlineData("LFR", "inventory", (400 - 130) / (2.17 * 100 * (1 + Impact)))]
    [InlineData("ASR", "operating", (400 - 100) / (100 * (1 + Impact)))]
    [InlineData("ASR", "inventory", (400 - 100) / (100 * (1 + Impact)))]
    public void Results_OfEveryMethod_AreItsOwn(string method, string level, double factor)
    {
        MethodComparison comparison = Of(KingPostBridge.Of(components: 100));

        Assert.Equal(5, comparison.Results.Count);
        MethodResult result = comparison.Results.Single(r => r.Method.Name == method && r.Level.Name == level);
        Assert.Equal(factor, result.Lowest!.Factor!.Value, 1e-9);
        Assert.Equal(KingPostBridge.Hanger, result.Lowest.Order);
        Assert.False(result.IsAtMost);
    }

    [Fact]
    public void Results_WithFactoredCapacityOfTheHangerAlone_AreAtMostAndNoneByAllowableStress()
    {
        MethodComparison comparison = Of(KingPostBridge.Of(100, null, new Dictionary<GivenCapacity, double> { [GivenCapacity.Tension] = 400 }));

        MethodResult factored = comparison.Results.Single(r => r.Method.Name == "LRFR");
        Assert.True(factored.IsAtMost);
        Assert.Equal((400 - 125) / (1.45 * 100 * 1.33), factored.Lowest!.Factor!.Value, 1e-9);
        Assert.All(comparison.Results.Where(r => r.Method.Name == "ASR"), r => Assert.Null(r.Lowest));
        RatingRow[] missing = [.. comparison.Missing(RatingMethod.Find("ASR")!).Where(r => r.Reason is NotRatedReason.NoCapacity { Capacity: GivenCapacity.InventoryTension, Lacking: null })];
        Assert.Equal(["L0L1", "L1L2", "L1U1"], missing.Select(r => r.Name).Distinct());
    }

    [Fact]
    public void Results_WhereTheDeadLoadUsesUpTheCapacity_AreZeroAndNotAtMost()
    {
        MethodComparison comparison = Of(KingPostBridge.Of(350));

        Assert.Equal(RatingStatus.DeadExceeds, comparison.Results.Single(r => r.Method.Name == "LRFR").Lowest!.Status);
        Assert.All(comparison.Results.Where(r => r.Method.Name == "ASR"), r => Assert.Equal(RatingStatus.Rated, r.Lowest!.Status));
    }

    private static MethodComparison Of(Bridge bridge)
    {
        Assert.True(MethodComparison.Of(bridge, [Legal]).TryGet(out MethodComparison? comparison, out Refusal? refusal), $"{refusal}");
        return comparison;
    }
}
