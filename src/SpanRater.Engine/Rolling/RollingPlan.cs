namespace SpanRater;

/// <summary>
/// The exact search for the peaks of a train on influence lines that are straight between given stations. Between the
/// positions at which an axle stands on a station the response is straight, so the peaks are among those positions; all of
/// them are visited, in both directions, with no step size. Where a gap may vary they are at its limits, or where an axle
/// ahead of it and an axle behind it both stand on stations. Nothing here knows of a truss. Immutable; safe to share.
/// </summary>
/// <remarks>
/// Source: the response of straight pieces to point loads is straight between its breakpoints, so that a maximum of a
/// linear function over a polyhedron is at a vertex (any text on linear programming). Relieving axles left out make each
/// axle's effect convex, which moves no maximum off a vertex.
/// </remarks>
public sealed class RollingPlan
{
    /// <summary>An axle closer to a panel point than this part of the deck's length stands on it [-].</summary>
    internal const double OnPanelPoint = 1e-9;

    /// <summary>An effect below this part of the train's weight is zero [-].</summary>
    internal const double ZeroEffect = 1e-9;

    /// <summary>
    /// Effects closer than this part of the train's weight are equal [-]: well above the round-off of ordinates and sums,
    /// and so far below <see cref="ZeroEffect"/> that preferring an equal one at each free gap costs nothing that counts.
    /// </summary>
    private const double EqualEffect = 1e-12;

    private readonly double[] stations;
    private readonly List<Arrangement> arrangements;

    /// <summary>Prepares the search for one train on one deck.</summary>
    /// <param name="stations">x of the panel points, strictly increasing, at least two [m].</param>
    /// <param name="train">The train.</param>
    public RollingPlan(IReadOnlyList<double> stations, AxleTrain train)
    {
        ArgumentNullException.ThrowIfNull(train);
        this.stations = DeckStations.Checked(stations);
        Train = train;
        arrangements = Arrangement.All(this.stations, train);
    }

    /// <summary>The train.</summary>
    public AxleTrain Train { get; }

    /// <summary>The largest effect of the train in each sense.</summary>
    /// <param name="line">An influence line over the same stations.</param>
    /// <exception cref="ArgumentException">The line has other stations.</exception>
    public PeakPair PeaksOf(InfluenceLine line)
    {
        ArgumentNullException.ThrowIfNull(line);
        if (!line.HasStations(stations))
        {
            throw new ArgumentException("The influence line must have the stations that the plan was made for.", nameof(line));
        }

        return new PeakPair(Search(line.OrdinateSpan, 1), Search(line.OrdinateSpan, -1));
    }

    /// <summary>The largest effect of the train in one sense; null where it has none.</summary>
    /// <param name="line">An influence line over the same stations.</param>
    /// <param name="sense">The sense.</param>
    /// <exception cref="ArgumentException">The line has other stations.</exception>
    public Peak? PeakOf(InfluenceLine line, Sense sense)
    {
        ArgumentNullException.ThrowIfNull(line);
        if (!line.HasStations(stations))
        {
            throw new ArgumentException("The influence line must have the stations that the plan was made for.", nameof(line));
        }

        return Search(line.OrdinateSpan, sense == Sense.Tension ? 1 : -1);
    }

    /// <summary>The best few placements of the search in one sense, each direction apart.</summary>
    /// <param name="line">An influence line over the same stations.</param>
    /// <param name="sense">The sense.</param>
    /// <param name="count">How many of each direction, at most.</param>
    /// <exception cref="ArgumentException">The line has other stations.</exception>
    public PlacementCandidates CandidatesOf(InfluenceLine line, Sense sense, int count)
    {
        ArgumentNullException.ThrowIfNull(line);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(count);
        if (!line.HasStations(stations))
        {
            throw new ArgumentException("The influence line must have the stations that the plan was made for.", nameof(line));
        }

        var search = new CandidateSearch([.. line.Ordinates], sense == Sense.Tension ? 1 : -1, Train, EqualEffect * Train.Weight, ZeroEffect * Train.Weight);
        foreach (Arrangement arrangement in arrangements)
        {
            search.Visit(arrangement);
        }

        return new PlacementCandidates(search.Positions, search.Best(Direction.Right, count), search.Best(Direction.Left, count));
    }

    private Peak? Search(ReadOnlySpan<double> ordinates, double sign)
    {
        bool isLoaded = false;
        foreach (double y in ordinates)
        {
            isLoaded |= sign * y > 0;
        }

        if (!isLoaded)
        {
            return null;
        }

        bool leaveOut = Train.RelievingAxles == RelievingAxles.LeftOut;
        var search = new PeakSearch(EqualEffect * Train.Weight, ZeroEffect * Train.Weight);
        foreach (Arrangement arrangement in arrangements)
        {
            arrangement.Search(ordinates, sign, leaveOut, search);
        }

        return search.Result(ordinates, sign, leaveOut);
    }
}
