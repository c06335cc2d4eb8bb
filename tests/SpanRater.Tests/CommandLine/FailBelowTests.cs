using System.Globalization;
using System.Text.Json;

namespace SpanRater.Tests.CommandLine;

/// <summary>The exit status for scripts: 4 below the limit or where a rating is withheld, 3 where nothing is rated, and nothing hidden where a part is not.</summary>
public sealed class FailBelowTests
{
    [Theory]
    [InlineData("rate")]
    [InlineData("post")]
    public void FailBelow_TheGoverningFactor_DecidesByIt(string command)
    {
        using BridgeOnDisk disk = new BridgeOnDisk().Replace("members.csv", "L1U1,L1,U1,hanger,40,", "L1U1,L1,U1,hanger,30,");
        using var json = JsonDocument.Parse(Run.Of("rate", disk.Folder, "--format", "json").Output);
        double factor = json.RootElement.GetProperty("governing").GetProperty("factor").GetDouble();
        string Limit(double by) => (factor + by).ToString("F6", CultureInfo.InvariantCulture);
        Run plain = Run.Of(command, disk.Folder), above = Run.Of(command, disk.Folder, "--fail-below", Limit(-0.001)), below = Run.Of(command, disk.Folder, "--fail-below", Limit(0.001));
        Assert.Equal((0, 0, 4), (plain.Status, above.Status, below.Status));
        Assert.Equal(plain.Output, above.Output);
        Assert.Equal(plain.Output, below.Output);
        Assert.StartsWith($"{command}: rating factor ", below.Error, StringComparison.Ordinal);
        Assert.EndsWith("(--fail-below).\n", below.Error, StringComparison.Ordinal);

        // Truss members alone: that the rest is not rated is said in plain words.
        Assert.StartsWith($"{command}: no factor is below ", above.Error, StringComparison.Ordinal);
        Assert.Contains("not everything is rated: no floor given; no connection given", above.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void FailBelow_ALimitThatIsTheFactorItself_IsNotUndercut() =>
        Assert.True(!SafeLoad.IsBelow(0.1 + 0.2 + 0.7, 1.0) && !SafeLoad.IsBelow(1 - 1e-12, 1.0) && SafeLoad.IsBelow(0.999, 1.0));

    [Theory]
    [InlineData("rate")]
    [InlineData("post")]
    [InlineData("survey")]
    public void FailBelow_ARatingThatIsWithheld_CountsAsBelow(string command)
    {
        Run run = Run.Of(command, Repository.Sample("wrenfield-ferry"), "--fail-below", "0.001");
        Assert.Equal(4, run.Status);
        Assert.Contains("withheld", run.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("rate")]
    [InlineData("post")]
    [InlineData("survey")]
    public void FailBelow_WhereNothingIsRated_StaysStatus3(string command)
    {
        using BridgeOnDisk disk = new BridgeOnDisk().Replace("bridge.toml", "roadway = \"12 ft\"", "roadway = \"4 ft\"");
        Assert.Equal(3, Run.Of(command, disk.Folder, "--fail-below", "1.0").Status);
    }

    [Fact]
    public void FailBelow_OfASurvey_NamesTheBridgesAndMindsThoseThatAreNotRated()
    {
        using CountyOnDisk county = new CountyOnDisk().Add("strong", capacity: "400").Add("weak", capacity: "30");
        Run below = county.Survey("--fail-below", "1.0"), above = county.Survey("--fail-below", "0.1");
        Assert.Equal((4, 0), (below.Status, above.Status));
        Assert.Contains("survey: 1 bridge is below 1.0 or withheld (--fail-below): weak.", below.Error, StringComparison.Ordinal);
        Assert.Contains("survey: 2 bridges are rated in part only, with no factor below 0.1: weak, strong.", above.Error, StringComparison.Ordinal);
        Run alone = Run.Of("survey", Path.Combine(county.Folder, "weak"), "--fail-below", "1.0");
        Assert.Equal("survey: 1 bridge is below 1.0 or withheld (--fail-below): Bridge of weak.\n", alone.Error);
        county.Add("broken").Replace("broken", "members.csv", "L1U1,L1,U1", "L1U1,L1,U9");
        Assert.Equal((0, 3, 4), (county.Survey().Status, county.Survey("--fail-below", "0.1").Status, county.Survey("--fail-below", "1.0").Status));
    }

    [Theory]
    [InlineData("1,0", "decimal point")]
    [InlineData("abc", "write a rating factor above 0")]
    [InlineData("NaN", "write a rating factor above 0")]
    [InlineData("Infinity", "write a rating factor above 0")]
    [InlineData("-1", "write a rating factor above 0")]
    [InlineData("0", "write a rating factor above 0")]
    public void FailBelow_ANumberThatIsNone_IsRefused(string text, string said)
    {
        foreach (string command in (string[])["rate", "post", "survey"])
        {
            Run run = Run.Of(command, Repository.Sample("garrow-landing"), $"--fail-below={text}");
            Assert.Equal(1, run.Status);
            Assert.Contains(said, run.Error, StringComparison.Ordinal);
            Assert.Equal("", run.Output);
        }
    }
}
