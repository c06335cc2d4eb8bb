using SpanRater.Files;

namespace SpanRater.Pictures;

/// <summary>Draws axles as arrows down onto the deck, each with its load.</summary>
internal static class AxleArrows
{
    /// <summary>Height above the deck that arrows and loads take [px].</summary>
    public const double Height = 150;

    private const double Size = 14;
    private const double Shortest = 54;
    private const double Step = 19;

    /// <summary>The parts of the axles.</summary>
    /// <param name="axles">The axles.</param>
    /// <param name="truss">The truss on whose deck they stand.</param>
    /// <param name="view">The view of the drawing.</param>
    /// <param name="units">Units shown.</param>
    /// <param name="crowding">Takes what is drawn.</param>
    public static IEnumerable<DrawingPart> Of(IReadOnlyList<AxleEffect> axles, Truss truss, View view, DisplayUnits units, Crowding crowding)
    {
        if (axles.Count == 0)
        {
            yield break;
        }

        // Axles far off the bridge are not in the picture; the words beside it count them.
        double reach = 58 / view.ScaleX, first = truss.Stations[0], last = truss.Stations[^1];
        AxleEffect[] near = [.. axles.Where(a => a.Station >= first - reach && a.Station <= last + reach).OrderBy(a => a.Station)];
        var ends = new List<double>();
        var texts = new List<Text>();
        foreach (AxleEffect axle in near)
        {
            string load = Figures.Force(axle.Load, units);
            double half = (Lettering.Width(load, Size) / 2) + 5, x = axle.Station * view.ScaleX;

            // The lowest row in which the load's text is clear of the one before.
            int row = ends.FindIndex(end => end <= x - half);
            if (row < 0)
            {
                row = ends.Count;
                ends.Add(0);
            }

            ends[row] = x + half;
            var foot = new DrawingPoint(axle.Station, DeckLine.HeightAt(truss, axle.Station));
            double length = Shortest + (row * Step);
            Ink ink = axle.Station >= first && axle.Station <= last ? Ink.Black : Ink.Grey;
            yield return new Stroke("axle", [view.Moved(foot, 0, 14), view.Moved(foot, 0, length)], ink, 2.4);
            yield return new Area("axle", [view.Moved(foot, 0, 4), view.Moved(foot, -6, 18), view.Moved(foot, 6, 18)], ink);
            DrawingPoint at = view.Moved(foot, 0, length + 10);
            texts.Add(new Text("axle", at, load, Size, ink, OnPaper: true));
            crowding.Take(view.Pixels(foot), view.Pixels(at));
            crowding.Take(Box.Of(load, Size, view.Pixels(at)));
        }

        foreach (Text text in texts)
        {
            yield return text;
        }
    }
}
