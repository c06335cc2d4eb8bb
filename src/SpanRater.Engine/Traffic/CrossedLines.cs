namespace SpanRater;

/// <summary>
/// The influence lines of many effects over the same stations, laid out for crossing many trains. Immutable; shared by threads,
/// each of which has a <see cref="CrossingSearch"/> of its own.
/// </summary>
public sealed class CrossedLines
{
    private CrossedLines(double[] stations, double[][] ordinates)
    {
        Stations = stations;
        Ordinates = ordinates;
    }

    /// <summary>Number of lines.</summary>
    public int Count => Ordinates.Length;

    /// <summary>x of the panel points, strictly increasing [m].</summary>
    internal double[] Stations { get; }

    /// <summary>Effect of a unit load [lines × panel points].</summary>
    internal double[][] Ordinates { get; }

    /// <summary>Lays out lines for the search.</summary>
    /// <param name="stations">x of the panel points, strictly increasing, at least two [m].</param>
    /// <param name="lines">The lines, each over these stations; none is allowed.</param>
    /// <exception cref="ArgumentException">The stations are no deck, or a line has other stations.</exception>
    public static CrossedLines Of(IReadOnlyList<double> stations, IReadOnlyList<InfluenceLine> lines)
    {
        double[] deck = DeckStations.Checked(stations);
        ArgumentNullException.ThrowIfNull(lines);
        for (int i = 0; i < lines.Count; i++)
        {
            if (!lines[i].Stations.SequenceEqual(deck))
            {
                throw new ArgumentException($"Line {i} must have the stations given.", nameof(lines));
            }
        }

        return new CrossedLines(deck, [.. lines.Select(line => line.Ordinates.ToArray())]);
    }
}
