using MathNet.Numerics.LinearAlgebra;

namespace SpanRater;

/// <summary>
/// A truss of which every member acts, so that its forces are proportional to its loads: determinate, or redundant and
/// divided by stiffness. Factored once and solved for any number of loads. Every solution is multiplied back into the
/// unfactored equations, and refused where a joint is left unbalanced; and it is found a second time by another route,
/// and refused where the two differ. Round-off below 1e-12 of the largest load is set to zero before that check.
/// </summary>
public abstract class LinearTruss : SolvableTruss
{
    private const double RoundOff = 1e-12;

    private protected LinearTruss(Truss truss, Stability stability, EquilibriumSystem equilibrium)
        : base(truss)
    {
        Stability = stability;
        Equilibrium = equilibrium;
    }

    /// <summary>Its count and rank.</summary>
    public Stability Stability { get; }

    private protected EquilibriumSystem Equilibrium { get; }

    /// <summary>Makes the system that the truss calls for, or says why there is none.</summary>
    /// <param name="truss">The truss.</param>
    public static new Outcome<LinearTruss> Of(Truss truss)
    {
        ArgumentNullException.ThrowIfNull(truss);
        string[] rods = [.. truss.Members.Where(m => m.TensionOnly).Select(m => m.Name)];
        var equilibrium = new EquilibriumSystem(truss);
        Matrix<double> matrix = Matrix<double>.Build.DenseOfArray(equilibrium.ToMatrix());
        Stability stability = Stability.Of(truss, matrix);
        return stability.Verdict switch
        {
            StabilityVerdict.Mechanism => new Refusal.Mechanism(stability),
            _ when rods.Length > 0 => new Refusal.RodsThatOnlyPull(rods),
            StabilityVerdict.Determinate => DeterminateTruss.Of(truss, stability, equilibrium, matrix),
            _ => ElasticTruss.Of(truss, stability, equilibrium, matrix),
        };
    }

    /// <inheritdoc/>
    public override Outcome<ForceSolution> Solve(LoadCase loads)
    {
        ArgumentNullException.ThrowIfNull(loads);
        return Solve([JointLoadsOf(loads)], MovementsOf(loads))[0];
    }

    /// <summary>Forces under a unit load downward at each panel point, in the order of <see cref="Truss.PanelPoints"/>.</summary>
    public IReadOnlyList<Outcome<ForceSolution>> SolveUnitLoads() => SolveUnitLoads(Truss.PanelPoints);

    /// <summary>Forces under a unit load downward at each of the joints.</summary>
    /// <param name="joints">Positions in <see cref="Truss.Joints"/>.</param>
    /// <exception cref="ArgumentOutOfRangeException">A position is not that of a joint.</exception>
    public IReadOnlyList<Outcome<ForceSolution>> SolveUnitLoads(IReadOnlyList<int> joints)
    {
        ArgumentNullException.ThrowIfNull(joints);
        var loads = new double[joints.Count][];
        for (int i = 0; i < loads.Length; i++)
        {
            ArgumentOutOfRangeException.ThrowIfNegative(joints[i], nameof(joints));
            ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(joints[i], Truss.Joints.Count, nameof(joints));
            loads[i] = new double[Equilibrium.Rows];
            loads[i][(2 * joints[i]) + 1] = -1;
        }

        Outcome<ForceSolution>[] outcomes = Solve(loads, null);
        return Asymmetry(outcomes, loads) is { } refusal ? [.. outcomes.Select(_ => (Outcome<ForceSolution>)refusal)] : outcomes;
    }

    /// <summary>Displacements of the joints, x then y of each [m]; every member must have an area.</summary>
    internal double[] Displacements(LoadCase loads) =>
        new StiffnessRoute(Truss, Equilibrium).Displacements(JointLoadsOf(loads), MovementsOf(loads));

    /// <summary>Forces under a unit pull of two joints towards each other, as a bar between them would exert it.</summary>
    internal Outcome<ForceSolution> SolveUnitPull(int from, int to)
    {
        Joint a = Truss.Joints[from], b = Truss.Joints[to];
        double length = double.Hypot(b.X - a.X, b.Y - a.Y), x = (b.X - a.X) / length, y = (b.Y - a.Y) / length;
        var loads = new double[Equilibrium.Rows];
        (loads[2 * from], loads[(2 * from) + 1]) = (x, y);
        (loads[2 * to], loads[(2 * to) + 1]) = (-x, -y);
        return Solve([loads], null)[0];
    }

