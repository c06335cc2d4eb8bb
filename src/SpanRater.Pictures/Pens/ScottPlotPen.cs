using ScottPlot;
using ScottPlot.AxisPanels;
using SkiaSharp;

namespace SpanRater.Pictures;

/// <summary>Draws pictures with ScottPlot: one plot a panel, laid into the panel's frame.</summary>
internal static class ScottPlotPen
{
    private const float TickSize = 13;
    private const float TitleSize = 14;

    /// <summary>Draws a picture.</summary>
    /// <param name="picture">The picture.</param>
    /// <param name="canvas">What it is drawn on; as large as the picture.</param>
    public static void Draw(Picture picture, SKCanvas canvas)
    {
        ShippedFont.Use();
        canvas.Clear(SKColors.White);
        foreach (Panel panel in picture.Panels)
        {
            using Plot plot = PlotOf(panel);
            var whole = new PixelRect(0, picture.Width, picture.Height, 0);

            // A plot draws twice when its axes turn out to have another size than it had thought. It finds that out on a
            // canvas that keeps nothing, so that every stroke and letter comes once onto the one that counts.
            using (var nothing = new SKNoDrawCanvas(picture.Width, picture.Height))
            {
                plot.Render(nothing, whole);
            }

            plot.Render(canvas, whole);
        }
    }

    private static Plot PlotOf(Panel panel)
    {
        var plot = new Plot();

        // The panels share one canvas: a plot that cleared it would wipe out those before it.
        plot.RenderManager.ClearCanvasBeforeEachRender = false;
        Drawing drawing = panel.Drawing;
        plot.FigureBackground.Color = Colors.Transparent;
        plot.DataBackground.Color = Colors.Transparent;
        plot.HideGrid();
        plot.Layout.Fixed(new PixelRect(
            (float)panel.Frame.X,
            (float)(panel.Frame.X + panel.Frame.Width),
            (float)(panel.Frame.Y + panel.Frame.Height),
            (float)panel.Frame.Y));
        plot.Axes.SetLimits(drawing.Left, drawing.Left + drawing.Width, drawing.Bottom, drawing.Bottom + drawing.Height);
        Set((AxisBase)plot.Axes.Left, panel.LeftAxis);
        Set((AxisBase)plot.Axes.Bottom, panel.BottomAxis);

        // Drawings with bars have names beside them, below which no axis runs: they draw its line themselves.
        plot.Axes.Bottom.FrameLineStyle.IsVisible = false;
        plot.Axes.Right.IsVisible = false;
        plot.Axes.Top.IsVisible = false;
        plot.Add.Plottable(new DrawingPlottable(drawing));
        return plot;
    }

    private static void Set(AxisBase axis, SpanRater.Pictures.Axis? content)
    {
        if (content is null)
        {
            axis.IsVisible = false;
            return;
        }

        axis.SetTicks([.. content.Ticks.Select(t => t.At)], [.. content.Ticks.Select(t => t.Label)]);
        axis.TickLabelStyle.FontName = Lettering.Family;
        axis.TickLabelStyle.FontSize = TickSize;
        axis.TickLabelStyle.ForeColor = Color.FromHex(Palette.ColourOf(Ink.Black));
        axis.LabelStyle.Text = content.Title;
        axis.LabelStyle.FontName = Lettering.Family;
        axis.LabelStyle.FontSize = TitleSize;
        axis.LabelStyle.Bold = false;
        axis.LabelStyle.ForeColor = Color.FromHex(Palette.ColourOf(Ink.Black));
        Color line = Color.FromHex(Palette.ColourOf(Ink.Grey));
        axis.FrameLineStyle.Color = line;
        axis.MajorTickStyle.Color = line;
    }
}
