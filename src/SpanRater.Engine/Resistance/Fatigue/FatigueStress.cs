namespace SpanRater;

/// <summary>The stress range that one vehicle in one lane brings to a member of one truss.</summary>
/// <param name="Truss">Which truss, 0 for the left one; null where the trusses are alike.</param>
public sealed record FatigueStress(int? Truss)
{
    /// <summary>Part of the vehicle on this truss, no presence factor in it unless it was given [-].</summary>
    public required LateralShare Share { get; init; }

    /// <summary>Force under dead load, unfactored [N].</summary>
    public required double Dead { get; init; }

    /// <summary>Most that the vehicle adds in tension, share and dynamic allowance in it; 0 where it adds none [N].</summary>
    public required double Tension { get; init; }

    /// <summary>Most that the vehicle adds in compression, share and dynamic allowance in it, not positive [N].</summary>
    public required double Compression { get; init; }

    /// <summary>Length of deck over which the member's influence line is not zero [m].</summary>
    public required double LoadedLength { get; init; }

    /// <summary>Area that the force range is spread over [m²].</summary>
    public required double Area { get; init; }

    /// <summary>The cut that has it; null away from all cuts.</summary>
    public string? Place { get; init; }

    /// <summary>Whether holes, threads or pin holes make it less than the gross area there.</summary>
    public bool IsNet { get; init; }

    /// <summary>Whether eyebars are among what carries, whose heads are not measured: their bodies are taken.</summary>
    public bool HeadsNotMeasured { get; init; }

    /// <summary>Force range [N].</summary>
    public double ForceRange => Tension - Compression;

    /// <summary>Stress range [Pa].</summary>
    public double Range => ForceRange / Area;

    /// <summary>Whether dead load and vehicle together ever pull the member.</summary>
    public bool ComesUnderTension => Dead + Tension > NoForce;

    /// <summary>Whether the vehicle changes the force at all.</summary>
    public bool IsLoaded => ForceRange > NoForce;

    /// <summary>Whether the range counts.</summary>
    public bool Counts => IsLoaded && ComesUnderTension;

    /// <summary>Cycles of one passage: one, or two where the influence line is as short as a girder of 40 ft [-].</summary>
    public int CyclesAPassage => LoadedLength > ShortLength + 1e-9 ? 1 : 2;

    /// <summary>Up to this length a member is counted as a short girder, 40 ft [m].</summary>
    public const double ShortLength = 40 * 0.3048;

    // A thousandth of a newton is round-off of a bridge.
    private const double NoForce = 1e-3;
}
