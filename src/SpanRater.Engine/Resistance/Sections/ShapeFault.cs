namespace SpanRater;

/// <summary>What is wrong with the dimensions given for a shape.</summary>
/// <param name="Dimension">The dimension to look at.</param>
public abstract record ShapeFault(ShapeDimension Dimension)
{
    /// <summary>A dimension that the shape needs is not given.</summary>
    /// <param name="Dimension">The dimension.</param>
    public sealed record Missing(ShapeDimension Dimension) : ShapeFault(Dimension);

    /// <summary>The shape has no such dimension.</summary>
    /// <param name="Dimension">The dimension.</param>
    public sealed record NotOfShape(ShapeDimension Dimension) : ShapeFault(Dimension);

    /// <summary>A dimension is not a length above zero.</summary>
    /// <param name="Dimension">The dimension.</param>
    public sealed record NotPositive(ShapeDimension Dimension) : ShapeFault(Dimension);

    /// <summary>A thickness is half of another dimension or more.</summary>
    /// <param name="Dimension">The thickness.</param>
    /// <param name="Of">The other dimension.</param>
    public sealed record HalfOrMore(ShapeDimension Dimension, ShapeDimension Of) : ShapeFault(Dimension);

    /// <summary>A dimension is not below another one, as it is in every such shape.</summary>
    /// <param name="Dimension">The dimension.</param>
    /// <param name="Than">The larger one.</param>
    public sealed record NotSmaller(ShapeDimension Dimension, ShapeDimension Than) : ShapeFault(Dimension);

    /// <summary>Flanges that taper come to nothing before their edge.</summary>
    /// <param name="Dimension">The thickness in the middle of the overhang.</param>
    public sealed record TapersToNothing(ShapeDimension Dimension) : ShapeFault(Dimension);
}
