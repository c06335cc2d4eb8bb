using SpanRater.Files;

namespace SpanRater.Pictures;

/// <summary>Draws axles as arrows down onto the deck, each with its load.</summary>
internal static class AxleArrows
{
    /// <summary>Height above the deck that arrows and loads take [px].</summary>
    public const double Height = 126;

    private const double Size = 14;
    private const double Shortest = 54;
    private const double Step = 12;
    private const int Rows = 5;

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
        foreach (AxleEffect axle in near)
        {
            DrawingPoint foot = Foot(axle, truss);
            crowding.Take(view.Pixels(foot), view.Pixels(view.Moved(foot, 0, Shortest)));
        }

        var texts = new List<Text>();
        foreach (AxleEffect axle in near)
        {
            string load = Figures.Force(axle.Load, units);
            DrawingPoint foot = Foot(axle, truss), at = view.Pixels(foot);
            Box box = Box.Of(load, Size, at);

            // The load stands on its arrow or beside the arrow's end; the arrow is as long as it needs to be for the text to stand clear.
            Box chosen = crowding.Choose(
                from row in Enumerable.Range(0, Rows)
                from side in (int[])[0, 1, -1]
                select box with { X = at.X + (side * ((box.Width / 2) + 3)), Y = at.Y + Shortest + (side == 0 ? 11 : -5) + (row * Step) },
                reluctance: 0.4);
            bool above = chosen.X == at.X;
            double length = chosen.Y - at.Y - (above ? 10 : -5);
            crowding.Take(at, new(at.X, at.Y + length));
            Ink ink = axle.Station >= first && axle.Station <= last ? Ink.Black : Ink.Grey;
            yield return new Stroke("axle", [view.Moved(foot, 0, 14), view.Moved(foot, 0, length)], ink, 2.4);
            yield return new Area("axle", [view.Moved(foot, 0, 4), view.Moved(foot, -6, 18), view.Moved(foot, 6, 18)], ink);
            texts.Add(new Text("axle", view.Moved(foot, chosen.X - at.X, chosen.Y - at.Y), load, Size, ink, OnPaper: true));
        }

        foreach (Text text in texts)
        {
            yield return text;
        }
    }

    private static DrawingPoint Foot(AxleEffect axle, Truss truss) => new(axle.Station, DeckLine.HeightAt(truss, axle.Station));
}
