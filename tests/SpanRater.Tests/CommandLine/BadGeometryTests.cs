namespace SpanRater.Tests.CommandLine;

/// <summary>Faults of joints and members as a user meets them: text, file, line and column.</summary>
public sealed class BadGeometryTests : IDisposable
{
    private readonly BridgeOnDisk bridge = new();

    public void Dispose() => bridge.Dispose();

    [Fact]
    public void Check_MemberToAbsentJoint_NamesTheNearest()
    {
        bridge.Replace("members.csv", "L1U1,L1,U1", "L1U1,L1,U9");
        Refused("members.csv:6:9: member \"L1U1\" names joint \"U9\", which joints.csv does not have. Did you mean \"U1\"?");
    }

    [Fact]
    public void Check_DuplicateBar_SaysToEnterOneMember()
    {
        bridge.Append("members.csv", "L0L1b,L1,L0,bottom chord,40,\n");
        Refused("members.csv:7:1: member \"L0L1b\" joins the same two joints as \"L0L1\" (line 2). Two bars side by side are entered as one member with both areas and capacities.");
    }

    [Fact]
    public void Check_CoincidentJoints_NamesBoth()
    {
        bridge.Append("joints.csv", "L1a,12,0,,,\n").Append("members.csv", "x,L1a,U1,,,\n");
        Refused("joints.csv:6:5: joint \"L1a\" stands at the same point as \"L1\" (line 3): check x and y, or make them one joint.");
    }

