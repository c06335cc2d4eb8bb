namespace SpanRater;

/// <summary>How a member of a redundant truss takes its part of a unit load: its stretch times its stiffness.</summary>
/// <param name="Stiffness">E·A/L [N/m].</param>
/// <param name="IsStandIn">Whether its area is not given and the mean of the others stands in: its force does not depend on it.</param>
/// <param name="Stretch">How much longer it becomes under a downward load of 1 N [m].</param>
public readonly record struct UnitStretch(double Stiffness, bool IsStandIn, double Stretch)
{
    /// <summary>Force for the unit load, tension positive [-].</summary>
    public double Force => Stiffness * Stretch;
}

/// <summary>
/// The joint displacements of a redundant truss under a downward unit load, and the force of each member from them. The displacements are those under
/// which every joint is in balance; this is the second of the two routes by which the forces of a redundant truss are found.
/// Source: the displacement method, any text on structures.
/// </summary>
/// <param name="Truss">The truss that is worked: without the members left out.</param>
/// <param name="Displacements">Displacement of each joint to the right and upward [m/N].</param>
/// <param name="Members">A stretch a member, in the order of the truss that is worked.</param>
public sealed record UnitStretches(Truss Truss, IReadOnlyList<(double Right, double Up)> Displacements, IReadOnlyList<UnitStretch> Members)
{
    /// <summary>Works the truss, or says why it has no such solution.</summary>
    /// <param name="truss">The truss.</param>
    /// <param name="joint">Position of the joint that bears the load.</param>
    /// <param name="slack">Positions of the members left out; empty for none.</param>
    /// <exception cref="ArgumentOutOfRangeException">The position is not that of a joint.</exception>
    public static Outcome<UnitStretches> Of(Truss truss, int joint, IReadOnlyList<int> slack)
    {
        ArgumentNullException.ThrowIfNull(truss);
        ArgumentNullException.ThrowIfNull(slack);
        ArgumentOutOfRangeException.ThrowIfNegative(joint);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(joint, truss.Joints.Count);
        Truss acting = truss.Without([.. slack]);
        if (!LinearTruss.Of(acting).TryGet(out LinearTruss? system, out Refusal? refusal))
        {
            return refusal;
        }

        double[] moved = system.Displacements(new LoadCase("unit load", [new JointLoad(acting.Joints[joint].Name, 0, -1)]));
        double?[] flexibilities = [.. Enumerable.Range(0, acting.Members.Count).Select(acting.Flexibility)];
        double mean = flexibilities.OfType<double>().DefaultIfEmpty(1).Average();
        return new UnitStretches(
            acting,
            [.. acting.Joints.Select((_, j) => (moved[2 * j], moved[(2 * j) + 1]))],
            [.. flexibilities.Select((f, m) => new UnitStretch(1 / (f ?? mean), f is null, StiffnessRoute.Stretch(acting, m, moved)))]);
    }
}
