namespace SpanRater.Pictures;

/// <summary>Draws a part of a truss cut free, where it stands in the truss: the rest pale, members cut as arrows, loads and reactions, the cut and a centre of moments.</summary>
internal sealed class BodyDrawing
{
    private const double Width = 1120;

    // Room for the words of a reaction from the side, of one beside a load, and for a joint's name.
    private const double BesideReaction = 222, BesideLoad = 150, Beside = 44;
    private const double Above = 96;
    private const double Below = 120;
    private const double TallestTruss = 420;
    private const double JointSize = 15;

    private readonly List<DrawingPart> parts = [];
    private readonly Crowding crowding = new();

    // Names of joints keep clear of the pale rest of the truss as well; words at arrows may lie on it.
    private readonly Crowding forNames = new();

    /// <summary>The forces.</summary>
    public required BodyForces Forces { get; init; }

    /// <summary>The joints of the part.</summary>
    public required IReadOnlyList<int> Joints { get; init; }

    /// <summary>A centre of moments [m]; null for none.</summary>
    public (double X, double Y, string Words)? Centre { get; init; }

    private Truss Truss => Forces.Truss;

    /// <summary>Draws it, in pixels.</summary>
    public Drawing Draw()
    {
        double left = Truss.Joints.Min(j => j.X), right = Truss.Joints.Max(j => j.X), bottom = Truss.Joints.Min(j => j.Y), top = Truss.Joints.Max(j => j.Y);

        // A centre away from the truss is shown where it is, unless that would make the truss small; then the text of the page tells it.
        if (Centre is { } away && away.X >= left - (0.4 * (right - left)) && away.X <= right + (0.4 * (right - left)) && away.Y >= bottom - (top - bottom) && away.Y <= top + (top - bottom))
        {
            (left, right, bottom, top) = (Math.Min(left, away.X), Math.Max(right, away.X), Math.Min(bottom, away.Y), Math.Max(top, away.Y));
        }

        double leftRoom = RoomAt(left), rightRoom = RoomAt(right), room = Width - leftRoom - rightRoom;
        double scale = Math.Min(right > left ? room / (right - left) : double.MaxValue, top > bottom ? TallestTruss / (top - bottom) : double.MaxValue);
        double indent = leftRoom + ((room - ((right - left) * scale)) / 2), height = Above + Below + ((top - bottom) * scale);
        DrawingPoint Place(double x, double y) => new(indent + ((x - left) * scale), Below + ((y - bottom) * scale));
        DrawingPoint[] at = [.. Truss.Joints.Select(j => Place(j.X, j.Y))];
        var inside = new HashSet<int>(Joints);
        var arrows = new ForceArrows(crowding, forNames);
        var cut = new List<DrawingPoint>();
        for (int m = 0; m < Truss.Members.Count; m++)
        {
            int from = Truss.FromJoint(m), to = Truss.ToJoint(m);
            bool here = inside.Contains(from), there = inside.Contains(to);
            parts.Add(new Stroke(Truss.Members[m].Name, [at[from], at[to]], here && there ? Ink.Black : Ink.Pale, here && there ? 2.6 : 1.4));
            forNames.Take(at[from], at[to]);
            if (here && there)
            {
                crowding.Take(at[from], at[to]);
            }

            if (here != there)
            {
                (DrawingPoint near, DrawingPoint far) = here ? (at[from], at[to]) : (at[to], at[from]);
                double length = double.Hypot(far.X - near.X, far.Y - near.Y), reach = Math.Min(0.62 * length, Math.Max(60, 0.5 * length));
                var head = new DrawingPoint(near.X + ((far.X - near.X) * reach / length), near.Y + ((far.Y - near.Y) * reach / length));
                arrows.Add(Truss.Members[m].Name, near, head, Forces.StyleOf(m), Forces.WordsOf(m), atTail: false);
                cut.Add(new(near.X + (0.36 * (far.X - near.X)), near.Y + (0.36 * (far.Y - near.Y))));
            }
        }

        foreach (int joint in Joints)
        {
            External(joint, at[joint], (Truss.Joints.Min(j => j.Y) + Truss.Joints.Max(j => j.Y)) / 2, arrows);
        }

        foreach (DrawingPoint each in at)
        {
            crowding.Take(new Box(each.X, each.Y, 13, 13));
            forNames.Take(new Box(each.X, each.Y, 13, 13));
        }

        CutLine(cut, at);
        DrawingPoint? centre = Centre is { } c ? Place(c.X, c.Y) : null;
        if (centre is { } mark)
        {
            crowding.Take(new Box(mark.X, mark.Y, 22, 22));
            forNames.Take(new Box(mark.X, mark.Y, 22, 22));
        }

        NameJoints(at, inside, (at.Min(a => a.Y) + at.Max(a => a.Y)) / 2);
        DrawingPart[] words = [.. arrows.Parts(Width, height)];
        if (centre is { } about)
        {
            MarkCentre(about, Centre!.Value.Words, height);
        }

        return ForceArrows.Cropped(Width, [.. parts, .. words, .. Marks(at, inside)]);
    }

    // What the joints of the part at one end of the truss need beside them.
    private double RoomAt(double x)
    {
        double near = 0.1 * (Truss.Joints.Max(j => j.X) - Truss.Joints.Min(j => j.X));
        var external = Joints.Where(j => Math.Abs(Truss.Joints[j].X - x) <= near).SelectMany(Forces.ExternalAt).ToArray();
        return external.Any(e => e.X != 0) ? BesideReaction : external.Length > 0 ? BesideLoad : Beside;
    }

