namespace SpanRater;

/// <summary>One part of a live load as one truss carries it.</summary>
/// <param name="Part">The part, whole.</param>
/// <param name="Share">
/// What the truss carries of it, presence in it: vehicles' or lanes' worth [-], or the width of a crowd [m].
/// </param>
/// <param name="Impact">Dynamic allowance on it.</param>
public sealed record SharedPart(LivePart Part, double Share, AppliedImpact Impact)
{
    /// <summary>Where it stands across the deck; null of a crowd.</summary>
    public LateralShare? Lateral { get; init; }

    /// <summary>Where a crowd stands across the deck; null of anything else.</summary>
    public CrowdShare? Crowd { get; init; }

    /// <summary>Signed effect on this truss, without impact, tension positive [N].</summary>
    public double Force => Part.Force * Share;

    /// <summary>Signed effect on this truss with impact, tension positive [N].</summary>
    public double WithImpact => Force * (1 + Impact.Value);
}

/// <summary>What a live load brings to a member of one truss in one sense: the worst way to load the deck, along it and across.</summary>
/// <param name="Parts">What acts together; at least one.</param>
public sealed record SharedEffect(IReadOnlyList<SharedPart> Parts)
{
    /// <summary>The other ways to load the deck, each where it brings most to this truss, in the order of the loading: they bring less, or the same.</summary>
    public IReadOnlyList<SharedEffect> Others { get; init; } = [];

    /// <summary>Signed effect without impact, tension positive [N].</summary>
    public double Force => Parts is [var only] ? only.Force : Parts.Sum(p => p.Force);

    /// <summary>Signed effect with impact, tension positive [N].</summary>
    public double WithImpact => Parts is [var only] ? only.WithImpact : Parts.Sum(p => p.WithImpact);

    /// <summary>The allowance on all parts together [-].</summary>
    public double Impact => Parts is [var only] ? only.Impact.Value : Parts.Select(p => p.Impact.Value).Distinct().Count() == 1 ? Parts[0].Impact.Value : (WithImpact / Force) - 1;

    /// <summary>Where the vehicle, or else the lane load, stands across the deck; null of a crowd.</summary>
    public LateralShare? Lateral => Parts[0].Lateral;

    /// <summary>Where the vehicle stood; null where no axles count.</summary>
    public Peak? Peak => (Parts[0].Part as LivePart.Axles)?.Peak;
}
