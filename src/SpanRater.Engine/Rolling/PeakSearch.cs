namespace SpanRater;

/// <summary>
/// Keeps the best of the vertices offered to it. Values within the tolerance of the highest are equal, and among those the
/// order decides: right before left, then the smaller gaps, front to back, then the smaller station.
/// </summary>
internal sealed class PeakSearch(double tolerance, double zero)
{
    private double highest = double.NegativeInfinity;
    private double value = double.NegativeInfinity;
    private Arrangement? arrangement;
    private int vertex;
    private Arrangement.Vertex[][] best = [];
    private double[]? gaps;

    /// <summary>Two effects closer than this are equal.</summary>
    public double Tolerance => tolerance;

    public void Offer(double candidate, Arrangement from, int at, Arrangement.Vertex[][] chain)
    {
        highest = Math.Max(highest, candidate);
        if (candidate < highest - tolerance)
        {
            return;
        }

        bool wins = arrangement is null || value < highest - tolerance || IsEarlier(from, at, chain);
        if (wins)
        {
            (value, arrangement, vertex, best, gaps) = (candidate, from, at, chain, null);
        }
    }

    /// <summary>The peak, or null where nothing reaches above zero.</summary>
    public Peak? Result(ReadOnlySpan<double> ordinates, double sign, bool leaveOutRelieving)
    {
        if (arrangement is null || value <= zero)
        {
            return null;
        }

        List<AxleEffect> axles = arrangement.AxlesOf(vertex, best, ordinates, sign, leaveOutRelieving);
        return new Peak(
            axles.Sum(a => a.Effect),
            arrangement.StationOf(vertex),
            arrangement.Direction,
            arrangement.GapsOf(vertex, best),
            axles,
            arrangement.ApproachOf(vertex, best));
    }

    private bool IsEarlier(Arrangement from, int at, Arrangement.Vertex[][] chain)
    {
        if (from.Direction != arrangement!.Direction)
        {
            return from.Direction < arrangement.Direction;
        }

        // Within one arrangement without free gaps the gaps are the same, and stations are offered in increasing order.
        if (ReferenceEquals(from, arrangement) && chain.Length == 1)
        {
            return false;
        }

        gaps ??= arrangement.GapsOf(vertex, best);
        double[] others = from.GapsOf(at, chain);
        for (int g = 0; g < gaps.Length; g++)
        {
            if (Math.Abs(others[g] - gaps[g]) > RollingPlan.OnPanelPoint * gaps[g])
            {
                return others[g] < gaps[g];
            }
        }

        return from.StationOf(at) < arrangement.StationOf(vertex);
    }
}
