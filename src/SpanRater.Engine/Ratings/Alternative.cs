namespace SpanRater;

/// <summary>What could be changed about a bridge, or about the way it is used, to raise its factors.</summary>
public enum AlternativeKind
{
    /// <summary>Every vehicle alone on the roadway, in one lane at either kerb.</summary>
    OneLane,

    /// <summary>Every vehicle alone on the roadway and held on its middle.</summary>
    HeldToMiddle,

    /// <summary>Every vehicle at crawl speed, so that none takes impact.</summary>
    CrawlSpeed,

    /// <summary>The wearing surface taken off: no case DW at all.</summary>
    OverlayOff,

    /// <summary>The member of the lowest factor repaired to as built, wherever anything was seen on it.</summary>
    AsBuilt,

    /// <summary>All of the others that are offered, at once.</summary>
    AllTogether,
}

/// <summary>Why a change is not offered.</summary>
public enum NotOfferedReason
{
    /// <summary>The share of a truss is given, and what it rests on is not known.</summary>
    GivenShare,

    /// <summary>No rating rests on a place across the roadway.</summary>
    NoPlaceAcross,

    /// <summary>No rating rests on more than one loaded lane.</summary>
    OneLaneAlready,

    /// <summary>No rating has impact in it.</summary>
    NoImpact,

    /// <summary>There is no wearing surface.</summary>
    NoWearingSurface,

    /// <summary>Nothing seen on the member of the lowest factor takes anything from the capacity that counts.</summary>
    NothingLost,
}

/// <summary>The bridge rated again for the same vehicles with one thing changed, or with several.</summary>
public sealed record Alternative
{
    /// <summary>What is changed.</summary>
    public required AlternativeKind Kind { get; init; }

    /// <summary>The single changes in it.</summary>
    public required IReadOnlyList<AlternativeKind> Parts { get; init; }

    /// <summary>Name of the member that is repaired; null where none is.</summary>
    public string? Repaired { get; init; }

    /// <summary>The posting with the change; null where the truss is refused.</summary>
    public Posting? Posting { get; init; }

    /// <summary>Why there is none; null where there is one.</summary>
    public Refusal? Refusal { get; init; }

    /// <summary>
    /// The lowest row over the types that have a factor now; over all types where none has. Null where a type that has a factor now
    /// has none with the change.
    /// </summary>
    public RatingRow? Lowest { get; init; }

    /// <summary>What the lowest factor gains [-]; null where one of the two is not known.</summary>
    public double? Gain { get; init; }
}
