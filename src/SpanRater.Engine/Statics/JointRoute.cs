namespace SpanRater;

/// <summary>
/// The second route to the forces of a determinate truss, as a person works it: reactions first, then joint after joint with
/// at most two unknown forces, and only where no joint is left with two, the smallest group of joints together. It shares the
/// unit vectors of the members with the whole-truss solution and nothing else: no matrix, no factors, no library. The order
/// depends on the truss alone, so it is found once and followed for every load.
/// </summary>
internal sealed class JointRoute
{
    /// <summary>Groups of joints up to this many are tried before all that are left are taken together.</summary>
    private const int LargestGroup = 4;

    private readonly Truss truss;
    private readonly EquilibriumSystem equilibrium;
    private readonly List<Step> steps = [];

    private JointRoute(Truss truss, EquilibriumSystem equilibrium)
    {
        this.truss = truss;
        this.equilibrium = equilibrium;
    }

    /// <summary>The joints of each step after the reactions, in the order of the work.</summary>
    public IEnumerable<IReadOnlyList<int>> Order => steps.Where(s => s.Joints.Length > 0).Select(s => s.Joints);

    /// <summary>Finds an order; null where none is found, though the truss is determinate.</summary>
    public static JointRoute? Of(Truss truss, EquilibriumSystem equilibrium)
    {
        var route = new JointRoute(truss, equilibrium);
        return route.FindOrder() ? route : null;
    }

    /// <summary>All unknowns, members first, then reaction components, for joint loads (x, then y, of each joint).</summary>
    public double[] Solve(ReadOnlySpan<double> loads)
    {
        var unknowns = new double[equilibrium.Columns];
        foreach (Step step in steps)
        {
            var right = new double[step.Equations.Length];
            for (int e = 0; e < right.Length; e++)
            {
                right[e] = -step.Equations[e].Load(loads);
                foreach ((int unknown, double coefficient) in step.Equations[e].Terms)
                {
                    // What this step is about to find is still zero here.
                    right[e] -= coefficient * unknowns[unknown];
                }
            }

            double[] found = step.System.Solve(right);
            for (int u = 0; u < found.Length; u++)
            {
                unknowns[step.Unknowns[u]] = found[u];
            }
        }

        return unknowns;
    }

    private bool FindOrder()
    {
        var known = new bool[equilibrium.Columns];
        if (equilibrium.Reactions.Count == 3)
        {
            _ = TryAdd([], WholeTruss(), known);
        }

        var unsolved = new SortedSet<int>(Enumerable.Range(0, truss.Joints.Count));
        int last = 0;
        while (known.Contains(false))
        {
            int[]? next = NextJoint(unsolved, known, last) ?? NextGroup(unsolved, known);
            if (next is null)
            {
                return false;
            }

            foreach (int joint in next)
            {
                unsolved.Remove(joint);
                last = joint;
            }
        }

        return true;
    }

    // Of the joints with one or two unknowns that can be told apart, the one nearest to the last: a person works along the truss.
    private int[]? NextJoint(SortedSet<int> unsolved, bool[] known, int last)
    {
        Joint from = truss.Joints[last];
        foreach (int joint in unsolved.OrderBy(j => double.Hypot(truss.Joints[j].X - from.X, truss.Joints[j].Y - from.Y)))
        {
            if (TryAdd([joint], EquationsOf([joint]), known))
            {
                return [joint];
            }
        }

        return null;
    }

    private int[]? NextGroup(SortedSet<int> unsolved, bool[] known)
    {
        for (int size = 2; size <= LargestGroup; size++)
        {
            foreach (int[] group in ConnectedGroups(unsolved, size))
            {
                if (TryAdd(group, EquationsOf(group), known))
                {
                    return group;
                }
            }
        }

        int[] rest = [.. unsolved];
        return TryAdd(rest, EquationsOf(rest), known) ? rest : null;
    }

