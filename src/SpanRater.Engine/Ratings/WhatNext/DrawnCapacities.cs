using MathNet.Numerics.Distributions;
using MathNet.Numerics.Random;

namespace SpanRater;

/// <summary>Capacities of a member whose readings are drawn, each for itself, from a normal distribution about its value, held between nothing and as built.</summary>
/// <param name="Below">How many of them are below the capacity at which the factor is 1.</param>
/// <param name="Least">The least of them [N].</param>
/// <param name="Middle">As many are below as above it [N].</param>
/// <param name="Most">The largest of them [N].</param>
public sealed record DrawnCapacities(int Below, double Least, double Middle, double Most)
{
    internal static DrawnCapacities Of(double needed, RowCase row, IReadOnlyList<Reading> readings)
    {
        var random = new MersenneTwister(DoubtfulFactor.Seed);
        Normal[] spreads = [.. readings.Select(r => new Normal(r.Value, r.Doubt / DoubtfulFactor.DeviationsInDoubt, random))];
        double[] capacities = new double[DoubtfulFactor.Samples];
        for (int i = 0; i < capacities.Length; i++)
        {
            (Reading, double)[] drawn = [.. readings.Select((r, k) => (r, r.Held(spreads[k].Sample())))];
            capacities[i] = row.With(drawn) is { } make ? row.CapacityOf(make) : 0;
        }

        int below = capacities.Count(c => c < needed);
        Array.Sort(capacities);
        return new DrawnCapacities(below, capacities[0], capacities[capacities.Length / 2], capacities[^1]);
    }
}

/// <summary>The chance that a factor is below 1 where one reading alone has a doubt: by the normal distribution itself, without drawing.</summary>
/// <param name="Reading">The reading.</param>
/// <param name="At">The value at which the factor is 1 [m]; null where it is on one side of 1 for every value that there can be.</param>
/// <param name="Chance">The chance [-].</param>
public sealed record ChanceByTheCurve(Reading Reading, double? At, double Chance)
{
    private const double FarAway = 10;

    internal static ChanceByTheCurve Of(double needed, RowCase row, Reading reading)
    {
        double deviation = reading.Doubt / DoubtfulFactor.DeviationsInDoubt, far = FarAway * deviation;
        bool IsBelow(double value) => row.With([(reading, reading.Held(value))]) is not { } make || row.CapacityOf(make) < needed;
        (double bad, double good) = reading.MoreIsBetter ? (reading.Value - far, reading.Value + far) : (reading.Value + far, reading.Value - far);
        if (IsBelow(good) || !IsBelow(bad))
        {
            return new ChanceByTheCurve(reading, null, IsBelow(good) ? 1 : 0);
        }

        for (int i = 0; i < 60; i++)
        {
            double middle = (bad + good) / 2;
            (bad, good) = IsBelow(middle) ? (middle, good) : (bad, middle);
        }

        double below = Normal.CDF(reading.Value, deviation, good);
        return new ChanceByTheCurve(reading, good, reading.MoreIsBetter ? below : 1 - below);
    }
}
