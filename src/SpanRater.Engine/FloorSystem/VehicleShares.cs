namespace SpanRater;

/// <summary>
/// The shares of vehicles that the lever rule does not tell apart: alike in gauge, in the lanes that may be loaded at once and in
/// whether a presence factor is applied. What the lever rule gives, whether or not a share was given in its place.
/// </summary>
/// <param name="Vehicles">The vehicles, in the order in which they were asked for.</param>
/// <param name="Gauge">Distance between their wheel lines [m].</param>
/// <param name="MostLanes">Lanes that their class may load at once; null for as many as fit.</param>
/// <param name="HasPresence">Whether a presence factor is applied to their class; false also where no method is given.</param>
/// <param name="Outcome">The shares by the lever rule, or why there are none.</param>
public sealed record VehicleShares(IReadOnlyList<LiveLoad> Vehicles, double Gauge, int? MostLanes, bool HasPresence, ShareOutcome Outcome)
{
    /// <summary>Gathers vehicles by what decides their shares: those on axles and on tracks, and the trains of loadings.</summary>
    /// <param name="deck">The deck.</param>
    /// <param name="loads">What was asked for; crowds have no wheels and are passed over.</param>
    /// <param name="method">The method whose presence factors are applied; null for none.</param>
    public static IReadOnlyList<VehicleShares> Of(Deck deck, IEnumerable<LiveLoad> loads, RatingMethod? method)
    {
        ArgumentNullException.ThrowIfNull(deck);
        ArgumentNullException.ThrowIfNull(loads);
        Deck unshared = deck with { TrussShare = null };

        // The lanes that a class may load hold in every method; only presence is a method's own.
        ClassRule RuleOf(LiveLoad vehicle) => (method ?? RatingMethod.All[0]).RuleOf(vehicle.Class);
        return
        [
            .. loads.SelectMany(WheelsOf).DistinctBy(w => (w.Load.Name, w.Load.Class)).Select(w => (Vehicle: w.Load, w.Gauge, Rule: RuleOf(w.Load)))
                .GroupBy(v => (v.Gauge, v.Rule.MostLanes, HasPresence: v.Rule.HasPresence && method is not null))
                .Select(g => new VehicleShares(
                    [.. g.Select(v => v.Vehicle)],
                    g.Key.Gauge,
                    g.Key.MostLanes,
                    g.Key.HasPresence,
                    LeverRule.Share(unshared, g.Key.Gauge, g.Key.MostLanes, g.Key.HasPresence ? method!.Presence : _ => 1))),
        ];
    }

    private static IEnumerable<(LiveLoad Load, double Gauge)> WheelsOf(LiveLoad load) => load switch
    {
        Vehicle vehicle => [(vehicle, vehicle.Gauge)],
        TrackedVehicle tracked => [(tracked, tracked.Gauge)],
        Loading loading => loading.Trains.Select(t => ((LiveLoad)t, t.Gauge)),
        _ => [],
    };

    /// <summary>What the lever rule gives for an arrangement before any presence factor [-].</summary>
    /// <param name="share">The arrangement.</param>
    /// <param name="trussSpacing">Distance between the trusses [m].</param>
    public static double WithoutPresence(LateralShare share, double trussSpacing)
    {
        ArgumentNullException.ThrowIfNull(share);
        return share.Wheels.Sum(w => (trussSpacing - w) / trussSpacing) / 2;
    }
}
