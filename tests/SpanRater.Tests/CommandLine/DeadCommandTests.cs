using System.Text.Json;

namespace SpanRater.Tests.CommandLine;

/// <summary>What <c>dead</c> prints, and that no command shows one truss for both.</summary>
public sealed class DeadCommandTests : IDisposable
{
    private readonly BridgeOnDisk bridge = new();

    public void Dispose() => bridge.Dispose();

    [Fact]
    public void Dead_HollisFork_ListsItemsWithTheirSourcesAndWhatReachesEachJoint()
    {
        string[] lines = Lines(Run.Of("dead", Repository.Sample("hollis-fork")));
        Assert.Contains("Dead load on one truss: DC 30.7 kip, 0.320 klf; DW 15.4 kip, 0.160 klf (of the take-off).", lines);
        Assert.Contains("Case DC: all of the take-off. Case DW: all of the take-off.", lines);
        Assert.Contains("deck planks DC 3 in × 14 ft × 50 pcf (timber) 0.175 16.80 8.40 taped; unit weight of timber: USDA Timber Bridges (1990), ch. 6", lines);
        Assert.Contains("stringers DC 7 × 31.5 plf 0.221 21.17 10.58 taped, 12 in I-beams (invented)", lines);
        Assert.Contains("asphalt DW 2 in × 13.333 ft × 144 pcf 0.320 30.72 15.36 probed at six points, 2 in between the wheel guards (invented)", lines);
        Assert.Contains("L1 bottom 5.12 2.56", lines);
        Assert.Contains("all 30.72 15.36", lines);
    }

    // What was in loads.csv before the take-off: 1.4 kN/m of components and an explicit zero of wearing surface.
    [Fact]
    public void Dead_TansyWeir_IsWhatLoadsHeldBefore()
    {
        Run run = Run.Of("dead", Repository.Sample("tansy-weir"), "--format", "json");
        using JsonDocument json = JsonDocument.Parse(run.Output);
        JsonElement[] joints = [.. json.RootElement.GetProperty("jointLoads").EnumerateArray()];
        Assert.Equal(["L0", "L1", "L2", "L3", "L4", "L5", "L6"], joints.Select(j => j.GetProperty("joint").GetString()));
        Assert.All(joints, j => Assert.Equal(j.GetProperty("joint").GetString() is "L0" or "L6" ? 2.1 : 4.2, j.GetProperty("DC").GetDouble(), 1e-9));
        Assert.All(joints, j => Assert.Equal(0, j.GetProperty("DW").GetDouble()));
        Assert.DoesNotContain("assumed: no wearing surface", Run.Of("rate", Repository.Sample("tansy-weir")).Output, StringComparison.Ordinal);
    }

    // Members of 12, 12, √208, √208 and 8 ft at 10 plf: half of each to its ends, and a tenth on top.
    [Fact]
    public void Dead_WeightsOfMembers_GoHalfToEitherEndWithTheirAllowance()
    {
        Weigh().Write("loads.csv", "case,joint,up [kip]\nsnow,L1,-1\n");
        string[] lines = Lines(Run.Of("dead", bridge.Folder));
        double post = Math.Sqrt(208), total = 0.010 * (12 + 12 + post + post + 8);
        Assert.Contains(Invariant($"members, bare DC weight per length × length of each, half to either end {2 * total:F2} {total:F2} weights of members.csv, members as built"), lines);
        Assert.Contains(Invariant($"allowance for rivets, lacing and gussets DC 10% of the bare members {0.2 * total:F2} {0.1 * total:F2} allowance of bridge.toml"), lines);
        Assert.Contains(Invariant($"U1 top {1.1 * 0.010 * (post + 4):F2}"), lines);
        Assert.Contains(Invariant($"L1 bottom {1.1 * 0.010 * (12 + 4):F2}"), lines);
        Assert.Contains("Members weigh what they weighed as built: steel lost to rust is no relief.", lines);
        Assert.Contains("end post 2 10.0 28.84 0.29 L0U1 U1L2", lines);
    }

