namespace SpanRater.Pictures;

/// <summary>Where a drawing stands in its own units, and how large: it carries pixels over into places and back.</summary>
/// <param name="Left">Smallest x shown [m].</param>
/// <param name="Bottom">Smallest y shown [m; ordinate].</param>
/// <param name="ScaleX">Pixels a unit to the right [px/m].</param>
/// <param name="ScaleY">Pixels a unit up [px/m].</param>
internal readonly record struct View(double Left, double Bottom, double ScaleX, double ScaleY)
{
    /// <summary>A point moved by pixels.</summary>
    /// <param name="point">The point.</param>
    /// <param name="right">To the right [px].</param>
    /// <param name="up">Up [px].</param>
    public DrawingPoint Moved(DrawingPoint point, double right, double up) => new(point.X + (right / ScaleX), point.Y + (up / ScaleY));

    /// <summary>A point in pixels from the drawing's lower left corner, up positive.</summary>
    /// <param name="point">The point.</param>
    public DrawingPoint Pixels(DrawingPoint point) => new((point.X - Left) * ScaleX, (point.Y - Bottom) * ScaleY);

    /// <summary>A drawing of that view.</summary>
    /// <param name="width">Its width [px].</param>
    /// <param name="height">Its height [px].</param>
    /// <param name="parts">Its parts.</param>
    public Drawing Drawing(double width, double height, IReadOnlyList<DrawingPart> parts) =>
        new(Left, Bottom, width / ScaleX, height / ScaleY, ScaleX, ScaleY, parts);
}
