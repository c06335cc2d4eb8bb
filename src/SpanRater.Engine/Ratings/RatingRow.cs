namespace SpanRater;

/// <summary>What came of a rating.</summary>
public enum RatingStatus
{
    /// <summary>There is a factor.</summary>
    Rated,

    /// <summary>The dead load alone uses up the capacity: the factor is 0.</summary>
    DeadExceeds,

    /// <summary>The vehicle has no effect in that sense: there is no factor, and none is infinite.</summary>
    NotLoaded,

    /// <summary>A datum is missing.</summary>
    NotRated,

    /// <summary>A member that only pulls has no compression rating.</summary>
    Slack,

    /// <summary>The truss cannot carry the vehicle at all, or no answer could be found.</summary>
    Withheld,
}

/// <summary>Why a row is not rated.</summary>
public abstract record NotRatedReason
{
    private NotRatedReason()
    {
    }

    /// <summary>The member has no capacity in that sense.</summary>
    /// <param name="Capacity">The capacity that would be needed, where it is to be given.</param>
    /// <param name="Lacking">What the member's make lacks for a capacity of its own; null where nothing is said of its make.</param>
    public sealed record NoCapacity(GivenCapacity Capacity, IReadOnlyList<MissingDatum>? Lacking = null) : NotRatedReason;

    /// <summary>The vehicle's standard form has a lane load: it is not rated by its axles alone.</summary>
    /// <param name="Loading">Name of the standard loading, which can be rated.</param>
    public sealed record PartOfLoading(string Loading) : NotRatedReason;

    /// <summary>
    /// Rods go slack, and the load is more than one train: a lane load, a crowd, tracks, or several vehicles of which the worst counts.
    /// </summary>
    /// <param name="Load">Name of the load.</param>
    public sealed record NotATrainWithRods(string Load) : NotRatedReason;

    /// <summary>A permit vehicle without a permit factor.</summary>
    public sealed record NoPermitFactor() : NotRatedReason;

    /// <summary>The user's own partial factors hold none for a class.</summary>
    /// <param name="Class">The class.</param>
    public sealed record NoPartialFactor(VehicleClass Class) : NotRatedReason;

    /// <summary>
    /// Before the factored vehicle is on whole, a member that only pulls would be compressed and nothing takes over from it:
    /// nothing is rated for the vehicle.
    /// </summary>
    /// <param name="Member">Name of the member.</param>
    /// <param name="Factor">Part of the factored vehicle at which it goes slack, below 1 [-].</param>
    /// <param name="Level">Name of the level whose factor it is: of several the one that leaves least.</param>
    public sealed record Uncarried(string Member, double Factor, string Level) : NotRatedReason;

    /// <summary>The peaks of the vehicle could not be found by two routes that agree.</summary>
    /// <param name="Why">What was refused.</param>
    public sealed record NoPeaks(Refusal Why) : NotRatedReason;

    /// <summary>Relieving axles are to be left out, which has no meaning where rods go slack.</summary>
    /// <param name="Vehicle">Name of the vehicle.</param>
    public sealed record RelievingAxlesWithRods(string Vehicle) : NotRatedReason;

    /// <summary>There is no lateral share.</summary>
    /// <param name="Share">Why there is none.</param>
    public sealed record NoShare(ShareOutcome Share) : NotRatedReason;
}

/// <summary>One rating: a member, a vehicle, a level and a sense, with all that led to the factor.</summary>
public sealed record RatingRow
{
    /// <summary>Name of the truss; null where both are alike.</summary>
    public string? Truss { get; init; }

    /// <summary>Position of the member in <see cref="Truss.Members"/>.</summary>
    public required int MemberIndex { get; init; }

    /// <summary>The member.</summary>
    public required Member Member { get; init; }

    /// <summary>The vehicle or loading.</summary>
    public required LiveLoad Vehicle { get; init; }

    /// <summary>The level and its live-load factor.</summary>
    public required RatingLevel Level { get; init; }

    /// <summary>Sense rated.</summary>
    public required Sense Sense { get; init; }

    /// <summary>What stands in the next lane; null where the vehicle is alone or has only its like abreast.</summary>
    public Neighbour? Beside { get; init; }

    /// <summary>What came of it.</summary>
    public required RatingStatus Status { get; init; }

    /// <summary>Why it is not rated; null where it is.</summary>
    public NotRatedReason? Reason { get; init; }

    /// <summary>True where the whole vehicle is not rated: the row says nothing about its member.</summary>
    public bool IsAboutItsVehicle => Reason is not (null or NotRatedReason.NoCapacity);

