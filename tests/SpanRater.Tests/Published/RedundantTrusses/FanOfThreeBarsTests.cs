namespace SpanRater.Tests.Published.RedundantTrusses;

/// <summary>
/// Three bars of one section that meet in a loaded joint, the middle one upright, the others at an angle α to it: the first
/// redundant truss of the textbooks. Source: S. Timoshenko, Strength of Materials, part I, on statically indeterminate
/// problems in tension and compression, from memory: middle bar P/(1 + 2 cos³α), the others P cos²α/(1 + 2 cos³α).
/// </summary>
public class FanOfThreeBarsTests
{
    private const double Length = 4, Area = 2e-3, Load = 9e4;

    [Theory]
    [InlineData(15)]
    [InlineData(30)]
    [InlineData(45)]
    [InlineData(60)]
    public void Solve_ALoadOnTheJoint_IsDividedByTheCubeOfTheCosine(double degrees)
    {
        double cosine = Math.Cos(degrees * Math.PI / 180), share = 1 / (1 + (2 * Math.Pow(cosine, 3)));

        IReadOnlyList<double> forces = Forces(degrees, new LoadCase("load", [new JointLoad("D", 0, -Load)]));

        Assert.Equal(Load * share, forces[1], 1e-9 * Load);
        Assert.Equal(Load * cosine * cosine * share, forces[0], 1e-9 * Load);
        Assert.Equal(forces[0], forces[2], 1e-9 * Load);
    }

    // The same form with a middle bar that is too short, as by a support that is drawn up by d.
    [Theory]
    [InlineData(15)]
    [InlineData(30)]
    [InlineData(45)]
    [InlineData(60)]
    public void Solve_AMiddleSupportThatMovesUp_PullsTheMiddleBar(double degrees)
    {
        const double Drawn = 0.003;
        double cosine = Math.Cos(degrees * Math.PI / 180), cubes = 2 * Math.Pow(cosine, 3);
        double pull = Member.SteelModulus * Area / Length * Drawn * cubes / (1 + cubes);

        IReadOnlyList<double> forces = Forces(degrees, new LoadCase("drawn up", []) { Movements = [new SupportMovement("B", 0, Drawn)] });

        Assert.Equal(pull, forces[1], 1e-9 * pull);
        Assert.Equal(-pull / (2 * cosine), forces[0], 1e-9 * pull);
    }

    private static IReadOnlyList<double> Forces(double degrees, LoadCase loads)
    {
        double out1 = Length * Math.Tan(degrees * Math.PI / 180);
        Truss truss = Truss.Create(
            [
                new Joint("A", -out1, Length, Support.Pin),
                new Joint("B", 0, Length, Support.Pin),
                new Joint("C", out1, Length, Support.Pin),
                new Joint("D", 0, 0),
            ],
            [new Member("AD", "A", "D", Area: Area), new Member("BD", "B", "D", Area: Area), new Member("CD", "C", "D", Area: Area)]).Truss!;
        Assert.True(LinearTruss.Of(truss).Value!.Solve(loads).TryGet(out ForceSolution? solution, out Refusal? refusal), $"{refusal}");
        return solution.MemberForces;
    }
}
