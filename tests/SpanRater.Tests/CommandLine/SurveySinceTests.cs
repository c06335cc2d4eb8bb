using System.Text.Json;

namespace SpanRater.Tests.CommandLine;

/// <summary>What changed since an earlier survey, and why.</summary>
public sealed class SurveySinceTests
{
    [Fact]
    public void Since_AnEarlierSurvey_TellsWhatChangedByWhichFileAndWhichPart()
    {
        using CountyOnDisk county = new CountyOnDisk().Add("same").Add("weaker", capacity: "400").Add("gone").Add("renamed", capacity: "50");
        Assert.Equal(0, county.Survey("--out", county.At("old.json")).Status);
        Directory.Delete(Path.Combine(county.Folder, "gone"), recursive: true);
        Directory.Move(Path.Combine(county.Folder, "renamed"), Path.Combine(county.Folder, "with-a-new-name"));
        county.Add("new").Replace("weaker", "members.csv", "L0L1,L0,L1,bottom chord,400,", "L0L1,L0,L1,bottom chord,20,");
        using var before = JsonDocument.Parse(File.ReadAllText(county.At("old.json")));
        using var after = JsonDocument.Parse(county.Survey("--since", county.At("old.json"), "--format", "json").Output);
        JsonElement changes = after.RootElement.GetProperty("changes");
        var bridges = changes.GetProperty("bridges").EnumerateArray().ToDictionary(b => b.GetProperty("folder").GetString()!);
        Assert.Equal(["gone", "new", "weaker", "with-a-new-name"], bridges.Keys.Order(StringComparer.Ordinal));
        Assert.Equal(1, changes.GetProperty("same").GetInt32());
        Assert.Equal("gone", bridges["gone"].GetProperty("what").GetString());
        Assert.Equal("new", bridges["new"].GetProperty("what").GetString());
        Assert.Equal("renamed", bridges["with-a-new-name"].GetProperty("folderBefore").GetString());
        Assert.Empty(bridges["with-a-new-name"].GetProperty("factors").EnumerateArray());
        JsonElement weaker = bridges["weaker"];
        Assert.Equal(["members.csv changed"], weaker.GetProperty("files").EnumerateArray().Select(f => f.GetString()));
        Assert.Equal(("ratedInPart", "postingNeeded"), (weaker.GetProperty("standingBefore").GetString(), weaker.GetProperty("standing").GetString()));
        JsonElement governing = weaker.GetProperty("factors")[0];
        Assert.Equal(Governing(before, "weaker").GetProperty("factor").GetDouble(), governing.GetProperty("before").GetProperty("factor").GetDouble());
        Assert.Equal(Governing(after, "weaker").GetProperty("factor").GetDouble(), governing.GetProperty("after").GetProperty("factor").GetDouble());
        Assert.Equal("L0L1", governing.GetProperty("after").GetProperty("member").GetString());
        Assert.NotEqual("L0L1", governing.GetProperty("before").GetProperty("member").GetString());
        Assert.True(weaker.GetProperty("postingDiffers").GetBoolean());
        Assert.Equal(JsonValueKind.Null, weaker.GetProperty("postingBefore").GetProperty("postedUsTons").ValueKind);
        Assert.Equal(Bridge(after, "weaker").GetProperty("posting").GetRawText().Replace(" ", "", StringComparison.Ordinal), weaker.GetProperty("posting").GetRawText().Replace(" ", "", StringComparison.Ordinal));
        string text = county.Survey("--since", county.At("old.json")).Output;
        Assert.Contains("The limit of legal types differs on 1 bridge: a sign that stands there would have to be replaced.", text, StringComparison.Ordinal);
        Assert.Matches("; under 3 US tons: (no|not known) +(at most )?[0-9]+ US tons by Type 3; under 3 US tons: ", text);
        Assert.Contains("Since the earlier survey: changed 2, new 1, gone 1, the same 1.", text, StringComparison.Ordinal);
        Assert.Contains("moved from renamed", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Since_TheSameSurvey_TellsThatNothingChanged()
    {
        using CountyOnDisk county = new CountyOnDisk().Add("a").Add("broken").Replace("broken", "members.csv", "L1U1,L1,U1", "L1U1,L1,U9");
        county.Survey("--out", county.At("out"));
        Run run = county.Survey("--since", county.At("out/survey.json"), "--out", county.At("out"));
        Assert.Contains("changed 0, new 0, gone 0, the same 2.", run.Output, StringComparison.Ordinal);
        Assert.Contains("what,vehicle,factor before", File.ReadAllText(county.At("out/changes.csv")), StringComparison.Ordinal);
    }

    [Fact]
    public void Since_OfAnotherVersionAndOtherVehicles_SaysSo()
    {
        using CountyOnDisk county = new CountyOnDisk().Add("a");
        county.Survey("--out", county.At("old.json"));
        string text = File.ReadAllText(county.At("old.json"));
        string version = JsonDocument.Parse(text).RootElement.GetProperty("program").GetString()!;
        File.WriteAllText(county.At("old.json"), text.Replace($"\"program\": \"{version}\"", "\"program\": \"0.0.9\"", StringComparison.Ordinal));
        Run run = county.Survey("--since", county.At("old.json"), "--vehicle", "SU7");
        Assert.Contains($"The program changed from version 0.0.9 to {version}", run.Output, StringComparison.Ordinal);
        Assert.Contains("Other vehicles were asked for then.", run.Output, StringComparison.Ordinal);
        Assert.Contains($"program 0.0.9 then, {version} now; other vehicles asked for", run.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{ \"format\": 1,\n  \"kind\": ", "old.json:2:")]
    [InlineData("{ \"format\": 1, \"bridge\": \"x\" }", "is JSON, but no survey")]
    [InlineData("[]", "is JSON, but no survey")]
    [InlineData("{ \"format\": 7, \"kind\": \"survey\" }", "has JSON of format 7")]
    [InlineData("{ \"format\": 1, \"kind\": \"survey\", \"program\": \"1\", \"asked\": {}, \"bridges\": [{}] }", "is not as a survey writes it")]
    public void Since_AFileThatIsNoSurvey_IsRefusedWithTheMend(string text, string said)
    {
        using CountyOnDisk county = new CountyOnDisk().Add("a");
        File.WriteAllText(county.At("old.json"), text);
        Run run = county.Survey("--since", county.At("old.json"));
        Assert.Equal(1, run.Status);
        Assert.Contains(said, run.Error, StringComparison.Ordinal);
        Assert.Equal("", run.Output);
        Assert.Contains("it is not there", county.Survey("--since", county.At("none.json")).Error, StringComparison.Ordinal);
    }

    private static JsonElement Governing(JsonDocument survey, string folder) => Bridge(survey, folder).GetProperty("governing");

    private static JsonElement Bridge(JsonDocument survey, string folder) => survey.RootElement.GetProperty("bridges").EnumerateArray().First(b => b.GetProperty("folder").GetString() == folder);
}
