namespace SpanRater.Pictures;

/// <summary>A truss drawn where its joints have moved to, over the elevation of where they were.</summary>
internal sealed class DisplacedTruss
{
    private const double ShortestArrow = 9;

    private readonly Truss truss;
    private readonly IReadOnlyList<JointShift> shifts;
    private readonly double scale;
    private readonly int marked;

    /// <summary>Displaces a truss.</summary>
    /// <param name="truss">The truss.</param>
    /// <param name="shifts">How each joint moves.</param>
    /// <param name="scale">Metres drawn for a shift of 1.</param>
    /// <param name="marked">Member drawn heavier; -1 for none.</param>
    public DisplacedTruss(Truss truss, IReadOnlyList<JointShift> shifts, double scale, int marked = -1)
    {
        this.truss = truss;
        this.shifts = shifts;
        this.scale = scale;
        this.marked = marked;
    }

    /// <summary>How the truss is drawn that has not moved.</summary>
    public static LineStyle Before { get; } = new(Ink.Grey, 1.4, Dash.Dashed);

    /// <summary>How the moved truss is drawn.</summary>
    public static LineStyle After { get; } = new(Ink.Black, 2.8);

    /// <summary>Whether arrows show the way of each joint.</summary>
    public bool Arrows { get; init; } = true;

    /// <summary>Where the joints have moved to.</summary>
    public IEnumerable<DrawingPoint> Joints => Enumerable.Range(0, truss.Joints.Count).Select(Moved);

    /// <summary>A scale at which the largest shift is a part of the truss's size that the eye takes in.</summary>
    /// <param name="truss">The truss.</param>
    /// <param name="shifts">How each joint moves.</param>
    public static double ScaleFor(Truss truss, IReadOnlyList<JointShift> shifts)
    {
        double width = truss.Joints.Max(j => j.X) - truss.Joints.Min(j => j.X), height = truss.Joints.Max(j => j.Y) - truss.Joints.Min(j => j.Y);
        double size = Math.Min(Math.Max(width, height) * 0.07, height > 0 ? Math.Max(height * 0.4, width * 0.035) : double.MaxValue);
        double largest = shifts.Max(s => s.Size);
        return largest > 0 ? size / largest : 0;
    }

    /// <summary>The parts, the undermost first.</summary>
    /// <param name="view">The view of the drawing.</param>
    /// <param name="crowding">Takes what is drawn.</param>
    public IEnumerable<DrawingPart> Parts(View view, Crowding crowding)
    {
        var parts = new List<DrawingPart>();
        for (int m = 0; m < truss.Members.Count; m++)
        {
            DrawingPoint from = Moved(truss.FromJoint(m)), to = Moved(truss.ToJoint(m));
            parts.Add(new Stroke($"{truss.Members[m].Name}, displaced", [from, to], After.Ink, m == marked ? 7 : After.Weight));
            crowding.Take(view.Pixels(from), view.Pixels(to));
        }

        for (int j = 0; j < truss.Joints.Count; j++)
        {
            DrawingPoint to = Moved(j);
            parts.Add(new Mark($"{truss.Joints[j].Name}, displaced", to, MarkShape.Square, 7, Ink.Black, Filled: true));
            DrawingPoint at = view.Pixels(to);
            crowding.Take(new Box(at.X, at.Y, 10, 10));
            crowding.Take(view.Pixels(new(truss.Joints[j].X, truss.Joints[j].Y)), at);
            parts.AddRange(Arrows ? Arrow(j, view) : []);
        }

        return parts;
    }

    // From where the joint was to where it is; a shift too short for an arrow's head is seen from the two marks.
    private IEnumerable<DrawingPart> Arrow(int joint, View view)
    {
        double dx = shifts[joint].Right * scale * view.ScaleX, dy = shifts[joint].Up * scale * view.ScaleY, length = double.Hypot(dx, dy);
        if (length < ShortestArrow)
        {
            yield break;
        }

        (double x, double y) = (dx / length, dy / length);
        DrawingPoint from = new(truss.Joints[joint].X, truss.Joints[joint].Y);
        double head = Math.Min(11, length * 0.55), tip = Math.Max(length - 4, head);
        DrawingPoint On(double along, double across) => view.Moved(from, (along * x) - (across * y), (along * y) + (across * x));
        yield return new Stroke($"{truss.Joints[joint].Name}, arrow", [On(0, 0), On(tip - head + 1, 0)], Ink.Alarm, 2.4);
        yield return new Area($"{truss.Joints[joint].Name}, arrow", [On(tip, 0), On(tip - head, 5), On(tip - head, -5)], Ink.Alarm);
    }

    private DrawingPoint Moved(int joint) =>
        new(truss.Joints[joint].X + (shifts[joint].Right * scale), truss.Joints[joint].Y + (shifts[joint].Up * scale));
}
