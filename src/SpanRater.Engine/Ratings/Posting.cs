namespace SpanRater;

/// <summary>
/// The posting that a rating leads to: for each legal type and each emergency vehicle its safe load, the limits of the
/// silhouettes, and whether the bridge is under the line of 3 US tons.
/// </summary>
public sealed class Posting
{
    private Posting(BridgeRating rating, bool atInventory, IReadOnlyList<RatingRow> rows)
    {
        Rating = rating;
        AtInventory = atInventory;
        Rows = rows;
        LiveLoad[] vehicles = [.. rating.Rows.Select(r => r.Vehicle).Distinct()];
        Others = [.. vehicles.Where(v => !IsPosted(v)).Select(v => OtherLoad.Of(v, rating))];
        Legal = [.. vehicles.Where(v => v.Class == VehicleClass.Legal).Select(RowOf)];
        Emergency = [.. vehicles.Where(v => v.Class == VehicleClass.Emergency).Select(RowOf)];
        Limits = Enum.GetValues<Silhouette>().ToDictionary(s => s, s => new PostingLimit([.. Legal.Where(r => r.Silhouette == s)]));
        OwnTypes = [.. Legal.Where(r => r.Silhouette is null)];
        Common = new PostingLimit(Legal);
        Smallest = Legal.Where(r => r.SafeLoad is not null).MinBy(r => r.SafeLoad);
        DeadExceeds = rating.Rows.FirstOrDefault(r => r.Status == RatingStatus.DeadExceeds && (r.Level.Governance == Governance.Inventory) == atInventory);
    }

    /// <summary>The rating.</summary>
    public BridgeRating Rating { get; }

    /// <summary>True where legal types are posted by their inventory rating.</summary>
    public bool AtInventory { get; }

    /// <summary>The rows of the rating that the posting rests on, in their order.</summary>
    public IReadOnlyList<RatingRow> Rows { get; }

    /// <summary>Every legal type.</summary>
    public IReadOnlyList<PostingRow> Legal { get; }

    /// <summary>Every emergency vehicle, apart from the legal types.</summary>
    public IReadOnlyList<PostingRow> Emergency { get; }

    /// <summary>Loads that take no part in a posting: design, screening, farm, permit, maintenance and crowds.</summary>
    public IReadOnlyList<OtherLoad> Others { get; }

    /// <summary>The limit of each silhouette.</summary>
    public IReadOnlyDictionary<Silhouette, PostingLimit> Limits { get; }

    /// <summary>Legal types that are not shipped: each has a limit of its own.</summary>
    public IReadOnlyList<PostingRow> OwnTypes { get; }

    /// <summary>One limit for all legal types.</summary>
    public PostingLimit Common { get; }

    /// <summary>The legal type with the smallest safe load of those that have one; null where none has.</summary>
    public PostingRow? Smallest { get; }

    /// <summary>The first row, of any vehicle, at which the dead load alone uses up the capacity; null where there is none.</summary>
    public RatingRow? DeadExceeds { get; }

    /// <summary>
    /// Whether the bridge is to be closed until an engineer has reviewed it: the smallest safe load is under 3 US tons before any
    /// rounding, or the dead load alone uses up a capacity. Source: 23 CFR 650.313, from memory.
    /// </summary>
    public bool Closure => DeadExceeds is not null || (Smallest?.SafeLoad is { } load && SafeLoad.IsUnderClosureLine(load));

    /// <summary>Whether it is known that the bridge is above that line, or under it: every legal type has a load that no missing capacity and no lane-type load may lower.</summary>
    public bool IsClosureKnown => Closure || (Common.Verdict is not (PostingVerdict.NotAsked or PostingVerdict.NotGiven) && !Common.IsAtMost);

    /// <summary>Types for which no load is given.</summary>
    public IEnumerable<PostingRow> NotGiven => Legal.Concat(Emergency).Where(r => r.Verdict == PostingVerdict.NotGiven);

    /// <summary>Whether every type that was asked for has a posting, and at least one legal type was asked for.</summary>
    public bool IsComplete => Legal.Count > 0 && !NotGiven.Any();

    /// <summary>The posting of a rating.</summary>
    /// <param name="rating">The rating.</param>
    /// <param name="atInventory">True to post legal types by their inventory rating, where the method has one.</param>
    /// <exception cref="ArgumentException">The method has no inventory rating of legal types.</exception>
    public static Posting Of(BridgeRating rating, bool atInventory = false)
    {
        ArgumentNullException.ThrowIfNull(rating);
        if (atInventory && !HasInventory(rating.Method, rating.Bridge.Rating))
        {
            throw new ArgumentException("The method has no inventory rating of legal types.", nameof(atInventory));
        }

        return new Posting(rating, atInventory, [.. rating.Rows.Where(r => Counts(r, atInventory))]);
    }

