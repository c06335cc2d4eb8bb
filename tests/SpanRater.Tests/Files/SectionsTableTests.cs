using SpanRater.Files;

namespace SpanRater.Tests;

/// <summary>sections.csv: make-ups as an inspector writes them, and every fault with its text and place.</summary>
public class SectionsTableTests
{
    private const double Inch = 0.0254;

    private const string Header =
        "section,part,shape,count,width [in],depth [in],thickness [in],web [in],flange [in],diameter [in],root [in],root area [in2],head width [in],pin hole [in],arrangement,gap [in],rise [in],x [in],y [in],turned [deg],upside down,holes,hole [in],through,staggers,pitch [in],gauge [in]";

    [Fact]
    public void Read_MakeUpsOfOldBridges_AreUnderstood()
    {
        SectionsTable table = Read(
            "section,part,shape,count,width [in],depth [in],thickness [in],diameter [in],root area [in2],head width [in],pin hole [in],arrangement,gap [in],x [in],y [in],holes,hole [in],note",
            "eyes,bars,eyebar,2,2-1/2,,3/4,,,6,2 7/8,,,,,,,paired",
            "squares,bars,square bar,2,7/8,,,,,,,row,5,,,0,,looped",
            "rod,rod,round bar,,,,,1,0.551,,,,,,,,,",
            "post,channels,C8x11.5,2,,,,,,,,backs out,12,,,0,,",
            "post,cover,plate,,12,,1/4,,,,,,,0,4.125,0,,",
            "stem,,L3x3x1/4,2,,,,,,,,backs in,3/8,,,1,7/8,",
            "sill,,timber,,8,10,,,,,,,,,,0,,");
        SectionProperties post = table.Find("post")!.Properties!;
        Assert.Equal(["eyes", "squares", "rod", "post", "stem", "sill"], table.Sections.Select(s => s.Name));
        Assert.Equal(3.75, table.Find("eyes")!.Area / (Inch * Inch), 1e-9);
        Assert.Equal(2 * (6 - 2.875) * 0.75, table.Find("eyes")!.NetArea!.Value / (Inch * Inch), 1e-9);
        Assert.Null(table.Find("eyes")!.Properties);
        Assert.Equal(0.551, table.Find("rod")!.NetArea!.Value / (Inch * Inch), 1e-9);
        Assert.Equal((2 * 3.38) + 3, post.Area / (Inch * Inch), 1e-9);
        Assert.Equal(4.125 * 3 / 9.76, post.Y / Inch, 1e-9);
        Assert.Equal(2 * (1.44 - (0.875 * 0.25)), table.Find("stem")!.NetArea!.Value / (Inch * Inch), 1e-9);
        Assert.Equal(10 / Math.Sqrt(12), table.Find("sill")!.Properties!.Rx / Inch, 1e-9);
        Assert.Equal("paired", table.Find("eyes")!.Parts[0].Note);
    }

