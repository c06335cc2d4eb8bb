namespace SpanRater;

/// <summary>What the search for a peak looked at.</summary>
/// <param name="Positions">
/// Number of placements visited, both directions: those of the front axle for which an axle of its group stands on a panel
/// point, once for every setting of the varying gaps.
/// </param>
/// <param name="Right">The best placements driving right, the best first, each at another place; those that add nothing are left out.</param>
/// <param name="Left">The same driving left.</param>
public sealed record PlacementCandidates(int Positions, IReadOnlyList<Peak> Right, IReadOnlyList<Peak> Left);

/// <summary>Keeps every vertex of a search, to tell the best few.</summary>
internal sealed class CandidateSearch(double[] ordinates, double sign, AxleTrain train, double equal, double zero)
{
    private readonly List<(double Value, Arrangement From, int Vertex, Arrangement.Vertex[][] Chain)> found = [];

    /// <summary>Number of placements visited.</summary>
    public int Positions { get; private set; }

    private bool LeaveOut => train.RelievingAxles == RelievingAxles.LeftOut;

    /// <summary>Takes in all vertices of an arrangement; of the three sides of one position the best.</summary>
    public void Visit(Arrangement arrangement)
    {
        Arrangement.Vertex[][] chain = arrangement.Vertices(ordinates, sign, LeaveOut, equal);
        foreach (IGrouping<int, int> position in Enumerable.Range(0, chain[0].Length).Where(v => chain[0][v].Reachable).GroupBy(v => v / 3))
        {
            Positions++;
            int best = position.MaxBy(v => chain[0][v].Value);
            found.Add((chain[0][best].Value, arrangement, best, chain));
        }
    }

    /// <summary>The best of one direction. Of equal ones the smaller station comes first.</summary>
    public IReadOnlyList<Peak> Best(Direction direction, int count)
    {
        var best = new List<Peak>();
        foreach ((double _, Arrangement from, int vertex, Arrangement.Vertex[][] chain) in found
            .Where(f => f.From.Direction == direction && f.Value > zero)
            .OrderByDescending(f => Math.Round(f.Value / (100 * equal))).ThenBy(f => f.From.StationOf(f.Vertex)))
        {
            List<AxleEffect> axles = from.AxlesOf(vertex, chain, ordinates, sign, LeaveOut);
            var peak = new Peak(axles.Sum(a => a.Effect), from.StationOf(vertex), direction, from.GapsOf(vertex, chain), axles, from.ApproachOf(vertex, chain));

            // A free gap may come to rest where another arrangement holds it.
            if (!best.Exists(b => b.Axles.Zip(peak.Axles, (a, o) => Math.Abs(a.Station - o.Station)).Max() <= 1e-6))
            {
                best.Add(peak);
            }

            if (best.Count == count)
            {
                break;
            }
        }

        return best;
    }
}
