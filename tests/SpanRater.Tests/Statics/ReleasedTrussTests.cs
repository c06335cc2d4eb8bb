namespace SpanRater.Tests.Statics;

/// <summary>A redundant truss by cutting members: closed forms of a square panel, and the two routes by which forces are rated.</summary>
public sealed class ReleasedTrussTests
{
    private const double Side = 3, Load = 6e4;

    // Turned about its middle line the load changes sign, so that the diagonals carry the shear P in equal parts: P/2 across, P/√2 along.
    // Source: S. P. Timoshenko and D. H. Young, Theory of Structures, on trusses with one redundant bar, from memory.
    [Fact]
    public void Of_ASquareOnTwoPinsPushedSideways_SharesTheShearBetweenItsDiagonals()
    {
        Truss truss = Square();
        ReleasedTruss released = Of(truss, new LoadCase("push", [new JointLoad("C", Load / 2, 0), new JointLoad("D", Load / 2, 0)]));

        Assert.Single(released.Cut);
        Assert.Equal(Load / Math.Sqrt(2), released.Members.Single(m => m.Name == "AC").Force, 1e-9 * Load);
        Assert.Equal(-Load / Math.Sqrt(2), released.Members.Single(m => m.Name == "BD").Force, 1e-9 * Load);
        Assert.Equal(0, released.Members.Single(m => m.Name == "DC").Force, 1e-9 * Load);
    }

    [Fact]
    public void Of_AnyRedundant_ClosesItsCuts_AndIsTheSumOfItsParts()
    {
        Truss truss = Square();
        ReleasedTruss released = Of(truss, new LoadCase("push", [new JointLoad("C", 2e4, -5e4), new JointLoad("D", 1e4, 3e3)]));

        Assert.Equal(0, released.Members.Sum(m => m.Unit[0] * m.Force * m.Flexibility!.Value), 1e-12);
        Assert.Equal(1, released.Members[released.Cut[0]].Unit[0]);
        Assert.All(released.Members, m => Assert.Equal(m.Released + (m.Unit[0] * released.Redundants[0]), m.Force, 1e-9));
        Assert.True(released.Difference <= ForceSolution.RouteLimit);
    }

    // Two bars too many, and a support that settles: forces without any load.
    [Fact]
    public void Of_ASupportThatMoves_TakesWhatItsReactionsDo()
    {
        Truss truss = Truss.Create(
            [new Joint("A", 0, 0, Support.Pin), new Joint("B", Side, 0, Support.Roller(90)), new Joint("E", 2 * Side, 0, Support.Roller(90)), new Joint("C", Side, Side), new Joint("D", 0, Side), new Joint("F", 2 * Side, Side)],
            [.. "AB BE AD BC EF DC CF AC BD BF".Split(' ').Select(m => new Member(m, m[..1], m[1..], Area: 1.5e-3))]).Truss!;
        var sunk = new LoadCase("sunk", [new JointLoad("C", 0, -Load)]) { Movements = [new SupportMovement("B", 0, -0.002)] };
        ReleasedTruss released = Of(truss, sunk);

        Assert.Equal(2, released.Cut.Count);
        Assert.Contains(released.Moved, m => Math.Abs(m) > 1e-4);
        Assert.True(released.Difference <= ForceSolution.RouteLimit);
    }

    [Fact]
    public void Of_AMechanism_IsRefused() =>
        Assert.IsType<Refusal.Mechanism>(ReleasedTruss.Of(Truss.Create([new Joint("A", 0, 0, Support.Pin), new Joint("B", 1, 0), new Joint("C", 2, 0, Support.Roller(90))], [new Member("AB", "A", "B", Area: 1e-3), new Member("BC", "B", "C", Area: 1e-3)]).Truss!, new LoadCase("load", [new JointLoad("B", 0, -1)]), []).Refusal);

    private static Truss Square() => Truss.Create(
        [new Joint("A", 0, 0, Support.Pin), new Joint("B", Side, 0, Support.Pin), new Joint("C", Side, Side), new Joint("D", 0, Side)],
        [.. "AD BC DC AC BD".Split(' ').Select(m => new Member(m, m[..1], m[1..], Area: 1.5e-3))]).Truss!;

    private static ReleasedTruss Of(Truss truss, LoadCase loads)
    {
        Assert.True(ReleasedTruss.Of(truss, loads, []).TryGet(out ReleasedTruss? released, out Refusal? refusal), $"{refusal}");
        return released;
    }
}
