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
        Truss truss = Fink();
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
        Truss truss = Fink();
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

    // A Fink roof truss of 12 m: two simple trusses that share the ridge C and a tie from D to E.
    private static Truss Fink()
    {
        var joints = new List<Joint>
        {
            new("A", 0, 0, Support.Pin), new("P1", 1.5, 1), new("P2", 3, 2), new("P3", 4.5, 3), new("Q1", 2, 0), new("D", 4, 0), new("Q2", 5, 2), new("C", 6, 4),
            new("B", 12, 0, Support.Roller()), new("R1", 10.5, 1), new("R2", 9, 2), new("R3", 7.5, 3), new("S1", 10, 0), new("E", 8, 0), new("S2", 7, 2),
        };
        string[] half = ["A-P1", "P1-P2", "P2-P3", "P3-C", "A-Q1", "Q1-D", "P1-Q1", "Q1-P2", "P2-D", "P2-Q2", "P3-Q2", "D-Q2", "Q2-C"];
        Member[] members =
        [
            .. half.Select(m => Between(m)),
            .. half.Select(m => Between(m.Replace('A', 'B').Replace('P', 'R').Replace('Q', 'S').Replace('D', 'E'))),
            Between("D-E"),
        ];
        return Truss.Create(joints, members).Truss!;
    }

    private static Member Between(string ends)
    {
        string[] names = ends.Split('-');
        return new Member(names[0] + names[1], names[0], names[1]);
    }
}
