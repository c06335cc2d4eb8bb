using System.Text.Json;
using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests.Rolling;

/// <summary>The case files that the page's script runs as well.</summary>
public sealed class CaseFileTests
{
    public static TheoryData<string> Peaks => Names("peaks.json");

    public static TheoryData<string> Postings => Names("posting.json");

    [Theory]
    [MemberData(nameof(Peaks))]
    public void Peaks_OfACaseFile_AreItsOwn(string name)
    {
        JsonElement each = Case("peaks.json", name), train = each.GetProperty("train");
        var plan = new RollingPlan(
            Numbers(each.GetProperty("stations")),
            new AxleTrain(
                Numbers(train.GetProperty("loads")),
                [.. train.GetProperty("gaps").EnumerateArray().Select(g => new AxleGap(g[0].GetDouble(), g[1].GetDouble()))],
                train.GetProperty("leaveOut").GetBoolean() ? RelievingAxles.LeftOut : RelievingAxles.Counted));
        PeakPair found = plan.PeaksOf(new InfluenceLine(Numbers(each.GetProperty("stations")), Numbers(each.GetProperty("line"))));
        AssertForce(each.GetProperty("tension"), found.Tension);
        AssertForce(each.GetProperty("compression"), found.Compression);
    }

    [Theory]
    [MemberData(nameof(Postings))]
    public void Posting_OfACaseFile_IsItsOwn(string name)
    {
        JsonElement each = Case("posting.json", name);
        double N(string property) => each.GetProperty(property).GetDouble();
        double factor = Math.Max(0, N("room")) / (N("liveFactor") * Math.Abs(N("live")) * (1 + N("impact")));
        PostingRule rule = each.GetProperty("rule").GetString() == "reduced" ? PostingRule.ReducedLegal : PostingRule.FactorTimesWeight;
        Assert.Equal(N("factor"), factor, 1e-9);
        string verdict = SafeLoad.IsEnough(factor) ? "notNeeded" : SafeLoad.IsBarred(factor, rule) ? "barred" : "posted";
        Assert.Equal(each.GetProperty("verdict").GetString(), verdict);
        Assert.Equal(each.GetProperty("tons").GetInt32(), SafeLoad.WholeTons(SafeLoad.Of(N("weight"), factor, rule)));
    }

    private static void AssertForce(JsonElement expected, Peak? found)
    {
        if (expected.ValueKind == JsonValueKind.Null)
        {
            Assert.Null(found);
            return;
        }

        Assert.Equal(expected.GetDouble(), found!.Force, 1e-9 * Math.Max(1, Math.Abs(expected.GetDouble())));
    }

    private static double[] Numbers(JsonElement list) => [.. list.EnumerateArray().Select(n => n.GetDouble())];

    private static TheoryData<string> Names(string file) => [.. Read(file).Select(c => c.GetProperty("name").GetString()!)];

    private static JsonElement Case(string file, string name) => Read(file).Single(c => c.GetProperty("name").GetString() == name);

    private static List<JsonElement> Read(string file)
    {
        using JsonDocument cases = JsonDocument.Parse(File.ReadAllText(Path.Combine(Repository.Root, "tests", "cases", file)));
        return [.. cases.RootElement.GetProperty("cases").EnumerateArray().Select(c => c.Clone())];
    }
}
