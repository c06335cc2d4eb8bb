using System.Text.Json;

namespace SpanRater.Tests.CommandLine;

/// <summary>What goes out: the JSON shapes, CSV and text, exit statuses, and the same bytes twice.</summary>
public sealed class OutputTests
{
    private static readonly string Garrow = Repository.Sample("garrow-landing");
    private static readonly string Tansy = Repository.Sample("tansy-weir");

    public static IEnumerable<TheoryDataRow<string[]>> EveryCommand() => ((string[][])
    [
        ["check", Garrow],
        ["forces", Garrow, "--case", "DC"],
        ["joints", Garrow, "--case", "DC"],
        ["joints", Tansy, "--unit-load", "L2"],
        ["section", Garrow, "--case", "DC", "--member", "M2U3"],
        ["section", Tansy, "--unit-load", "L2", "--member", "U1L2"],
        ["influence", Garrow],
        ["influence", Tansy, "--member", "U1L2"],
        ["roll", Garrow, "--vehicle", "HS20"],
        ["roll", Tansy, "--vehicle", "EN service vehicle", "--member", "L1U1"],
        ["rate", Garrow],
        ["rate", Tansy, "--all"],
        ["vehicles"],
        ["vehicles", "NRL"],
    ]).Select(args => new TheoryDataRow<string[]>(args));

