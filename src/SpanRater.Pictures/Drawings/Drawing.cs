namespace SpanRater.Pictures;

/// <summary>
/// A drawing before any pen has touched it: strokes, areas, marks and texts in the order in which they are laid down, each
/// bearing the name of what it shows. An elevation is in metres, an influence line in metres across and ordinates up, a
/// page in pixels. Texts were placed for the scale that it names, at which a pen should draw it. Immutable.
/// </summary>
/// <param name="Left">Smallest x shown [m].</param>
/// <param name="Bottom">Smallest y shown [m; ordinate].</param>
/// <param name="Width">Extent to the right [m].</param>
/// <param name="Height">Extent up [m; ordinate].</param>
/// <param name="ScaleX">Pixels a unit to the right [px/m].</param>
/// <param name="ScaleY">Pixels a unit up [px/m]; equal to <paramref name="ScaleX"/> in an elevation.</param>
/// <param name="Parts">The parts, the undermost first.</param>
public sealed record Drawing(
    double Left,
    double Bottom,
    double Width,
    double Height,
    double ScaleX,
    double ScaleY,
    IReadOnlyList<DrawingPart> Parts)
{
    /// <summary>The strokes.</summary>
    public IEnumerable<Stroke> Strokes => Parts.OfType<Stroke>();

    /// <summary>The marks.</summary>
    public IEnumerable<Mark> Marks => Parts.OfType<Mark>();

    /// <summary>The texts.</summary>
    public IEnumerable<Text> Texts => Parts.OfType<Text>();
}
