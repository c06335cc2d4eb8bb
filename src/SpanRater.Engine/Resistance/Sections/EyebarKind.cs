namespace SpanRater;

/// <summary>An eyebar: its body about its centre; head and pin hole give the net area of the head.</summary>
internal sealed class EyebarKind() : ShapeKind("eyebar", [ShapeDimension.Width, ShapeDimension.Thickness], [ShapeDimension.HeadWidth, ShapeDimension.PinHole])
{
    public override IReadOnlyList<ShapeDimension> Walls { get; } = [ShapeDimension.Thickness];

    internal override IReadOnlyDictionary<ShapeDimension, MeasureSense> Senses { get; } = new Dictionary<ShapeDimension, MeasureSense>
    {
        [ShapeDimension.Width] = MeasureSense.BottomToTop,
        [ShapeDimension.Thickness] = MeasureSense.LeftToRight,
        [ShapeDimension.HeadWidth] = MeasureSense.Round,
    };

    internal override bool NetAreaIsItsOwn => true;

    internal override IEnumerable<ShapeFault> Faults(ShapeMeasures measures)
    {
        if (measures.Now(ShapeDimension.Thickness) > measures.Now(ShapeDimension.Width))
        {
            yield return new ShapeFault.NotSmaller(ShapeDimension.Thickness, ShapeDimension.Width);
        }

        if (measures.Has(ShapeDimension.HeadWidth) && measures.Built(ShapeDimension.HeadWidth) <= measures.Built(ShapeDimension.Width))
        {
            yield return new ShapeFault.NotSmaller(ShapeDimension.Width, ShapeDimension.HeadWidth);
        }

        if (measures.Has(ShapeDimension.HeadWidth) && measures.Has(ShapeDimension.PinHole) && measures.Now(ShapeDimension.PinHole) >= measures.Now(ShapeDimension.HeadWidth))
        {
            yield return new ShapeFault.NotSmaller(ShapeDimension.PinHole, ShapeDimension.HeadWidth);
        }
    }

    internal override Outline OutlineOf(ShapeMeasures measures)
    {
        (double left, double right, double bottom, double top, _) = WallOf(measures, ShapeDimension.Thickness);
        return Outline.OfRectangle(left, right, bottom, top);
    }

    internal override (double Left, double Right, double Bottom, double Top, bool IsUpright) WallOf(ShapeMeasures measures, ShapeDimension wall)
    {
        (double left, double right) = measures.Faces(ShapeDimension.Thickness, -measures.Built(ShapeDimension.Thickness) / 2);
        (double bottom, double top) = measures.Faces(ShapeDimension.Width, -measures.Built(ShapeDimension.Width) / 2);
        return (left, right, bottom, top, true);
    }

    internal override double? OwnNetArea(ShapeMeasures measures) => measures.Has(ShapeDimension.HeadWidth) && measures.Has(ShapeDimension.PinHole)
        ? (measures.Now(ShapeDimension.HeadWidth) - measures.Now(ShapeDimension.PinHole)) * measures.Now(ShapeDimension.Thickness)
        : null;
}
