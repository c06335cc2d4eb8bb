using System.Text.Json;
using SpanRater.Files;

namespace SpanRater.Tests.CommandLine;

/// <summary>What <c>survey</c> says: order, broken bridges, what was not rated, where a vehicle may cross. Factors are held against what <c>rate</c> says of each bridge.</summary>
public sealed class SurveyCommandTests
{
    [Fact]
    public void Survey_OfSamples_HoldsTheGoverningRowOfRateForEach()
    {
        using var survey = JsonDocument.Parse(Run.Of("survey", Path.Combine(Repository.Root, "samples"), "--format", "json").Output);
        var bridges = survey.RootElement.GetProperty("bridges").EnumerateArray().ToDictionary(b => b.GetProperty("folder").GetString()!);
        Assert.Equal(
            ["garrow-landing", "hollis-fork", "mossback-lane", "mossback-lane/variants/a-rods-gone", "mossback-lane/variants/b-king-post", "mossback-lane/variants/c-floorbeam-on-chord", "tansy-weir", "tansy-weir/variants/partial-factors", "wrenfield-ferry"],
            bridges.Keys.Order(StringComparer.Ordinal));
        foreach ((string folder, JsonElement bridge) in bridges.Where(b => b.Value.GetProperty("standing").GetString() != "notRated"))
        {
            using var rate = JsonDocument.Parse(Run.Of("rate", Repository.Sample(folder), "--format", "json").Output);
            JsonElement governing = rate.RootElement.GetProperty("governing"), surveyed = bridge.GetProperty("governing");
            Assert.Equal(governing.ValueKind, surveyed.ValueKind);
            if (governing.ValueKind == JsonValueKind.Object)
            {
                Assert.Equal(governing.GetProperty("factor").GetDouble(), surveyed.GetProperty("factor").GetDouble());
                Assert.Equal(governing.GetProperty("vehicle").GetString(), surveyed.GetProperty("vehicle").GetString());
                Assert.StartsWith(governing.GetProperty("member").GetString()!, surveyed.GetProperty("member").GetString(), StringComparison.Ordinal);
            }

            Assert.Equal(rate.RootElement.GetProperty("scope").GetString(), bridge.GetProperty("scope").GetString());
        }

        Assert.Equal("urgent", bridges["wrenfield-ferry"].GetProperty("standing").GetString());
        Assert.StartsWith("Withheld: ", bridges["wrenfield-ferry"].GetProperty("why").GetString(), StringComparison.Ordinal);
        Assert.Equal("notRated", bridges["mossback-lane/variants/a-rods-gone"].GetProperty("standing").GetString());
    }

    [Fact]
    public void Survey_LowestFactorOfEachVehicle_IsThatOfTheRowsOfRate()
    {
        using var survey = JsonDocument.Parse(Run.Of("survey", Repository.Sample("garrow-landing"), "--format", "json").Output);
        using var rate = JsonDocument.Parse(Run.Of("rate", Repository.Sample("garrow-landing"), "--format", "json").Output);
        JsonElement[] vehicles = [.. survey.RootElement.GetProperty("bridges")[0].GetProperty("vehicles").EnumerateArray()];
        Assert.NotEmpty(vehicles);
        Assert.All(vehicles, v => Assert.Equal(
            rate.RootElement.GetProperty("ratings").EnumerateArray().Where(r => r.GetProperty("vehicle").GetString() == v.GetProperty("vehicle").GetString() && r.GetProperty("factor").ValueKind == JsonValueKind.Number).Min(r => r.GetProperty("factor").GetDouble()),
            v.GetProperty("factor").GetDouble(),
            1e-9));
    }

    [Fact]
    public void Survey_OfManyStandings_PutsWhatIsUrgentFirstAndTheLowestFactorBeforeOthers()
    {
        using CountyOnDisk county = new CountyOnDisk().Add("a-strong", capacity: "400").Add("b-weak", capacity: "30").Add("c-weaker", capacity: "28").Add("d-hopeless", capacity: "6").Add("e-dead", capacity: "1");
        Run run = county.Survey("--format", "csv");
        string[] lines = [.. run.Output.Split('\n').Where(l => l.Length > 0 && l[0] != '#').Skip(1)];
        Assert.Equal(["e-dead", "d-hopeless", "c-weaker", "b-weak", "a-strong"], lines.Select(l => l.Split(',')[2]));
        Assert.Equal(["urgent", "urgent", "posting needed", "posting needed", "rated in part"], lines.Select(l => l.Split(',')[0]));

        // e-dead and d-hopeless are under 3 US tons.
        Assert.Equal(4, run.Status);
        Assert.Equal("survey: 2 bridges are urgent, under 3 US tons, or the dead load alone exceeds a capacity: e-dead, d-hopeless.\n", run.Error);
        Assert.Contains("The dead load alone exceeds the capacity", lines[0], StringComparison.Ordinal);
        Assert.Contains("Under 3 US tons", lines[1], StringComparison.Ordinal);
    }