    /// <summary>All unknowns for each load: members, then reaction components.</summary>
    /// <param name="loads">Joint loads, x then y of each joint, one array a solution [N].</param>
    /// <param name="movements">Movement of each reaction component along it [m]; null for none.</param>
    private protected abstract double[][] FirstRoute(double[][] loads, double[]? movements);

    /// <summary>The same for one load, by another route.</summary>
    private protected abstract double[] SecondRoute(double[] loads, double[]? movements);

    /// <summary>What is wrong with solutions that ought to be reciprocal; null where nothing is.</summary>
    private protected abstract Refusal? Asymmetry(Outcome<ForceSolution>[] solutions, double[][] loads);

    /// <summary>Loads of a case at each joint, x, then y [N].</summary>
    internal double[] JointLoadsOf(LoadCase loads)
    {
        var p = new double[Equilibrium.Rows];
        foreach (JointLoad load in loads.Loads)
        {
            int joint = JointOf(loads, load.Joint);
            p[2 * joint] += load.Right;
            p[(2 * joint) + 1] += load.Up;
        }

        return p;
    }

    private double[]? MovementsOf(LoadCase loads)
    {
        if (loads.Movements.Count == 0)
        {
            return null;
        }

        var movements = new double[Equilibrium.Reactions.Count];
        foreach (SupportMovement movement in loads.Movements)
        {
            int joint = JointOf(loads, movement.Joint);
            if (Truss.Joints[joint].Support is null)
            {
                throw new ArgumentException($"Case \"{loads.Name}\" moves joint \"{movement.Joint}\", which is not supported.", nameof(loads));
            }

            for (int r = 0; r < movements.Length; r++)
            {
                EquilibriumSystem.ReactionComponent component = Equilibrium.Reactions[r];
                if (component.Joint == joint)
                {
                    movements[r] += (component.X * movement.Right) + (component.Y * movement.Up);
                }
            }
        }

        return movements;
    }

    private int JointOf(LoadCase loads, string joint) => Truss.FindJoint(joint)
        ?? throw new ArgumentException($"Case \"{loads.Name}\" names joint \"{joint}\", which the truss does not have.", nameof(loads));

    private Outcome<ForceSolution>[] Solve(double[][] loads, double[]? movements)
    {
        if (loads.Length == 0)
        {
            return [];
        }

        double[][] solved = FirstRoute(loads, movements);
        var outcomes = new Outcome<ForceSolution>[loads.Length];
        for (int i = 0; i < loads.Length; i++)
        {
            outcomes[i] = Checked(solved[i], loads[i], movements);
        }

        return outcomes;
    }

    private Outcome<ForceSolution> Checked(double[] unknowns, double[] loads, double[]? movements)
    {
        // Where supports move and nothing is loaded, the forces themselves are the measure.
        double scale = loads.Max(Math.Abs);
        double roundOff = RoundOff * (scale > 0 || movements is null ? scale : unknowns.Max(Math.Abs));
        for (int i = 0; i < unknowns.Length; i++)
        {
            if (Math.Abs(unknowns[i]) <= roundOff)
            {
                unknowns[i] = 0;
            }
        }

        double residual = Equilibrium.Residual(unknowns, loads);
        if (!(residual <= ForceSolution.ResidualLimit))
        {
            return new Refusal.PoorResidual(residual);
        }

        if (Difference(unknowns, SecondRoute(loads, movements), roundOff) is { } differ)
        {
            return differ;
        }

        return new ForceSolution(unknowns[..Truss.Members.Count], ReactionsFrom(unknowns), residual);
    }

    private Refusal.RoutesDiffer? Difference(double[] unknowns, double[] second, double roundOff)
    {
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
        double scale = Math.Max(largest, roundOff / ForceSolution.RouteLimit);
        return difference <= ForceSolution.RouteLimit * scale ? null : new Refusal.RoutesDiffer(Truss.Members[where].Name, difference / scale);
    }

    private List<Reaction> ReactionsFrom(double[] unknowns)
    {
        var reactions = new List<Reaction>();
        for (int r = 0; r < Equilibrium.Reactions.Count; r++)
        {
            EquilibriumSystem.ReactionComponent component = Equilibrium.Reactions[r];
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