    [Theory]
    [MemberData(nameof(EveryCommand))]
    public void EveryCommand_RunTwiceInEachFormat_GivesTheSameBytes(string[] args)
    {
        foreach (string format in (string[])["text", "csv", "json"])
        {
            Run first = Run.Of([.. args, "--format", format]), second = Run.Of([.. args, "--format", format]);
            Assert.Equal(0, first.Status);
            Assert.Equal("", first.Error);
            Assert.NotEqual("", first.Output);
            Assert.Equal(first.Output, second.Output);
            Assert.DoesNotContain("\r", first.Output, StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(EveryCommand))]
    public void EveryCommand_AsJson_StartsWithItsFormatAndHasNoNumberThatIsNot(string[] args)
    {
        using var json = JsonDocument.Parse(Run.Of([.. args, "--format", "json"]).Output);
        JsonProperty first = json.RootElement.EnumerateObject().First();
        Assert.Equal("format", first.Name);
        Assert.Equal(1, first.Value.GetInt32());
    }

    [Fact]
    public void Forces_AsJson_HasMembersReactionsAndResidual()
    {
        using var json = JsonDocument.Parse(Run.Of("forces", Tansy, "--case", "crowd", "--format", "json").Output);
        JsonElement root = json.RootElement;
        Assert.Equal("crowd", root.GetProperty("case").GetString());
        JsonElement chord = root.GetProperty("members").EnumerateArray().First(m => m.GetProperty("member").GetString() == "L2L3");

        // 4.5 kN/m on 18 m under a truss 1.8 m deep: w L²/8/h.
        Assert.Equal(4.5 * 18 * 18 / 8 / 1.8, chord.GetProperty("force").GetDouble(), 1e-9);
        JsonElement pin = root.GetProperty("reactions").EnumerateArray().First();
        Assert.Equal("L0", pin.GetProperty("joint").GetString());
        Assert.Equal(40.5, pin.GetProperty("up").GetDouble(), 1e-9);
        Assert.InRange(root.GetProperty("residual").GetDouble(), 0, 1e-9);
    }

    [Fact]
    public void Influence_AsJson_HasPanelPointsAndEffects()
    {
        using var json = JsonDocument.Parse(Run.Of("influence", Garrow, "--format", "json").Output);
        Assert.Equal(9, json.RootElement.GetProperty("panelPoints").GetArrayLength());
        JsonElement[] effects = [.. json.RootElement.GetProperty("effects").EnumerateArray()];
        Assert.Equal(41 + 3, effects.Length);
        JsonElement up = effects.First(e => e.GetProperty("name").GetString() == "L0 up");
        Assert.Equal("reaction", up.GetProperty("kind").GetString());
        Assert.Equal([1, 0.875, 0.75, 0.625, 0.5, 0.375, 0.25, 0.125, 0], up.GetProperty("ordinates").EnumerateArray().Select(o => Math.Round(o.GetDouble(), 12)));
    }

    [Fact]
    public void Roll_AsJson_GivesNullForASenseThatNeverOccursAndSpacingsThatVary()
    {
        using var json = JsonDocument.Parse(Run.Of("roll", Garrow, "--vehicle", "HS20", "--format", "json").Output);
        JsonElement chord = json.RootElement.GetProperty("peaks").EnumerateArray().First(p => p.GetProperty("member").GetString() == "U3U4");
        Assert.Equal(JsonValueKind.Null, chord.GetProperty("tension").ValueKind);
        JsonElement peak = chord.GetProperty("compression");
        Assert.Equal(2, peak.GetProperty("spacings").GetArrayLength());
        Assert.Equal(peak.GetProperty("force").GetDouble(), peak.GetProperty("axles").EnumerateArray().Sum(a => a.GetProperty("force").GetDouble()), 1e-9);
        Assert.Contains(peak.GetProperty("direction").GetString(), (string?[])["left", "right"]);
    }

    [Fact]
    public void Rate_AsJson_PutsTheGoverningRowFirst()
    {
        using var json = JsonDocument.Parse(Run.Of("rate", Garrow, "--format", "json").Output);
        JsonElement root = json.RootElement, first = root.GetProperty("ratings")[0], governing = root.GetProperty("governing");
        foreach (string key in (string[])["member", "vehicle", "level", "sense"])
        {
            Assert.Equal(first.GetProperty(key).GetString(), governing.GetProperty(key).GetString());
        }

        Assert.Equal(first.GetProperty("factor").GetDouble(), root.GetProperty("ratings").EnumerateArray().Where(r => r.GetProperty("status").GetString() == "rated").Min(r => r.GetProperty("factor").GetDouble()));
        Assert.All(root.GetProperty("notRated").EnumerateArray(), n => Assert.Equal("deck", n.GetProperty("member").GetString()));
        Assert.Contains("not a posting order", root.GetProperty("caution").GetString(), StringComparison.Ordinal);
        Assert.All(
            (string[])["truss", "part", "member", "vehicle", "beside", "level", "effect", "sense", "mode", "status", "capacity", "deadComponents", "deadWearing", "live", "impact", "factor"],
            key => Assert.True(first.TryGetProperty(key, out _), key));
    }

    [Fact]
    public void Rate_AsJson_ListsWhatIsNotRated()
    {
        using BridgeOnDisk disk = new BridgeOnDisk().Replace("members.csv", "L0U1,L0,U1,end post,,40", "L0U1,L0,U1,end post,,");
        using var json = JsonDocument.Parse(Run.Of("rate", disk.Folder, "--format", "json").Output);
        JsonElement missing = Assert.Single(json.RootElement.GetProperty("notRated").EnumerateArray());
        Assert.Equal("L0U1", missing.GetProperty("member").GetString());
        Assert.Equal("compression", missing.GetProperty("sense").GetString());
        Assert.Equal("no capacity: column \"compression capacity\" of members.csv is blank", missing.GetProperty("reason").GetString());
    }

    [Theory]
    [InlineData("text")]
    [InlineData("csv")]
    [InlineData("json")]
    public void Rate_InEveryFormat_CarriesTheCautionTheScopeAndWhatIsNotRated(string format)
    {
        using BridgeOnDisk disk = new BridgeOnDisk().Replace("members.csv", "L0U1,L0,U1,end post,,40", "L0U1,L0,U1,end post,,");
        string output = Run.Of("rate", disk.Folder, "--format", format).Output;
        Assert.Contains("An aid for qualified people, not a posting order: local codes and a licensed engineer decide.", output, StringComparison.Ordinal);
        Assert.Contains("Truss members only.", output, StringComparison.Ordinal);
        Assert.Contains("L0U1", output, StringComparison.Ordinal);
        Assert.Contains("no capacity: column", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("HS20", "HS20 truck or lane")]
    [InlineData("HL-93 truck", "HL-93")]
    public void Rate_TruckWhoseFormHasALaneLoad_IsNotRatedAloneAndItsLoadingIs(string name, string loading)
    {
        using var disk = new BridgeOnDisk();
        disk.Replace("bridge.toml", "Type 3", name);
        Run run = Run.Of("rate", disk.Folder, "--format", "json");
        Assert.Equal(3, run.Status);
        using var json = JsonDocument.Parse(run.Output);
        Assert.All(json.RootElement.GetProperty("ratings").EnumerateArray(), r => Assert.Equal("notRated", r.GetProperty("status").GetString()));
        Assert.EndsWith($"rate \"{loading}\" instead", Assert.Single(json.RootElement.GetProperty("notRated").EnumerateArray()).GetProperty("reason").GetString(), StringComparison.Ordinal);
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("governing").ValueKind);

        disk.Replace("bridge.toml", name, loading);
        run = Run.Of("rate", disk.Folder, "--format", "json");
        Assert.Equal(0, run.Status);
        using var rated = JsonDocument.Parse(run.Output);
        Assert.Equal(loading, rated.RootElement.GetProperty("governing").GetProperty("vehicle").GetString());
        JsonElement row = rated.RootElement.GetProperty("ratings")[0];
        double[] forces = [.. row.GetProperty("parts").EnumerateArray().Select(p => p.GetProperty("force").GetDouble())];
        Assert.Equal(row.GetProperty("live").GetDouble(), forces.Sum(), 1e-9);
    }

    [Fact]
    public void Rate_ZeroLiveForce_IsNotApplicableAndNeverInfinite()
    {
        string text = Run.Of("rate", Tansy).Output;
        Assert.Contains("Not applicable, no live force under these vehicles: ", text, StringComparison.Ordinal);
        Assert.Contains("L2U2 tension, L2U2 compression", text, StringComparison.Ordinal);
        Assert.DoesNotContain("∞", text, StringComparison.Ordinal);
        Assert.DoesNotContain("Infinity", text, StringComparison.Ordinal);
    }

    [Fact]
    public void Rate_DeadLoadAboveCapacity_SaysToTreatTheBridgeAsClosed()
    {
        using var disk = new BridgeOnDisk();
        disk.Replace("loads.csv", "DC,L1,-2", "DC,L1,-80");
        Run run = Run.Of("rate", disk.Folder);
        Assert.Equal(0, run.Status);
        Assert.Contains("rating factor 0.00: the dead load alone exceeds the capacity. Check the inputs; if they are true, treat the bridge as closed until an engineer has reviewed it.", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Rate_StrutThatOnlyPulls_IsRefusedByName()
    {
        using var disk = new BridgeOnDisk();
        disk.Write("members.csv", "member,from,to,tension only\nL0L1,L0,L1,\nL1L2,L1,L2,\nL0U1,L0,U1,yes\nU1L2,U1,L2,\nL1U1,L1,U1,\n");
        Run run = Run.Of("rate", disk.Folder);
        Assert.Equal(3, run.Status);
        Assert.Contains("Nothing is rated. Uncarried compression in L0U1: it only pulls, and under case DC", run.Output, StringComparison.Ordinal);
        Assert.Contains("not a posting order", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Units_AskedFor_ChangeTheTableAndNeverTheJson()
    {
        Assert.Contains("force [kip]", Run.Of("forces", Garrow, "--case", "DC").Output, StringComparison.Ordinal);
        Assert.Contains("force [kN]", Run.Of("forces", Garrow, "--case", "DC", "--units", "si").Output, StringComparison.Ordinal);
        Assert.Equal(
            Run.Of("rate", Garrow, "--format", "json").Output,
            Run.Of("rate", Garrow, "--format", "json", "--units", "si").Output);
    }

    [Fact]
    public void Text_Piped_IsNeverWrappedShortenedOrColoured()
    {
        string text = Run.Of("rate", Garrow).Output;
        Assert.DoesNotContain("\u001b", text, StringComparison.Ordinal);
        Assert.DoesNotContain("…", text, StringComparison.Ordinal);
        Assert.Contains(text.Split('\n'), line => line.Length > 200);
    }

    [Fact]
    public void Roll_ALoading_TellsEachPartAndWhereItStands()
    {
        Run run = Run.Of("roll", Garrow, "--vehicle", "HL-93", "--member", "L3L4");
        Assert.Equal(0, run.Status);
        Assert.Matches("L3L4 +bottom chord +tension +[0-9.]+ +HL-93 truck front axle at [0-9.]+ ft, driving (left|right); lane load of 0.64 klf from 0 to 144 ft", run.Output);
        using var json = JsonDocument.Parse(Run.Of("roll", Garrow, "--vehicle", "HL-93", "--format", "json").Output);
        JsonElement tension = json.RootElement.GetProperty("peaks").EnumerateArray().Single(p => p.GetProperty("member").GetString() == "L3L4").GetProperty("tension");
        Assert.Equal(tension.GetProperty("force").GetDouble(), tension.GetProperty("parts").EnumerateArray().Sum(p => p.GetProperty("force").GetDouble()), 1e-9);
    }

    [Fact]
    public void Roll_ACrowd_LoadsWhatOneTrussCarries()
    {
        Run run = Run.Of("roll", Tansy, "--vehicle", "Crowd 90 psf", "--member", "L2L3");
        Assert.Contains("Of its width one truss carries 1.000 m by the lever rule.", run.Output, StringComparison.Ordinal);

        // The sample's case crowd is 4.5 kN/m2 on the whole deck and gives 101.25 kN; 90 psf are 4.309 kN/m2.
        Assert.Matches("L2L3 +bottom chord +tension +96.96 ", run.Output);
    }

    [Fact]
    public void Roll_ALoadingWithWhatAsksForATrain_IsRefusedAtOnce()
    {
        Run run = Run.Of("roll", Garrow, "--vehicle", "HL-93", "--scale", "0.5", "--explain", "L3L4");
        Assert.Equal(1, run.Status);
        Assert.Equal(2, run.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries).Length);
        Assert.Contains("--scale is for a single vehicle on axles, and \"HL-93\" is a lane load, a crowd, tracks, or several vehicles", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Roll_ALoadingOverRods_IsRefusedByName()
    {
        Run run = Run.Of("roll", Repository.Sample("hollis-fork"), "--vehicle", "HL-93", "--format", "json");
        Assert.Equal(3, run.Status);
        using var json = JsonDocument.Parse(run.Output);
        Assert.Equal("notATrainWithRods", json.RootElement.GetProperty("refusal").GetProperty("kind").GetString());
    }
}
