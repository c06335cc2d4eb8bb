using MathNet.Numerics.Distributions;
using MathNet.Numerics.Random;

namespace SpanRater.Tests.Traffic;

/// <summary>The heaviest part of many weights, held against sorting them all.</summary>
public class GrossWeightsTests
{
    private const double Kip = 4448.2216152605;

    [Fact]
    public void HeaviestPart_OfTenByHand_IsThatOfTheTwoHeaviest()
    {
        GrossWeights weights = Of([10, 20, 30, 40, 50, 60, 70, 80, 90, 100]);
        (double mean, double deviation, double trucks) = weights.HeaviestPart(0.2)!.Value;
        Assert.Equal(2, trucks);
        Assert.Equal(95 * Kip, mean, 1e-6 * Kip);

        // √((5² + 5²)/(2 − 1)).
        Assert.Equal(Math.Sqrt(50) * Kip, deviation, 1e-6 * Kip);
    }

    [Fact]
    public void HeaviestPart_OfFourTrucks_IsNone() => Assert.Null(Of([10, 20, 30, 40]).HeaviestPart(0.2));

    [Fact]
    public void HeaviestPart_OfManyWeights_IsThatOfTheSorted()
    {
        var random = new MersenneTwister(4711);
        double[] kips = [.. Enumerable.Range(0, 20_000).Select(_ => Math.Abs(Normal.Sample(random, 45, 18)) + 3)];
        double[] heaviest = [.. kips.OrderDescending().Take(4000)];
        double mean = heaviest.Average(), deviation = Math.Sqrt(heaviest.Sum(k => (k - mean) * (k - mean)) / (heaviest.Length - 1));

        (double found, double spread, double trucks) = Of(kips).HeaviestPart(0.2)!.Value;

        // Of the bin that the fifth cuts through a part alike is taken: it holds some thirty of 4,000 trucks, within 0.1 kip.
        Assert.Equal(4000, trucks);
        Assert.Equal(mean, found / Kip, 0.1 * 40 / 4000);
        Assert.Equal(deviation, spread / Kip, 0.1 * 40 / 4000);
    }

    [Fact]
    public void Add_PartsOfARecord_AddUpToTheWhole()
    {
        double[] kips = [.. Enumerable.Range(1, 300).Select(i => 5 + (i * 37 % 111))];
        GrossWeights whole = Of(kips), parts = Of(kips[..100]);
        parts.Add(Of(kips[100..]));
        Assert.Equal((whole.Count, whole.Heaviest), (parts.Count, parts.Heaviest));
        Assert.Equal(whole.HeaviestPart(0.2)!.Value.Mean, parts.HeaviestPart(0.2)!.Value.Mean, 1e-9 * Kip);
        Assert.Equal(whole.HeaviestPart(0.2)!.Value.Deviation, parts.HeaviestPart(0.2)!.Value.Deviation, 1e-6 * Kip);
    }

    private static GrossWeights Of(double[] kips)
    {
        var weights = new GrossWeights();
        foreach (double kip in kips)
        {
            weights.Add(kip * Kip);
        }

        return weights;
    }
}
