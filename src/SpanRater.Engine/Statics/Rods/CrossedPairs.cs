namespace SpanRater;

/// <summary>Two members that only pull and cross in one panel: at most one of them acts.</summary>
/// <param name="First">Position of the one listed first.</param>
/// <param name="Second">Position of the other.</param>
public readonly record struct CrossedPair(int First, int Second)
{
    /// <summary>
    /// The crossed pairs of a truss. A rod that crosses several others makes a pair with the one that spans the same panel; one
    /// that still has several partners, or whose partner has, makes none.
    /// </summary>
    /// <param name="truss">The truss.</param>
    public static IReadOnlyList<CrossedPair> Of(Truss truss)
    {
        ArgumentNullException.ThrowIfNull(truss);
        double tolerance = 1e-6 * (truss.Joints.Max(j => j.X) - truss.Joints.Min(j => j.X));
        int[] rods = [.. Enumerable.Range(0, truss.Members.Count).Where(m => truss.Members[m].TensionOnly)];
        int[][] partners =
        [
            .. rods.Select(rod =>
            {
                int[] crossing = [.. rods.Where(other => Cross(truss, rod, other, tolerance))];
                int[] inPanel = [.. crossing.Where(other => SpanTheSame(truss, rod, other, tolerance))];
                return inPanel.Length > 0 ? inPanel : crossing;
            }),
        ];
        var pairs = new List<CrossedPair>();
        for (int r = 0; r < rods.Length; r++)
        {
            if (partners[r] is [int other] && other > rods[r] && partners[Array.IndexOf(rods, other)] is [int back] && back == rods[r])
            {
                pairs.Add(new CrossedPair(rods[r], other));
            }
        }

        return pairs;
    }

    private static bool Cross(Truss truss, int a, int b, double tolerance) =>
        a != b && TrussGeometry.Cross(
            truss.Joints[truss.FromJoint(a)], truss.Joints[truss.ToJoint(a)], truss.Joints[truss.FromJoint(b)], truss.Joints[truss.ToJoint(b)], tolerance);

    private static bool SpanTheSame(Truss truss, int a, int b, double tolerance)
    {
        (double left, double right) = Ends(truss, a);
        (double otherLeft, double otherRight) = Ends(truss, b);
        return Math.Abs(left - otherLeft) <= tolerance && Math.Abs(right - otherRight) <= tolerance;
    }

    private static (double Left, double Right) Ends(Truss truss, int member)
    {
        double a = truss.Joints[truss.FromJoint(member)].X, b = truss.Joints[truss.ToJoint(member)].X;
        return (Math.Min(a, b), Math.Max(a, b));
    }
}
