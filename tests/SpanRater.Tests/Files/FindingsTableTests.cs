using SpanRater.Files;

namespace SpanRater.Tests;

/// <summary>findings.csv: what an inspector saw, and every fault with its text and place.</summary>
public class FindingsTableTests
{
    private const double Inch = 0.0254;

    private const string Header = "member,truss,place,part,piece,what,dimension,remaining [in],face,hole [in],count,decay [in],bow [in],direction,doubt [in],by,how,photo,date,note";

    private const string Sections =
        "section,part,shape,count,width [in],depth [in],thickness [in],diameter [in],arrangement,gap [in],x [in],y [in]\n" +
        "post,channels,C8x11.5,2,,,,,backs out,12,,\n" +
        "post,cover,plate,,12,,3/8,,,,0,4\n" +
        "bars,bars,eyebar,2,3,,1,,,,,\n" +
        "sill,sill,timber,,8,10,,,,,,\n" +
        "stem,stem,angle,,3,3,1/4,,,,,\n" +
        "rod,rod,round bar,,,,,1,,,,\n";

    private static readonly Deck TwoTrusses = new() { TrussNames = ["west", "east"] };

    private static readonly string[] Members = ["L0U1", "L1L2", "F1", "V1", "R1", "X1"];

    private static readonly Dictionary<string, string> SectionNames = new() { ["L0U1"] = "post", ["L1L2"] = "bars", ["F1"] = "sill", ["V1"] = "stem", ["R1"] = "rod" };

    [Fact]
    public void Read_LossOnOneTruss_StaysThere()
    {
        FindingsTable table = Read(
            "L0U1,west,2 ft from L0,cover,,remaining,thickness,0.31,,,,,,,0.02,J. Rowe,calliper,P12,2026-05-31,cleaned",
            "L0U1,west,2 ft from L0,channels,1,remaining,web,0.17,left,,,,,,,,,,,",
            "L1L2,both,,bars,,slack,,,,,1,,,,,,,,,",
            "L0U1,east,,,,bow,,,,,,,5/8,x,,,,,,");
        FoundSection west = table.Find("L0U1", 0)!, east = table.Find("L0U1", 1)!;
        FoundCut cut = Assert.Single(west.Cuts);
        Assert.Empty(east.Cuts);
        Assert.Equal(5.0 / 8 * Inch, Assert.Single(east.Bows).Offset, 1e-12);
        Assert.Equal(12 * 0.31, cut.AsRead.FindPart("cover")!.Area / (Inch * Inch), 1e-9);
        Assert.Equal(12 * 0.29, cut.Least.FindPart("cover")!.Area / (Inch * Inch), 1e-9);
        Assert.True(cut.ShiftX > 0 && cut.ShiftY < 0);
        Assert.Equal(new DateOnly(2026, 5, 31), cut.Observations[0].Origin.Date);
        Assert.Equal(3, table.Find("L1L2", 0)!.AllAlong.Area / (Inch * Inch), 1e-9);
        Assert.Equal(3, table.Find("L1L2", 1)!.AllAlong.Area / (Inch * Inch), 1e-9);
        Assert.Null(table.Find("V1", 0));
    }

