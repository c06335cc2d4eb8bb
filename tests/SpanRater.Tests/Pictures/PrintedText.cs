using SkiaSharp;
using SpanRater.Pictures;

namespace SpanRater.Tests.Pictures;

/// <summary>A text as it is printed on the sheet, measured here with the font file itself.</summary>
internal sealed class PrintedText
{
    private static readonly SKTypeface Typeface = ReadFont();

    private PrintedText(Panel panel, Text text)
    {
        Text = text;
        Frame = panel.Frame;
        Drawing drawing = panel.Drawing;
        double x = panel.Frame.X + ((text.At.X - drawing.Left) * drawing.ScaleX);
        double y = panel.Frame.Y + panel.Frame.Height - ((text.At.Y - drawing.Bottom) * drawing.ScaleY);
        using var font = new SKFont(Typeface, (float)text.Size);
        double width = font.MeasureText(text.Content), half = text.Size * 0.38;
        double start = text.Anchor switch { TextAnchor.Left => 0, TextAnchor.Right => -width, _ => -width / 2 };
        (double sin, double cos) = Math.SinCos(-text.Angle * Math.PI / 180);
        (double X, double Y) Corner(double right, double down) => (x + (right * cos) - (down * sin), y + (right * sin) + (down * cos));
        Corners = [Corner(start, -half), Corner(start + width, -half), Corner(start + width, half), Corner(start, half)];
    }

    public Text Text { get; }

    public Frame Frame { get; }

    /// <summary>Corners of the rectangle that the letters cover [px, down positive].</summary>
    public IReadOnlyList<(double X, double Y)> Corners { get; }

    public bool IsCutOff => Corners.Any(c =>
        c.X < Frame.X || c.X > Frame.X + Frame.Width || c.Y < Frame.Y || c.Y > Frame.Y + Frame.Height);

    public static IReadOnlyList<PrintedText> Of(Picture picture) =>
        [.. picture.Panels.SelectMany(panel => panel.Drawing.Texts.Select(text => new PrintedText(panel, text)))];

    public static bool HasGlyphs(string text) => Typeface.ContainsGlyphs(text);

    /// <summary>Whether the letters of two texts touch: no edge of either rectangle parts them.</summary>
    public bool Overprints(PrintedText other) => !PartedBy(Corners, other.Corners) && !PartedBy(other.Corners, Corners);

    private static bool PartedBy(IReadOnlyList<(double X, double Y)> edges, IReadOnlyList<(double X, double Y)> points)
    {
        for (int i = 0; i < 4; i++)
        {
            (double X, double Y) from = edges[i], to = edges[(i + 1) % 4];
            if (points.All(p => ((to.X - from.X) * (p.Y - from.Y)) - ((to.Y - from.Y) * (p.X - from.X)) < 0))
            {
                return true;
            }
        }

        return false;
    }

    private static SKTypeface ReadFont()
    {
        using Stream stream = typeof(Picture).Assembly.GetManifestResourceStream("font/Inter-Regular.otf")!;
        using SKData bytes = SKData.Create(stream);
        return SKTypeface.FromData(bytes);
    }
}
