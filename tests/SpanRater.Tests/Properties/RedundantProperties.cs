namespace SpanRater.Tests;

/// <summary>
/// What must hold of redundant trusses: equilibrium, superposition, reciprocity, the deck displaced by a cut member, and the
/// forces of a plain stiffness solution written here.
/// </summary>
public class RedundantProperties
{
    /// <summary>The twin's Cholesky loses digits where areas differ a hundredfold; the engine holds its own routes to 1e-9.</summary>
    private const double Twin = 1e-7;

    private const double Round = 1e-9;

    [Fact]
    public void Solve_RedundantTrusses_BalancesEveryJointAndIsNotRefused() => SeededCases.CheckEach(RandomRedundantTrusses.All, truss =>
    {
        Assert.IsType<ElasticTruss>(truss.System);
        ForceSolution solution = Solve(truss.System, truss.One);
        double largest = Largest(truss.One);
        for (int j = 0; j < truss.Truss.Joints.Count; j++)
        {
            (double right, double up) = LeftOver(truss.Truss, solution, truss.One, j);
            Assert.True(double.Hypot(right, up) <= Round * largest, $"Joint {truss.Truss.Joints[j].Name} is left with {right}, {up} N.");
        }
    });

    [Fact]
    public void Solve_RedundantTrusses_GivesTheForcesOfAPlainStiffnessSolution() => SeededCases.CheckEach(RandomRedundantTrusses.All, truss =>
        AssertNear(OwnStiffness.Of(truss.Truss).Forces(truss.One), Solve(truss.System, truss.One).MemberForces, Twin));

    [Fact]
    public void Solve_SupportsThatMove_GivesTheForcesOfAPlainStiffnessSolution() => SeededCases.CheckEach(RandomRedundantTrusses.All, truss =>
    {
        Joint[] supported = [.. truss.Truss.Joints.Where(j => j.Support is not null)];
        LoadCase moved = truss.One with { Movements = [.. supported.Select((j, i) => new SupportMovement(j.Name, 0.003 * i, -0.01 * (i % 3)))] };
        AssertNear(OwnStiffness.Of(truss.Truss).Forces(moved), Solve(truss.System, moved).MemberForces, Twin);
    });

    [Fact]
    public void Solve_TwoCasesTogether_IsTheSumOfBoth() => SeededCases.CheckEach(RandomRedundantTrusses.All, truss =>
    {
        ForceSolution one = Solve(truss.System, truss.One), other = Solve(truss.System, truss.Other);
        ForceSolution together = Solve(truss.System, LoadCase.Sum("together", (truss.One, 2), (truss.Other, -1)));
        AssertNear([.. one.MemberForces.Zip(other.MemberForces, (a, b) => (2 * a) - b)], together.MemberForces, Round);
    });

    [Fact]
    public void Lines_OfDeflection_AreSymmetricAndThoseOfAPlainStiffnessSolution() => SeededCases.CheckEach([.. RandomRedundantTrusses.All.Take(150)], truss =>
    {
        Outcome<DeflectionLines> outcome = Deflections.Lines(truss.Truss, null);
        Assert.True(outcome.TryGet(out DeflectionLines? lines, out Refusal? refusal), $"{refusal}");
        int[] points = [.. truss.Truss.PanelPoints];
        var stiffness = OwnStiffness.Of(truss.Truss);
        double largest = lines.Effects.Max(e => e.Line.Ordinates.Max(Math.Abs));
        for (int i = 0; i < points.Length; i++)
        {
            double[] moved = stiffness.Displacements(UnitLoad(truss.Truss, points[i]));
            for (int k = 0; k < points.Length; k++)
            {
                double ordinate = lines.Effects[i].Line.Ordinates[k];
                Assert.Equal(lines.Effects[k].Line.Ordinates[i], ordinate, Round * largest);
                Assert.Equal(-moved[(2 * points[k]) + 1], ordinate, Twin * largest);
            }
        }
    });

    // Müller-Breslau: cut the member and pull its ends together with unit forces; the deck's deflection, turned over and divided
    // by how far the cut closes and the member stretches, is the member's influence line.
    [Fact]
    public void Lines_OfAMemberCutInTwo_AreTheDisplacedDeck() => SeededCases.CheckEach([.. RandomRedundantTrusses.All.Take(60)], truss =>
    {
        InfluenceLines lines = InfluenceLines.Of(truss.System).Value!;
        foreach (int m in truss.System.Stability.StressedMembers)
        {
            Member member = truss.Truss.Members[m];
            Truss cut = RandomRedundantTrusses.With(truss.Truss, truss.Truss.Members.Where(other => other != member));
            Joint from = truss.Truss.Joints[truss.Truss.FromJoint(m)], to = truss.Truss.Joints[truss.Truss.ToJoint(m)];
            double length = truss.Truss.Length(m), x = (to.X - from.X) / length, y = (to.Y - from.Y) / length;
            double[] moved = OwnStiffness.Of(cut).Displacements(new LoadCase("pull", [new JointLoad(from.Name, x, y), new JointLoad(to.Name, -x, -y)]));
            double closes = -OwnStiffness.Stretch(truss.Truss, m, moved) + (length / (Member.SteelModulus * member.Area!.Value));
            AssertNear(
                [.. truss.Truss.PanelPoints.Select(p => moved[(2 * p) + 1] / closes)],
                lines.Members[m].Line.Ordinates,
                1e-6,
                Math.Max(1, lines.Members[m].Line.Ordinates.Max(Math.Abs)));
        }
    });