    [Theory]
    [InlineData("a,,plat,,12,,1", "2:4: shape \"plat\" is not known. Did you mean \"plate\"? Write what it is (plate, angle, channel, parallel channel, I-beam, wide-flange, eyebar, round bar, square bar, pipe, timber) and its dimensions, or a name of the shape table.")]
    [InlineData("a,,C8x11.4", "2:4: shape \"C8x11.4\" is not known. Did you mean \"C8x11.5\"? Write what it is (plate, angle, channel, parallel channel, I-beam, wide-flange, eyebar, round bar, square bar, pipe, timber) and its dimensions, or a name of the shape table.")]
    [InlineData("a,,C8x11.5,,,8", "2:14: part \"C8x11.5\": C8x11.5 has its dimensions from the shape table, and depth has no meaning beside it: clear it, or write channel under shape and all dimensions.")]
    [InlineData("a,w,angle,,3,4", "2:5: part \"w\" has no thickness: an angle is given by depth, width, thickness.")]
    [InlineData("a,w,plate,,12,,1/4,3/8", "2:20: part \"w\": a plate has no web: clear it; a plate is given by width and thickness where it lies, by depth and thickness where it stands.")]
    [InlineData("a,w,plate,,0.25,,12", "2:18: part \"w\": thickness 12 is not below width 0.25: are they exchanged?|2:18: warning: part \"w\": thickness 12 is 12 in (304.8 mm), much for a thickness: check the number and the unit in the heading.")]
    [InlineData("a,w,angle,,4,3,1.5", "2:16: part \"w\": thickness 1.5 is half of depth 3 or more, which no angle is: check both, and their units.")]
    [InlineData("a,w,channel,,8,8,,1/4,1/4", "2:23: part \"w\": flange 1/4 comes to nothing before the edge at a slope of 1 in 6: write the thickness in the middle of the overhang, or a shape with parallel flanges (parallel channel, wide-flange).")]
    [InlineData("a,w,eyebar,,4,,1,,,,,,3,5", "2:13: part \"w\": width 4 is not below head width 3: are they exchanged?|2:25: part \"w\": pin hole 5 is not below head width 3: are they exchanged?")]
    [InlineData("a,w,round bar,,,,,,,1,1.2", "2:23: part \"w\": root 1.2 is not below diameter 1: are they exchanged?")]
    [InlineData("a,w,round bar,,,,,,,1,0.8,0.5", "2:27: part \"w\" has root and root area: clear one of them.")]
    [InlineData("a,w,plate,,-3,,1", "2:12: part \"w\": width = -3: it must be above zero.")]
    [InlineData("a,v,plate,,20,,5\na,w,plate,,-3,,1", "3:12: part \"w\": width = -3: it must be above zero.|2:16: warning: part \"v\": thickness 5 is 5 in (127 mm), much for a thickness: check the number and the unit in the heading.")]
    [InlineData("a,w,plate,,300,,1", "2:12: part \"w\": width 300 is 300 in (7620 mm), more than any part of a member: check the number and the unit in the heading.")]
    [InlineData("a,w,plate,1.5,12,,1", "2:11: count = 1.5: write a whole number from 1 to 100.")]
    [InlineData("a,w,plate,2,12,,1,,,,,,,,,,,0,0", "2:29: part \"w\": 2 pieces cannot lie at one place: write arrangement and gap, or a row each.")]
    [InlineData("a,w,plate,2,12,,1,,,,,,,,beside,1", "2:26: arrangement \"beside\" is not known. Write backs in, backs out, row, stack.")]
    [InlineData("a,w,plate,2,12,,1,,,,,,,,row", "2:26: part \"w\" has no gap: write the clear distance between neighbours; 0 where they touch.")]
    [InlineData("a,w,plate,2,12,,1,,,,,,,,,1", "2:27: part \"w\": gap says nothing without arrangement: write backs in, backs out, row, stack there, or clear gap.")]
    [InlineData("a,w,plate,1,12,,1,,,,,,,,row,1", "2:26: part \"w\" is one piece, and row is of several: write count, or give x and y.")]
    [InlineData("a,w,plate,2,12,,1,,,,,,,,backs in,1", "2:26: part \"w\": a plate has no back: write row (beside each other) or stack (above each other).")]
    [InlineData("a,w,plate,2,12,,1,,,,,,,,row,-1", "2:30: part \"w\": gap = -1: a distance is not negative; 0 where they touch.")]
    [InlineData("a,w,C8x11.5,3,,,,,,,,,,,backs in,1", "2:25: part \"w\": backs in is of two pieces: write count 2, or a row each.")]
    [InlineData("a,w,C8x11.5,2,,,,,,,,,,,backs out,3", "2:35: part \"w\": with 3 over the backs they would lie in each other: gap is the distance over all here; or is it backs in?")]
    [InlineData("a,w,C8x11.5,2,,,,,,,,,,,backs out,12,,,,90", "2:41: part \"w\": backs out says how the pieces lie, and turned has no meaning beside it: clear it; write upside down = yes where flat legs are on top.")]
    [InlineData("a,w,L3x3x1/4,4,,,,,,,,,,,backs in,1", "2:26: part \"w\" has no rise: of four angles write the distance between the heels of the lower and the upper two.")]
    [InlineData("a,w,L3x3x1/4,2,,,,,,,,,,,backs in,1,12", "2:37: part \"w\": rise is the distance between the heels of the lower and the upper two of four angles: clear it, or write count 4 and backs in or backs out.")]
    [InlineData("a,w,plate,,12,,1,,,,,,,,,,,,,,,2", "2:32: part \"w\" has holes and no hole: write the diameter that each takes away, allowance for punching in it.")]
    [InlineData("a,w,plate,,12,,1,,,,,,,,,,,,,,,,7/8", "2:33: part \"w\": hole says nothing without holes: write how many are in the worst path.")]
    [InlineData("a,w,C8x11.5,,,,,,,,,,,,,,,,,,,2,7/8", "2:31: part \"w\": holes through what? Write web or flange under through.")]
    [InlineData("a,w,C8x11.5,,,,,,,,,,,,,,,,,,,2,7/8,wep", "2:37: part \"w\": holes cannot go through \"wep\". Did you mean \"web\"? Of a channel it is web or top flange or bottom flange or flange.")]
    [InlineData("a,w,plate,,12,,1,,,,,,,,,,,,,,,2,7/8,,2,3,3", "2:39: part \"w\": 2 staggers between 2 holes: there is one less than holes at most.")]
    [InlineData("a,w,plate,,12,,1,,,,,,,,,,,,,,,3,7/8,,2,3,", "2:39: part \"w\": staggers, pitch and gauge go together: how many steps of the path are aslant, how far each goes along the member (s) and across it (g).")]
    [InlineData("a,w,plate,,12,,1,,,,,,,,,,,,,,,15,7/8", "2:35: part \"w\": the holes leave nothing of it: check holes, hole and the unit in the heading.")]
    [InlineData("a,w,eyebar,,4,,1,,,,,,,,,,,,,,,0", "2:32: part \"w\" is an eyebar: write head width and pin hole, and clear holes.")]
    [InlineData("a,w,round bar,,,,,,,1,0.8,,,,,,,,,,,0", "2:37: part \"w\" has a root of the thread, and holes = 0 says that its ends are upset: clear one of them.")]
    [InlineData("a,w,round bar,,,,,,,1,,,,,,,,,,,,1,1/2", "2:34: part \"w\": holes are not taken through a round bar: clear them; write root or root area where its ends are threaded and not upset.")]
    [InlineData("a,w,plate,,12,,1\na,w,plate,,10,,1", "3:3: section \"a\" has a part \"w\" already (line 2): give each part a name of its own, or write count where they are alike.")]
    [InlineData(",w,plate,,12,,1", "2:1: \"section\" is blank: every row needs one.")]
    public void Read_APartThatCannotBe_SaysWhereAndTheMend(string row, string expected)
    {
        var findings = new FindingList();
        SectionsTable? table = SectionsTable.Read(Header + "\n" + Filled(row) + "\n", "sections.csv", findings);
        Assert.Equal(expected.Split('|').Select(e => "sections.csv:" + e), findings.All.Select(f => f.ToString()));
        Assert.Empty(table!.Sections);
    }

