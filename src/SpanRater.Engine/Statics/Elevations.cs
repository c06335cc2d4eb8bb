namespace SpanRater;

/// <summary>Where the lines between joints lie to one another.</summary>
internal static class Elevations
{
    /// <summary>Nearer than this part of the lines' lengths is on the line.</summary>
    private const double OnLine = 1e-6;

    /// <summary>Whether the lines between two pairs of joints cross within both; a shared end is no crossing.</summary>
    public static bool Cross(Truss truss, int a, int b, int c, int d)
    {
        IReadOnlyList<Joint> joints = truss.Joints;
        return TrussGeometry.Cross(joints[a], joints[b], joints[c], joints[d], OnLine * double.Hypot(joints[b].X - joints[a].X, joints[b].Y - joints[a].Y));
    }

    /// <summary>Whether a joint lies on the line between two others.</summary>
    public static bool LiesBetween(Truss truss, int a, int b, int joint)
    {
        Joint from = truss.Joints[a], to = truss.Joints[b], at = truss.Joints[joint];
        double length = double.Hypot(to.X - from.X, to.Y - from.Y);
        double along = (((to.X - from.X) * (at.X - from.X)) + ((to.Y - from.Y) * (at.Y - from.Y))) / length;
        return joint != a && joint != b && along > 0 && along < length && Math.Abs(Distance(truss, a, b, joint)) <= OnLine * length;
    }

    /// <summary>Whether a bar between two joints would stand clear: of every joint between them and of every member.</summary>
    public static bool IsClear(Truss truss, int a, int b) =>
        !Enumerable.Range(0, truss.Joints.Count).Any(j => LiesBetween(truss, a, b, j))
        && !Enumerable.Range(0, truss.Members.Count).Any(m => Cross(truss, a, b, truss.FromJoint(m), truss.ToJoint(m)));

    /// <summary>Whether a member joins two joints.</summary>
    public static bool AreJoined(Truss truss, int a, int b) =>
        Enumerable.Range(0, truss.Members.Count).Any(m => (truss.FromJoint(m), truss.ToJoint(m)) is var (from, to) && ((from == a && to == b) || (from == b && to == a)));

    private static double Distance(Truss truss, int a, int b, int p)
    {
        Joint from = truss.Joints[a], to = truss.Joints[b], at = truss.Joints[p];
        double dx = to.X - from.X, dy = to.Y - from.Y;
        return ((dx * (at.Y - from.Y)) - (dy * (at.X - from.X))) / double.Hypot(dx, dy);
    }
}
