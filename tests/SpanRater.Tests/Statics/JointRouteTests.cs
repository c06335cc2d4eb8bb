using SpanRater.Tests.Learning;

namespace SpanRater.Tests;

/// <summary>The joint-by-joint route: its order, and that it stands on its own.</summary>
public class JointRouteTests
{
    [Fact]
    public void Order_KTruss_TakesOneJointAtATimeFromBothEnds()
    {
        Truss truss = new KTruss(8, 18, 28).Build();
        string[] order = [.. Route(truss).Order.Select(step => truss.Joints[Assert.Single(step)].Name)];

        // From the left alone the work stops at midspan, where U4 and L4 have three unknowns: the other end comes next.
        Assert.Equal("L0", order[0]);
        Assert.True(Array.IndexOf(order, "L8") < order.Length - 3, string.Join(' ', order));
        Assert.True(Array.IndexOf(order, "L8") > Array.IndexOf(order, "M2"), string.Join(' ', order));
    }

    [Fact]
    public void Steps_CompoundTruss_CutThroughThreeMembersWhereNoJointHasTwoUnknowns()
    {
        Truss truss = CompoundTrusses.Fink();
        RouteStep section = Assert.Single(Route(truss).Steps, s => s.Kind is StepKind.Section or StepKind.Group);
        Assert.Equal(StepKind.Section, section.Kind);
        Assert.Equal(3, section.Stages.Length);
        Assert.Contains(truss.FindMember("DE")!.Value, section.Stages.SelectMany(s => s.Forces));
    }

    [Fact]
    public void Solve_CompoundTruss_HasTheTieForceOfTheCutAtTheRidge()
    {
        // Cut through the ridge and the tie, moments about the ridge: 7 kN up at the support less the loads left of the cut.
        // Loads of 1 kN on P1, P2, P3, their mirror images, and 8 on the ridge: 7 up at each support.
        // Tie = (7·6 − 1·(4.5 + 3 + 1.5)) / 4 = 8.25 kN.
        Truss truss = CompoundTrusses.Fink();
        JointLoad[] loads = [.. "P1 P2 P3 R1 R2 R3".Split(' ').Select(j => new JointLoad(j, 0, -1)), new JointLoad("C", 0, -8)];
        Assert.True(DeterminateTruss.Of(truss).TryGet(out DeterminateTruss? system, out _));
        Assert.True(system.Solve(new LoadCase("roof", loads)).TryGet(out ForceSolution? solution, out _));

        var components = new double[2 * truss.Joints.Count];
        foreach (JointLoad load in loads)
        {
            components[(2 * truss.FindJoint(load.Joint)!.Value) + 1] = load.Up;
        }

        int tie = truss.FindMember("DE")!.Value;
        Assert.Equal(8.25, Route(truss).Solve(components)[tie], 1e-12);
        Assert.Equal(8.25, solution.MemberForces[tie], 1e-12);
    }

    [Fact]
    public void Elimination_MoreEquationsThanUnknowns_TakesThoseThatTellThemApart()
    {
        var system = Elimination.Of(new double[,] { { 1, 1 }, { 2, 2 }, { 1, -1 } })!;
        Assert.Contains(2, system.Rows);
        Assert.Equal([3, 1], system.Solve([.. system.Rows.Select(r => r switch { 0 => 4.0, 1 => 8.0, _ => 2.0 })]).Select(x => Math.Round(x, 12)));
    }

    [Fact]
    public void Elimination_EquationsThatSayTheSame_IsNone() =>
        Assert.Null(Elimination.Of(new double[,] { { 1, 1 }, { 2, 2 } }));

    private static JointRoute Route(Truss truss) => JointRoute.Of(truss, new EquilibriumSystem(truss))!;
}