    /// <summary>Capacity, a magnitude [N]; null where there is none.</summary>
    public double? Capacity { get; init; }

    /// <summary>How the capacity follows from section and material; null where it is given, and where there is none.</summary>
    public MemberResistance? Resistance { get; init; }

    /// <summary>What is missing for a capacity that would follow from section and material; null where there is one, and where the member's make is not given.</summary>
    public IReadOnlyList<MissingDatum>? Lacking { get; init; }

    /// <summary>That the row has no capacity, and why.</summary>
    internal NotRatedReason.NoCapacity WithoutCapacity(RatingMethod method) => new(method.CapacityFor(Sense, Level), Lacking);

    /// <summary>Force from the components' dead load, tension positive [N].</summary>
    public double DeadComponents { get; init; }

    /// <summary>Force from the wearing surface, tension positive [N].</summary>
    public double DeadWearing { get; init; }

    /// <summary>Factor on the components' dead load, adding or relieving as it acts here [-].</summary>
    public double ComponentsFactor { get; init; }

    /// <summary>Factor on the wearing surface, adding or relieving as it acts here [-].</summary>
    public double WearingFactor { get; init; }

    /// <summary>Factored dead effect, positive in the sense rated [N].</summary>
    public double FactoredDead { get; init; }

    /// <summary>Share of the vehicle, or of its lane load; null where there is none, and of a crowd.</summary>
    public LateralShare? Share { get; init; }

    /// <summary>Peak of the whole vehicle on one truss, without impact; null where there is none.</summary>
    public Peak? Peak { get; init; }

    /// <summary>What makes up the live force, part by part; null where there is none, and of a truss with rods.</summary>
    public SharedEffect? Effect { get; init; }

    /// <summary>Live force of all parts, tension positive, with share and presence, without impact or load factor [N]; null where none was found.</summary>
    public double? Live { get; init; }

    /// <summary>Length of the stretch of the line that holds the vehicle [m]; null where there is no live effect.</summary>
    public double? LoadedLength { get; init; }

    /// <summary>Dynamic allowance on all parts together [-]; null where there is no live effect.</summary>
    public double? Impact { get; init; }

    /// <summary>Name of the member that goes slack first, at the factor; null where the capacity is reached before that.</summary>
    public string? CappedBy { get; init; }

    /// <summary>The train that was brought onto a truss with rods: the vehicle, or the one that a loading makes up; null of anything else.</summary>
    public Vehicle? Train => Vehicle as Vehicle ?? ((Vehicle as Loading)?.Trains is [var only] ? only : null);

    /// <summary>Where the capacity is reached in a truss with rods; null in one without.</summary>
    public CapacityReached? Reached { get; init; }

    /// <summary>Positions of the members of crossed pairs that are slack where the capacity is reached; null in a truss without rods.</summary>
    public IReadOnlyList<int>? SlackAtFactor => Reached?.Position.Rods?.Slack;

    /// <summary>How much the dead load, and what stands beside the vehicle, take beyond the capacity [N]; 0 where they leave room.</summary>
    public double Shortfall => Capacity is { } capacity ? Math.Max(0, FactoredDead + (Beside?.Factored ?? 0) - capacity) : 0;

    /// <summary>Rating factor [-]; null where there is none.</summary>
    public double? Factor { get; init; }

    /// <summary>The factor that the row would have with another capacity [N], all else as it is; null where the row has no factor of its own.</summary>
    /// <param name="capacity">The capacity, not negative [N].</param>
    public double? FactorWith(double capacity)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(capacity);
        return FactorAt?.Invoke(capacity);
    }

    /// <summary>How the factor follows from the capacity [N]; null where there is no factor.</summary>
    internal Func<double, double?>? FactorAt { get; init; }
}

/// <summary>A legal vehicle in the next lane, which stays as it is while the vehicle rated is scaled.</summary>
/// <param name="Vehicle">The vehicle.</param>
/// <param name="LiveFactor">Its live-load factor [-].</param>
/// <param name="Part">Its effect on the truss.</param>
public sealed record Neighbour(Vehicle Vehicle, double LiveFactor, SharedPart Part)
{
    /// <summary>What it takes of the capacity: factor × effect with impact, positive [N].</summary>
    public double Factored => LiveFactor * Math.Abs(Part.WithImpact);
}

/// <summary>Where a member of a truss with rods reaches its capacity.</summary>
/// <param name="Position">The vehicle, its axle loads with factor, impact and share at the rating factor; which rods are slack.</param>
/// <param name="FactoredDead">Factored dead force with the rods that act there, tension positive [N].</param>
public sealed record CapacityReached(Peak Position, double FactoredDead);
