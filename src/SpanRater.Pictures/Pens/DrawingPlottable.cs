using ScottPlot;
using SkiaSharp;

namespace SpanRater.Pictures;

/// <summary>Lays a drawing down within a plot, whose axes have the drawing's window.</summary>
internal sealed class DrawingPlottable(Drawing drawing) : IPlottable
{
    // The letters' middle lies this part of their size above the line they stand on: half of a capital's height.
    private const double HalfCapital = 0.36;

    public bool IsVisible { get; set; } = true;

    public IAxes Axes { get; set; } = ScottPlot.Axes.Default;

    public IEnumerable<LegendItem> LegendItems => [];

    public AxisLimits GetAxisLimits() =>
        new(drawing.Left, drawing.Left + drawing.Width, drawing.Bottom, drawing.Bottom + drawing.Height);

    public void Render(RenderPack rp)
    {
        foreach (DrawingPart part in drawing.Parts)
        {
            switch (part)
            {
                case Stroke stroke:
                    Draw(rp.Canvas, stroke);
                    break;
                case Area area:
                    Draw(rp.Canvas, area);
                    break;
                case Mark mark:
                    Draw(rp.Canvas, mark);
                    break;
                case Text text:
                    Draw(rp.Canvas, text);
                    break;
            }
        }
    }

    private static SKColor ColourOf(Ink ink) => SKColor.Parse(Palette.ColourOf(ink));

    private static SKPaint Filling(Ink ink) => new() { Color = ColourOf(ink), IsAntialias = true };

    private static SKPaint Outline(Ink ink, double weight) =>
        new() { Color = ColourOf(ink), IsAntialias = true, IsStroke = true, StrokeWidth = (float)weight, StrokeJoin = SKStrokeJoin.Round };

    private void Draw(SKCanvas canvas, Stroke stroke)
    {
        using SKPath path = PathThrough(stroke.Points, stroke.Closed);
        using SKPaint paint = Outline(stroke.Ink, stroke.Weight);
        using SKPathEffect? effect = Palette.PatternOf(stroke.Dash, stroke.Weight) is { } pattern
            ? SKPathEffect.CreateDash([.. pattern.Select(p => (float)p)], 0)
            : null;
        paint.PathEffect = effect;
        canvas.DrawPath(path, paint);
    }

    private void Draw(SKCanvas canvas, Area area)
    {
        using SKPath path = PathThrough(area.Points, closed: true);
        using SKPaint paint = Filling(area.Ink);
        canvas.DrawPath(path, paint);
    }

    private void Draw(SKCanvas canvas, Mark mark)
    {
        SKPoint at = PixelOf(mark.At);
        float half = (float)(mark.Size / 2);
        using var path = new SKPath();
        switch (mark.Shape)
        {
            case MarkShape.Circle:
                path.AddCircle(at.X, at.Y, half);
                break;
            case MarkShape.Square:
                path.AddRect(new SKRect(at.X - half, at.Y - half, at.X + half, at.Y + half));
                break;
            case MarkShape.Diamond:
                path.AddPoly([new(at.X, at.Y - half), new(at.X + half, at.Y), new(at.X, at.Y + half), new(at.X - half, at.Y)], close: true);
                break;
        }

        using SKPaint fill = Filling(mark.Filled ? mark.Ink : Ink.Paper);
        using SKPaint outline = Outline(mark.Ink, 1.5);
        canvas.DrawPath(path, fill);
        canvas.DrawPath(path, outline);
    }

    private void Draw(SKCanvas canvas, Text text)
    {
        SKPoint at = PixelOf(text.At);
        using SKFont font = Lettering.FontOf(text.Size);
        float width = font.MeasureText(text.Content);
        float start = text.Anchor switch
        {
            TextAnchor.Left => 0,
            TextAnchor.Right => -width,
            _ => -width / 2,
        };

        canvas.Save();
        canvas.Translate(at.X, at.Y);
        if (text.Angle != 0)
        {
            canvas.RotateDegrees(-(float)text.Angle);
        }

        if (text.OnPaper)
        {
            using SKPaint paper = Filling(Ink.Paper);
            float half = (float)(text.Size * 0.58);
            canvas.DrawRect(new SKRect(start - 3, -half, start + width + 3, half), paper);
        }

        using SKPaint paint = Filling(text.Ink);
        canvas.DrawText(text.Content, start, (float)(text.Size * HalfCapital), SKTextAlign.Left, font, paint);
        canvas.Restore();
    }

    private SKPath PathThrough(IReadOnlyList<DrawingPoint> points, bool closed)
    {
        var path = new SKPath();
        path.AddPoly([.. points.Select(PixelOf)], closed);
        return path;
    }

    private SKPoint PixelOf(DrawingPoint point)
    {
        Pixel pixel = Axes.GetPixel(new Coordinates(point.X, point.Y));
        return new SKPoint(pixel.X, pixel.Y);
    }
}
