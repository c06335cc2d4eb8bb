namespace SpanRater;

/// <summary>A uniform load on stretches of the deck that add to an effect.</summary>
/// <param name="Intensity">Load per length, or per area [N/m or Pa].</param>
/// <param name="Stretches">Where it lies, from left to right.</param>
/// <param name="Area">Area of the influence line over them, signed [m].</param>
public sealed record AdverseLoad(double Intensity, IReadOnlyList<DeckStretch> Stretches, double Area)
{
    /// <summary>More stretches than these are not tried in every combination.</summary>
    private const int MostCombined = 10;

    /// <summary>A stretch whose ordinates are all smaller is round-off, as the effect of an axle is [-].</summary>
    private const double LeastOrdinate = 1e-9;

    /// <summary>The effect, signed [N, or N/m for a load per area].</summary>
    public double Effect => Intensity * Area;

    /// <summary>The loaded length [m].</summary>
    public double Length => Stretches.Sum(s => s.Length);

    /// <summary>
    /// The load that brings most in a sense; null where the line has no such stretch. Stretches are loaded whole. Where the
    /// intensity falls with the loaded length, one stretch may bring more than all of them: every choice of stretches is tried, of
    /// more than ten those of the largest mean ordinate first.
    /// </summary>
    /// <param name="line">The influence line.</param>
    /// <param name="sense">The sense.</param>
    /// <param name="intensity">The load.</param>
    /// <param name="width">Width of what is loaded, for intensities that ask for it [m].</param>
    public static AdverseLoad? Of(InfluenceLine line, Sense sense, LoadIntensity intensity, double width)
    {
        ArgumentNullException.ThrowIfNull(line);
        ArgumentNullException.ThrowIfNull(intensity);
        (DeckStretch Stretch, double Area)[] stretches = [.. line.Regions(sense).Where(r => HighestIn(line, r) > LeastOrdinate).Select(r => (r, line.AreaOver(r)))];
        AdverseLoad? most = null;
        foreach (var chosen in Choices(stretches))
        {
            var load = new AdverseLoad(
                intensity.At(chosen.Sum(s => s.Stretch.Length), width), [.. chosen.Select(s => s.Stretch)], chosen.Sum(s => s.Area));
            most = most is null || Math.Abs(load.Effect) > Math.Abs(most.Effect) ? load : most;
        }

        return most;
    }

    // Straight between stations and none at its ends but the deck's, the line is highest at a station.
    private static double HighestIn(InfluenceLine line, DeckStretch stretch) =>
        line.Stations.Where(s => s >= stretch.Left && s <= stretch.Right).Select(s => Math.Abs(line.OrdinateAt(s))).DefaultIfEmpty().Max();

    // All of them first, so that of equal choices the fullest one is told.
    private static IEnumerable<IReadOnlyList<(DeckStretch Stretch, double Area)>> Choices((DeckStretch Stretch, double Area)[] stretches)
    {
        if (stretches.Length == 0)
        {
            yield break;
        }

        yield return stretches;
        if (stretches.Length <= MostCombined)
        {
            for (int code = (1 << stretches.Length) - 2; code > 0; code--)
            {
                int bits = code;
                yield return [.. stretches.Where((_, i) => (bits & (1 << i)) != 0)];
            }

            yield break;
        }

        (DeckStretch Stretch, double Area)[] ranked = [.. stretches.OrderByDescending(s => Math.Abs(s.Area) / s.Stretch.Length)];
        for (int count = 1; count < ranked.Length; count++)
        {
            yield return [.. ranked.Take(count).OrderBy(s => s.Stretch.Left)];
        }
    }
}
