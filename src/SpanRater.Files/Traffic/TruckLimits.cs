namespace SpanRater.Files;

/// <summary>
/// What recorded trucks hardly are, and what none is. Beyond the first a truck is counted and marked as unlikely, since a rare heavy transport must not be missing from the largest effects;
/// beyond the second a sensor erred or a unit is wrong, and the row is rejected. Common practice, without a source.
/// </summary>
internal static class TruckLimits
{
    /// <summary>What a number may exceed its limit by without being beyond it: round-off of its unit [-].</summary>
    private const double RoundOff = 1e-9;

    private const double Kip = 4448.2216152605, Foot = 0.3048;

    /// <summary>Heaviest axle that is likely, 60 kip [N].</summary>
    public const double HeaviestLikelyAxle = 60 * Kip * (1 + RoundOff);

    /// <summary>Heaviest axle, 1,000 kip [N].</summary>
    public const double HeaviestAxle = 1000 * Kip * (1 + RoundOff);

    /// <summary>Heaviest truck, 4,000 kip [N]: histograms have a bin a kip.</summary>
    public const double HeaviestTruck = 4000 * Kip * (1 + RoundOff);

    /// <summary>Lightest truck, 1 kip [N]: as of vehicles in a catalogue.</summary>
    public const double LightestTruck = Kip * (1 - RoundOff);

    /// <summary>Least spacing, 1.5 ft [m].</summary>
    public const double LeastSpacing = 1.5 * Foot * (1 - RoundOff);

    /// <summary>Largest spacing that is likely, 100 ft [m]: farther apart stands the next vehicle, or the rear of a long transport.</summary>
    public const double MostLikelySpacing = 100 * Foot * (1 + RoundOff);

    /// <summary>Largest spacing, 300 ft [m].</summary>
    public const double MostSpacing = 300 * Foot * (1 + RoundOff);
}
