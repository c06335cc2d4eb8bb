using System.Text.Json;

namespace SpanRater.Tests.CommandLine;

/// <summary>Trusses with rods on the command line: a queen post bridge with crossed rods in its middle panel.</summary>
public sealed class RodCommandTests : IDisposable
{
    private readonly BridgeOnDisk bridge = new();

    public RodCommandTests()
    {
        bridge.Write("joints.csv", "joint,x [ft],y [ft],support,deck\nL0,0,0,pin,yes\nL1,12,0,,yes\nL2,24,0,,yes\nL3,36,0,roller,yes\nU1,12,9,,\nU2,24,9,,\n");
        bridge.Write(
            "members.csv",
            "member,from,to,tension only,area [in2],tension capacity [kip],compression capacity [kip]\nL0L1,L0,L1,,80,40,40\nL1L2,L1,L2,,80,40,40\nL2L3,L2,L3,,80,40,40\n"
            + "U1U2,U1,U2,,64,,40\nL0U1,L0,U1,,64,,44\nU2L3,U2,L3,,64,,44\nL1U1,L1,U1,yes,0.89,24,\nL2U2,L2,U2,yes,0.89,24,\nU1L2,U1,L2,yes,0.3,8,\nL1U2,L1,U2,yes,0.3,8,\n");
        bridge.Write("loads.csv", "case,joint,up [kip]\nDC,L1,-3.6\nDC,L2,-3.6\nleft,L1,-6\nlift,L1,2\n");
    }

    public void Dispose() => bridge.Dispose();

