namespace SpanRater;

/// <summary>A rectangle about its centre: a plate or a timber.</summary>
internal sealed class RectangleKind(string name, ShapeDimension across, ShapeDimension up, ShapeDimension wall) : ShapeKind(name, [across, up])
{
    public override IReadOnlyList<ShapeDimension> Walls { get; } = [wall];

    internal override bool HasFourFaces => wall != ShapeDimension.Thickness;

    internal override IReadOnlyDictionary<ShapeDimension, MeasureSense> Senses { get; } =
        new Dictionary<ShapeDimension, MeasureSense> { [across] = MeasureSense.LeftToRight, [up] = MeasureSense.BottomToTop };

    internal override IEnumerable<ShapeFault> Faults(ShapeMeasures measures)
    {
        // A square plate is a bar; what is thicker than wide has its cells swapped.
        ShapeDimension length = across == wall ? up : across;
        return !HasFourFaces && measures.Now(wall) > measures.Now(length) ? [new ShapeFault.NotSmaller(wall, length)] : [];
    }

    internal override Outline OutlineOf(ShapeMeasures measures)
    {
        (double left, double right, double bottom, double top) = Box(measures);
        return Outline.OfRectangle(left, right, bottom, top);
    }

    internal override (double Left, double Right, double Bottom, double Top, bool IsUpright) WallOf(ShapeMeasures measures, ShapeDimension wall)
    {
        (double left, double right, double bottom, double top) = Box(measures);
        return (left, right, bottom, top, wall == across);
    }

    private (double Left, double Right, double Bottom, double Top) Box(ShapeMeasures measures)
    {
        (double left, double right) = measures.Faces(across, -measures.Built(across) / 2);
        (double bottom, double top) = measures.Faces(up, -measures.Built(up) / 2);
        return (left, right, bottom, top);
    }
}
