namespace SpanRater;

/// <summary>The one place that says what a row of stations must be.</summary>
internal static class DeckStations
{
    /// <summary>Copies the stations of a deck, or throws where they are not one.</summary>
    public static double[] Checked(IReadOnlyList<double> stations)
    {
        ArgumentNullException.ThrowIfNull(stations);
        if (stations.Count < 2)
        {
            throw new ArgumentException($"A deck has at least two panel points; {stations.Count} given.", nameof(stations));
        }

        for (int i = 0; i < stations.Count; i++)
        {
            if (!double.IsFinite(stations[i]) || (i > 0 && stations[i] <= stations[i - 1]))
            {
                throw new ArgumentException("Stations must be finite and strictly increasing.", nameof(stations));
            }
        }

        return [.. stations];
    }
}
