namespace SpanRater.Pictures;

/// <summary>Cuts a drawing's window down to what stands in it.</summary>
internal static class Cropping
{
    private const double Margin = 10;

    /// <summary>The drawing with a window no larger than its parts need.</summary>
    /// <param name="drawing">The drawing; its parts are kept as they are.</param>
    public static Drawing ToParts(Drawing drawing)
    {
        (double X, double Y)[] reach = [.. drawing.Parts.SelectMany(p => Reach(p, drawing))];
        double left = reach.Min(r => r.X) - (Margin / drawing.ScaleX), right = reach.Max(r => r.X) + (Margin / drawing.ScaleX);
        double bottom = reach.Min(r => r.Y) - (Margin / drawing.ScaleY), top = reach.Max(r => r.Y) + (Margin / drawing.ScaleY);
        return drawing with { Left = left, Bottom = bottom, Width = right - left, Height = top - bottom };
    }

    private static IEnumerable<(double X, double Y)> Reach(DrawingPart part, Drawing drawing) => part switch
    {
        Stroke stroke => stroke.Points.Select(p => (p.X, p.Y)),
        Area area => area.Points.Select(p => (p.X, p.Y)),
        Mark mark => Around(mark.At, mark.Size, mark.Size, drawing),
        Text text => Around(Middle(text, drawing), Lettering.Width(text.Content, text.Size), text.Size * 1.3, drawing),
        _ => [],
    };

    // A text that is turned is taken as if it were level where it stands off its anchor; its own size is turned with it.
    private static DrawingPoint Middle(Text text, Drawing drawing)
    {
        double half = Lettering.Width(text.Content, text.Size) / 2 / drawing.ScaleX;
        return text.Angle != 0 ? text.At : text.Anchor switch { TextAnchor.Left => new(text.At.X + half, text.At.Y), TextAnchor.Right => new(text.At.X - half, text.At.Y), _ => text.At };
    }

    private static IEnumerable<(double X, double Y)> Around(DrawingPoint at, double width, double height, Drawing drawing) =>
        [(at.X - (width / 2 / drawing.ScaleX), at.Y - (height / 2 / drawing.ScaleY)), (at.X + (width / 2 / drawing.ScaleX), at.Y + (height / 2 / drawing.ScaleY))];
}
