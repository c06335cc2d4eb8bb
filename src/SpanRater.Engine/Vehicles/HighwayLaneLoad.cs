namespace SpanRater;

/// <summary>
/// Lane load HA that falls with the loaded length: 336 L^−0.67 kN/m up to 50 m, 36 L^−0.1 kN/m above, L in metres. The dynamic
/// allowance is in the load. Source: UK BD 37/01, 6.2.1 and Table 13, from memory.
/// </summary>
public sealed record HighwayLaneLoad : LoadIntensity
{
    /// <summary>Knife edge load that goes with it, one to a lane [N]. Source: UK BD 37/01, 6.2.2, from memory.</summary>
    public const double KnifeEdgeLoad = 120_000;

    /// <summary>Loaded length up to which the first formula holds [m].</summary>
    private const double LongestSteep = 50;

    /// <inheritdoc/>
    public override string Name => "BD 37 HA";

    /// <inheritdoc/>
    public override string Source =>
        "UK BD 37/01, 6.2.1 and Table 13, from memory: 336 L^-0.67 kN/m to 50 m, 36 L^-0.1 kN/m above, L the loaded length in metres; " +
        "a knife edge load of 120 kN goes with it; the dynamic allowance is in the load";

    /// <inheritdoc/>
    public override bool IsPerArea => false;

    /// <inheritdoc/>
    public override double At(double loadedLength, double width)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(loadedLength);
        return 1000 * (loadedLength <= LongestSteep ? 336 * Math.Pow(loadedLength, -0.67) : 36 * Math.Pow(loadedLength, -0.1));
    }
}
