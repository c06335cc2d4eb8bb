using CsCheck;

namespace SpanRater.Tests.Properties;

/// <summary>Statics of 2,000 random determinate trusses of nine forms, summed up anew from the joints' coordinates.</summary>
public class EquilibriumProperties
{
    private const int Trusses = 2_000;
    private const double Close = 1e-9;

    private static readonly Gen<(SampleTruss, double[])> Loaded =
        RandomTrusses.All.SelectMany(s => Gen.Double[-1e5, 1e5].Array[2 * s.Truss.Joints.Count].Select(loads => (s, loads)));

    [Fact]
    public void Solve_AnyTruss_LeavesEveryJointInBalance()
    {
        SeededSample.Run(Loaded, "0000EqSb0J81", Trusses, (sample, loads) =>
        {
            Truss truss = sample.Truss;
            ForceSolution solution = Solve(truss, loads);
            Assert.InRange(solution.Residual, 0, ForceSolution.ResidualLimit);

            double[] left = [.. loads];
            for (int m = 0; m < truss.Members.Count; m++)
            {
                int from = truss.FindJoint(truss.Members[m].From)!.Value, to = truss.FindJoint(truss.Members[m].To)!.Value;
                double dx = truss.Joints[to].X - truss.Joints[from].X, dy = truss.Joints[to].Y - truss.Joints[from].Y;
                double perLength = solution.MemberForces[m] / Math.Sqrt((dx * dx) + (dy * dy));
                left[2 * from] += perLength * dx;
                left[(2 * from) + 1] += perLength * dy;
                left[2 * to] -= perLength * dx;
                left[(2 * to) + 1] -= perLength * dy;
            }

            foreach (Reaction reaction in solution.Reactions)
            {
                left[2 * reaction.Joint] += reaction.Right;
                left[(2 * reaction.Joint) + 1] += reaction.Up;
            }

            double largest = loads.Max(Math.Abs);
            Assert.All(left, component => Assert.InRange(component, -Close * largest, Close * largest));
        });
    }

    [Fact]
    public void Solve_AnyTruss_ReactionsBalanceTheLoads()
    {
        SeededSample.Run(Loaded, "0001EqSb0J82", Trusses, (sample, loads) =>
        {
            Truss truss = sample.Truss;
            double right = 0, up = 0, moment = 0, sizes = 0, arms = 0;
            void Add(int joint, double x, double y)
            {
                right += x;
                up += y;
                moment += (truss.Joints[joint].X * y) - (truss.Joints[joint].Y * x);
                sizes += Math.Abs(x) + Math.Abs(y);
                arms = Math.Max(arms, Math.Max(truss.Joints[joint].X, truss.Joints[joint].Y));
            }

            for (int j = 0; j < truss.Joints.Count; j++)
            {
                Add(j, loads[2 * j], loads[(2 * j) + 1]);
            }

            foreach (Reaction reaction in Solve(truss, loads).Reactions)
            {
                Add(reaction.Joint, reaction.Right, reaction.Up);
            }

            Assert.Equal(0, right, Close * sizes);
            Assert.Equal(0, up, Close * sizes);
            Assert.Equal(0, moment, Close * sizes * arms);
        });
    }

    [Fact]
    public void Solve_TwoCasesAdded_ForcesAddUp()
    {
        SeededSample.Run(
            Loaded.SelectMany(s => Gen.Double[-1e5, 1e5].Array[s.Item2.Length].Select(Gen.Double[-3, 3], (second, factor) => (s.Item1, s.Item2, second, factor))),
            "0002EqSb0J83",
            Trusses,
            sample =>
            {
                (SampleTruss truss, double[] first, double[] second, double factor) = sample;
                IReadOnlyList<double> one = Solve(truss.Truss, first).MemberForces, other = Solve(truss.Truss, second).MemberForces;
                IReadOnlyList<double> both = Solve(truss.Truss, [.. first.Select((p, i) => p + (factor * second[i]))]).MemberForces;
                double scale = one.Max(Math.Abs) + first.Max(Math.Abs) + (3 * (other.Max(Math.Abs) + second.Max(Math.Abs)));
                for (int m = 0; m < both.Count; m++)
                {
                    Assert.Equal(one[m] + (factor * other[m]), both[m], Close * scale);
                }
            });
    }

    [Fact]
    public void Solve_TrussSeenFromTheOtherSide_ForcesAreMirrored()
    {
        SeededSample.Run(Loaded, "0003EqSb0J84", Trusses, (sample, loads) =>
        {
            Truss truss = sample.Truss;
            Truss mirror = Truss.Create(
                [.. truss.Joints.Reverse().Select(j => j with { X = sample.Span - j.X })],
                [.. truss.Members.Select(m => m with { From = m.To, To = m.From })]).Truss!;
            double[] mirroredLoads = new double[loads.Length];
            for (int j = 0; j < truss.Joints.Count; j++)
            {
                int other = truss.Joints.Count - 1 - j;
                mirroredLoads[2 * other] = -loads[2 * j];
                mirroredLoads[(2 * other) + 1] = loads[(2 * j) + 1];
            }

            IReadOnlyList<double> forces = Solve(truss, loads).MemberForces, mirrored = Solve(mirror, mirroredLoads).MemberForces;
            double scale = forces.Max(Math.Abs) + loads.Max(Math.Abs);
            for (int m = 0; m < forces.Count; m++)
            {
                Assert.Equal(forces[m], mirrored[m], Close * scale);
            }
        });
    }

    [Fact]
    public void All_TwoThousandSamples_CoverEveryForm()
    {
        var forms = new HashSet<string>();
        SeededSample.Run(Loaded, "0000EqSb0J81", Trusses, (sample, _) => forms.Add(sample.Form));
        Assert.Equal(
            ["Howe", "K-truss", "king post", "Parker", "Pratt", "queen post", "random web", "Warren", "Warren with verticals"],
            forms.Order(StringComparer.OrdinalIgnoreCase));
    }

    private static ForceSolution Solve(Truss truss, double[] loads)
    {
        Assert.True(DeterminateTruss.Of(truss).TryGet(out DeterminateTruss? system, out _));
        var all = new LoadCase("random", [.. truss.Joints.Select((j, i) => new JointLoad(j.Name, loads[2 * i], loads[(2 * i) + 1]))]);
        Assert.True(system.Solve(all).TryGet(out ForceSolution? solution, out _));
        return solution;
    }
}
