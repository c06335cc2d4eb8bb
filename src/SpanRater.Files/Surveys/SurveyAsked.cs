namespace SpanRater.Files;

/// <summary>What a survey was asked for beside its bridges.</summary>
/// <param name="Vehicles">Names of the vehicles to rate every bridge for; null for those that each bridge asks for, as <c>rate</c> takes them.</param>
/// <param name="Crosses">The vehicle of which it is asked where it may cross; null for none. Every bridge is rated for it as well; where the bridge does not ask for it, it counts for that answer alone.</param>
/// <param name="Catalogues">Catalogues added to the shipped ones.</param>
public sealed record SurveyAsked(IReadOnlyList<string>? Vehicles, string? Crosses, IReadOnlyList<string> Catalogues)
{
    /// <summary>The vehicles to rate a bridge for, by which it stands where it does.</summary>
    /// <param name="reading">What its folder gave.</param>
    public IReadOnlyList<LiveLoad> Of(BridgeReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return Vehicles is null ? reading.VehiclesAsked : [.. Vehicles.Select(n => reading.Catalogue.Find(n)!)];
    }

    /// <summary>The vehicle of which it is asked whether it may cross, where it is not among those; null where it is, and where none is asked.</summary>
    /// <param name="reading">What its folder gave.</param>
    public LiveLoad? GuestOn(BridgeReading reading) => Crosses is null || Of(reading).Any(v => v.Name == Crosses) ? null : reading.Catalogue.Find(Crosses);
}
