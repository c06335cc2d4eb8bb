namespace SpanRater.Tests.Published.RedundantTrusses;

/// <summary>
/// A square of bars with two diagonals, all of one section. Source: S. P. Timoshenko and D. H. Young, Theory of Structures,
/// on trusses with one redundant bar, from memory; the derivation stands beside each.
/// </summary>
public class SquarePanelTests
{
    private const double Side = 3, Load = 6e4;

    // On two pins, P/2 to the right at each top joint. Turned about its middle line the load changes sign, so the diagonals carry
    // the shear in equal parts, P/2 each across, which is P/√2 along; the uprights ± P/2, the top bar nothing.
    [Fact]
    public void Solve_ASquareOnTwoPinsPushedSideways_SharesTheShearBetweenItsDiagonals()
    {
        Truss truss = Create(
            [new Joint("A", 0, 0, Support.Pin), new Joint("B", Side, 0, Support.Pin), new Joint("C", Side, Side), new Joint("D", 0, Side)],
            ["AD", "BC", "DC", "AC", "BD"]);

        IReadOnlyList<double> forces = Forces(truss, new JointLoad("C", Load / 2, 0), new JointLoad("D", Load / 2, 0));

        AssertForces(forces, Load / 2, -Load / 2, 0, Load / Math.Sqrt(2), -Load / Math.Sqrt(2));
    }

    // Stood on its corner and pressed from above. With s in the sides: upright diagonal V = -P - √2 s, level diagonal H = -√2 s;
    // the self-stress (sides 1, diagonals -√2) does no work where 4 s = 2 (V + H), so that V = -P/√2, H = P/(2 + √2).
    [Fact]
    public void Solve_ASquareOnItsCorner_PressesTheUprightDiagonalByTheLoadOverRootTwo()
    {
        double half = Side / Math.Sqrt(2);
        Truss truss = Create(
            [new Joint("S", 0, -half, Support.Pin), new Joint("E", half, 0), new Joint("N", 0, half, Support.Roller(0)), new Joint("W", -half, 0)],
            ["SE", "EN", "NW", "WS", "SN", "WE"]);

        IReadOnlyList<double> forces = Forces(truss, new JointLoad("N", 0, -Load));

        double side = -Load / (2 * (1 + Math.Sqrt(2)));
        AssertForces(forces, side, side, side, side, -Load / Math.Sqrt(2), Load / (2 + Math.Sqrt(2)));
    }

    private static void AssertForces(IReadOnlyList<double> actual, params double[] expected) =>
        Assert.All(expected.Zip(actual), pair => Assert.Equal(pair.First, pair.Second, 1e-9 * Load));

    private static Truss Create(Joint[] joints, string[] members) =>
        Truss.Create(joints, [.. members.Select(m => new Member(m, m[..1], m[1..], Area: 1.5e-3))]).Truss!;

    private static IReadOnlyList<double> Forces(Truss truss, params JointLoad[] loads)
    {
        Assert.True(LinearTruss.Of(truss).Value!.Solve(new LoadCase("load", loads)).TryGet(out ForceSolution? solution, out Refusal? refusal), $"{refusal}");
        return solution.MemberForces;
    }
}
