namespace SpanRater.Pictures;

/// <summary>The deck: a pale band through the panel points, behind the members.</summary>
internal static class DeckLine
{
    private const double Weight = 11;

    /// <summary>Height of the deck at a station; level with its end beyond that [m].</summary>
    /// <param name="truss">A truss with panel points.</param>
    /// <param name="station">The station [m].</param>
    public static double HeightAt(Truss truss, double station)
    {
        DrawingPoint[] points = Points(truss);
        int right = Array.FindIndex(points, p => p.X >= station);
        if (right == 0 || points.Length == 1)
        {
            return points[0].Y;
        }

        if (right < 0)
        {
            return points[^1].Y;
        }

        DrawingPoint a = points[right - 1], b = points[right];
        return a.Y + ((b.Y - a.Y) * (station - a.X) / (b.X - a.X));
    }

    /// <summary>The highest panel point [m].</summary>
    /// <param name="truss">A truss with panel points.</param>
    public static double HeightOf(Truss truss) => Points(truss).Max(p => p.Y);

    /// <summary>The parts of the deck; none where there are fewer than two panel points.</summary>
    /// <param name="truss">The truss.</param>
    /// <param name="view">The view of the drawing.</param>
    /// <param name="approaches">True when the road to and from the bridge is drawn too.</param>
    public static IEnumerable<DrawingPart> Of(Truss truss, View view, bool approaches)
    {
        DrawingPoint[] points = Points(truss);
        if (points.Length < 2)
        {
            yield break;
        }

        yield return new Stroke("deck", points, Ink.Pale, Weight);
        if (approaches)
        {
            yield return new Stroke("approach", [view.Moved(points[0], -60, 0), points[0]], Ink.Pale, 3);
            yield return new Stroke("approach", [points[^1], view.Moved(points[^1], 60, 0)], Ink.Pale, 3);
        }
    }

    private static DrawingPoint[] Points(Truss truss) => [.. truss.PanelPoints.Select(p => new DrawingPoint(truss.Joints[p].X, truss.Joints[p].Y))];
}
