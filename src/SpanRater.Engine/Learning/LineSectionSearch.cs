namespace SpanRater;

/// <summary>Finds the section, or the joint, whose balance gives a member's influence line by one equation.</summary>
internal sealed class LineSectionSearch
{
    private const double Parallel = 1e-6;
    private const int MostInOneLine = 4;

    private readonly InfluenceLines lines;
    private readonly Truss truss;
    private readonly int member;
    private readonly int[] acting;
    private readonly Reaction[][] reactions;

    private LineSectionSearch(InfluenceLines lines, int member)
    {
        this.lines = lines;
        this.member = member;
        truss = lines.Truss;
        acting = [.. Enumerable.Range(0, truss.Members.Count).Where(m => lines.Slack?.Contains(m) != true)];
        reactions = [.. Enumerable.Range(0, truss.PanelPoints.Count).Select(ReactionsUnder)];
    }

    /// <summary>The best section, or null: moments and shears first, then the fewest members cut, then the section nearest the middle of the member.</summary>
    public static LineSection? Of(InfluenceLines lines, int member)
    {
        var search = new LineSectionSearch(lines, member);
        return search.Partitions().SelectMany(search.SectionsOf)
            .OrderBy(s => s.Centre is null && !s.IsShear ? 1 : 0).ThenBy(s => s.Twin is null ? 0 : 1).ThenBy(s => s.Cut.Count).ThenBy(search.Distance)
            .FirstOrDefault();
    }

    /// <summary>What the joints at both ends say, those without another member first.</summary>
    public static IReadOnlyList<JointTie> TiesOf(InfluenceLines lines, int member)
    {
        var search = new LineSectionSearch(lines, member);
        return [.. ((int[])[search.truss.FromJoint(member), search.truss.ToJoint(member)]).Select(search.TieAt).OfType<JointTie>().OrderBy(t => t.Other is null ? 0 : 1)];
    }

    // Every way to part the truss along an upright line, joints on the line being given to either side.
    private IEnumerable<HashSet<int>> Partitions()
    {
        foreach (IGrouping<double, int> column in Enumerable.Range(0, truss.Joints.Count).GroupBy(j => Math.Round(truss.Joints[j].X, 9)).OrderBy(c => c.Key))
        {
            int[] within = [.. column];
            for (int choice = 1; within.Length <= MostInOneLine && choice < 1 << within.Length; choice++)
            {
                HashSet<int> left = [.. Enumerable.Range(0, truss.Joints.Count).Where(j => Math.Round(truss.Joints[j].X, 9) < column.Key)];
                left.UnionWith(within.Where((_, i) => (choice & (1 << i)) != 0));
                if (left.Count < truss.Joints.Count && left.Contains(truss.FromJoint(member)) != left.Contains(truss.ToJoint(member)))
                {
                    yield return left;
                }
            }
        }
    }

    private IEnumerable<LineSection> SectionsOf(HashSet<int> left)
    {
        int[] points = [.. Enumerable.Range(0, truss.PanelPoints.Count)];
        int panelLeft = points.Count(p => left.Contains(truss.PanelPoints[p])) - 1;
        if (points.Any(p => left.Contains(truss.PanelPoints[p]) != (p <= panelLeft)))
        {
            yield break;
        }

        int[] cut = [.. acting.Where(m => left.Contains(truss.FromJoint(m)) != left.Contains(truss.ToJoint(m)))];
        foreach (JointTie? twin in (JointTie?[])[null, .. TiesOf(lines, member).Where(t => t.OwnLoad == 0 && t.Other is { } other && cut.Contains(other))])
        {
            int[] others = [.. cut.Where(m => m != member && m != twin?.Other)];
            if (others.Length > 0 && Section(left, panelLeft, cut, others, twin) is { } section)
            {
                yield return section;
            }
        }
    }

    private LineSection? Section(HashSet<int> left, int panelLeft, int[] cut, int[] others, JointTie? twin)
    {
        (double X, double Y)? centre = null;
        (double X, double Y) along = Direction(others[0]), normal = (-along.Y, along.X);
        if (others.FirstOrDefault(m => Math.Abs(Cross(along, Direction(m))) > Parallel, -1) is var second and >= 0)
        {
            centre = Meeting(others[0], second);
            if (twin is not null || others.Any(m => Math.Abs(Arm(m, centre.Value)) > Parallel * truss.Length(m)))
            {
                return null;
            }

            normal = (0, 0);
        }
        else
        {
            normal = normal.Y < -Parallel || (Math.Abs(normal.Y) <= Parallel && normal.X < 0) ? (-normal.X, -normal.Y) : normal;
            normal = Math.Abs(normal.X) <= 1e-12 ? (0, 1) : normal;
        }

        double lever = LeverOn(left, member, centre, normal) + (twin is { } tie ? LeverOn(left, tie.Other!.Value, centre, normal) / tie.Ratio : 0);
        if (Math.Abs(lever) <= Parallel * (centre is null ? 1 : truss.Length(member)))
        {
            return null;
        }

        IReadOnlyList<double> ordinates = lines.Members[member].Line.Ordinates;
        double allowed = InfluenceNarration.Agreement * Math.Max(1e-3, ordinates.Max(Math.Abs));
        var steps = new List<SectionStep>();
        for (int p = 0; p < truss.PanelPoints.Count; p++)
        {
            bool loadIsLeft = p <= panelLeft;
            Reaction[] held = [.. reactions[p].Where(r => left.Contains(r.Joint) != loadIsLeft)];
            double effect = held.Sum(r => EffectOf(r, centre, normal)), here = loadIsLeft ? -lever : lever;
            if (Math.Abs((-effect / here) - ordinates[p]) > allowed)
            {
                return null;
            }

            steps.Add(new SectionStep(p, loadIsLeft, [.. held.Where(r => Math.Abs(r.Right) + Math.Abs(r.Up) > 1e-12)], effect + 0.0, here, (-effect / here) + 0.0));
        }

        return new LineSection(cut, [.. left.Order()], panelLeft, centre, normal, twin, steps);
    }

