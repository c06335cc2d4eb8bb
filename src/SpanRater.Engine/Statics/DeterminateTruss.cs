using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace SpanRater;

/// <summary>
/// A truss whose forces follow from equilibrium alone: the equations of all joints, factored once and solved for
/// any number of loads. Every solution is multiplied back into the unfactored equations, and refused where a joint
/// is left unbalanced; and it is found a second time joint by joint, and refused where the two differ. Round-off below 1e-12 of the largest load is set to zero before that check.
/// </summary>
public sealed class DeterminateTruss
{
    private const double RoundOff = 1e-12;

    private readonly EquilibriumSystem equilibrium;
    private readonly LU<double> factored;
    private readonly JointRoute route;

    private DeterminateTruss(Truss truss, Stability stability, EquilibriumSystem equilibrium, LU<double> factored, JointRoute route)
    {
        this.route = route;
        Truss = truss;
        Stability = stability;
        this.equilibrium = equilibrium;
        this.factored = factored;
    }

    /// <summary>The truss.</summary>
    public Truss Truss { get; }

    /// <summary>Its count and rank.</summary>
    public Stability Stability { get; }

    /// <summary>Makes the system, or says why statics alone cannot solve the truss.</summary>
    /// <param name="truss">The truss.</param>
    public static Outcome<DeterminateTruss> Of(Truss truss)
    {
        ArgumentNullException.ThrowIfNull(truss);
        var equilibrium = new EquilibriumSystem(truss);
        Matrix<double> matrix = Matrix<double>.Build.DenseOfArray(equilibrium.ToMatrix());
        Stability stability = Stability.Of(truss, matrix);
        string[] rods = [.. truss.Members.Where(m => m.TensionOnly).Select(m => m.Name)];
        return stability.Verdict switch
        {
            StabilityVerdict.Mechanism => new Refusal.Mechanism(stability),
            _ when rods.Length > 0 => new Refusal.RodsThatOnlyPull(rods),
            StabilityVerdict.Redundant => new Refusal.Redundant(stability),
            _ when JointRoute.Of(truss, equilibrium) is { } route => new DeterminateTruss(truss, stability, equilibrium, matrix.LU(), route),
            _ => new Refusal.RoutesDiffer(null, double.NaN),
        };
    }

    /// <summary>Forces under a load case.</summary>
    /// <param name="loads">The case; its joints must be joints of the truss.</param>
    /// <exception cref="ArgumentException">A load names a joint that the truss does not have.</exception>
    public Outcome<ForceSolution> Solve(LoadCase loads)
    {
        ArgumentNullException.ThrowIfNull(loads);
        var p = new double[equilibrium.Rows];
        foreach (JointLoad load in loads.Loads)
        {
            int joint = Truss.FindJoint(load.Joint)
                ?? throw new ArgumentException($"Case \"{loads.Name}\" loads joint \"{load.Joint}\", which the truss does not have.", nameof(loads));
            p[2 * joint] += load.Right;
            p[(2 * joint) + 1] += load.Up;
        }

        return Solve([p])[0];
    }

    /// <summary>Forces under a unit load downward at each panel point, in the order of <see cref="Truss.PanelPoints"/>.</summary>
    public IReadOnlyList<Outcome<ForceSolution>> SolveUnitLoads()
    {
        var loads = new double[Truss.PanelPoints.Count][];
        for (int i = 0; i < loads.Length; i++)
        {
            loads[i] = new double[equilibrium.Rows];
            loads[i][(2 * Truss.PanelPoints[i]) + 1] = -1;
        }

        return Solve(loads);
    }

    private Outcome<ForceSolution>[] Solve(double[][] loads)
    {
        if (loads.Length == 0)
        {
            return [];
        }

        Matrix<double> solved = factored.Solve(-Matrix<double>.Build.DenseOfColumnArrays(loads));
        var outcomes = new Outcome<ForceSolution>[loads.Length];
        for (int i = 0; i < loads.Length; i++)
        {
            outcomes[i] = Checked(solved.Column(i).ToArray(), loads[i]);
        }

        return outcomes;
    }

    private Outcome<ForceSolution> Checked(double[] unknowns, double[] loads)
    {
        double roundOff = RoundOff * loads.Max(Math.Abs);
        for (int i = 0; i < unknowns.Length; i++)
        {
            if (Math.Abs(unknowns[i]) <= roundOff)
            {
                unknowns[i] = 0;
            }
        }

        double residual = equilibrium.Residual(unknowns, loads);
        if (!(residual <= ForceSolution.ResidualLimit))
        {
            return new Refusal.PoorResidual(residual);
        }

        if (Difference(unknowns, loads) is { } differ)
        {
            return differ;
        }

        return new ForceSolution(unknowns[..Truss.Members.Count], ReactionsFrom(unknowns), residual);
    }

    private Refusal.RoutesDiffer? Difference(double[] unknowns, double[] loads)
    {
        double[] second = route.Solve(loads);
        double largest = 0, difference = 0;
        int where = 0;
        for (int m = 0; m < Truss.Members.Count; m++)
        {
            largest = Math.Max(largest, Math.Abs(unknowns[m]));
            double here = Math.Abs(unknowns[m] - second[m]);

            // Written so that NaN counts as a difference.
            if (!(here <= difference))
            {
                (difference, where) = (here, m);
            }
        }

        // Where no member is stressed, what is left of the loads' round-off is no difference.
        double scale = Math.Max(largest, RoundOff * loads.Max(Math.Abs) / ForceSolution.RouteLimit);
        return difference <= ForceSolution.RouteLimit * scale ? null : new Refusal.RoutesDiffer(Truss.Members[where].Name, difference / scale);
    }

    private List<Reaction> ReactionsFrom(double[] unknowns)
    {
        var reactions = new List<Reaction>();
        for (int r = 0; r < equilibrium.Reactions.Count; r++)
        {
            EquilibriumSystem.ReactionComponent component = equilibrium.Reactions[r];
            double size = unknowns[Truss.Members.Count + r];
            double right = component.X * size, up = component.Y * size;
            if (reactions.Count > 0 && reactions[^1].Joint == component.Joint)
            {
                reactions[^1] = new Reaction(component.Joint, reactions[^1].Right + right, reactions[^1].Up + up);
            }
            else
            {
                // Adding zero turns a negative zero into a plain one.
                reactions.Add(new Reaction(component.Joint, right + 0.0, up + 0.0));
            }
        }

        return reactions;
    }
}
