namespace SpanRater;

/// <summary>A round or square bar about its centre; where its ends are threaded and not upset, the root of the thread is its net area.</summary>
internal sealed class BarKind(string name, ShapeDimension size) : ShapeKind(name, [size], [ShapeDimension.Root])
{
    internal override IReadOnlyDictionary<ShapeDimension, MeasureSense> Senses { get; } =
        new Dictionary<ShapeDimension, MeasureSense> { [size] = MeasureSense.Round, [ShapeDimension.Root] = MeasureSense.Round };

    internal override IEnumerable<ShapeFault> Faults(ShapeMeasures measures) =>
        measures.Has(ShapeDimension.Root) && measures.Built(ShapeDimension.Root) >= measures.Built(size) ? [new ShapeFault.NotSmaller(ShapeDimension.Root, size)] : [];

    internal override Outline OutlineOf(ShapeMeasures measures)
    {
        double half = measures.Now(size) / 2;
        return size == ShapeDimension.Diameter ? Outline.OfDisc(half, 0) : Outline.OfRectangle(-half, half, -half, half);
    }

    // At a cut through a wasted body the body may be less than the thread.
    internal override double? OwnNetArea(ShapeMeasures measures)
    {
        double side = measures.Now(size), body = side * side * (size == ShapeDimension.Diameter ? Math.PI / 4 : 1);
        return measures.Has(ShapeDimension.Root) ? Math.Min(body, Math.PI / 4 * measures.Now(ShapeDimension.Root) * measures.Now(ShapeDimension.Root)) : null;
    }
}
