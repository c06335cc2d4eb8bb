namespace SpanRater;

/// <summary>
/// The second route to the forces of a determinate truss, as a person works it: reactions first, then joint after joint with
/// at most two unknown forces, each equation holding one of them alone. Where no joint is left with two, a section cuts off a part of the
/// truss through at most three unknown forces; where none helps, the smallest group of joints is solved together. It shares the
/// unit vectors of the members with the whole-truss solution and nothing else: no matrix, no factors, no library. The order
/// depends on the truss alone, so it is found once and followed for every load; a worked solution tells it.
/// </summary>
internal sealed class JointRoute
{
    /// <summary>Groups of joints up to this many are tried before all that are left are taken together.</summary>
    private const int LargestGroup = 4;

    /// <summary>Equilibrium of a part of the truss finds no more than three forces.</summary>
    private const int LargestCut = 3;

    private readonly Truss truss;
    private readonly EquilibriumSystem equilibrium;
    private readonly bool[] known;
    private readonly SortedSet<int> unsolved;
    private readonly List<RouteStep> steps = [];

    private JointRoute(Truss truss, EquilibriumSystem equilibrium)
    {
        this.truss = truss;
        this.equilibrium = equilibrium;
        Terms = new JointTerms(truss, equilibrium);
        known = new bool[equilibrium.Columns];
        unsolved = [.. Enumerable.Range(0, truss.Joints.Count)];
    }

    /// <summary>The steps in the order of the work.</summary>
    public IReadOnlyList<RouteStep> Steps => steps;

    /// <summary>The joints of each step after the reactions and between sections, in the order of the work.</summary>
    public IEnumerable<IReadOnlyList<int>> Order => steps.Where(s => s.Kind is StepKind.Joint or StepKind.Group).Select(s => s.Joints);

    /// <summary>The forces at each joint.</summary>
    public JointTerms Terms { get; }

    /// <summary>Finds an order; null where none is found, though the truss is determinate.</summary>
    public static JointRoute? Of(Truss truss, EquilibriumSystem equilibrium)
    {
        var route = new JointRoute(truss, equilibrium);
        return route.FindOrder() ? route : null;
    }

    /// <summary>All unknowns, members first, then reaction components, for joint loads (x, then y, of each joint).</summary>
    public double[] Solve(ReadOnlySpan<double> loads)
    {
        var forces = new double[equilibrium.Columns];
        foreach (RouteStep step in steps)
        {
            foreach (RouteStage stage in step.Stages)
            {
                var right = new double[stage.Balances.Length];
                for (int e = 0; e < right.Length; e++)
                {
                    // What this stage is about to find is still zero here.
                    right[e] = -stage.Balances[e].Sum(truss, loads, forces);
                }

                double[] found = stage.System.Solve(right);
                for (int u = 0; u < found.Length; u++)
                {
                    forces[stage.Forces[u]] = found[u];
                }
            }
        }

        return forces;
    }

    private bool FindOrder()
    {
        _ = TryWholeTruss();
        int last = 0;
        while (known.Contains(false))
        {
            if (TryNextJoint(last))
            {
                last = steps[^1].Joints[0];
            }
            else if (!TryWholeTruss() && !TrySection() && !TryPartOfAJoint() && !TryGroup())
            {
                return false;
            }
        }

        return true;
    }

    private List<int> UnknownAt(int joint) => [.. Terms[joint].Select(t => t.Force).Where(f => !known[f])];

