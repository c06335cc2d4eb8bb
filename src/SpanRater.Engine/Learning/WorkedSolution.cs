namespace SpanRater;

/// <summary>Equations solved at once, and the forces that they find. Only a group of joints has more than one.</summary>
/// <param name="Balances">The equations.</param>
/// <param name="Found">The forces found, by position in <see cref="ForceNames"/>; as many as equations.</param>
public sealed record WorkedEquations(IReadOnlyList<Balance> Balances, IReadOnlyList<int> Found);

/// <summary>One step of a worked solution: a free body and its equations in the order in which they are taken.</summary>
/// <param name="Kind">What is cut free.</param>
/// <param name="Joints">Joints of the free body, by position in <see cref="Truss.Joints"/>.</param>
/// <param name="Equations">Its equations; each but those of a group holds one unknown force.</param>
/// <param name="Unknown">Forces on the body that were not known before: those it finds, in order, and those it leaves.</param>
/// <param name="Known">Forces on the body that were known before, by position in <see cref="ForceNames"/>.</param>
/// <param name="Waiting">Joints put off: those beside the last one worked at; where no joint can be solved whole, every joint that is left.</param>
/// <param name="IsAfresh">True where the work goes on away from the joints already done, at the other end.</param>
/// <param name="ZeroByRule">Members found here that a rule gives as zero at a glance.</param>
public sealed record WorkedStep(
    StepKind Kind,
    IReadOnlyList<int> Joints,
    IReadOnlyList<WorkedEquations> Equations,
    IReadOnlyList<int> Unknown,
    IReadOnlyList<int> Known,
    IReadOnlyList<WaitingJoint> Waiting,
    bool IsAfresh,
    IReadOnlyList<ZeroMember> ZeroByRule)
{
    /// <summary>The forces found, in the order in which they are found.</summary>
    public IEnumerable<int> Found => Equations.SelectMany(e => e.Found);
}

/// <summary>An equation that no step needed, which closes the solution.</summary>
/// <param name="Balance">The equation.</param>
/// <param name="Residual">What the forces found leave of it [N].</param>
public sealed record ClosingEquation(Balance Balance, double Residual);

/// <summary>
/// The forces of a determinate truss under one load case, worked as on paper: every step, every equation, and the equations left over, which
/// must close. It tells the order of the joint-by-joint route and finds no other. Immutable.
/// </summary>
public sealed class WorkedSolution
{
    private WorkedSolution(DeterminateTruss system, LoadCase loads, ForceSolution solution, string[] slack)
    {
        Truss truss = system.Truss;
        double[] joint = system.JointLoadsOf(loads);
        Slack = slack;
        Truss = truss;
        Loads = loads;
        Stability = system.Stability;
        Solution = solution;
        Names = new ForceNames(truss, new EquilibriumSystem(truss));
        double[] forces = system.Route.Solve(joint);
        double roundOff = 1e-12 * joint.Max(Math.Abs);
        for (int f = 0; f < forces.Length; f++)
        {
            forces[f] = Math.Abs(forces[f]) <= roundOff ? 0 : forces[f];
        }

        Forces = forces;
        JointLoads = [.. truss.Joints.Select((_, j) => (joint[2 * j] + 0.0, joint[(2 * j) + 1] + 0.0))];
        ZeroMembers = SpanRater.ZeroMembers.Of(truss, JointLoads);
        Steps = StepsOf(system.Route);
        LeftOver = [.. ClosingBalances(system.Route).Select(b => new ClosingEquation(b, b.Sum(truss, joint, forces)))];
        double largest = Math.Max(forces.Max(Math.Abs), joint.Max(Math.Abs));
        LargestResidual = largest == 0 ? 0 : LeftOver.Select(e => Math.Abs(e.Residual)).Append(0).Max() / largest;
    }

    /// <summary>The truss that is worked: without the rods that stay slack.</summary>
    public Truss Truss { get; }

    /// <summary>Names of the members that only pull and stay slack under this load; they are left out.</summary>
    public IReadOnlyList<string> Slack { get; }

    /// <summary>The loads.</summary>
    public LoadCase Loads { get; }

    /// <summary>Count and rank.</summary>
    public Stability Stability { get; }

    /// <summary>The same forces from the whole truss at once.</summary>
    public ForceSolution Solution { get; }

    /// <summary>Names and directions of the forces.</summary>
    public ForceNames Names { get; }

    /// <summary>Every force as the steps find it, members first, tension positive, then reaction components [N].</summary>
    public IReadOnlyList<double> Forces { get; }

    /// <summary>Load to the right and upward at each joint, all loads of the case on it summed [N].</summary>
    public IReadOnlyList<(double Right, double Up)> JointLoads { get; }

    /// <summary>Members that are zero by a rule, in the order in which the rules find them.</summary>
    public IReadOnlyList<ZeroMember> ZeroMembers { get; }

    /// <summary>The steps in the order of the work.</summary>
    public IReadOnlyList<WorkedStep> Steps { get; }

