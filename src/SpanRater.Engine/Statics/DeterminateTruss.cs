using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace SpanRater;

/// <summary>
/// A truss whose forces follow from equilibrium alone: the equations of all joints, factored once; and, as the second route,
/// joint after joint as by hand.
/// </summary>
public sealed class DeterminateTruss : LinearTruss
{
    private readonly LU<double> factored;

    private DeterminateTruss(Truss truss, Stability stability, EquilibriumSystem equilibrium, LU<double> factored, JointRoute route)
        : base(truss, stability, equilibrium)
    {
        this.factored = factored;
        Route = route;
    }

    /// <summary>The joint-by-joint route.</summary>
    internal JointRoute Route { get; }

    /// <summary>Makes the system, or says why statics alone cannot solve the truss.</summary>
    /// <param name="truss">The truss.</param>
    public static new Outcome<DeterminateTruss> Of(Truss truss)
    {
        ArgumentNullException.ThrowIfNull(truss);
        if (!LinearTruss.Of(truss).TryGet(out LinearTruss? system, out Refusal? refusal))
        {
            return refusal is Refusal.NoAreas no ? new Refusal.Redundant(no.Stability) : refusal;
        }

        return system as DeterminateTruss is { } determinate ? determinate : new Refusal.Redundant(system.Stability);
    }

    internal static Outcome<LinearTruss> Of(Truss truss, Stability stability, EquilibriumSystem equilibrium, Matrix<double> matrix) =>
        JointRoute.Of(truss, equilibrium) is { } route
            ? new DeterminateTruss(truss, stability, equilibrium, matrix.LU(), route)
            : new Refusal.RoutesDiffer(null, double.NaN);

    // A support that moves leaves a determinate truss without force: it follows.
    private protected override double[][] FirstRoute(double[][] loads, double[]? movements) =>
        factored.Solve(-Matrix<double>.Build.DenseOfColumnArrays(loads)).ToColumnArrays();

    private protected override double[] SecondRoute(double[] loads, double[]? movements) => Route.Solve(loads);

    // Forces that follow from equilibrium alone are reciprocal whatever the areas.
    private protected override Refusal? Asymmetry(Outcome<ForceSolution>[] solutions, double[][] loads) => null;
}
