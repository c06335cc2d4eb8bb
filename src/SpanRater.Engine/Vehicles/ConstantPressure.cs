namespace SpanRater;

/// <summary>A load per area that is the same whatever it covers.</summary>
/// <param name="Pressure">Load per area [Pa].</param>
/// <param name="GivenBy">Where it is from.</param>
public sealed record ConstantPressure(double Pressure, string GivenBy) : LoadIntensity
{
    /// <inheritdoc/>
    public override string Name => "constant";

    /// <inheritdoc/>
    public override string Source => GivenBy;

    /// <inheritdoc/>
    public override bool IsPerArea => true;

    /// <inheritdoc/>
    public override double At(double loadedLength, double width) => Pressure;
}
