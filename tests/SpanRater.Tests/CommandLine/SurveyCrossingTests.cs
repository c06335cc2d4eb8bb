using System.Text.Json;

namespace SpanRater.Tests.CommandLine;

/// <summary>What <c>survey --crosses</c> answers, and that the worklist stays as it is.</summary>
public sealed class SurveyCrossingTests
{
    [Theory]
    [InlineData("400", "not known", "no floor given; no connection given")]
    [InlineData("30", "no", "")]
    public void Crosses_OfATrussAlone_IsNeverYes(string capacity, string answer, string reason)
    {
        using CountyOnDisk county = new CountyOnDisk().Add("one", capacity: capacity);
        using var json = JsonDocument.Parse(county.Survey("--crosses", "type 3", "--format", "json").Output);
        JsonElement crossing = Assert.Single(json.RootElement.GetProperty("crossings").EnumerateArray());
        Assert.Equal(answer == "no" ? "no" : "notKnown", crossing.GetProperty("mayCross").GetString());
        Assert.Equal(reason, crossing.GetProperty("reason").GetString());
        Assert.Contains($"{answer} ", county.Survey("--crosses", "Type 3").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Crosses_AVehicleThatTheBridgeDoesNotAskFor_IsRatedForItBesideItsOwn()
    {
        using CountyOnDisk county = new CountyOnDisk().Add("one");
        using var json = JsonDocument.Parse(county.Survey("--crosses", "EV3", "--format", "json").Output);
        Assert.Equal(["Type 3", "EV3"], json.RootElement.GetProperty("bridges")[0].GetProperty("vehicles").EnumerateArray().Select(v => v.GetProperty("vehicle").GetString()));
        Assert.Equal("EV3", json.RootElement.GetProperty("crossings")[0].GetProperty("vehicle").GetString());
    }

    [Theory]
    [InlineData("EV2")]
    [InlineData("SU7")]
    public void Crosses_AVehicleThatTheBridgeDoesNotAskFor_LeavesTheWorklistAsItIs(string vehicle)
    {
        // EV3 stands beside the legal types that the bridge asks for, and must not stand beside SU7.
        using CountyOnDisk county = new CountyOnDisk().Add("a", capacity: "60").Add("b", capacity: "48").Replace("b", "bridge.toml", "vehicles = [\"Type 3\"]", "vehicles = [\"Type 3\", \"EV3\"]")
            .Replace("b", "bridge.toml", "truss_spacing = \"14 ft\"", "truss_spacing = \"28 ft\"").Replace("b", "bridge.toml", "roadway = \"12 ft\"", "roadway = \"24 ft\"");
        Run plain = county.Survey("--format", "json", "--fail-below", "0.5"), crosses = county.Survey("--format", "json", "--fail-below", "0.5", "--crosses", vehicle);
        Assert.Equal((plain.Status, plain.Error), (crosses.Status, crosses.Error));
        using JsonDocument before = JsonDocument.Parse(plain.Output), after = JsonDocument.Parse(crosses.Output);
        Assert.Equal(before.RootElement.GetProperty("counts").GetRawText(), after.RootElement.GetProperty("counts").GetRawText());
        foreach ((JsonElement was, JsonElement now) in before.RootElement.GetProperty("bridges").EnumerateArray().Zip(after.RootElement.GetProperty("bridges").EnumerateArray()))
        {
            foreach (string field in (string[])["folder", "standing", "why", "governing", "posting", "partsNotRated", "vehiclesNotRated", "notRated"])
            {
                Assert.Equal(was.GetProperty(field).GetRawText(), now.GetProperty(field).GetRawText());
            }

            JsonElement[] vehicles = [.. now.GetProperty("vehicles").EnumerateArray()];
            Assert.Equal(was.GetProperty("vehicles").EnumerateArray().Select(v => v.GetRawText()), vehicles[..^1].Select(v => v.GetRawText()));
            Assert.True(vehicles[^1].GetProperty("onlyToCross").GetBoolean());
            Assert.Equal(vehicle, vehicles[^1].GetProperty("vehicle").GetString());
        }
    }

    [Fact]
    public void Crosses_ANoByWhatStandsBeside_SaysSoAndListsWhatIsUrgent()
    {
        Assert.Matches("beside SU7; alone 0[.][0-9]+", Run.Of("survey", Repository.Sample("garrow-landing"), "--crosses", "EV3").Output);
        Assert.Contains("Urgent:\n  - . (Wrenfield Ferry bridge): Withheld", Run.Of("survey", Repository.Sample("wrenfield-ferry"), "--crosses", "EV3").Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("HL-93", "stands for others")]
    [InlineData("Typ 3", "Did you mean \"Type 3\"?")]
    public void Crosses_ALoadThatNeverDrivesOrIsNotThere_IsRefused(string name, string said)
    {
        using CountyOnDisk county = new CountyOnDisk().Add("one");
        Run run = county.Survey("--crosses", name);
        Assert.Equal(1, run.Status);
        Assert.Contains(said, run.Error, StringComparison.Ordinal);
        Assert.Equal("", run.Output);
    }
}
