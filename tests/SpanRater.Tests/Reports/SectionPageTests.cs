using System.Text.Json;
using SpanRater.Tests.CommandLine;
using SpanRater.Tests.Learning;

namespace SpanRater.Tests.Reports;

public class SectionPageTests
{
    private static readonly string Garrow = Repository.Sample("garrow-landing");

    [Fact]
    public void Section_OfAKArm_SaysThatTheChordComesFirst()
    {
        string[] lines = Run.Of("section", Garrow, "--case", "DC", "--member", "M2U3").Output.Split('\n');
        Assert.Contains("No single cut through up to four members gives M2U3 alone: a cut of its own gives U2U3 first.", lines);
        Assert.Contains("The cut through L2L3, U2U3, M2U3 and M2L3 parts the truss in two. Kept is the part with joints L0, L1, L2, U1, U2, M1 and M2, which bears no more loads and reactions than the other.", lines);
        Assert.Contains("Moments about L3: L2L3 and M2L3 pass through it and have no arm, so M2U3 stands alone.", lines);
        Assert.Contains("Arms of inclined members about L3, distance right times part up less distance up times part right:", lines);
        Assert.Contains("  - M2U3 at M2: (−18)·0.61394 − 14·0.78935 = −22.1019 ft", lines);
        Assert.Contains("M2U3 by sections: 15.832 kip compression. Joint by joint: 15.832 kip compression. The two agree within 1e-9 of the largest member force.", lines);
    }

    [Theory]
    [InlineData("L1L2", "Moments about U1: L0U1 and M1L1 pass through it and have no arm, so L1L2 stands alone.")]
    [InlineData("M1L1", "ΣY: of the unknown forces only M1L1 has an upright part; L0L1 and L1L2 lie level.")]
    [InlineData("U2M2", "Moments about the point x = 0, y = 28 ft: U2U3 and M1L2 pass through it and have no arm, so U2M2 stands alone.")]
    public void Section_OfEachKindOfMember_SaysWhatDropsOut(string member, string line) =>
        Assert.Contains(line, Run.Of("section", Garrow, "--case", "DC", "--member", member).Output.Split('\n'));

    [Fact]
    public void Section_AboutAPointThatIsNoJoint_SetsItsCoordinatesApartFromTheSum() => Assert.Contains(
        "    ΣM about (x = 0, y = 28 ft) = 0:  28·(L0 right) + 28·L1L2 − 36·U2M2 − 18·12.960 = 0",
        Run.Of("section", Garrow, "--case", "DC", "--member", "U2M2").Output.Split('\n'));

    [Fact]
    public void Section_OfADiagonalBetweenParallelChords_SumsSquareToThem() => Assert.Contains(
        "ΣY: of the unknown forces only U1L2 has an upright part; L1L2 and U1U2 lie level.",
        Run.Of("section", Repository.Sample("tansy-weir"), "--case", "DC", "--member", "U1L2").Output.Split('\n'));

    [Fact]
    public void Section_WhereNoCutGivesTheMember_SaysSoAndEndsWithStatusThree()
    {
        using BridgeOnDisk disk = FinkOnDisk.Make(CompoundTrusses.Hexagon(0.6), "case,joint,up [kN]\nroof,D,-2\n");
        foreach (string format in (string[])["text", "markdown", "csv", "json"])
        {
            Run run = Run.Of("section", disk.Folder, "--case", "roof", "--member", "CF", "--format", format, "--picture", disk.PathOf("x.png"));
            Assert.Equal(3, run.Status);
            Assert.False(File.Exists(disk.PathOf("x.png")));
            Assert.Contains("not drawn", run.Error, StringComparison.Ordinal);
            if (format != "json")
            {
                Assert.Contains("No cut through up to four members gives CF, alone or together with members that a cut gives: it is found joint by joint only,", run.Output, StringComparison.Ordinal);
            }
        }
    }

    [Fact]
    public void Json_OfASection_HasCutsForcesAndTheDifference()
    {
        using var json = JsonDocument.Parse(Run.Of("section", Garrow, "--case", "DC", "--member", "M2U3", "--format", "json").Output);
        JsonElement root = json.RootElement, cuts = root.GetProperty("cuts");
        Assert.Equal(2, cuts.GetArrayLength());
        Assert.Equal(["L2L3", "U2U3", "M2U3", "M2L3"], cuts[1].GetProperty("through").EnumerateArray().Select(m => m.GetString()));
        Assert.Equal(root.GetProperty("byJoints").GetDouble(), root.GetProperty("bySections").GetDouble(), 1e-9);
        Assert.InRange(root.GetProperty("difference").GetDouble(), 0, 1e-9);
        Assert.Equal("moment", cuts[1].GetProperty("equation").GetProperty("sum").GetString());
    }
}
