namespace SpanRater;

/// <summary>
/// A train driving one way with each of its varying gaps held at its smallest value, held at its largest, or free.
/// The free gaps part it into rigid groups. The response is straight between vertices, and at a vertex every group has
/// an axle on a panel point; the best vertex is found group by group from the back, since the groups' effects add up and
/// a free gap ties a group to its neighbour only.
/// </summary>
internal sealed class Arrangement
{
    /// <summary>In place of the vertices where there is one group and none to follow it.</summary>
    private static readonly Vertex[][] OneGroup = [[]];

    private readonly RigidGroup[] groups;
    private readonly AxleGap[] freeGaps;
    private readonly double[] gaps;
    private readonly int[] freeGapIndex;
    private readonly double tolerance;
    private readonly double towardFront;

    private Arrangement(Direction direction, RigidGroup[] groups, AxleGap[] freeGaps, double[] gaps, int[] freeGapIndex, double tolerance)
    {
        Direction = direction;
        this.groups = groups;
        this.freeGaps = freeGaps;
        this.gaps = gaps;
        this.freeGapIndex = freeGapIndex;
        this.tolerance = tolerance;
        towardFront = direction == Direction.Right ? 1 : -1;
    }

    private enum GapSetting
    {
        Least,
        Most,
        Free,
    }

    public Direction Direction { get; }

    /// <summary>The rigid groups, front to back.</summary>
    public IReadOnlyList<RigidGroup> Groups => groups;

    /// <summary>The free gaps, one behind each group but the last.</summary>
    public IReadOnlyList<AxleGap> FreeGaps => freeGaps;

    /// <summary>+1 where the front has the larger x, -1 where the smaller.</summary>
    public double TowardFront => towardFront;

    /// <summary>All arrangements of a train: both directions, right first, and every setting of the varying gaps.</summary>
    public static List<Arrangement> All(double[] stations, AxleTrain train)
    {
        double tolerance = RollingPlan.OnPanelPoint * (stations[^1] - stations[0]);
        int[] varying = [.. Enumerable.Range(0, train.Gaps.Count).Where(g => train.Gaps[g].Varies)];
        var arrangements = new List<Arrangement>();
        foreach (Direction direction in (Direction[])[Direction.Right, Direction.Left])
        {
            for (int code = 0; code < Math.Pow(3, varying.Length); code++)
            {
                var settings = new GapSetting[train.Gaps.Count];
                int rest = code;
                foreach (int g in varying)
                {
                    settings[g] = (GapSetting)(rest % 3);
                    rest /= 3;
                }

                arrangements.Add(Make(stations, train, direction, settings, tolerance));
            }
        }

        return arrangements;
    }

    /// <summary>Offers every vertex that can be the peak in a sense to the search.</summary>
    public void Search(ReadOnlySpan<double> ordinates, double sign, bool leaveOutRelieving, PeakSearch search)
    {
        if (groups is [var only])
        {
            // A train without free gaps needs no table of what may follow: most do, and most of the time went into filling it.
            for (int p = 0; p < only.Positions.Length; p++)
            {
                int approaches = only.TouchesEdge(p) ? 3 : 1;
                for (int a = 0; a < approaches; a++)
                {
                    search.Offer(only.Effect(p, (Approach)a, ordinates, sign, leaveOutRelieving), this, (p * 3) + a, OneGroup);
                }
            }

            return;
        }

        Vertex[][] best = Vertices(ordinates, sign, leaveOutRelieving, search.Tolerance);
        for (int v = 0; v < best[0].Length; v++)
        {
            if (best[0][v].Reachable)
            {
                search.Offer(best[0][v].Value, this, v, best);
            }
        }
    }

    /// <summary>Every vertex of every group, with the best that it and the groups behind it can give.</summary>
    public Vertex[][] Vertices(ReadOnlySpan<double> ordinates, double sign, bool leaveOutRelieving, double equal)
    {
        Vertex[][] best = new Vertex[groups.Length][];
        for (int g = groups.Length - 1; g >= 0; g--)
        {
            best[g] = new Vertex[groups[g].Positions.Length * 3];
            for (int p = 0; p < groups[g].Positions.Length; p++)
            {
                int approaches = groups[g].TouchesEdge(p) ? 3 : 1;
                for (int a = 0; a < 3; a++)
                {
                    best[g][(p * 3) + a] = a >= approaches
                        ? Vertex.None
                        : Extend(g, p, (Approach)a, groups[g].Effect(p, (Approach)a, ordinates, sign, leaveOutRelieving), best, equal);
                }
            }
        }

        return best;
    }

    /// <summary>x of the front axle at a vertex.</summary>
    public double StationOf(int vertex) => groups[0].Positions[vertex / 3];

    /// <summary>All gaps at a vertex, front to back.</summary>
    public double[] GapsOf(int vertex, Vertex[][] best)
    {
        var free = new double[freeGaps.Length];
        for (int g = 0; g < freeGaps.Length; g++)
        {
            int next = best[g][vertex].Next;
            free[g] = GapBetween(g, vertex / 3, next / 3);
            vertex = next;
        }

        return GapsWith(free);
    }

    /// <summary>All gaps, front to back, with those that are free as they are given.</summary>
    public double[] GapsWith(IReadOnlyList<double> free)
    {
        double[] all = [.. gaps];
        for (int g = 0; g < freeGaps.Length; g++)
        {
            all[freeGapIndex[g]] = Math.Clamp(free[g], freeGaps[g].Least, freeGaps[g].Most);
        }

        return all;
    }

