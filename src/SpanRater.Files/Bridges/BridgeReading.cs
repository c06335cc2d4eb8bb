namespace SpanRater.Files;

/// <summary>What a bridge folder gave.</summary>
/// <param name="Bridge">The bridge; null where the input is refused.</param>
/// <param name="Catalogue">The vehicles in use.</param>
/// <param name="Units">The units of the folder: those of x in joints.csv.</param>
/// <param name="Findings">Everything wrong or worth a look.</param>
/// <param name="MethodPlace">Where the rating method stands, or should.</param>
public sealed record BridgeReading(Bridge? Bridge, Catalogue Catalogue, DisplayUnits Units, FindingList Findings, Place MethodPlace);
