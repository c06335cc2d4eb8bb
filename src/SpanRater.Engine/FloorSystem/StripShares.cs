namespace SpanRater;

/// <summary>What one truss carries of a load that covers strips of the roadway: a lane load, or a crowd.</summary>
/// <param name="Load">The loading or crowd.</param>
/// <param name="HasPresence">Whether a presence factor is applied to it; false also where no method is given.</param>
/// <param name="Lane">Shares of its lane load by number of lanes, or why there are none; null of a crowd.</param>
/// <param name="Crowd">Where a crowd stands, for the left truss and for the right one; null of a lane load, and where the deck does not say enough.</param>
public sealed record StripShares(LiveLoad Load, bool HasPresence, ShareOutcome? Lane, (CrowdShare Left, CrowdShare Right)? Crowd)
{
    /// <summary>Whether there is anything to show.</summary>
    public bool IsFound => Lane is ShareOutcome.Found || Crowd is not null;

    /// <summary>Whether both trusses carry the same.</summary>
    public bool Alike => Lane is ShareOutcome.Found found ? found.Alike : Crowd is { } crowd && Math.Abs(crowd.Left.Width - crowd.Right.Width) <= 1e-12 * crowd.Left.Width;

    /// <summary>The lane loads and crowds among loads.</summary>
    /// <param name="deck">The deck.</param>
    /// <param name="loads">What was asked for.</param>
    /// <param name="method">The method whose presence factors are applied; null for none.</param>
    public static IReadOnlyList<StripShares> Of(Deck deck, IEnumerable<LiveLoad> loads, RatingMethod? method)
    {
        ArgumentNullException.ThrowIfNull(deck);
        ArgumentNullException.ThrowIfNull(loads);
        return [.. loads.Select(l => Of(deck with { TrussShare = null }, l, method)).OfType<StripShares>()];
    }

    private static StripShares? Of(Deck deck, LiveLoad load, RatingMethod? method)
    {
        ClassRule rule = (method ?? RatingMethod.All[0]).RuleOf(load.Class);
        bool hasPresence = rule.HasPresence && method is not null;
        return load switch
        {
            Loading { Lane: not null } => new StripShares(load, hasPresence, LeverRule.LaneShare(deck, rule.MostLanes, hasPresence ? method!.Presence : _ => 1), null),
            Crowd crowd => new StripShares(
                load, false, null, LeverRule.CrowdOn(deck, 0, crowd.Width) is { } left && LeverRule.CrowdOn(deck, 1, crowd.Width) is { } right ? (left, right) : null),
            _ => null,
        };
    }
}
