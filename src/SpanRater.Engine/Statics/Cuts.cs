namespace SpanRater;

/// <summary>A way to part a graph in two by cutting edges.</summary>
/// <param name="Edges">Positions of the edges cut, in rising order; each of them joins the two sides.</param>
/// <param name="Side">Nodes of one side.</param>
/// <param name="Other">Nodes of the other side.</param>
internal sealed record Cut(int[] Edges, int[] Side, int[] Other);

/// <summary>Finds the ways to part a graph by cutting few edges: some are taken away, and the bridges of what is left are found.</summary>
internal sealed class Cuts
{
    private readonly (int A, int B)[] edges;
    private readonly int[][] edgesAt;

    public Cuts(int nodes, (int A, int B)[] edges)
    {
        this.edges = edges;
        edgesAt = [.. Enumerable.Range(0, nodes).Select(n => Enumerable.Range(0, edges.Length).Where(e => edges[e].A == n || edges[e].B == n).ToArray())];
    }

    /// <summary>Every cut of so many edges, in the order of their positions.</summary>
    /// <param name="size">Number of edges, at least one.</param>
    /// <param name="through">An edge that must be among them; null for none.</param>
    public IEnumerable<Cut> Of(int size, int? through = null)
    {
        foreach (int[] removed in Choices(through is null ? size - 1 : size - 2, through))
        {
            int[] away = through is { } one ? [one, .. removed] : removed;
            int after = removed.Length == 0 ? -1 : removed[^1];
            if (size == 1 && through is { } alone)
            {
                if (Parted([alone]) is { } single)
                {
                    yield return single;
                }

                continue;
            }

            foreach (int bridge in Bridges(away).Where(b => b > after && b != through))
            {
                if (Parted([.. away, bridge]) is { } cut)
                {
                    yield return cut;
                }
            }
        }
    }

    // Sets of that many edges in rising order, without the one that is always there.
    private IEnumerable<int[]> Choices(int count, int? without)
    {
        if (count <= 0)
        {
            return [[]];
        }

        return Choices(count - 1, without).SelectMany(c => Enumerable.Range(0, edges.Length).Where(e => e != without && (c.Length == 0 || e > c[^1])).Select(e => (int[])[.. c, e]));
    }

    // A cut counts when every edge of it joins the two sides: none could be left whole.
    private Cut? Parted(int[] cut)
    {
        bool[] away = new bool[edges.Length];
        foreach (int e in cut)
        {
            away[e] = true;
        }

        var side = Reached(edges[cut[^1]].A, away);
        var other = Reached(edges[cut[^1]].B, away);
        return cut.All(e => (side.Contains(edges[e].A) && other.Contains(edges[e].B)) || (side.Contains(edges[e].B) && other.Contains(edges[e].A)))
            && !side.Overlaps(other)
            ? new Cut([.. cut.Order()], [.. side], [.. other])
            : null;
    }

    private SortedSet<int> Reached(int start, bool[] away)
    {
        var reached = new SortedSet<int> { start };
        var open = new Stack<int>([start]);
        while (open.TryPop(out int node))
        {
            foreach (int e in edgesAt[node])
            {
                int next = edges[e].A == node ? edges[e].B : edges[e].A;
                if (!away[e] && reached.Add(next))
                {
                    open.Push(next);
                }
            }
        }

        return reached;
    }

    // Tarjan's low links: an edge is a bridge when nothing below it reaches above it. Source: R. E. Tarjan, A note on finding
    // the bridges of a graph, Information Processing Letters 2 (1974), from memory.
    private List<int> Bridges(int[] removed)
    {
        var order = new int[edgesAt.Length];
        var low = new int[edgesAt.Length];
        int time = 0;
        var bridges = new List<int>();
        bool[] away = new bool[edges.Length];
        foreach (int e in removed)
        {
            away[e] = true;
        }

        void Visit(int node, int by)
        {
            order[node] = low[node] = ++time;
            foreach (int e in edgesAt[node])
            {
                if (away[e] || e == by)
                {
                    continue;
                }

                int next = edges[e].A == node ? edges[e].B : edges[e].A;
                if (order[next] == 0)
                {
                    Visit(next, e);
                    if (low[next] > order[node])
                    {
                        bridges.Add(e);
                    }
                }

                low[node] = Math.Min(low[node], low[next]);
            }
        }

        for (int n = 0; n < edgesAt.Length; n++)
        {
            if (order[n] == 0)
            {
                Visit(n, -1);
            }
        }

        bridges.Sort();
        return bridges;
    }
}
