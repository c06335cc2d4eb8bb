using BenchmarkDotNet.Attributes;
using SpanRater.Tests;

namespace SpanRater.Benchmarks;

/// <summary>
/// The greatest and least effect of a train of recorded traffic on many lines: the fast search against its plain twin, which puts
/// every axle on every panel point and reads all lines under all axles. One train an operation.
/// </summary>
[MemoryDiagnoser]
public abstract class CrossingBenchmarks : IHeldAgainstBruteForce
{
    private const double PanelLength = 5;

    /// <summary>Trains of one run.</summary>
    internal const int Trucks = 64;

    private double[] stations = [];
    private InfluenceLine[] lines = [];
    private RecordedTrucks trucks = new(0, 1, 1);
    private CrossedLines? crossed;
    private CrossingSearch? search;
    private double[] greatest = [];
    private double[] least = [];

    /// <summary>Axles, panels, lines and distinct shapes, as cells of a table.</summary>
    internal string Sizes => FormattableString.Invariant($"{trucks.Axles} | {stations.Length - 1} | {lines.Length} | {crossed?.Shapes}");

    /// <summary>Prepares lines and trains.</summary>
    [GlobalSetup]
    public void SetUp()
    {
        lines = Prepare(out int axles);
        stations = [.. lines[0].Stations];
        trucks = new RecordedTrucks(Trucks, axles, 1908);
        crossed = CrossedLines.Of(stations, lines);
        search = new CrossingSearch(crossed);
        (greatest, least) = (new double[lines.Length], new double[lines.Length]);
    }

    /// <summary>The fast search; laying out the lines is not charged.</summary>
    [Benchmark(OperationsPerInvoke = Trucks)]
    public double FastSearch()
    {
        double sum = 0;
        for (int t = 0; t < Trucks; t++)
        {
            search!.Cross(trucks.Loads(t), trucks.Gaps(t), greatest, least);
            sum += greatest[^1];
        }

        return sum;
    }

    /// <summary>The brute-force baseline.</summary>
    [Benchmark(Baseline = true)]
    public double PlainTwin() => PlainSearch.Cross(stations, lines, trucks.Loads(0), trucks.Gaps(0)).Greatest[^1];

    /// <inheritdoc/>
    string? IHeldAgainstBruteForce.Disagreement()
    {
        for (int t = 0; t < Trucks; t += Trucks / 2)
        {
            (double[] most, double[] lowest) = PlainSearch.Cross(stations, lines, trucks.Loads(t), trucks.Gaps(t));
            search!.Cross(trucks.Loads(t), trucks.Gaps(t), greatest, least);
            double weight = 0;
            foreach (double load in trucks.Loads(t))
            {
                weight += load;
            }

            for (int i = 0; i < lines.Length; i++)
            {
                double equal = 1e-12 * weight * lines[i].Ordinates.Max(Math.Abs);
                if (!(Math.Abs(most[i] - greatest[i]) <= equal && Math.Abs(lowest[i] - least[i]) <= equal))
                {
                    return FormattableString.Invariant($"{lines.Length} lines, truck {t}, line {i}: fast {least[i]:R} to {greatest[i]:R} N, plain {lowest[i]:R} to {most[i]:R} N");
                }
            }
        }

        return null;
    }

    /// <summary>The lines of a size, and how many axles a train has.</summary>
    private protected abstract InfluenceLine[] Prepare(out int axles);

    /// <summary>The lines of all members of a Pratt truss with panels of 5 m.</summary>
    private protected static InfluenceLine[] PrattLines(int panels) =>
        [.. InfluenceLines.Of(new PrattTruss(panels, PanelLength, 7).Build()).Value!.Members.Select(m => m.Line)];
}

/// <summary>By axles: a Pratt truss of 61 members and 17 panel points.</summary>
public class CrossingByAxlesBenchmarks : CrossingBenchmarks
{
    /// <summary>Axles of the train.</summary>
    [Params(1, 2, 5, 10, 100, 1000)]
    public int Axles { get; set; }

    /// <inheritdoc/>
    private protected override InfluenceLine[] Prepare(out int axles)
    {
        axles = Axles;
        return PrattLines(16);
    }
}

/// <summary>By panels: all members of a Pratt truss under five axles.</summary>
public class CrossingByPanelsBenchmarks : CrossingBenchmarks
{
    /// <summary>Panels of the truss.</summary>
    [Params(4, 8, 16, 32, 100)]
    public int Panels { get; set; }

    /// <inheritdoc/>
    private protected override InfluenceLine[] Prepare(out int axles)
    {
        axles = 5;
        return PrattLines(Panels);
    }
}

/// <summary>By lines that have nothing in common and bend at each of 17 panel points, as those of a truss with members to spare; five axles.</summary>
public class CrossingByLinesBenchmarks : CrossingBenchmarks
{
    /// <summary>Number of lines.</summary>
    [Params(4, 16, 61, 244)]
    public int Lines { get; set; }

    /// <inheritdoc/>
    private protected override InfluenceLine[] Prepare(out int axles)
    {
        axles = 5;
        var random = new MathNet.Numerics.Random.MersenneTwister(1908);
        double[] stations = [.. Enumerable.Range(0, 17).Select(i => 5.0 * i)];
        return [.. Enumerable.Range(0, Lines).Select(_ => new InfluenceLine(stations, [.. stations.Select((_, i) => i is 0 or 16 ? 0 : (2 * random.NextDouble()) - 1)]))];
    }
}
