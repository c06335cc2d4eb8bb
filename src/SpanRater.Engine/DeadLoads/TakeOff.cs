namespace SpanRater;

/// <summary>
/// The dead load from what is there: each item shared to the trusses by the lever rule and to the joints by simple spans between
/// them. The loads at the joints add up to the items. Immutable.
/// </summary>
public sealed class TakeOff
{
    /// <summary>Joint loads of the two trusses are alike when they differ by no more than this part of the largest [-].</summary>
    private const double Alike = 1e-9;

    private readonly Truss truss;

    private TakeOff(Truss truss, IReadOnlyList<TakeOffItem> items)
    {
        this.truss = truss;
        Items = items;
    }

    /// <summary>The items, in the order given.</summary>
    public IReadOnlyList<TakeOffItem> Items { get; }

    /// <summary>Whether both trusses carry the same at every joint.</summary>
    /// <param name="kind">Components or wearing surface.</param>
    public bool TrussesAlike(DeadCase kind)
    {
        IReadOnlyList<double> left = JointWeights(kind, 0), right = JointWeights(kind, 1);
        return left.Zip(right, (l, r) => Math.Abs(l - r)).Max() <= Alike * left.Concat(right).Max(Math.Abs);
    }

    /// <summary>Takes off the dead load.</summary>
    /// <param name="truss">The truss.</param>
    /// <param name="deck">The deck, which has the trusses and their spacing.</param>
    /// <param name="items">The items.</param>
    /// <exception cref="ArgumentException">An item names a joint that the truss does not have, leaves the joints that carry it, or is off centre where the lever rule does not reach.</exception>
    public static TakeOff Of(Truss truss, Deck deck, IReadOnlyList<DeadItem> items)
    {
        ArgumentNullException.ThrowIfNull(truss);
        ArgumentNullException.ThrowIfNull(deck);
        ArgumentNullException.ThrowIfNull(items);
        return new TakeOff(truss, [.. items.Select(i => ItemOf(truss, deck, i))]);
    }

    /// <summary>The load case on one truss; null where no item is of that kind.</summary>
    /// <param name="kind">Components or wearing surface.</param>
    /// <param name="side">0 for the left truss, 1 for the right one.</param>
    public LoadCase? CaseOf(DeadCase kind, int side)
    {
        if (!Items.Any(i => i.Item.Case == kind))
        {
            return null;
        }

        IReadOnlyList<double> weights = JointWeights(kind, side);
        var reached = Items.Where(i => i.Item.Case == kind).SelectMany(i => i.AtJoints.Select(j => j.Joint)).ToHashSet();
        return new LoadCase(
            kind == DeadCase.Components ? Bridge.ComponentsCase : Bridge.WearingSurfaceCase,
            [.. Enumerable.Range(0, weights.Count).Where(reached.Contains).Select(j => new JointLoad(truss.Joints[j].Name, 0, 0.0 - weights[j]))]);
    }

    /// <summary>Weight at each joint of one truss, in the order of its joints [N].</summary>
    /// <param name="kind">Components or wearing surface.</param>
    /// <param name="side">0 for the left truss, 1 for the right one.</param>
    public IReadOnlyList<double> JointWeights(DeadCase kind, int side)
    {
        var weights = new double[truss.Joints.Count];
        foreach (TakeOffItem item in Items.Where(i => i.Item.Case == kind))
        {
            foreach ((int joint, double weight) in item.AtJoints)
            {
                weights[joint] += item.Share(side) * weight;
            }
        }

        return weights;
    }

    private static TakeOffItem ItemOf(Truss truss, Deck deck, DeadItem item)
    {
        if (item.Weight is DeadWeight.Members members)
        {
            return new TakeOffItem(item, HalfAtEachEnd(truss, members), 1, 1, deck.Trusses);
        }

        int[] joints = item.Joints is null ? [.. truss.PanelPoints] : [.. item.Joints.Select(n => truss.FindJoint(n) ?? throw new ArgumentException($"Item \"{item.Name}\" names joint \"{n}\", which the truss does not have.", nameof(item)))];
        IReadOnlyList<(int, double)> atJoints = item.Weight is DeadWeight.AtJoints point
            ? [.. joints.Select(j => (j, point.Load * item.Count))]
            : Spread(truss, [.. joints.OrderBy(j => truss.Joints[j].X)], item);
        double right = RightShare(deck, item);
        return new TakeOffItem(item, atJoints, deck.Trusses == 2 ? 1 - right : right, right, deck.Trusses);
    }

    private static (int, double)[] HalfAtEachEnd(Truss truss, DeadWeight.Members members)
    {
        if (members.PerMember.Count != truss.Members.Count)
        {
            throw new ArgumentException($"There are {members.PerMember.Count} weights for {truss.Members.Count} members.", nameof(members));
        }

        var weights = new double[truss.Joints.Count];
        for (int m = 0; m < truss.Members.Count; m++)
        {
            double half = members.Part * members.PerMember[m] * truss.Length(m) / 2;
            weights[truss.FromJoint(m)] += half;
            weights[truss.ToJoint(m)] += half;
        }

        return [.. weights.Select((w, j) => (j, w))];
    }

    // Simple spans from joint to joint: the part of the item over each goes to its two ends by the place of its middle.
    private static (int, double)[] Spread(Truss truss, int[] joints, DeadItem item)
    {
        double[] x = [.. joints.Select(j => truss.Joints[j].X)];
        if (x.Length < 2 || x.Zip(x.Skip(1), (a, b) => b - a).Any(l => l <= 0))
        {
            throw new ArgumentException($"Item \"{item.Name}\" spans between joints, and takes two or more of different x.", nameof(item));
        }

        double from = item.From ?? x[0], to = item.To ?? x[^1];
        if (!(from >= x[0] && from < to && to <= x[^1]))
        {
            throw new ArgumentException($"Item \"{item.Name}\" leaves the joints that carry it.", nameof(item));
        }

        double perLength = item.Weight.PerLength!.Value * item.Count;
        var weights = new double[joints.Length];
        for (int i = 0; i + 1 < x.Length; i++)
        {
            double start = Math.Max(from, x[i]), end = Math.Min(to, x[i + 1]);
            if (end > start)
            {
                double weight = perLength * (end - start), middle = (start + end) / 2, toRight = (middle - x[i]) / (x[i + 1] - x[i]);
                weights[i] += weight * (1 - toRight);
                weights[i + 1] += weight * toRight;
            }
        }

        return [.. joints.Zip(weights)];
    }

    private static double RightShare(Deck deck, DeadItem item) => item.Centre switch
    {
        0 => 1.0 / deck.Trusses,
        _ when deck is { Trusses: 2, TrussSpacing: { } spacing } => 0.5 + (item.Centre / spacing),
        _ => throw new ArgumentException($"Item \"{item.Name}\" is off centre, and the lever rule takes two trusses and their spacing.", nameof(item)),
    };
}
