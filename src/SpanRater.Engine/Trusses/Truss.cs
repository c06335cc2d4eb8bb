namespace SpanRater;

/// <summary>
/// A plane truss whose geometry has been checked: names resolve, every member has a length, every joint is
/// held by some member, and something is supported. Whether it stands is a question for <see cref="Stability"/>.
/// Immutable.
/// </summary>
public sealed class Truss
{
    private readonly int[] fromJoint;
    private readonly int[] toJoint;

    private Truss(Joint[] joints, Member[] members, int[] fromJoint, int[] toJoint, int[] panelPoints)
    {
        Joints = joints;
        Members = members;
        this.fromJoint = fromJoint;
        this.toJoint = toJoint;
        PanelPoints = panelPoints;
        Stations = [.. panelPoints.Select(p => joints[p].X)];
    }

    /// <summary>The joints, in the order given.</summary>
    public IReadOnlyList<Joint> Joints { get; }

    /// <summary>The members, in the order given.</summary>
    public IReadOnlyList<Member> Members { get; }

    /// <summary>Positions in <see cref="Joints"/> of the panel points, in order of x.</summary>
    public IReadOnlyList<int> PanelPoints { get; }

    /// <summary>x of the panel points, strictly increasing [m].</summary>
    public IReadOnlyList<double> Stations { get; }

    /// <summary>Number of reaction components of all supports.</summary>
    public int ReactionCount => Joints.Sum(j => j.Support?.ReactionCount ?? 0);

    /// <summary>
    /// Checks the geometry and makes the truss. Every fault is found, not the first alone; the truss is there
    /// when none of them is an error.
    /// </summary>
    /// <param name="joints">The joints; coordinates in [m].</param>
    /// <param name="members">The members, which name their joints.</param>
    /// <exception cref="ArgumentException">A coordinate is not a finite number, or an area or a modulus is not positive and finite.</exception>
    public static TrussCheck Create(IReadOnlyList<Joint> joints, IReadOnlyList<Member> members)
    {
        ArgumentNullException.ThrowIfNull(joints);
        ArgumentNullException.ThrowIfNull(members);
        foreach (Joint joint in joints)
        {
            if (!double.IsFinite(joint.X) || !double.IsFinite(joint.Y))
            {
                throw new ArgumentException($"Joint \"{joint.Name}\" has a coordinate that is not a finite number.", nameof(joints));
            }
        }

        foreach (Member member in members)
        {
            if (member.Area is { } area && !(area > 0 && double.IsFinite(area)))
            {
                throw new ArgumentException($"Member \"{member.Name}\" has an area that is not positive and finite.", nameof(members));
            }

            if (member.Modulus is { } modulus && !(modulus > 0 && double.IsFinite(modulus)))
            {
                throw new ArgumentException($"Member \"{member.Name}\" has a modulus that is not positive and finite.", nameof(members));
            }
        }

        var geometry = new TrussGeometry(joints, members);
        List<TrussFault> faults = geometry.FindFaults();
        Truss? truss = faults.Exists(f => f.Severity == FaultSeverity.Error)
            ? null
            : new Truss([.. joints], [.. members], geometry.FromJoint, geometry.ToJoint, geometry.PanelPointsInOrder());
        return new TrussCheck(truss, faults);
    }

    /// <summary>The same truss with members taken out, and what is left able to push and pull; whether it stands is another question.</summary>
    /// <param name="members">Positions in <see cref="Members"/> of those that are taken out.</param>
    internal Truss Without(IReadOnlyCollection<int> members)
    {
        int[] kept = [.. Enumerable.Range(0, Members.Count).Where(m => !members.Contains(m))];
        return new Truss(
            [.. Joints],
            [.. kept.Select(m => Members[m] with { TensionOnly = false })],
            [.. kept.Select(m => fromJoint[m])],
            [.. kept.Select(m => toJoint[m])],
            [.. PanelPoints]);
    }

    /// <summary>Position in <see cref="Joints"/> of the joint at which a member starts.</summary>
    /// <param name="member">Position of the member in <see cref="Members"/>.</param>
    public int FromJoint(int member) => fromJoint[member];

    /// <summary>Position in <see cref="Joints"/> of the joint at which a member ends.</summary>
    /// <param name="member">Position of the member in <see cref="Members"/>.</param>
    public int ToJoint(int member) => toJoint[member];

    /// <summary>Distance between a member's joints [m].</summary>
    /// <param name="member">Position of the member in <see cref="Members"/>.</param>
    public double Length(int member)
    {
        Joint a = Joints[fromJoint[member]], b = Joints[toJoint[member]];
        return double.Hypot(b.X - a.X, b.Y - a.Y);
    }

    /// <summary>How much a member lengthens under a unit tension, L/(E A) [m/N]; null where its area is not given.</summary>
    /// <param name="member">Position of the member in <see cref="Members"/>.</param>
    public double? Flexibility(int member) =>
        Members[member].Area is { } area ? Length(member) / ((Members[member].Modulus ?? Member.SteelModulus) * area) : null;

    /// <summary>Position of the joint of that name in <see cref="Joints"/>, or null.</summary>
    /// <param name="name">Name, matched exactly.</param>
    public int? FindJoint(string name) => Find(Joints, j => j.Name == name);

    /// <summary>Position of the member of that name in <see cref="Members"/>, or null.</summary>
    /// <param name="name">Name, matched exactly.</param>
    public int? FindMember(string name) => Find(Members, m => m.Name == name);

    private static int? Find<T>(IReadOnlyList<T> items, Func<T, bool> matches)
    {
        for (int i = 0; i < items.Count; i++)
        {
            if (matches(items[i]))
            {
                return i;
            }
        }

        return null;
    }
}

/// <summary>What <see cref="Truss.Create"/> found.</summary>
/// <param name="Truss">The truss; null when a fault is an error.</param>
/// <param name="Faults">Every fault, errors and warnings.</param>
public sealed record TrussCheck(Truss? Truss, IReadOnlyList<TrussFault> Faults);
