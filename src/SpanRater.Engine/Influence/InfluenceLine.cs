namespace SpanRater;

/// <summary>The two senses of an axial force.</summary>
public enum Sense
{
    /// <summary>The member is pulled; the force is positive.</summary>
    Tension,

    /// <summary>The member is pressed; the force is negative.</summary>
    Compression,
}

/// <summary>A stretch of the deck.</summary>
/// <param name="Left">Station of its left end [m].</param>
/// <param name="Right">Station of its right end [m].</param>
public readonly record struct DeckStretch(double Left, double Right)
{
    /// <summary>Length [m].</summary>
    public double Length => Right - Left;
}

/// <summary>
/// The effect of a unit downward load as it moves over the deck: straight between panel points, zero off the ends of
/// the deck. Immutable.
/// </summary>
public sealed class InfluenceLine
{
    private readonly double[] stations;
    private readonly double[] ordinates;

    /// <summary>Makes a line from its ordinates at the panel points.</summary>
    /// <param name="stations">x of the panel points, strictly increasing, at least two [m].</param>
    /// <param name="ordinates">Effect of a unit downward load at each of them [effect/load]; same length.</param>
    /// <exception cref="ArgumentException">The lengths differ, there are fewer than two, the stations do not increase, or a number is not finite.</exception>
    public InfluenceLine(IReadOnlyList<double> stations, IReadOnlyList<double> ordinates)
    {
        ArgumentNullException.ThrowIfNull(ordinates);
        this.stations = DeckStations.Checked(stations);
        if (ordinates.Count != stations.Count)
        {
            throw new ArgumentException($"{ordinates.Count} ordinates for {stations.Count} stations; there must be one each.", nameof(ordinates));
        }

        this.ordinates = [.. ordinates];
        if (!this.ordinates.All(double.IsFinite))
        {
            throw new ArgumentException("Every ordinate must be a finite number.", nameof(ordinates));
        }
    }

    /// <summary>x of the panel points, strictly increasing [m].</summary>
    public IReadOnlyList<double> Stations => stations;

    /// <summary>Effect of a unit downward load at each panel point [effect/load].</summary>
    public IReadOnlyList<double> Ordinates => ordinates;

    /// <summary>The ordinates where a search reads them thousands of times.</summary>
    internal ReadOnlySpan<double> OrdinateSpan => ordinates;

    /// <summary>Whether the line has these stations.</summary>
    /// <param name="others">Stations [m].</param>
    internal bool HasStations(double[] others) => ReferenceEquals(stations, others) || stations.AsSpan().SequenceEqual(others);

    /// <summary>Effect of a unit downward load at a station; zero off the deck, whose ends belong to it.</summary>
    /// <param name="station">x of the load [m].</param>
    public double OrdinateAt(double station)
    {
        if (!(station >= stations[0] && station <= stations[^1]))
        {
            return 0;
        }

        int i = Array.BinarySearch(stations, station);
        if (i >= 0)
        {
            return ordinates[i];
        }

        int right = ~i;
        double t = (station - stations[right - 1]) / (stations[right] - stations[right - 1]);
        return ((1 - t) * ordinates[right - 1]) + (t * ordinates[right]);
    }

    /// <summary>The stretches of the deck over which the line has the given sense, from left to right; their ends are neutral points or deck ends.</summary>
    /// <param name="sense">Tension: positive ordinates; compression: negative ones.</param>
    public IReadOnlyList<DeckStretch> Regions(Sense sense)
    {
        double sign = sense == Sense.Tension ? 1 : -1;
        var regions = new List<DeckStretch>();
        double? start = sign * ordinates[0] > 0 ? stations[0] : null;
        for (int i = 1; i < stations.Length; i++)
        {
            double left = sign * ordinates[i - 1], right = sign * ordinates[i];
            if (start is null && right > 0)
            {
                start = left >= 0 ? stations[i - 1] : NeutralPoint(i);
            }
            else if (start is { } from && right <= 0)
            {
                regions.Add(new DeckStretch(from, right == 0 ? stations[i] : NeutralPoint(i)));
                start = null;
            }
        }

        if (start is { } last)
        {
            regions.Add(new DeckStretch(last, stations[^1]));
        }

        return regions;
    }

    /// <summary>Stations within the deck where the line passes through zero from one sign to the other [m].</summary>
    public IReadOnlyList<double> NeutralPoints()
    {
        var points = new List<double>();
        double previous = ordinates[0];
        int previousIndex = 0;
        for (int i = 1; i < ordinates.Length; i++)
        {
            if (ordinates[i] == 0)
            {
                continue;
            }

            if (previous != 0 && (previous > 0) != (ordinates[i] > 0))
            {
                // Over a stretch of zero ordinates the change of sign is put at its middle.
                points.Add(i - previousIndex == 1 ? NeutralPoint(i) : (stations[previousIndex + 1] + stations[i - 1]) / 2);
            }

            previous = ordinates[i];
            previousIndex = i;
        }

        return points;
    }

    /// <summary>Area under the line where it has the given sense, with the sign of that sense [effect/load · m].</summary>
    /// <param name="sense">Tension: positive ordinates; compression: negative ones.</param>
    public double Area(Sense sense) => Regions(sense).Sum(AreaOver);

    /// <summary>Area under the line over a stretch, with its sign [effect/load · m]; what is off the deck counts nothing.</summary>
    /// <param name="stretch">The stretch.</param>
    public double AreaOver(DeckStretch stretch)
    {
        double x = Math.Max(stretch.Left, stations[0]), end = Math.Min(stretch.Right, stations[^1]);
        double area = 0, y = OrdinateAt(x);
        foreach (double next in x < end ? stations.Where(s => s > x && s < end).Append(end) : [])
        {
            double nextY = OrdinateAt(next);
            area += (next - x) * (y + nextY) / 2;
            (x, y) = (next, nextY);
        }

        return area;
    }

    /// <summary>The panel point with the largest ordinate in a sense, and that ordinate; null where there is none.</summary>
    /// <param name="sense">Tension: positive ordinates; compression: negative ones.</param>
    public (double Station, double Ordinate)? Peak(Sense sense)
    {
        double sign = sense == Sense.Tension ? 1 : -1;
        int at = Enumerable.Range(0, ordinates.Length).MaxBy(i => sign * ordinates[i]);
        return sign * ordinates[at] > 0 ? (stations[at], ordinates[at]) : null;
    }

    private double NeutralPoint(int right)
    {
        double a = ordinates[right - 1], b = ordinates[right];
        return stations[right - 1] + ((stations[right] - stations[right - 1]) * (a / (a - b)));
    }
}
