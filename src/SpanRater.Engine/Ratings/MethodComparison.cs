namespace SpanRater;

/// <summary>One bridge rated for the same vehicles by every method there is. What is compared is never one number: each method has its own levels.</summary>
public sealed class MethodComparison
{
    private MethodComparison(Bridge bridge, IReadOnlyList<LiveLoad> vehicles, IReadOnlyList<BridgeRating> ratings)
    {
        Bridge = bridge;
        Ratings = ratings;
        Results =
        [
            .. vehicles.SelectMany(v => ratings.SelectMany(r => r.Method.LevelsOf(v.Class, bridge.Rating).Select(l => MethodResult.Of(
                r.Method, v, l, [.. r.Rows.Where(row => row.Vehicle == v && row.Level.Name == l.Name)])))),
        ];
    }

    /// <summary>The bridge.</summary>
    public Bridge Bridge { get; }

    /// <summary>The rating by each method.</summary>
    public IReadOnlyList<BridgeRating> Ratings { get; }

    /// <summary>What each method comes to at each of its levels, by vehicle in the order asked.</summary>
    public IReadOnlyList<MethodResult> Results { get; }

    /// <summary>Rows that have no capacity by a method, in the order of the members, then of the other parts.</summary>
    /// <param name="method">The method.</param>
    public IEnumerable<RatingRow> Missing(RatingMethod method) =>
        Results.Where(r => r.Method == method).SelectMany(r => r.Unrated).OrderBy(r => r is MemberRow m ? (int)method.CapacityFor(m.Sense, m.Level) : int.MaxValue).ThenBy(r => r.Part).ThenBy(r => r.Order);

    /// <summary>Rates the bridge by every method.</summary>
    /// <param name="bridge">The bridge; it must have the dead load case DC.</param>
    /// <param name="vehicles">The vehicles, loadings and crowds.</param>
    /// <param name="stop">Ends the work between two vehicles.</param>
    /// <exception cref="ArgumentException">The bridge has no case DC.</exception>
    /// <exception cref="OperationCanceledException">It was told to stop.</exception>
    public static Outcome<MethodComparison> Of(Bridge bridge, IReadOnlyList<LiveLoad> vehicles, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(vehicles);
        var ratings = new List<BridgeRating>();
        foreach (RatingMethod method in RatingMethod.All)
        {
            if (!BridgeRater.Rate(bridge, method, vehicles, stop).TryGet(out BridgeRating? rating, out Refusal? refusal))
            {
                return refusal;
            }

            ratings.Add(rating);
        }

        return new MethodComparison(bridge, vehicles, ratings);
    }
}

/// <summary>What one method comes to for a vehicle at one of its levels.</summary>
public sealed record MethodResult
{
    /// <summary>The method.</summary>
    public required RatingMethod Method { get; init; }

    /// <summary>The vehicle.</summary>
    public required LiveLoad Vehicle { get; init; }

    /// <summary>The level.</summary>
    public required RatingLevel Level { get; init; }

    /// <summary>The row of the lowest factor; null where there is none.</summary>
    public RatingRow? Lowest { get; init; }

    /// <summary>Why the whole vehicle is not rated; null where it is.</summary>
    public NotRatedReason? Reason { get; init; }

    /// <summary>Rows that a capacity is missing for: the factor is at most what is given.</summary>
    public required IReadOnlyList<RatingRow> Unrated { get; init; }

    /// <summary>Whether the factor is at most what is given.</summary>
    public bool IsAtMost => Lowest is { Status: not RatingStatus.DeadExceeds } && Unrated.Count > 0;

    /// <summary>The result of the rows of a vehicle at a level, which stand in their order.</summary>
    internal static MethodResult Of(RatingMethod method, LiveLoad vehicle, RatingLevel level, IReadOnlyList<RatingRow> rows)
    {
        RatingRow? dead = rows.FirstOrDefault(r => r.Status == RatingStatus.DeadExceeds);
        NotRatedReason? reason = dead is null ? rows.FirstOrDefault(r => r.IsAboutItsVehicle)?.Reason : null;
        return new MethodResult
        {
            Method = method,
            Vehicle = vehicle,
            Level = level,
            Reason = reason,
            Lowest = reason is null ? dead ?? rows.Where(r => r.Factor is not null).MinBy(r => Math.Round(r.Factor!.Value, 9)) : null,
            Unrated = [.. rows.Where(r => r.LacksCapacity)],
        };
    }
}
