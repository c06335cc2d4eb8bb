namespace SpanRater;

/// <summary>The largest effect of a patch of even load in one sense, and where it lay.</summary>
/// <param name="Force">Signed effect [N].</param>
/// <param name="Stretch">Where the patch lay; it may reach beyond the deck, where it does nothing.</param>
public sealed record PatchPeak(double Force, DeckStretch Stretch);

/// <summary>
/// The exact search for the peaks of an even load of a fixed length, as of a tracked vehicle, on influence lines that are straight
/// between stations. The effect is the load per length times the area of the line under the patch, so that its slope is the
/// difference of the ordinates under the two ends: straight between the positions at which an end stands on a station. The
/// peaks are at those positions, and where the two ordinates are equal in between; all of them are visited.
/// </summary>
/// <remarks>Source: the placement of a uniform load shorter than the span, any text on influence lines: the ordinates at its ends are equal.</remarks>
public static class PatchSearch
{
    /// <summary>The largest effect in a sense; null where there is none.</summary>
    /// <param name="line">The influence line.</param>
    /// <param name="weight">Whole load of the patch, positive [N].</param>
    /// <param name="length">Its length, positive [m].</param>
    /// <param name="sense">The sense.</param>
    public static PatchPeak? PeakOf(InfluenceLine line, double weight, double length, Sense sense)
    {
        ArgumentNullException.ThrowIfNull(line);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(weight);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(length);
        double sign = sense == Sense.Tension ? 1 : -1;
        double[] corners = [.. line.Stations.Concat(line.Stations.Select(s => s - length)).Order()];
        PatchPeak? peak = null;
        foreach (double left in corners.Concat(EqualEnds(line, length, corners)))
        {
            var stretch = new DeckStretch(left, left + length);
            double force = weight / length * line.AreaOver(stretch);
            if (sign * force > Math.Max(sign * (peak?.Force ?? 0), weight * 1e-9))
            {
                peak = new PatchPeak(force, stretch);
            }
        }

        return peak;
    }

    // Between two corners the difference of the end ordinates is straight; two points inside tell where it passes zero.
    private static IEnumerable<double> EqualEnds(InfluenceLine line, double length, double[] corners)
    {
        double Difference(double left) => line.OrdinateAt(left + length) - line.OrdinateAt(left);
        for (int i = 1; i < corners.Length; i++)
        {
            double from = corners[i - 1], span = corners[i] - from;
            double one = from + (span / 4), other = from + (3 * span / 4);
            double atOne = Difference(one), atOther = Difference(other);
            if (span > 0 && atOne != atOther)
            {
                double zero = one + ((other - one) * (atOne / (atOne - atOther)));
                if (zero > from && zero < corners[i])
                {
                    yield return zero;
                }
            }
        }
    }
}
