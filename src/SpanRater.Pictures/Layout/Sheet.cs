namespace SpanRater.Pictures;

/// <summary>One entry of a legend.</summary>
/// <param name="Words">What the line means.</param>
/// <param name="Style">The line.</param>
/// <param name="Fill">Fill below the line; null for none.</param>
/// <param name="Hatched">True when the fill is hatched.</param>
internal sealed record LegendEntry(string Words, LineStyle Style, Ink? Fill = null, bool Hatched = false);

/// <summary>How a line is drawn.</summary>
/// <param name="Ink">Its ink.</param>
/// <param name="Weight">Its width [px].</param>
/// <param name="Dash">How it is broken.</param>
internal readonly record struct LineStyle(Ink Ink, double Weight, Dash Dash = Dash.Solid);

/// <summary>A sheet that is filled from the top down; its height is known when it is full.</summary>
internal sealed class Sheet
{
    /// <summary>Free border at either side [px].</summary>
    public const double Border = 40;

    /// <summary>Size of text that is read [px].</summary>
    public const double TextSize = 15;

    private const double TitleSize = 23;
    private const double LegendSize = 14;
    private const double SampleWidth = 46;

    private readonly string title;
    private readonly List<Panel> panels = [];
    private readonly List<Func<double, DrawingPart>> parts = [];

    /// <summary>Begins a sheet with its title.</summary>
    /// <param name="title">The title.</param>
    public Sheet(string title)
    {
        this.title = title;
        Paragraph("title", title, TitleSize, Ink.Black);
        Space(4);
    }

    /// <summary>How far the sheet is filled, from its top [px].</summary>
    public double Filled { get; private set; } = 26;

    /// <summary>Width between the borders [px].</summary>
    public static double InnerWidth => Picture.StandardWidth - (2 * Border);

    /// <summary>Leaves room.</summary>
    /// <param name="height">How much [px].</param>
    public void Space(double height) => Filled += height;

    /// <summary>Sets a text in as many lines as it needs.</summary>
    /// <param name="shows">Name of what it shows.</param>
    /// <param name="text">The text.</param>
    /// <param name="size">Size of its letters [px].</param>
    /// <param name="ink">Its ink.</param>
    public void Paragraph(string shows, string text, double size = TextSize, Ink ink = Ink.Grey)
    {
        foreach (string line in Lettering.Wrap(text, size, InnerWidth))
        {
            double top = Filled + (size * 0.7);
            parts.Add(height => new Text(shows, new(Border, height - top), line, size, ink, TextAnchor.Left));
            Filled += size * 1.4;
        }
    }

    /// <summary>Sets a legend in as many lines as it needs.</summary>
    /// <param name="entries">Its entries.</param>
    public void Legend(params IReadOnlyList<LegendEntry> entries)
    {
        double x = Border;
        foreach (LegendEntry entry in entries)
        {
            double width = SampleWidth + 10 + Lettering.Width(entry.Words, LegendSize) + 28;
            if (x > Border && x + width > Border + InnerWidth)
            {
                x = Border;
                Filled += 24;
            }

            Sample(entry, x, Filled + 12);
            double left = x + SampleWidth + 10, middle = Filled + 12;
            parts.Add(height => new Text("legend", new(left, height - middle), entry.Words, LegendSize, Ink.Black, TextAnchor.Left));
            x += width;
        }

        Filled += 28;
    }

    /// <summary>Lays a drawing down at the left border, or further right.</summary>
    /// <param name="drawing">The drawing.</param>
    /// <param name="indent">Distance from the border [px].</param>
    /// <param name="left">Axis at its left.</param>
    /// <param name="bottom">Axis below it.</param>
    public void Place(Drawing drawing, double indent = 0, Axis? left = null, Axis? bottom = null)
    {
        double height = drawing.Height * drawing.ScaleY;
        panels.Add(new Panel(new Frame(Border + indent, Filled, drawing.Width * drawing.ScaleX, height), drawing, left, bottom));
        Filled += height + (bottom is null ? 0 : 56);
    }

    /// <summary>The sheet as a picture.</summary>
    public Picture ToPicture()
    {
        int height = (int)Math.Ceiling(Filled + 22);
        var page = new Drawing(0, 0, Picture.StandardWidth, height, 1, 1, [.. parts.Select(part => part(height))]);
        return new Picture(title, Picture.StandardWidth, height, [new Panel(new Frame(0, 0, Picture.StandardWidth, height), page), .. panels]);
    }

    private void Sample(LegendEntry entry, double x, double middle)
    {
        double line = middle;
        if (entry.Fill is { } fill)
        {
            line = middle - 7;
            parts.Add(height => new Area("legend", Rectangle(x, height - middle - 8, SampleWidth, 15), fill));
            for (double hatch = x + 3; entry.Hatched && hatch < x + SampleWidth; hatch += Hatching.Spacing)
            {
                double at = hatch;
                parts.Add(height => new Stroke("legend", [new(at, height - middle - 8), new(at, height - line)], entry.Style.Ink, Hatching.Weight));
            }
        }

        parts.Add(height => new Stroke(
            "legend", [new(x, height - line), new(x + SampleWidth, height - line)], entry.Style.Ink, entry.Style.Weight, entry.Style.Dash));
    }

    private static DrawingPoint[] Rectangle(double x, double y, double width, double height) =>
        [new(x, y), new(x + width, y), new(x + width, y + height), new(x, y + height)];
}
