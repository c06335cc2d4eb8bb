using SpanRater.Files;
using SpanRater.Reports;

namespace SpanRater.Tests.Learning;

/// <summary>The displacements that tell a learner where the ordinates of a redundant truss come from, against the forces that close its gaps: two independent routes.</summary>
public sealed class UnitStretchesTests
{
    private static readonly Truss Pratt = new PrattTruss(6, 5, 6).Build();

    // The panel L1L2U2U1 has both diagonals: only its six members are stressed by one another, and need an area.
    private static readonly string[] Stressed = ["L1L2", "U1U2", "U1L1", "U2L2", "U1L2", "L1U2"];

    private static readonly Truss Crossed = Truss.Create(
        Pratt.Joints,
        [.. Pratt.Members.Append(new Member("L1U2", "L1", "U2")).Select((m, i) => m with { Area = Stressed.Contains(m.Name) ? 0.001 * (i + 1) : null })]).Truss!;

    [Fact]
    public void Of_RedundantTruss_StretchTimesStiffnessIsTheOrdinateOfEveryMember()
    {
        InfluenceLines lines = InfluenceLines.Of(Crossed).Value!;
        for (int p = 0; p < Crossed.PanelPoints.Count; p++)
        {
            UnitStretches stretches = UnitStretches.Of(Crossed, Crossed.PanelPoints[p], []).Value!;
            for (int m = 0; m < Crossed.Members.Count; m++)
            {
                Assert.Equal(lines.Members[m].Line.Ordinates[p], stretches.Members[m].Force, 1e-9);
                Assert.Equal(!Stressed.Contains(Crossed.Members[m].Name), stretches.Members[m].IsStandIn);
            }
        }
    }

    [Fact]
    public void Of_Mechanism_IsRefused()
    {
        Truss swaying = Truss.Create(Pratt.Joints, [.. Pratt.Members.Where(m => m.Name != "U1L2")]).Truss!;
        Assert.IsType<Refusal.Mechanism>(UnitStretches.Of(swaying, swaying.PanelPoints[1], []).Refusal);
    }

    [Fact]
    public void OrdinateSet_OfARedundantTruss_ShowsTheOrdinatesOfItsLinesByStretchAndStiffness()
    {
        InfluenceLines lines = InfluenceLines.Of(Crossed).Value!;
        ReportPart.Fold[] folds = [.. new OrdinateSet(Crossed, [], "unit", DisplayUnits.Si).Opened("all").Parts.OfType<ReportPart.Fold>()];

        Assert.Equal(Crossed.PanelPoints.Count, folds.Length);
        for (int p = 0; p < folds.Length; p++)
        {
            ResultTable table = folds[p].Parts.OfType<ReportPart.Said>().SelectMany(s => s.Blocks).OfType<ResultBlock.Grid>().Last().Content;
            Assert.Equal(Crossed.Members.Select(m => m.Name), table.Rows.Select(r => (string)r[0]!));
            Assert.All(table.Rows.Zip(lines.Members), r => Assert.Equal(r.Second.Line.Ordinates[p], (double)r.First[^1]!, 1e-9));
        }
    }

    [Fact]
    public void WorkedSolution_OfSet_LeavesOutTheMembersNamed_AndGivesTheOrdinatesOfThatSet()
    {
        Truss rods = Truss.Create(Crossed.Joints, [.. Crossed.Members.Select(m => m with { TensionOnly = m.Name is "U1L2" or "L1U2" })]).Truss!;
        int left = rods.Members.ToList().FindIndex(m => m.Name == "U1L2");
        InfluenceLines lines = InfluenceLines.Of(Truss.Create(Pratt.Joints, [.. Crossed.Members.Where(m => m.Name != "U1L2").Select(m => m with { Area = null })]).Truss!).Value!;
        for (int p = 0; p < rods.PanelPoints.Count; p++)
        {
            var load = new LoadCase("unit", [new JointLoad(rods.Joints[rods.PanelPoints[p]].Name, 0, -1)]);
            WorkedSolution worked = WorkedSolution.OfSet(rods, load, [left]).Value!;
            Assert.Equal(["U1L2"], worked.Slack);
            Assert.All(worked.Truss.Members.Select((m, i) => (m.Name, worked.Forces[i])), f => Assert.Equal(lines.Members.Single(l => l.Name == f.Name).Line.Ordinates[p], f.Item2, 1e-9));
        }

        Assert.IsType<Refusal.Redundant>(WorkedSolution.OfSet(rods, new LoadCase("none", []), []).Refusal);
    }
}
