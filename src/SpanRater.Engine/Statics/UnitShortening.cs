using MathNet.Numerics.LinearAlgebra;

namespace SpanRater;

/// <summary>
/// How a determinate truss moves when one member is shortened by one unit and every other keeps its length. The deck's rise
/// at a panel point is then the ordinate of the member's influence line there: the work of the unit load and of the
/// member's force balance, F × 1 = 1 × rise. Found from the geometry alone, Aᵀ u = e, without any load.
/// Source: the principle of Müller-Breslau, as in R. C. Hibbeler, Structural Analysis, from memory.
/// </summary>
/// <param name="Member">The member, by position in <see cref="Truss.Members"/>.</param>
/// <param name="Shifts">Movement of each joint for a shortening of 1, in the order of <see cref="Truss.Joints"/> [-].</param>
public sealed record UnitShortening(int Member, IReadOnlyList<JointShift> Shifts)
{
    /// <summary>Moves the truss, or says why its geometry alone does not tell how.</summary>
    /// <param name="truss">The truss.</param>
    /// <param name="member">The member, by position in <see cref="Truss.Members"/>.</param>
    /// <param name="slack">Members that only pull and are slack, which hold nothing; null where every member holds.</param>
    public static Outcome<UnitShortening> Of(Truss truss, int member, IReadOnlyList<int>? slack = null)
    {
        ArgumentNullException.ThrowIfNull(truss);
        ArgumentOutOfRangeException.ThrowIfNegative(member);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(member, truss.Members.Count);
        string[] rods = [.. truss.Members.Where(m => m.TensionOnly).Select(m => m.Name)];
        if ((slack is null && rods.Length > 0) || slack?.Contains(member) == true)
        {
            return new Refusal.RodsThatOnlyPull(rods);
        }

        Truss acting = slack is null ? truss : truss.Without(slack);
        int shortened = member - (slack?.Count(s => s < member) ?? 0);
        Matrix<double> equilibrium = Matrix<double>.Build.DenseOfArray(new EquilibriumSystem(acting).ToMatrix());
        Stability stability = Stability.Of(acting, equilibrium);
        if (stability.Verdict != StabilityVerdict.Determinate)
        {
            return stability.Movements > 0 ? new Refusal.Mechanism(stability) : new Refusal.Redundant(stability);
        }

        // A column of A points from each end of the member to the other, so that its product with the shifts is the shortening.
        Vector<double> u = equilibrium.Transpose().LU().Solve(Vector<double>.Build.Dense(equilibrium.ColumnCount, c => c == shortened ? 1 : 0));
        double roundOff = 1e-12 * Math.Max(1, u.InfinityNorm());
        double Clean(double value) => Math.Abs(value) <= roundOff ? 0 : value;
        return new UnitShortening(member, [.. Enumerable.Range(0, truss.Joints.Count).Select(j => new JointShift(Clean(u[2 * j]), Clean(u[(2 * j) + 1])))]);
    }

    /// <summary>How far the deck rises at each panel point, in the order of <see cref="Truss.PanelPoints"/> [-].</summary>
    /// <param name="truss">The truss that was moved.</param>
    public IReadOnlyList<double> DeckRise(Truss truss)
    {
        ArgumentNullException.ThrowIfNull(truss);
        return [.. truss.PanelPoints.Select(p => Shifts[p].Up)];
    }
}