    /// <summary>Whether a method rates legal types at inventory level.</summary>
    /// <param name="method">The method.</param>
    /// <param name="settings">What the bridge says.</param>
    public static bool HasInventory(RatingMethod method, RatingSettings settings)
    {
        ArgumentNullException.ThrowIfNull(method);
        return method.LevelsOf(VehicleClass.Legal, settings).Any(l => l.Governance == Governance.Inventory);
    }

    /// <summary>The silhouette of a shipped legal type; null for any other vehicle.</summary>
    /// <param name="vehicle">The vehicle.</param>
    public static Silhouette? SilhouetteOf(LiveLoad vehicle)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        return SilhouetteOf(vehicle.Name);
    }

    /// <summary>The silhouette of a shipped legal type by its name; null for any other.</summary>
    /// <param name="name">The name.</param>
    public static Silhouette? SilhouetteOf(string name)
    {
        return name switch
        {
            "Type 3" or "SU4" or "SU5" or "SU6" or "SU7" => Silhouette.SingleUnit,
            "Type 3S2" => Silhouette.TractorSemitrailer,
            "Type 3-3" => Silhouette.TruckAndTrailer,
            _ => null,
        };
    }

    // What has no weight of its own, such as two trucks in one lane, has no tons to post.
    private static bool IsPosted(LiveLoad vehicle) =>
        vehicle.Class is VehicleClass.Legal or VehicleClass.Emergency && vehicle is not (Crowd or Loading { PostedWeight: null });

    // Emergency vehicles go by their operating rating, or by their own level where the method has one.
    private static bool Counts(RatingRow row, bool atInventory) =>
        IsPosted(row.Vehicle) && (row.Level.Governance == Governance.Inventory) == (atInventory && row.Vehicle.Class == VehicleClass.Legal);

    private PostingRow RowOf(LiveLoad vehicle)
    {
        RatingRow[] rows = [.. Rows.Where(r => r.Vehicle == vehicle)];
        bool isLegal = vehicle.Class == VehicleClass.Legal;
        var row = new PostingRow
        {
            Vehicle = vehicle,
            Silhouette = isLegal ? SilhouetteOf(vehicle) : null,
            Level = rows[0].Level,
            Rule = isLegal ? Rating.Method.LegalPosting : PostingRule.FactorTimesWeight,
            Verdict = PostingVerdict.NotGiven,
            LacksLaneType = isLegal && Rating.Stamps.OfType<Stamp.NoLaneTypeLegalLoad>().Any(),
            Unrated = [.. rows.Where(r => r.LacksCapacity)],
        };

        // A capacity that the dead load uses up holds whatever the vehicle, rated or not.
        if (rows.FirstOrDefault(r => r.Status == RatingStatus.DeadExceeds) is { } dead)
        {
            return row with { Verdict = PostingVerdict.Barred, Lowest = dead, SafeLoad = 0 };
        }

        if (rows.FirstOrDefault(r => r.IsAboutItsVehicle) is { } notRated)
        {
            return row with { Reason = notRated.Reason };
        }

        if (rows.Where(r => r.Factor is not null).MinBy(r => Math.Round(r.Factor!.Value, 9)) is not { } lowest || row.Weight is not { } weight)
        {
            return row;
        }

        double factor = lowest.Factor!.Value;
        row = row with { Lowest = lowest, SafeLoad = SafeLoad.Of(weight, factor, row.Rule) };
        if (SafeLoad.IsEnough(factor))
        {
            return row with { Verdict = PostingVerdict.NotNeeded };
        }

        row = row with { Verdict = SafeLoad.IsBarred(factor, row.Rule) ? PostingVerdict.Barred : PostingVerdict.Posted };
        (bool hasSingle, bool hasTandem) = RearAxles(vehicle);
        return isLegal
            ? row
            : row with
            {
                SingleAxle = hasSingle ? factor * SafeLoad.EmergencySingleAxle : null,
                Tandem = hasTandem ? factor * SafeLoad.EmergencyTandem : null,
            };
    }

    // Axles behind the front one: alone, or within a tandem's spacing of a neighbour.
    private static (bool Single, bool Tandem) RearAxles(LiveLoad vehicle)
    {
        if (vehicle is not Vehicle { Train: { } train })
        {
            return (false, false);
        }

        bool[] near = [.. train.Gaps.Select(g => g.Least <= SafeLoad.TandemSpacing + 1e-9)];
        bool InTandem(int axle) => near[axle - 1] || (axle < near.Length && near[axle]);
        int[] rear = [.. Enumerable.Range(1, near.Length)];
        return (near.Length == 0 || rear.Any(a => !InTandem(a)), near.Any(n => n));
    }
}
