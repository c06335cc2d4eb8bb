namespace SpanRater;

/// <summary>A channel (its back is the y axis, its flanges run to the right) or a beam of I shape (about its centre).</summary>
internal sealed class FlangedKind(string name, bool isChannel, double taper)
    : ShapeKind(name, [ShapeDimension.Depth, ShapeDimension.Width, ShapeDimension.Web, ShapeDimension.Flange])
{
    /// <summary>Slope of the inner faces of the flanges of American standard beams and channels: 2 in 12. Source: AISC Manual, dimensions of S and C shapes, from memory.</summary>
    public const double StandardTaper = 1.0 / 6;

    public override IReadOnlyList<ShapeDimension> Walls { get; } = [ShapeDimension.Web, ShapeDimension.TopFlange, ShapeDimension.BottomFlange];

    internal override bool HasBack => isChannel;

    internal override IReadOnlyDictionary<ShapeDimension, MeasureSense> Senses { get; } = new Dictionary<ShapeDimension, MeasureSense>
    {
        [ShapeDimension.Depth] = MeasureSense.Fixed,
        [ShapeDimension.Web] = MeasureSense.LeftToRight,
        [ShapeDimension.TopFlange] = MeasureSense.BottomToTop,
        [ShapeDimension.BottomFlange] = MeasureSense.BottomToTop,
        [ShapeDimension.TopWidth] = isChannel ? MeasureSense.FreeEnd : MeasureSense.LeftToRight,
        [ShapeDimension.BottomWidth] = isChannel ? MeasureSense.FreeEnd : MeasureSense.LeftToRight,
    };

    internal override IReadOnlyList<ShapeDimension> FinerOf(ShapeDimension dimension) => dimension switch
    {
        ShapeDimension.Flange => [ShapeDimension.TopFlange, ShapeDimension.BottomFlange],
        ShapeDimension.Width => [ShapeDimension.TopWidth, ShapeDimension.BottomWidth],
        _ => [dimension],
    };

    internal override IEnumerable<ShapeFault> Faults(ShapeMeasures measures)
    {
        double width = measures.Built(ShapeDimension.TopWidth), flange = measures.Built(ShapeDimension.TopFlange), web = measures.Built(ShapeDimension.Web);
        if (flange >= measures.Built(ShapeDimension.Depth) / 2)
        {
            yield return new ShapeFault.HalfOrMore(ShapeDimension.Flange, ShapeDimension.Depth);
        }

        if (web >= width / 2)
        {
            yield return new ShapeFault.HalfOrMore(ShapeDimension.Web, ShapeDimension.Width);
        }
        else if (flange <= taper * (isChannel ? width - web : (width - web) / 2) / 2)
        {
            yield return new ShapeFault.TapersToNothing(ShapeDimension.Flange);
        }
    }

    internal override Outline OutlineOf(ShapeMeasures measures)
    {
        double half = measures.Built(ShapeDimension.Depth) / 2;
        (double webLeft, double webRight) = WebOf(measures);
        (double topLeft, double topRight) = FlangeOf(measures, ShapeDimension.TopWidth, webLeft);
        (double bottomLeft, double bottomRight) = FlangeOf(measures, ShapeDimension.BottomWidth, webLeft);
        (double topInner, double top) = measures.Faces(ShapeDimension.TopFlange, half - measures.Built(ShapeDimension.TopFlange));
        (double bottom, double bottomInner) = measures.Faces(ShapeDimension.BottomFlange, -half);

        // The thickness given is that in the middle of the overhang as built; towards the web the flange is thicker.
        double web = measures.Built(ShapeDimension.Web), overhang = isChannel ? measures.Built(ShapeDimension.TopWidth) - web : (measures.Built(ShapeDimension.TopWidth) - web) / 2;
        double middle = (isChannel ? web : web / 2) + (overhang / 2);
        SectionPoint Under(double x) => new(x, topInner - (taper * (middle - Math.Abs(x))));
        SectionPoint Over(double x) => new(x, bottomInner + (taper * (middle - Math.Abs(x))));

        return isChannel
            ? Outline.Of(
                new(webLeft, bottom), new(bottomRight, bottom), Over(bottomRight), Over(webRight),
                Under(webRight), Under(topRight), new(topRight, top), new(webLeft, top))
            : Outline.Of(
                new(bottomLeft, bottom), new(bottomRight, bottom), Over(bottomRight), Over(webRight),
                Under(webRight), Under(topRight), new(topRight, top), new(topLeft, top), Under(topLeft), Under(webLeft), Over(webLeft), Over(bottomLeft));
    }

    internal override (double Left, double Right, double Bottom, double Top, bool IsUpright) WallOf(ShapeMeasures measures, ShapeDimension wall)
    {
        double half = measures.Built(ShapeDimension.Depth) / 2;
        (double webLeft, double webRight) = WebOf(measures);
        (double topInner, double top) = measures.Faces(ShapeDimension.TopFlange, half - measures.Built(ShapeDimension.TopFlange));
        (double bottom, double bottomInner) = measures.Faces(ShapeDimension.BottomFlange, -half);
        if (wall == ShapeDimension.Web)
        {
            return (webLeft, webRight, bottomInner, topInner, true);
        }

        bool isTop = wall == ShapeDimension.TopFlange;
        (double left, double right) = FlangeOf(measures, isTop ? ShapeDimension.TopWidth : ShapeDimension.BottomWidth, webLeft);
        return isTop ? (left, right, topInner, top, false) : (left, right, bottom, bottomInner, false);
    }

    private (double Left, double Right) WebOf(ShapeMeasures measures) => measures.Faces(ShapeDimension.Web, isChannel ? 0 : -measures.Built(ShapeDimension.Web) / 2);

    private (double Left, double Right) FlangeOf(ShapeMeasures measures, ShapeDimension width, double webLeft) =>
        isChannel ? (webLeft, measures.Now(width)) : measures.Faces(width, -measures.Built(width) / 2);
}
