namespace SpanRater;

/// <summary>Rates the truss members of a bridge, tension and compression apart, each with its own capacity, effects positive in the sense rated.</summary>
internal sealed class MemberRater
{
    private static readonly Sense[] BothSenses = [Sense.Tension, Sense.Compression];

    private readonly Bridge bridge;
    private readonly RatingMethod method;
    private readonly DeadFactors deadFactors;
    private readonly TrussCrossing[] crossings;
    private readonly ImpactPolicy impact;
    private readonly RatingStamps stamps;
    private readonly RowCapacities capacities;
    private readonly List<MemberRow> rows = [];

    private MemberRater(Bridge bridge, RatingMethod method, TrussCrossing[] crossings, RatingStamps stamps)
    {
        this.bridge = bridge;
        this.method = method;
        this.crossings = crossings;
        deadFactors = method.DeadFactorsWith(bridge.Rating);
        this.stamps = stamps;
        impact = ImpactPolicy.Of(bridge, method);
        capacities = new RowCapacities(bridge, method);
    }

    /// <summary>One row for every member, vehicle, level and sense.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="method">The method.</param>
    /// <param name="vehicles">The vehicles, loadings and crowds.</param>
    /// <param name="crossings">The trusses with their dead load on: one for both where they are alike.</param>
    /// <param name="stamps">Takes what is assumed.</param>
    /// <param name="stop">Ends the work between two vehicles.</param>
    public static IReadOnlyList<MemberRow> Rows(Bridge bridge, RatingMethod method, IReadOnlyList<LiveLoad> vehicles, TrussCrossing[] crossings, RatingStamps stamps, CancellationToken stop)
    {
        var rater = new MemberRater(bridge, method, crossings, stamps);
        foreach (LiveLoad vehicle in vehicles)
        {
            stop.ThrowIfCancellationRequested();
            rater.Rate(vehicle);
        }

        rater.RateBesideLegalVehicles(vehicles, stop);
        return rater.rows;
    }

    private void Rate(LiveLoad load)
    {
        if (load is Vehicle { LaneLoading: { } loading })
        {
            RateAlike(load, new NotRatedReason.PartOfLoading(loading));
            return;
        }

        (SharedLiveLoad? shared, NotRatedReason? reason) = SharedLiveLoad.Of(load, bridge, method, impact);
        if (shared is null)
        {
            RateAlike(load, reason!);
            return;
        }

        foreach ((string vehicle, double gauge, ShareOutcome.Found shares) in shared.VehicleShares)
        {
            stamps.AddForShares(vehicle, gauge, method.RuleOf(load.Class), shares);
        }

        if (crossings[0] is RodCrossing)
        {
            RateWithRods(load, shared);
            return;
        }

        foreach (int? truss in Trusses(shared.Alike))
        {
            // What a load brings to a member does not hang on the level.
            TrussCrossing crossing = CrossingOf(truss);
            var brought = new Dictionary<(int Member, Sense Sense), SharedEffect?>();
            RateTruss(load, truss, null, row =>
            {
                if (!brought.TryGetValue((row.MemberIndex, row.Sense), out SharedEffect? effect))
                {
                    effect = shared.MostOn(truss ?? 0, row.Member, crossing.Lines.Members[row.MemberIndex].Line, row.Sense);
                    brought.Add((row.MemberIndex, row.Sense), effect);
                }

                return Rated(WithEffect(row, effect));
            });
        }
    }

    // Null where what holds for one truss holds for both.
    private int?[] Trusses(bool alike) =>
        bridge.OnlyTruss is { } only ? [only] : alike && crossings.Length == 1 && bridge.RightMakes is null ? [null] : [0, 1];

    private TrussCrossing CrossingOf(int? truss) => crossings.Length == 1 ? crossings[0] : crossings[truss ?? 0];

    private void RateAlike(LiveLoad load, NotRatedReason reason)
    {
        foreach (int? truss in Trusses(alike: true))
        {
            RateTruss(load, truss, reason, row => Rated(WithEffect(row, null)));
        }
    }

