using MathNet.Numerics.LinearAlgebra;

namespace SpanRater.Tests;

/// <summary>
/// The plain twin of the search for acting rods where areas decide: the displacements at which the energy of the truss is least,
/// rods that would be pressed storing none. The energy is convex, so that Newton's method with steps cut short finds the only
/// place; where the energy has no least value, nothing carries the load.
/// </summary>
internal static class OwnEnergy
{
    /// <summary>Forces of the members; null where nothing carries the load.</summary>
    public static double[]? Forces(Truss truss, LoadCase loads)
    {
        int[] held = [.. Enumerable.Range(0, truss.Joints.Count).SelectMany(j => truss.Joints[j].Support switch
        {
            null => (int[])[],
            { Kind: SupportKind.Pin } => [2 * j, (2 * j) + 1],
            _ => [(2 * j) + 1],
        })];
        int[] free = [.. Enumerable.Range(0, 2 * truss.Joints.Count).Except(held)];
        Vector<double> load = Vector<double>.Build.Dense(free.Length);
        foreach (JointLoad l in loads.Loads)
        {
            int joint = truss.FindJoint(l.Joint)!.Value;
            Add(load, Array.IndexOf(free, 2 * joint), l.Right);
            Add(load, Array.IndexOf(free, (2 * joint) + 1), l.Up);
        }

        Vector<double>[] directions = [.. Enumerable.Range(0, truss.Members.Count).Select(m => Direction(truss, m, free))];
        double[] stiffness = [.. Enumerable.Range(0, truss.Members.Count).Select(m => 1 / truss.Flexibility(m)!.Value)];
        double[] ForcesAt(Vector<double> u) =>
            [.. directions.Select((d, m) => stiffness[m] * d.DotProduct(u)).Select((f, m) => truss.Members[m].TensionOnly ? Math.Max(0, f) : f)];
        double Energy(Vector<double> u) => ForcesAt(u).Select((f, m) => f * f / (2 * stiffness[m])).Sum() - load.DotProduct(u);

        Vector<double> place = Vector<double>.Build.Dense(free.Length);
        for (int turn = 0; turn < 200; turn++)
        {
            double[] forces = ForcesAt(place);
            Vector<double> left = load.Clone();
            Matrix<double> tangent = Matrix<double>.Build.DenseDiagonal(free.Length, 1e-9 * stiffness.Min());
            for (int m = 0; m < forces.Length; m++)
            {
                left -= directions[m] * forces[m];
                if (!truss.Members[m].TensionOnly || forces[m] > 0 || turn == 0)
                {
                    tangent += directions[m].OuterProduct(directions[m]) * stiffness[m];
                }
            }

            if (left.InfinityNorm() <= 1e-8 * load.InfinityNorm())
            {
                return forces;
            }

            Vector<double> step = tangent.Cholesky().Solve(left);
            double part = 1, energy = Energy(place), falls = left.DotProduct(step);
            while (part > 1e-12 && Energy(place + (step * part)) > energy - (1e-4 * part * falls))
            {
                part /= 2;
            }

            place += step * part;
        }

        return null;
    }

    private static void Add(Vector<double> to, int row, double value)
    {
        if (row >= 0)
        {
            to[row] += value;
        }
    }

    private static Vector<double> Direction(Truss truss, int member, int[] free)
    {
        int from = truss.FindJoint(truss.Members[member].From)!.Value, to = truss.FindJoint(truss.Members[member].To)!.Value;
        double x = truss.Joints[to].X - truss.Joints[from].X, y = truss.Joints[to].Y - truss.Joints[from].Y, length = double.Hypot(x, y);
        Vector<double> direction = Vector<double>.Build.Dense(free.Length);
        Add(direction, Array.IndexOf(free, 2 * to), x / length);
        Add(direction, Array.IndexOf(free, (2 * to) + 1), y / length);
        Add(direction, Array.IndexOf(free, 2 * from), -x / length);
        Add(direction, Array.IndexOf(free, (2 * from) + 1), -y / length);
        return direction;
    }
}
