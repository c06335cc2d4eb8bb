using SpanRater.Files;

namespace SpanRater.Pictures;

/// <summary>Draws weights on joints as arrows down: below a joint of the lower half of a truss, onto a joint of the upper half.</summary>
internal static class LoadArrows
{
    /// <summary>Height that an arrow onto a joint takes above it, with its load [px].</summary>
    public const double Above = 84;

    private const double Size = 14;

    /// <summary>The parts of the arrows.</summary>
    /// <param name="loads">The loads; what does not act down is left out.</param>
    /// <param name="truss">The truss.</param>
    /// <param name="view">The view of the drawing.</param>
    /// <param name="units">Units shown.</param>
    /// <param name="crowding">Takes what is drawn.</param>
    public static IEnumerable<DrawingPart> Of(IReadOnlyList<JointLoad> loads, Truss truss, View view, DisplayUnits units, Crowding crowding)
    {
        foreach (JointLoad load in loads.Where(l => l.Up < 0))
        {
            Joint joint = truss.Joints[truss.FindJoint(load.Joint)!.Value];
            bool above = IsAbove(joint, truss);
            var at = new DrawingPoint(joint.X, joint.Y);
            double tail = above ? 56 : -8, head = above ? 8 : -48;
            string shows = $"load {load.Joint}", words = $"{Figures.OnAxis(units.From(Quantity.Force, -load.Up))} {units.Symbol(Quantity.Force)}";
            yield return new Stroke(shows, [view.Moved(at, 0, tail), view.Moved(at, 0, head + 12)], Ink.Black, 3);
            yield return new Area(shows, [view.Moved(at, 0, head), view.Moved(at, -6, head + 14), view.Moved(at, 6, head + 14)], Ink.Black);
            DrawingPoint text = view.Moved(at, 0, above ? 68 : -62);
            crowding.Take(view.Pixels(view.Moved(at, 0, tail)), view.Pixels(view.Moved(at, 0, head)));
            crowding.Take(Box.Of(words, Size, view.Pixels(text)));
            yield return new Text(shows, text, words, Size, Ink.Black, OnPaper: true);
        }
    }

    /// <summary>Whether a joint's load comes from above: where the joint lies in the upper half.</summary>
    public static bool IsAbove(Joint joint, Truss truss) => joint.Y > (truss.Joints.Min(j => j.Y) + truss.Joints.Max(j => j.Y)) / 2;
}
