using MathNet.Numerics.Random;

namespace SpanRater.Benchmarks;

/// <summary>Made-up recorded trucks: pairs of axles 1.2 m to 1.6 m apart with 3 m to 10 m between the pairs, each axle of 40 kN to 90 kN.</summary>
internal sealed class RecordedTrucks
{
    private readonly int axles;
    private readonly double[] loads;
    private readonly double[] gaps;

    /// <param name="count">Number of trucks.</param>
    /// <param name="axles">Axles of each.</param>
    /// <param name="seed">Seed from which they follow.</param>
    internal RecordedTrucks(int count, int axles, int seed)
    {
        this.axles = axles;
        var random = new MersenneTwister(seed);
        loads = new double[count * axles];
        gaps = new double[count * (axles - 1)];
        for (int i = 0; i < loads.Length; i++)
        {
            loads[i] = 4e4 + (5e4 * random.NextDouble());
        }

        for (int i = 0; i < gaps.Length; i++)
        {
            bool pair = i % (axles - 1) % 2 == 1;
            gaps[i] = pair ? 1.2 + (0.4 * random.NextDouble()) : 3 + (7 * random.NextDouble());
        }
    }

    /// <summary>Axles of each.</summary>
    internal int Axles => axles;

    /// <summary>Axle loads of a truck, front to back [N].</summary>
    internal ReadOnlySpan<double> Loads(int truck) => loads.AsSpan(truck * axles, axles);

    /// <summary>Its gaps [m].</summary>
    internal ReadOnlySpan<double> Gaps(int truck) => gaps.AsSpan(truck * (axles - 1), axles - 1);
}