    [Fact]
    public void Read_NoRows_IsWorthASecondLook()
    {
        var findings = new FindingList();
        SectionsTable.Read(Header + "\n", "sections.csv", findings);
        Assert.Equal("sections.csv: warning: holds no section: write a row a part, or remove the file.", Assert.Single(findings.All).ToString());
    }

    [Fact]
    public void Read_AWebTurnedAndAnAngleUpsideDown_LieSo()
    {
        SectionsTable table = Read(
            "section,part,shape,count,width [in],depth [in],thickness [in],arrangement,gap [in],rise [in],x [in],y [in],turned [deg],upside down",
            "box,web,plate,,10,,1/2,,,,3,,90,",
            "top,angles,angle,2,3,4,1/4,backs in,1/2,,,,,yes",
            "lone,angle,angle,,3,4,1/4,,,,,,180,");
        SectionProperties web = table.Find("box")!.Properties!;
        Assert.Equal((0.5, 10.0, 3.0), (Math.Round((web.Right - web.Left) / Inch, 9), Math.Round((web.Top - web.Bottom) / Inch, 9), Math.Round(web.X / Inch, 9)));
        Assert.True(table.Find("top")!.Properties!.Top < 1e-12);
        Assert.True(table.Find("lone")!.Properties!.Top < 1e-12);
        Assert.True(table.Find("lone")!.IsSingleAngle);
    }

    [Fact]
    public void Read_AFractionUnderAnotherUnit_IsNoNumber()
    {
        var findings = new FindingList();
        SectionsTable.Read("section,shape,width [mm],thickness [in]\na,plate,7/8,1/4\n", "sections.csv", findings);
        Assert.Equal("sections.csv:2:9: \"7/8\" is not a number.", findings.All[0].ToString());
    }

    [Fact]
    public void Check_AFolderWithSectionsAndFindings_TellsTheirFaults()
    {
        using var bridge = new CommandLine.BridgeOnDisk();
        bridge.Write("sections.csv", "section,shape,width [in],thickness [in]\na,plate,12,\n").Write("findings.csv", "member,truss,what\nL0L1,,crack\n");
        CommandLine.Run run = CommandLine.Run.Of("check", bridge.Folder);
        Assert.Equal(1, run.Status);
        Assert.Contains("sections.csv:2:3: part \"plate\" has no thickness: a plate is given by width and thickness where it lies, by depth and thickness where it stands.", run.Error.Split('\n'));
        Assert.Contains("findings.csv:2:6: on which truss? Write left, right, or both where it was seen on both: what was seen on one is not taken over to the other.", run.Error.Split('\n'));
    }

    // Short rows are filled up, so that no column is missing.
    private static string Filled(string rows) =>
        string.Join('\n', rows.Split('\n').Select(r => r + new string(',', Header.Count(c => c == ',') - r.Count(c => c == ','))));

    private static SectionsTable Read(params string[] lines)
    {
        var findings = new FindingList();
        SectionsTable? table = SectionsTable.Read(string.Join('\n', lines) + "\n", "sections.csv", findings);
        Assert.Empty(findings.All);
        return table!;
    }
}
