using SpanRater.Files;

namespace SpanRater.Pictures;

/// <summary>Draws the largest tension and compression of each member as bars on either side of zero.</summary>
internal static class EnvelopeBars
{
    private const double Row = 22;
    private const double Bar = 13;
    private const double Size = 14;
    private const double Figure = 74;
    private const double LongestName = 336;

    /// <summary>The drawing and its axis.</summary>
    /// <param name="truss">The truss.</param>
    /// <param name="forces">Largest tension and compression by member, tension positive [N]; null where there is none.</param>
    /// <param name="pointedOut">Position of the member that is pointed out; null for none.</param>
    /// <param name="units">Units shown.</param>
    public static (Drawing Drawing, Axis Bottom) Of(Truss truss, IReadOnlyList<(double? Tension, double? Compression)> forces, int? pointedOut, DisplayUnits units)
    {
        double Shown(double? force) => units.From(Quantity.Force, force ?? 0);
        double most = Math.Max(0, forces.Max(f => Shown(f.Tension))), least = Math.Min(0, forces.Min(f => Shown(f.Compression)));
        if (most == least)
        {
            (least, most) = (-1, 1);
        }

        string[] names = [.. truss.Members.Select(m => Lettering.Fitted(m.Name, Size, LongestName))];
        double indent = names.Max(n => Lettering.Width(n, Size)) + 24;
        double scale = (Sheet.InnerWidth - indent - (2 * Figure)) / (most - least);
        IReadOnlyList<MemberGroup> groups = ReadingOrder.Of(truss);
        bool headed = groups.Any(g => g.Heading(groups.Count).Length > 0);
        double height = ((truss.Members.Count + (headed ? groups.Count : 0)) * Row) + 34;
        var view = new View(least - ((indent + Figure) / scale), 0, scale, 1);
        var parts = new List<DrawingPart>
        {
            new Text("tension", view.Moved(new(0, height - 12), 14, 0), "tension", 15, Ink.Tension, TextAnchor.Left),
            new Text("compression", view.Moved(new(0, height - 12), -14, 0), "compression", 15, Ink.Compression, TextAnchor.Right),
        };
        double y = height - 24;
        foreach (MemberGroup group in groups)
        {
            if (headed)
            {
                y -= Row;
                parts.Add(new Text("role", new(view.Left, y + 8), group.Heading(groups.Count), Size, Ink.Grey, TextAnchor.Left));
            }

            foreach (int m in group.Members)
            {
                y -= Row;
                parts.AddRange(RowOf(names[m], forces[m], m == pointedOut, y + (Row / 2), view, units));
            }
        }

        parts.Add(new Stroke("axis", [view.Moved(new(view.Left, 0), indent, 0), view.Moved(new(view.Left, 0), Sheet.InnerWidth, 0)], Ink.Grey, 1));
        parts.Add(new Stroke("zero", [new(0, 0), new(0, height - 20)], Ink.Black, 1.4));
        string unit = units.Symbol(Quantity.Force);
        return (view.Drawing(Sheet.InnerWidth, height, parts), new Axis($"force [{unit}], tension positive", Scales.Ticks(least, most, 8)));
    }

    private static IEnumerable<DrawingPart> RowOf(string name, (double? Tension, double? Compression) forces, bool pointedOut, double middle, View view, DisplayUnits units)
    {
        if (pointedOut)
        {
            DrawingPoint left = view.Moved(new(view.Left, middle), 1, -Row / 2 + 1), right = view.Moved(left, Lettering.Width(name, Size) + 10, Row - 2);
            yield return new Stroke("pointed out", [left, new(right.X, left.Y), right, new(left.X, right.Y)], Ink.Black, 1.3, Closed: true);
        }

        yield return new Text(name, view.Moved(new(view.Left, middle), 6, 0), name, Size, Ink.Black, TextAnchor.Left);
        foreach (Sense sense in (Sense[])[Sense.Tension, Sense.Compression])
        {
            if ((sense == Sense.Tension ? forces.Tension : forces.Compression) is not { } force)
            {
                continue;
            }

            double end = units.From(Quantity.Force, force), half = Bar / 2 / view.ScaleY;
            DrawingPoint[] bar = [new(0, middle - half), new(end, middle - half), new(end, middle + half), new(0, middle + half)];
            Ink ink = InfluenceStrokes.StyleOf(sense, 1).Ink;
            yield return new Area($"{name}, {sense}", bar, sense == Sense.Tension ? Ink.TensionTint : Ink.CompressionTint);
            for (double x = -Hatching.Spacing / view.ScaleX; sense == Sense.Compression && x > end; x -= Hatching.Spacing / view.ScaleX)
            {
                yield return new Stroke($"{name}, hatching", [new(x, middle - half), new(x, middle + half)], ink, Hatching.Weight * 0.7);
            }

            yield return new Stroke($"{name}, {sense}", bar, ink, 1.3, Closed: true);
            bool right = sense == Sense.Tension;
            yield return new Text(
                $"{name}, {sense}",
                view.Moved(new(end, middle), right ? 7 : -7, 0),
                Figures.Plain(end),
                Size,
                Ink.Black,
                right ? TextAnchor.Left : TextAnchor.Right,
                OnPaper: true);
        }

        if (forces is (null, null))
        {
            yield return new Text($"{name}, none", view.Moved(new(0, middle), 7, 0), "no force", Size, Ink.Grey, TextAnchor.Left);
        }
    }
}
