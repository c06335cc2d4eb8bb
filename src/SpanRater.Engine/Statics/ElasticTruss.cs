using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace SpanRater;

/// <summary>
/// A redundant truss, its forces divided by the stiffness of its members: of all forces that balance the loads, those are
/// taken that fit together. First route, forces: a solution of the equilibrium equations plus self-stresses that close every
/// gap (<c>ST F (q0 + S x) = SrT d</c>). Second route, displacements: the stiffness of the whole truss on its supports. Only
/// members that a self-stress touches need an area; the others' forces follow from equilibrium.
/// Source: S. P. Timoshenko and D. H. Young, Theory of Structures, 2nd ed. (1965), on statically indeterminate trusses, from memory.
/// </summary>
public sealed class ElasticTruss : LinearTruss
{
    /// <summary>Displacements that ought to be equal by reciprocity and differ by more than this part of the largest refuse the result [-].</summary>
    public const double ReciprocityLimit = 1e-9;

    private readonly Svd<double> svd;
    private readonly Matrix<double> selfStresses;
    private readonly Vector<double> flexibilities;
    private readonly LU<double> gaps;
    private readonly StiffnessRoute stiffness;

    private ElasticTruss(Truss truss, Stability stability, EquilibriumSystem equilibrium, Svd<double> svd)
        : base(truss, stability, equilibrium)
    {
        this.svd = svd;
        selfStresses = svd.VT.SubMatrix(stability.Rank, svd.VT.RowCount - stability.Rank, 0, svd.VT.ColumnCount).Transpose();
        flexibilities = Vector<double>.Build.Dense(equilibrium.Columns);
        foreach (int m in stability.StressedMembers)
        {
            flexibilities[m] = truss.Flexibility(m)!.Value;
        }

        gaps = (selfStresses.Transpose() * Scaled(selfStresses)).LU();
        stiffness = new StiffnessRoute(truss, equilibrium);
    }

    internal static Outcome<LinearTruss> Of(Truss truss, Stability stability, EquilibriumSystem equilibrium, Matrix<double> matrix)
    {
        string[] without = [.. stability.StressedMembers.Where(m => truss.Flexibility(m) is null).Select(m => truss.Members[m].Name)];
        return without.Length > 0 ? new Refusal.NoAreas(stability, without) : new ElasticTruss(truss, stability, equilibrium, matrix.Svd());
    }

    private protected override double[][] FirstRoute(double[][] loads, double[]? movements)
    {
        Matrix<double> balanced = svd.Solve(-Matrix<double>.Build.DenseOfColumnArrays(loads));
        Matrix<double> open = -(selfStresses.Transpose() * Scaled(balanced));
        if (movements is not null)
        {
            Vector<double> moved = Vector<double>.Build.Dense(Equilibrium.Columns);
            moved.SetSubVector(Truss.Members.Count, movements.Length, Vector<double>.Build.Dense(movements));
            Vector<double> closes = selfStresses.TransposeThisAndMultiply(moved);
            for (int c = 0; c < open.ColumnCount; c++)
            {
                open.SetColumn(c, open.Column(c) + closes);
            }
        }

        return (balanced + (selfStresses * gaps.Solve(open))).ToColumnArrays();
    }

    private protected override double[] SecondRoute(double[] loads, double[]? movements) => stiffness.Solve(loads, movements);

    // Maxwell: the deflection at i for a unit load at j is that at j for one at i. By virtual work, with forces that merely balance
    // the unit load at i against the solved forces for j: the two agree only where the solved forces fit together.
    private protected override Refusal? Asymmetry(Outcome<ForceSolution>[] solutions, double[][] loads)
    {
        if (loads.Length < 2 || solutions.Any(s => s.Value is null))
        {
            return null;
        }

        Matrix<double> virtualForces = svd.Solve(-Matrix<double>.Build.DenseOfColumnArrays(loads));
        Matrix<double> solved = Matrix<double>.Build.Dense(Equilibrium.Columns, loads.Length, (u, i) => u < Truss.Members.Count ? solutions[i].Value!.MemberForces[u] : 0);
        Matrix<double> deflections = virtualForces.Transpose() * Scaled(solved);
        double largest = deflections.Enumerate().Max(Math.Abs);
        double difference = (deflections - deflections.Transpose()).Enumerate().Max(Math.Abs);
        return difference <= ReciprocityLimit * largest ? null : new Refusal.NotReciprocal(difference / largest);
    }

    private Matrix<double> Scaled(Matrix<double> forces) => forces.MapIndexed((u, _, force) => flexibilities[u] * force);
}
