using MathNet.Numerics.LinearAlgebra;

namespace SpanRater;

/// <summary>Why the supports cannot hold the truss, even if it were one solid plate.</summary>
public abstract record SupportFault
{
    private const double Zero = 1e-9;

    private SupportFault()
    {
    }

    /// <summary>All reactions are parallel, and nothing stops a slide across them.</summary>
    /// <param name="Right">The direction in which it slides, to the right [-]; right, or straight up, of the two ways.</param>
    /// <param name="Up">The same, upward [-]; with <paramref name="Right"/> a unit vector.</param>
    public sealed record Parallel(double Right, double Up) : SupportFault;

    /// <summary>The lines of all reactions pass through one point, and nothing stops a turn about it.</summary>
    /// <param name="X">x of the point [m].</param>
    /// <param name="Y">y of the point [m].</param>
    public sealed record Concurrent(double X, double Y) : SupportFault;

    /// <summary>All reactions act along one line: the truss can slide across it and turn about its points.</summary>
    public sealed record OneLine : SupportFault;

    /// <summary>What is wrong with the supports of a truss; null where they hold it.</summary>
    /// <param name="truss">The truss.</param>
    public static SupportFault? Of(Truss truss)
    {
        ArgumentNullException.ThrowIfNull(truss);
        IReadOnlyList<double[]> motions = RigidMotions(truss);
        if (motions.Count != 1)
        {
            return motions.Count == 0 ? null : new OneLine();
        }

        (double x, double y, double turn) = (motions[0][0], motions[0][1], motions[0][2]);
        if (Math.Abs(turn) <= Zero)
        {
            double way = x > Zero || (Math.Abs(x) <= Zero && y > 0) ? 1 : -1;
            return new Parallel(Math.Abs(x) <= Zero ? 0 : way * x, Math.Abs(y) <= Zero ? 0 : way * y);
        }

        (double middleX, double middleY, double size) = Scale(truss);
        return new Concurrent(middleX - (size * y / turn), middleY + (size * x / turn));
    }

    /// <summary>
    /// Motions of the truss as one plate that no support hinders, as unit vectors: right, up, and anticlockwise turn about
    /// the middle of the truss times its size.
    /// </summary>
    internal static IReadOnlyList<double[]> RigidMotions(Truss truss)
    {
        (double middleX, double middleY, double size) = Scale(truss);
        IReadOnlyList<EquilibriumSystem.ReactionComponent> reactions = new EquilibriumSystem(truss).Reactions;
        var held = Matrix<double>.Build.Dense(
            Math.Max(3, reactions.Count),
            3,
            (r, c) => r >= reactions.Count ? 0 : c switch
            {
                0 => reactions[r].X,
                1 => reactions[r].Y,
                _ => (((truss.Joints[reactions[r].Joint].X - middleX) * reactions[r].Y) - ((truss.Joints[reactions[r].Joint].Y - middleY) * reactions[r].X)) / size,
            });
        var svd = held.Svd();
        return [.. Enumerable.Range(0, 3).Where(k => svd.S[k] <= Zero * svd.S[0]).Select(k => svd.VT.Row(k).ToArray())];
    }

    /// <summary>The shift of every joint in a rigid motion: right and up in turn.</summary>
    internal static double[] ShiftsOf(Truss truss, double[] motion)
    {
        (double middleX, double middleY, double size) = Scale(truss);
        return
        [
            .. truss.Joints.SelectMany(j => (double[])[motion[0] - (motion[2] * (j.Y - middleY) / size), motion[1] + (motion[2] * (j.X - middleX) / size)]),
        ];
    }

    private static (double X, double Y, double Size) Scale(Truss truss)
    {
        double left = truss.Joints.Min(j => j.X), right = truss.Joints.Max(j => j.X), bottom = truss.Joints.Min(j => j.Y), top = truss.Joints.Max(j => j.Y);
        return ((left + right) / 2, (bottom + top) / 2, Math.Max(right - left, top - bottom));
    }
}
