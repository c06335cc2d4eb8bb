using static SpanRater.Tests.Published.CustomaryUnits;

namespace SpanRater.Tests.Published.SimpleSpans;

/// <summary>
/// Khan, <i>Bridge and Highway Structure Rehabilitation and Repair</i> (McGraw-Hill 2010), tables of simple spans: shears and moments
/// under the H20 lane load and under HL-93, one lane, no impact.
/// </summary>
public class KhanTests
{
    /// <summary>One unit of the second digit: the book cuts off where it does not round [kip or kip-ft].</summary>
    private const double LastDigit = 0.01;

    public static IEnumerable<TheoryDataRow<string, string, double, double>> Rows() =>
        from row in PublishedTable.Read("SimpleSpans/khan.csv")
        select new TheoryDataRow<string, string, double, double>(row["loading"], row["quantity"], row.Number("span_ft"), row.Number("value"))
        {
            Label = row.Label($"{row["loading"]}, {row["span_ft"]} ft, {row["quantity"]}: {row["value"]}"),
        };

    [Theory]
    [MemberData(nameof(Rows))]
    public void Effect_OnASimpleSpan_IsThePrintedOne(string loading, string quantity, double spanInFeet, double printed)
    {
        Loading load = loading switch
        {
            "H20 lane" => PublishedLoadings.LaneOf("H20 truck or lane"),
            "HL-93 lane" => PublishedLoadings.LaneOf("HL-93"),
            _ => PublishedLoadings.Shipped(loading),
        };

        double found = quantity == "end shear [kip]" ? PublishedLoadings.EndReaction(spanInFeet, load).Kips : PublishedLoadings.MidspanMoment(spanInFeet, load);

        Assert.Equal(printed, found, LastDigit);
    }

    [Fact]
    public void EndReaction_UnderHl93_IsOfTheTruckWithTheLane()
    {
        LiveEffect worst = PublishedLoadings.EndReaction(100, PublishedLoadings.Shipped("HL-93")).Worst;

        Assert.Equal("HL-93 truck", Assert.IsType<LivePart.Axles>(worst.Parts[0]).Vehicle.Name);
        Assert.Equal(0.64 * 100 / 2, Assert.IsType<LivePart.OfLane>(worst.Parts[1]).Force / Kip, 1e-9);
        Assert.Equal(2, worst.Parts.Count);
    }

    // The tandem gives more than the truck up to about 26 ft: 50 - 25 x 4/20 = 45 kip at 20 ft, the truck 64 - 32 x 14/20 = 41.6.
    [Fact]
    public void EndReaction_UnderHl93OnAShortSpan_IsOfTheTandemWithTheLane()
    {
        (double kips, LiveEffect worst) = PublishedLoadings.EndReaction(20, PublishedLoadings.Shipped("HL-93"));

        Assert.Equal("HL-93 tandem", Assert.IsType<LivePart.Axles>(worst.Parts[0]).Vehicle.Name);
        Assert.Equal(45 + (0.64 * 10), kips, 1e-9);
    }
}
