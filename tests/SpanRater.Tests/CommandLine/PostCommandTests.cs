using System.Text.Json;
using SpanRater.Files;

namespace SpanRater.Tests.CommandLine;

/// <summary>What <c>post</c> says, and what it tells the shell.</summary>
public sealed class PostCommandTests : IDisposable
{
    private readonly BridgeOnDisk bridge = new();

    public void Dispose() => bridge.Dispose();

    // By hand: the hip vertical L1U1 takes 30.75 kip of the whole Type 3, so with a share of 0.625 and 30 % impact 24.98 kip;
    // (29.86 − 7.68) / 24.98 = 0.888, times 25 US tons 22.19, so 22.
    [Fact]
    public void Post_HollisFork_PostsTheHipVertical()
    {
        using BridgeOnDisk truss = BridgeOnDisk.TrussOfSample("hollis-fork");
        Run run = Run.Of("post", truss.Folder);

        Assert.Equal((0, ""), (run.Status, run.Error));
        Assert.Contains("One limit for all legal types asked for (by the operating rating): 22 US tons, set by Type 3 (L1U1 in tension, rating factor 0.887).", run.Output, StringComparison.Ordinal);
        Assert.Contains("Emergency vehicles that need limits of their own: EV3, EV2.", run.Output, StringComparison.Ordinal);
        Assert.Contains("Not asked for, so that no limit here covers them: SU4, SU5, SU6, SU7.", run.Output, StringComparison.Ordinal);
        Assert.Matches(@"Sample milk truck +farm +too heavy +0\.\d{3} +L1U1 +tension +operating", run.Output);
        using JsonDocument json = Json(truss.Folder);
        JsonElement row = json.RootElement.GetProperty("postings").EnumerateArray().Single(p => p.GetProperty("vehicle").GetString() == "Type 3");
        Assert.Equal((29.86 - 7.68) / (30.75 * 0.625 * 1.30) * 50 * 4.4482216, row.GetProperty("safeLoad").GetDouble(), 0.2);
        Assert.Equal(22, row.GetProperty("postedUsTons").GetInt32());
        Assert.Equal(row.GetProperty("safeLoad").GetDouble(), json.RootElement.GetProperty("smallestSafeLoad").GetDouble());
        Assert.False(json.RootElement.GetProperty("closure").GetBoolean());
        Assert.Equal(3, json.RootElement.GetProperty("limits").GetArrayLength());
    }

    // What is too heavy stands on top though no posting rule has a line for it: 0.605 is not to be read as 0.61.
    [Fact]
    public void Post_FarmVehicles_TellsFirstWhatIsTooHeavy()
    {
        Run run = Run.Of("post", Repository.Sample("mossback-lane"));

        Assert.Contains("Too heavy as entered, though no posting rule covers them: Feed truck (beam hangers at L1 in tension, rating factor 0.605)", run.Output, StringComparison.Ordinal);
        Assert.Contains("Keep them off until an engineer has reviewed the bridge.", run.Output, StringComparison.Ordinal);
        Assert.Contains("rating factor 0.60.", Run.Of("rate", Repository.Sample("mossback-lane")).Output, StringComparison.Ordinal);
        using JsonDocument json = Json(Repository.Sample("mossback-lane"));
        JsonElement[] others = [.. json.RootElement.GetProperty("withoutRule").EnumerateArray()];
        Assert.Equal(["Feed truck", "Sample tractor and hay wagon"], others.Select(o => o.GetProperty("vehicle").GetString()));
        Assert.All(others, o => Assert.Equal(("tooHeavy", "beam hangers", "legal"), (o.GetProperty("verdict").GetString(), o.GetProperty("member").GetString(), o.GetProperty("level").GetString())));
    }

