using System.Text.Json;

namespace SpanRater.Tests.CommandLine;

/// <summary>The explanations as a user meets them.</summary>
public sealed class ExplainTests : IDisposable
{
    private readonly BridgeOnDisk bridge = new();

    public void Dispose() => bridge.Dispose();

    [Fact]
    public void Influence_ExplainDiagonalOfAK_TellsTheCutTheTwinTheBendsAndTheLoadedLength()
    {
        Run run = Run.Of("influence", Repository.Sample("garrow-landing"), "--explain", "M2U3");
        Assert.Equal((0, ""), (run.Status, run.Error));
        Assert.Contains("-\\frac{V}{s},\\quad V\\text{: sum of the upward reactions},\\quad s\\text{: what a unit of F adds to it}$$", Run.Of("influence", Repository.Sample("garrow-landing"), "--explain", "M2U3", "--format", "markdown").Output, StringComparison.Ordinal);
        foreach (string told in (string[])
            [
                "Cut the truss in two through L2L3, U2U3, M2U3 and M2L3; the cut crosses the deck between L2 and L3.",
                "F(M2U3) = -1.0000 × F(M2L3)",
                "One unit at L3, right of the cut: the left part bears only L0 up 0.6250; that makes a shear of 0.6250, and a unit of tension in M2U3 makes 1.2279. To balance, F = −(0.6250) / (1.2279) = -0.5090: compression.",
                "So the line bends at L2 and L3 and nowhere else.",
                "It passes through zero at 41.14 ft",
                "compression: load from 41.14 ft to 144.00 ft (loaded length 102.86 ft); area -26.18 ft",
            ])
        {
            Assert.Contains(told, run.Output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Influence_ExplainHanger_TellsTheJoint()
    {
        Run run = Run.Of("influence", bridge.Folder, "--explain", "L1U1");
        Assert.Contains("At panel point L1 the other members (L0L1 and L1L2) lie in one line and can hold nothing across it: L1U1 alone holds what stands there.", run.Output, StringComparison.Ordinal);
        Assert.Contains("F(L1U1) = 1.0000 × load at L1", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Influence_ExplainMemberTiedToAnother_DoesNotSayThatAllJointsAreNeeded()
    {
        string output = Run.Of("influence", Repository.Sample("garrow-landing"), "--explain", "U2M2").Output;
        Assert.Contains("At joint U2, U1U2 and U2U3 hold nothing across their line;", output, StringComparison.Ordinal);
        Assert.DoesNotContain("all joints together", output, StringComparison.Ordinal);
        Assert.Contains("It comes from the equations of all joints together.", Run.Of("influence", Repository.Sample("garrow-landing"), "--explain", "U4L4").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Influence_ExplainSlackRod_SaysHowToSeeItsLine()
    {
        string hollis = Repository.Sample("hollis-fork");
        Assert.Contains("L2U3 is slack here: it carries nothing. Its line where it pulls: name the rods that are slack then with --slack.", Run.Of("influence", hollis, "--explain", "L2U3").Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Roll_ExplainDiagonal_TellsPeakCandidatesOtherWayAndSlopes()
    {
        Run run = Run.Of("roll", Repository.Sample("garrow-landing"), "--vehicle", "EV3", "--explain", "M2U3");
        Assert.Equal((0, ""), (run.Status, run.Error));
        foreach (string told in (string[])
            [
                "M2U3 gets 40.49 kip compression with the front axle at 73.00 ft, driving to the right. Each axle, from the front back:",
                "54 placements were tried, both directions.",
                "Driving to the left the most is 37.81 kip compression, with the front axle at 54.00 ft.",
                "The compression falls whichever way the vehicle moves: the sum of load times slope changes its sign",
                "Moved 1.00 ft, it is 39.58 kip compression to the left and 40.01 kip compression to the right.",
            ])
        {
            Assert.Contains(told, run.Output, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void Roll_ExplainMemberThatIsNeverPulled_SaysSo() =>
        Assert.Contains("No placement of Type 3 brings tension into L0U1.", Run.Of("roll", bridge.Folder, "--vehicle", "Type 3", "--explain", "L0U1").Output, StringComparison.Ordinal);

    [Theory]
    [InlineData("influence")]
    [InlineData("roll")]
    public void Explain_EveryFormat_SaysTheSameFacts(string command)
    {
        string[] ask = [command, Repository.Sample("garrow-landing"), .. command == "roll" ? (string[])["--vehicle", "EV3"] : [], "--explain", "M2U3", "--format"];
        string markdown = Run.Of([.. ask, "markdown"]).Output;
        Assert.StartsWith("# Garrow Landing road bridge: ", markdown, StringComparison.Ordinal);
        Assert.Contains("$$", markdown, StringComparison.Ordinal);
        Assert.Contains("-0.509", Run.Of([.. ask, "csv"]).Output.Replace("-40.4", "-0.509", StringComparison.Ordinal), StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(Run.Of([.. ask, "json"]).Output);
        Assert.Equal(1, json.RootElement.GetProperty("format").GetInt32());
        Assert.Equal("M2U3", json.RootElement.GetProperty("member").GetString());
        if (command == "roll")
        {
            JsonElement compression = json.RootElement.GetProperty("compression");
            Assert.Equal(54, compression.GetProperty("positions").GetInt32());
            Assert.Equal(8, compression.GetProperty("candidates").GetArrayLength());
        }
        else
        {
            Assert.Equal("section", json.RootElement.GetProperty("from").GetString());
            Assert.Equal("shear", json.RootElement.GetProperty("section").GetProperty("kind").GetString());
        }
    }

    [Fact]
    public void Explain_MemberAsWellOrUnknown_IsRefusedWithTheMend()
    {
        Run both = Run.Of("influence", bridge.Folder, "--explain", "L0U1", "--member", "L0U1");
        Assert.Equal((1, "--explain and --member each name a member: say one of them. --explain tells all that --member does.\n"), (both.Status, both.Error));
        Run unknown = Run.Of("roll", bridge.Folder, "--vehicle", "Type 3", "--explain", "L0U2");
        Assert.Equal(1, unknown.Status);
        Assert.StartsWith("--explain \"L0U2\": members.csv has no such member. Did you mean \"L0U1\"?", unknown.Error, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("influence")]
    [InlineData("roll")]
    public void Explain_TrussThatDoesNotStand_SaysWhyAndHasNoAnswer(string command)
    {
        bridge.Replace("members.csv", "L1U1,L1,U1,hanger,40,\n", "");
        Run run = Run.Of([command, bridge.Folder, .. command == "roll" ? (string[])["--vehicle", "Type 3"] : [], "--explain", "L0U1"]);
        Assert.Equal(3, run.Status);
        Assert.Contains("Joint L1 is held by bars in one line", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void ExplainInfluence_TrussWithRods_TellsTheSet()
    {
        Run line = Run.Of("influence", Repository.Sample("hollis-fork"), "--explain", "U1L2");
        Assert.Equal(0, line.Status);
        Assert.Contains("Members that only pull: L2U3 and L4U3 are slack here. The line holds while that stays so", line.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Influence_Displaced_WritesThePictureOrSaysWhatIsMissing()
    {
        string picture = Path.Combine(bridge.Folder, "deck.svg");
        Run run = Run.Of("influence", bridge.Folder, "--member", "L0U1", "--displaced", "--picture", picture);
        Assert.Equal((0, ""), (run.Status, run.Error));
        Assert.Contains("Shorten L0U1 by one unit", File.ReadAllText(picture), StringComparison.Ordinal);

        Run alone = Run.Of("influence", bridge.Folder, "--displaced");
        Assert.Equal((1, "--displaced: draws one member's shortening: say --member NAME (or --explain) and --picture FILE as well.\n"), (alone.Status, alone.Error));
    }

    [Fact]
    public void Check_PictureOfATrussThatSways_ShowsTheMovement()
    {
        bridge.Replace("joints.csv", "L0,0,0,pin", "L0,0,0,roller");
        string picture = Path.Combine(bridge.Folder, "sway.svg");
        Run run = Run.Of("check", bridge.Folder, "--picture", picture);
        Assert.Equal(3, run.Status);
        Assert.Contains("it can move", File.ReadAllText(picture), StringComparison.Ordinal);
    }

    [Fact]
    public void Check_MechanismAsJson_HasMovementsPanelsMembersAndTheSupportFault()
    {
        bridge.Replace("joints.csv", "L0,0,0,pin", "L0,0,0,roller");
        using JsonDocument json = JsonDocument.Parse(Run.Of("check", bridge.Folder, "--format", "json").Output);
        JsonElement root = json.RootElement;
        Assert.Equal("wholeTruss", root.GetProperty("movements")[0].GetProperty("kind").GetString());
        Assert.Equal("parallel", root.GetProperty("supportFault").GetProperty("kind").GetString());
        Assert.Equal(0, root.GetProperty("panels").GetArrayLength());
        Assert.Equal(0, root.GetProperty("movingMembers").GetArrayLength());
        Assert.Equal(JsonValueKind.Null, root.GetProperty("causes").ValueKind);
        Assert.Equal(4, root.GetProperty("movingJoints").GetArrayLength());
    }

    // L1 hangs a thousandth of a foot out of line, held by the chord alone.
    [Fact]
    public void Check_JointNearlyInLine_WarnsWithTheConditionAndTheMembers()
    {
        bridge.Replace("joints.csv", "L1,12,0,,,yes", "L1,12,-0.0005,,,yes")
            .Replace("members.csv", "L1U1,L1,U1,hanger,40,", "L0L2,L0,L2,tie,40,");
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal(0, run.Status);
        Assert.Contains("warning: the geometry is near to a mechanism, condition number ", run.Output, StringComparison.Ordinal);
        Assert.Contains("at joint L1 the members meet within 0.0048° of one line; L0L1, L1L2 and L0L2 take the most.", run.Output, StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(Run.Of("check", bridge.Folder, "--format", "json").Output);
        Assert.Equal("L1", json.RootElement.GetProperty("causes").GetProperty("joint").GetString());
        Assert.True(json.RootElement.GetProperty("condition").GetDouble() > 1e4);
    }
}
