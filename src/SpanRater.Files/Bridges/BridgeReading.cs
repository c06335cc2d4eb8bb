namespace SpanRater.Files;

/// <summary>What a bridge folder gave.</summary>
/// <param name="Bridge">The bridge; null where the input is refused.</param>
/// <param name="Catalogue">The vehicles in use.</param>
/// <param name="Units">The units of the folder: those of x in joints.csv.</param>
/// <param name="Findings">Everything wrong or worth a look.</param>
/// <param name="MethodPlace">Where the rating method stands, or should.</param>
public sealed record BridgeReading(Bridge? Bridge, Catalogue Catalogue, DisplayUnits Units, FindingList Findings, Place MethodPlace)
{
    /// <summary>What materials.toml holds; null where there is none.</summary>
    internal MaterialsToml? Materials { get; init; }

    /// <summary>The vehicles and loadings that the bridge asks to be rated for; unset, all legal and emergency ones.</summary>
    public IReadOnlyList<LiveLoad> VehiclesAsked =>
        Bridge?.Rating.Vehicles is { } names
            ? [.. names.Select(n => Catalogue.Find(n)!)]
            : [.. Posted];

    /// <summary>Vehicles of the folder's own table, or of an added catalogue, that the bridge does not ask for.</summary>
    public IReadOnlyList<string> OwnVehiclesNotAsked =>
        [.. Catalogue.Entries.Where(e => !e.IsShipped).Select(e => e.Load.Name).Except(VehiclesAsked.Select(v => v.Name))];

    /// <summary>Legal and emergency vehicles of every catalogue in use that the bridge does not ask for: no posting covers them.</summary>
    public IReadOnlyList<string> PostedKindsNotAsked =>
        [.. Posted.Select(l => l.Name).Except(VehiclesAsked.Select(v => v.Name))];

    /// <summary>What members are made of; null without sections.csv.</summary>
    internal SectionsTable? Sections { get; init; }

    /// <summary>What was seen on the members; null without findings.csv.</summary>
    internal FindingsTable? Seen { get; init; }

    // A loading for long decks, or for supports between the ends, belongs to those only.
    private IEnumerable<LiveLoad> Posted =>
        Catalogue.Entries.Select(e => e.Load).Where(l => l.Class is VehicleClass.Legal or VehicleClass.Emergency
            && (l is not Loading loading || Bridge is null || loading.BelongsTo(Bridge.Truss)));
}