    [Theory]
    [InlineData("add", "Case DC: loads.csv adds to the take-off. Case DW: all from loads.csv.", "L1 bottom 2.30 0.50", "deck DC 50 plf 0.050 1.20 0.60")]
    [InlineData("replace", "Case DC: loads.csv replaces the take-off, whose items of it are shown and not counted. Case DW: all from loads.csv.", "L1 bottom 2.00 0.50", "deck DC 50 plf 0.050 1.20 0.60 not counted")]
    public void Dead_TakeOffAndLoads_SaysWhatLoadsDid(string loads, string said, string joint, string item)
    {
        bridge.Write("dead.csv", "item,case,line load [plf]\ndeck,DC,50\n").Append("bridge.toml", $"[dead]\nloads = \"{loads}\"\n");
        Run run = Run.Of("dead", bridge.Folder);
        string[] lines = Lines(run);
        Assert.Contains(said, lines);
        // 50 plf: half to each truss, half a panel of 12 ft to the ends and a whole one to the middle; 2 kip stand there already.
        Assert.Contains(joint, lines);
        Assert.Contains(item, lines);
        Assert.Equal(0, run.Status);
    }

    [Fact]
    public void Dead_LoadsAlone_SaysThatAllIsFromThere()
    {
        Run run = Run.Of("dead", bridge.Folder);
        Assert.Contains("All dead load is from loads.csv: members.csv gives no weights, and there is no dead.csv.", Lines(run));
        Assert.Contains("loads.csv DC joint loads on one truss, as given 8.00 4.00", Lines(run));
        Assert.Equal((0, ""), (run.Status, run.Error));
    }

    [Fact]
    public void Dead_NoDeadLoad_IsNoAnswer()
    {
        bridge.Write("loads.csv", "case,joint,up [kip]\nsnow,L1,-1\n");
        foreach (string format in (string[])["text", "markdown", "csv", "json"])
        {
            Assert.Equal(3, Run.Of("dead", bridge.Folder, "--format", format).Status);
        }

        Assert.Contains("No dead load is given.", Lines(Run.Of("dead", bridge.Folder)));
    }

    // A main of 100 plf, 3.5 ft right of the middle of trusses 14 ft apart: a quarter of it on the left truss.
    [Fact]
    public void Dead_OffCentre_ShowsBothTrussesByName()
    {
        OffCentre();
        string[] lines = Lines(Run.Of("dead", bridge.Folder));
        Assert.Contains("Dead load on the north truss: DC 4.0 kip, 0.167 klf; DW 0.6 kip, 0.025 klf. On the south truss: DC 4.0 kip, 0.167 klf; DW 1.8 kip, 0.075 klf (DC of loads.csv; DW of the take-off).", lines);
        Assert.Contains("main DW 100 plf, 3.5 ft right of the middle 0.100 2.40 0.60 1.80", lines);
        Assert.Contains("joint chord DC north [kip] DW north [kip] DC south [kip] DW south [kip]", lines);
        Assert.Contains("L1 bottom 2.00 0.30 2.00 0.90", lines);

        string[] csv = Run.Of("dead", bridge.Folder, "--format", "csv").Output.Split('\n');
        Assert.Contains("row,name,case,how,per length [klf],whole bridge [kip],left truss [kip],right truss [kip],counted,source", csv);
        using JsonDocument json = JsonDocument.Parse(Run.Of("dead", bridge.Folder, "--format", "json").Output);
        Assert.False(json.RootElement.GetProperty("trussesAlike").GetBoolean());
        Assert.Equal(["north", "south"], json.RootElement.GetProperty("totals").EnumerateArray().Select(t => t.GetProperty("truss").GetString()));
        Assert.Equal(1.8 * 4.4482216152605, json.RootElement.GetProperty("totals")[1].GetProperty("DW").GetDouble(), 1e-9);
    }

    [Theory]
    [InlineData("forces", "--case", "DW")]
    [InlineData("joints", "--case", "DW")]
    [InlineData("section", "--case", "DW", "--member", "L0L1")]
    [InlineData("roll", "--vehicle", "Type 3")]
    public void Run_OfOneTrussWhereTheyDiffer_SaysWhich(string command, params string[] options)
    {
        OffCentre();
        const string Left = "The dead loads of the two trusses differ: where they count, what stands here is for the north truss; --truss south shows the other.";
        const string Right = "The dead loads of the two trusses differ: where they count, what stands here is for the south truss; --truss north shows the other.";
        Assert.Contains(Left, Lines(Run.Of([command, bridge.Folder, .. options])));
        Assert.Contains(Right, Lines(Run.Of([command, bridge.Folder, .. options, "--truss", "south"])));
        Assert.Contains("# " + Left, Run.Of([command, bridge.Folder, .. options, "--format", "csv"]).Output, StringComparison.Ordinal);
        using JsonDocument json = JsonDocument.Parse(Run.Of([command, bridge.Folder, .. options, "--format", "json", "--truss", "south"]).Output);
        Assert.Equal("south", json.RootElement.GetProperty("truss").GetString());
    }