    [Fact]
    public void Post_CrowdsAndAVehicleThatDoesNotFit_AreToldApart()
    {
        string output = Run.Of("post", Repository.Sample("tansy-weir")).Output;

        Assert.Contains("No factor is given for H5 maintenance truck: too wide for the roadway", output, StringComparison.Ordinal);
        Assert.Matches(@"EN crowd +crowd +carried +1\.\d{3}", output);
        Assert.Contains("Not rated, so that this says nothing about it: H5 maintenance truck.", Run.Of("rate", Repository.Sample("tansy-weir")).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Post_AtInventoryLevel_PostsLess()
    {
        Assert.Contains("(by the inventory rating): 13 US tons", Run.Of("post", Repository.Sample("hollis-fork"), "--level", "inventory").Output, StringComparison.Ordinal);
        Assert.Equal(Run.Of("post", Repository.Sample("hollis-fork")), Run.Of("post", Repository.Sample("hollis-fork"), "--level", "operating"));
    }

    [Fact]
    public void Post_WhileRatingsAreWithheld_GivesNoLoadAndNoAnswer()
    {
        Run run = Run.Of("post", Repository.Sample("wrenfield-ferry"));

        Assert.Equal(3, run.Status);
        string first = run.Output.Split("\n\n")[1];
        Assert.StartsWith("No posting load is given for Type 3, Type 3S2, Type 3-3: every rating is withheld, since U2L3 only pulls", first, StringComparison.Ordinal);
        Assert.EndsWith("No vehicle of these types can be called safe here: until they are rated, keep them off.", first, StringComparison.Ordinal);
        using JsonDocument json = Json(Repository.Sample("wrenfield-ferry"));
        Assert.All(json.RootElement.GetProperty("postings").EnumerateArray(), p => Assert.Equal(JsonValueKind.Null, p.GetProperty("safeLoad").ValueKind));
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("smallestSafeLoad").ValueKind);
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("closure").ValueKind);
        Assert.False(json.RootElement.GetProperty("complete").GetBoolean());
    }

    [Fact]
    public void Post_MemberWithoutCapacity_IsSaidFirst()
    {
        bridge.Replace("members.csv", "L0U1,L0,U1,end post,,40", "L0U1,L0,U1,end post,,");

        Run run = Run.Of("post", bridge.Folder);

        Assert.Equal(0, run.Status);
        Assert.StartsWith("Not every member that is loaded has a capacity: L0U1 in compression.", run.Output.Split("\n\n")[1], StringComparison.Ordinal);
        Assert.DoesNotContain("none needed", run.Output, StringComparison.Ordinal);
    }

    // The hanger takes a share of Type 3 that a capacity of 8 kip does not hold: under 0.3.
    [Fact]
    public void Post_UnderThreeTons_IsUrgentAndUndercutsTheLimit()
    {
        bridge.Replace("members.csv", "L1U1,L1,U1,hanger,40,", "L1U1,L1,U1,hanger,8,");

        Run run = Run.Of("post", bridge.Folder);

        Assert.Equal(4, run.Status);
        Assert.StartsWith("URGENT: close the bridge until an engineer has reviewed it. The smallest safe load of the legal types is 0.00 US tons", run.Output.Split("\n\n")[1], StringComparison.Ordinal);
        Assert.Contains("not allowed", run.Output, StringComparison.Ordinal);
        Assert.Contains("23 CFR 650.313", run.Output, StringComparison.Ordinal);
        using JsonDocument json = Json(bridge.Folder);
        Assert.True(json.RootElement.GetProperty("closure").GetBoolean());
    }

    // A closure outweighs a missing answer: here a type too wide for the roadway of 12 ft is not rated.
    [Fact]
    public void Post_ClosureBesideATypeThatIsNotRated_UndercutsTheLimit()
    {
        bridge.Write("vehicles.csv", "vehicle,class,load [kip],spacing [ft],gauge [ft],source\nWide lorry,legal,40,,11,made up\n");
        bridge.Replace("bridge.toml", "[\"Type 3\"]", "[\"Type 3\", \"Wide lorry\"]");
        Assert.Equal(3, Run.Of("post", bridge.Folder).Status);
        bridge.Replace("members.csv", "L1U1,L1,U1,hanger,40,", "L1U1,L1,U1,hanger,8,");

        Run run = Run.Of("post", bridge.Folder);

        Assert.Equal(4, run.Status);
        string[] parts = run.Output.Split("\n\n");
        Assert.StartsWith("URGENT: close the bridge", parts[1], StringComparison.Ordinal);
        Assert.StartsWith("No posting load is given for Wide lorry: too wide for the roadway", parts[2], StringComparison.Ordinal);
    }

