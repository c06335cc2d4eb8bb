using SpanRater.Files;

namespace SpanRater.Pictures;

/// <summary>Draws one influence line with its ordinates, neutral points and words, in the horizontal scale of an elevation.</summary>
internal static class InfluenceDrawing
{
    private const double Height = 300;
    private const double Margin = 46;
    private const double UprightMargin = 64;
    private const double Size = 13;
    private const double NarrowPanel = 50;

    /// <summary>The drawing and its axis.</summary>
    /// <param name="effect">The effect.</param>
    /// <param name="start">Name of the first panel point.</param>
    /// <param name="elevation">View of the elevation it belongs to.</param>
    /// <param name="width">Width of that elevation [px].</param>
    /// <param name="units">Units shown.</param>
    /// <param name="axles">Axles whose ordinates are pointed out; empty for none.</param>
    public static (Drawing Drawing, Axis Left) Of(
        InfluenceEffect effect, string start, View elevation, double width, DisplayUnits units, IReadOnlyList<AxleEffect> axles)
    {
        InfluenceLine line = effect.Line;
        double least = Math.Min(0, line.Ordinates.Min()), most = Math.Max(0, line.Ordinates.Max());
        if (most == least)
        {
            (least, most) = (-1, 1);
        }

        double margin = StandsUpright(line, elevation) ? UprightMargin : Margin, scale = (Height - (2 * margin)) / (most - least);
        var view = new View(elevation.Left, least - (margin / scale), elevation.ScaleX, scale);
        double right = elevation.Left + (width / elevation.ScaleX);
        var parts = new List<DrawingPart>(InfluenceStrokes.Of(effect.Name, line, view, 2.6));
        var crowding = new Crowding();
        Obstruct(line, view, crowding);
        foreach (double station in line.Stations)
        {
            parts.Add(new Stroke("panel point", [view.Moved(new(station, 0), 0, -4), view.Moved(new(station, 0), 0, 4)], Ink.Grey, 1));
        }

        parts.Add(new Stroke("zero", [new(view.Left, 0), new(right, 0)], Ink.Black, 1.2));
        DrawAxles(axles, line, view, parts, crowding);
        LabelOrdinates(line, view, parts, crowding);
        EffectWords words = EffectWords.Of(effect);
        WriteWord(words.Positive, Sense.Tension, line, view, parts, crowding);
        WriteWord(words.Negative, Sense.Compression, line, view, parts, crowding);
        MarkNeutralPoints(line, start, view, units, parts, crowding);
        if (line.Ordinates.All(y => y == 0))
        {
            parts.Add(new Text("zero", view.Moved(new((line.Stations[0] + line.Stations[^1]) / 2, 0), 0, 44), $"no {words.Name} wherever the load stands", 15, Ink.Black));
        }

        string force = units.Symbol(Quantity.Force);
        var axis = new Axis($"ordinate [{force}/{force}]", line.Ordinates.All(y => y == 0) ? [new(0, "0")] : Scales.Ticks(least, most, 5));
        return (view.Drawing(width, Height, parts), axis);
    }

    private static void Obstruct(InfluenceLine line, View view, Crowding crowding)
    {
        for (int i = 1; i < line.Stations.Count; i++)
        {
            crowding.Take(
                view.Pixels(new(line.Stations[i - 1], line.Ordinates[i - 1])), view.Pixels(new(line.Stations[i], line.Ordinates[i])));
        }

        crowding.Take(view.Pixels(new(line.Stations[0], 0)), view.Pixels(new(line.Stations[^1], 0)));
    }

    private static void DrawAxles(IReadOnlyList<AxleEffect> axles, InfluenceLine line, View view, List<DrawingPart> parts, Crowding crowding)
    {
        foreach (AxleEffect axle in axles.Where(a => a.Station >= line.Stations[0] && a.Station <= line.Stations[^1]))
        {
            var foot = new DrawingPoint(axle.Station, 0);
            var head = new DrawingPoint(axle.Station, axle.Ordinate);
            parts.Add(new Stroke("axle", [foot, head], Ink.Black, 2));
            parts.Add(new Mark("axle", head, MarkShape.Circle, 8, Ink.Black, Filled: true));
            crowding.Take(view.Pixels(foot), view.Pixels(head));
            DrawingPoint at = view.Pixels(head);
            crowding.Take(new Box(at.X, at.Y, 10, 10));
        }
    }

    private static bool StandsUpright(InfluenceLine line, View view) =>
        line.Stations.Zip(line.Stations.Skip(1), (left, right) => right - left).Min() * view.ScaleX < NarrowPanel;

