namespace SpanRater.Pictures;

/// <summary>Draws how the ground holds a joint: a triangle for a pin, a circle for a roller, whose normal is an arrow.</summary>
internal static class SupportSymbol
{
    /// <summary>How far below its joint a symbol and its word reach [px].</summary>
    public const double Depth = 76;

    private const double Weight = 1.6;

    /// <summary>The parts of a joint's support, in the order in which they are laid down.</summary>
    /// <param name="joint">A joint that is supported.</param>
    /// <param name="view">The view of the drawing.</param>
    /// <param name="crowding">Takes what is drawn.</param>
    public static IEnumerable<DrawingPart> Of(Joint joint, View view, Crowding crowding)
    {
        Support support = joint.Support!;
        bool pin = support.Kind == SupportKind.Pin;
        var at = new DrawingPoint(joint.X, joint.Y);
        string shows = $"support {joint.Name}";
        double nx = pin ? 0 : support.NormalX, ny = pin ? 1 : support.NormalY;

        // Along the ground and against the normal [px].
        DrawingPoint On(double along, double below) => view.Moved(at, (along * ny) - (below * nx), (-along * nx) - (below * ny));
        if (pin)
        {
            yield return new Area(shows, [On(0, 0), On(-14, 24), On(14, 24)], Ink.Paper);
            yield return new Stroke(shows, [On(0, 0), On(-14, 24), On(14, 24)], Ink.Black, Weight, Closed: true);
        }
        else
        {
            yield return new Mark(shows, On(0, 14), MarkShape.Circle, 19, Ink.Black, Filled: false);
            yield return new Stroke(shows, [On(0, 52), On(0, 34)], Ink.Grey, 1.4);
            yield return new Area(shows, [On(0, 27), On(-4, 36), On(4, 36)], Ink.Grey);
        }

        yield return new Stroke(shows, [On(-22, 25), On(22, 25)], Ink.Black, Weight);
        for (double hatch = -20; hatch <= 20; hatch += 8)
        {
            if (pin || Math.Abs(hatch) > 6)
            {
                yield return new Stroke(shows, [On(hatch, 25), On(hatch - 6, 32)], Ink.Grey, 1);
            }
        }

        DrawingPoint middle = view.Pixels(On(0, 17));
        crowding.Take(new Box(middle.X, middle.Y, Math.Abs(nx) > 0.7 ? 36 : 42, Math.Abs(nx) > 0.7 ? 42 : 36));
        string words = pin ? "pin" : support.NormalDegrees == 90 ? "roller" : $"roller, normal {Figures.OnAxis(Math.Round(support.NormalDegrees, 2))}°";

        // The words stand straight below or above the joint, so that they never leave the drawing at its sides.
        DrawingPoint text = view.Moved(at, 0, ny < -0.4 ? 62 : pin ? -44 : -62 * Math.Max(0.6, ny));
        crowding.Take(Box.Of(words, 13, view.Pixels(text)));
        yield return new Text(shows, text, words, 13, Ink.Grey, OnPaper: true);
    }
}
