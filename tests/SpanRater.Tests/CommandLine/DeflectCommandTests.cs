using System.Text.Json;

namespace SpanRater.Tests.CommandLine;

public sealed class DeflectCommandTests : IDisposable
{
    private readonly BridgeOnDisk bridge = new();

    public DeflectCommandTests() => bridge.Write(
        "members.csv",
        "member,from,to,area [in2]\nL0L1,L0,L1,2\nL1L2,L1,L2,2\nL0U1,L0,U1,4\nU1L2,U1,L2,4\nL1U1,L1,U1,1\n");

    public void Dispose() => bridge.Dispose();

    [Fact]
    public void Deflect_KingPost_IsTheSumByHand()
    {
        // By hand, for the load P at L1: chords N = P·12/(2·8), rafters N = P·14.4222/(2·8), hanger P; Σ N n L/(E A) with n = N/P.
        double length = Math.Sqrt((12 * 12) + (8 * 8)), chord = 12.0 / 16, rafter = length / 16;
        double perKip = ((2 * chord * chord * 12 / 2) + (2 * rafter * rafter * length / 4) + (1 * 8 / 1)) * 12 / 29_000;
        Run run = Run.Of("deflect", bridge.Folder, "--format", "json");
        using JsonDocument json = JsonDocument.Parse(run.Output);
        JsonElement line = json.RootElement.GetProperty("effects").EnumerateArray().Single(e => e.GetProperty("name").GetString() == "L1 down");
        Assert.Equal(perKip * 0.0254 / 4.4482216152605, line.GetProperty("ordinates")[1].GetDouble(), 12);
    }

    [Fact]
    public void Deflect_CaseInInches_StandsUnderItsPanelPoint()
    {
        Run run = Run.Of("deflect", bridge.Folder, "--case", "DC");
        Assert.Equal(0, run.Status);
        Assert.Contains("panel point  station [ft]  down [in]", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Deflect_MissingArea_NamesTheMemberAndGuessesNone()
    {
        bridge.Replace("members.csv", "L1U1,L1,U1,1", "L1U1,L1,U1,");
        Run run = Run.Of("deflect", bridge.Folder, "--case", "DC");
        Assert.Equal(3, run.Status);
        Assert.Contains("Deflections follow from areas, and none is given for L1U1. Write the column area of members.csv; none is guessed.", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Deflect_CaseThatIsNotThere_ListsThoseThatAre()
    {
        Run run = Run.Of("deflect", bridge.Folder, "--case", "DX");
        Assert.Equal(1, run.Status);
        Assert.Contains("--case \"DX\": the bridge has no such case; its cases are: DC, DW. Did you mean", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Frequency_OneMass_IsThatOfASpring()
    {
        // One mass at L1 on the spring of the truss: f = √(k/m)/2π; and the simple formula beside it.
        Run run = Run.Of("frequency", bridge.Folder, "--format", "json");
        using JsonDocument json = JsonDocument.Parse(run.Output);
        double sag = json.RootElement.GetProperty("deadDeflection").GetDouble();
        Assert.Equal(Math.Sqrt(9.80665 / sag) / (2 * Math.PI), json.RootElement.GetProperty("frequency").GetDouble(), 9);
        Assert.Equal(0.18 * Math.Sqrt(9.80665 / sag), json.RootElement.GetProperty("simpleFrequency").GetDouble(), 9);
        Assert.Equal(2.5 * 4448.2216152605 / 9.80665, json.RootElement.GetProperty("mass").GetDouble(), 6);
    }

    [Fact]
    public void Frequency_WithoutDeadLoad_IsRefused()
    {
        File.Delete(bridge.PathOf("loads.csv"));
        Run run = Run.Of("frequency", bridge.Folder);
        Assert.Equal(1, run.Status);
        Assert.Contains("loads.csv: has no case DC, the dead load of the components on one truss: it is the mass that swings.", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Forces_SettlementOfASupport_StressesARedundantTrussAndNoOther()
    {
        bridge.Append("loads.csv", "").Write("loads.csv", "case,joint,up [kip],moves up [in]\nsettle,L1,,-0.25\n").Replace("joints.csv", "L1,12,0,,,yes", "L1,12,0,roller,,yes");
        Run redundant = Run.Of("forces", bridge.Folder, "--case", "settle", "--format", "json");
        Assert.Equal(0, redundant.Status);
        using JsonDocument json = JsonDocument.Parse(redundant.Output);

        // By hand: pulled down by R at L1 the truss sags R times its flexibility there.
        double length = Math.Sqrt((12 * 12) + (8 * 8)), chord = 12.0 / 16, rafter = length / 16;
        double perKip = ((2 * chord * chord * 12 / 2) + (2 * rafter * rafter * length / 4) + (1 * 8 / 1)) * 12 / 29_000;
        JsonElement reaction = json.RootElement.GetProperty("reactions").EnumerateArray().Single(r => r.GetProperty("joint").GetString() == "L1");
        Assert.Equal(-0.25 / perKip, reaction.GetProperty("up").GetDouble() / 4.4482216152605, 8);

        bridge.Replace("joints.csv", "L1,12,0,roller,,yes", "L1,12,0,,,yes").Replace("loads.csv", "L1,,-0.25", "L2,,-0.25");
        using JsonDocument determinate = JsonDocument.Parse(Run.Of("forces", bridge.Folder, "--case", "settle", "--format", "json").Output);
        Assert.All(determinate.RootElement.GetProperty("members").EnumerateArray(), m => Assert.Equal(0, m.GetProperty("force").GetDouble()));
    }

    [Theory]
    [InlineData("DC,L0,,-0.5", "loads.csv:2:8: case DC is dead load, and the movement of a support is none: give it a case of its own.")]
    [InlineData("settle,U1,,-0.5", "loads.csv:2:12: case \"settle\" moves joint \"U1\", which is not supported: only a pin or a roller moves with the ground.")]
    public void Loads_MovementThatCannotBe_IsRefusedInItsPlace(string row, string expected)
    {
        bridge.Write("loads.csv", $"case,joint,up [kip],moves up [in]\n{row}\n");
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal(1, run.Status);
        Assert.Contains(expected, run.Error, StringComparison.Ordinal);
    }
}