    // Of the joints with one or two unknowns that can be told apart, one beside those already done if there is one, and the
    // nearest to the last: a person works along the truss, and goes to the other end where it goes no further.
    private bool TryNextJoint(int last)
    {
        Joint from = truss.Joints[last];
        WaitingJoint[] waiting = [];
        bool started = steps.Exists(s => s.Kind is StepKind.Joint or StepKind.Group);
        if (started)
        {
            waiting = [.. Neighbours(last).Where(unsolved.Contains).Select(Waiting).OfType<WaitingJoint>()];
        }

        foreach (int joint in unsolved
            .OrderBy(j => started && !IsBesideTheDone(j) ? 1 : 0)
            .ThenBy(j => Math.Round(double.Hypot(truss.Joints[j].X - from.X, truss.Joints[j].Y - from.Y) / Terms.Size, 9)))
        {
            List<int> unknowns = UnknownAt(joint);
            if (unknowns.Count is 0 or > 2)
            {
                continue;
            }

            List<RouteStage> stages = OneByOne.Of(StepKind.Joint, new FreeBody(truss, Terms, [joint]), unknowns);
            if (stages.Count == unknowns.Count)
            {
                bool afresh = started && !IsBesideTheDone(joint);
                Add(new RouteStep(StepKind.Joint, [joint], Unknown(stages, unknowns), [.. stages], waiting, afresh));
                return true;
            }
        }

        return false;
    }

    // Three unknown forces or more, all but one in one line: the sum square to that line finds the one, and the joint is done later.
    private bool TryPartOfAJoint()
    {
        foreach (int joint in unsolved)
        {
            List<int> unknowns = UnknownAt(joint);
            if (unknowns.Count > 2 && OneByOne.Of(StepKind.Joint, new FreeBody(truss, Terms, [joint]), unknowns) is { Count: > 0 } stages)
            {
                Add(new RouteStep(StepKind.Joint, [joint], Unknown(stages, unknowns), [.. stages], AllWaiting(), IsAfresh: false));
                return true;
            }
        }

        return false;
    }

    private static int[] Unknown(List<RouteStage> stages, IEnumerable<int> all) => [.. stages.SelectMany(s => s.Forces).Union(all)];

    private WaitingJoint? Waiting(int joint)
    {
        List<int> unknowns = UnknownAt(joint);
        bool cannot = unknowns.Count > 2
            || (unknowns.Count == 2 && OneByOne.Of(StepKind.Joint, new FreeBody(truss, Terms, [joint]), unknowns).Count < 2);
        return cannot ? new WaitingJoint(joint, unknowns) : null;
    }

    private IEnumerable<int> Neighbours(int joint) =>
        Terms[joint].Where(t => t.Force < truss.Members.Count)
            .Select(t => truss.FromJoint(t.Force) == joint ? truss.ToJoint(t.Force) : truss.FromJoint(t.Force));

    private bool IsBesideTheDone(int joint) => Neighbours(joint).Any(n => !unsolved.Contains(n));

    private bool TryWholeTruss()
    {
        int[] unknowns = [.. Enumerable.Range(truss.Members.Count, equilibrium.Reactions.Count).Where(f => !known[f])];
        if (unknowns.Length == 0)
        {
            return false;
        }

        List<RouteStage> stages = OneByOne.Of(StepKind.WholeTruss, new FreeBody(truss, Terms, Enumerable.Range(0, truss.Joints.Count)), unknowns);
        if (stages.Count == 0)
        {
            return false;
        }

        Add(new RouteStep(StepKind.WholeTruss, [.. Enumerable.Range(0, truss.Joints.Count)], Unknown(stages, unknowns), [.. stages], [], IsAfresh: false));
        return true;
    }

    // The cut through the fewest unknown forces that finds one of them; of those the one that finds most, then the smallest part.
    private bool TrySection()
    {
        int ground = truss.Joints.Count;
        int[] unknowns = [.. Enumerable.Range(0, known.Length).Where(f => !known[f])];
        var cuts = new Cuts(
            ground + 1,
            [.. unknowns.Select(f => f < truss.Members.Count ? (truss.FromJoint(f), truss.ToJoint(f)) : (equilibrium.Reactions[f - truss.Members.Count].Joint, ground))]);
        for (int size = 1; size <= LargestCut; size++)
        {
            RouteStep? best = null;
            foreach (Cut cut in cuts.Of(size))
            {
                int[] forces = [.. cut.Edges.Select(e => unknowns[e])];
                int[] side = cut.Side.Contains(ground) || (!cut.Other.Contains(ground) && cut.Other.Length < cut.Side.Length) ? cut.Other : cut.Side;
                if (side.Length == 1)
                {
                    // A joint alone is no section.
                    continue;
                }

                int[] part = WithTheDone(side, side == cut.Side ? cut.Other : cut.Side, forces);
                List<RouteStage> stages = OneByOne.Of(StepKind.Section, new FreeBody(truss, Terms, part), forces);
                if (stages.Count > 0 && (best is null || (-stages.Count, part.Length).CompareTo((-best.Stages.Length, best.Joints.Length)) < 0))
                {
                    best = new RouteStep(StepKind.Section, part, Unknown(stages, forces), [.. stages], AllWaiting(), IsAfresh: false);
                }
            }

            if (best is not null)
            {
                Add(best);
                return true;
            }
        }

        return false;
    }

