namespace SpanRater;

/// <summary>What a vehicle is rated as.</summary>
public enum VehicleClass
{
    /// <summary>A loading that bridges are designed for.</summary>
    Design,

    /// <summary>A legal truck.</summary>
    Legal,

    /// <summary>A notional load that screens a group of trucks; rated as legal, never posted.</summary>
    Screening,

    /// <summary>An emergency vehicle.</summary>
    Emergency,

    /// <summary>A vehicle that crosses by permit.</summary>
    Permit,

    /// <summary>A farm vehicle; rated as legal, one at a time.</summary>
    Farm,

    /// <summary>A vehicle that maintains a footbridge.</summary>
    Maintenance,

    /// <summary>People on a footbridge.</summary>
    Crowd,
}

/// <summary>What a catalogue holds under one name: a vehicle on axles or tracks, a loading made of vehicles, or a crowd. Immutable.</summary>
/// <param name="Name">Name, unique among all catalogues in use.</param>
/// <param name="Class">What it is rated as.</param>
/// <param name="Source">Where its numbers are from.</param>
public abstract record LiveLoad(string Name, VehicleClass Class, string Source);

/// <summary>A vehicle: axles in a row on two wheel lines.</summary>
/// <param name="Name">Name, unique among all catalogues in use.</param>
/// <param name="Class">What it is rated as.</param>
/// <param name="Train">Its axles.</param>
/// <param name="Gauge">Distance between its two wheel lines [m].</param>
/// <param name="Source">Where its weights and spacings are from.</param>
/// <param name="LaneLoading">
/// Name of the standard loading that adds a lane load to this vehicle, or null. Such a vehicle is never rated by its
/// axles alone.
/// </param>
public sealed record Vehicle(string Name, VehicleClass Class, AxleTrain Train, double Gauge, string Source, string? LaneLoading = null)
    : LiveLoad(Name, Class, Source)
{
    /// <summary>Standard distance between wheel lines, 6 ft [m]. Source: AASHTO Standard Specifications, 17th ed., 3.7, from memory.</summary>
    public const double StandardGauge = 6 * 0.3048;
}