    [Theory]
    [InlineData("section", "--case", "DW", "--member", "L0L1")]
    [InlineData("roll", "--vehicle", "Type 3")]
    public void Picture_OfOneTrussWhereTheyDiffer_NamesItInItsTitle(string command, params string[] options)
    {
        OffCentre();
        string folder = Directory.CreateTempSubdirectory("span-picture-").FullName;
        try
        {
            string file = Path.Combine(folder, "picture.svg");
            Assert.Equal("", Run.Of([command, bridge.Folder, .. options, "--truss", "south", "--picture", file]).Error);
            Assert.Contains("Test bridge, south truss", File.ReadAllText(file), StringComparison.Ordinal);
        }
        finally
        {
            Directory.Delete(folder, recursive: true);
        }
    }

    // The hanger L1U1 holds what stands at L1: 0.3 kip on the north truss, 0.9 on the south one.
    [Fact]
    public void Forces_OfEitherTruss_AreItsOwn()
    {
        OffCentre();
        Assert.Contains("L1U1 hanger 0.30 tension", Lines(Run.Of("forces", bridge.Folder, "--case", "DW")));
        Assert.Contains("L1U1 hanger 0.90 tension", Lines(Run.Of("forces", bridge.Folder, "--case", "DW", "--truss", "south")));
        Assert.Equal("--truss \"sout\": the trusses are north and south. Did you mean \"south\"?\n", Run.Of("forces", bridge.Folder, "--case", "DW", "--truss", "sout").Error);
    }

    [Fact]
    public void Forces_OfTrussesThatAreAlike_SaysNothingOfOne()
    {
        Assert.DoesNotContain("differ", Run.Of("forces", bridge.Folder, "--case", "DC").Output, StringComparison.Ordinal);
        Assert.Equal(Run.Of("forces", bridge.Folder, "--case", "DC"), Run.Of("forces", bridge.Folder, "--case", "DC", "--truss", "right"));
    }

    [Fact]
    public void Explain_OfATakeOff_SaysWhereTheDeadForcesAreFrom()
    {
        Assert.Contains("of the take-off", Run.Of("explain", Repository.Sample("hollis-fork"), "--member", "L1U1", "--vehicle", "Type 3").Output, StringComparison.Ordinal);
        Assert.Contains("Dead load on one truss: DC 30.7 kip, 0.320 klf; DW 15.4 kip, 0.160 klf (of the take-off).", Lines(Run.Of("rate", Repository.Sample("hollis-fork"))));
    }

    private void OffCentre() => bridge.Replace("bridge.toml", "[deck]", "[deck]\ntruss_names = [\"north\", \"south\"]")
        .Write("loads.csv", "case,joint,up [kip]\nDC,L0,-1\nDC,L1,-2\nDC,L2,-1\n")
        .Write("dead.csv", "item,case,line load [plf],area load [psf],width [ft],centre [ft]\nmain,DW,100,,,3.5\nbare deck,DW,,0,12,\n");

    private BridgeOnDisk Weigh()
    {
        string[] members = BridgeOnDisk.Members.ReplaceLineEndings("\n").Split('\n', StringSplitOptions.RemoveEmptyEntries);
        return bridge.Write("members.csv", string.Concat(members.Select((m, i) => $"{m},{(i == 0 ? "weight [plf]" : "10")}\n"))).Append("bridge.toml", "[dead]\nallowance = 0.10\n");
    }

    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);

    // Lines with their runs of spaces as one.
    private static string[] Lines(Run run) => [.. run.Output.Split('\n').Select(l => string.Join(' ', l.Split(' ', StringSplitOptions.RemoveEmptyEntries)))];
}
