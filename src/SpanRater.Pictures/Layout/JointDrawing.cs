namespace SpanRater.Pictures;

/// <summary>Draws one joint cut free: its members as arrows away from it, loads and reactions as arrows that act on it.</summary>
internal static class JointDrawing
{
    private const double Width = 1120;
    private const double Height = 460;
    private const double Reach = 150;
    private const double Clear = 16;
    private const double TooNear = 14 * Math.PI / 180;

    /// <summary>The drawing, in pixels.</summary>
    /// <param name="forces">The forces.</param>
    /// <param name="joint">The joint.</param>
    public static Drawing Of(BodyForces forces, int joint)
    {
        var middle = new DrawingPoint(Width / 2, Height / 2);
        var crowding = new Crowding();
        var arrows = new ForceArrows(crowding);
        var taken = new List<double>();
        crowding.Take(new Box(middle.X, middle.Y, 26, 26));
        foreach (int m in Enumerable.Range(0, forces.Truss.Members.Count).Where(m => forces.Truss.FromJoint(m) == joint || forces.Truss.ToJoint(m) == joint))
        {
            (double run, double rise, double length) = forces.Names.DirectionAt(m, joint);
            double dx = run / length, dy = rise / length;
            taken.Add(Math.Atan2(dy, dx));
            arrows.Add(forces.Truss.Members[m].Name, At(middle, dx, dy, Clear), At(middle, dx, dy, Reach), forces.StyleOf(m), forces.WordsOf(m), atTail: false);
        }

        foreach (var force in forces.ExternalAt(joint))
        {
            // The arrow leaves the joint or comes to it, whichever side has more room; between two members close by it stands aside.
            double leaving = Room(taken, Math.Atan2(force.Y, force.X)), coming = Room(taken, Math.Atan2(-force.Y, -force.X));
            bool leaves = leaving > coming + 1e-6;
            double side = leaves ? 1 : -1, aside = Math.Max(leaving, coming) < TooNear ? 26 : 0;
            var foot = new DrawingPoint(middle.X - (aside * force.Y), middle.Y + (aside * force.X));
            DrawingPoint near = At(foot, side * force.X, side * force.Y, Clear), far = At(foot, side * force.X, side * force.Y, Reach * 0.72);
            arrows.Add(force.Shows, leaves ? near : far, leaves ? far : near, force.Style, force.Words, atTail: !leaves);
            taken.Add(Math.Atan2(side * force.Y, side * force.X));
        }

        string name = forces.Truss.Joints[joint].Name;
        Box box = Box.Of(name, 18, middle);
        Box chosen = crowding.Choose(
            from distance in (double[])[20, 28, 38]
            from turn in Enumerable.Range(0, 16).OrderByDescending(t => Math.Round(Room(taken, Wrapped(t * Math.PI / 8)), 6))
            let angle = turn * Math.PI / 8
            select box with { X = middle.X + (Math.Cos(angle) * (distance + (box.Width / 2))), Y = middle.Y + (Math.Sin(angle) * (distance + (box.Height / 2))) });
        return ForceArrows.Cropped(
            Width,
            [
                .. arrows.Parts(Width, Height),
                new Mark(name, middle, MarkShape.Circle, 15, Ink.Black, Filled: false),
                new Text(name, new(chosen.X, chosen.Y), name, 18, Ink.Black),
            ]);
    }

    private static DrawingPoint At(DrawingPoint from, double dx, double dy, double distance) => new(from.X + (dx * distance), from.Y + (dy * distance));

    // The angle to the nearest arrow.
    private static double Room(List<double> taken, double angle) => taken.Select(t => Math.Abs(Wrapped(angle - t))).Append(Math.PI).Min();

    private static double Wrapped(double angle) => Math.IEEERemainder(angle, 2 * Math.PI);
}
