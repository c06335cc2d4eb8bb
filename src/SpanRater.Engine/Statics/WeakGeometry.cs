using MathNet.Numerics.LinearAlgebra;

namespace SpanRater;

/// <summary>
/// A geometry so near to a mechanism that small slips of the coordinates become large slips of the forces: how near, and
/// which members and which joint bring it about.
/// </summary>
/// <param name="Condition">Condition number of the equilibrium matrix [-].</param>
/// <param name="Members">Members with the largest shares of the force pattern that balances the smallest load, by position.</param>
/// <param name="Joint">Joint that the smallest load pushes most, by position in <see cref="Truss.Joints"/>.</param>
/// <param name="OffLine">How far that joint's members are from lying in one line: the largest angle of any to the first [rad].</param>
public sealed record WeakGeometry(double Condition, IReadOnlyList<int> Members, int Joint, double OffLine)
{
    /// <summary>
    /// Above this condition number the geometry is told to be weak: a slip of a coordinate by 1/10,000 of a member's length,
    /// which is as good as a tape measures, may change a force by as much as the force itself.
    /// </summary>
    public const double Limit = 1e4;

    // The last columns of U and rows of VT belong to the smallest singular value: the load that stretches the system most, and the forces under it.
    internal static WeakGeometry Of(Truss truss, double condition, Vector<double> load, Vector<double> forces)
    {
        double largest = Enumerable.Range(0, truss.Members.Count).Max(m => Math.Abs(forces[m]));
        int joint = Enumerable.Range(0, truss.Joints.Count).MaxBy(j => Math.Round(double.Hypot(load[2 * j], load[(2 * j) + 1]), 9));
        int[] at = [.. Enumerable.Range(0, truss.Members.Count).Where(m => truss.FromJoint(m) == joint || truss.ToJoint(m) == joint)];
        return new WeakGeometry(
            condition,
            [.. Enumerable.Range(0, truss.Members.Count).Where(m => Math.Abs(forces[m]) >= largest / 2)],
            joint,
            at.Max(m => AngleBetween(truss, at[0], m)));
    }

    private static double AngleBetween(Truss truss, int one, int other)
    {
        (double ax, double ay) = Direction(truss, one);
        (double bx, double by) = Direction(truss, other);
        return Math.Asin(Math.Min(1, Math.Abs((ax * by) - (ay * bx))));
    }

    private static (double X, double Y) Direction(Truss truss, int member)
    {
        Joint from = truss.Joints[truss.FromJoint(member)], to = truss.Joints[truss.ToJoint(member)];
        double length = truss.Length(member);
        return ((to.X - from.X) / length, (to.Y - from.Y) / length);
    }
}
