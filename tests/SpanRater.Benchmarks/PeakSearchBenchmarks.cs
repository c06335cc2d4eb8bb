using BenchmarkDotNet.Attributes;
using SpanRater.Tests;

namespace SpanRater.Benchmarks;

/// <summary>All member peaks of a Pratt truss under one train: the exact search against steps of a hundredth of a panel.</summary>
[MemoryDiagnoser]
public class PeakSearchBenchmarks : IHeldAgainstBruteForce
{
    private const double PanelLength = 5;
    private const double Step = PanelLength / 100;

    private InfluenceLine[] lines = [];
    private AxleTrain train = new([1], []);

    /// <summary>Panels of the truss.</summary>
    [Params(6, 12, 24)]
    public int Panels { get; set; }

    /// <summary>Axles of the train, with fixed gaps.</summary>
    [Params(2, 5, 11)]
    public int Axles { get; set; }

    /// <inheritdoc/>
    [GlobalSetup]
    public void SetUp()
    {
        DeterminateTruss system = DeterminateTruss.Of(new PrattTruss(Panels, PanelLength, 7).Build()).Value!;
        lines = [.. InfluenceLines.Of(system).Value!.Members.Select(m => m.Line)];

        // Uneven gaps, so that axles do not meet panel points together.
        train = new AxleTrain(
            [.. Enumerable.Range(0, Axles).Select(k => 5e4 + (7e3 * (k % 4)))],
            [.. Enumerable.Range(1, Axles - 1).Select(k => AxleGap.Fixed(1.2 + (0.37 * (k % 3))))]);
    }

    /// <summary>The exact search, the preparation of its positions included.</summary>
    [Benchmark]
    public double ExactSearch() => Exact().Sum(p => (p.Tension?.Force ?? 0) - (p.Compression?.Force ?? 0));

    /// <summary>The brute-force baseline.</summary>
    [Benchmark(Baseline = true)]
    public double Sweep() => Swept().Sum(s => s.Tension - s.Compression);

    /// <inheritdoc/>
    string? IHeldAgainstBruteForce.Disagreement()
    {
        PeakPair[] exact = Exact();
        SteppedSweep[] swept = Swept();
        for (int i = 0; i < lines.Length; i++)
        {
            foreach (Sense sense in Enum.GetValues<Sense>())
            {
                Peak? peak = exact[i].Of(sense);
                double found = Math.Abs(peak?.Force ?? 0), stepped = swept[i].Highest(sense), equal = 1e-9 * train.Weight;
                double most = stepped + equal + (peak is null ? 0 : swept[i].MostMissed(peak));
                if (!(found >= stepped - equal && found <= most))
                {
                    return FormattableString.Invariant($"{Panels} panels, {Axles} axles, member {i}, {sense}: exact {found:R} N, sweep {stepped:R} N, at most {most:R} N");
                }
            }
        }

        return null;
    }

    private PeakPair[] Exact()
    {
        var plan = new RollingPlan(lines[0].Stations, train);
        return [.. lines.Select(plan.PeaksOf)];
    }

    private SteppedSweep[] Swept() => [.. lines.Select(line => new SteppedSweep(line, train, Step, 1))];
}
