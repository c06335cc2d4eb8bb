using MathNet.Numerics.LinearAlgebra;

namespace SpanRater.Tests;

/// <summary>
/// The plain twin of the search for acting rods: the equations of all joints for one set of members, summed here from the joints'
/// coordinates, and no set passed over.
/// </summary>
internal sealed class OwnStatics
{
    private readonly Truss truss;
    private readonly int[] kept;
    private readonly Matrix<double> inverse;

    private OwnStatics(Truss truss, int[] kept, Matrix<double> inverse)
    {
        this.truss = truss;
        this.kept = kept;
        this.inverse = inverse;
    }

    /// <summary>The truss without its slack members; null where it is not determinate.</summary>
    public static OwnStatics? Without(Truss truss, IReadOnlyCollection<int> slack)
    {
        int[] kept = [.. Enumerable.Range(0, truss.Members.Count).Where(m => !slack.Contains(m))];
        int rows = 2 * truss.Joints.Count;
        if (kept.Length + truss.ReactionCount != rows)
        {
            return null;
        }

        Matrix<double> matrix = Matrix<double>.Build.Dense(rows, rows);
        for (int c = 0; c < kept.Length; c++)
        {
            int from = truss.FindJoint(truss.Members[kept[c]].From)!.Value, to = truss.FindJoint(truss.Members[kept[c]].To)!.Value;
            double x = truss.Joints[to].X - truss.Joints[from].X, y = truss.Joints[to].Y - truss.Joints[from].Y, length = double.Hypot(x, y);
            (matrix[2 * from, c], matrix[(2 * from) + 1, c]) = (x / length, y / length);
            (matrix[2 * to, c], matrix[(2 * to) + 1, c]) = (-x / length, -y / length);
        }

        int column = kept.Length;
        for (int j = 0; j < truss.Joints.Count; j++)
        {
            if (truss.Joints[j].Support is { } support)
            {
                if (support.Kind == SupportKind.Pin)
                {
                    matrix[2 * j, column++] = 1;
                }

                matrix[(2 * j) + 1, column++] = 1;
            }
        }

        double[] pivots = [.. matrix.LU().U.Diagonal().Select(Math.Abs)];
        return pivots.All(p => p > 1e-10 * pivots.Max()) ? new OwnStatics(truss, kept, matrix.Inverse()) : null;
    }

    /// <summary>Forces of all members, zero for the slack ones.</summary>
    public double[] Forces(LoadCase loads)
    {
        Vector<double> right = Vector<double>.Build.Dense(2 * truss.Joints.Count);
        foreach (JointLoad load in loads.Loads)
        {
            int joint = truss.FindJoint(load.Joint)!.Value;
            right[2 * joint] -= load.Right;
            right[(2 * joint) + 1] -= load.Up;
        }

        Vector<double> solved = inverse * right;
        var forces = new double[truss.Members.Count];
        for (int c = 0; c < kept.Length; c++)
        {
            forces[kept[c]] = solved[c];
        }

        return forces;
    }

    /// <summary>Every way to leave one rod of each pair slack.</summary>
    public static IEnumerable<int[]> Sets(IReadOnlyList<CrossedPair> pairs) =>
        Enumerable.Range(0, 1 << pairs.Count).Select(set => pairs.Select((p, i) => (set & (1 << i)) == 0 ? p.Second : p.First).ToArray());
}
