using MathNet.Numerics.LinearAlgebra;

namespace SpanRater.Tests;

/// <summary>
/// The plain twin of the elastic solutions: the textbook's stiffness matrix, its supported rows and columns struck out, solved
/// by Cholesky's method. Supports hold along x or y only.
/// </summary>
internal sealed class OwnStiffness
{
    private readonly Truss truss;
    private readonly int[] free;
    private readonly int[] held;
    private readonly Matrix<double> stiffness;

    private OwnStiffness(Truss truss, int[] free, int[] held, Matrix<double> stiffness)
    {
        this.truss = truss;
        this.free = free;
        this.held = held;
        this.stiffness = stiffness;
    }

    /// <summary>The stiffness of a truss; every member needs an area.</summary>
    public static OwnStiffness Of(Truss truss)
    {
        int rows = 2 * truss.Joints.Count;
        Matrix<double> matrix = Matrix<double>.Build.Dense(rows, rows);
        for (int m = 0; m < truss.Members.Count; m++)
        {
            Vector<double> direction = Direction(truss, m);
            matrix += direction.OuterProduct(direction) * Stiffness(truss, m);
        }

        var held = new List<int>();
        for (int j = 0; j < truss.Joints.Count; j++)
        {
            if (truss.Joints[j].Support is { } support)
            {
                Assert.True(support.Kind == SupportKind.Pin || support.NormalDegrees == 90, "Supports here are pins or level rollers.");
                held.AddRange(support.Kind == SupportKind.Pin ? [2 * j, (2 * j) + 1] : [(2 * j) + 1]);
            }
        }

        return new OwnStiffness(truss, [.. Enumerable.Range(0, rows).Except(held)], [.. held], matrix);
    }

    /// <summary>Displacements of all joints, x then y [m].</summary>
    public double[] Displacements(LoadCase loads)
    {
        var force = new double[2 * truss.Joints.Count];
        foreach (JointLoad load in loads.Loads)
        {
            int joint = truss.FindJoint(load.Joint)!.Value;
            force[2 * joint] += load.Right;
            force[(2 * joint) + 1] += load.Up;
        }

        Vector<double> moved = Vector<double>.Build.Dense(force.Length);
        foreach (SupportMovement movement in loads.Movements)
        {
            int joint = truss.FindJoint(movement.Joint)!.Value;
            moved[2 * joint] += held.Contains(2 * joint) ? movement.Right : 0;
            moved[(2 * joint) + 1] += held.Contains((2 * joint) + 1) ? movement.Up : 0;
        }

        Vector<double> right = Vector<double>.Build.Dense(force) - (stiffness * moved);
        Matrix<double> part = Matrix<double>.Build.Dense(free.Length, free.Length, (r, c) => stiffness[free[r], free[c]]);
        Vector<double> solved = part.Cholesky().Solve(Vector<double>.Build.Dense(free.Length, r => right[free[r]]));
        for (int r = 0; r < free.Length; r++)
        {
            moved[free[r]] = solved[r];
        }

        return [.. moved];
    }

    /// <summary>Forces of the members under a load, tension positive [N].</summary>
    public double[] Forces(LoadCase loads) => ForcesOf(Displacements(loads));

    /// <summary>Forces of the members under displacements of the joints [N].</summary>
    public double[] ForcesOf(double[] displacements) =>
        [.. Enumerable.Range(0, truss.Members.Count).Select(m => Stiffness(truss, m) * Stretch(truss, m, displacements))];

    /// <summary>How much longer the distance between the ends of a member becomes, be it a member of the truss solved or not [m].</summary>
    public static double Stretch(Truss of, int member, double[] displacements) =>
        Direction(of, member).DotProduct(Vector<double>.Build.Dense(displacements));

    private static double Stiffness(Truss truss, int member) =>
        (truss.Members[member].Modulus ?? Member.SteelModulus) * truss.Members[member].Area!.Value / Direction(truss, member, out _);

    private static Vector<double> Direction(Truss truss, int member)
    {
        _ = Direction(truss, member, out Vector<double> direction);
        return direction;
    }

    private static double Direction(Truss truss, int member, out Vector<double> direction)
    {
        int from = truss.FindJoint(truss.Members[member].From)!.Value, to = truss.FindJoint(truss.Members[member].To)!.Value;
        double x = truss.Joints[to].X - truss.Joints[from].X, y = truss.Joints[to].Y - truss.Joints[from].Y, length = Math.Sqrt((x * x) + (y * y));
        direction = Vector<double>.Build.Dense(2 * truss.Joints.Count);
        (direction[2 * to], direction[(2 * to) + 1]) = (x / length, y / length);
        (direction[2 * from], direction[(2 * from) + 1]) = (-x / length, -y / length);
        return length;
    }
}
