using System.Text.Json;
using SpanRater.Files;
using SpanRater.Reports;
using SpanRater.Tests.CommandLine;
using SpanRater.Tests.Learning;

namespace SpanRater.Tests.Reports;

/// <summary>Every kind of sentence of a worked solution, word for word.</summary>
public class WorkedSolutionPageTests
{
    private static readonly string Garrow = Repository.Sample("garrow-landing");

    private static readonly Lazy<string> KTruss = new(() => Run.Of("joints", Garrow, "--case", "DC").Output);

    [Theory]
    [InlineData("41 members + 3 reactions = 44, equal to 2 × 22 joints = 44; rank 44. As many equations as unknown forces, and none says the same as others: every force follows from equilibrium.")]
    [InlineData("Step 1. Reactions, from the whole truss")]
    [InlineData("Unknown: L8 up, L0 up and L0 right. Load: 6.480 kip down at L0 and L8; 12.960 kip down at L1, L2, L3, L4, L5, L6 and L7.")]
    [InlineData("Moments about L0 come first: L0 up and L0 right pass through it and have no arm, so L8 up stands alone.")]
    [InlineData("    (L8 up) = 7464.960 / 144 = 51.840 kip")]
    [InlineData("ΣY: of the unknown forces only L0 up has an upright part; L0 right lies level.")]
    [InlineData("ΣX: L0 right is the only force not known yet.")]
    [InlineData("Unknown: L0U1 and L0L1. Known: L0 right 0.000 kip, L0 up 51.840 kip. Load: 6.480 kip down.")]
    [InlineData("    ΣY = 0:  0.84118·L0U1 + (L0 up) − 6.480 = 0")]
    [InlineData("    0.84118·L0U1 + 51.840 − 6.480 = 0")]
    [InlineData("    L0U1 = −45.360 / 0.84118 = −53.924 kip")]
    [InlineData("L0U1: 53.924 kip compression.")]
    [InlineData("M1 waits: three unknown forces: U1M1, M1U2 and M1L2.")]
    [InlineData("U4 waits: four unknown forces: U4U5, U4L4, M3U4 and M5U4.")]
    [InlineData("Neither ΣX nor ΣY holds one unknown force alone, so the axes are turned: in the sum square to M1U2, M1U2 has no part, and M1L2 stands alone.")]
    [InlineData("Factors square to M1U2, which lies 0.78935 right and 0.61394 up: 0.78935 times the part of a force up, less 0.61394 times its part to the right:")]
    [InlineData("  - M1L2: 0.78935·(−0.61394) − 0.61394·0.78935 = −0.96923")]
    [InlineData("No joint beside the finished ones can be solved yet, so the work goes on from the other end, at L8.")]
    [InlineData("ΣX comes first: of the unknown forces only M5L4 has a part to the right or left; U4L4 stands upright.")]
    [InlineData("Of the 44 equations of the joints three were not needed, since the whole truss gave the reactions. They hold no unknown force any more, and must come to zero by themselves:")]
    [InlineData("Order: reactions, L0, L1, U1, M1, L2, U2, M2, L3, U3, M3, L8, L7, U7, M7, L6, U6, M6, L5, L4, M5, U5.")]
    public void KTruss_UnderItsDeadLoad_SaysEachStepInWords(string line) => Assert.Contains(line, KTruss.Value.Split('\n'));

    [Fact]
    public void KTruss_InMarkdown_NamesTheForcesOfATurnedSum()
    {
        string markdown = Run.Of("joints", Garrow, "--case", "DC", "--format", "markdown").Output;
        Assert.Contains("$$\\sum F_{\\perp \\mathrm{M1U2}} = 0:\\quad 0.78935 \\cdot \\mathrm{U1M1}", markdown, StringComparison.Ordinal);
    }