    [Fact]
    public void Survey_WhereARatingIsWithheld_EndsAsRateDoesAndSaysWhy()
    {
        Run run = Run.Of("survey", Repository.Sample("wrenfield-ferry"));
        Assert.Equal(Run.Of("rate", Repository.Sample("wrenfield-ferry")).Status, run.Status);
        Assert.Equal(3, run.Status);
        Assert.Equal("survey: 1 bridge is urgent, a rating is withheld: Wrenfield Ferry bridge.\n", run.Error);
    }

    [Fact]
    public void Survey_WithBrokenBridges_ListsEachWithItsFindingsAndRatesTheRest()
    {
        using CountyOnDisk county = new CountyOnDisk().Add("good").Add("typo").Add("lost").Add("bytes").Replace("typo", "members.csv", "L1U1,L1,U1", "L1U1,L1,U9");
        File.Delete(county.PathOf("lost", "members.csv"));
        File.WriteAllBytes(county.PathOf("bytes", "bridge.toml"), [.. "name = \"Br"u8, 0xE9, .. "\"\n"u8]);
        Run run = county.Survey();
        Assert.Equal(0, run.Status);
        Assert.Contains("No factor below 1, but rated in part only: 1; not rated: 3.", run.Output, StringComparison.Ordinal);
        Assert.Contains("- typo: the input is refused: members.csv:6:9: ", run.Output, StringComparison.Ordinal);
        Assert.Contains("joint \"U9\"", run.Output, StringComparison.Ordinal);
        Assert.Contains("- lost: the input is refused: members.csv: is missing from the bridge folder.", run.Output, StringComparison.Ordinal);
        Assert.Contains("- bytes: the input is refused: bridge.toml:1:11: is not UTF-8", run.Output, StringComparison.Ordinal);
        Assert.Equal("survey: 3 bridges are not rated: bytes, lost, typo.\n", run.Error);
        Assert.DoesNotContain(Path.GetTempPath(), run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Survey_OfABridgeWithoutMethodOrDeadLoad_SaysBoth()
    {
        using CountyOnDisk county = new CountyOnDisk().Add("bare").Replace("bare", "bridge.toml", "method = \"LRFR\"", "");
        File.Delete(county.PathOf("bare", "loads.csv"));
        Run run = county.Survey();
        Assert.Equal(3, run.Status);
        Assert.Contains("the rating method is missing", run.Output, StringComparison.Ordinal);
        Assert.Contains("has no case DC", run.Output, StringComparison.Ordinal);
        Assert.Contains("No bridge is rated.", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Survey_OfABridgeRatedInPart_SaysSoBesideItsFactor()
    {
        using CountyOnDisk county = new CountyOnDisk().Add("part", capacity: "400").Replace("part", "members.csv", "L0U1,L0,U1,end post,,400", "L0U1,L0,U1,end post,,");
        Run run = county.Survey();
        Assert.Equal(0, run.Status);
        Assert.Contains("rated in part", run.Output, StringComparison.Ordinal);
        Assert.Contains("1 part, no floor given, no connection given", run.Output, StringComparison.Ordinal);
        Assert.Contains("part (Bridge of part): L0U1 in compression: no capacity", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("of what a rating here can hold", run.Output, StringComparison.Ordinal);
        Assert.Contains("not a posting order", run.Output, StringComparison.Ordinal);
        Assert.Contains("at most", county.Survey("--matrix").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Survey_AskedForVehicles_RatesEveryBridgeForThose()
    {
        using CountyOnDisk county = new CountyOnDisk().Add("a").Add("b");
        Run run = county.Survey("--vehicle", "SU4", "--vehicle", "ev2", "--matrix", "--format", "csv");
        string header = run.Output.Split('\n').First(l => l.Length > 0 && l[0] != '#');
        Assert.Equal("bridge,folder,asks for,SU4,EV2", header);
    }

    [Fact]
    public void Survey_OfBridgesThatAskForNoLegalType_SaysThatTheLineOf3TonsIsNotKnown()
    {
        Assert.Contains(
            "\n\n2 bridges ask for no legal type, so that it is not known whether they are under 3 US tons: run survey with --vehicle \"Type 3\", and again --vehicle for each further legal type.\n\n",
            Run.Of("survey", Repository.Sample("mossback-lane")).Output,
            StringComparison.Ordinal);
        Assert.DoesNotContain("no legal type", Run.Of("survey", Repository.Sample("mossback-lane"), "--vehicle", "Type 3").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Survey_OfBridgesWithinAStanding_RanksByWhatDrives()
    {
        SurveyedVehicle On(string vehicleClass, double factor) => new(vehicleClass, vehicleClass, PassageVerdict.No, false, true, new SurveyedRow(null, "", "L0L1", "tension", null, "operating", factor), [], [], null, false);
        SurveyedBridge Of(string folder, params SurveyedVehicle[] vehicles) =>
            new() { Folder = folder, Standing = SurveyStanding.BelowOne, Why = "", Vehicles = vehicles, Governing = vehicles.MinBy(v => v.Lowest!.Factor)!.Lowest };
        var survey = new Survey("1", new SurveyAsked(null, null, []), [Of("a", On("design", 0.2)), Of("b", On("design", 0.3), On("farm", 0.9)), Of("c", On("farm", 0.8))], []);
        Assert.Equal(["c", "b", "a"], survey.Rated.Select(b => b.Folder));
    }

    [Fact]
    public void Survey_OfNothing_IsRefused()
    {
        using var county = new CountyOnDisk();
        Run empty = county.Survey(), missing = Run.Of("survey", county.At("nowhere"));
        Assert.Equal((1, 1), (empty.Status, missing.Status));
        Assert.Contains("no bridge is in it or below it", empty.Error, StringComparison.Ordinal);
        Assert.Contains("is not there", missing.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Survey_OfABridgeFolderItself_WithAnotherBelow_FindsBoth()
    {
        using CountyOnDisk county = new CountyOnDisk().Add("a").Add("a/variants/b");
        using var json = JsonDocument.Parse(Run.Of("survey", Path.Combine(county.Folder, "a"), "--format", "json").Output);
        Assert.Equal([".", "variants/b"], json.RootElement.GetProperty("bridges").EnumerateArray().Select(b => b.GetProperty("folder").GetString()).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void Survey_WithLinksInACircle_EndsAndTellsThatTheyWereNotFollowed()
    {
        using CountyOnDisk county = new CountyOnDisk().Add("a");
        Directory.CreateSymbolicLink(Path.Combine(county.Folder, "a", "again"), county.Folder);
        Run run = county.Survey();
        Assert.Contains("Survey of 1 bridge\n", run.Output, StringComparison.Ordinal);
        Assert.Contains("- a/again: is a link, and links are not followed", run.Output, StringComparison.Ordinal);
        Assert.Contains("\n\n1 link not followed: ", run.Output, StringComparison.Ordinal);
        Assert.Equal((0, "survey: 1 link not followed: a/again.\n"), (run.Status, run.Error));
    }

    [Fact]
    public void Survey_WithALinkThatLeadsNowhere_TellsIt()
    {
        using CountyOnDisk county = new CountyOnDisk().Add("a");
        Directory.CreateSymbolicLink(Path.Combine(county.Folder, "mill-creek"), county.At("unplugged"));
        Run run = county.Survey();
        Assert.Contains("- mill-creek: is a link that leads nowhere", run.Output, StringComparison.Ordinal);
        Assert.Equal("survey: 1 folder could not be searched: mill-creek.\n", run.Error);

        // A mount that is gone must not look like a county without faults.
        Assert.Equal((0, 3), (run.Status, county.Survey("--fail-below", "0.01").Status));
    }

    [Fact]
    public void Status_WhereAFolderCouldNotBeSearched_IsNotDoneWithALimit()
    {
        var bridge = new SurveyedBridge { Folder = ".", Name = "A bridge", Standing = SurveyStanding.NoFactorBelowOne, Why = "" };
        var survey = new Survey("1", new SurveyAsked(null, null, []), [bridge], [new PassedOver("locked", IsLink: false, "could not be searched")]);
        using var error = new StringWriter();
        Assert.Equal(3, new Cli.Commands.SurveyLimit(error, 1.0, "county").Status(survey, 0));
        Assert.Equal(0, new Cli.Commands.SurveyLimit(error, null, "county").Status(survey, 0));
        Assert.Equal("survey: 1 folder could not be searched: locked.\nsurvey: 1 folder could not be searched: locked.\n", error.ToString().ReplaceLineEndings("\n"));
        Assert.Contains("1 folder not searched: bridges there are missing here.", SurveyPage.First(survey, null));
    }

    [Fact]
    public void Survey_WithAPipeInPlaceOfATable_RefusesThatBridgeByNameAndRatesTheRest()
    {
        Assert.SkipWhen(OperatingSystem.IsWindows(), "A pipe has no place among files there.");
        using CountyOnDisk county = new CountyOnDisk().Add("good").Add("piped").Add("more");
        File.Delete(county.PathOf("piped", "joints.csv"));
        using (var make = System.Diagnostics.Process.Start("mkfifo", [county.PathOf("piped", "joints.csv")]))
        {
            make.WaitForExit();
        }

        Run run = county.Survey();
        Assert.Equal(0, run.Status);
        Assert.Contains("- piped: the input is refused: joints.csv: is a pipe or a device, not a file: save what it holds as a file.", run.Output, StringComparison.Ordinal);
        Assert.Contains("rated in part only: 2; not rated: 1.", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Survey_OfHostileNames_StaysOnePlainPage()
    {
        using CountyOnDisk county = new CountyOnDisk().Add("<img src=x onerror=alert(1)>", name: "</title><script>alert('x')</script> & co").Add("bell\u001b[2J\nline", name: "Bell");
        string file = county.At("county.html");
        Assert.Equal(0, county.Survey("--out", file).Status);
        string html = File.ReadAllText(file);
        Assert.DoesNotContain("<script", html, StringComparison.OrdinalIgnoreCase);
        Assert.DoesNotContain("<img", html, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("&lt;script&gt;", html, StringComparison.Ordinal);
        Assert.Contains("default-src &#x27;none&#x27;", html, StringComparison.Ordinal);
        Assert.Contains("not a posting order", html, StringComparison.Ordinal);
        Assert.Contains("prefers-color-scheme: dark", html, StringComparison.Ordinal);
        Assert.Contains("name=\"viewport\"", html, StringComparison.Ordinal);
        Reports.ReportHtml.Parsed(html);
        string text = county.Survey().Output;
        Assert.DoesNotContain('\u001b', text);
        Assert.Contains("bell%1B[2J%0Aline", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Survey_ByOneWorkerAndByTwo_GivesTheSameBytes()
    {
        using CountyOnDisk county = new CountyOnDisk().Add("a", capacity: "30").Add("b", capacity: "35").Add("c", capacity: "400").Add("d");
        foreach (string format in (string[])["text", "csv", "json", "markdown", "html"])
        {
            Run one = county.Survey("--workers", "1", "--format", format), two = county.Survey("--workers", "2", "--format", format);
            Assert.Equal(0, one.Status);
            Assert.Equal(one.Output, two.Output);
            Assert.DoesNotContain('\r', one.Output);
        }
    }

    [Theory]
    [InlineData("--workers", "0", "write a whole number from 1 to 256")]
    [InlineData("--workers", "two", "write a whole number from 1 to 256")]
    [InlineData("--out", "county.pdf", "its ending names no format that is written")]
    [InlineData("--vehicle", "EV33", "Did you mean \"EV3\"?")]
    public void Survey_WithAnOptionThatIsWrong_IsRefused(string option, string value, string said)
    {
        using CountyOnDisk county = new CountyOnDisk().Add("one");
        Run run = county.Survey(option, value);
        Assert.Equal(1, run.Status);
        Assert.Contains(said, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Survey_Interrupted_EndsWith130()
    {
        using CountyOnDisk county = new CountyOnDisk().Add("one");
        using var output = new MemoryStream();
        using var error = new StringWriter();
        int status = Cli.CommandLineProgram.Run(["survey", county.Folder], new Cli.Surroundings(output, error, null, false) { Stop = new CancellationToken(canceled: true) });
        Assert.Equal(130, status);
        Assert.Equal(0, output.Length);
    }

    [Fact]
    public void Survey_WithATerminalForMessages_ShowsProgressThereAlone()
    {
        using CountyOnDisk county = new CountyOnDisk().Add("a").Add("b");
        using var output = new MemoryStream();
        using var error = new StringWriter();
        Cli.CommandLineProgram.Run(["survey", county.Folder], new Cli.Surroundings(output, error, null, false) { ErrorIsTerminal = true });
        Assert.Contains("2 of 2", error.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("2 of 2", System.Text.Encoding.UTF8.GetString(output.ToArray()), StringComparison.Ordinal);
        Assert.Equal("", county.Survey().Error);
    }
}
