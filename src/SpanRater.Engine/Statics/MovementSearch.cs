using MathNet.Numerics.LinearAlgebra;

namespace SpanRater;

/// <summary>
/// Parts the displacements that lengthen no member into movements a person can picture: first those of the whole truss on
/// its supports, then such that in each as few panels as can be change their shape.
/// </summary>
internal sealed class MovementSearch
{
    /// <summary>Below this part of the largest it is no movement.</summary>
    private const double Still = 1e-6;

    private readonly Truss truss;
    private readonly IReadOnlyList<TrussPanel> panels;

    private MovementSearch(Truss truss)
    {
        this.truss = truss;
        panels = TrussPanel.Of(truss);
    }

    /// <summary>The movements, the simplest first.</summary>
    /// <param name="truss">The truss.</param>
    /// <param name="free">Independent displacements that lengthen no member, one a column, right and up of each joint in turn.</param>
    public static IReadOnlyList<Movement> Of(Truss truss, Matrix<double> free)
    {
        var search = new MovementSearch(truss);
        List<Vector<double>> rigid = Independent(SupportFault.RigidMotions(truss).Select(m => Vector<double>.Build.DenseOfArray(SupportFault.ShiftsOf(truss, m))), []);
        List<Vector<double>> rest = Independent(free.EnumerateColumns(), rigid);
        return [.. rigid.Concat(search.FewestPanels(rest)).Select(search.Describe).OrderBy(m => m.Kind).ThenBy(m => m.Panels.Count).ThenBy(m => m.Joints.Min(j => truss.Joints[j].X))];
    }

    // Orthogonal vectors that span the given ones beside those known already.
    private static List<Vector<double>> Independent(IEnumerable<Vector<double>> given, List<Vector<double>> known)
    {
        var found = new List<Vector<double>>();
        foreach (Vector<double> vector in given)
        {
            Vector<double> left = vector / vector.L2Norm();
            foreach (Vector<double> other in known.Concat(found).Concat(known).Concat(found).ToArray())
            {
                left -= other * (left * other);
            }

            if (left.L2Norm() > Still)
            {
                found.Add(left / left.L2Norm());
            }
        }

        return found;
    }

    // Gauss-Jordan over the columns: each pivot is a change of angle that then belongs to one movement only. Corners of panels
    // are taken first; the shifts themselves tell apart what no angle does.
    private List<Vector<double>> FewestPanels(List<Vector<double>> columns)
    {
        var done = new HashSet<int>();
        foreach (Func<Vector<double>, double[]> measure in (Func<Vector<double>, double[]>[])[CornerTurns, u => u.ToArray()])
        {
            while (done.Count < columns.Count)
            {
                double[][] measured = [.. columns.Select(measure)];
                (int row, int column) = (-1, -1);
                double largest = Still;
                for (int c = 0; c < columns.Count; c++)
                {
                    for (int r = 0; r < measured[c].Length && !done.Contains(c); r++)
                    {
                        // The small advantage asked for keeps the choice among equals with the first.
                        if (Math.Abs(measured[c][r]) > largest * (1 + Still))
                        {
                            (row, column, largest) = (r, c, Math.Abs(measured[c][r]));
                        }
                    }
                }

                if (row < 0)
                {
                    break;
                }

                done.Add(column);
                for (int c = 0; c < columns.Count; c++)
                {
                    if (c != column)
                    {
                        columns[c] -= columns[column] * (measured[c][row] / measured[column][row]);
                        columns[c] /= columns[c].L2Norm();
                    }
                }
            }
        }

        return columns;
    }

    private double[] CornerTurns(Vector<double> u) => [.. panels.SelectMany(p => CornerTurns(p, u))];

    // How much each corner of a panel opens, for shifts over the truss's length.
    private IEnumerable<double> CornerTurns(TrussPanel panel, Vector<double> u)
    {
        double size = Size();
        for (int c = 0; c < panel.Corners.Count; c++)
        {
            int at = panel.Corners[c];
            yield return size * (Turn(at, panel.Corners[(c + panel.Corners.Count - 1) % panel.Corners.Count], u) - Turn(at, panel.Corners[(c + 1) % panel.Corners.Count], u));
        }
    }

    private Movement Describe(Vector<double> movement)
    {
        Vector<double> u = Scaled(movement);
        int[] joints = [.. Enumerable.Range(0, truss.Joints.Count).Where(j => double.Hypot(u[2 * j], u[(2 * j) + 1]) > Still)];
        int[] members = [.. Enumerable.Range(0, truss.Members.Count).Where(m => IsTurning(m, u))];
        TrussPanel[] moving = [.. panels.Where(p => CornerTurns(p, u).Any(t => Math.Abs(t) > Still))];
        int[] hinges = [.. Enumerable.Range(0, truss.Joints.Count).Where(j => IsHinge(j, u))];
        MovementKind kind = IsRigid(u) ? MovementKind.WholeTruss
            : joints.Length == 1 ? MovementKind.LooseJoint
            : moving.Length > 0 ? MovementKind.Panels
            : MovementKind.Pieces;
        return new Movement(
            kind,
            [.. Enumerable.Range(0, truss.Joints.Count).Select(j => joints.Contains(j) ? new JointShift(u[2 * j], u[(2 * j) + 1]) : default)],
            joints,
            members,
            moving,
            hinges,
            kind == MovementKind.WholeTruss ? [] : Mends(kind, moving, joints, u));
    }

