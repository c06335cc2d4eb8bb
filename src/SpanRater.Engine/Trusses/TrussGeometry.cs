namespace SpanRater;

/// <summary>Finds the faults in the geometry of a truss that is about to be made.</summary>
internal sealed class TrussGeometry
{
    /// <summary>Points closer than this part of the truss's largest dimension are one point.</summary>
    private const double SamePoint = 1e-6;

    private readonly IReadOnlyList<Joint> joints;
    private readonly IReadOnlyList<Member> members;
    private readonly Dictionary<string, int> jointByName = new(StringComparer.Ordinal);
    private readonly List<TrussFault> faults = [];
    private readonly double tolerance;

    public TrussGeometry(IReadOnlyList<Joint> joints, IReadOnlyList<Member> members)
    {
        this.joints = joints;
        this.members = members;
        FromJoint = new int[members.Count];
        ToJoint = new int[members.Count];
        tolerance = joints.Count == 0
            ? 0
            : SamePoint * Math.Max(joints.Max(j => j.X) - joints.Min(j => j.X), joints.Max(j => j.Y) - joints.Min(j => j.Y));
    }

    /// <summary>Joint at which each member starts; -1 where it is not there.</summary>
    public int[] FromJoint { get; }

    /// <summary>Joint at which each member ends; -1 where it is not there.</summary>
    public int[] ToJoint { get; }

    public List<TrussFault> FindFaults()
    {
        CheckJoints();
        ResolveMembers();
        CheckMemberPairs();
        CheckJointsOnMembers();
        CheckLooseJoints();
        CheckDeck();
        return faults;
    }

    public int[] PanelPointsInOrder() =>
        [.. Enumerable.Range(0, joints.Count).Where(j => joints[j].IsPanelPoint).OrderBy(j => joints[j].X)];

    private void CheckJoints()
    {
        if (joints.Count == 0)
        {
            faults.Add(new TrussFault.NoJoints());
            return;
        }

        for (int j = 0; j < joints.Count; j++)
        {
            if (!jointByName.TryAdd(joints[j].Name, j))
            {
                faults.Add(new TrussFault.DuplicateJoint(j, jointByName[joints[j].Name]));
            }

            for (int other = 0; other < j; other++)
            {
                if (double.Hypot(joints[j].X - joints[other].X, joints[j].Y - joints[other].Y) <= tolerance)
                {
                    faults.Add(new TrussFault.CoincidentJoints(j, other));
                    break;
                }
            }
        }

        if (joints.All(j => j.Support is null))
        {
            faults.Add(new TrussFault.NoSupport());
        }
    }

    private void ResolveMembers()
    {
        if (members.Count == 0)
        {
            faults.Add(new TrussFault.NoMembers());
        }

        var memberByName = new Dictionary<string, int>(StringComparer.Ordinal);
        var memberByEnds = new Dictionary<(int, int), int>();
        for (int m = 0; m < members.Count; m++)
        {
            if (!memberByName.TryAdd(members[m].Name, m))
            {
                faults.Add(new TrussFault.DuplicateMember(m, memberByName[members[m].Name]));
            }

            int from = FromJoint[m] = Resolve(m, atFrom: true, members[m].From);
            int to = ToJoint[m] = Resolve(m, atFrom: false, members[m].To);
            if (from < 0 || to < 0)
            {
                continue;
            }

            if (from == to)
            {
                faults.Add(new TrussFault.NoLength(m));
            }
            else if (!memberByEnds.TryAdd((Math.Min(from, to), Math.Max(from, to)), m))
            {
                faults.Add(new TrussFault.JoinedTwice(m, memberByEnds[(Math.Min(from, to), Math.Max(from, to))]));
            }
        }
    }

    private int Resolve(int member, bool atFrom, string name)
    {
        if (jointByName.TryGetValue(name, out int joint))
        {
            return joint;
        }

        faults.Add(new TrussFault.UnknownJoint(member, atFrom, name));
        return -1;
    }

    private bool HasLength(int member) =>
        FromJoint[member] >= 0 && ToJoint[member] >= 0 && FromJoint[member] != ToJoint[member];

    private void CheckMemberPairs()
    {
        for (int m = 0; m < members.Count; m++)
        {
            for (int other = 0; other < m && HasLength(m); other++)
            {
                if (HasLength(other) && Cross(m, other) && !(members[m].TensionOnly && members[other].TensionOnly))
                {
                    faults.Add(new TrussFault.CrossingMembers(m, other));
                }
            }
        }
    }

