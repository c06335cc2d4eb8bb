using SpanRater.Files;

namespace SpanRater.Pictures;

/// <summary>Draws dimensions: each panel, the span, the depth.</summary>
internal static class Dimensions
{
    /// <summary>Height that the dimensions below a truss take [px].</summary>
    public const double Below = 92;

    /// <summary>Width that the dimension of the depth takes [px].</summary>
    public const double Beside = 62;

    private const double Size = 14;

    /// <summary>The dimensions of a truss.</summary>
    /// <param name="truss">The truss.</param>
    /// <param name="view">The view of the drawing.</param>
    /// <param name="units">Units shown.</param>
    public static IEnumerable<DrawingPart> Of(Truss truss, View view, DisplayUnits units)
    {
        double bottom = truss.Joints.Min(j => j.Y), top = truss.Joints.Max(j => j.Y), right = truss.Joints.Max(j => j.X);
        double panels = bottom - ((SupportSymbol.Depth + 22) / view.ScaleY);
        double span = panels - (38 / view.ScaleY);
        List<Span> rows = Panels(truss);
        bool upright = rows.Any(r => Lettering.Width(Figures.Length(r.To - r.From, units), Size) + 16 > (r.To - r.From) * view.ScaleX);
        foreach (Span row in rows)
        {
            string text = upright ? "" : Figures.Length(row.To - row.From, units);
            foreach (DrawingPart part in Across(row, text, panels, view))
            {
                yield return part;
            }
        }

        if (upright)
        {
            var whole = new Span("panels", rows[0].From, rows[^1].To);
            foreach (DrawingPart part in Narrow(rows, whole, panels, view, units))
            {
                yield return part;
            }
        }

        Span supported = Supported(truss);
        if (supported.To > supported.From)
        {
            foreach (DrawingPart part in Across(supported, $"span {Figures.Length(supported.To - supported.From, units)}", span, view))
            {
                yield return part;
            }
        }

        if (top > bottom)
        {
            foreach (DrawingPart part in Up(right, bottom, top, $"depth {Figures.Length(top - bottom, units)}", view))
            {
                yield return part;
            }
        }
    }

    // Panels too narrow for their own text: said in words when they are alike, else written upright.
    private static IEnumerable<DrawingPart> Narrow(List<Span> rows, Span whole, double y, View view, DisplayUnits units)
    {
        string first = Figures.Length(rows[0].To - rows[0].From, units);
        if (rows.All(r => Figures.Length(r.To - r.From, units) == first))
        {
            yield return new Text(whole.Shows, view.Moved(new((whole.From + whole.To) / 2, y), 0, 18), $"{rows.Count} panels of {first}", Size, Ink.Black);
            yield break;
        }

        foreach (Span row in rows)
        {
            yield return new Text(
                row.Shows, view.Moved(new((row.From + row.To) / 2, y), 0, 5), Figures.LengthNumber(row.To - row.From, units), 12, Ink.Black, TextAnchor.Left, 90);
        }
    }

    private static List<Span> Panels(Truss truss)
    {
        var rows = new List<Span>();
        for (int p = 1; p < truss.PanelPoints.Count; p++)
        {
            Joint left = truss.Joints[truss.PanelPoints[p - 1]], right = truss.Joints[truss.PanelPoints[p]];
            rows.Add(new Span($"panel {left.Name}–{right.Name}", left.X, right.X));
        }

        return rows;
    }

    // From the first support to the last; a truss held in one place alone is measured over all.
    private static Span Supported(Truss truss)
    {
        double[] held = [.. truss.Joints.Where(j => j.Support is not null).Select(j => j.X)];
        return held.Max() > held.Min()
            ? new Span("span", held.Min(), held.Max())
            : new Span("span", truss.Joints.Min(j => j.X), truss.Joints.Max(j => j.X));
    }

    private static IEnumerable<DrawingPart> Across(Span span, string text, double y, View view)
    {
        yield return new Stroke(span.Shows, [new(span.From, y), new(span.To, y)], Ink.Grey, 1);
        foreach (double x in (double[])[span.From, span.To])
        {
            yield return new Stroke(span.Shows, [view.Moved(new(x, y), 0, -6), view.Moved(new(x, y), 0, 6)], Ink.Grey, 1);
            yield return Slash(span.Shows, new(x, y), view);
        }

        if (text.Length > 0)
        {
            yield return new Text(span.Shows, view.Moved(new((span.From + span.To) / 2, y), 0, 13), text, Size, Ink.Black);
        }
    }

    private static IEnumerable<DrawingPart> Up(double right, double bottom, double top, string text, View view)
    {
        DrawingPoint low = view.Moved(new(right, bottom), 56, 0), high = view.Moved(new(right, top), 56, 0);
        yield return new Stroke("depth", [low, high], Ink.Grey, 1);
        foreach (DrawingPoint end in (DrawingPoint[])[low, high])
        {
            yield return new Stroke("depth", [view.Moved(end, -6, 0), view.Moved(end, 6, 0)], Ink.Grey, 1);
            yield return Slash("depth", end, view);
        }

        yield return new Text("depth", view.Moved(new(low.X, (bottom + top) / 2), 13, 0), text, Size, Ink.Black, Angle: 90);
    }

    private static Stroke Slash(string shows, DrawingPoint at, View view) =>
        new(shows, [view.Moved(at, -4, -4), view.Moved(at, 4, 4)], Ink.Black, 1.6);

    private readonly record struct Span(string Shows, double From, double To);
}
