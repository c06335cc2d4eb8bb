namespace SpanRater;

/// <summary>
/// Part of a truss cut free: some of its joints, the members cut by its border and the reactions on it. It makes the
/// equations of its equilibrium. Members within it cancel and are left out.
/// </summary>
internal sealed class FreeBody
{
    /// <summary>A coefficient below this part of the largest possible one is round-off: the force has no part in the sum.</summary>
    private const double NoPart = 1e-12;

    private readonly Truss truss;
    private readonly JointTerms terms;
    private readonly int[] joints;
    private readonly List<Crossing> crossings = [];

    public FreeBody(Truss truss, JointTerms terms, IEnumerable<int> joints)
    {
        this.truss = truss;
        this.terms = terms;
        this.joints = [.. joints.Order()];
        var inside = new HashSet<int>(this.joints);
        foreach (int joint in this.joints)
        {
            foreach ((int force, double x, double y) in terms[joint])
            {
                if (force >= truss.Members.Count || !inside.Contains(truss.FromJoint(force) == joint ? truss.ToJoint(force) : truss.FromJoint(force)))
                {
                    crossings.Add(new Crossing(force, joint, x, y));
                }
            }
        }
    }

    /// <summary>Largest dimension of the truss, against which arms are measured [m].</summary>
    public double Size => terms.Size;

    /// <summary>The forces on its border.</summary>
    public IEnumerable<int> Forces => crossings.Select(c => c.Force);

    /// <summary>Sum to the right.</summary>
    public Balance Right() => Sum(BalanceKind.Right, 1, 0, null);

    /// <summary>Sum upward.</summary>
    public Balance Up() => Sum(BalanceKind.Up, 0, 1, null);

    /// <summary>Sum square to a force on the border.</summary>
    public Balance Across(int force)
    {
        Crossing along = Of(force);
        return Sum(BalanceKind.Across, -along.Y + 0.0, along.X, force);
    }

    /// <summary>Moments about a point.</summary>
    public Balance Moment(double x, double y)
    {
        double none = NoPart * Size;
        return new Balance(
            BalanceKind.Moment,
            joints,
            x,
            y,
            null,
            [
                .. crossings.Select(c => new BalanceTerm(c.Force, c.Joint, ((truss.Joints[c.Joint].X - x) * c.Y) - ((truss.Joints[c.Joint].Y - y) * c.X)))
                    .Where(t => Math.Abs(t.Coefficient) > none),
            ]);
    }

    /// <summary>Where the lines of two forces on the border meet: at a joint exactly, where they meet at one; null where they are parallel or meet too far away to be of use.</summary>
    public (double X, double Y)? Meeting(int one, int other)
    {
        Crossing a = Of(one), b = Of(other);
        double turn = (a.X * b.Y) - (a.Y * b.X);
        if (Math.Abs(turn) < 1e-3)
        {
            return null;
        }

        Joint from = truss.Joints[a.Joint], to = truss.Joints[b.Joint];
        double along = (((to.X - from.X) * b.Y) - ((to.Y - from.Y) * b.X)) / turn;
        (double x, double y) = (from.X + (along * a.X), from.Y + (along * a.Y));
        Joint? near = truss.Joints.FirstOrDefault(j => double.Hypot(j.X - x, j.Y - y) < 1e-9 * Size);
        return near is null ? (x, y) : (near.X, near.Y);
    }

    /// <summary>Whether two forces act at one joint of the body.</summary>
    public bool ActTogether(int one, int other) => Of(one).Joint == Of(other).Joint;

    private Crossing Of(int force) => crossings.First(c => c.Force == force);

    private Balance Sum(BalanceKind kind, double x, double y, int? beside) => new(
        kind,
        joints,
        x,
        y,
        beside,
        [
            .. crossings.Where(c => c.Force != beside).Select(c => new BalanceTerm(c.Force, c.Joint, (x * c.X) + (y * c.Y)))
                .Where(t => Math.Abs(t.Coefficient) > NoPart),
        ]);

    private readonly record struct Crossing(int Force, int Joint, double X, double Y);
}

/// <summary>The forces at each joint with their unit vectors there, found once.</summary>
internal sealed class JointTerms
{
    private readonly (int Force, double X, double Y)[][] terms;

    public JointTerms(Truss truss, EquilibriumSystem equilibrium)
    {
        terms = [.. Enumerable.Range(0, truss.Joints.Count).Select(j => equilibrium.TermsAt(j).ToArray())];
        Size = Math.Max(truss.Joints.Max(j => j.X) - truss.Joints.Min(j => j.X), truss.Joints.Max(j => j.Y) - truss.Joints.Min(j => j.Y));
    }

    /// <summary>Largest dimension of the truss [m].</summary>
    public double Size { get; }

    public (int Force, double X, double Y)[] this[int joint] => terms[joint];
}
