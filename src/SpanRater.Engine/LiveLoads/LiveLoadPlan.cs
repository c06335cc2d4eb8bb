namespace SpanRater;

/// <summary>
/// A live load ready to be brought onto influence lines of one deck: for each line and sense the ways to load the deck of
/// which the worst counts, each with its parts. Whole vehicles and lanes on one truss, without share and impact. Immutable.
/// </summary>
public sealed class LiveLoadPlan
{
    private readonly LiveLoad load;
    private readonly List<(Vehicle Vehicle, RollingPlan Plan)> trains = [];

    /// <summary>Prepares a live load.</summary>
    /// <param name="stations">x of the panel points, strictly increasing, at least two [m].</param>
    /// <param name="load">The live load.</param>
    public LiveLoadPlan(IReadOnlyList<double> stations, LiveLoad load)
    {
        ArgumentNullException.ThrowIfNull(load);
        this.load = load;
        IReadOnlyList<Vehicle> vehicles = load switch
        {
            Vehicle vehicle => [vehicle],
            Loading loading => loading.Trains,
            _ => [],
        };
        trains.AddRange(vehicles.Select(v => (v, new RollingPlan(stations, v.Train))));
    }

    /// <summary>The ways to load the deck that have an effect in a sense.</summary>
    /// <param name="line">An influence line over the same stations.</param>
    /// <param name="sense">The sense.</param>
    /// <param name="isChord">True where a chord is rated, which decides the concentrated load of a lane.</param>
    /// <param name="width">Width of a crowd [m].</param>
    public IEnumerable<LiveEffect> EffectsOn(InfluenceLine line, Sense sense, bool isChord = false, double width = 0)
    {
        ArgumentNullException.ThrowIfNull(line);
        LivePart[] lane = load is Loading { Lane: { } ofLane } ? [.. LaneOn(line, sense, ofLane, isChord)] : [];
        bool together = load is Loading { Lane.StandsAlone: false };
        bool trainSeen = false;
        foreach ((Vehicle vehicle, RollingPlan plan) in trains)
        {
            if (plan.PeakOf(line, sense) is { } peak)
            {
                trainSeen = true;
                var axles = new LivePart.Axles(vehicle, peak, LoadedLength(line, sense, peak.Axles));
                yield return new LiveEffect(together ? [axles, .. lane] : [axles]);
            }
        }

        if (lane.Length > 0 && !(together && trainSeen))
        {
            yield return new LiveEffect(lane);
        }

        if (load is TrackedVehicle tracked && PatchSearch.PeakOf(line, tracked.Weight, tracked.Length, sense) is { } patch)
        {
            yield return new LiveEffect([new LivePart.Tracks(tracked, patch, LoadedLength(line, sense, s => Math.Abs(line.AreaOver(Overlap(s, patch.Stretch)))))]);
        }

        if (load is Crowd crowd && AdverseLoad.Of(line, sense, crowd.Intensity, width) is { } people)
        {
            yield return new LiveEffect([new LivePart.OfCrowd(crowd, people)]);
        }
    }

    /// <summary>The way to load the deck that brings most, impact and share aside; null where there is none.</summary>
    /// <param name="line">An influence line over the same stations.</param>
    /// <param name="sense">The sense.</param>
    /// <param name="isChord">True where a chord is rated.</param>
    /// <param name="width">Width of a crowd [m].</param>
    public LiveEffect? MostOn(InfluenceLine line, Sense sense, bool isChord = false, double width = 0) =>
        EffectsOn(line, sense, isChord, width).MaxBy(e => Math.Abs(e.Force));

    /// <summary>
    /// Length of the stretch of a member's line, in the sense rated, that holds the vehicle: the one that gives most of the
    /// effect [m]; 0 where the line has no such stretch.
    /// </summary>
    internal static double LoadedLength(InfluenceLine line, Sense sense, IReadOnlyList<AxleEffect> axles)
    {
        double sign = sense == Sense.Tension ? 1 : -1;
        return LoadedLength(line, sense, region => axles.Where(a => a.Station >= region.Left && a.Station <= region.Right).Sum(a => sign * a.Effect));
    }

    private static double LoadedLength(InfluenceLine line, Sense sense, Func<DeckStretch, double> effect)
    {
        IReadOnlyList<DeckStretch> regions = line.Regions(sense);
        return regions.Count == 0 ? 0 : regions.MaxBy(effect).Length;
    }

    private static DeckStretch Overlap(DeckStretch one, DeckStretch other)
    {
        double left = Math.Max(one.Left, other.Left);
        return new DeckStretch(left, Math.Max(left, Math.Min(one.Right, other.Right)));
    }

    private static IEnumerable<LivePart> LaneOn(InfluenceLine line, Sense sense, LaneLoad lane, bool isChord)
    {
        if (AdverseLoad.Of(line, sense, lane.Intensity, 0) is not { } load)
        {
            yield break;
        }

        yield return new LivePart.OfLane(lane, load);
        if (lane.PointFor(isChord) is { } point && line.Peak(sense) is { } at)
        {
            yield return new LivePart.PointOfLane(lane, point, at.Station, at.Ordinate, load.Length);
        }
    }
}
