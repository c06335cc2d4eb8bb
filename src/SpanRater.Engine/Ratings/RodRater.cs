namespace SpanRater;

/// <summary>
/// Rates the members of a truss with rods for one vehicle. Effects do not add up, so the factor is the smallest scale of the
/// factored vehicle at which the factored total reaches the capacity, over all positions, directions, gaps and pairs of dead
/// factors; rods go slack where they do at that scale, not at the whole vehicle.
/// </summary>
internal sealed class RodRater
{
    private readonly Bridge bridge;
    private readonly RatingMethod method;
    private readonly RodCrossing crossing;
    private readonly Vehicle vehicle;
    private readonly ImpactPolicy impact;
    private readonly List<FactoredDead> deadLoads = [];
    private readonly KinkedRays unfactored;

    public RodRater(Bridge bridge, RatingMethod method, RodCrossing crossing, Vehicle vehicle, KinkedPlan plan, ImpactPolicy impact)
    {
        this.bridge = bridge;
        this.method = method;
        this.crossing = crossing;
        this.vehicle = vehicle;
        this.impact = impact;
        unfactored = plan.With(crossing.Dead(1, 1));
        DeadFactors factors = method.DeadFactorsWith(bridge.Rating);
        foreach (double onComponents in new[] { factors.Components, factors.RelievingComponents }.Distinct())
        {
            foreach (double onWearing in crossing.WearingSurface is null ? [factors.WearingSurface] : new[] { factors.WearingSurface, factors.RelievingWearingSurface }.Distinct())
            {
                deadLoads.Add(new FactoredDead(onComponents, onWearing, plan.With(crossing.Dead(onComponents, onWearing))));
            }
        }
    }

    /// <summary>The peaks of the part of the vehicle that one truss carries, with the dead load as it is.</summary>
    public Outcome<IReadOnlyList<PeakPair>> PeaksAt(double share) => crossing.Roll(vehicle, unfactored, share);

    /// <summary>The member that goes slack first with nothing to take over from it, and the factor at which it does; null where none ever does.</summary>
    public GoesSlack? FirstSlack(RatingLevel level, double liveFactor, LateralShare share)
    {
        (int Rod, FactoredDead Dead, KinkedScale Reached, double Factor)? first = null;
        foreach (int rod in crossing.Unpaired)
        {
            foreach (FactoredDead dead in deadLoads)
            {
                double limit = PairedRods.ZeroForce * (vehicle.Train.Weight + Math.Abs(dead.Rays.DeadAlone(rod)));
                if (Least(rod, Sense.Compression, limit, dead) is { } reached && reached.Scale / (liveFactor * share.Value) is var factor && !(factor >= first?.Factor))
                {
                    first = (rod, dead, reached, factor);
                }
            }
        }

        return first is { } found ? Slack(found.Rod, found.Dead, found.Reached, found.Factor, level, share) : null;
    }

    /// <summary>The row with its factor, as far as the rods allow one.</summary>
    /// <param name="row">A row with its capacity, share and peak.</param>
    /// <param name="cap">The first member that goes slack with nothing to take over; null where none does.</param>
    /// <param name="withheld">What withholds every rating of the vehicle; null where nothing does.</param>
    public MemberRow Rate(MemberRow row, GoesSlack? cap, NotRatedReason.Uncarried? withheld)
    {
        double sign = row.Sense == Sense.Tension ? 1 : -1;
        FactoredDead heaviest = deadLoads.MaxBy(d => sign * d.Rays.DeadAlone(row.MemberIndex))!;
        row = WithPeak(WithDead(row, heaviest));
        if (row.Member.TensionOnly && row.Sense == Sense.Compression)
        {
            return row with { Status = RatingStatus.Slack };
        }

        if (row.Capacity <= row.FactoredDead)
        {
            return row with { Status = RatingStatus.DeadExceeds, Factor = 0, Reason = null };
        }

        if (row.Reason is not null || withheld is not null)
        {
            return row.Reason is not null ? row : row with { Status = RatingStatus.Withheld, Reason = withheld };
        }

        if (row.Capacity is not { } capacity)
        {
            return row.Live is not null || row.FactoredDead > 0 || IsLoaded(row, cap)
                ? row with { Reason = row.WithoutCapacity(method) }
                : row with { Status = RatingStatus.NotLoaded };
        }

        if (Least(row, capacity) is not { } found)
        {
            // What loads the member without ever using up its capacity is bounded by the rods alone.
            return row.Live is not null && cap is not null
                ? WithCap(row, cap)
                : row with { Status = RatingStatus.NotLoaded };
        }

        MemberRow asked = row;
        MemberRow reached = Reached(row, found.Dead, found.Scale, cap) with { FactorAt = other => FactorWith(asked, other, cap) };

        // What the vehicle does not load as it is, and only would where the rods have failed, is not loaded.
        return reached.CappedBy is not null && row.Live is null ? row with { Status = RatingStatus.NotLoaded } : reached;
    }

