namespace SpanRater;

/// <summary>
/// Finds, for a train with fixed gaps, the greatest and the least effect on each line while it crosses, whichever way it drives:
/// the peaks of <see cref="RollingPlan"/> without where they occur. Holds the workspace of one thread.
/// </summary>
public sealed class CrossingSearch
{
    private readonly CrossedLines lines;
    private readonly double tolerance;

    /// <summary>Makes a workspace.</summary>
    /// <param name="lines">The lines that trains will cross.</param>
    public CrossingSearch(CrossedLines lines)
    {
        ArgumentNullException.ThrowIfNull(lines);
        this.lines = lines;
        tolerance = RollingPlan.OnPanelPoint * (lines.Stations[^1] - lines.Stations[0]);
    }

    /// <summary>Lets a train cross, once each way, every axle counted.</summary>
    /// <param name="loads">Axle loads, front to back, finite and not negative, at least one [N].</param>
    /// <param name="gaps">Distance of each axle from the one ahead, finite and not negative; one less than the axles [m].</param>
    /// <param name="greatest">Takes the greatest effect on each line in the worse direction, at least 0: before the train is on [N].</param>
    /// <param name="least">Takes the least effect, at most 0 [N].</param>
    /// <exception cref="ArgumentException">The lengths do not match, or a load or gap is negative or not finite.</exception>
    public void Cross(ReadOnlySpan<double> loads, ReadOnlySpan<double> gaps, Span<double> greatest, Span<double> least)
    {
        if (loads.Length == 0 || gaps.Length != loads.Length - 1)
        {
            throw new ArgumentException($"{gaps.Length} gaps for {loads.Length} axles; there must be at least one axle, and one gap less.", nameof(gaps));
        }

        greatest.Clear();
        least.Clear();
        var offsets = new double[loads.Length];
        double weight = 0;
        for (int k = 0; k < loads.Length; k++)
        {
            offsets[k] = k == 0 ? 0 : offsets[k - 1] + gaps[k - 1];
            weight += loads[k];
        }

        for (int i = 0; i < lines.Count; i++)
        {
            for (int toward = -1; toward <= 1; toward += 2)
            {
                for (int k = 0; k < loads.Length; k++)
                {
                    foreach (double station in lines.Stations)
                    {
                        for (int approach = -1; approach <= 1; approach++)
                        {
                            double effect = 0;
                            for (int a = 0; a < loads.Length; a++)
                            {
                                effect += loads[a] * OrdinateAt(i, station + (toward * (offsets[k] - offsets[a])), approach);
                            }

                            greatest[i] = Math.Max(greatest[i], effect);
                            least[i] = Math.Min(least[i], effect);
                        }
                    }
                }
            }

            greatest[i] = greatest[i] <= 1e-9 * weight ? 0 : greatest[i];
            least[i] = least[i] >= -1e-9 * weight ? 0 : least[i];
        }
    }

    private double OrdinateAt(int line, double x, int approach)
    {
        double[] s = lines.Stations, y = lines.Ordinates[line];
        if (x < s[0] - tolerance || x > s[^1] + tolerance
            || (approach < 0 && x <= s[0] + tolerance) || (approach > 0 && x >= s[^1] - tolerance))
        {
            return 0;
        }

        int right = 1;
        while (right < s.Length - 1 && s[right] < x)
        {
            right++;
        }

        double t = Math.Clamp((x - s[right - 1]) / (s[right] - s[right - 1]), 0, 1);
        return ((1 - t) * y[right - 1]) + (t * y[right]);
    }
}
