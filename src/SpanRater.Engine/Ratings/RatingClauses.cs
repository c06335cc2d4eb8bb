namespace SpanRater;

/// <summary>The clauses that a rating rests on, so that a checker may look each up.</summary>
public static class RatingClauses
{
    /// <summary>
    /// Those of the method, of the share of one truss, of the modes that govern the capacities, and of posting where the method has a rule for it; each once. Clauses of
    /// vehicles, whose sources stand beside them, are not among them.
    /// </summary>
    /// <param name="rating">The rating.</param>
    public static IReadOnlyList<Clause> Of(BridgeRating rating)
    {
        ArgumentNullException.ThrowIfNull(rating);
        IEnumerable<Clause> share = rating.Bridge.Deck.TrussShare is null
            ? [LateralClauses.LeverRule, LateralClauses.Lanes, LateralClauses.WheelToKerb, LateralClauses.BetweenVehicles, LateralClauses.Gauge]
            : [];
        IEnumerable<Clause> posting = rating.Method.HasPosting
            ? [rating.Method.LegalPosting == PostingRule.ReducedLegal ? PostingClauses.Lrfr : PostingClauses.LfrAsr, PostingClauses.EmergencyAxles, PostingClauses.Emergency, PostingClauses.Closure, PostingClauses.WholeTons]
            : [];
        return [.. rating.Method.Basis.Concat(share).Concat(rating.MemberRows.SelectMany(OfMember)).Concat(rating.PartRows.SelectMany(r => r.Resistance?.Clauses ?? [])).Concat(posting).Distinct()];
    }

    private static IEnumerable<Clause> OfMember(MemberRow row) => row.Resistance?.Governing.Strength is { } strength
        ? strength.Clauses.Concat(strength.Factors.Select(f => f.Clause))
        : [];
}