    private bool TryAdd(int[] joints, List<Equation> equations, bool[] known)
    {
        int[] unknowns = [.. equations.SelectMany(e => e.Terms).Select(t => t.Unknown).Where(u => !known[u]).Distinct()];
        if (unknowns.Length == 0 || unknowns.Length > equations.Count)
        {
            return false;
        }

        var coefficients = new double[equations.Count, unknowns.Length];
        for (int e = 0; e < equations.Count; e++)
        {
            foreach ((int unknown, double coefficient) in equations[e].Terms)
            {
                int column = Array.IndexOf(unknowns, unknown);
                if (column >= 0)
                {
                    coefficients[e, column] += coefficient;
                }
            }
        }

        if (Elimination.Of(coefficients) is not { } system)
        {
            return false;
        }

        steps.Add(new Step(joints, unknowns, [.. system.Rows.Select(r => equations[r])], system));
        foreach (int unknown in unknowns)
        {
            known[unknown] = true;
        }

        return true;
    }

    private List<Equation> EquationsOf(int[] joints)
    {
        var equations = new List<Equation>();
        foreach (int joint in joints)
        {
            equations.Add(new Equation([.. equilibrium.TermsAt(joint).Where(t => t.X != 0).Select(t => (t.Unknown, t.X))], [(2 * joint, 1)]));
            equations.Add(new Equation([.. equilibrium.TermsAt(joint).Where(t => t.Y != 0).Select(t => (t.Unknown, t.Y))], [((2 * joint) + 1, 1)]));
        }

        return equations;
    }

    // Sums to the right and upward, and moments about the first supported joint. Members cancel.
    private List<Equation> WholeTruss()
    {
        Joint about = truss.Joints[equilibrium.Reactions[0].Joint];
        var right = new Equation([], []);
        var up = new Equation([], []);
        var moment = new Equation([], []);
        for (int r = 0; r < 3; r++)
        {
            EquilibriumSystem.ReactionComponent reaction = equilibrium.Reactions[r];
            Joint at = truss.Joints[reaction.Joint];
            right.Terms.Add((truss.Members.Count + r, reaction.X));
            up.Terms.Add((truss.Members.Count + r, reaction.Y));
            moment.Terms.Add((truss.Members.Count + r, ((at.X - about.X) * reaction.Y) - ((at.Y - about.Y) * reaction.X)));
        }

        for (int j = 0; j < truss.Joints.Count; j++)
        {
            right.Loads.Add((2 * j, 1));
            up.Loads.Add(((2 * j) + 1, 1));
            moment.Loads.Add((2 * j, about.Y - truss.Joints[j].Y));
            moment.Loads.Add(((2 * j) + 1, truss.Joints[j].X - about.X));
        }

        return [right, up, moment];
    }

    private IEnumerable<int[]> ConnectedGroups(SortedSet<int> unsolved, int size)
    {
        var neighbours = unsolved.ToDictionary(j => j, _ => new SortedSet<int>());
        for (int m = 0; m < truss.Members.Count; m++)
        {
            if (neighbours.TryGetValue(truss.FromJoint(m), out SortedSet<int>? from) && neighbours.TryGetValue(truss.ToJoint(m), out SortedSet<int>? to))
            {
                from.Add(truss.ToJoint(m));
                to.Add(truss.FromJoint(m));
            }
        }

        return unsolved.SelectMany(first => Grow([first], first, size, neighbours));
    }

    // Every group is grown from its lowest joint, so that none of another start comes twice.
    private static IEnumerable<int[]> Grow(int[] group, int lowest, int size, Dictionary<int, SortedSet<int>> neighbours)
    {
        if (group.Length == size)
        {
            return [group];
        }

        return group.SelectMany(j => neighbours[j]).Where(j => j > lowest && !group.Contains(j)).Distinct()
            .SelectMany(next => Grow([.. group, next], lowest, size, neighbours));
    }

    /// <summary>One equation of equilibrium: its unknown forces and the loads that enter it, each with its factor.</summary>
    private sealed record Equation(List<(int Unknown, double Coefficient)> Terms, List<(int Component, double Factor)> Loads)
    {
        public double Load(ReadOnlySpan<double> loads)
        {
            double sum = 0;
            foreach ((int component, double factor) in Loads)
            {
                sum += factor * loads[component];
            }

            return sum;
        }
    }

    /// <summary>What is found at once: the joints worked at (none for the reactions), the unknowns, and the equations taken for them.</summary>
    private sealed record Step(int[] Joints, int[] Unknowns, Equation[] Equations, Elimination System);
}