    [Fact]
    public void Check_CrossingMembers_WarnsAndGoesOn()
    {
        bridge.Append("joints.csv", "A,5,6,,,\n").Append("members.csv", "AU,A,U1,,,\nAL,A,L1,,,\n");
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal(0, run.Status);
        Assert.Contains("members.csv:8:1: warning: members \"AL\" and \"L0U1\" (line 4) cross without a joint. Right where they pass each other free, as a bar does beside a post, or two rods that only pull and are marked so; where they are fastened, add a joint.", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_ManyCrossings_AreToldInOneWarning()
    {
        string folder = bridge.PathOf("double");
        Assert.Equal(0, Run.Of("new", folder, "--form", "double-intersection", "--span", "160 ft", "--panels", "8", "--height", "30 ft").Status);
        string[] warnings = [.. Run.Of("influence", folder, "--member", "L0L1").Error.Split('\n').Where(l => l.Contains("cross without a joint", StringComparison.Ordinal))];
        Assert.Contains("pairs of members cross without a joint: ", Assert.Single(warnings), StringComparison.Ordinal);
        Assert.Contains("Right for webs of two systems, whose bars pass each other free; where they are fastened, add a joint.", warnings[0], StringComparison.Ordinal);
    }

    [Fact]
    public void Check_LooseJoint_SaysNothingHoldsIt()
    {
        bridge.Append("joints.csv", "X,30,0,,,\n");
        Refused("joints.csv:6:1: nothing holds joint \"X\": no member ends there. Add its members, or remove it.");
    }

    [Fact]
    public void Check_MemberOfNoLength_SaysSo()
    {
        bridge.Append("members.csv", "bad,L1,L1,,,\n");
        Refused("members.csv:7:8: member \"bad\" starts and ends at joint \"L1\": it has no length. Check from and to.");
    }

    [Fact]
    public void Check_DuplicateNames_NameTheFirstLine()
    {
        bridge.Append("joints.csv", "U1,15,3,,,\n").Append("members.csv", "L0L1,L0,U1,,,\n");
        Refused(
            "joints.csv:6:1: joint \"U1\" is on line 5 already: give this one another name, or remove it.",
            "members.csv:7:1: member \"L0L1\" is on line 2 already: give this one another name, or remove it.",
            "members.csv:7:1: member \"L0L1\" joins the same two joints as \"L0U1\" (line 4). Two bars side by side are entered as one member with both areas and capacities.");
    }

    [Fact]
    public void Check_NoSupport_SaysWhatToWrite()
    {
        bridge.Replace("joints.csv", "pin", "").Replace("joints.csv", "roller,,", ",,");
        Refused("joints.csv: no joint is supported: write pin at one end and roller at the other under support.");
    }

    [Fact]
    public void Check_TooFewBars_CountsAndNamesWhatMoves()
    {
        bridge.Replace("members.csv", "L1U1,L1,U1,hanger,40,\n", "");
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal(3, run.Status);
        Assert.Contains("Mechanism: 4 members + 3 reactions = 7, fewer than 2 × 4 joints = 8; rank 7. Joint L1 can move without any member changing its length.", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_CountRightRankWrong_IsNotDeceived()
    {
        // Two panels: the first crossed twice, the second without a diagonal.
        bridge.Write("joints.csv", """
            joint,x [ft],y [ft],support,deck
            L0,0,0,pin,yes
            L1,10,0,,yes
            L2,20,0,roller,yes
            U0,0,10,,
            U1,10,10,,
            U2,20,10,,

            """).Write("members.csv", """
            member,from,to
            L0L1,L0,L1
            L1L2,L1,L2
            U0U1,U0,U1
            U1U2,U1,U2
            L0U0,L0,U0
            L1U1,L1,U1
            L2U2,L2,U2
            L0U1,L0,U1
            U0L1,U0,L1

            """).Write("loads.csv", "case,joint,up [kip]\nDC,L1,-1\n");
        Run run = Run.Of("forces", bridge.Folder, "--case", "DC");
        Assert.Equal(3, run.Status);
        Assert.Contains("9 members + 3 reactions = 12, equal to 2 × 6 joints = 12; rank 11.", run.Output, StringComparison.Ordinal);
        Assert.Contains("The count is 12 = 12, but panel L0-L1-U1-U0 has a spare bar (one of L0L1, U0U1, L0U0, L1U1, L0U1, U0L1) and panel L1-L2-U2-U1 has none: the count is deceived, the rank is not.", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Forces_TooManyReactionsWithoutAreas_NamesTheMembersAndTheirPlaces()
    {
        bridge.Replace("joints.csv", "L1,12,0,,,yes", "L1,12,0,roller,,yes");
        Run run = Run.Of("forces", bridge.Folder, "--case", "DC");
        Assert.Equal(3, run.Status);
        Assert.Contains("Redundant: 5 members + 4 reactions = 9, more than 2 × 4 joints = 8; rank 8. Only the stiffness of its members divides the forces, and no area is given for L0L1, L1L2, L0U1, U1L2, L1U1.", run.Output, StringComparison.Ordinal);
        Assert.Contains("members.csv:2:1: warning: member \"L0L1\" has no area, and the truss is redundant: its stiffness divides the forces. Write its area.", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_TwoRollers_SaysThatTwoReactionsCannotHold()
    {
        bridge.Replace("joints.csv", "L0,0,0,pin", "L0,0,0,roller");
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal(3, run.Status);
        Assert.Contains("Fewer than three reactions cannot hold a truss.", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_DeckJointSkipped_Asks()
    {
        bridge.Replace("joints.csv", "L1,12,0,,,yes", "L1,12,0,,,");
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal(0, run.Status);
        Assert.Contains("joints.csv:3:1: warning: the deck runs from \"L0\" to \"L2\" past joint \"L1\". If a floorbeam sits there, write deck = yes.", run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_DeckShortOfSupport_Warns()
    {
        bridge.Replace("joints.csv", "L2,24,0,roller,,yes", "L2,24,0,roller,,");
        Assert.Contains("joints.csv:4:1: warning: the deck ends at \"L1\", short of the support at \"L2\". If the deck reaches it, write deck = yes.", Run.Of("check", bridge.Folder).Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Check_FloorbeamBetweenJoints_SaysThatTheChordBends()
    {
        bridge.Replace("joints.csv", "L1,12,0,,,yes\n", "F,6,0,,,yes\nL1,12,0,,,yes\n").Append("members.csv", "FU1,F,U1,,,\n");
        Refused("joints.csv:3:9: panel point \"F\" lies on member \"L0L1\" between its ends: the deck's load bends the member, and pin-joint forces alone are not enough. Split the member at the joint if it is jointed there.");
    }

    [Fact]
    public void Check_PanelPointsAboveOneAnother_SaysToMarkOne()
    {
        bridge.Replace("joints.csv", "U1,12,8,,,", "U1,12,8,,,yes");
        Refused(
            "joints.csv:5:11: panel points \"L1\" (line 3) and \"U1\" stand above one another: mark only the one that carries the deck.",
            "joints.csv:5:4: warning: panel point \"U1\" stands left of \"L2\", which is listed before it. Panel points are taken in order of x: check x.");
    }

    [Fact]
    public void Forces_LoadOffTheJoints_SaysThatAMemberWouldBend()
    {
        bridge.Append("loads.csv", "DC,L9,-1\n");
        Refused("loads.csv:6:4: case \"DC\" loads joint \"L9\", which joints.csv does not have. Did you mean \"L2\"? A load between joints bends a member, and pin-joint forces alone are not enough.");
    }

    private void Refused(params string[] lines)
    {
        Run run = Run.Of("check", bridge.Folder);
        Assert.Equal(string.Join('\n', lines) + "\n", run.Error);
        Assert.Equal("", run.Output);
        Assert.Equal(1, run.Status);
    }
}
