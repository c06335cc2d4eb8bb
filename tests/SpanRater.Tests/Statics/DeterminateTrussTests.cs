namespace SpanRater.Tests.Statics;

public class DeterminateTrussTests
{
    // A (0, 0), B (8, 0), C (4, 3); 12 down at C. Reactions 6 each; each rafter rises 3 on 4: 6 · 5/3 = 10; the tie 10 · 4/5 = 8.
    [Fact]
    public void Solve_TriangleLoadedAtItsApex_ForcesAreThoseOfTheHandSolution()
    {
        ForceSolution solution = Solve(Support.Roller(), new JointLoad("C", 0, -12));

        Assert.Equal([8, -10, -10], solution.MemberForces.Select(f => Math.Round(f, 12)));
        Assert.Equal([(0.0, 6.0), (0.0, 6.0)], solution.Reactions.Select(r => (Math.Round(r.Right, 12) + 0.0, Math.Round(r.Up, 12))));
        Assert.InRange(solution.Residual, 0, 1e-14);
    }

    // The pin's own load goes to the ground; a load to the right at the pin is met by the pin alone.
    [Fact]
    public void Solve_LoadOnThePin_MembersStayIdle()
    {
        ForceSolution solution = Solve(Support.Roller(), new JointLoad("A", 5, -7));

        Assert.Equal([0, 0, 0], solution.MemberForces);
        Assert.Equal((-5.0, 7.0), (solution.Reactions[0].Right, solution.Reactions[0].Up));
    }

    // 10 to the right at C: moments about A give B up 10 · 3 / 8 = 3.75, A up −3.75, A right −10.
    [Fact]
    public void Solve_SidewaysLoad_PinHoldsItAndTheRollerItsMoment()
    {
        ForceSolution solution = Solve(Support.Roller(), new JointLoad("C", 10, 0));

        Assert.Equal(-10, solution.Reactions[0].Right, 1e-12);
        Assert.Equal(-3.75, solution.Reactions[0].Up, 1e-12);
        Assert.Equal(3.75, solution.Reactions[1].Up, 1e-12);
        Assert.Equal(-3.75 / 0.6, solution.MemberForces[1], 1e-12);
        Assert.Equal(3.75 / 0.6, solution.MemberForces[2], 1e-12);
    }

    // Normal at 135 degrees: the roller pushes up and to the left alike. Moments about A: 8 · up = 12 · 4, so up = 6 and
    // right = −6; the pin takes 6 up and 6 to the right. Tie at A: 6 right of the pin and 8 left of the rafter leave 2.
    [Fact]
    public void Solve_InclinedRoller_ReactionFollowsTheNormal()
    {
        ForceSolution solution = Solve(Support.Roller(135), new JointLoad("C", 0, -12));

        Assert.Equal((-6.0, 6.0), (Math.Round(solution.Reactions[1].Right, 12), Math.Round(solution.Reactions[1].Up, 12)));
        Assert.Equal((6.0, 6.0), (Math.Round(solution.Reactions[0].Right, 12), Math.Round(solution.Reactions[0].Up, 12)));
        Assert.Equal(2, solution.MemberForces[0], 1e-12);
        Assert.Equal(-10, solution.MemberForces[1], 1e-12);
    }

    // Two pins hold C without a tie.
    [Fact]
    public void Solve_TwoPinsWithoutATie_RaftersThrustAgainstBoth()
    {
        Truss truss = Truss.Create(
            [new("A", 0, 0, Support.Pin), new("B", 8, 0, Support.Pin), new("C", 4, 3)],
            [new("BC", "B", "C"), new("CA", "C", "A")]).Truss!;
        Assert.True(DeterminateTruss.Of(truss).TryGet(out DeterminateTruss? system, out _));
        Assert.True(system.Solve(new LoadCase("apex", [new JointLoad("C", 0, -12)])).TryGet(out ForceSolution? solution, out _));

        Assert.Equal(8, solution.Reactions[0].Right, 1e-12);
        Assert.Equal(-8, solution.Reactions[1].Right, 1e-12);
        Assert.Equal(-10, solution.MemberForces[0], 1e-12);
    }

    [Fact]
    public void Solve_UnknownJoint_NamesCaseAndJoint()
    {
        Assert.True(DeterminateTruss.Of(Triangle(Support.Roller())).TryGet(out DeterminateTruss? system, out _));

        var e = Assert.Throws<ArgumentException>("loads", () => system.Solve(new LoadCase("DC", [new JointLoad("Z", 0, -1)])));
        Assert.Contains("Case \"DC\" loads joint \"Z\"", e.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void Of_Redundant_IsRefusedAsRedundant() =>
        Assert.IsType<Refusal.Redundant>(DeterminateTruss.Of(Triangle(Support.Pin)).Refusal);

    [Fact]
    public void Of_RollerThatPushesAlongTheLineToThePin_IsRefusedAsAMechanism() =>
        Assert.IsType<Refusal.Mechanism>(DeterminateTruss.Of(Triangle(Support.Roller(0))).Refusal);

    [Fact]
    public void Of_CrossedRods_NamesThem()
    {
        var refusal = Assert.IsType<Refusal.RodsThatOnlyPull>(DeterminateTruss.Of(new QueenPostTruss(4, 3, CentrePanel.CrossedRods).Build()).Refusal);

        Assert.Equal(["U1L2", "L1U2"], refusal.Members);
    }

    private static Truss Triangle(Support right) => Truss.Create(
        [new("A", 0, 0, Support.Pin), new("B", 8, 0, right), new("C", 4, 3)],
        [new("AB", "A", "B"), new("BC", "B", "C"), new("CA", "C", "A")]).Truss!;

    private static ForceSolution Solve(Support right, params JointLoad[] loads)
    {
        Assert.True(DeterminateTruss.Of(Triangle(right)).TryGet(out DeterminateTruss? system, out _));
        Assert.True(system.Solve(new LoadCase("case", loads)).TryGet(out ForceSolution? solution, out _));
        return solution;
    }
}
