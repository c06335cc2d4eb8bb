using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace SpanRater;

/// <summary>
/// The displacement route: joint displacements u and reactions r together from <c>K u − R r = p</c> and <c>RT u = d</c>, with the
/// stiffness K of all members and the directions R of the reactions; each force is its member's stretch times its stiffness.
/// </summary>
internal sealed class StiffnessRoute
{
    private readonly Truss truss;
    private readonly EquilibriumSystem equilibrium;
    private readonly double[] stiffnesses;
    private readonly double unit;
    private readonly LU<double> factored;

    /// <summary>A member without an area, which no self-stress touches, gets the mean stiffness: its force does not depend on it.</summary>
    public StiffnessRoute(Truss truss, EquilibriumSystem equilibrium)
    {
        this.truss = truss;
        this.equilibrium = equilibrium;
        double?[] flexibilities = [.. Enumerable.Range(0, truss.Members.Count).Select(truss.Flexibility)];
        unit = flexibilities.Any(f => f is not null) ? 1 / flexibilities.OfType<double>().Average() : 1;

        // In parts of a common stiffness, so that stiffnesses and directions are numbers of one size.
        stiffnesses = [.. flexibilities.Select(f => f is { } known ? 1 / (known * unit) : 1)];
        factored = Matrix().LU();
    }

    /// <summary>All unknowns, members first, then reaction components.</summary>
    public double[] Solve(double[] loads, double[]? movements)
    {
        double[] displacements = Displacements(loads, movements, out double[] reactions);
        return [.. Enumerable.Range(0, truss.Members.Count).Select(m => unit * stiffnesses[m] * Stretch(truss, m, displacements)), .. reactions];
    }

    /// <summary>Displacements of the joints, x then y [m].</summary>
    public double[] Displacements(double[] loads, double[]? movements) => Displacements(loads, movements, out _);

    /// <summary>How much longer the distance between a member's joints becomes [m].</summary>
    public static double Stretch(Truss truss, int member, ReadOnlySpan<double> displacements)
    {
        (int from, int to, double x, double y) = Line(truss, member);
        return (x * (displacements[2 * to] - displacements[2 * from])) + (y * (displacements[(2 * to) + 1] - displacements[(2 * from) + 1]));
    }

    private double[] Displacements(double[] loads, double[]? movements, out double[] reactions)
    {
        var right = new double[equilibrium.Rows + equilibrium.Reactions.Count];
        loads.CopyTo(right, 0);
        for (int r = 0; r < (movements?.Length ?? 0); r++)
        {
            right[equilibrium.Rows + r] = unit * movements![r];
        }

        double[] found = factored.Solve(Vector<double>.Build.Dense(right)).ToArray();
        reactions = found[equilibrium.Rows..];
        return [.. found[..equilibrium.Rows].Select(u => u / unit)];
    }

    private static (int From, int To, double X, double Y) Line(Truss truss, int member)
    {
        int from = truss.FromJoint(member), to = truss.ToJoint(member);
        double length = truss.Length(member);
        return (from, to, (truss.Joints[to].X - truss.Joints[from].X) / length, (truss.Joints[to].Y - truss.Joints[from].Y) / length);
    }

    private Matrix<double> Matrix()
    {
        int rows = equilibrium.Rows;
        Matrix<double> matrix = Matrix<double>.Build.Dense(rows + equilibrium.Reactions.Count, rows + equilibrium.Reactions.Count);
        for (int m = 0; m < truss.Members.Count; m++)
        {
            (int from, int to, double x, double y) = Line(truss, m);
            (int Row, double Part)[] parts = [(2 * from, -x), ((2 * from) + 1, -y), (2 * to, x), ((2 * to) + 1, y)];
            foreach ((int row, double part) in parts)
            {
                foreach ((int column, double other) in parts)
                {
                    matrix[row, column] += stiffnesses[m] * part * other;
                }
            }
        }

        for (int r = 0; r < equilibrium.Reactions.Count; r++)
        {
            EquilibriumSystem.ReactionComponent reaction = equilibrium.Reactions[r];
            (int Row, double Part)[] parts = [(2 * reaction.Joint, reaction.X), ((2 * reaction.Joint) + 1, reaction.Y)];
            foreach ((int row, double part) in parts)
            {
                matrix[row, rows + r] = -part;
                matrix[rows + r, row] = part;
            }
        }

        return matrix;
    }
}
