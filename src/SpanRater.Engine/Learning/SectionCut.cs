namespace SpanRater;

/// <summary>A cut of a truss into two parts, and the equation of one part that finds a member.</summary>
/// <param name="Member">The member found, by position in <see cref="Truss.Members"/>.</param>
/// <param name="Cut">The members cut, in rising order.</param>
/// <param name="Balance">The equation of the part that is kept: the one with fewer loads and reactions.</param>
/// <param name="Before">Members in the equation that are found by cuts of their own before; empty where it holds one unknown alone.</param>
public sealed record SectionCut(int Member, IReadOnlyList<int> Cut, Balance Balance, IReadOnlyList<int> Before);

/// <summary>Finds the cuts by which single members of a truss are known.</summary>
internal sealed class SectionSearch
{
    /// <summary>More members than this are not cut at once.</summary>
    private const int LargestCut = 4;

    /// <summary>An arm shorter than this part of the truss's size, or an angle this flat, is no good second check.</summary>
    private const double SmallestWeight = 0.01;

    private readonly Truss truss;
    private readonly JointTerms terms;
    private readonly Cuts cuts;
    private readonly bool[] isLoaded;
    private readonly Dictionary<int, SectionCut?> alone = [];

    public SectionSearch(Truss truss, IReadOnlyList<(double Right, double Up)> loads)
    {
        this.truss = truss;
        terms = new JointTerms(truss, new EquilibriumSystem(truss));
        cuts = new Cuts(truss.Joints.Count, [.. truss.Members.Select((_, m) => (truss.FromJoint(m), truss.ToJoint(m)))]);
        isLoaded = [.. loads.Select(l => l != (0, 0))];
    }

    /// <summary>The cuts by which a member is known, itself last: one, or those of other members before; null where none is found.</summary>
    public IReadOnlyList<SectionCut>? Of(int member)
    {
        if (Alone(member) is { } single)
        {
            return [single];
        }

        SectionCut? best = null;
        for (int size = 2; size <= LargestCut; size++)
        {
            foreach (SectionCut cut in At(member, size, mayHoldOthers: true))
            {
                if (cut.Before.All(b => Alone(b) is not null) && (best is null || cut.Before.Count < best.Before.Count))
                {
                    best = cut;
                }
            }
        }

        return best is null ? null : [.. best.Before.Select(b => Alone(b)!), best];
    }

    private SectionCut? Alone(int member)
    {
        if (!alone.TryGetValue(member, out SectionCut? found))
        {
            for (int size = 1; size <= LargestCut && found is null; size++)
            {
                found = At(member, size, mayHoldOthers: false).FirstOrDefault();
            }

            alone.Add(member, found);
        }

        return found;
    }

    // The equations of all cuts of that size, the best first: few loads on the part kept, a long arm, a small part.
    private IEnumerable<SectionCut> At(int member, int size, bool mayHoldOthers)
    {
        var found = new List<(SectionCut Cut, double Weight, int Loads)>();
        foreach (Cut cut in cuts.Of(size, member))
        {
            int[] part = Kept(cut);
            var body = new FreeBody(truss, terms, part);
            foreach (Balance balance in Equations(body, cut.Edges, member))
            {
                BalanceTerm own = balance.Terms.FirstOrDefault(t => t.Force == member);
                int[] others = [.. cut.Edges.Where(e => e != member && balance.Terms.Any(t => t.Force == e))];
                double weight = OneByOne.Weight(own, balance, body);
                if (weight >= SmallestWeight && (mayHoldOthers ? others.Length > 0 : others.Length == 0))
                {
                    found.Add((new SectionCut(member, cut.Edges, balance, others), weight, part.Sum(Burden)));
                }
            }
        }

        return found.OrderBy(f => f.Cut.Before.Count).ThenBy(f => f.Loads).ThenByDescending(f => Math.Round(f.Weight, 6)).ThenBy(f => f.Cut.Balance.Joints.Count).Select(f => f.Cut);
    }

    private int[] Kept(Cut cut)
    {
        (int Loads, int Count, double Left) Order(int[] side) => (side.Sum(Burden), side.Length, side.Min(j => truss.Joints[j].X));
        return Order(cut.Side).CompareTo(Order(cut.Other)) <= 0 ? cut.Side : cut.Other;
    }

    private int Burden(int joint) => (isLoaded[joint] ? 1 : 0) + (truss.Joints[joint].Support?.ReactionCount ?? 0);

    private static IEnumerable<Balance> Equations(FreeBody body, int[] cut, int member)
    {
        int[] others = [.. cut.Where(e => e != member)];
        yield return body.Up();
        yield return body.Right();
        for (int a = 0; a < others.Length; a++)
        {
            for (int b = a + 1; b < others.Length; b++)
            {
                if (body.Meeting(others[a], others[b]) is { } centre)
                {
                    yield return body.Moment(centre.X, centre.Y);
                }
            }

            yield return body.Across(others[a]);
        }
    }
}
