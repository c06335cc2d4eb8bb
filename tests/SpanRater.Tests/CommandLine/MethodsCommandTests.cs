using System.Text.Json;
using SpanRater.Files;

namespace SpanRater.Tests.CommandLine;

/// <summary>What <c>methods</c> says.</summary>
public sealed class MethodsCommandTests : IDisposable
{
    private readonly BridgeOnDisk bridge = new();

    public void Dispose() => bridge.Dispose();

    // By hand: hip vertical of Hollis Fork under Type 3, 30.75 kip × 0.625, DC 5.12 and DW 2.56 kip, area 1.53125 in2.
    // LRFR legal, presence 1.2: (0.95 × 0.85 × 26 A − 1.25 DC − 1.5 DW) / (1.45 × 1.2 × 19.22 × 1.33), condition 0.95 times
    // system 0.85 held at 0.85; LFR operating (26 A − 1.3 × 7.68) / (1.3 × 19.22 × 1.30); ASR operating (0.75 × 26 A − 7.68) / (19.22 × 1.30).
    [Fact]
    public void Methods_HollisFork_StandSideBySide()
    {
        using BridgeOnDisk truss = BridgeOnDisk.TrussOfSample("hollis-fork");
        Run run = Run.Of("methods", truss.Folder);

        Assert.Equal((0, ""), (run.Status, run.Error));
        string line = run.Output.Split('\n').First(l => l.StartsWith("Type 3 ", StringComparison.Ordinal));
        Assert.Equal(
            ["Type 3", "legal / operating", "0.492, L1U1 tension", "0.918, L1U1 tension", "0.887, L1U1 tension"],
            line.Split("  ", StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries));
        using JsonDocument json = Json(truss.Folder);
        double live = 30.75 * 0.625, yield = 26 * 2 * 0.875 * 0.875;
        Assert.Equal(((0.95 * 0.85 * yield) - (1.25 * 5.12) - (1.5 * 2.56)) / (1.45 * 1.2 * live * 1.33), Factor(json, "Type 3", "LRFR", "legal"), 0.0005);
        Assert.Equal((yield - (1.3 * 7.68)) / (1.3 * live * 1.3), Factor(json, "Type 3", "LFR", "operating"), 0.0005);
        Assert.Equal(((0.75 * yield) - 7.68) / (live * 1.3), Factor(json, "Type 3", "ASR", "operating"), 0.0005);
    }

    [Fact]
    public void Methods_WithoutAMethodOrAllowableForces_RatesByTheOthersAndSaysWhatIsBlank()
    {
        bridge.Replace("bridge.toml", "method = \"LRFR\"\n", "");

        Run run = Run.Of("methods", bridge.Folder);

        Assert.Equal((0, ""), (run.Status, run.Error));
        Assert.Contains("ASR: column \"operating tension\" of members.csv is blank for L0L1, L1L2, L1U1", run.Output, StringComparison.Ordinal);
        Assert.Contains("never mix methods in one posting", run.Output, StringComparison.Ordinal);
        using JsonDocument json = Json(bridge.Folder);
        Assert.Equal(["LRFR", "LFR", "ASR"], json.RootElement.GetProperty("methods").EnumerateArray().Select(m => m.GetProperty("method").GetString()));
        JsonElement[] results = [.. json.RootElement.GetProperty("results").EnumerateArray()];
        Assert.Equal(5, results.Length);
        Assert.All(results, r => Assert.Equal(r.GetProperty("method").GetString() == "ASR" ? "notRated" : "rated", r.GetProperty("status").GetString()));
    }

    [Fact]
    public void Methods_WithoutAnyCapacity_GiveNoAnswer()
    {
        bridge.Write("members.csv", "member,from,to\nL0L1,L0,L1\nL1L2,L1,L2\nL0U1,L0,U1\nU1L2,U1,L2\nL1U1,L1,U1\n");

        Run run = Run.Of("methods", bridge.Folder);

        Assert.Equal(3, run.Status);
        Assert.Contains("not rated", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Methods_WithoutDeadLoad_AreRefused()
    {
        bridge.Write("loads.csv", "case,joint,up [kip]\nsnow,L1,-1\n");

        Run run = Run.Of("methods", bridge.Folder);

        Assert.Equal((1, ""), (run.Status, run.Output));
        Assert.Contains("has no case DC", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("text")]
    [InlineData("markdown")]
    [InlineData("csv")]
    [InlineData("json")]
    public void Methods_EveryFormat_CarriesTheCautions(string format)
    {
        string output = Run.Of("methods", bridge.Folder, "--format", format).Output;

        Assert.Contains(Words.Caution, output, StringComparison.Ordinal);
        Assert.Contains(Words.TrussOnly, output, StringComparison.Ordinal);
        Assert.Contains(MethodsPage.NeverMixed, output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("text")]
    [InlineData("markdown")]
    [InlineData("csv")]
    [InlineData("json")]
    public void Methods_ABridgeOfItsOwnFactors_SaysThatTheyHaveNothingToDoWithThem(string format)
    {
        Assert.DoesNotContain(MethodsPage.NotItsOwnBasis, Run.Of("methods", bridge.Folder, "--format", format).Output, StringComparison.Ordinal);

        Run run = Run.Of("methods", Path.Combine(Repository.Sample("tansy-weir"), "variants", "partial-factors"), "--format", format);

        Assert.Contains(MethodsPage.NotItsOwnBasis, run.Output, StringComparison.Ordinal);
    }

    private static JsonDocument Json(string folder) => JsonDocument.Parse(Run.Of("methods", folder, "--format", "json").Output);

    private static double Factor(JsonDocument json, string vehicle, string method, string level) =>
        json.RootElement.GetProperty("results").EnumerateArray()
            .Single(r => r.GetProperty("vehicle").GetString() == vehicle && r.GetProperty("method").GetString() == method && r.GetProperty("level").GetString() == level)
            .GetProperty("factor").GetDouble();
}
