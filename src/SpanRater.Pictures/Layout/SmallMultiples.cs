namespace SpanRater.Pictures;

/// <summary>Draws the influence lines of all members as small pictures in one vertical scale.</summary>
internal static class SmallMultiples
{
    private const int Columns = 5;
    private const double Gap = 20;
    private const double TallestOrdinate = 64;
    private const double Header = 42;
    private const double Lowest = 7;
    private const double NameSize = 15;
    private const double Size = 12;
    private const double LineHeight = 15;

    /// <summary>Lays them down, role by role.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="lines">The lines.</param>
    public static void Lay(Sheet sheet, InfluenceLines lines)
    {
        double cell = (Sheet.InnerWidth - ((Columns - 1) * Gap)) / Columns;
        InfluenceLine[] all = [.. lines.Members.Select(m => m.Line)];
        double largest = all.Max(l => l.Ordinates.Max(Math.Abs)), scale = largest > 0 ? TallestOrdinate / largest : 1;
        double left = lines.Truss.Stations[0], scaleX = (cell - 4) / (lines.Truss.Stations[^1] - left);

        // Names that leave no room beside them push the figures down a line, in every cell alike.
        double lower = lines.Members.Any(m => Lettering.Width(m.Name, NameSize) + Lettering.Width(Extremes(m.Line)[0], Size) + 8 > cell - 4) ? LineHeight : 0;
        IReadOnlyList<MemberGroup> groups = ReadingOrder.Of(lines.Truss);
        foreach (MemberGroup group in groups)
        {
            string heading = group.Heading(groups.Count);
            if (heading.Length > 0)
            {
                sheet.Space(8);
                sheet.Paragraph("role", heading, 15, Ink.Grey);
            }

            foreach (int[] row in group.Members.Chunk(Columns))
            {
                // A row is one drawing whose cells stand side by side, in pixels across; no higher than its lines.
                var parts = new List<DrawingPart>();
                double least = Math.Min(0, row.Min(m => all[m].Ordinates.Min())), most = Math.Max(0, row.Max(m => all[m].Ordinates.Max()));
                double bottom = least - (Lowest / scale), height = Header + lower + Lowest + ((most - least) * scale);
                for (int c = 0; c < row.Length; c++)
                {
                    double offset = (c * (cell + Gap)) + 2;
                    var view = new View(left - (offset / scaleX), bottom, scaleX, scale);
                    parts.AddRange(Cell(lines, row[c], height, lower, view).Select(part => Across(part, view)));
                }

                sheet.Place(new View(0, bottom, 1, scale).Drawing(Sheet.InnerWidth, height, parts));
                sheet.Space(6);
            }
        }
    }

    private static IEnumerable<DrawingPart> Cell(InfluenceLines lines, int member, double height, double lower, View view)
    {
        InfluenceEffect effect = lines.Members[member];
        InfluenceLine line = effect.Line;
        foreach (DrawingPart part in InfluenceStrokes.Of(effect.Name, line, view, 1.8))
        {
            yield return part;
        }

        double right = line.Stations[^1];
        yield return new Stroke("zero", [new(line.Stations[0], 0), new(right, 0)], Ink.Black, 1);
        foreach (double station in line.Stations)
        {
            yield return new Stroke("panel point", [new(station, 0), view.Moved(new(station, 0), 0, -4)], Ink.Black, 1);
        }

        DrawingPoint corner = view.Moved(new(line.Stations[0], view.Bottom), 0, height);
        yield return new Text(effect.Name, view.Moved(corner, 0, -11), effect.Name, NameSize, Ink.Black, TextAnchor.Left);
        string[] extremes = Extremes(line);
        for (int i = 0; i < extremes.Length; i++)
        {
            DrawingPoint end = view.Moved(new(right, corner.Y), 0, -10 - lower - (LineHeight * i));
            yield return new Text($"extremes {effect.Name}", end, extremes[i], Size, Ink.Grey, TextAnchor.Right);
        }
    }

    private static string[] Extremes(InfluenceLine line)
    {
        double least = line.Ordinates.Min(), most = line.Ordinates.Max();
        string[] words =
        [
            .. most > 0 ? (string[])[$"tension {Figures.Plain(most)}"] : [],
            .. least < 0 ? (string[])[$"compression {Figures.Plain(least)}"] : [],
        ];
        return words.Length > 0 ? words : ["no force anywhere"];
    }

    // From metres of the cell to pixels of the row.
    private static DrawingPart Across(DrawingPart part, View view)
    {
        DrawingPoint Pixel(DrawingPoint p) => new((p.X - view.Left) * view.ScaleX, p.Y);
        return part switch
        {
            Stroke stroke => stroke with { Points = [.. stroke.Points.Select(Pixel)] },
            Area area => area with { Points = [.. area.Points.Select(Pixel)] },
            Text text => text with { At = Pixel(text.At) },
            Mark mark => mark with { At = Pixel(mark.At) },
            _ => part,
        };
    }
}
