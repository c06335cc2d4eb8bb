using System.Text.Json;

namespace SpanRater.Tests.CommandLine;

/// <summary>The fatigue note on the command line. The cycles behind the years are those by hand of the tests of the note.</summary>
public sealed class FatigueCommandTests : IDisposable
{
    private readonly BridgeOnDisk bridge = FatigueKingPost.Make();

    public void Dispose() => bridge.Dispose();

    [Theory]
    [InlineData("-4", "100", "--trucks-a-day -4: must be a number above 0 and at most 100000.")]
    [InlineData("0", "100", "--trucks-a-day 0: must be a number above 0 and at most 100000.")]
    [InlineData("many", "100", "--trucks-a-day many: must be a number above 0 and at most 100000.")]
    [InlineData("5", "301", "--years 301: must be a number above 0 and at most 300.")]
    public void Fatigue_TrafficThatCannotBe_IsRefused(string trucks, string years, string says)
    {
        Run run = FatigueKingPost.Fatigue(bridge, trucks, years);
        Assert.Equal((1, ""), (run.Status, run.Output));
        Assert.Contains(says, run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Fatigue_CategoryThatIsNot_IsRefusedAndNoneIsProposed()
    {
        Run run = FatigueKingPost.Fatigue(bridge, "5", "100", "--detail", "F");
        Assert.Equal((1, ""), (run.Status, run.Output));
        Assert.Contains("--detail \"F\": no such category; they are A, B, B', C, C', D, E, E'. Loop-forged eyes, forge welds and wrought iron have no published category, and none is guessed.", run.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Fatigue_MemberOfTimber_HasNoNote()
    {
        using BridgeOnDisk timber = FatigueKingPost.Make("plank", "wood");
        Run run = FatigueKingPost.Fatigue(timber, "5", "100");
        Assert.Equal(3, run.Status);
        Assert.Contains("It is of timber, and the published categories are of steel. There is no note for it", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("stress range", run.Output, StringComparison.Ordinal);
    }

    // Years by hand of 22e8/9.3095³ = 2,726,718 cycles of D and 483,373 of E', two a passage.
    [Theory]
    [InlineData("D", "5", "100", "and more than 100 years of the same traffic are left.")]      // 747 − 100
    [InlineData("E'", "5", "100", "and 32 years of the same traffic are left.")]                // 132.4 − 100
    [InlineData("E'", "5", "130", "and 2.4 years of the same traffic are left.")]
    [InlineData("D", "500", "100", "and they were used up 93 years ago by this count.")]        // 7.47 − 100
    [InlineData("D", "500", "300", "and they were used up more than 100 years ago by this count.")]
    public void Fatigue_YearsLeft_HaveTwoDigitsAtMost(string detail, string trucks, string years, string says)
    {
        Run run = FatigueKingPost.Fatigue(bridge, trucks, years, "--detail", detail);
        Assert.Equal(0, run.Status);
        Assert.Contains(says, run.Output, StringComparison.Ordinal);
    }

    [Fact]
    public void Fatigue_Text_SaysThatSectionAndTrafficAreTakenAsTheSame() =>
        Assert.Contains("The same section and the same traffic are assumed throughout", FatigueKingPost.Fatigue(bridge, "5", "100").Output, StringComparison.Ordinal);

    // Years as above: 747 of D and 132.4 of E' in all.
    [Fact]
    public void Fatigue_Csv_HasARowForEachCategoryAndRoundYears()
    {
        Run run = FatigueKingPost.Fatigue(bridge, "5", "100", "--format", "csv");
        Assert.Equal(0, run.Status);
        string[] lines = [.. run.Output.Split('\n').Select(l => l.TrimEnd('\r')).Where(l => l.Length > 0 && l[0] != '#')];
        Assert.Equal("detail,what it is,stress range [ksi],threshold [ksi],cycles used,cycles allowed,used %,years left", lines[0]);
        Assert.Equal(8, lines.Length - 1);
        Assert.EndsWith(",365000,no end,0,no end", lines[1], StringComparison.Ordinal);
        Assert.EndsWith(",more than 100", lines[6], StringComparison.Ordinal);
        Assert.EndsWith(",32", lines[8], StringComparison.Ordinal);
    }

    // 22e8/9.3095³/(5 · 365 · 2) − 100 = 647 by hand.
    [Fact]
    public void Fatigue_Json_KeepsTheYearsAsANumber()
    {
        Run run = FatigueKingPost.Fatigue(bridge, "5", "100", "--detail", "D", "--format", "json");
        Assert.Equal(0, run.Status);
        using JsonDocument json = JsonDocument.Parse(run.Output);
        JsonElement detail = Assert.Single(json.RootElement.GetProperty("details").EnumerateArray());
        Assert.Equal("D", detail.GetProperty("detail").GetString());
        Assert.Equal(647, detail.GetProperty("yearsLeft").GetDouble(), 0.5);
        Assert.Empty(json.RootElement.GetProperty("missing").EnumerateArray());
    }

    // A roadway 1 ft to the right puts the wheels 2 and 8 ft from the right truss: share (12 + 6)/(2·14) = 0.643, of the left one 0.5.
    [Fact]
    public void Fatigue_TrussesWithUnlikeRanges_NamesTheWorse()
    {
        bridge.Replace("bridge.toml", "roadway = \"12 ft\"", "roadway = \"12 ft\"\nroadway_offset = \"1 ft\"\ntruss_names = [\"north\", \"south\"]");
        Run run = FatigueKingPost.Fatigue(bridge, "5", "100");
        Assert.Contains("on the south truss, the worse of those looked at, brings", run.Output, StringComparison.Ordinal);
        Assert.Contains("share 0.643", run.Output, StringComparison.Ordinal);
    }

    // Pack rust takes no metal, so that the trusses are looked at apart and come out the same.
    [Fact]
    public void Fatigue_TrussesWithTheSameRange_NamesNoneAsTheWorse()
    {
        bridge.Write("findings.csv", "member,truss,place,part,what,count\nL1U1,south,top,legs,pack rust,\n")
            .Replace("bridge.toml", "roadway = \"12 ft\"", "roadway = \"12 ft\"\ntruss_names = [\"north\", \"south\"]");
        Run run = FatigueKingPost.Fatigue(bridge, "5", "100");
        Assert.Equal((0, ""), (run.Status, run.Error));
        Assert.Contains("on the north truss brings", run.Output, StringComparison.Ordinal);
        Assert.DoesNotContain("the worse of those", run.Output, StringComparison.Ordinal);
    }
}