    private GoesSlack Slack(int rod, FactoredDead dead, KinkedScale reached, double factor, RatingLevel level, LateralShare share)
    {
        ActingSet? set = crossing.SetsAt(reached.Ray, reached.Weight).Value?[0];
        return new GoesSlack(bridge.Truss.Members[rod].Name, factor)
        {
            Level = level,
            Share = share,
            Impact = reached.Addition - 1,
            ComponentsFactor = dead.OnComponents,
            WearingFactor = dead.OnWearing,
            DeadComponents = (set?.Components ?? crossing.Components!).MemberForces[rod],
            DeadWearing = (set is null ? crossing.WearingSurface : set.WearingSurface)?.MemberForces[rod] ?? 0,
            Position = set is null ? null : crossing.Describe(rod, reached.Ray, reached.Weight, 0, set),
        };
    }

    private MemberRow WithCap(MemberRow row, GoesSlack cap) =>
        row with { Status = RatingStatus.Rated, Factor = cap.Factor, CappedBy = cap.Member, FactorAt = other => FactorWith(row, other, cap) };

    private double? FactorWith(MemberRow row, double capacity, GoesSlack? cap)
    {
        double? own = capacity <= row.FactoredDead ? 0 : Least(row, capacity) is { } found ? FactorOf(row, found.Scale) : null;
        return own is { } factor && !(factor > cap?.Factor) ? factor : cap?.Factor;
    }

    // Whether any part of the factored vehicle loads a member that the vehicle as it is does not: a counter may wake under factors alone.
    private bool IsLoaded(MemberRow row, GoesSlack? cap) =>
        Least(row, PairedRods.ZeroForce * (vehicle.Train.Weight + Math.Abs(row.FactoredDead))) is { } found
        && !(FactorOf(row, found.Scale) > cap?.Factor);

    private (FactoredDead Dead, KinkedScale Scale)? Least(MemberRow row, double limit)
    {
        (FactoredDead Dead, KinkedScale Scale)? least = null;
        foreach (FactoredDead dead in deadLoads)
        {
            if (Least(row.MemberIndex, row.Sense, limit, dead) is { } scale && !(scale.Scale >= least?.Scale.Scale))
            {
                least = (dead, scale);
            }
        }

        return least;
    }

    private static double FactorOf(MemberRow row, KinkedScale reached) => reached.Scale / (row.Level.LiveFactor!.Value * row.Share!.Value);

    private MemberRow Reached(MemberRow row, FactoredDead dead, KinkedScale reached, GoesSlack? cap)
    {
        double factor = FactorOf(row, reached);
        bool capped = factor > cap?.Factor;
        CapacityReached? at = null;
        if (crossing.SetsAt(reached.Ray, reached.Weight).Value is [var set, ..])
        {
            double deadOfSet = (dead.OnComponents * set.Components.MemberForces[row.MemberIndex]) + (dead.OnWearing * (set.WearingSurface?.MemberForces[row.MemberIndex] ?? 0));
            at = new CapacityReached(crossing.Describe(row.MemberIndex, reached.Ray, reached.Weight, (row.Sense == Sense.Tension ? 1 : -1) * row.Capacity!.Value, set), deadOfSet);
        }

        return WithDead(row, dead) with
        {
            Status = RatingStatus.Rated,
            Factor = capped ? cap!.Factor : factor,
            CappedBy = capped ? cap!.Member : null,
            Live = row.Live ?? 0,
            Impact = reached.Addition - 1,
            LoadedLength = LoadedLength(row.MemberIndex, row.Sense, reached.Ray, reached.Weight),
            Reached = at,
        };
    }

    private KinkedScale? Least(int member, Sense sense, double limit, FactoredDead dead) => dead.Rays.LeastScale(
        member,
        sense == Sense.Tension ? 1 : -1,
        limit,
        (ray, weight) => 1 + ImpactOn(member, LoadedLength(member, sense, ray, weight)),
        1 + ImpactOn(member, 0));

    private double ImpactOn(int member, double loadedLength) => impact.Of(vehicle.Class, bridge.Truss.Members[member], loadedLength).Value;

    // Where a rod is just at zero two sets act, and the shorter length, with the larger impact, is taken.
    private double LoadedLength(int member, Sense sense, Ray ray, double scale)
    {
        double? shortest = null;
        foreach (ActingSet set in crossing.SetsAt(ray, scale).Value ?? [])
        {
            double length = LiveLoadPlan.LoadedLength(set.Lines.Members[member].Line, sense, crossing.Describe(member, ray, scale, 0, set).Axles);
            shortest = Math.Min(shortest ?? length, length);
        }

        return shortest ?? 0;
    }

    private static MemberRow WithDead(MemberRow row, FactoredDead dead) => row with
    {
        ComponentsFactor = dead.OnComponents,
        WearingFactor = dead.OnWearing,
        FactoredDead = (row.Sense == Sense.Tension ? 1 : -1) * dead.Rays.DeadAlone(row.MemberIndex),
    };

    private MemberRow WithPeak(MemberRow row)
    {
        if (row.Peak is not { } peak)
        {
            return row;
        }

        InfluenceLine line = crossing.LinesAt(peak).Members[row.MemberIndex].Line;
        double length = LiveLoadPlan.LoadedLength(line, row.Sense, peak.Axles);
        return row with { Live = peak.Force, LoadedLength = length, Impact = ImpactOn(row.MemberIndex, length) };
    }

    private sealed record FactoredDead(double OnComponents, double OnWearing, KinkedRays Rays);
}
