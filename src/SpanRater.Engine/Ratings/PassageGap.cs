namespace SpanRater;

/// <summary>What keeps a rating from saying that a vehicle may cross: something that it needs is not rated.</summary>
public abstract record PassageGap
{
    private PassageGap()
    {
    }

    /// <summary>A load for design or screening: it stands for others and is never itself on the road.</summary>
    public sealed record StandsForOthers() : PassageGap;

    /// <summary>The whole vehicle is not rated.</summary>
    /// <param name="Reason">Why.</param>
    public sealed record VehicleNotRated(NotRatedReason Reason) : PassageGap;

    /// <summary>Members or parts that the vehicle loads, or that are asked for a capacity, have none.</summary>
    /// <param name="Rows">Their rows; at least one.</param>
    public sealed record PartsNotRated(IReadOnlyList<RatingRow> Rows) : PassageGap;

    /// <summary>Nothing that the vehicle loads has a factor.</summary>
    public sealed record NothingRated() : PassageGap;

    /// <summary>Nothing is said of the floor.</summary>
    public sealed record NoFloor() : PassageGap;

    /// <summary>Kinds of parts of the floor are neither given nor said not to be there.</summary>
    /// <param name="NotGiven">The kinds; at least one.</param>
    public sealed record FloorNotWhole(IReadOnlyList<PartKind> NotGiven) : PassageGap;

    /// <summary>The deck is of a kind for whose wheels there is no rule.</summary>
    public sealed record DeckWithoutRule() : PassageGap;

    /// <summary>No connection is given.</summary>
    public sealed record NoConnections() : PassageGap;

    /// <summary>On a deck of this length a lane-type load counts beside a legal type's truck, and it was not asked for.</summary>
    /// <param name="DeckLength">Length of the deck [m].</param>
    public sealed record LaneTypeLeftOut(double DeckLength) : PassageGap;

    /// <summary>Posts and floorbeams hold the chord of a pony truss sideways, and are not rated for it.</summary>
    public sealed record FramesNotRated() : PassageGap;

    /// <summary>Posts and ends of the rods of trussed floorbeams are not rated.</summary>
    /// <param name="Parts">Names of the floorbeams.</param>
    public sealed record TrussedPostsNotRated(string Parts) : PassageGap;

    /// <summary>The dead load of the truss is less than its floor alone weighs: one of the two is wrong.</summary>
    /// <param name="Joint">Where.</param>
    public sealed record DeadLoadsDisagree(string Joint) : PassageGap;
}
