namespace SpanRater;

/// <summary>What a rating says of a load that no posting rule covers: what is too heavy must be told though no sign bears its name.</summary>
public enum OtherVerdict
{
    /// <summary>Every part that is loaded is rated, with a factor of at least 1.</summary>
    Carried,

    /// <summary>What is rated has factors of at least 1, and something that is loaded has no capacity.</summary>
    CarriedByWhatIsRated,

    /// <summary>A factor is below 1, or the dead load alone uses up a capacity.</summary>
    TooHeavy,

    /// <summary>The load has no factor, or its ratings are withheld.</summary>
    NotGiven,

    /// <summary>A load for design or screening: it stands for others, and is never itself on the road.</summary>
    StandsForOthers,
}

/// <summary>A load that takes no part in a posting, with the row that decides on it.</summary>
/// <param name="Vehicle">The vehicle or loading.</param>
/// <param name="Deciding">The row with its lowest factor, or one that says why the whole load is not rated; null where it loads nothing.</param>
/// <param name="Unrated">Rows without a capacity that it loads.</param>
public sealed record OtherLoad(LiveLoad Vehicle, RatingRow? Deciding, IReadOnlyList<RatingRow> Unrated)
{
    /// <summary>What it comes to.</summary>
    public OtherVerdict Verdict => this switch
    {
        { Deciding.Status: RatingStatus.DeadExceeds } => OtherVerdict.TooHeavy,
        { Deciding: null or { IsAboutItsVehicle: true } or { Factor: null } } => OtherVerdict.NotGiven,
        { Vehicle.Class: VehicleClass.Design or VehicleClass.Screening } => OtherVerdict.StandsForOthers,
        { Deciding.Factor: { } factor } when !SafeLoad.IsEnough(factor) => OtherVerdict.TooHeavy,
        { Unrated.Count: > 0 } => OtherVerdict.CarriedByWhatIsRated,
        _ => OtherVerdict.Carried,
    };

    // Inventory stands apart: it is for lasting use, and decides on no crossing.
    internal static OtherLoad Of(LiveLoad vehicle, BridgeRating rating)
    {
        RatingRow[] rows = [.. rating.Rows.Where(r => r.Vehicle == vehicle && r.Level.Governance != Governance.Inventory)];
        RatingRow? deciding = rows.FirstOrDefault(r => r.Status == RatingStatus.DeadExceeds)
            ?? rows.FirstOrDefault(r => r.IsAboutItsVehicle)
            ?? rows.Where(r => r.Factor is not null).MinBy(r => Math.Round(r.Factor!.Value, 9));
        return new OtherLoad(vehicle, deciding, [.. rows.Where(r => r.LacksCapacity)]);
    }
}
