namespace SpanRater;

/// <summary>An angle: its heel is the origin, one leg stands (as long as the depth), the other lies to the right (as long as the width).</summary>
internal sealed class AngleKind() : ShapeKind("angle", [ShapeDimension.Depth, ShapeDimension.Width, ShapeDimension.Thickness])
{
    public override IReadOnlyList<ShapeDimension> Walls { get; } = [ShapeDimension.UprightLeg, ShapeDimension.FlatLeg];

    internal override bool HasBack => true;

    internal override IReadOnlyDictionary<ShapeDimension, MeasureSense> Senses { get; } = new Dictionary<ShapeDimension, MeasureSense>
    {
        [ShapeDimension.UprightLeg] = MeasureSense.LeftToRight,
        [ShapeDimension.FlatLeg] = MeasureSense.BottomToTop,
        [ShapeDimension.Width] = MeasureSense.FreeEnd,
        [ShapeDimension.Depth] = MeasureSense.FreeEnd,
    };

    internal override IReadOnlyList<ShapeDimension> FinerOf(ShapeDimension dimension) =>
        dimension == ShapeDimension.Thickness ? [ShapeDimension.UprightLeg, ShapeDimension.FlatLeg] : [dimension];

    internal override IEnumerable<ShapeFault> Faults(ShapeMeasures measures)
    {
        double thickness = measures.Built(ShapeDimension.UprightLeg);
        return ((ShapeDimension[])[ShapeDimension.Depth, ShapeDimension.Width])
            .Where(leg => thickness >= measures.Now(leg) / 2).Select(leg => new ShapeFault.HalfOrMore(ShapeDimension.Thickness, leg)).Take(1);
    }

    internal override Outline OutlineOf(ShapeMeasures measures)
    {
        (double back, double front) = measures.Faces(ShapeDimension.UprightLeg, 0);
        (double under, double upper) = measures.Faces(ShapeDimension.FlatLeg, 0);
        double width = measures.Now(ShapeDimension.Width), depth = measures.Now(ShapeDimension.Depth);
        return Outline.Of(new(back, under), new(width, under), new(width, upper), new(front, upper), new(front, depth), new(back, depth));
    }

    internal override (double Left, double Right, double Bottom, double Top, bool IsUpright) WallOf(ShapeMeasures measures, ShapeDimension wall)
    {
        (double back, double front) = measures.Faces(ShapeDimension.UprightLeg, 0);
        (double under, double upper) = measures.Faces(ShapeDimension.FlatLeg, 0);
        return wall == ShapeDimension.UprightLeg
            ? (back, front, upper, measures.Now(ShapeDimension.Depth), true)
            : (front, measures.Now(ShapeDimension.Width), under, upper, false);
    }
}
