namespace SpanRater.Files;

/// <summary>What no recorded truck is: beyond these limits a sensor erred, or two vehicles were taken for one. Common practice, without a source.</summary>
internal static class UnlikelyTrucks
{
    /// <summary>What a number may exceed its limit by without being beyond it: round-off of its unit [-].</summary>
    private const double RoundOff = 1e-9;

    private const double Kip = 4448.2216152605, Foot = 0.3048;

    /// <summary>Heaviest axle, 60 kip [N].</summary>
    public const double HeaviestAxle = 60 * Kip * (1 + RoundOff);

    /// <summary>Lightest truck, 1 kip [N]: as of vehicles in a catalogue.</summary>
    public const double LightestTruck = Kip * (1 - RoundOff);

    /// <summary>Least spacing, 1.5 ft [m].</summary>
    public const double LeastSpacing = 1.5 * Foot * (1 - RoundOff);

    /// <summary>Largest spacing, 100 ft [m]: farther apart stands the next vehicle.</summary>
    public const double MostSpacing = 100 * Foot * (1 + RoundOff);
}
