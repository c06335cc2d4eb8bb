namespace SpanRater;

/// <summary>How the two faces of a measure lie in the shape's own drawing, and so where loss may be.</summary>
internal enum MeasureSense
{
    /// <summary>Between a left and a right face.</summary>
    LeftToRight,

    /// <summary>Between a bottom and a top face.</summary>
    BottomToTop,

    /// <summary>From a back to a free end: loss is at the end.</summary>
    FreeEnd,

    /// <summary>All round.</summary>
    Round,

    /// <summary>Does not change with loss.</summary>
    Fixed,
}

/// <summary>A measure as built and as it is now.</summary>
/// <param name="Built">As built [m].</param>
/// <param name="AtLow">Lost at the left or bottom face [m].</param>
/// <param name="AtHigh">Lost at the right or top face, at the free end, or in all [m].</param>
internal readonly record struct ShapeMeasure(double Built, double AtLow, double AtHigh)
{
    public double Now => Built - AtLow - AtHigh;
}

/// <summary>The measures of one shape.</summary>
internal sealed class ShapeMeasures(IReadOnlyDictionary<ShapeDimension, ShapeMeasure> values)
{
    public ShapeMeasure this[ShapeDimension dimension] => values[dimension];

    public bool Has(ShapeDimension dimension) => values.ContainsKey(dimension);

    public double Now(ShapeDimension dimension) => values[dimension].Now;

    public double Built(ShapeDimension dimension) => values[dimension].Built;

    /// <summary>The left and right, or bottom and top, face of a measure whose lower face was at a place when built.</summary>
    public (double Low, double High) Faces(ShapeDimension dimension, double low)
    {
        ShapeMeasure measure = values[dimension];
        return (low + measure.AtLow, low + measure.Built - measure.AtHigh);
    }

    public ShapeMeasures With(ShapeDimension dimension, ShapeMeasure measure) =>
        new(new Dictionary<ShapeDimension, ShapeMeasure>(values) { [dimension] = measure });

    public ShapeMeasures AsBuilt() => new(values.ToDictionary(v => v.Key, v => new ShapeMeasure(v.Value.Built, 0, 0)));
}
