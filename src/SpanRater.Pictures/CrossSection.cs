namespace SpanRater.Pictures;

/// <summary>What a cross-section of a bridge shows: the load across the deck, and what of it the truss considered carries.</summary>
/// <param name="Truss">The truss considered: 0 for the left one as one looks along the span, 1 for the right one.</param>
/// <param name="Heading">What stands on the deck, and which truss is considered.</param>
/// <param name="Wheels">Distance of each wheel line from the truss considered, two a vehicle [m].</param>
/// <param name="Strips">Strips that a lane load or a crowd covers, by distance from the truss considered.</param>
/// <param name="StripWords">What the strips are, such as lane load; empty where there are none.</param>
/// <param name="Reaction">What the truss considered carries, as it is written at its reaction.</param>
/// <param name="Sum">How that is found, and what counts.</param>
public sealed record CrossSection(
    int Truss,
    string Heading,
    IReadOnlyList<double> Wheels,
    IReadOnlyList<LateralStrip> Strips,
    string StripWords,
    string Reaction,
    string Sum);
