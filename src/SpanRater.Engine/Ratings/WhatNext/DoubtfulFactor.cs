using MathNet.Numerics.Distributions;
using MathNet.Numerics.Random;

namespace SpanRater;

/// <summary>The factor of a row as the doubts of its member's readings leave it.</summary>
/// <param name="Row">The row.</param>
/// <param name="Low">With every reading off by its doubt to the bad side [-].</param>
/// <param name="Likely">As read [-].</param>
/// <param name="High">With every reading off by its doubt to the good side; no more than as built remains [-].</param>
/// <param name="ChanceBelowOne">Part of the samples in which the factor is below 1 [-].</param>
public sealed record DoubtfulFactor(MemberRow Row, double Low, double Likely, double High, double ChanceBelowOne)
{
    /// <summary>Samples drawn for each row.</summary>
    public const int Samples = 5_000;

    /// <summary>Standard deviations in a doubt: about 19 of 20 readings are within it.</summary>
    public const double DeviationsInDoubt = 2;

    /// <summary>Seed of the samples, so that the same input gives the same numbers.</summary>
    public const int Seed = 1908;

    /// <summary>Standard error of the chance by the sampling alone [-].</summary>
    public double StandardError => Math.Sqrt(ChanceBelowOne * (1 - ChanceBelowOne) / Samples);

    /// <summary>
    /// The factor with the doubts of its readings; null where no reading has a doubt. Each reading is drawn for itself from a normal
    /// distribution about its value, held between nothing and as built.
    /// </summary>
    internal static DoubtfulFactor? Of(RowCase row)
    {
        Reading[] readings = [.. Reading.Of(row.Make.Section).Where(r => r.Doubt > 0)];
        if (readings.Length == 0)
        {
            return null;
        }

        return new DoubtfulFactor(
            row.Row,
            row.FactorWith(readings.Select(r => (r, r.AtWorst))),
            row.Row.Factor!.Value,
            row.FactorWith(readings.Select(r => (r, r.AtBest))),
            row.NeededCapacity() is { } needed ? ChanceBelow(needed, row, readings) : 1);
    }

    private static double ChanceBelow(double needed, RowCase row, Reading[] readings)
    {
        var random = new MersenneTwister(Seed);
        Normal[] spreads = [.. readings.Select(r => new Normal(r.Value, r.Doubt / DeviationsInDoubt, random))];
        int below = 0;
        for (int i = 0; i < Samples; i++)
        {
            (Reading, double)[] drawn = [.. readings.Select((r, k) => (r, r.Held(spreads[k].Sample())))];
            below += row.With(drawn) is { } make && row.CapacityOf(make) >= needed ? 0 : 1;
        }

        return below / (double)Samples;
    }
}