    [Theory]
    [InlineData("L0U1,west,mid,cover,,remaining,thickness,0.41", "2:42: part \"cover\": 0.41 in (10.4 mm) remaining of thickness 0.375 in (9.5 mm). Rust scale measured? Clean and measure again, or correct the original size in sections.csv.")]
    [InlineData("L0U1,west,mid,cover,,remaining,thickness,0", "2:42: remaining = 0: nothing is left of it. Enter the part as gone (what = gone), so that the way of the force is looked at again.")]
    [InlineData("L0U1,west,mid,cover,,remaining,thickness,60%", "2:42: remaining \"60%\": write what remains as a length, as measured; a part in hundred says neither where nor of what.")]
    [InlineData("L0U1,west,mid,cover,,remaining,thickness,0.1,,,,,,,0.1", "2:52: part \"cover\": the doubt 0.1 is as large as what remains: measure again, or enter the part as gone.")]
    [InlineData("L0U1,west,mid,chanels,,remaining,web,0.1", "2:15: section \"post\" has no part \"chanels\". Did you mean \"channels\"? Its parts are channels, cover.")]
    [InlineData("L0U1,west,mid,,,remaining,web,0.1", "2:17: of which part? Section \"post\" has channels, cover.")]
    [InlineData("L0U1,west,mid,channels,3,gone", "2:24: part \"channels\" has 2 pieces, counted from 1 from left to right and bottom to top: piece 3 is none of them.")]
    [InlineData("L0U1,west,mid,cover,,remaining,web,0.1", "2:32: part \"cover\" is a plate, of which width, thickness may be less: web is not one of them, or was not given in sections.csv.")]
    [InlineData("L0U1,west,mid,cover,,remaining,wep,0.1", "2:32: dimension \"wep\" is not known. Did you mean \"web\"? Write one that the shape has: width, depth, thickness, upright leg, flat leg, web, flange, top flange, bottom flange, top flange width, bottom flange width, diameter, root, head width, pin hole.")]
    [InlineData("L0U1,west,mid,cover,,remaining,thickness,0.3,left", "2:46: part \"cover\": its thickness has no left face as it lies in the section: write one of the two faces that the dimension is between, or leave face blank where all sides lost alike.")]
    [InlineData("L0U1,west,mid,cover,,remaining,thickness,0.3,under", "2:46: face \"under\" is not known. Write left, right, bottom or top as the section is drawn, or leave it blank where all sides lost alike.")]
    [InlineData("L0U1,west,mid,cover,,remaining,thickness,0.3\nL0U1,west,mid,cover,,remaining,thickness,0.2", "3:22: part \"cover\" at \"mid\": line 2 has said this already: keep one row, or write the piece or another place.")]
    [InlineData("L0U1,west,mid,cover,,hole,,,,13", "2:30: part \"cover\": a hole of 13 takes all of the wall, 12 in (304.8 mm). Check the number and the unit in the heading, or enter the part as gone (what = gone).")]
    [InlineData("L0U1,west,mid,channels,,hole,,,,1", "2:25: part \"channels\" is a channel: write under dimension which wall has the hole: web, top flange, bottom flange.")]
    [InlineData("R1,west,mid,rod,,hole,,,,1/4", "2:18: part \"rod\" is a round bar: no hole is taken through it. Enter what remains of diameter.")]
    [InlineData("L0U1,west,mid,cover,,decay,,,,,,1", "2:22: part \"cover\" is a plate, and only timber decays: enter what remains of a dimension.")]
    [InlineData("F1,west,foot,,,decay,,,,,,4", "2:27: part \"sill\": nothing is left of it. Enter the part as gone (what = gone), so that the way of the force is looked at again.")]
    [InlineData("L1L2,west,,,,slack,,,,,2", "2:14: part \"bars\" has 2 pieces, and not all of them can be slack: check count; a member that carries nothing is taken out of members.csv.")]
    [InlineData("L1L2,west,,,1,slack,,,,,1", "2:25: piece says which is slack, and count how many where that is not known: clear one of them.")]
    [InlineData("L1L2,west,mid,,,gone", "2:17: nothing of section \"bars\" is left at \"mid\": a member that is parted carries nothing. Take it out of members.csv and see whether the truss stands; close the bridge until it is known.")]
    [InlineData("L0U2,west,,,,crack", "2:1: finding on member \"L0U2\", which members.csv does not have. Did you mean \"L0U1\"?")]
    [InlineData("X1,west,mid,,,gone", "2:1: member \"X1\" has no section that this could be taken off: name its section in members.csv, and write its parts in sections.csv.")]
    [InlineData("L0U1,wst,,,,crack", "2:6: truss \"wst\" is not known. Did you mean \"west\"? Write west, east, or both where it was seen on both.")]
    [InlineData("L0U1,,,,,crack", "2:6: on which truss? Write west, east, or both where it was seen on both: what was seen on one is not taken over to the other.")]
    [InlineData("L0U1,west,mid,cover,,rust", "2:22: what \"rust\" is not known. Write remaining, gone, hole, decay, slack, bow, crack, pack rust, lacing missing.")]
    [InlineData("L0U1,west,,cover,,gone", "2:19: gone needs a place: name the cut, such as mid or 2 ft from L1. What has the same place acts together.")]
    [InlineData("L0U1,west,mid,cover,,remaining,,0.3", "2:22: remaining needs dimension: write it.")]
    [InlineData("L0U1,west,,,,bow,,,,,,,5/8,z", "2:28: direction \"z\": write x (out of the plane of the truss) or y (in it), or leave it blank.")]
    [InlineData("L0U1,west,,,,bow,,0.3,,,,,5/8", "2:19: remaining has no meaning beside bow: clear it, or make a row of it.")]
    [InlineData("L0U1,west,mid,cover,,remaining,thickness,0.3,,,,,,,-0.1", "2:52: doubt = -0.1: write how far the measurement may be off to either side, without a sign.")]
    [InlineData("L0U1,west,,,,crack,,,,,,,,,,,,,2026-02-30", "2:32: date \"2026-02-30\" is no day of the calendar: write year, month and day as 2026-05-31.")]
    [InlineData("L0U1,west,,,,crack,,,,,,,,,,,,,1899-02-03", "2:32: date 1899-02-03 is before the bridge was built (1908): check it, and built in bridge.toml.")]
    [InlineData("L0U1,west,,brace,,crack", "2:12: section \"post\" has no part \"brace\". Its parts are channels, cover.")]
    [InlineData("L0U1,both,mid,cover,,remaining,thickness,0.41", "2:42: part \"cover\": 0.41 in (10.4 mm) remaining of thickness 0.375 in (9.5 mm). Rust scale measured? Clean and measure again, or correct the original size in sections.csv.")]
    public void Read_AFindingThatCannotBe_SaysWhereAndTheMend(string row, string expected)
    {
        var findings = new FindingList();
        Read(row, TwoTrusses, findings);
        Assert.Equal("findings.csv:" + expected, Assert.Single(findings.All).ToString());
    }