    // Two segments cross when the ends of each lie clearly on opposite sides of the other. Ends on the other's line are
    // left to CheckJointsOnMembers.
    private bool Cross(int m, int other) =>
        Cross(joints[FromJoint[m]], joints[ToJoint[m]], joints[FromJoint[other]], joints[ToJoint[other]], tolerance);

    /// <summary>Whether the lines from a to b and from c to d cross between their ends.</summary>
    public static bool Cross(Joint a, Joint b, Joint c, Joint d, double tolerance) =>
        OppositeSides(a, b, c, d, tolerance) && OppositeSides(c, d, a, b, tolerance);

    private static bool OppositeSides(Joint a, Joint b, Joint p, Joint q, double tolerance)
    {
        double fromP = DistanceFromLine(a, b, p), fromQ = DistanceFromLine(a, b, q);
        return Math.Abs(fromP) > tolerance && Math.Abs(fromQ) > tolerance && (fromP > 0) != (fromQ > 0);
    }

    private static double DistanceFromLine(Joint a, Joint b, Joint p)
    {
        double dx = b.X - a.X, dy = b.Y - a.Y;
        return ((dx * (p.Y - a.Y)) - (dy * (p.X - a.X))) / double.Hypot(dx, dy);
    }

    private bool LiesBetween(Joint a, Joint b, Joint p)
    {
        double dx = b.X - a.X, dy = b.Y - a.Y, length = double.Hypot(dx, dy);
        double along = ((dx * (p.X - a.X)) + (dy * (p.Y - a.Y))) / length;
        return along > tolerance && along < length - tolerance && Math.Abs(DistanceFromLine(a, b, p)) <= tolerance;
    }

    private void CheckJointsOnMembers()
    {
        for (int m = 0; m < members.Count; m++)
        {
            for (int j = 0; j < joints.Count && HasLength(m); j++)
            {
                if (j == FromJoint[m] || j == ToJoint[m] || !LiesBetween(joints[FromJoint[m]], joints[ToJoint[m]], joints[j]))
                {
                    continue;
                }

                faults.Add(joints[j].IsPanelPoint ? new TrussFault.LoadBetweenJoints(m, j) : new TrussFault.PassesJoint(m, j));
            }
        }
    }

    private void CheckLooseJoints()
    {
        if (members.Count == 0)
        {
            return;
        }

        for (int j = 0; j < joints.Count; j++)
        {
            // A second joint of the same name is a fault of its own; members mean the first one.
            if (jointByName[joints[j].Name] == j && !FromJoint.Contains(j) && !ToJoint.Contains(j))
            {
                faults.Add(new TrussFault.LooseJoint(j));
            }
        }
    }

    private void CheckDeck()
    {
        int[] listed = [.. Enumerable.Range(0, joints.Count).Where(j => joints[j].IsPanelPoint)];
        for (int i = 1; i < listed.Length; i++)
        {
            if (joints[listed[i]].X < joints[listed[i - 1]].X - tolerance)
            {
                faults.Add(new TrussFault.PanelPointsOutOfOrder(listed[i], listed[i - 1]));
            }
        }

        int[] ordered = PanelPointsInOrder();
        for (int i = 1; i < ordered.Length; i++)
        {
            (int left, int right) = (ordered[i - 1], ordered[i]);
            if (joints[right].X - joints[left].X <= tolerance)
            {
                faults.Add(new TrussFault.PanelPointsAbove(Math.Max(left, right), Math.Min(left, right)));
                continue;
            }

            for (int j = 0; j < joints.Count; j++)
            {
                if (!joints[j].IsPanelPoint && LiesBetween(joints[left], joints[right], joints[j]))
                {
                    faults.Add(new TrussFault.DeckJointSkipped(j, left, right));
                }
            }
        }

        for (int j = 0; j < joints.Count && ordered.Length > 0; j++)
        {
            if (joints[j].Support is null)
            {
                continue;
            }

            if (joints[j].X < joints[ordered[0]].X - tolerance)
            {
                faults.Add(new TrussFault.DeckEndsShort(j, ordered[0]));
            }
            else if (joints[j].X > joints[ordered[^1]].X + tolerance)
            {
                faults.Add(new TrussFault.DeckEndsShort(j, ordered[^1]));
            }
        }
    }
}
