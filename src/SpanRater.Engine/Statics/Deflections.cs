namespace SpanRater;

/// <summary>
/// Deflections of the panel points by virtual work: <c>δ = Σ n N L/(E A) − Σ r d</c>, with the forces N of the load, the forces
/// n and reactions r of a unit load at the panel point, and the movements d of supports. Each is found a second time from the
/// stiffness of the whole truss, and refused where the two differ. Source: the method of work, as in J. C. Maxwell (1864) and
/// any text on structures.
/// </summary>
public sealed class Deflections
{
    /// <summary>Deflections by the two routes that differ by more than this part of the largest refuse the result [-]: the stiffness of a long truss loses digits that virtual work keeps.</summary>
    public const double RouteLimit = 1e-7;

    private Deflections(IReadOnlyList<int> joints, IReadOnlyList<double> downward, ForceSolution forces)
    {
        Joints = joints;
        Downward = downward;
        Forces = forces;
    }

    /// <summary>Positions of the joints in <see cref="Truss.Joints"/>.</summary>
    public IReadOnlyList<int> Joints { get; }

    /// <summary>Deflection of each joint, down positive [m].</summary>
    public IReadOnlyList<double> Downward { get; }

    /// <summary>The forces of the load.</summary>
    public ForceSolution Forces { get; }

    /// <summary>Deflections of the panel points under a case.</summary>
    /// <param name="truss">The truss; of its members those that carry force need an area.</param>
    /// <param name="loads">The case.</param>
    public static Outcome<Deflections> Under(Truss truss, LoadCase loads)
    {
        ArgumentNullException.ThrowIfNull(truss);
        ArgumentNullException.ThrowIfNull(loads);
        if (!SolvableTruss.Of(truss).TryGet(out SolvableTruss? system, out Refusal? refusal)
            || !system.Solve(loads).TryGet(out ForceSolution? forces, out refusal)
            || !FlexibleTruss.Of(system, forces).TryGet(out FlexibleTruss? flexible, out refusal))
        {
            return refusal;
        }

        return flexible.Under(loads, truss.PanelPoints).TryGet(out double[]? downward, out refusal)
            ? new Deflections([.. truss.PanelPoints], downward, forces)
            : refusal;
    }

    /// <summary>
    /// Influence lines of deflection, one a panel point: its deflection for a unit downward load at each [m/N]. By reciprocity the
    /// table of their ordinates is symmetric. Of a truss with rods, while those act that act under a case.
    /// </summary>
    /// <param name="truss">The truss; every member that acts needs an area.</param>
    /// <param name="rodsUnder">The case that says which rods act; null in a truss without rods.</param>
    public static Outcome<DeflectionLines> Lines(Truss truss, LoadCase? rodsUnder)
    {
        ArgumentNullException.ThrowIfNull(truss);
        if (truss.PanelPoints.Count < 2)
        {
            return new Refusal.NoDeck(truss.PanelPoints.Count);
        }

        return Flexibilities(truss, rodsUnder, truss.PanelPoints).TryGet(out FlexibilityTable? table, out Refusal? refusal)
            ? new DeflectionLines(
                [
                    .. truss.PanelPoints.Select((p, i) =>
                        new InfluenceEffect($"{truss.Joints[p].Name} down", EffectKind.Deflection, new InfluenceLine(truss.Stations, table.Values[i]))),
                ],
                table.Slack)
            : refusal;
    }

    /// <summary>Deflection of each joint for a unit downward load at each other.</summary>
    internal static Outcome<FlexibilityTable> Flexibilities(Truss truss, LoadCase? rodsUnder, IReadOnlyList<int> joints)
    {
        if (!SolvableTruss.Of(truss).TryGet(out SolvableTruss? system, out Refusal? refusal))
        {
            return refusal;
        }

        ForceSolution? forces = null;
        if (system is RodTruss && (rodsUnder is null || !system.Solve(rodsUnder).TryGet(out forces, out refusal)))
        {
            return refusal ?? new Refusal.NoDeadLoad();
        }

        if (!FlexibleTruss.Of(system, forces).TryGet(out FlexibleTruss? flexible, out refusal))
        {
            return refusal;
        }

        var table = new double[joints.Count][];
        for (int i = 0; i < joints.Count; i++)
        {
            var unit = new LoadCase($"a unit load at {truss.Joints[joints[i]].Name}", [new JointLoad(truss.Joints[joints[i]].Name, 0, -1)]);
            if (!flexible.Under(unit, joints).TryGet(out double[]? downward, out refusal))
            {
                return refusal;
            }

            table[i] = downward;
        }

        return new FlexibilityTable(table, forces is null ? null : ((RodTruss)system).SlackUnder(forces));
    }
}

/// <summary>Influence lines of deflection.</summary>
/// <param name="Effects">One a panel point, down positive [m/N].</param>
/// <param name="Slack">Positions of the members that only pull and are taken as slack; null where the truss has none.</param>
public sealed record DeflectionLines(IReadOnlyList<InfluenceEffect> Effects, IReadOnlyList<int>? Slack);

/// <summary>Deflection of joints for unit downward loads on joints [m/N], and the rods taken as slack.</summary>
internal sealed record FlexibilityTable(double[][] Values, IReadOnlyList<int>? Slack);
