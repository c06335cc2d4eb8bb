namespace SpanRater;

/// <summary>A lane load that is the same whatever it covers.</summary>
/// <param name="Load">Load per length of a lane [N/m].</param>
/// <param name="GivenBy">Where it is from.</param>
public sealed record ConstantLineLoad(double Load, string GivenBy) : LoadIntensity
{
    /// <inheritdoc/>
    public override string Name => "constant";

    /// <inheritdoc/>
    public override string Source => GivenBy;

    /// <inheritdoc/>
    public override bool IsPerArea => false;

    /// <inheritdoc/>
    public override double At(double loadedLength, double width) => Load;
}