    [Fact]
    public void CompoundTruss_SaysThatItTakesASection()
    {
        using BridgeOnDisk disk = FinkOnDisk.Make();
        string[] lines = Run.Of("joints", disk.Folder, "--case", "roof").Output.Split('\n');
        Assert.Contains("No joint is left whose unknown forces can all be found: three unknown forces at P2, P3, D, R2, R3 and E; four unknown forces at Q2, C and S2.", lines);
        Assert.Contains("So the truss is cut in two through DE, Q2C and P3C, and the part with A, P1, P2, P3, Q1, D and Q2 is taken as one free body: members within it do not appear.", lines);
        Assert.Contains("Moments about C come first: Q2C and P3C pass through it and have no arm, so DE stands alone.", lines);
        Assert.Contains("    DE = 33.000 / 4 = 8.250 kN", lines);
        Assert.Contains("Of the 30 equations of the joints six were not needed, since the whole truss gave the reactions and a section gave members. They hold no unknown force any more, and must come to zero by themselves:", lines);
    }

    [Fact]
    public void ThreeUnknownsTwoInOneLine_SaysWhichIsFound()
    {
        using BridgeOnDisk disk = FinkOnDisk.Make(CompoundTrusses.Hexagon(0), "case,joint,up [kN],right [kN]\nroof,D,-2,1\n");
        string[] lines = Run.Of("joints", disk.Folder, "--case", "roof").Output.Split('\n');
        Assert.Contains("At D all unknown forces but AD lie in one line, so that one can be found; the others wait.", lines);
        Assert.Contains("Neither ΣX nor ΣY holds one unknown force alone, so the axes are turned: in the sum square to CD, CD and DE have no part, and AD stands alone.", lines);
        Assert.Contains("Unknown: AD, CD and DE. Load: 2.0000 kN down; 1.0000 kN to the right.", lines);

        // The loads are in the turned sum, and so is where their factors come from.
        int at = Array.IndexOf(lines, "Unknown: AD, CD and DE. Load: 2.0000 kN down; 1.0000 kN to the right.");
        string sum = lines.Skip(at).First(l => l.Contains("Σ⊥CD = 0:", StringComparison.Ordinal));
        foreach ((string load, string shown) in ((string, string)[])[("  - load down: ", "·2.0000"), ("  - load to the right: ", "·1.0000")])
        {
            string factor = Assert.Single(lines.Skip(at).TakeWhile(l => l != sum), l => l.StartsWith(load, StringComparison.Ordinal)).Split(" = ")[1];
            Assert.Contains(factor.TrimStart('−') + shown, sum, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void NeitherJointNorSection_SaysThatJointsAreSolvedTogether()
    {
        using BridgeOnDisk disk = FinkOnDisk.Make(CompoundTrusses.Hexagon(0.6), "case,joint,up [kN]\nroof,D,-2\n");
        string output = Run.Of("joints", disk.Folder, "--case", "roof").Output;
        Assert.Contains("No cut through three unknown forces helps either, so the joints ", output, StringComparison.Ordinal);
        Assert.Contains("are solved together: their equations hold as many unknown forces as are taken from them.", output, StringComparison.Ordinal);
        Assert.Contains("Solved together:", output, StringComparison.Ordinal);
        Assert.Contains(" together\n", output, StringComparison.Ordinal);
    }

    [Fact]
    public void RodThatStaysSlack_IsLeftOutAndSaidSo()
    {
        using BridgeOnDisk disk = FinkOnDisk.Make(WorkedSolutionTests.CrossedPanel(), "case,joint,up [kN]\nroof,L2,-2\n");
        disk.Write("members.csv", "member,from,to,tension only\n" + string.Concat(WorkedSolutionTests.CrossedPanel().Members.Select(m => $"{m.Name},{m.From},{m.To},{(m.TensionOnly ? "yes" : "")}\n")));
        Assert.Contains("counter only pulls and stays slack under this load: the truss without it is worked. Under another load others may pull.", Run.Of("joints", disk.Folder, "--case", "roof").Output.Split('\n'));
        Run section = Run.Of("section", disk.Folder, "--case", "roof", "--member", "counter");
        Assert.Equal(3, section.Status);
        Assert.Contains("counter only pulls, and stays slack under this load: it carries nothing.", section.Output.Split('\n'));
        using var json = JsonDocument.Parse(Run.Of("joints", disk.Folder, "--case", "roof", "--format", "json").Output);
        Assert.Equal("counter", Assert.Single(json.RootElement.GetProperty("slack").EnumerateArray()).GetString());
    }

    [Fact]
    public void ZeroMembers_UnderOneLoad_AreSeenAtAGlanceAndMayBrace()
    {
        string output = Run.Of("joints", Repository.Sample("tansy-weir"), "--unit-load", "L3").Output;
        Assert.Contains("Zero at a glance under this load:\n  - L1U1: three bars meet at L1, the other two in one line, and no load acts there\n", output, StringComparison.Ordinal);
        Assert.Contains("A member without force may still brace others against buckling.", output, StringComparison.Ordinal);
        Assert.Contains("Seen without an equation: L1U1: three bars meet at L1, the other two in one line, and no load acts there.", output, StringComparison.Ordinal);
        Assert.Contains("L1U1 carries nothing.", output, StringComparison.Ordinal);
    }

    [Fact]
    public void Influence_OfAWarren_ListsTheMembersThatNoDeckLoadStresses() => Assert.Contains(
        "Zero under every panel-point load; such a member may still brace others:\n  - L2U2: three bars meet at U2, the other two in one line, and no load acts there\n",
        Run.Of("influence", Repository.Sample("tansy-weir")).Output,
        StringComparison.Ordinal);

    public static TheoryData<ZeroRule, bool, string> Rules() => new()
    {
        { ZeroRule.OneBar, true, "L0L1: with L0U1 zero, it is the only bar left at L0, and no load acts there" },
        { ZeroRule.TwoBars, false, "L0L1: two bars meet at L0, not in one line, and no load acts there" },
        { ZeroRule.TwoBars, true, "L0L1: with L0U1 zero, two bars that are left meet at L0, not in one line, and no load acts there" },
        { ZeroRule.TwoBarsLoadInLine, false, "L0L1: two bars meet at L0, and the load lies in line with the other one" },
        { ZeroRule.ThreeBars, false, "L0L1: three bars meet at L0, the other two in one line, and no load acts there" },
    };

    [Theory]
    [MemberData(nameof(Rules))]
    public void ZeroMember_OfEachRule_HasItsSentence(ZeroRule rule, bool after, string expected)
    {
        Truss truss = new KingPostTruss(4, 3).Build();
        int joint = truss.FindJoint("L0")!.Value;
        Assert.Equal(expected, ZeroMemberWording.Rule(truss, new ZeroMember(truss.FindMember("L0L1")!.Value, joint, rule, after ? [truss.FindMember("L0U1")!.Value] : [])));
    }

    [Fact]
    public void EveryRule_HasItsSentenceHere() => Assert.Equal(Enum.GetValues<ZeroRule>(), Rules().Select(r => r.Data.Item1).Distinct().Order());

    [Fact]
    public void WaitingJoint_WithTwoForcesInOneLine_SaysSo()
    {
        WorkedSolution worked = WorkedClaims.Worked(new KingPostTruss(4, 3).Build(), new LoadCase("one", [new JointLoad("L1", 0, -1)]));
        Truss truss = worked.Truss;
        int[] chords = [truss.FindMember("L0L1")!.Value, truss.FindMember("L1L2")!.Value];
        WorkedStep step = worked.Steps[1] with { Waiting = [new WaitingJoint(truss.FindJoint("L1")!.Value, chords)] };
        Assert.Equal(["L1 waits: its two unknown forces lie in one line: L0L1 and L1L2."], StepWording.Before(worked, step));
    }

    [Fact]
    public void Reaction_ThatPullsDown_SaysSo()
    {
        WorkedSolution worked = WorkedClaims.Worked(new KingPostTruss(4, 3).Build(), new LoadCase("one", [new JointLoad("L1", 0, 1000)]));
        Assert.Equal("L0 up: −0.50000 kN (the support pulls the other way).", StepWording.Result(worked, worked.Forces.Count - 2, -500, new ForceNotation(DisplayUnits.Si, false, 500)));
    }

    [Fact]
    public void Json_OfTheKTruss_HasStepsWaitingJointsEquationsAndWhatIsLeftOver()
    {
        using var json = JsonDocument.Parse(Run.Of("joints", Garrow, "--case", "DC", "--format", "json").Output);
        JsonElement root = json.RootElement;
        Assert.Equal("DC", root.GetProperty("case").GetString());
        Assert.Equal(JsonValueKind.Null, root.GetProperty("unitLoad").ValueKind);
        Assert.Equal(44, root.GetProperty("count").GetProperty("rank").GetInt32());
        JsonElement[] steps = [.. root.GetProperty("steps").EnumerateArray()];
        Assert.Equal(22, steps.Length);
        Assert.Equal("wholeTruss", steps[0].GetProperty("kind").GetString());
        Assert.True(steps[11].GetProperty("afresh").GetBoolean());
        Assert.Equal("U4", steps[11].GetProperty("waiting")[0].GetProperty("joint").GetString());
        Assert.Equal(3, steps[11].GetProperty("waiting")[0].GetProperty("unknown").GetArrayLength());
        Assert.Equal(44, steps.Sum(s => s.GetProperty("results").GetArrayLength()));
        Assert.Equal(3, root.GetProperty("leftOver").GetArrayLength());
        Assert.Equal("M1", root.GetProperty("order")[4].GetString());

        // Each equation closes with the values that stand beside it.
        foreach (JsonElement equation in steps.SelectMany(s => s.GetProperty("equations").EnumerateArray()).Concat(root.GetProperty("leftOver").EnumerateArray()))
        {
            double sum = equation.GetProperty("terms").EnumerateArray().Sum(t => t.GetProperty("coefficient").GetDouble() * t.GetProperty("value").GetDouble());
            Assert.Equal(0, sum, 1e-9 * 250 * (equation.GetProperty("sum").GetString() == "moment" ? 44 : 1));
        }

        JsonElement forces = JsonDocument.Parse(Run.Of("forces", Garrow, "--case", "DC", "--format", "json").Output).RootElement.GetProperty("members");
        Dictionary<string, double> results = steps.SelectMany(s => s.GetProperty("results").EnumerateArray()).ToDictionary(r => r.GetProperty("name").GetString()!, r => r.GetProperty("force").GetDouble());
        Assert.All(forces.EnumerateArray(), f => Assert.Equal(f.GetProperty("force").GetDouble(), results[f.GetProperty("member").GetString()!], 1e-9));
    }

    [Fact]
    public void Json_OfAUnitLoad_IsWithoutUnit()
    {
        using var json = JsonDocument.Parse(Run.Of("joints", Garrow, "--unit-load", "L4", "--format", "json").Output);
        Assert.Equal("L4", json.RootElement.GetProperty("unitLoad").GetString());
        Assert.Equal([0.0, 0.5, 0.5], json.RootElement.GetProperty("reactions").EnumerateArray().Select(r => Math.Round(r.GetProperty("force").GetDouble(), 12)));
    }

    [Fact]
    public void Csv_HasOneRowAForce()
    {
        string[] lines = Run.Of("joints", Garrow, "--case", "DC", "--format", "csv").Output.TrimEnd('\n').Split('\n');
        Assert.Equal("step,joint,name,force [kip],sense", lines[0]);
        Assert.Equal(45, lines.Length);
        Assert.StartsWith("1,whole truss,L8 up,51.84", lines[1], StringComparison.Ordinal);
        Assert.Contains(lines, l => l.StartsWith("2,L0,L0U1,-53.92", StringComparison.Ordinal) && l.EndsWith(",compression", StringComparison.Ordinal));
    }

    [Fact]
    public void Markdown_HasEquationsInTex()
    {
        string output = Run.Of("joints", Garrow, "--case", "DC", "--format", "markdown").Output;
        Assert.Contains("$$\\mathrm{L0U1} = \\frac{-45.360}{0.84118} = -53.924\\ \\mathrm{kip}$$", output, StringComparison.Ordinal);
        Assert.Contains("$$\\sum Y = 0:\\quad 0.84118 \\cdot \\mathrm{L0U1} + \\mathrm{(L0\\ up)} - 6.480 = 0$$", output, StringComparison.Ordinal);
    }
}