    // What a unit tension in a member does to the left part.
    private double LeverOn(HashSet<int> left, int m, (double X, double Y)? centre, (double X, double Y) normal)
    {
        bool fromLeft = left.Contains(truss.FromJoint(m));
        (double x, double y) = Direction(m);
        double way = fromLeft ? 1 : -1;
        if (centre is not { } at)
        {
            return way * ((x * normal.X) + (y * normal.Y));
        }

        Joint from = truss.Joints[truss.FromJoint(m)];
        return way * (((from.X - at.X) * y) - ((from.Y - at.Y) * x));
    }

    private double EffectOf(Reaction reaction, (double X, double Y)? centre, (double X, double Y) normal)
    {
        Joint joint = truss.Joints[reaction.Joint];
        return centre is { } at
            ? ((joint.X - at.X) * reaction.Up) - ((joint.Y - at.Y) * reaction.Right)
            : (reaction.Right * normal.X) + (reaction.Up * normal.Y);
    }

    private JointTie? TieAt(int joint)
    {
        if (truss.Joints[joint].Support is not null)
        {
            return null;
        }

        int[] others = [.. acting.Where(m => m != member && (truss.FromJoint(m) == joint || truss.ToJoint(m) == joint))];
        foreach (int first in others)
        {
            (double X, double Y) along = Direction(first), normal = (-along.Y, along.X);
            int[] leaving = [.. others.Where(m => Math.Abs(Cross(along, Direction(m))) > Parallel)];
            double across = Across(joint, member, normal);

            // One bar is no line of its own where a third leaves it: that would tie any three at will.
            if (leaving.Length > 1 || (leaving.Length == 1 && others.Length < 3) || Math.Abs(across) <= Parallel)
            {
                continue;
            }

            int? other = leaving.Length == 0 ? null : leaving[0];
            double ratio = other is { } o ? -Across(joint, o, normal) / across : 0;
            var tie = new JointTie(joint, other, ratio, truss.Joints[joint].IsPanelPoint ? (normal.Y / across) + 0.0 : 0);
            if (Holds(tie))
            {
                return tie;
            }
        }

        return null;
    }

    private bool Holds(JointTie tie)
    {
        IReadOnlyList<double> ordinates = lines.Members[member].Line.Ordinates;
        double allowed = InfluenceNarration.Agreement * Math.Max(1e-3, ordinates.Max(Math.Abs));
        return Enumerable.Range(0, ordinates.Count).All(p => Math.Abs(
            (tie.Other is { } other ? tie.Ratio * lines.Members[other].Line.Ordinates[p] : 0)
            + (truss.PanelPoints[p] == tie.Joint ? tie.OwnLoad : 0)
            - ordinates[p]) <= allowed);
    }

    // Component of a member's unit vector, away from the joint, across a line.
    private double Across(int joint, int m, (double X, double Y) normal)
    {
        (double x, double y) = Direction(m);
        return (truss.FromJoint(m) == joint ? 1 : -1) * ((x * normal.X) + (y * normal.Y));
    }

    private Reaction[] ReactionsUnder(int panelPoint)
    {
        var found = new List<Reaction>();
        for (int j = 0; j < truss.Joints.Count; j++)
        {
            if (truss.Joints[j].Support is not null)
            {
                found.Add(new Reaction(j, Component(j, "right", panelPoint), Component(j, "up", panelPoint)));
            }
        }

        return [.. found];
    }

    private double Component(int joint, string way, int panelPoint) =>
        lines.Reactions.FirstOrDefault(r => r.Name == $"{truss.Joints[joint].Name} {way}")?.Line.Ordinates[panelPoint] ?? 0;

    private double Distance(LineSection section)
    {
        double x = section.LeftJoints.Max(j => truss.Joints[j].X), middle = (truss.Joints[truss.FromJoint(member)].X + truss.Joints[truss.ToJoint(member)].X) / 2;
        return Math.Round(Math.Abs(x - middle), 6);
    }

    private (double X, double Y) Direction(int m)
    {
        Joint from = truss.Joints[truss.FromJoint(m)], to = truss.Joints[truss.ToJoint(m)];
        double length = truss.Length(m);
        return ((to.X - from.X) / length, (to.Y - from.Y) / length);
    }

    private (double X, double Y) Meeting(int one, int other)
    {
        Joint a = truss.Joints[truss.FromJoint(one)], b = truss.Joints[truss.FromJoint(other)];
        (double X, double Y) d = Direction(one), e = Direction(other);
        double t = Cross((b.X - a.X, b.Y - a.Y), e) / Cross(d, e);
        return (a.X + (t * d.X), a.Y + (t * d.Y));
    }

    // Distance of a point from a member's line.
    private double Arm(int m, (double X, double Y) point)
    {
        Joint from = truss.Joints[truss.FromJoint(m)];
        return Cross((point.X - from.X, point.Y - from.Y), Direction(m));
    }

    private static double Cross((double X, double Y) a, (double X, double Y) b) => (a.X * b.Y) - (a.Y * b.X);
}
