using SpanRater.Files;

namespace SpanRater.Pictures;

/// <summary>
/// The influence line of one member by itself: panel points with their names along the axis, ordinates written at the line's corners,
/// tension under a solid line with a plus, compression under a dashed line, hatched, with a minus.
/// </summary>
public static class InfluenceSketch
{
    /// <summary>Width of a sketch [px].</summary>
    public const double Width = 660;

    private const double Left = 40, Right = 34, Tallest = 120, Above = 46, Below = 28, Size = 13, NarrowPanel = 44;

    /// <summary>Draws the line.</summary>
    /// <param name="lines">The lines of a truss.</param>
    /// <param name="effect">One of them.</param>
    /// <param name="units">Units shown.</param>
    public static Drawing Of(InfluenceLines lines, InfluenceEffect effect, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(lines);
        ArgumentNullException.ThrowIfNull(effect);
        ArgumentNullException.ThrowIfNull(units);
        InfluenceLine line = effect.Line;
        double least = Math.Min(0, line.Ordinates.Min()), most = Math.Max(0, line.Ordinates.Max());
        double tall = most > least ? Tallest : 30, scale = most > least ? tall / (most - least) : tall;
        double first = line.Stations[0], scaleX = (Width - Left - Right) / (line.Stations[^1] - first);
        string[] names = [.. lines.Truss.PanelPoints.Select(p => lines.Truss.Joints[p].Name)];
        bool upright = IsUpright(names, line.Stations, scaleX), staggered = Narrowest(line) * scaleX < NarrowPanel;
        names = [.. names.Select(n => Lettering.Fitted(n, Size, 64))];
        double namesRoom = upright ? names.Max(n => Lettering.Width(n, Size)) + 12 : 24;
        double above = Above + (staggered ? 15 : 0), below = Below + namesRoom + (staggered && least < 0 ? 15 : 0);
        var view = new View(first - (Left / scaleX), least - (below / scale), scaleX, scale);
        var parts = new List<DrawingPart>(InfluenceStrokes.Of(effect.Name, line, view, 2.2));
        parts.Add(new Stroke("zero", [view.Moved(new(first, 0), -14, 0), view.Moved(new(line.Stations[^1], 0), 14, 0)], Ink.Black, 1.2));
        double foot = view.Bottom + (namesRoom / scale);
        parts.AddRange(line.Stations.Select(x => new Stroke("panel point", [view.Moved(new(x, 0), 0, -4), view.Moved(new(x, 0), 0, 4)], Ink.Black, 1)));
        parts.AddRange(line.Stations.Select((x, i) => new Text("panel point", view.Moved(new(x, foot), 0, upright ? -4 : -10), names[i], Size, Ink.Grey, upright ? TextAnchor.Right : TextAnchor.Middle, upright ? 90 : 0)));

        Ordinates(line, view, staggered, parts);
        foreach (Sense sense in (Sense[])[Sense.Tension, Sense.Compression])
        {
            Sign(sense, line, view, parts);
        }

        string force = units.Symbol(Quantity.Force);
        string title = most > least ? $"force [{force}/{force}], + tension, − compression" : "no force wherever the load stands";
        parts.Add(new Text("axis", view.Moved(new(view.Left, view.Bottom), 6, below + tall + above - 13), title, Size, Ink.Black, TextAnchor.Left));
        return view.Drawing(Width, below + tall + above, parts);
    }

    private static double Narrowest(InfluenceLine line) => line.Stations.Zip(line.Stations.Skip(1), (left, right) => right - left).Min();

    private static bool IsUpright(string[] names, IReadOnlyList<double> stations, double scale)
    {
        double narrowest = stations.Zip(stations.Skip(1), (left, right) => right - left).Min() * scale;
        return names.Any(n => n.Length > 40 || Lettering.Width(n, Size) + 6 > narrowest);
    }

    // Between corners the line is straight, and the table has every ordinate.
    private static void Ordinates(InfluenceLine line, View view, bool staggered, List<DrawingPart> parts)
    {
        int written = 0;
        for (int i = 0; i < line.Stations.Count; i++)
        {
            double y = line.Ordinates[i];
            if (y == 0 || !IsCorner(line, i))
            {
                continue;
            }

            double away = 12 + (staggered && written++ % 2 == 1 ? 15 : 0);
            parts.Add(new Text($"ordinate {i}", view.Moved(new(line.Stations[i], y), 0, y < 0 ? -away : away), Figures.Plain(y), Size, Ink.Black, OnPaper: true));
        }
    }

    private static bool IsCorner(InfluenceLine line, int i)
    {
        if (i == 0 || i == line.Stations.Count - 1)
        {
            return true;
        }

        double before = (line.Ordinates[i] - line.Ordinates[i - 1]) / (line.Stations[i] - line.Stations[i - 1]);
        double after = (line.Ordinates[i + 1] - line.Ordinates[i]) / (line.Stations[i + 1] - line.Stations[i]);
        double steepest = line.Ordinates.Max(Math.Abs) / (line.Stations[^1] - line.Stations[0]);
        return Math.Abs(after - before) > 1e-9 * steepest;
    }

    // Within the largest stretch of the sense, where there is room; the figures have their signs in any case.
    private static void Sign(Sense sense, InfluenceLine line, View view, List<DrawingPart> parts)
    {
        if (line.Regions(sense) is not { Count: > 0 } regions)
        {
            return;
        }

        // Below the middle of gravity of the stretch, which lies within it wherever its peak is.
        DeckStretch region = regions.MaxBy(r => r.Length);
        double[] at = [.. Enumerable.Range(0, 41).Select(i => region.Left + (region.Length * i / 40))];
        double whole = at.Sum(x => Math.Abs(line.OrdinateAt(x))), middle = at.Sum(x => x * Math.Abs(line.OrdinateAt(x))) / whole, height = line.OrdinateAt(middle);
        if (Math.Abs(height) * view.ScaleY < 32 || region.Length * view.ScaleX < 40)
        {
            return;
        }

        parts.Add(new Text($"sign {sense}", new(middle, 0.45 * height), sense == Sense.Tension ? "+" : "−", 19, sense == Sense.Tension ? Ink.Tension : Ink.Compression, OnPaper: true));
    }
}