    // The part as a person draws it, with the joints that are done already, where members join them to it and not to the rest.
    private int[] WithTheDone(int[] side, int[] other, int[] cut)
    {
        var part = new SortedSet<int>(side);
        var open = new Stack<int>(side);
        while (open.TryPop(out int joint))
        {
            foreach ((int force, _, _) in Terms[joint].Where(t => t.Force < truss.Members.Count && !cut.Contains(t.Force)))
            {
                int next = truss.FromJoint(force) == joint ? truss.ToJoint(force) : truss.FromJoint(force);
                if (other.Contains(next))
                {
                    return side;
                }

                if (part.Add(next))
                {
                    open.Push(next);
                }
            }
        }

        return [.. part];
    }

    private bool TryGroup()
    {
        for (int size = 2; size <= LargestGroup; size++)
        {
            foreach (int[] group in ConnectedGroups(size))
            {
                if (TryTogether(group))
                {
                    return true;
                }
            }
        }

        return TryTogether([.. unsolved]);
    }

    private bool TryTogether(int[] joints)
    {
        Balance[] balances = [.. joints.SelectMany(j => (Balance[])[new FreeBody(truss, Terms, [j]).Right(), new FreeBody(truss, Terms, [j]).Up()])];
        int[] unknowns = [.. balances.SelectMany(b => b.Terms).Select(t => t.Force).Where(f => !known[f]).Distinct()];
        if (unknowns.Length == 0 || unknowns.Length > balances.Length)
        {
            return false;
        }

        var coefficients = new double[balances.Length, unknowns.Length];
        for (int e = 0; e < balances.Length; e++)
        {
            foreach (BalanceTerm term in balances[e].Terms)
            {
                int column = Array.IndexOf(unknowns, term.Force);
                if (column >= 0)
                {
                    coefficients[e, column] += term.Coefficient;
                }
            }
        }

        if (Elimination.Of(coefficients) is not { } system)
        {
            return false;
        }

        Add(new RouteStep(StepKind.Group, joints, unknowns, [new RouteStage(unknowns, [.. system.Rows.Select(r => balances[r])], system)], AllWaiting(), IsAfresh: false));
        return true;
    }

    private WaitingJoint[] AllWaiting() => [.. unsolved.Select(Waiting).OfType<WaitingJoint>()];

    private void Add(RouteStep step)
    {
        steps.Add(step);
        foreach (int force in step.Stages.SelectMany(s => s.Forces))
        {
            known[force] = true;
        }

        if (step.Kind is StepKind.Joint or StepKind.Group)
        {
            unsolved.ExceptWith(step.Joints.Where(j => UnknownAt(j).Count == 0));
        }
    }

    private IEnumerable<int[]> ConnectedGroups(int size)
    {
        Dictionary<int, int[]> neighbours = unsolved.ToDictionary(j => j, j => Neighbours(j).Where(unsolved.Contains).Order().ToArray());
        return unsolved.SelectMany(first => Grow([first], first, size, neighbours));
    }

    // Every group is grown from its lowest joint, so that none of another start comes twice.
    private static IEnumerable<int[]> Grow(int[] group, int lowest, int size, Dictionary<int, int[]> neighbours)
    {
        if (group.Length == size)
        {
            return [group];
        }

        return group.SelectMany(j => neighbours[j]).Where(j => j > lowest && !group.Contains(j)).Distinct()
            .SelectMany(next => Grow([.. group, next], lowest, size, neighbours));
    }
}