    // A vehicle that no set of rods carries at one level or on one truss is withheld at all of them.
    private void RateWithRods(LiveLoad load, SharedLiveLoad shared)
    {
        if (TrainOf(load) is not { } vehicle)
        {
            RateAlike(load, new NotRatedReason.NotATrainWithRods(load.Name));
            return;
        }

        ShareOutcome.Found shares = shared.VehicleShares.Single().Shares;
        var onTrusses = new List<(int? Truss, LateralShare Share, RodRater Rater)>();
        foreach (int? truss in Trusses(shared.Alike))
        {
            var rods = (RodCrossing)CrossingOf(truss);
            if (!rods.PlanOf(vehicle).TryGet(out KinkedPlan? plan, out _))
            {
                RateAlike(load, new NotRatedReason.RelievingAxlesWithRods(vehicle.Name));
                return;
            }

            onTrusses.Add((truss, truss == 1 ? shares.Right : shares.Left, new RodRater(bridge, method, rods, vehicle, plan, impact)));
        }

        var caps = new Dictionary<(RodRater Rater, RatingLevel Level), GoesSlack?>();
        foreach ((_, LateralShare share, RodRater rater) in onTrusses)
        {
            foreach (RatingLevel level in method.LevelsOf(load.Class, bridge.Rating))
            {
                caps[(rater, level)] = level.LiveFactor is { } factor ? rater.FirstSlack(level, factor, share) : null;
            }
        }

        NotRatedReason.Uncarried? withheld = caps.Values.Where(c => c?.Factor < 1).MinBy(c => c!.Factor) is { } least
            ? new NotRatedReason.Uncarried(least.Member, least.Factor, least.Level.Name)
            : null;
        foreach ((int? truss, LateralShare share, RodRater rater) in onTrusses)
        {
            // Where a rod would be compressed there are no peaks, and the row is withheld; any other refusal leaves it unrated.
            bool rolled = rater.PeaksAt(share.Value).TryGet(out IReadOnlyList<PeakPair>? peaks, out Refusal? refusal);
            NotRatedReason? reason = rolled || refusal is Refusal.UncarriedCompression ? null : new NotRatedReason.NoPeaks(refusal!);
            RateTruss(load, truss, reason, row => rater.Rate(
                row with { Share = share, Peak = peaks?[row.MemberIndex].Of(row.Sense), FirstSlack = caps[(rater, row.Level)] }, caps[(rater, row.Level)], withheld));
        }
    }

    // Over rods effects do not add up, and only a single train is brought on.
    private static Vehicle? TrainOf(LiveLoad load) => load switch
    {
        Vehicle vehicle => vehicle,
        Loading { Lane: null, Trains: [var only] } => only,
        _ => null,
    };

    // An emergency vehicle with a legal one in the next lane: the worst of the legal vehicles asked for, in either lane.
    private void RateBesideLegalVehicles(IReadOnlyList<LiveLoad> vehicles, CancellationToken stop)
    {
        var neighbours = new NeighbourRater([.. vehicles.OfType<Vehicle>()], bridge, method, impact, crossings[0].Lines);
        foreach (Vehicle emergency in vehicles.OfType<Vehicle>().Where(v => v is { Class: VehicleClass.Emergency, LaneLoading: null }))
        {
            stop.ThrowIfCancellationRequested();
            MemberRow[] beside = crossings[0] is RodCrossing
                ? []
                : [.. neighbours.Rows(emergency, [.. rows.Where(r => ReferenceEquals(r.Vehicle, emergency))])];
            rows.AddRange(beside);
            if (beside.Length == 0)
            {
                stamps.Add(new Stamp.EmergencyAlone());
            }
        }
    }

    private void RateTruss(LiveLoad load, int? truss, NotRatedReason? reason, Func<MemberRow, MemberRow> rate)
    {
        TrussCrossing crossing = CrossingOf(truss);
        foreach (RatingLevel level in method.LevelsOf(load.Class, bridge.Rating))
        {
            NotRatedReason? missing = reason ?? (level.LiveFactor is null ? method.WithoutLiveFactor(load.Class) : null);
            for (int m = 0; m < bridge.Truss.Members.Count; m++)
            {
                foreach (Sense sense in BothSenses)
                {
                    (double? capacity, ResistanceCheck? check) = capacities.Of(truss ?? 0, m, sense, level);
                    rows.Add(rate(new MemberRow
                    {
                        Truss = truss is { } index ? bridge.Deck.TrussNames[index] : null,
                        MemberIndex = m,
                        Member = bridge.Truss.Members[m],
                        Vehicle = load,
                        Level = level,
                        Sense = sense,
                        Status = RatingStatus.NotRated,
                        Reason = missing,
                        DeadComponents = crossing.Components!.MemberForces[m],
                        DeadWearing = crossing.WearingSurface?.MemberForces[m] ?? 0,
                        Capacity = capacity,
                        Resistance = check?.Resistance,
                        Lacking = check?.Missing is { Count: > 0 } lacking ? lacking : null,
                    }));
                }
            }
        }
    }

    private MemberRow WithEffect(MemberRow row, SharedEffect? effect)
    {
        double sign = row.Sense == Sense.Tension ? 1 : -1;
        double onComponents = deadFactors.OnComponents(sign * row.DeadComponents), onWearing = deadFactors.OnWearingSurface(sign * row.DeadWearing);
        return row with
        {
            ComponentsFactor = onComponents,
            WearingFactor = onWearing,
            FactoredDead = sign * ((onComponents * row.DeadComponents) + (onWearing * row.DeadWearing)),
            Effect = effect,
            Share = effect?.Lateral,
            Peak = effect?.Peak,
            Live = effect?.Force,
            LoadedLength = effect?.Parts[0].Part.LoadedLength,
            Impact = effect?.Impact,
        };
    }

    private MemberRow Rated(MemberRow row) => (MemberRow)row.Rated(r => WithoutCapacity((MemberRow)r));

    private MemberRow WithoutCapacity(MemberRow row) => row with { Reason = row.WithoutCapacity(method) };
}
