namespace SpanRater;

/// <summary>The largest effect of moving loads on a simple span, and where they stood.</summary>
/// <param name="Effect">Bending moment or shear, the part of a uniform load in it [N·m or N].</param>
/// <param name="Section">Where it occurs, from the left end of the span [m].</param>
/// <param name="Station">x of the front axle from the left end [m].</param>
/// <param name="Direction">The way the vehicle drives.</param>
/// <param name="Gaps">All gaps, front to back [m].</param>
/// <param name="Axles">Each axle with its station from the left end and its share of the effect, front to back; 0 of one off the span.</param>
public sealed record SpanPeak(
    double Effect,
    double Section,
    double Station,
    Direction Direction,
    IReadOnlyList<double> Gaps,
    IReadOnlyList<AxleEffect> Axles)
{
    /// <summary>The part of the axles in the effect [N·m or N].</summary>
    public double OfAxles => Axles.Sum(a => a.Effect);
}
