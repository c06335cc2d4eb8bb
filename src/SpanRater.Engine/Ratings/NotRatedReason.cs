namespace SpanRater;

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

    /// <summary>A part of the floor or a connection lacks what its rating follows from.</summary>
    /// <param name="Lacking">What it lacks; at least one.</param>
    public sealed record PartLacks(IReadOnlyList<MissingDatum> Lacking) : NotRatedReason;

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