    /// <summary>On which side of a vertex the response is taken: that of the foremost group that is not at its position itself.</summary>
    public Approach ApproachOf(int vertex, Vertex[][] best)
    {
        for (int g = 0; g < groups.Length; g++)
        {
            if (vertex % 3 != (int)Approach.At)
            {
                return (Approach)(vertex % 3);
            }

            vertex = Next(g, vertex, best);
        }

        return Approach.At;
    }

    /// <summary>The axles at a vertex, front to back, with what each contributes.</summary>
    public List<AxleEffect> AxlesOf(int vertex, Vertex[][] best, ReadOnlySpan<double> ordinates, double sign, bool leaveOutRelieving)
    {
        var axles = new List<AxleEffect>();
        for (int g = 0; g < groups.Length; g++)
        {
            groups[g].Describe(vertex / 3, (Approach)(vertex % 3), ordinates, sign, leaveOutRelieving, axles);
            vertex = Next(g, vertex, best);
        }

        return axles;
    }

    // The best continuation behind group g: of equal ones that with the smallest gap.
    private Vertex Extend(int g, int position, Approach approach, double effect, Vertex[][] best, double equal)
    {
        if (g == groups.Length - 1)
        {
            return new Vertex(effect, -1, true);
        }

        Vertex[] behind = best[g + 1];
        (int first, int end) = Reach(g, position);
        double highest = double.NegativeInfinity;
        for (int v = first; v < end; v++)
        {
            if (behind[v].Reachable && behind[v].Value > highest && MayFollow(g, position, approach, v))
            {
                highest = behind[v].Value;
            }
        }

        int chosen = -1;
        double smallest = double.PositiveInfinity;
        for (int v = first; v < end; v++)
        {
            if (!behind[v].Reachable || behind[v].Value < highest - equal || !MayFollow(g, position, approach, v))
            {
                continue;
            }

            double gap = GapBetween(g, position, v / 3);
            if (gap < smallest - tolerance)
            {
                (chosen, smallest) = (v, gap);
            }
        }

        return chosen < 0 ? Vertex.None : new Vertex(effect + behind[chosen].Value, chosen, true);
    }

    private int Next(int g, int vertex, Vertex[][] best) => g == groups.Length - 1 ? -1 : best[g][vertex].Next;

    // The vertices of the group behind whose gap is within its range: positions increase, and with them the gap falls or rises.
    private (int First, int End) Reach(int g, int position)
    {
        double[] behind = groups[g + 1].Positions;
        double last = groups[g].LastAxle(position), slack = 2 * tolerance;
        (double low, double high) = towardFront > 0 ? (last - freeGaps[g].Most, last - freeGaps[g].Least) : (last + freeGaps[g].Least, last + freeGaps[g].Most);
        return (3 * FirstAbove(behind, low - slack), 3 * FirstAbove(behind, high + slack));
    }

    private static int FirstAbove(double[] positions, double bound)
    {
        int low = 0, high = positions.Length;
        while (low < high)
        {
            int middle = (low + high) / 2;
            (low, high) = positions[middle] > bound ? (low, middle) : (middle + 1, high);
        }

        return low;
    }

    // A free gap stays within its range, and where it stands at a limit the two groups may not be nudged apart or together beyond it.
    private bool MayFollow(int g, int position, Approach approach, int vertexBehind)
    {
        double gap = GapBetween(g, position, vertexBehind / 3);
        if (gap < freeGaps[g].Least - tolerance || gap > freeGaps[g].Most + tolerance)
        {
            return false;
        }

        double opens = towardFront * (Nudge(approach) - Nudge((Approach)(vertexBehind % 3)));
        return !(opens < 0 && gap <= freeGaps[g].Least + tolerance) && !(opens > 0 && gap >= freeGaps[g].Most - tolerance);
    }

    /// <summary>Which way a limit lies from its position.</summary>
    public static double Nudge(Approach approach) => approach switch
    {
        Approach.JustLeft => -1,
        Approach.JustRight => 1,
        _ => 0,
    };

    private double GapBetween(int g, int position, int positionBehind) =>
        towardFront * (groups[g].LastAxle(position) - groups[g + 1].Positions[positionBehind]);

    private static Arrangement Make(double[] stations, AxleTrain train, Direction direction, GapSetting[] settings, double tolerance)
    {
        double backward = direction == Direction.Right ? -1 : 1;
        var gaps = new double[train.Gaps.Count];
        var groups = new List<RigidGroup>();
        var freeGaps = new List<int>();
        List<double> loads = [train.Loads[0]], offsets = [0];
        for (int g = 0; g < gaps.Length; g++)
        {
            gaps[g] = settings[g] == GapSetting.Most ? train.Gaps[g].Most : train.Gaps[g].Least;
            if (settings[g] == GapSetting.Free)
            {
                freeGaps.Add(g);
                groups.Add(new RigidGroup(stations, [.. loads], [.. offsets], tolerance));
                (loads, offsets) = ([train.Loads[g + 1]], [0]);
            }
            else
            {
                offsets.Add(offsets[^1] + (backward * gaps[g]));
                loads.Add(train.Loads[g + 1]);
            }
        }

        groups.Add(new RigidGroup(stations, [.. loads], [.. offsets], tolerance));
        return new Arrangement(direction, [.. groups], [.. freeGaps.Select(g => train.Gaps[g])], gaps, [.. freeGaps], tolerance);
    }

    /// <summary>The best that a group in one position can give together with all groups behind it.</summary>
    /// <param name="Value">Effect in the sense sought.</param>
    /// <param name="Next">Vertex of the group behind; -1 for the last group.</param>
    /// <param name="Reachable">False where no group behind can follow.</param>
    internal readonly record struct Vertex(double Value, int Next, bool Reachable)
    {
        public static Vertex None => new(double.NegativeInfinity, -1, false);
    }
}
