namespace SpanRater;

/// <summary>The ways in which the forces on a free body are summed.</summary>
public enum BalanceKind
{
    /// <summary>Sum to the right.</summary>
    Right,

    /// <summary>Sum upward.</summary>
    Up,

    /// <summary>Sum square to one force, in which that force has no part: the axes turned.</summary>
    Across,

    /// <summary>Sum of moments about a centre, anticlockwise positive.</summary>
    Moment,
}

/// <summary>An unknown force in an equation.</summary>
/// <param name="Force">Position of the force in <see cref="ForceNames"/>: members first, then reaction components.</param>
/// <param name="Joint">Joint of the free body at which it acts, by position in <see cref="Truss.Joints"/>.</param>
/// <param name="Coefficient">What one newton of it adds to the sum: [-], or [m] in a sum of moments.</param>
public readonly record struct BalanceTerm(int Force, int Joint, double Coefficient);

/// <summary>One equation of equilibrium of a free body: the whole truss, a part of it, or one joint.</summary>
/// <param name="Kind">How the forces are summed.</param>
/// <param name="Joints">The joints of the body, by position in <see cref="Truss.Joints"/>, in rising order.</param>
/// <param name="X">x of the direction of the sum [-]; x of the centre of moments [m].</param>
/// <param name="Y">y of the direction of the sum [-]; y of the centre of moments [m].</param>
/// <param name="Beside">The force to which the sum is square, where <paramref name="Kind"/> is <see cref="BalanceKind.Across"/>; else null.</param>
/// <param name="Terms">Members that the body's border cuts, and reactions on it; those that have no part in the sum left out.</param>
public sealed record Balance(BalanceKind Kind, IReadOnlyList<int> Joints, double X, double Y, int? Beside, IReadOnlyList<BalanceTerm> Terms)
{
    /// <summary>What a load on a joint of the body adds to the sum: [N], or [N·m] in a sum of moments.</summary>
    /// <param name="joint">Joint at which it acts.</param>
    /// <param name="right">Load to the right [N].</param>
    /// <param name="up">Load upward [N].</param>
    public double PartOf(Joint joint, double right, double up)
    {
        ArgumentNullException.ThrowIfNull(joint);
        return Kind == BalanceKind.Moment ? ((joint.X - X) * up) - ((joint.Y - Y) * right) : (X * right) + (Y * up);
    }

    /// <summary>The coefficient of a force; 0 where it has no part.</summary>
    /// <param name="force">Position of the force.</param>
    public double CoefficientOf(int force)
    {
        double sum = 0;
        foreach (BalanceTerm term in Terms)
        {
            sum += term.Force == force ? term.Coefficient : 0;
        }

        return sum;
    }

    /// <summary>What the loads of the body add to the sum.</summary>
    /// <param name="truss">The truss.</param>
    /// <param name="loads">Loads on its joints: x, then y, of each [N].</param>
    internal double LoadPart(Truss truss, ReadOnlySpan<double> loads)
    {
        double sum = 0;
        foreach (int j in Joints)
        {
            sum += PartOf(truss.Joints[j], loads[2 * j], loads[(2 * j) + 1]);
        }

        return sum;
    }

    /// <summary>The whole sum, zero at balance.</summary>
    /// <param name="truss">The truss.</param>
    /// <param name="loads">Loads on its joints: x, then y, of each [N].</param>
    /// <param name="forces">All forces [N]; those not yet found are zero.</param>
    internal double Sum(Truss truss, ReadOnlySpan<double> loads, ReadOnlySpan<double> forces)
    {
        double sum = LoadPart(truss, loads);
        foreach (BalanceTerm term in Terms)
        {
            sum += term.Coefficient * forces[term.Force];
        }

        return sum;
    }
}
