namespace SpanRater;

/// <summary>
/// Crowd on a footbridge that falls with the loaded length: 2.0 + 120/(L + 30) kN/m², at least 2.5 and at most 5.0, L in metres.
/// Source: EN 1991-2:2003, 5.3.2.1(2), from memory.
/// </summary>
public sealed record FootbridgePressure : LoadIntensity
{
    private const double Least = 2500;
    private const double Most = 5000;

    /// <inheritdoc/>
    public override string Name => "EN 1991-2 footbridge";

    /// <inheritdoc/>
    public override string Source =>
        "EN 1991-2:2003, 5.3.2.1(2), from memory: 2.0 + 120/(L + 30) kN/m², at least 2.5 and at most 5.0, L the loaded length in metres";

    /// <inheritdoc/>
    public override bool IsPerArea => true;

    /// <inheritdoc/>
    public override double At(double loadedLength, double width)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(loadedLength);
        return Math.Clamp(2000 + (120_000 / (loadedLength + 30)), Least, Most);
    }
}
