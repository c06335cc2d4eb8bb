namespace SpanRater;

/// <summary>One step of the work: a joint, and the members found there.</summary>
/// <param name="Joint">Position of the joint in <see cref="Truss.Joints"/>.</param>
/// <param name="Found">Positions of the members found, one or two.</param>
/// <param name="Across">Where one member is found because the others not yet known lie in one line: one of those; else null.</param>
public sealed record JointStep(int Joint, IReadOnlyList<int> Found, int? Across);

/// <summary>
/// The work of a learner: reactions known, then joint after joint from one end. At each joint at most two forces are unknown, or
/// all but one lie in a line and the one is found across it. The work can be done with a mistake in it, so that a wrong answer
/// is known by the number that the mistake gives.
/// </summary>
internal sealed class JointWork
{
    private const double InLine = 1e-9;

    private readonly Truss truss;
    private readonly List<JointStep> steps;

    private JointWork(Truss truss, List<JointStep> steps)
    {
        this.truss = truss;
        this.steps = steps;
    }

    /// <summary>The steps, in order.</summary>
    public IReadOnlyList<JointStep> Steps => steps;

    /// <summary>Finds an order of joints; null where the work gets stuck.</summary>
    /// <param name="truss">The truss.</param>
    /// <param name="fromRight">True to start at the right end.</param>
    public static JointWork? Of(Truss truss, bool fromRight)
    {
        var known = new bool[truss.Members.Count];
        var left = Enumerable.Range(0, truss.Joints.Count).ToList();
        var steps = new List<JointStep>();
        Joint last = fromRight ? truss.Joints.MaxBy(j => j.X)! : truss.Joints.MinBy(j => j.X)!;
        while (known.Contains(false))
        {
            JointStep? step = left.OrderBy(j => double.Hypot(truss.Joints[j].X - last.X, truss.Joints[j].Y - last.Y))
                .Select(j => StepAt(truss, j, known)).FirstOrDefault(s => s is not null);
            if (step is null)
            {
                return null;
            }

            foreach (int member in step.Found)
            {
                known[member] = true;
            }

            last = truss.Joints[step.Joint];
            steps.Add(step);
        }

        return new JointWork(truss, steps);
    }

    /// <summary>The forces of all members [N].</summary>
    /// <param name="loads">Loads and reactions at the joints, right and up of each [N].</param>
    /// <param name="swapsAt">True for a joint at which sine and cosine of every sloping member are exchanged.</param>
    public double[] Solve(ReadOnlySpan<double> loads, Func<int, bool>? swapsAt = null)
    {
        var forces = new double[truss.Members.Count];
        var known = new bool[forces.Length];
        foreach (JointStep step in steps)
        {
            bool swaps = swapsAt?.Invoke(step.Joint) ?? false;
            double right = loads[2 * step.Joint], up = loads[(2 * step.Joint) + 1];
            foreach (int member in MembersAt(truss, step.Joint).Where(m => known[m]))
            {
                (double x, double y) = Direction(member, step.Joint, swaps);
                right += x * forces[member];
                up += y * forces[member];
            }

            Find(step, right, up, swaps, forces);
            foreach (int member in step.Found)
            {
                known[member] = true;
            }
        }

        return forces;
    }

    /// <summary>The unit vector of a member away from a joint.</summary>
    public (double X, double Y) Direction(int member, int joint, bool swaps = false)
    {
        (double x, double y) = DirectionOf(truss, member, joint);
        return swaps && x != 0 && y != 0 ? (Math.Sign(x) * Math.Abs(y), Math.Sign(y) * Math.Abs(x)) : (x, y);
    }

    private void Find(JointStep step, double right, double up, bool swaps, double[] forces)
    {
        (double x, double y) = Direction(step.Found[0], step.Joint, swaps);
        if (step.Across is { } line)
        {
            // At right angles to the line, so that it drops out.
            (double alongX, double alongY) = Direction(line, step.Joint, swaps);
            forces[step.Found[0]] = -((up * alongX) - (right * alongY)) / ((y * alongX) - (x * alongY));
        }
        else if (step.Found.Count == 1)
        {
            forces[step.Found[0]] = Math.Abs(x) >= Math.Abs(y) ? -right / x : -up / y;
        }
        else
        {
            (double otherX, double otherY) = Direction(step.Found[1], step.Joint, swaps);
            double determinant = (x * otherY) - (otherX * y);
            forces[step.Found[0]] = ((otherX * up) - (right * otherY)) / determinant;
            forces[step.Found[1]] = ((right * y) - (x * up)) / determinant;
        }
    }

    private static JointStep? StepAt(Truss truss, int joint, bool[] known)
    {
        int[] unknown = [.. MembersAt(truss, joint).Where(m => !known[m])];
        if (unknown.Length is 0)
        {
            return null;
        }

        if (unknown.Length == 1 || (unknown.Length == 2 && !AreInLine(truss, joint, unknown[0], unknown[1])))
        {
            return new JointStep(joint, unknown, null);
        }

        foreach (int one in unknown)
        {
            int[] others = [.. unknown.Where(m => m != one)];
            if (others.All(m => AreInLine(truss, joint, m, others[0])) && !AreInLine(truss, joint, one, others[0]))
            {
                return new JointStep(joint, [one], others[0]);
            }
        }

        return null;
    }

    private static bool AreInLine(Truss truss, int joint, int one, int other)
    {
        (double x, double y) = DirectionOf(truss, one, joint);
        (double otherX, double otherY) = DirectionOf(truss, other, joint);
        return Math.Abs((x * otherY) - (y * otherX)) < InLine;
    }

    private static IEnumerable<int> MembersAt(Truss truss, int joint) =>
        Enumerable.Range(0, truss.Members.Count).Where(m => truss.FromJoint(m) == joint || truss.ToJoint(m) == joint);

    private static (double X, double Y) DirectionOf(Truss truss, int member, int joint)
    {
        Joint here = truss.Joints[joint], there = truss.Joints[truss.FromJoint(member) == joint ? truss.ToJoint(member) : truss.FromJoint(member)];
        double length = truss.Length(member);
        return ((there.X - here.X) / length, (there.Y - here.Y) / length);
    }
}
