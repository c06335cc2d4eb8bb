using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace SpanRater;

/// <summary>
/// A truss whose forces follow from equilibrium alone: the equations of all joints, factored once and solved for
/// any number of loads. Every solution is multiplied back into the unfactored equations, and refused where a joint
/// is left unbalanced. Round-off below 1e-12 of the largest load is set to zero before that check.
/// </summary>
public sealed class DeterminateTruss
{
    private const double RoundOff = 1e-12;

    private readonly EquilibriumSystem equilibrium;
    private readonly LU<double> factored;

    private DeterminateTruss(Truss truss, Stability stability, EquilibriumSystem equilibrium, LU<double> factored)
    {
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
            _ => new DeterminateTruss(truss, stability, equilibrium, matrix.LU()),
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

        return new ForceSolution(unknowns[..Truss.Members.Count], ReactionsFrom(unknowns), residual);
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
