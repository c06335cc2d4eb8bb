namespace SpanRater.Tests;

/// <summary>What equilibrium demands of every solution, summed here from the joints' coordinates alone.</summary>
public class StaticsProperties
{
    private const double Round = 1e-9;

    [Fact]
    public void Solve_RandomTrusses_EveryJointBalances() => SeededCases.CheckEach(RandomTrusses.All, truss =>
    {
        ForceSolution solution = Solve(truss, truss.One);
        Assert.InRange(solution.Residual, 0, ForceSolution.ResidualLimit);
        double largest = truss.One.Loads.Max(l => double.Hypot(l.Right, l.Up));
        foreach (Joint joint in truss.System.Truss.Joints)
        {
            (double right, double up) = LeftOver(truss.System.Truss, solution, truss.One, joint);
            Assert.True(double.Hypot(right, up) <= Round * largest, $"{truss.Form.Name}: joint {joint.Name} is left with {right}, {up} N.");
        }
    });

    [Fact]
    public void Solve_RandomTrusses_ReactionsCarryTheLoadAndMomentsAboutL0Close() => SeededCases.CheckEach(RandomTrusses.All, truss =>
    {
        ForceSolution solution = Solve(truss, truss.One);
        Truss geometry = truss.System.Truss;
        double right = 0, up = 0, moment = 0, size = truss.One.Loads.Sum(l => double.Hypot(l.Right, l.Up));
        void Add(Joint joint, double forceRight, double forceUp)
        {
            right += forceRight;
            up += forceUp;
            moment += (joint.X * forceUp) - (joint.Y * forceRight);
        }

        foreach (JointLoad load in truss.One.Loads)
        {
            Add(geometry.Joints.Single(j => j.Name == load.Joint), load.Right, load.Up);
        }

        foreach (Reaction reaction in solution.Reactions)
        {
            Add(geometry.Joints[reaction.Joint], reaction.Right, reaction.Up);
        }

        Assert.Equal(0, right, Round * size);
        Assert.Equal(0, up, Round * size);
        Assert.Equal(0, moment, Round * size * truss.Form.Span);
    });

    [Fact]
    public void Solve_TwoCasesTogether_IsTheSumOfBoth() => SeededCases.CheckEach(RandomTrusses.All, truss =>
    {
        ForceSolution one = Solve(truss, truss.One), other = Solve(truss, truss.Other);
        LoadCase twiceOneLessOther = new(
            "together",
            [.. truss.One.Loads.Select(l => l with { Right = 2 * l.Right, Up = 2 * l.Up }), .. truss.Other.Loads.Select(l => l with { Right = -l.Right, Up = -l.Up })]);
        AssertForces([.. one.MemberForces.Zip(other.MemberForces, (a, b) => (2 * a) - b)], Solve(truss, twiceOneLessOther).MemberForces);
    });

    [Fact]
    public void Solve_MirroredTruss_ForcesMirror() => SeededCases.CheckEach(RandomTrusses.All, truss =>
    {
        Truss geometry = truss.System.Truss;
        Truss mirrored = Truss.Create([.. geometry.Joints.Select(j => j with { X = -j.X })], geometry.Members).Truss!;
        LoadCase loads = new("mirrored", [.. truss.One.Loads.Select(l => l with { Right = -l.Right })]);
        ForceSolution there = DeterminateTruss.Of(mirrored).Value!.Solve(loads).Value!, here = Solve(truss, truss.One);
        AssertForces(here.MemberForces, there.MemberForces);
        AssertForces([.. here.Reactions.Select(r => -r.Right)], [.. there.Reactions.Select(r => r.Right)]);
        AssertForces([.. here.Reactions.Select(r => r.Up)], [.. there.Reactions.Select(r => r.Up)]);
    });

