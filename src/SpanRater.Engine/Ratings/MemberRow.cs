namespace SpanRater;

/// <summary>The rating of a truss member in one sense.</summary>
public sealed record MemberRow : RatingRow
{
    /// <summary>Position of the member in <see cref="Truss.Members"/>.</summary>
    public required int MemberIndex { get; init; }

    /// <summary>The member.</summary>
    public required Member Member { get; init; }

    /// <summary>Sense rated.</summary>
    public required Sense Sense { get; init; }

    /// <inheritdoc/>
    public override PartKind Part => PartKind.TrussMember;

    /// <inheritdoc/>
    public override string Name => Member.Name;

    /// <inheritdoc/>
    public override PartEffect ActsAs => PartEffect.Force;

    /// <inheritdoc/>
    public override Sense? InSense => Sense;

    /// <inheritdoc/>
    public override int Order => MemberIndex;

    /// <summary>How the capacity follows from section and material; null where it is given, and where there is none.</summary>
    public MemberResistance? Resistance { get; init; }

    /// <summary>What is missing for a capacity that would follow from section and material; null where there is one, and where the member's make is not given.</summary>
    public IReadOnlyList<MissingDatum>? Lacking { get; init; }

    /// <summary>That the row has no capacity, and why.</summary>
    internal NotRatedReason.NoCapacity WithoutCapacity(RatingMethod method) => new(method.CapacityFor(Sense, Level), Lacking);

    /// <summary>Peak of the whole vehicle on one truss, without impact; null where there is none.</summary>
    public Peak? Peak { get; init; }

    /// <summary>What makes up the live force, part by part; null where there is none, and of a truss with rods.</summary>
    public SharedEffect? Effect { get; init; }

    /// <summary>Name of the member that goes slack first, at the factor; null where the capacity is reached before that.</summary>
    public string? CappedBy { get; init; }

    /// <summary>
    /// Where the first member that only pulls goes slack, with nothing to take over from it, under this vehicle at this level on
    /// this truss; null where none ever does, and in a truss without such members.
    /// </summary>
    public GoesSlack? FirstSlack { get; init; }

    /// <summary>The train that was brought onto a truss with rods: the vehicle, or the one that a loading makes up; null of anything else.</summary>
    public Vehicle? Train => Vehicle as Vehicle ?? ((Vehicle as Loading)?.Trains is [var only] ? only : null);

    /// <summary>Where the capacity is reached in a truss with rods; null in one without.</summary>
    public CapacityReached? Reached { get; init; }

    /// <summary>Positions of the members of crossed pairs that are slack where the capacity is reached; null in a truss without rods.</summary>
    public IReadOnlyList<int>? SlackAtFactor => Reached?.Position.Rods?.Slack;
}

/// <summary>Where a member of a truss with rods reaches its capacity.</summary>
/// <param name="Position">The vehicle, its axle loads with factor, impact and share at the rating factor; which rods are slack.</param>
/// <param name="FactoredDead">Factored dead force with the rods that act there, tension positive [N].</param>
public sealed record CapacityReached(Peak Position, double FactoredDead);