    /// <summary>The equations left over.</summary>
    public IReadOnlyList<ClosingEquation> LeftOver { get; }

    /// <summary>Largest residual of the equations left over, over the largest force or load [-].</summary>
    public double LargestResidual { get; }

    /// <summary>Works the truss under a load case, or says why statics alone cannot.</summary>
    /// <param name="truss">The truss.</param>
    /// <param name="loads">The loads; their joints must be joints of the truss.</param>
    /// <exception cref="ArgumentException">A load names a joint that the truss does not have.</exception>
    public static Outcome<WorkedSolution> Of(Truss truss, LoadCase loads)
    {
        ArgumentNullException.ThrowIfNull(truss);
        ArgumentNullException.ThrowIfNull(loads);
        return truss.Members.Any(m => m.TensionOnly) ? WithRods(truss, loads) : Of(truss, loads, []);
    }

    /// <summary>Works the truss with a set of rods left out, whatever the load would do with the others, as the lines of that set are.</summary>
    /// <param name="truss">The truss.</param>
    /// <param name="loads">The loads; their joints must be joints of the truss.</param>
    /// <param name="slack">Positions of the members left out; empty for none.</param>
    /// <exception cref="ArgumentException">A load names a joint that the truss does not have.</exception>
    public static Outcome<WorkedSolution> OfSet(Truss truss, LoadCase loads, IReadOnlyList<int> slack)
    {
        ArgumentNullException.ThrowIfNull(truss);
        ArgumentNullException.ThrowIfNull(loads);
        ArgumentNullException.ThrowIfNull(slack);
        return Of(truss.Without([.. slack]), loads, [.. slack.Order().Select(m => truss.Members[m].Name)]);
    }

    // Which rods pull is found first; the truss without the others is worked.
    private static Outcome<WorkedSolution> WithRods(Truss truss, LoadCase loads)
    {
        if (!RodTruss.Of(truss).TryGet(out RodTruss? rods, out Refusal? refusal) || !rods.Solve(loads).TryGet(out ForceSolution? forces, out refusal))
        {
            return refusal;
        }

        IReadOnlyList<int> slack = rods.SlackUnder(forces);
        Outcome<WorkedSolution> outcome = Of(truss.Without(slack), loads, [.. slack.Order().Select(m => truss.Members[m].Name)]);

        // A refusal names members by their place in the truss that was asked for.
        return outcome.Refusal is Refusal.Redundant ? new Refusal.Redundant(Stability.Of(truss)) : outcome;
    }

    private static Outcome<WorkedSolution> Of(Truss truss, LoadCase loads, string[] slack)
    {
        if (!DeterminateTruss.Of(truss).TryGet(out DeterminateTruss? system, out Refusal? refusal))
        {
            return refusal;
        }

        return system.Solve(loads).TryGet(out ForceSolution? solution, out refusal) ? new WorkedSolution(system, loads, solution, slack) : refusal;
    }

    private List<WorkedStep> StepsOf(JointRoute route)
    {
        var known = new HashSet<int>();
        var steps = new List<WorkedStep>();
        foreach (RouteStep step in route.Steps)
        {
            int[] found = [.. step.Stages.SelectMany(s => s.Forces)];
            IEnumerable<int> onBody = step.Kind == StepKind.Group
                ? step.Joints.SelectMany(j => route.Terms[j].Select(t => t.Force)).Distinct()
                : new FreeBody(Truss, route.Terms, step.Joints).Forces;
            steps.Add(new WorkedStep(
                step.Kind,
                step.Joints,
                [.. step.Stages.Select(s => new WorkedEquations(s.Balances, s.Forces))],
                step.Unknown,
                [.. onBody.Where(known.Contains)],
                step.Waiting,
                step.IsAfresh,
                step.Kind == StepKind.Joint ? [.. ZeroMembers.Where(z => z.Joint == step.Joints[0] && found.Contains(z.Member))] : []));
            known.UnionWith(found);
        }

        return steps;
    }

    // Of the two sums of each joint, those that no step has taken; where one was taken on turned axes, the plain sum that differs from it most.
    private List<Balance> ClosingBalances(JointRoute route)
    {
        ILookup<int, Balance> taken = route.Steps.Where(s => s.Kind is StepKind.Joint or StepKind.Group)
            .SelectMany(s => s.Stages).SelectMany(s => s.Balances).ToLookup(b => b.Joints[0]);
        var closing = new List<Balance>();
        for (int j = 0; j < Truss.Joints.Count; j++)
        {
            var body = new FreeBody(Truss, route.Terms, [j]);
            Balance[] used = [.. taken[j]];
            if (used.Length == 0)
            {
                closing.AddRange([body.Right(), body.Up()]);
            }
            else if (used.Length == 1)
            {
                closing.Add(Math.Abs(used[0].X) > Math.Abs(used[0].Y) ? body.Up() : body.Right());
            }
        }

        return closing;
    }
}
