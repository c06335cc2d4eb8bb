using BenchmarkDotNet.Attributes;
using SpanRater.Tests.Rolling;

namespace SpanRater.Benchmarks;

/// <summary>Peaks of every member of a Pratt truss under one train: the exact search against a sweep at 1/100 of a panel.</summary>
[MemoryDiagnoser]
public class PeakBenchmarks
{
    private const double PanelLength = 5;

    private InfluenceLine[] lines = [];
    private double[] stations = [];
    private AxleTrain train = new([1], []);

    /// <summary>Number of panels.</summary>
    [Params(6, 12, 24)]
    public int Panels { get; set; }

    /// <summary>Number of axles.</summary>
    [Params(2, 5, 11)]
    public int Axles { get; set; }

    internal IReadOnlyList<InfluenceLine> Lines => lines;

    internal AxleTrain Train => train;

    internal static double Step => PanelLength / 100;

    [GlobalSetup]
    public void Setup()
    {
        Truss truss = new PrattTruss(Panels, PanelLength, 6).Build();
        if (!DeterminateTruss.Of(truss).TryGet(out DeterminateTruss? system, out _)
            || !InfluenceLines.Of(system).TryGet(out InfluenceLines? influence, out _))
        {
            throw new InvalidOperationException("The Pratt truss has no influence lines.");
        }

        stations = [.. truss.Stations];
        lines = [.. influence.Members.Select(e => e.Line)];

        // Gaps in feet, so that few axles meet panel points at once: 4 ft in a tandem, 12 ft to 17 ft between groups.
        train = new AxleTrain(
            [.. Enumerable.Range(0, Axles).Select(a => 60_000.0 + (5_000 * (a % 4)))],
            [.. Enumerable.Range(1, Axles - 1).Select(a => AxleGap.Fixed((a % 2 == 0 ? 4 : 12 + (a % 6)) * 0.3048))]);
    }

    /// <summary>The exact search: the plan made, and the peaks of every member. The result keeps the work from being left out.</summary>
    [Benchmark]
    public double Exact() => Exact(out _);

    /// <summary>The baseline: every member's line stepped over.</summary>
    [Benchmark(Baseline = true)]
    public double Sweep() => Sweep(out _);

    internal double Exact(out PeakPair[] peaks)
    {
        var plan = new RollingPlan(stations, train);
        peaks = new PeakPair[lines.Length];
        double sum = 0;
        for (int m = 0; m < lines.Length; m++)
        {
            peaks[m] = plan.PeaksOf(lines[m]);
            sum += (peaks[m].Tension?.Force ?? 0) - (peaks[m].Compression?.Force ?? 0);
        }

        return sum;
    }

    internal double Sweep(out (double Highest, double Lowest)[] peaks)
    {
        peaks = new (double, double)[lines.Length];
        double sum = 0;
        for (int m = 0; m < lines.Length; m++)
        {
            peaks[m] = SteppedSweep.Of(lines[m], train, Step, gapSteps: 1);
            sum += peaks[m].Highest - peaks[m].Lowest;
        }

        return sum;
    }
}
