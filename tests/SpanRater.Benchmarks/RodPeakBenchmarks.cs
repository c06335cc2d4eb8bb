using BenchmarkDotNet.Attributes;

namespace SpanRater.Benchmarks;

/// <summary>
/// All member peaks of a Pratt truss with crossed rods in its middle panels, dead load on: the exact search with its
/// positions where a rod goes slack, against steps of a hundredth of a panel at each of which every set of rods is tried.
/// </summary>
[MemoryDiagnoser]
public class RodPeakBenchmarks : IHeldAgainstBruteForce
{
    private const double PanelLength = 5;
    private const double Height = 6;
    private const double Step = PanelLength / 100;

    private readonly List<(InfluenceLines Lines, IReadOnlyList<double> Dead)> sets = [];
    private Truss truss = new PrattTruss(4, PanelLength, Height).Build();
    private Truss plain = new PrattTruss(4, PanelLength, Height).Build();
    private Vehicle vehicle = new("train", VehicleClass.Legal, new AxleTrain([1], []), 1.8, "benchmark");
    private LoadCase dead = new("DC", []);
    private IReadOnlyList<CrossedPair> pairs = [];

    /// <summary>Panels of the truss.</summary>
    [Params(6, 12)]
    public int Panels { get; set; }

    /// <summary>Panels with crossed rods.</summary>
    [Params(2, 4)]
    public int Crossed { get; set; }

    /// <inheritdoc/>
    [GlobalSetup]
    public void SetUp()
    {
        plain = new PrattTruss(Panels, PanelLength, Height).Build();
        var members = new List<Member>();
        for (int m = 0; m < plain.Members.Count; m++)
        {
            Member member = plain.Members[m];
            int left = (int)Math.Round(Math.Min(plain.Joints[plain.FromJoint(m)].X, plain.Joints[plain.ToJoint(m)].X) / PanelLength);
            bool crossed = member.Role == "diagonal" && left >= (Panels - Crossed) / 2 && left < (Panels + Crossed) / 2;
            members.Add(member with { TensionOnly = crossed });
            if (crossed)
            {
                (string from, string to) = member.From[0] == 'U' ? ($"L{left}", $"U{left + 1}") : ($"U{left}", $"L{left + 1}");
                members.Add(new Member(from + to, from, to, "counter", TensionOnly: true));
            }
        }

        truss = Truss.Create(plain.Joints, members).Truss!;
        dead = new LoadCase("DC", [.. truss.PanelPoints.Select(p => new JointLoad(truss.Joints[p].Name, 0, -4e4))]);
        vehicle = vehicle with { Train = new AxleTrain([7e4, 7.5e4, 7.5e4], [AxleGap.Fixed(4.6), AxleGap.Fixed(1.2)]) };
        RodTruss rods = RodTruss.Of(truss).Value!;
        pairs = rods.Pairs;
        sets.Clear();
        for (int set = 0; set < 1 << pairs.Count; set++)
        {
            int[] slack = [.. pairs.Select((p, i) => (set & (1 << i)) != 0 ? p.First : p.Second)];
            InfluenceLines lines = rods.Lines(slack).Value!;
            sets.Add((lines, [.. lines.Members.Select(m => -4e4 * -1 * m.Line.Ordinates.Sum())]));
        }
    }

    /// <summary>The exact search, the truss prepared anew.</summary>
    [Benchmark]
    public double ExactSearch() => Exact().Sum(p => (p.Tension?.Force ?? 0) - (p.Compression?.Force ?? 0));

    /// <summary>The exact search on the same truss without the second rods, where every member acts; charged for the same.</summary>
    [Benchmark]
    public double WithoutRods() => TrussCrossing.Of(plain, dead, null).Value!.Roll(vehicle).Value!.Sum(p => (p.Tension?.Force ?? 0) - (p.Compression?.Force ?? 0));

    /// <summary>The brute-force baseline; its lines are given to it.</summary>
    [Benchmark(Baseline = true)]
    public double Sweep() => Swept().Sum(s => s.Most - s.Least);

    /// <inheritdoc/>
    string? IHeldAgainstBruteForce.Disagreement()
    {
        IReadOnlyList<PeakPair> exact = Exact();
        (double Least, double Most)[] swept = Swept();
        double equal = 1e-9 * vehicle.Train.Weight, missed = MostMissed();
        for (int m = 0; m < swept.Length; m++)
        {
            double most = exact[m].Tension?.Force ?? 0, least = exact[m].Compression?.Force ?? 0;
            if (!(most >= swept[m].Most - equal && most <= swept[m].Most + missed && least <= swept[m].Least + equal && least >= swept[m].Least - missed))
            {
                return FormattableString.Invariant($"{Panels} panels, {Crossed} crossed, {truss.Members[m].Name}: exact {least:R} to {most:R} N, sweep {swept[m].Least:R} to {swept[m].Most:R} N");
            }
        }

        return null;
    }

    private IReadOnlyList<PeakPair> Exact() => TrussCrossing.Of(truss, dead, null).Value!.Roll(vehicle).Value!;

    private (double Least, double Most)[] Swept()
    {
        var found = new (double Least, double Most)[truss.Members.Count];
        IReadOnlyList<double> alone = sets.First(s => Acts(s.Dead)).Dead;
        var forces = new double[truss.Members.Count];
        double[] offsets = [0, .. vehicle.Train.Gaps.Select((_, g) => vehicle.Train.Gaps.Take(g + 1).Sum(gap => gap.Least))];
        foreach (double toward in (double[])[-1, 1])
        {
            for (double front = -offsets[^1]; front <= truss.Stations[^1] + offsets[^1]; front += Step)
            {
                foreach ((InfluenceLines lines, IReadOnlyList<double> deadForces) in sets)
                {
                    for (int m = 0; m < forces.Length; m++)
                    {
                        forces[m] = deadForces[m];
                        for (int a = 0; a < offsets.Length; a++)
                        {
                            forces[m] += vehicle.Train.Loads[a] * lines.Members[m].Line.OrdinateAt(front + (toward * offsets[a]));
                        }
                    }

                    if (Acts(forces))
                    {
                        for (int m = 0; m < forces.Length; m++)
                        {
                            double change = forces[m] - alone[m];
                            found[m] = (Math.Min(found[m].Least, change), Math.Max(found[m].Most, change));
                        }

                        break;
                    }
                }
            }
        }

        return found;
    }

    private bool Acts(IReadOnlyList<double> forces) => pairs.All(p => forces[p.First] >= -1 && forces[p.Second] >= -1);

    // Between two steps an effect changes by at most the steepest line times the weight.
    private double MostMissed() => Step * vehicle.Train.Weight * sets.Max(s => s.Lines.Members.Max(m =>
        Enumerable.Range(1, m.Line.Ordinates.Count - 1).Max(i => Math.Abs(m.Line.Ordinates[i] - m.Line.Ordinates[i - 1]) / PanelLength)));
}
