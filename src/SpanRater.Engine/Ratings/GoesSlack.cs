namespace SpanRater;

/// <summary>
/// A member that only pulls comes to zero under its factored dead load and a part of the factored vehicle, and nothing takes over
/// from it: factor on DC times DC, plus factor on DW times DW, equals factor of the vehicle times live factor times (1 + IM) times
/// the live force that relieves it.
/// </summary>
/// <param name="Member">Name of the member.</param>
/// <param name="Factor">Part of the factored vehicle at which it goes slack [-]; below 1 every rating of the vehicle is withheld.</param>
public sealed record GoesSlack(string Member, double Factor)
{
    /// <summary>Level whose factors are in it.</summary>
    public required RatingLevel Level { get; init; }

    /// <summary>What of the vehicle the truss carries.</summary>
    public required LateralShare Share { get; init; }

    /// <summary>Dynamic allowance on the member there [-].</summary>
    public required double Impact { get; init; }

    /// <summary>Load factor on DC [-].</summary>
    public required double ComponentsFactor { get; init; }

    /// <summary>Load factor on DW [-].</summary>
    public required double WearingFactor { get; init; }

    /// <summary>Dead force of components with the rods that pull there, tension positive [N].</summary>
    public required double DeadComponents { get; init; }

    /// <summary>Dead force of the wearing surface with the rods that pull there, tension positive [N].</summary>
    public required double DeadWearing { get; init; }

    /// <summary>
    /// Where the vehicle then stands: the part of it that is on, its axle loads with live factor, impact and share. Null where the
    /// rods that pull there could not be told.
    /// </summary>
    public required Peak? Position { get; init; }

    /// <summary>Live force on the truss of the whole vehicle standing there, without live factor and impact, tension positive [N]; null without a position.</summary>
    public double? Live => Position?.Axles.Sum(a => a.Effect) / (Factor * Level.LiveFactor * (1 + Impact));
}
