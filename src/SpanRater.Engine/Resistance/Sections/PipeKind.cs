namespace SpanRater;

/// <summary>A pipe about its centre. What its wall has lost is taken off outside, where it costs most stiffness.</summary>
internal sealed class PipeKind() : ShapeKind("pipe", [ShapeDimension.Diameter, ShapeDimension.Thickness])
{
    internal override IReadOnlyDictionary<ShapeDimension, MeasureSense> Senses { get; } =
        new Dictionary<ShapeDimension, MeasureSense> { [ShapeDimension.Thickness] = MeasureSense.Round, [ShapeDimension.Diameter] = MeasureSense.Fixed };

    internal override IEnumerable<ShapeFault> Faults(ShapeMeasures measures) =>
        measures.Built(ShapeDimension.Thickness) >= measures.Built(ShapeDimension.Diameter) / 2 ? [new ShapeFault.HalfOrMore(ShapeDimension.Thickness, ShapeDimension.Diameter)] : [];

    internal override Outline OutlineOf(ShapeMeasures measures)
    {
        double hole = (measures.Built(ShapeDimension.Diameter) / 2) - measures.Built(ShapeDimension.Thickness);
        return Outline.OfDisc(hole + measures.Now(ShapeDimension.Thickness), hole);
    }
}