    [Fact]
    public void Post_DeadLoadThatUsesUpACapacity_IsUrgent()
    {
        bridge.Replace("members.csv", "L1U1,L1,U1,hanger,40,", "L1U1,L1,U1,hanger,2,");

        Run run = Run.Of("post", bridge.Folder);

        Assert.Equal(4, run.Status);
        Assert.Contains("The dead load alone exceeds the capacity of L1U1 in tension.", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Post_OnlyClassesWithoutPosting_IsNoAnswer()
    {
        Run run = Run.Of("post", Repository.Sample("mossback-lane"));

        Assert.Equal(3, run.Status);
        Assert.Contains("No legal type is among the vehicles asked for", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Post_OwnLegalType_IsListedByName()
    {
        bridge.Write("vehicles.csv", "vehicle,class,load [kip],spacing [ft],gauge [ft],source\nQuarry lorry,legal,40,,6,made up\n");
        bridge.Replace("bridge.toml", "[\"Type 3\"]", "[\"Type 3\", \"Quarry lorry\"]");

        using JsonDocument json = Json(bridge.Folder);

        JsonElement own = json.RootElement.GetProperty("limits").EnumerateArray().Single(l => l.GetProperty("silhouette").ValueKind == JsonValueKind.Null);
        Assert.Equal("Quarry lorry", Assert.Single(own.GetProperty("types").EnumerateArray().ToArray()).GetString());
    }

    [Fact]
    public void Post_LevelWhereTheMethodHasOne_IsRefused()
    {
        Run run = Run.Of("post", bridge.Folder, "--level", "operating");

        Assert.Equal((1, ""), (run.Status, run.Output));
        Assert.StartsWith("--level operating: LRFR posts legal types by their legal rating", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Post_Mechanism_GivesNoAnswer()
    {
        Run run = Run.Of("post", Path.Combine(Repository.Sample("mossback-lane"), "variants", "a-rods-gone"), "--format", "json");

        Assert.Equal(3, run.Status);
        using JsonDocument json = JsonDocument.Parse(run.Output);
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("closure").ValueKind);
        Assert.Equal(0, json.RootElement.GetProperty("postings").GetArrayLength());
    }

    [Theory]
    [InlineData("text", "hollis-fork", "Truss members, deck, stringers, floorbeams, floorbeam hangers are rated. Of the connections those that connections.csv gives are rated; all others, ")]
    [InlineData("markdown", "hollis-fork", "Truss members, deck, stringers, floorbeams, floorbeam hangers are rated. Of the connections")]
    [InlineData("csv", "hollis-fork", "Truss members, deck, stringers, floorbeams, floorbeam hangers are rated. Of the connections")]
    [InlineData("json", "hollis-fork", "Truss members, deck, stringers, floorbeams, floorbeam hangers are rated. Of the connections")]
    [InlineData("text", "wrenfield-ferry", "Stringers, floorbeams, floorbeam hangers are rated. Truss members are not: their ratings are withheld. Given, and not rated for want of data or a rule: deck. Pins, gussets, ")]
    [InlineData("csv", "garrow-landing", "Truss members, stringers, floorbeams are rated. The deck is not: there is no rule here for decks but of planks and laminated timber. Of the connections")]
    [InlineData("text", "mossback-lane/variants/a-rods-gone", "Truss members only. Deck, stringers, floorbeams, hanger connections, pins, gussets and bearings are not rated here")]
    public void Post_EveryPage_CarriesTheCautions(string format, string sample, string scope)
    {
        string output = Run.Of("post", Path.Combine(Repository.Root, "samples", sample), "--format", format).Output;

        Assert.Contains(Words.Caution, output, StringComparison.Ordinal);
        Assert.Contains(scope, output, StringComparison.Ordinal);
    }

    private static JsonDocument Json(string folder) => JsonDocument.Parse(Run.Of("post", folder, "--format", "json").Output);
}
