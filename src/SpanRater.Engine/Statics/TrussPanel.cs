namespace SpanRater;

/// <summary>A panel of the elevation: the space closed in by members, with no member across it.</summary>
/// <param name="Corners">Its corners by position in <see cref="Truss.Joints"/>, from the lowest anticlockwise; of two equally low the left one.</param>
public sealed record TrussPanel(IReadOnlyList<int> Corners)
{
    /// <summary>
    /// The panels of a truss, from the left. Members that cross another one without a joint are passed over, so that a panel
    /// with crossed diagonals is one panel; so are joints that hang on a single bar.
    /// </summary>
    /// <param name="truss">The truss.</param>
    public static IReadOnlyList<TrussPanel> Of(Truss truss)
    {
        ArgumentNullException.ThrowIfNull(truss);
        List<int>[] around = Neighbours(truss);
        var walked = new HashSet<(int, int)>();
        var panels = new List<TrussPanel>();
        for (int start = 0; start < around.Length; start++)
        {
            foreach (int first in around[start].Where(first => !walked.Contains((start, first))))
            {
                if (Walk(truss, around, start, first, walked) is { } corners)
                {
                    panels.Add(new TrussPanel(corners));
                }
            }
        }

        return [.. panels.OrderBy(p => p.Corners.Average(c => truss.Joints[c].X)).ThenBy(p => p.Corners.Average(c => truss.Joints[c].Y))];
    }

    // Neighbours of each joint, anticlockwise.
    private static List<int>[] Neighbours(Truss truss)
    {
        List<int>[] around = [.. truss.Joints.Select(_ => new List<int>())];
        for (int m = 0; m < truss.Members.Count; m++)
        {
            int from = truss.FromJoint(m), to = truss.ToJoint(m);
            if (!Enumerable.Range(0, truss.Members.Count).Any(other => Elevations.Cross(truss, from, to, truss.FromJoint(other), truss.ToJoint(other))))
            {
                around[from].Add(to);
                around[to].Add(from);
            }
        }

        while (Array.FindIndex(around, a => a.Count == 1) is var loose and >= 0)
        {
            around[around[loose][0]].Remove(loose);
            around[loose].Clear();
        }

        for (int j = 0; j < around.Length; j++)
        {
            Joint at = truss.Joints[j];
            around[j] = [.. around[j].OrderBy(n => Math.Atan2(truss.Joints[n].Y - at.Y, truss.Joints[n].X - at.X))];
        }

        return around;
    }

    // Round the space to the left of a member: at every joint the next member clockwise from the one arrived on. The walk round
    // the outside runs clockwise and encloses a negative area.
    private static int[]? Walk(Truss truss, List<int>[] around, int start, int first, HashSet<(int, int)> walked)
    {
        var corners = new List<int>();
        (int from, int to) = (start, first);
        double area = 0, size = 0;
        while (walked.Add((from, to)))
        {
            corners.Add(from);
            Joint a = truss.Joints[from], b = truss.Joints[to], origin = truss.Joints[start];
            area += ((a.X - origin.X) * (b.Y - origin.Y)) - ((b.X - origin.X) * (a.Y - origin.Y));
            size += double.Hypot(b.X - a.X, b.Y - a.Y);
            List<int> next = around[to];
            (from, to) = (to, next[(next.IndexOf(from) + next.Count - 1) % next.Count]);
        }

        if (area <= 1e-9 * size * size || corners.Distinct().Count() < corners.Count)
        {
            return null;
        }

        int lowest = Enumerable.Range(0, corners.Count).OrderBy(c => Math.Round(truss.Joints[corners[c]].Y / size, 9)).ThenBy(c => truss.Joints[corners[c]].X).First();
        return [.. corners.Skip(lowest).Concat(corners.Take(lowest))];
    }
}