    // A line is solved for all panel points at once; the load case puts one load on one named joint.
    [Fact]
    public void Line_EveryPanelPoint_IsTheForceUnderAUnitLoadThere() => SeededCases.CheckEach(RandomTrusses.All, truss =>
    {
        Truss geometry = truss.System.Truss;
        for (int p = 0; p < geometry.PanelPoints.Count; p++)
        {
            ForceSolution unit = Solve(truss, new LoadCase("unit", [new JointLoad(geometry.Joints[geometry.PanelPoints[p]].Name, 0, -1)]));
            AssertForces([.. truss.Lines.Members.Select(m => m.Line.Ordinates[p])], unit.MemberForces);
            foreach (InfluenceEffect effect in truss.Lines.Reactions)
            {
                Reaction reaction = unit.Reactions.Single(r => effect.Name.StartsWith(geometry.Joints[r.Joint].Name + " ", StringComparison.Ordinal));
                double force = effect.Name.EndsWith(" up", StringComparison.Ordinal) ? reaction.Up : reaction.Right;
                Assert.Equal(force, effect.Line.Ordinates[p], Round);
            }
        }
    });

    // The floor spans simply between panel points: half of a load at mid-panel reaches each of them.
    [Fact]
    public void Line_MidPanel_IsTheMeanAndTheForceUnderHalfALoadAtBothEnds() => SeededCases.CheckEach(RandomTrusses.All, truss =>
    {
        Truss geometry = truss.System.Truss;
        for (int p = 1; p < geometry.PanelPoints.Count; p++)
        {
            Joint left = geometry.Joints[geometry.PanelPoints[p - 1]], right = geometry.Joints[geometry.PanelPoints[p]];
            double middle = (left.X + right.X) / 2;
            ForceSolution halves = Solve(truss, new LoadCase("halves", [new JointLoad(left.Name, 0, -0.5), new JointLoad(right.Name, 0, -0.5)]));
            AssertForces([.. truss.Lines.Members.Select(m => m.Line.OrdinateAt(middle))], halves.MemberForces);
            AssertForces(
                [.. truss.Lines.Members.Select(m => (m.Line.Ordinates[p - 1] + m.Line.Ordinates[p]) / 2)],
                [.. truss.Lines.Members.Select(m => m.Line.OrdinateAt(middle))]);
        }
    });

    [Fact]
    public void All_RandomTrusses_CoverEveryForm() =>
        Assert.Equal(10, RandomTrusses.All.GroupBy(t => t.Form.Name).Count(forms => forms.Count() > RandomTrusses.Count / 20));

    private static ForceSolution Solve(SolvedTruss truss, LoadCase loads) => truss.System.Solve(loads).Value!;

    private static (double Right, double Up) LeftOver(Truss truss, ForceSolution solution, LoadCase loads, Joint joint)
    {
        double right = loads.Loads.Where(l => l.Joint == joint.Name).Sum(l => l.Right);
        double up = loads.Loads.Where(l => l.Joint == joint.Name).Sum(l => l.Up);
        for (int m = 0; m < truss.Members.Count; m++)
        {
            Member member = truss.Members[m];
            if (member.From != joint.Name && member.To != joint.Name)
            {
                continue;
            }

            string far = member.From == joint.Name ? member.To : member.From;
            Joint end = truss.Joints.Single(j => j.Name == far);
            double dx = end.X - joint.X, dy = end.Y - joint.Y, length = Math.Sqrt((dx * dx) + (dy * dy));
            right += solution.MemberForces[m] * dx / length;
            up += solution.MemberForces[m] * dy / length;
        }

        foreach (Reaction reaction in solution.Reactions.Where(r => truss.Joints[r.Joint].Name == joint.Name))
        {
            right += reaction.Right;
            up += reaction.Up;
        }

        return (right, up);
    }

    private static void AssertForces(IReadOnlyList<double> expected, IReadOnlyList<double> actual)
    {
        Assert.Equal(expected.Count, actual.Count);
        double largest = expected.Max(Math.Abs);
        for (int i = 0; i < expected.Count; i++)
        {
            Assert.True(Math.Abs(expected[i] - actual[i]) <= Round * largest, $"{i}: {expected[i]:R} against {actual[i]:R}");
        }
    }
}
