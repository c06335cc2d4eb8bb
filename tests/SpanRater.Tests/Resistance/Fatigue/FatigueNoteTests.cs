using System.Text.Json;
using SpanRater.Tests.CommandLine;
using static SpanRater.Tests.Published.CustomaryUnits;

namespace SpanRater.Tests.Resistance.Fatigue;

/// <summary>The fatigue note against arithmetic by hand.</summary>
public class FatigueNoteTests
{
    private const double Ksi = 1000 * Psi;

    // N = A/Δσ³ by hand at 20 ksi, 8000 ksi³. Source: AASHTO LRFD, 8th ed. (2017), Table 6.6.1.2.5-1, A in 10⁸ ksi³, from memory: 250, 120, 61, 44, 44, 22, 11, 3.9.
    [Theory]
    [InlineData("A", 3_125_000)]
    [InlineData("B", 1_500_000)]
    [InlineData("B'", 762_500)]
    [InlineData("C", 550_000)]
    [InlineData("C'", 550_000)]
    [InlineData("D", 275_000)]
    [InlineData("E", 137_500)]
    [InlineData("E'", 48_750)]
    public void AllowedCycles_TwentyKsi_AreTheConstantOverTheCube(string category, double cycles) =>
        Assert.Equal(cycles, DetailCategory.Find(category)!.AllowedCycles(20 * Ksi)!.Value, cycles * 1e-9);

    // Source of the thresholds in ksi: AASHTO LRFD, 8th ed. (2017), Table 6.6.1.2.5-3, from memory; half of each by hand.
    [Theory]
    [InlineData("A", 12)]
    [InlineData("B", 8)]
    [InlineData("B'", 6)]
    [InlineData("C", 5)]
    [InlineData("C'", 6)]
    [InlineData("D", 3.5)]
    [InlineData("E", 2.25)]
    [InlineData("E'", 1.3)]
    public void AllowedCycles_AtHalfOfTheThreshold_HaveNoEndAndAboveItHaveOne(string category, double halfInKsi)
    {
        DetailCategory found = DetailCategory.Find(category)!;
        Assert.Null(found.AllowedCycles(halfInKsi * Ksi * (1 - 1e-9)));
        Assert.Null(found.AllowedCycles(found.Threshold / 2));
        Assert.NotNull(found.AllowedCycles(halfInKsi * Ksi * (1 + 1e-9)));
    }

    // By hand; axles of Type 3 from memory of AASHTO Manual for Bridge Evaluation, 3rd ed. (2018), App. D6A: 16, 17 and 17 kip at 15 and 4 ft.
    // The roadway of 12 ft between trusses 14 ft apart puts the wheels 3 and 9 ft from one of them: share (11 + 5)/(2·14) = 4/7.
    // The line of the hanger is a triangle of 24 ft with 1 at its middle: one axle of 17 kip there, the other 4 ft off at 8/12, the third off the deck.
    private const double Share = 4 / 7.0, Range = 1.15 * Share * (17 + (17 * 8 / 12.0)) / 2;

    [Fact]
    public void Of_HangerOfAKingPost_IsTheRangeByHand()
    {
        // 1.15 · 0.5714 · 28.33 = 18.62 kip on 2 in²: 9.3095 ksi. 24 ft is no longer than 40 ft, so that a passage counts twice.
        using BridgeOnDisk bridge = FatigueKingPost.Make();
        using JsonDocument json = JsonDocument.Parse(FatigueKingPost.Fatigue(bridge, "5", "100", "--format", "json").Output);
        JsonElement root = json.RootElement;
        Assert.Equal(9.3095, Range, 0.00005);
        Assert.Equal(18.62 * Kip / 1000, root.GetProperty("tension").GetDouble(), 0.005 * Kip / 1000);
        Assert.Equal(0, root.GetProperty("compression").GetDouble());
        Assert.Equal(2 * Inch * Inch, root.GetProperty("area").GetDouble(), 1e-12);
        Assert.Equal(Range * Ksi / 1e6, root.GetProperty("stressRange").GetDouble(), 1e-9);
        Assert.True(root.GetProperty("counts").GetBoolean());
        JsonElement[] details = [.. root.GetProperty("details").EnumerateArray()];
        Assert.Equal(["A", "B", "B'", "C", "C'", "D", "E", "E'"], details.Select(d => d.GetProperty("detail").GetString()));
        Assert.All(details, d => Assert.Equal(5 * 365 * 100 * 2, d.GetProperty("used").GetDouble(), 1e-6));
    }

    // By hand: 22e8/9.3095³ = 2.727e6 of D; A, whose threshold is 24 ksi, has no end at 9.31 ksi, B with 16 ksi has one.
    [Fact]
    public void Of_HangerOfAKingPost_HasTheLifeByHand()
    {
        using BridgeOnDisk bridge = FatigueKingPost.Make();
        using JsonDocument json = JsonDocument.Parse(FatigueKingPost.Fatigue(bridge, "5", "100", "--format", "json").Output);
        JsonElement Detail(string name) => json.RootElement.GetProperty("details").EnumerateArray().Single(d => d.GetProperty("detail").GetString() == name);
        Assert.Equal(2.727e6, Detail("D").GetProperty("allowed").GetDouble(), 500.0);
        Assert.Equal((22e8 / (Range * Range * Range) / (5 * 365 * 2)) - 100, Detail("D").GetProperty("yearsLeft").GetDouble(), 1e-6);
        Assert.Equal(JsonValueKind.Null, Detail("A").GetProperty("allowed").ValueKind);
        Assert.Equal(JsonValueKind.Null, Detail("A").GetProperty("yearsLeft").ValueKind);
        Assert.Equal(JsonValueKind.Number, Detail("B").GetProperty("allowed").ValueKind);
    }
}
