namespace SpanRater;

/// <summary>
/// The exact search on lines with kinks. Between the positions at which an axle stands on a panel point, a gap is at a limit
/// or a rod is at zero, every effect is straight; so its peaks are at the corners of these, and all corners are visited. Where
/// the weight of the train is sought as well, each corner is followed as the weight changes, and the first weight at which an
/// effect reaches its limit is taken. It knows no truss.
/// </summary>
internal sealed class KinkedPlan
{
    private readonly KinkedResponse response;
    private readonly List<Family> families = [];
    private readonly double tolerance;

    public KinkedPlan(IReadOnlyList<double> stations, AxleTrain train, KinkedResponse response)
    {
        this.response = response;
        Train = train;
        double[] deck = DeckStations.Checked(stations);
        tolerance = RollingPlan.OnPanelPoint * (deck[^1] - deck[0]);
        foreach (Arrangement arrangement in Arrangement.All(deck, train))
        {
            List<GroupPlace>[] places = [.. arrangement.Groups.Select(PlacesOf)];
            Combine(arrangement, places, []);
        }
    }

    public AxleTrain Train { get; }

    /// <summary>Every corner that there is with these dead values, ready to be followed.</summary>
    /// <param name="dead">Dead values of the effects, then of the take-overs.</param>
    public KinkedRays With(double[] dead) => new(
        response, dead, Train.Weight, [.. families.Select(f => f.Along(response, dead, tolerance)).OfType<Ray>()]);

    private void Combine(Arrangement arrangement, List<GroupPlace>[] places, GroupPlace[] chosen)
    {
        if (chosen.Length == places.Length)
        {
            foreach (int[] kinks in Subsets(chosen.Count(p => p.IsFloating), 0))
            {
                families.Add(new Family(arrangement, chosen, kinks));
            }

            return;
        }

        foreach (GroupPlace place in places[chosen.Length])
        {
            if ((place.IsFloating && chosen.Count(p => p.IsFloating) == response.Kinks) || (chosen.Length > 0 && !MayFollow(arrangement, chosen.Length - 1, chosen[^1], place)))
            {
                continue;
            }

            Combine(arrangement, places, [.. chosen, place]);
        }
    }

    private IEnumerable<int[]> Subsets(int size, int first)
    {
        if (size == 0)
        {
            return [[]];
        }

        return Enumerable.Range(first, Math.Max(0, response.Kinks - first)).SelectMany(k => Subsets(size - 1, k + 1).Select(rest => (int[])[k, .. rest]));
    }

    // Whether the gap between two groups can be within its range; where both are pinned, a limit may not be crossed by nudging them.
    private bool MayFollow(Arrangement arrangement, int g, GroupPlace ahead, GroupPlace behind)
    {
        double front = arrangement.TowardFront, last = arrangement.Groups[g].Offsets[^1];
        double one = front * (ahead.Left + last - behind.Right), other = front * (ahead.Right + last - behind.Left);
        (double least, double most) = (Math.Min(one, other), Math.Max(one, other));
        AxleGap gap = arrangement.FreeGaps[g];
        if (most < gap.Least - tolerance || least > gap.Most + tolerance)
        {
            return false;
        }

        if (ahead.IsFloating || behind.IsFloating)
        {
            return true;
        }

        double opens = front * (Arrangement.Nudge(ahead.Approach) - Arrangement.Nudge(behind.Approach));
        return !(opens < 0 && least <= gap.Least + tolerance) && !(opens > 0 && most >= gap.Most - tolerance);
    }

    private List<GroupPlace> PlacesOf(RigidGroup group)
    {
        var places = new List<GroupPlace>();
        for (int p = 0; p < group.Positions.Length; p++)
        {
            double x = group.Positions[p];
            foreach (Approach approach in group.TouchesEdge(p) ? (Approach[])[Approach.At, Approach.JustLeft, Approach.JustRight] : [Approach.At])
            {
                places.Add(new GroupPlace(p, x, x, approach, LiveValues(group, p, approach), null));
            }

            if (p + 1 < group.Positions.Length && response.Kinks > 0)
            {
                places.Add(Floating(group, p));
            }
        }

        return places;
    }

    private GroupPlace Floating(RigidGroup group, int p)
    {
        double left = group.Positions[p], right = group.Positions[p + 1];
        double[] atLeft = LiveValues(group, p, Approach.JustRight), atRight = LiveValues(group, p + 1, Approach.JustLeft);
        double[] slopes = [.. atLeft.Zip(atRight, (l, r) => (r - l) / (right - left))];
        return new GroupPlace(p, left, right, Approach.At, [.. atLeft.Zip(slopes, (l, slope) => l - (slope * left))], slopes);
    }

    private double[] LiveValues(RigidGroup group, int position, Approach approach) =>
        [.. response.Lines.Select(line => group.Effect(position, approach, line, 1, leaveOutRelieving: false))];
}