    // Where panels are narrow the figures stand upright, so that each keeps to its own panel point.
    private static void LabelOrdinates(InfluenceLine line, View view, List<DrawingPart> parts, Crowding crowding)
    {
        double angle = StandsUpright(line, view) ? 90 : 0;
        for (int i = 0; i < line.Stations.Count; i++)
        {
            double y = line.Ordinates[i];
            string text = Figures.Plain(y);
            DrawingPoint at = view.Pixels(new(line.Stations[i], y));
            Box box = Box.Of(text, Size, at, angle);
            double half = (angle == 0 ? box.Height : box.Width) / 2, side = (angle == 0 ? box.Width : box.Height) / 2;
            int outward = y < 0 ? -1 : 1;
            Box chosen = crowding.Choose(
                from up in (double[])[7, 14, 22, -half - 22, -half - 32]
                from right in angle == 0 ? (double[])[0, -1, 1] : [0]
                select box with { X = at.X + (right * (side + 4)), Y = at.Y + (outward * (half + up)) });
            parts.Add(new Text($"ordinate {i}", Back(chosen, view), text, Size, y == 0 ? Ink.Grey : Ink.Black, Angle: angle));
        }
    }

    // The word stands within the largest stretch of its sense where it fits, else beside its peak.
    private static void WriteWord(string word, Sense sense, InfluenceLine line, View view, List<DrawingPart> parts, Crowding crowding)
    {
        double sign = sense == Sense.Tension ? 1 : -1;
        IReadOnlyList<DeckStretch> regions = line.Regions(sense);
        if (regions.Count == 0)
        {
            return;
        }

        DeckStretch region = regions.MaxBy(r => r.Length);
        double peak = line.Stations.Append(region.Left).Append(region.Right)
            .Where(s => s >= region.Left && s <= region.Right).MaxBy(s => sign * line.OrdinateAt(s));
        DrawingPoint top = view.Pixels(new(peak, line.OrdinateAt(peak))), zero = view.Pixels(new(peak, 0));
        double tall = top.Y - zero.Y;
        Box box = Box.Of(word, 15, top);
        Box chosen = crowding.Choose(
            from height in (double[])[0.4, 0.3, 0.22, 0.5]
            from right in (double[])[0, -0.6, 0.6, -1.2, 1.2]
            let x = top.X + (right * box.Width)
            where x > view.Pixels(new(region.Left, 0)).X && x < view.Pixels(new(region.Right, 0)).X
            select box with { X = x, Y = zero.Y + (height * tall) });
        if (!FitsWithin(chosen, line, view, sign))
        {
            chosen = crowding.Choose(
                from up in (double[])[30, 14, 44, -20]
                from right in (double[])[0, -0.8, 0.8, -1.2, 1.2]
                select box with { X = top.X + (right * box.Width), Y = top.Y + (sign * up) });
        }

        parts.Add(new Text(word, Back(chosen, view), word, 15, sense == Sense.Tension ? Ink.Tension : Ink.Compression, OnPaper: true));
    }

    private static bool FitsWithin(Box box, InfluenceLine line, View view, double sign) => box.Corners().All(corner =>
    {
        DrawingPoint place = Back(box with { X = corner.X, Y = corner.Y }, view);
        return sign * place.Y > 0 && sign * place.Y < sign * line.OrdinateAt(place.X);
    });

    private static void MarkNeutralPoints(InfluenceLine line, string start, View view, DisplayUnits units, List<DrawingPart> parts, Crowding crowding)
    {
        foreach (double station in line.NeutralPoints())
        {
            parts.Add(new Mark("neutral point", new(station, 0), MarkShape.Diamond, 11, Ink.Black, Filled: false));
            string text = $"neutral point, {Figures.Length(station - line.Stations[0], units)} from {start}";
            DrawingPoint at = view.Pixels(new(station, 0));
            Box box = Box.Of(text, Size, at);
            Box chosen = crowding.Choose(
                from up in (double[])[20, -20, 34, -34]
                from right in (double[])[0, 1, -1, 0.5, -0.5]
                select box with { X = at.X + (right * ((box.Width / 2) + 10)), Y = at.Y + up });
            parts.Add(new Text("neutral point", Back(chosen, view), text, Size, Ink.Black, OnPaper: true));
        }
    }

    private static DrawingPoint Back(Box box, View view) => new(view.Left + (box.X / view.ScaleX), view.Bottom + (box.Y / view.ScaleY));
}
