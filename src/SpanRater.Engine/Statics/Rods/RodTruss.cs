namespace SpanRater;

/// <summary>
/// A truss with members that only pull: rods, counters and eyebars without initial tension or misfit. A set of them acts where
/// it makes the truss stand and compresses no acting one; of a crossed pair at most one acts. Areas decide only where the
/// truss is still redundant with one rod of every pair taken out.
/// </summary>
public sealed class RodTruss : SolvableTruss
{
    /// <summary>Choices of the rod taken out of each pair that are tried to find a truss that stands.</summary>
    private const int MostBases = 64;

    private readonly ElasticRods? elastic;

    private RodTruss(Truss truss, IReadOnlyList<CrossedPair> pairs, PairedRods? paired, ElasticRods? elastic)
        : base(truss)
    {
        Pairs = pairs;
        Paired = paired;
        this.elastic = elastic;
    }

    /// <summary>The crossed pairs.</summary>
    public IReadOnlyList<CrossedPair> Pairs { get; }

    /// <summary>True where areas, not statics alone, decide which rods act.</summary>
    public bool AreasDecide => elastic is not null;

    /// <summary>The rods where statics alone says which act; else null.</summary>
    internal PairedRods? Paired { get; }

    /// <summary>Finds the pairs and what decides between them, or says why nothing can.</summary>
    /// <param name="truss">The truss.</param>
    public static new Outcome<RodTruss> Of(Truss truss)
    {
        ArgumentNullException.ThrowIfNull(truss);
        Stability all = Stability.Of(truss);
        if (all.Verdict == StabilityVerdict.Mechanism)
        {
            return new Refusal.Mechanism(all);
        }

        IReadOnlyList<CrossedPair> pairs = CrossedPair.Of(truss);
        int tried = 0;
        for (int choice = 0; choice < Math.Min(MostBases, 1 << Math.Min(pairs.Count, 10)); choice++)
        {
            CrossedPair[] turned = [.. pairs.Select((p, i) => (choice & (1 << i)) == 0 ? p : new CrossedPair(p.Second, p.First))];
            int[] seconds = [.. turned.Select(p => p.Second)];
            Stability withoutSeconds = Stability.Of(truss.Without(seconds));
            tried++;
            switch (withoutSeconds.Verdict)
            {
                case StabilityVerdict.Determinate:
                    return ActingTruss.Of(truss, seconds).TryGet(out ActingTruss? without, out Refusal? refusal)
                        && PairedRods.Of(truss, turned, without).TryGet(out PairedRods? paired, out refusal)
                        ? new RodTruss(truss, turned, paired, null)
                        : refusal;
                case StabilityVerdict.Redundant:
                    return ElasticRods.Of(truss, pairs, withoutSeconds).TryGet(out ElasticRods? elastic, out Refusal? noAreas)
                        ? new RodTruss(truss, pairs, null, elastic)
                        : noAreas;
            }
        }

        return new Refusal.NoActingSet(tried);
    }

    /// <inheritdoc/>
    public override Outcome<ForceSolution> Solve(LoadCase loads)
    {
        ArgumentNullException.ThrowIfNull(loads);
        return Paired?.Solve(loads) ?? elastic!.Solve(loads);
    }

    /// <summary>Influence lines while a set of rods is slack. They do not hold for another set, and loads under which the set changes do not add up.</summary>
    /// <param name="slack">Positions of the members that only pull and are slack.</param>
    /// <exception cref="ArgumentException">A member is not one that only pulls.</exception>
    public Outcome<InfluenceLines> Lines(IReadOnlyCollection<int> slack)
    {
        ArgumentNullException.ThrowIfNull(slack);
        if (slack.Any(m => m < 0 || m >= Truss.Members.Count || !Truss.Members[m].TensionOnly))
        {
            throw new ArgumentException("Only members that only pull can be slack.", nameof(slack));
        }

        return ActingTruss.Of(Truss, slack).TryGet(out ActingTruss? acting, out Refusal? refusal) ? acting.Lines() : refusal;
    }

    /// <summary>The members that stay slack while these pull: of each crossed pair one, of the other rods none.</summary>
    /// <param name="forces">Forces of all members under some load, tension positive [N].</param>
    public IReadOnlyList<int> SlackUnder(ForceSolution forces)
    {
        ArgumentNullException.ThrowIfNull(forces);
        IReadOnlyList<int> idle = forces.Rods?.Slack ?? [];
        return AreasDecide
            ? idle
            : [.. Pairs.Select(p => forces.Rods!.Acting.Contains(p.Second) ? p.First : p.Second)];
    }
}