    // A member takes part in a self-stress where the truss still stands without it.
    [Fact]
    public void Solve_MembersOutsideEverySelfStress_NeedNoAreaAndTheOthersAreNamed() => SeededCases.CheckEach([.. RandomRedundantTrusses.All.Take(25)], truss =>
    {
        Member[] members = [.. truss.Truss.Members];
        bool[] stressed =
        [
            .. members.Select(m => members.Where(other => other != m).SelectMany(o => new[] { o.From, o.To }).Distinct().Count() == truss.Truss.Joints.Count
                && Stability.Of(RandomRedundantTrusses.With(truss.Truss, members.Where(other => other != m))).Verdict != StabilityVerdict.Mechanism),
        ];

        Truss bare = RandomRedundantTrusses.With(truss.Truss, members.Select(m => m with { Area = null }));
        var refused = Assert.IsType<Refusal.NoAreas>(LinearTruss.Of(bare).Refusal);
        Assert.Equal(members.Where((_, m) => stressed[m]).Select(m => m.Name), refused.Members);

        Truss needed = RandomRedundantTrusses.With(truss.Truss, members.Select((m, i) => stressed[i] ? m : m with { Area = null }));
        Truss changed = RandomRedundantTrusses.With(truss.Truss, members.Select((m, i) => stressed[i] ? m : m with { Area = m.Area * (2 + (i % 5)) }));
        IReadOnlyList<double> forces = Solve(truss.System, truss.One).MemberForces;
        AssertNear([.. forces], Solve(LinearTruss.Of(needed).Value!, truss.One).MemberForces, Round);
        AssertNear([.. forces], Solve(LinearTruss.Of(changed).Value!, truss.One).MemberForces, Round);
    });

    // A long truss whose every panel is crossed, and which stands on a support in the middle besides.
    [Theory]
    [InlineData(40, 0.6)]
    [InlineData(40, 1.2)]
    [InlineData(60, 1.0)]
    public void Solve_LongRedundantTrusses_AreNotRefused(int panels, double heightOverPanel)
    {
        Truss pratt = new PrattTruss(panels, 6, 6 * heightOverPanel).Build();
        List<Member> members = [.. pratt.Members];
        for (int i = 1; i < panels - 1; i++)
        {
            (string from, string to) = members.Exists(m => m.Name == $"U{i}L{i + 1}") ? ($"L{i}", $"U{i + 1}") : ($"U{i}", $"L{i + 1}");
            members.Add(new Member(from + to, from, to));
        }

        Truss truss = Truss.Create(
            [.. pratt.Joints.Select(j => j.Name == $"L{panels / 2}" ? j with { Support = Support.Roller() } : j)],
            [.. members.Select((m, i) => m with { Area = 1e-3 * (1 + (i * 7 % 13)) })]).Truss!;
        LinearTruss system = LinearTruss.Of(truss).Value!;
        var load = new LoadCase("load", [.. truss.PanelPoints.Select(p => new JointLoad(truss.Joints[p].Name, 0, -3e4))]);

        AssertNear(OwnStiffness.Of(truss).Forces(load), Solve(system, load).MemberForces, 1e-6);
        Assert.All(system.SolveUnitLoads(), unit => Assert.Null(unit.Refusal));
        Assert.Null(Deflections.Under(truss, load).Refusal);
    }

    internal static LoadCase UnitLoad(Truss truss, int joint) => new("unit", [new JointLoad(truss.Joints[joint].Name, 0, -1)]);

    private static ForceSolution Solve(SolvableTruss system, LoadCase loads)
    {
        Assert.True(system.Solve(loads).TryGet(out ForceSolution? solution, out Refusal? refusal), $"{refusal}");
        return solution;
    }

    private static double Largest(LoadCase loads) => loads.Loads.Max(l => double.Hypot(l.Right, l.Up));

    private static (double Right, double Up) LeftOver(Truss truss, ForceSolution solution, LoadCase loads, int joint)
    {
        Joint at = truss.Joints[joint];
        double right = loads.Loads.Where(l => l.Joint == at.Name).Sum(l => l.Right), up = loads.Loads.Where(l => l.Joint == at.Name).Sum(l => l.Up);
        for (int m = 0; m < truss.Members.Count; m++)
        {
            if (truss.Members[m].From == at.Name || truss.Members[m].To == at.Name)
            {
                Joint other = truss.Joints.Single(j => j.Name == (truss.Members[m].From == at.Name ? truss.Members[m].To : truss.Members[m].From));
                double length = double.Hypot(other.X - at.X, other.Y - at.Y);
                right += solution.MemberForces[m] * (other.X - at.X) / length;
                up += solution.MemberForces[m] * (other.Y - at.Y) / length;
            }
        }

        return (right + solution.Reactions.Where(r => r.Joint == joint).Sum(r => r.Right), up + solution.Reactions.Where(r => r.Joint == joint).Sum(r => r.Up));
    }

    private static void AssertNear(double[] expected, IReadOnlyList<double> actual, double tolerance, double? size = null)
    {
        double largest = size ?? Math.Max(expected.Max(Math.Abs), actual.Max(Math.Abs));
        Assert.Equal(expected.Length, actual.Count);
        Assert.All(expected.Zip(actual), pair => Assert.Equal(pair.First, pair.Second, tolerance * largest));
    }
}
