namespace SpanRater.Tests.Published.RedundantTrusses;

/// <summary>
/// A Pratt truss over two spans by the force method: the middle support taken out, the deflection there found by virtual work
/// under the load and under a unit force, and the reaction from the two. Source: the method of Maxwell and Mohr, as in S. P. Timoshenko
/// and D. H. Young, Theory of Structures, from memory. Forces of the simple truss come from the plain statics of the tests.
/// </summary>
public class ContinuousTrussTests
{
    private const int Panels = 8;

    private const double Tolerance = 1e-8;

    private static readonly Truss Simple = WithAreas(new PrattTruss(Panels, 5, 4).Build());

    private static readonly LoadCase Load = new("load", [.. Enumerable.Range(1, Panels - 1).Select(i => new JointLoad($"L{i}", 0, -1e4 * (1 + (i % 3))))]);

    private static readonly LoadCase Unit = new("unit", [new JointLoad("L4", 0, -1)]);

    [Fact]
    public void Solve_TwoSpans_MiddleReactionIsTheDeflectionOverThatOfAUnitForce()
    {
        double reaction = Deflection(Load) / Deflection(Unit);

        Assert.Equal(reaction, MiddleReaction(Load), Tolerance * reaction);
    }

    // Where the support goes down by d, the truss comes down on it so much later.
    [Theory]
    [InlineData(0.004)]
    [InlineData(-0.002)]
    public void Solve_TwoSpansAndAMiddleSupportThatSettles_MiddleReactionIsLessByTheSettlement(double settles)
    {
        double reaction = (Deflection(Load) - settles) / Deflection(Unit);

        Assert.Equal(reaction, MiddleReaction(Load with { Movements = [new SupportMovement("L4", 0, -settles)] }), Tolerance * Math.Abs(reaction));
    }

    [Fact]
    public void Deflections_OfTheSimpleTruss_AreThoseOfVirtualWork()
    {
        Assert.True(Deflections.Under(Simple, Load).TryGet(out Deflections? found, out Refusal? refusal), $"{refusal}");

        Assert.Equal(Deflection(Load), found.Downward[4], Tolerance * Deflection(Load));
    }

    // Σ n N L / (E A), n under a unit load at the middle.
    private static double Deflection(LoadCase loads)
    {
        OwnStatics statics = OwnStatics.Without(Simple, [])!;
        double[] real = statics.Forces(loads), unit = statics.Forces(Unit);
        return real.Select((force, m) => force * unit[m] * Simple.Length(m) / (Member.SteelModulus * Simple.Members[m].Area!.Value)).Sum();
    }

    private static double MiddleReaction(LoadCase loads)
    {
        Truss continuous = Truss.Create([.. Simple.Joints.Select(j => j.Name == "L4" ? j with { Support = Support.Roller() } : j)], Simple.Members).Truss!;
        Assert.True(LinearTruss.Of(continuous).Value!.Solve(loads).TryGet(out ForceSolution? solution, out Refusal? refusal), $"{refusal}");
        return solution.Reactions.Single(r => continuous.Joints[r.Joint].Name == "L4").Up;
    }

    private static Truss WithAreas(Truss truss) =>
        Truss.Create(truss.Joints, [.. truss.Members.Select((m, i) => m with { Area = 1e-3 * (1 + (i * 5 % 7)) })]).Truss!;
}