    // The largest shift is 1 and goes to the right; straight up or down, it goes down, as a load would push it.
    private static Vector<double> Scaled(Vector<double> u)
    {
        int joints = u.Count / 2;
        double largest = Enumerable.Range(0, joints).Max(j => double.Hypot(u[2 * j], u[(2 * j) + 1]));
        int first = Enumerable.Range(0, joints).First(j => double.Hypot(u[2 * j], u[(2 * j) + 1]) > largest * (1 - Still));
        double right = u[2 * first], up = u[(2 * first) + 1];
        double way = Math.Abs(right) > Still * largest ? Math.Sign(right) : -Math.Sign(up);
        return u.Map(value => Math.Abs(value) <= Still * largest ? 0 : way * value / largest);
    }

    private MissingBar[] Mends(MovementKind kind, TrussPanel[] moving, int[] joints, Vector<double> u)
    {
        var bars = new List<MissingBar>();
        if (kind == MovementKind.Panels && moving is [{ Corners: { Count: 4 } c }])
        {
            bars.AddRange(((MissingBar[])[new(c[0], c[2]), new(c[1], c[3])]).Where(b => Stops(b, u)));
        }

        if (bars.Count == 0)
        {
            IEnumerable<MissingBar> all =
                from a in Enumerable.Range(0, truss.Joints.Count)
                from b in Enumerable.Range(a + 1, truss.Joints.Count - a - 1)
                where kind != MovementKind.LooseJoint || joints.Contains(a) || joints.Contains(b)
                let bar = new MissingBar(a, b)
                where Stops(bar, u)
                select bar;
            bars.AddRange(all.OrderBy(b => Math.Round(Length(b) / Size(), 6)).Take(1));
        }

        return [.. bars];
    }

    // Whether a bar can be put there, and its length would have to change a good deal.
    private bool Stops(MissingBar bar, Vector<double> u)
    {
        Joint a = truss.Joints[bar.From], b = truss.Joints[bar.To];
        double lengthening = (((b.X - a.X) * (u[2 * bar.To] - u[2 * bar.From])) + ((b.Y - a.Y) * (u[(2 * bar.To) + 1] - u[(2 * bar.From) + 1]))) / Length(bar);
        return Math.Abs(lengthening) > 0.1 && !Elevations.AreJoined(truss, bar.From, bar.To) && Elevations.IsClear(truss, bar.From, bar.To);
    }

    private double Length(MissingBar bar) => double.Hypot(truss.Joints[bar.To].X - truss.Joints[bar.From].X, truss.Joints[bar.To].Y - truss.Joints[bar.From].Y);

    private double Size() => Math.Max(truss.Joints.Max(j => j.X) - truss.Joints.Min(j => j.X), truss.Joints.Max(j => j.Y) - truss.Joints.Min(j => j.Y));

    // Anticlockwise turn of the line between two joints.
    private double Turn(int from, int to, Vector<double> u)
    {
        double dx = truss.Joints[to].X - truss.Joints[from].X, dy = truss.Joints[to].Y - truss.Joints[from].Y;
        return ((dx * (u[(2 * to) + 1] - u[(2 * from) + 1])) - (dy * (u[2 * to] - u[2 * from]))) / ((dx * dx) + (dy * dy));
    }

    private double Turn(int member, Vector<double> u) => Turn(truss.FromJoint(member), truss.ToJoint(member), u);

    private bool IsTurning(int member, Vector<double> u) => Math.Abs(Turn(member, u)) * truss.Length(member) > Still;

    private bool IsHinge(int joint, Vector<double> u)
    {
        double[] turns = [.. Enumerable.Range(0, truss.Members.Count).Where(m => truss.FromJoint(m) == joint || truss.ToJoint(m) == joint).Select(m => Turn(m, u))];
        return (turns.Max() - turns.Min()) * Size() > Still;
    }

    private bool IsRigid(Vector<double> u)
    {
        int far = Enumerable.Range(1, truss.Joints.Count - 1)
            .MaxBy(j => double.Hypot(truss.Joints[j].X - truss.Joints[0].X, truss.Joints[j].Y - truss.Joints[0].Y));
        double turn = Turn(0, far, u);
        return Enumerable.Range(0, truss.Joints.Count).All(j => double.Hypot(
            u[2 * j] - u[0] + (turn * (truss.Joints[j].Y - truss.Joints[0].Y)),
            u[(2 * j) + 1] - u[1] - (turn * (truss.Joints[j].X - truss.Joints[0].X))) <= 1e-6);
    }
}