    [Fact]
    public void Read_ATrussNamedWhereThereIsOne_IsRefused()
    {
        var findings = new FindingList();
        Read("L0U1,west,,,,crack", new Deck { Trusses = 1 }, findings);
        Assert.Equal("findings.csv:2:6: truss \"west\": the bridge has 1 truss: clear the cell.", Assert.Single(findings.All).ToString());
    }

    // The examples of the documents, put on the sections of the documents.
    [Fact]
    public void Read_TheExamplesOfTheDocuments_AreUnderstood()
    {
        string[] blocks = File.ReadAllText(Path.Combine(CommandLine.Repository.Root, "docs/formats.md")).Split("```\n");
        var findings = new FindingList();
        SectionsTable sections = SectionsTable.Read(blocks.Single(b => b.StartsWith("section,part,shape", StringComparison.Ordinal)), "sections.csv", findings)!;
        Assert.Equal(["L1L2", "counter", "rod", "end post", "hanger", "sill"], sections.Sections.Select(s => s.Name));
        FindingsTable table = FindingsTable.Read(
            blocks.Single(b => b.StartsWith("member,truss,place", StringComparison.Ordinal)), "findings.csv", ["L0U1", "L1L2", "sill"], [], TwoTrusses, 1908,
            m => sections.Find(m == "L0U1" ? "end post" : m), findings)!;
        Assert.Empty(findings.All);
        Assert.Equal(2, Assert.Single(table.Find("L0U1", 0)!.Cuts).Observations.Count);
        Assert.Equal(6.5 * 8.5, table.Find("sill", 1)!.Cuts[0].AsRead.Area / (Inch * Inch), 1e-9);
    }

    [Fact]
    public void Read_NoRows_IsWorthASecondLook()
    {
        var findings = new FindingList();
        Read("", TwoTrusses, findings);
        Assert.Equal("findings.csv: warning: holds no finding: write a row for each, or remove the file.", Assert.Single(findings.All).ToString());
    }

    [Fact]
    public void Wording_EveryFault_IsTold()
    {
        // Each kind of fault has a row above that makes it.
        Assert.Equal(12, typeof(ObservationFault).GetNestedTypes().Length);
        Assert.Equal(6, typeof(ShapeFault).GetNestedTypes().Length);
    }

    private static FindingsTable Read(params string[] rows)
    {
        var findings = new FindingList();
        FindingsTable? table = Read(string.Join('\n', rows), TwoTrusses, findings);
        Assert.Empty(findings.All);
        return table!;
    }

    private static FindingsTable? Read(string rows, Deck deck, FindingList findings)
    {
        var own = new FindingList();
        SectionsTable sections = SectionsTable.Read(Sections, "sections.csv", own)!;
        Assert.Empty(own.All);
        string filled = string.Join('\n', rows.Split('\n').Select(r => r.Length == 0 ? r : r + new string(',', Header.Count(c => c == ',') - r.Count(c => c == ','))));
        return FindingsTable.Read(Header + "\n" + filled + "\n", "findings.csv", Members, [], deck, 1908, m => SectionNames.TryGetValue(m, out string? name) ? sections.Find(name) : null, findings);
    }
}