    // A load hangs from its joint or comes down on it, whichever side is free of members; reactions come from outside, beside the load.
    private void External(int joint, DrawingPoint at, double middle, ForceArrows arrows)
    {
        double[] members =
        [
            .. Enumerable.Range(0, Truss.Members.Count).Where(m => Truss.FromJoint(m) == joint || Truss.ToJoint(m) == joint)
                .Select(m => Forces.Names.DirectionAt(m, joint)).Select(d => Math.Atan2(d.Rise, d.Run)),
        ];
        double Room(double x, double y) => members.Min(m => Math.Abs(Math.IEEERemainder(Math.Atan2(y, x) - m, 2 * Math.PI)));
        bool low = Truss.Joints[joint].Y < middle;
        int side = at.X < Width / 2 ? -1 : 1;
        var external = Forces.ExternalAt(joint).ToArray();
        foreach (var force in external)
        {
            double more = Room(force.X, force.Y) - Room(-force.X, -force.Y);
            bool leaves = !force.IsReaction && (Math.Abs(more) > 0.1 ? more > 0 : low == force.Y < 0);
            bool shifted = force.IsReaction && force.Y != 0 && external.Any(e => !e.IsReaction && e.Y != 0);
            double aside = shifted ? side * 34 : 0, way = leaves ? 1 : -1;
            var foot = new DrawingPoint(at.X + aside, at.Y);
            DrawingPoint near = new(foot.X + (way * 10 * force.X), foot.Y + (way * 10 * force.Y)), far = new(foot.X + (way * 62 * force.X), foot.Y + (way * 62 * force.Y));
            arrows.Add(force.Shows, leaves ? near : far, leaves ? far : near, force.Style, force.Words.Replace("load ", "", StringComparison.Ordinal), atTail: !leaves);
        }
    }

    // The cut runs from member to member as seen from the middle of the part, beginning after the widest gap.
    private void CutLine(List<DrawingPoint> cut, DrawingPoint[] at)
    {
        if (cut.Count == 0)
        {
            return;
        }

        double x = Joints.Average(j => at[j].X), y = Joints.Average(j => at[j].Y);
        (double Angle, DrawingPoint At)[] around = [.. cut.Select(c => (Math.Atan2(c.Y - y, c.X - x), c)).OrderBy(c => c.Item1)];
        int first = Enumerable.Range(0, around.Length).MaxBy(i => i == 0 ? around[0].Angle - around[^1].Angle + (2 * Math.PI) : around[i].Angle - around[i - 1].Angle);
        DrawingPoint[] line = [.. around.Skip(first).Concat(around.Take(first)).Select(c => c.At)];
        DrawingPoint before = line.Length > 1 ? Beyond(line[1], line[0]) : new(line[0].X, line[0].Y - 34), after = line.Length > 1 ? Beyond(line[^2], line[^1]) : new(line[0].X, line[0].Y + 34);
        DrawingPoint[] whole = [before, .. line, after];
        parts.Add(new Stroke("cut", whole, Ink.Alarm, 2, Dash.DashDot));
        for (int i = 1; i < whole.Length; i++)
        {
            crowding.Take(whole[i - 1], whole[i]);
            forNames.Take(whole[i - 1], whole[i]);
        }
    }

    private static DrawingPoint Beyond(DrawingPoint from, DrawingPoint to)
    {
        double length = Math.Max(1, double.Hypot(to.X - from.X, to.Y - from.Y));
        return new(to.X + (34 * (to.X - from.X) / length), to.Y + (34 * (to.Y - from.Y) / length));
    }

    private void NameJoints(DrawingPoint[] at, HashSet<int> inside, double middle)
    {
        for (int j = 0; j < at.Length; j++)
        {
            string name = Truss.Joints[j].Name;
            Box box = Box.Of(name, JointSize, at[j]);
            int outward = at[j].Y >= middle ? 1 : -1;
            Box chosen = forNames.Choose(
                from distance in (double[])[9, 14, 20]
                from way in ((double, double)[])[(0, outward), (-0.75, outward), (0.75, outward), (-1, 0), (1, 0), (-1, -outward), (1, -outward), (0, -outward)]
                select box with { X = at[j].X + (way.Item1 * ((box.Width / 2) + distance)), Y = at[j].Y + (way.Item2 * ((box.Height / 2) + distance)) });
            crowding.Take(chosen);
            parts.Add(new Text(name, new(chosen.X, chosen.Y), name, JointSize, inside.Contains(j) ? Ink.Black : Ink.Grey));
        }
    }

    private void MarkCentre(DrawingPoint at, string words, double height)
    {
        if (at.X < 10 || at.X > Width - 10 || at.Y < 10 || at.Y > height - 10)
        {
            return;
        }

        parts.Add(new Mark("centre of moments", at, MarkShape.Diamond, 22, Ink.Alarm, Filled: false));
        Box box = Box.Of(words, 14, at);
        Box chosen = crowding.Choose(
            from up in (double[])[-28, 28, -46, 46, -64, 64]
            from right in (double[])[0, 0.55, -0.55, 1, -1]
            let x = at.X + (right * box.Width)
            where x - (box.Width / 2) > 0 && x + (box.Width / 2) < Width
            select box with { X = x, Y = at.Y + up });
        parts.Add(new Text("centre of moments", new(chosen.X, chosen.Y), words, 14, Ink.Alarm, OnPaper: true));
    }

    private IEnumerable<Mark> Marks(DrawingPoint[] at, HashSet<int> inside)
    {
        for (int j = 0; j < at.Length; j++)
        {
            yield return new Mark(Truss.Joints[j].Name, at[j], MarkShape.Circle, 9, inside.Contains(j) ? Ink.Black : Ink.Pale, Filled: false);
        }
    }
}
