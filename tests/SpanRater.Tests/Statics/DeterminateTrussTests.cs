namespace SpanRater.Tests;

public class DeterminateTrussTests
{
    // A triangle of base 8 m and height 3 m: sides 5 m, so that sine and cosine are 0.6 and 0.8.
    private static readonly Member[] Sides = [new("AB", "A", "B"), new("BC", "B", "C"), new("CA", "C", "A")];

    [Fact]
    public void Solve_TriangleWithWeightAtTheTop_MatchesTheHandSolution()
    {
        ForceSolution solution = Triangle(Support.Roller()).Solve(new LoadCase("DC", [new("C", 0, -6)])).Value!;
        AssertClose([4, -5, -5], solution.MemberForces);
        Assert.Equal([0, 1], solution.Reactions.Select(r => r.Joint));
        AssertClose([0, 3, 0, 3], [.. solution.Reactions.SelectMany(r => (double[])[r.Right, r.Up])]);
        Assert.InRange(solution.Residual, 0, 1e-12);
    }

    [Fact]
    public void Solve_SidewaysLoad_PinHoldsItAndRollerTakesTheMoment()
    {
        ForceSolution solution = Triangle(Support.Roller()).Solve(new LoadCase("wind", [new("C", 8, 0)])).Value!;
        AssertClose([-8, -3, 0, 3], [.. solution.Reactions.SelectMany(r => (double[])[r.Right, r.Up])]);
        AssertClose([4, -5, 5], solution.MemberForces);
    }

    // Normal at 135 deg: moments about the pin give N sin 135 = 3, so the roller pushes left by 3 and the pin right by 3.
    [Fact]
    public void Solve_InclinedRoller_ReactionStandsAlongItsNormal()
    {
        ForceSolution solution = Triangle(Support.Roller(135)).Solve(new LoadCase("DC", [new("C", 0, -6)])).Value!;
        AssertClose([3, 3, -3, 3], [.. solution.Reactions.SelectMany(r => (double[])[r.Right, r.Up])]);
        AssertClose([1, -5, -5], solution.MemberForces);
    }

    [Fact]
    public void Solve_SeveralLoadsOnAJoint_AddUp()
    {
        DeterminateTruss system = Triangle(Support.Roller());
        ForceSolution twice = system.Solve(new LoadCase("a", [new("C", 0, -4), new("C", 0, -2)])).Value!;
        AssertClose([4, -5, -5], twice.MemberForces);
    }

    [Fact]
    public void Solve_NoLoad_IsAllZero()
    {
        ForceSolution solution = Triangle(Support.Roller()).Solve(new LoadCase("none", [])).Value!;
        Assert.Equal([0.0, 0.0, 0.0], solution.MemberForces);
        Assert.Equal(0, solution.Residual);
    }

    [Fact]
    public void Solve_UnknownJoint_ThrowsWithCaseAndJoint()
    {
        var error = Assert.Throws<ArgumentException>(() => Triangle(Support.Roller()).Solve(new LoadCase("DC", [new("Q", 0, -1)])));
        Assert.Equal("loads", error.ParamName);
        Assert.Contains("Case \"DC\" names joint \"Q\", which the truss does not have.", error.Message, StringComparison.Ordinal);
    }

    [Fact]
    public void SolveUnitLoads_Triangle_OneSolutionAPanelPoint()
    {
        IReadOnlyList<Outcome<ForceSolution>> solutions = Triangle(Support.Roller()).SolveUnitLoads();
        Assert.Equal(3, solutions.Count);
        AssertClose([2.0 / 3, -5.0 / 6, -5.0 / 6], solutions[1].Value!.MemberForces);
    }

    [Fact]
    public void Of_RollerWhoseNormalPassesThroughThePin_IsAMechanism()
    {
        Truss truss = Make(Support.Roller(0), Sides);
        var refusal = Assert.IsType<Refusal.Mechanism>(DeterminateTruss.Of(truss).Refusal);
        Assert.Equal([1, 2], refusal.Stability.MovingJoints);
    }

    [Fact]
    public void Of_TwoPins_IsRedundantInTheBottomChord()
    {
        var refusal = Assert.IsType<Refusal.Redundant>(DeterminateTruss.Of(Make(Support.Pin, Sides)).Refusal);
        Assert.Equal([0], refusal.Stability.StressedMembers);
    }

    [Fact]
    public void Of_MemberThatOnlyPulls_IsRefusedByName()
    {
        Truss truss = Make(Support.Roller(), [Sides[0] with { TensionOnly = true }, Sides[1], Sides[2]]);
        Assert.Equal(["AB"], Assert.IsType<Refusal.RodsThatOnlyPull>(DeterminateTruss.Of(truss).Refusal).Members);
    }

    private static Truss Make(Support atB, Member[] members) =>
        Truss.Create([new("A", 0, 0, Support.Pin, true), new("B", 8, 0, atB, true), new("C", 4, 3, null, true)], members).Truss!;

    private static DeterminateTruss Triangle(Support atB) => DeterminateTruss.Of(Make(atB, Sides)).Value!;

    private static void AssertClose(double[] hand, IReadOnlyList<double> found)
    {
        Assert.Equal(hand.Length, found.Count);
        for (int i = 0; i < hand.Length; i++)
        {
            Assert.Equal(hand[i], found[i], 1e-12);
        }
    }
}
