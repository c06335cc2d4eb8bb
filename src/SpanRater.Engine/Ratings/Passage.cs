namespace SpanRater;

/// <summary>Whether a vehicle may cross, as far as a rating tells.</summary>
public enum PassageVerdict
{
    /// <summary>Everything that a rating here can hold is rated for it, with factors of at least 1.</summary>
    Yes,

    /// <summary>A factor is below 1, the dead load alone uses up a capacity, or its ratings are withheld.</summary>
    No,

    /// <summary>No factor is below 1, and something that is needed is not rated.</summary>
    NotKnown,
}

/// <summary>Whether one vehicle may cross. Inventory is for lasting use, and its factors have no part in it; what withholds a rating withholds every level of it.</summary>
/// <param name="Vehicle">The vehicle or loading.</param>
/// <param name="Verdict">What it comes to.</param>
/// <param name="Deciding">The row with the lowest factor, or one by which the ratings are withheld; null where the vehicle has no factor.</param>
/// <param name="Gaps">What of the vehicle's own rating is missing; what is missing for every vehicle stands apart.</param>
public sealed record Passage(LiveLoad Vehicle, PassageVerdict Verdict, RatingRow? Deciding, IReadOnlyList<PassageGap> Gaps)
{
    /// <summary>Whether the ratings of the vehicle are withheld.</summary>
    public bool IsWithheld => Deciding?.Status == RatingStatus.Withheld;

    /// <summary>Whether the factor is at most what is given: something that the vehicle needs is not rated, and may be lower.</summary>
    public bool IsAtMost { get; init; }

    /// <summary>What is missing for every vehicle of a rating.</summary>
    /// <param name="rating">The rating.</param>
    public static IReadOnlyList<PassageGap> GapsForAll(BridgeRating rating)
    {
        ArgumentNullException.ThrowIfNull(rating);
        var gaps = new List<PassageGap>();
        if (rating.Bridge.Floor is not { } floor)
        {
            gaps.Add(new PassageGap.NoFloor());
        }
        else
        {
            if (floor.NotGiven.ToArray() is { Length: > 0 } notGiven)
            {
                gaps.Add(new PassageGap.FloorNotWhole(notGiven));
            }

            if (floor.Parts.Any(p => p is DeckPart { HasRule: false }))
            {
                gaps.Add(new PassageGap.DeckWithoutRule());
            }
        }

        if (rating.Bridge.Connections.Count == 0)
        {
            gaps.Add(new PassageGap.NoConnections());
        }

        gaps.AddRange(rating.Stamps.Select(s => (PassageGap?)(s switch
        {
            Stamp.PonyFramesNotRated => new PassageGap.FramesNotRated(),
            Stamp.TrussedFloorbeams t => new PassageGap.TrussedPostsNotRated(t.Parts),
            Stamp.FloorOutweighsTruss o => new PassageGap.DeadLoadsDisagree(o.Joint),
            _ => null,
        })).OfType<PassageGap>());
        return gaps;
    }

    /// <summary>The answer for every vehicle of a rating, in the order given.</summary>
    /// <param name="rating">The rating.</param>
    /// <param name="vehicles">Vehicles that were rated.</param>
    public static IReadOnlyList<Passage> Of(BridgeRating rating, IReadOnlyList<LiveLoad> vehicles)
    {
        ArgumentNullException.ThrowIfNull(rating);
        ArgumentNullException.ThrowIfNull(vehicles);
        bool lackForAll = GapsForAll(rating).Count > 0;
        var rows = new Dictionary<LiveLoad, List<RatingRow>>(ReferenceEqualityComparer.Instance);
        foreach (LiveLoad vehicle in vehicles)
        {
            rows[vehicle] = [];
        }

        foreach (RatingRow row in rating.Rows)
        {
            if (row.Level.Governance != Governance.Inventory && rows.TryGetValue(row.Vehicle, out List<RatingRow>? of))
            {
                of.Add(row);
            }
        }

        double? laneType = rating.Stamps.OfType<Stamp.NoLaneTypeLegalLoad>().FirstOrDefault()?.DeckLength;
        return [.. vehicles.Select(v => Of(v, rows[v], lackForAll, v.Class == VehicleClass.Legal ? laneType : null))];
    }

    private static Passage Of(LiveLoad vehicle, List<RatingRow> rows, bool lackForAll, double? laneType)
    {
        RatingRow? withheld = null, lowest = null, whole = null;
        var lacking = new List<RatingRow>();
        foreach (RatingRow row in rows)
        {
            withheld ??= row.Status == RatingStatus.Withheld ? row : null;
            whole ??= row.IsAboutItsVehicle ? row : null;
            if (row.LacksCapacity)
            {
                lacking.Add(row);
            }

            // Members that mirror each other differ in the last bits; the first of them counts.
            if (row.Factor is { } factor && (lowest is null || Math.Round(factor, 9) < Math.Round(lowest.Factor!.Value, 9)))
            {
                lowest = row;
            }
        }

        var gaps = new List<PassageGap>();
        if (vehicle.Class is VehicleClass.Design or VehicleClass.Screening)
        {
            gaps.Add(new PassageGap.StandsForOthers());
        }

        if (whole is { Status: not RatingStatus.Withheld })
        {
            gaps.Add(new PassageGap.VehicleNotRated(whole.Reason!));
        }

        if (lacking.Count > 0)
        {
            gaps.Add(new PassageGap.PartsNotRated(lacking));
        }

        if (lowest is null && withheld is null && whole is null)
        {
            gaps.Add(new PassageGap.NothingRated());
        }

        if (laneType is { } length)
        {
            gaps.Add(new PassageGap.LaneTypeLeftOut(length));
        }

        // A capacity that the dead load uses up, and a factor below 1, hold whatever else is missing.
        bool isTooHeavy = lowest is { Factor: { } least } && !SafeLoad.IsEnough(least);
        PassageVerdict verdict = gaps is [PassageGap.StandsForOthers, ..] ? PassageVerdict.NotKnown
            : isTooHeavy || withheld is not null ? PassageVerdict.No
            : gaps.Count > 0 || lackForAll || lowest is null ? PassageVerdict.NotKnown
            : PassageVerdict.Yes;
        return new Passage(vehicle, verdict, lowest is { Factor: 0 } ? lowest : withheld ?? lowest, gaps) { IsAtMost = lackForAll || gaps.Exists(g => g is not PassageGap.StandsForOthers) };
    }
}