    [Fact]
    public void Forces_LoadLeftOfMidspan_NamesTheRodThatActs()
    {
        Run run = Run.Of("forces", bridge.Folder, "--case", "left");
        Assert.Equal(0, run.Status);
        Assert.Contains("Of the members that only pull, these act: L1U1, L1U2. Slack: L2U2, U1L2. Found among 2 sets of acting rods", run.Output, StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(Run.Of("forces", bridge.Folder, "--case", "left", "--format", "json").Output);
        Assert.Equal(["L1U1", "L1U2"], json.RootElement.GetProperty("rods").GetProperty("acting").EnumerateArray().Select(e => e.GetString()));
        Assert.Equal(["L2U2", "U1L2"], json.RootElement.GetProperty("rods").GetProperty("slack").EnumerateArray().Select(e => e.GetString()));
    }

    [Fact]
    public void Forces_LiftOnAHanger_SaysWhichCompressionIsUncarried()
    {
        Run run = Run.Of("forces", bridge.Folder, "--case", "lift");
        Assert.Equal(3, run.Status);
        Assert.Contains("Uncarried compression in L1U1: it only pulls, and under case lift it would have to carry", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Roll_Rods_ShowsTheSetAtThePeakAndWhatTheDeadLoadShifts()
    {
        Run run = Run.Of("roll", bridge.Folder, "--vehicle", "H10", "--member", "L2U2");
        Assert.Equal(0, run.Status);
        Assert.Contains("effects do not add up", run.Output, StringComparison.Ordinal);
        Assert.Contains("Slack there: L1U2.", run.Output, StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(Run.Of("roll", bridge.Folder, "--vehicle", "H10", "--format", "json").Output);
        JsonElement peak = json.RootElement.GetProperty("peaks").EnumerateArray().Single(p => p.GetProperty("member").GetString() == "U1L2").GetProperty("tension");
        Assert.Equal(["L1U2"], peak.GetProperty("slack").EnumerateArray().Select(e => e.GetString()));
        Assert.Equal(8.89, peak.GetProperty("force").GetDouble() / 4.4482216152605, 2);
    }

    [Fact]
    public void Roll_WithoutDeadLoad_AsksForIt()
    {
        File.Delete(bridge.PathOf("loads.csv"));
        Run run = Run.Of("roll", bridge.Folder, "--vehicle", "H10");
        Assert.Equal(3, run.Status);
        Assert.Contains("Which rods act depends on dead and live load together, and loads.csv has no case DC.", run.Output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("0")]
    [InlineData("-1")]
    [InlineData("NaN")]
    [InlineData("half")]
    [InlineData("1000")]
    public void Roll_ScaleOutOfRange_IsRefused(string scale)
    {
        Run run = Run.Of("roll", bridge.Folder, "--vehicle", "H10", "--scale", scale);
        Assert.Equal(1, run.Status);
        Assert.Contains($"--scale {scale}: must be a number above 0 and at most 100, such as 0.65 for the share of one truss.", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Roll_RelievingAxlesLeftOut_AreRefused()
    {
        Run run = Run.Of("roll", bridge.Folder, "--vehicle", "NRL");
        Assert.Equal(3, run.Status);
        Assert.Contains("Relieving axles of NRL are to be left out, which has no meaning where rods go slack", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Rate_Rods_GoSlackInCompressionAndAreRatedInTension()
    {
        Run run = Run.Of("rate", bridge.Folder, "--format", "json");
        Assert.Equal(0, run.Status);
        using JsonDocument json = JsonDocument.Parse(run.Output);
        JsonElement[] rows = [.. json.RootElement.GetProperty("ratings").EnumerateArray().Where(r => r.GetProperty("member").GetString() == "U1L2")];
        Assert.All(rows.Where(r => r.GetProperty("sense").GetString() == "compression"), r => Assert.Equal("slack", r.GetProperty("status").GetString()));
        JsonElement tension = Assert.Single(rows, r => r.GetProperty("sense").GetString() == "tension");
        Assert.Equal("rated", tension.GetProperty("status").GetString());
        Assert.Equal(["L1U2"], tension.GetProperty("slackAtFactor").EnumerateArray().Select(e => e.GetString()));
    }

    [Fact]
    public void Rate_EyebarWithoutACounter_IsWithheldAndNothingGoverns()
    {
        // Without L1U2 nothing takes over from U1L2.
        bridge.Replace("members.csv", "L1U2,L1,U2,yes,0.3,8,\n", "");
        Run run = Run.Of("rate", bridge.Folder);
        Assert.Equal(3, run.Status);
        Assert.Contains("Nothing governs while a rating is withheld. U1L2 goes slack before the factored vehicle is on whole (Type 3): no such vehicle can be called safe here.", run.Output, StringComparison.Ordinal);
        Assert.Contains("Type 3: uncarried compression in U1L2: it only pulls, and at 0.00 of the vehicle, factored for legal level, it goes slack with nothing to take over.", run.Output, StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(Run.Of("rate", bridge.Folder, "--format", "json").Output);
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("governing").ValueKind);
        Assert.All(json.RootElement.GetProperty("ratings").EnumerateArray().Where(r => r.GetProperty("part").GetString() == "truss member"), r => Assert.Equal(JsonValueKind.Null, r.GetProperty("factor").ValueKind));
    }

    [Fact]
    public void Rate_OneVehicleOfTwoWithheld_GovernsNothingAndEndsWithThree()
    {
        using var ferry = BridgeOnDisk.OfSample("wrenfield-ferry");
        ferry.Write("vehicles.csv", "vehicle,class,load [kip],spacing [ft]\nPony trap,farm,0.5,\nPony trap,,0.5,8\n");
        ferry.Replace("bridge.toml", "\"Type 3S2\", \"Type 3-3\"", "\"Pony trap\"");
        Run run = Run.Of("rate", ferry.Folder, "--format", "json");
        Assert.Equal(3, run.Status);
        using JsonDocument json = JsonDocument.Parse(run.Output);
        Assert.Equal(JsonValueKind.Null, json.RootElement.GetProperty("governing").ValueKind);
        Assert.Contains(json.RootElement.GetProperty("ratings").EnumerateArray().Where(r => r.GetProperty("part").GetString() == "truss member"), r => r.GetProperty("vehicle").GetString() == "Pony trap" && r.GetProperty("factor").ValueKind == JsonValueKind.Number);
        Assert.All(
            json.RootElement.GetProperty("ratings").EnumerateArray().Where(r => r.GetProperty("vehicle").GetString() == "Type 3" && r.GetProperty("part").GetString() == "truss member"),
            r => Assert.Equal(JsonValueKind.Null, r.GetProperty("factor").ValueKind));
    }

    [Fact]
    public void Influence_Rods_NameTheSetTheyHoldFor()
    {
        Run dead = Run.Of("influence", bridge.Folder, "--member", "U1L2");
        Assert.Equal(0, dead.Status);
        Assert.Contains("Lines for one set of acting rods: L1U1, L2U2, U1L2 act; slack: L1U2.", dead.Output, StringComparison.Ordinal);
        Run named = Run.Of("influence", bridge.Folder, "--member", "U1L2", "--slack", "U1L2");
        Assert.Contains("Lines for one set of acting rods: L1U1, L2U2, L1U2 act; slack: U1L2.", named.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Influence_SlackOfNoRod_SaysWhatWasMeant()
    {
        Run run = Run.Of("influence", bridge.Folder, "--slack", "L1L2, U1L");
        Assert.Equal(1, run.Status);
        Assert.Contains("--slack \"L1L2\": no member of that name is marked tension only.", run.Error, StringComparison.Ordinal);
        Assert.Contains("--slack \"U1L\": no member of that name is marked tension only. Did you mean \"U1L2\"?", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Influence_AllRodsSlack_SaysThatItIsAMechanism()
    {
        Run run = Run.Of("influence", bridge.Folder, "--slack", "U1L2,L1U2");
        Assert.Equal(3, run.Status);
        Assert.Contains("Mechanism", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_CrossedRods_AreToldAsAPair()
    {
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal(0, run.Status);
        Assert.Contains("Of two rods that cross in a panel at most one acts; with one of each pair slack, statics alone gives every force.", run.Output, StringComparison.Ordinal);
        Assert.Matches("crossed pairs of rods +U1L2 and L1U2", run.Output);
        using JsonDocument json = JsonDocument.Parse(Run.Of("check", bridge.Folder, "--format", "json").Output);
        Assert.Equal(["U1L2", "L1U2"], json.RootElement.GetProperty("crossedPairs")[0].EnumerateArray().Select(e => e.GetString()));
    }

    [Fact]
    public void Check_CrossedRods_AreNotACaseForASecondLook() =>
        Assert.DoesNotContain("cross without a joint", Run.Of("check", bridge.Folder).Output, StringComparison.Ordinal);
}
