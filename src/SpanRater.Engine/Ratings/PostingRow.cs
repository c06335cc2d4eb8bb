namespace SpanRater;

/// <summary>The silhouettes of a posting sign.</summary>
public enum Silhouette
{
    /// <summary>A truck without a trailer: Type 3 and the special hauling vehicles SU4 to SU7.</summary>
    SingleUnit,

    /// <summary>A tractor with a semitrailer: Type 3S2.</summary>
    TractorSemitrailer,

    /// <summary>A truck with a full trailer: Type 3-3.</summary>
    TruckAndTrailer,
}

/// <summary>What a posting comes to.</summary>
public enum PostingVerdict
{
    /// <summary>The factor is at least 1: no posting for this type.</summary>
    NotNeeded,

    /// <summary>The type is posted.</summary>
    Posted,

    /// <summary>The type may not cross.</summary>
    Barred,

    /// <summary>No load is given, since the type is not rated.</summary>
    NotGiven,

    /// <summary>No type was asked for.</summary>
    NotAsked,
}

/// <summary>The posting of one type of vehicle, legal or emergency, with what led to it.</summary>
public sealed record PostingRow
{
    /// <summary>The vehicle.</summary>
    public required LiveLoad Vehicle { get; init; }

    /// <summary>Its silhouette; null for emergency vehicles and for types that are not shipped.</summary>
    public Silhouette? Silhouette { get; init; }

    /// <summary>The level whose factor counts.</summary>
    public required RatingLevel Level { get; init; }

    /// <summary>How its safe load follows from the factor.</summary>
    public required PostingRule Rule { get; init; }

    /// <summary>What it comes to.</summary>
    public required PostingVerdict Verdict { get; init; }

    /// <summary>The row of the lowest factor; null where no load is given.</summary>
    public RatingRow? Lowest { get; init; }

    /// <summary>Weight that the factor is applied to: the gross weight, or that of a loading's own rule [N]; null where there is none.</summary>
    public double? Weight => SpanRater.SafeLoad.WeightOf(Vehicle);

    /// <summary>Safe load, RF × W where the factor is at least 1 [N]; null where none is given.</summary>
    public double? SafeLoad { get; init; }

    /// <summary>Limit of a single rear axle [N]; null but for emergency vehicles that have one and are posted.</summary>
    public double? SingleAxle { get; init; }

    /// <summary>Limit of a tandem [N]; null but for emergency vehicles that have one and are posted.</summary>
    public double? Tandem { get; init; }

    /// <summary>Whole US tons; null where the type is not posted.</summary>
    public int? Tons => Verdict is PostingVerdict.Posted or PostingVerdict.Barred ? SpanRater.SafeLoad.WholeTons(SafeLoad!.Value) : null;

    /// <summary>Rows without a capacity that this type loads: its safe load is at most what is given.</summary>
    public required IReadOnlyList<RatingRow> Unrated { get; init; }

    /// <summary>Whether a lane-type load counts as well, which was not asked for.</summary>
    public bool LacksLaneType { get; init; }

    /// <summary>Whether the safe load is at most what is given: a member that is loaded has no capacity, or the lane-type load is left out.</summary>
    public bool IsAtMost => Unrated.Count > 0 || LacksLaneType;

    /// <summary>Why no load is given; null where one is, or where no member has a factor.</summary>
    public NotRatedReason? Reason { get; init; }
}

/// <summary>The limit of several types: the smallest safe load among them.</summary>
/// <param name="Types">The types.</param>
public sealed record PostingLimit(IReadOnlyList<PostingRow> Types)
{
    /// <summary>The row that sets the limit; null where there is no limit.</summary>
    public PostingRow? SetBy { get; } =
        Types.FirstOrDefault(t => t.Verdict == PostingVerdict.Barred)
        ?? (Types.Any(t => t.Verdict == PostingVerdict.NotGiven) ? null : Types.Where(t => t.Verdict == PostingVerdict.Posted).MinBy(t => t.SafeLoad));

    /// <summary>What it comes to. A type that is barred bars all; one that is not rated leaves all without a limit.</summary>
    public PostingVerdict Verdict =>
        Types.Count == 0 ? PostingVerdict.NotAsked
        : SetBy is not null ? SetBy.Verdict
        : Types.Any(t => t.Verdict == PostingVerdict.NotGiven) ? PostingVerdict.NotGiven
        : PostingVerdict.NotNeeded;

    /// <summary>Whether the limit is at most what is given.</summary>
    public bool IsAtMost => Types.Any(t => t.IsAtMost);
}
