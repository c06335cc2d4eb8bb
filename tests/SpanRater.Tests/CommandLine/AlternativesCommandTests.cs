using System.Text.Json;
using SpanRater.Files;

namespace SpanRater.Tests.CommandLine;

/// <summary>What <c>post</c> says would help, and the tons that <c>rate</c> gives.</summary>
public sealed class AlternativesCommandTests : IDisposable
{
    private readonly BridgeOnDisk bridge = new();

    public void Dispose() => bridge.Dispose();

    // By hand: the hip vertical L1U1 takes 30.75 kip of the whole Type 3; share 0.625, on the middle 0.5; DC 5.12, DW 2.56 kip.
    [Theory]
    [InlineData("overlayOff", (29.86 - 5.12) / (30.75 * 0.625 * 1.30))]
    [InlineData("crawlSpeed", (29.86 - 7.68) / (30.75 * 0.625))]
    [InlineData("heldToMiddle", (29.86 - 7.68) / (30.75 * 0.5 * 1.30))]
    [InlineData("allTogether", (29.86 - 5.12) / (30.75 * 0.5))]
    public void Post_HollisForkWithAChange_RatesTheHipVerticalAgain(string change, double factor)
    {
        using BridgeOnDisk truss = BridgeOnDisk.TrussOfSample("hollis-fork");
        using JsonDocument json = Json(truss.Folder);
        JsonElement alternative = json.RootElement.GetProperty("alternatives").EnumerateArray().Single(a => a.GetProperty("change").GetString() == change);

        JsonElement row = alternative.GetProperty("postings").EnumerateArray().Single(p => p.GetProperty("vehicle").GetString() == "Type 3");
        Assert.Equal(factor, row.GetProperty("factor").GetDouble(), 0.001);
        Assert.Equal("L1U1", row.GetProperty("member").GetString());
    }

    [Fact]
    public void Post_HollisFork_ListsWhatHelpsInTheOrderOfItsGain()
    {
        Run run = Run.Of("post", Repository.Sample("hollis-fork"));

        string[] lines = [.. run.Output.Split('\n').SkipWhile(l => l != "What would help, most first").Skip(4).Take(6)];
        Assert.Equal(["as it is", "crawl speed", "centred", "overlay off", "as built", "all of them together"], lines.Select(l => l.Split("  ")[0]));
        Assert.Contains("overlay off: the wearing surface taken off: 2.0 in of asphalt.", run.Output, StringComparison.Ordinal);
        Assert.Contains("one lane: no rating here rests on more than one loaded lane", run.Output, StringComparison.Ordinal);
        using JsonDocument json = Json(Repository.Sample("hollis-fork"));
        double[] gains = [.. json.RootElement.GetProperty("alternatives").EnumerateArray().Select(a => a.GetProperty("gain").GetDouble())];
        Assert.Equal([.. gains[..4].OrderDescending(), gains[4]], gains);
        Assert.Equal(["oneLane"], json.RootElement.GetProperty("alternativesNotOffered").EnumerateArray().Select(a => a.GetProperty("change").GetString()));
    }

    [Theory]
    [InlineData("text")]
    [InlineData("markdown")]
    [InlineData("csv")]
    public void Post_EveryPage_SaysThatNoChangeIsInForce(string format) =>
        Assert.Contains(AlternativeWording.NotInForce, Run.Of("post", bridge.Folder, "--format", format).Output, StringComparison.Ordinal);

    [Fact]
    public void Post_WithAGivenShare_OffersNoOtherPlaceOnTheRoadway()
    {
        bridge.Replace("bridge.toml", "roadway = \"12 ft\"", "truss_share = 0.75\ntruss_share_reason = \"test\"");

        Assert.Contains("one lane, centred: truss_share is given in bridge.toml", Run.Of("post", bridge.Folder).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Post_WhereEveryTypeIsWithheld_DoesNotClaimAGain()
    {
        using JsonDocument json = Json(Repository.Sample("wrenfield-ferry"));

        Assert.All(json.RootElement.GetProperty("alternatives").EnumerateArray(), a => Assert.Equal(JsonValueKind.Null, a.GetProperty("gain").ValueKind));
        Assert.Contains("With it no type has a factor either", Run.Of("post", Repository.Sample("wrenfield-ferry")).Output, StringComparison.Ordinal);
    }

    // 22.19 US tons, never rounded up: 0.8877 × 25.
    [Fact]
    public void Rate_HollisFork_GivesTheRatingInTonsCut()
    {
        using BridgeOnDisk truss = BridgeOnDisk.TrussOfSample("hollis-fork");
        string line = Run.Of("rate", truss.Folder).Output.Split('\n').First(l => l.StartsWith("Type 3 ", StringComparison.Ordinal));
        Assert.EndsWith(" 22.1", line.TrimEnd(), StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(Run.Of("rate", truss.Folder, "--format", "json").Output);
        JsonElement row = json.RootElement.GetProperty("ratings").EnumerateArray().First(r => r.GetProperty("vehicle").GetString() == "Type 3");
        Assert.Equal(25 * row.GetProperty("factor").GetDouble(), row.GetProperty("equivalentUsTons").GetDouble(), 1e-6);
    }

    private static JsonDocument Json(string folder) => JsonDocument.Parse(Run.Of("post", folder, "--format", "json").Output);
}
