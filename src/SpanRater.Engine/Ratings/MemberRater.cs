namespace SpanRater;

/// <summary>
/// Rates the truss members of a bridge: <c>RF = (C − gDC DC − gDW DW) / (gLL L (1 + IM))</c>, tension and compression
/// apart, each with its own capacity, effects positive in the sense rated. Source: AASHTO Manual for Bridge Evaluation,
/// 3rd ed. (2018), 6A.4.2.1 and 6B.4.1, from memory.
/// </summary>
public sealed class MemberRater
{
    private readonly Bridge bridge;
    private readonly RatingMethod method;
    private readonly DeadFactors deadFactors;
    private readonly TrussCrossing[] crossings;
    private readonly ImpactPolicy impact;
    private readonly RatingStamps stamps;
    private readonly RowCapacities capacities;
    private readonly List<RatingRow> rows = [];

    private MemberRater(Bridge bridge, RatingMethod method, TrussCrossing[] crossings)
    {
        this.bridge = bridge;
        this.method = method;
        this.crossings = crossings;
        deadFactors = method.DeadFactorsWith(bridge.Rating);
        impact = new ImpactPolicy(method, bridge.Rating, bridge.Truss.Stations[^1] - bridge.Truss.Stations[0]);
        stamps = new RatingStamps(bridge, method);
        capacities = new RowCapacities(bridge, method);
    }

    /// <summary>Rates every member for every vehicle, level and sense.</summary>
    /// <param name="bridge">The bridge; it must have the dead load case DC.</param>
    /// <param name="method">The method.</param>
    /// <param name="vehicles">The vehicles, loadings and crowds.</param>
    /// <exception cref="ArgumentException">The bridge has no case DC.</exception>
    public static Outcome<BridgeRating> Rate(Bridge bridge, RatingMethod method, IReadOnlyList<LiveLoad> vehicles)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(method);
        ArgumentNullException.ThrowIfNull(vehicles);
        if (bridge.FindCase(Bridge.ComponentsCase) is null)
        {
            throw new ArgumentException($"A bridge is rated with its dead load, case {Bridge.ComponentsCase}; it has none.", nameof(bridge));
        }

        // One truss stands for both where their dead loads are alike.
        var crossings = new List<TrussCrossing>();
        foreach (Bridge ofTruss in bridge.RightCases is null ? [bridge] : (Bridge[])[bridge.OfTruss(0), bridge.OfTruss(1)])
        {
            if (!TrussCrossing.Of(ofTruss).TryGet(out TrussCrossing? crossing, out Refusal? refusal))
            {
                return refusal;
            }

            crossings.Add(crossing);
        }

        var rater = new MemberRater(bridge, method, [.. crossings]);
        rater.stamps.AddForBridge(vehicles, crossings.TrueForAll(c => c.WearingSurface is not null));
        foreach (LiveLoad vehicle in vehicles)
        {
            rater.Rate(vehicle);
        }

        rater.RateBesideLegalVehicles(vehicles);
        rater.stamps.AddForCapacities(rater.rows);
        return new BridgeRating(bridge, method, rater.rows, rater.stamps.All, crossings);
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
            TrussCrossing crossing = CrossingOf(truss);
            RateTruss(load, truss, null, row => Rated(WithEffect(row, shared.MostOn(truss ?? 0, row.Member, crossing.Lines.Members[row.MemberIndex].Line, row.Sense))));
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

        var caps = new Dictionary<(RodRater Rater, RatingLevel Level), NotRatedReason.Uncarried?>();
        foreach ((_, LateralShare share, RodRater rater) in onTrusses)
        {
            foreach (RatingLevel level in method.LevelsOf(load.Class, bridge.Rating))
            {
                caps[(rater, level)] = level.LiveFactor is { } factor ? rater.Uncarried(level, factor, share.Value) : null;
            }
        }

        NotRatedReason.Uncarried? withheld = caps.Values.Where(c => c?.Factor < 1).MinBy(c => c!.Factor);
        foreach ((int? truss, LateralShare share, RodRater rater) in onTrusses)
        {
            // Where a rod would be compressed there are no peaks, and the row is withheld; any other refusal leaves it unrated.
            bool rolled = rater.PeaksAt(share.Value).TryGet(out IReadOnlyList<PeakPair>? peaks, out Refusal? refusal);
            NotRatedReason? reason = rolled || refusal is Refusal.UncarriedCompression ? null : new NotRatedReason.NoPeaks(refusal!);
            RateTruss(load, truss, reason, row => rater.Rate(
                row with { Share = share, Peak = peaks?[row.MemberIndex].Of(row.Sense) }, caps[(rater, row.Level)], withheld));
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
    private void RateBesideLegalVehicles(IReadOnlyList<LiveLoad> vehicles)
    {
        foreach (Vehicle emergency in vehicles.OfType<Vehicle>().Where(v => v is { Class: VehicleClass.Emergency, LaneLoading: null }))
        {
            RatingRow[] beside = crossings[0] is RodCrossing
                ? []
                : [.. NeighbourRater.Rows(emergency, [.. vehicles.OfType<Vehicle>()], bridge, method, impact, [.. rows.Where(r => r.Vehicle == emergency)], crossings[0].Lines)];
            rows.AddRange(beside);
            if (beside.Length == 0)
            {
                stamps.Add(new Stamp.EmergencyAlone());
            }
        }
    }

    private void RateTruss(LiveLoad load, int? truss, NotRatedReason? reason, Func<RatingRow, RatingRow> rate)
    {
        TrussCrossing crossing = CrossingOf(truss);
        foreach (RatingLevel level in method.LevelsOf(load.Class, bridge.Rating))
        {
            NotRatedReason? missing = reason ?? (level.LiveFactor is null ? method.WithoutLiveFactor(load.Class) : null);
            for (int m = 0; m < bridge.Truss.Members.Count; m++)
            {
                foreach (Sense sense in (Sense[])[Sense.Tension, Sense.Compression])
                {
                    rows.Add(rate(capacities.On(truss ?? 0, new RatingRow
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
                    })));
                }
            }
        }
    }

    private RatingRow WithEffect(RatingRow row, SharedEffect? effect)
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

    // Dead load that uses up the capacity comes first: it holds whatever the vehicle, and whether or not that is rated.
    private RatingRow Rated(RatingRow row)
    {
        double? room = row.Capacity - row.FactoredDead;
        if (row is { Live: { } live, Impact: { } allowance, Level.LiveFactor: { } liveFactor, Reason: null })
        {
            double factored = liveFactor * Math.Abs(live) * (1 + allowance), dead = row.FactoredDead;
            row = row with { FactorAt = capacity => Math.Max(0, capacity - dead) / factored };
        }

        if (room <= 0)
        {
            return row with { Status = RatingStatus.DeadExceeds, Factor = 0, Reason = null };
        }

        if (row.Reason is not null)
        {
            return row;
        }

        if (row.FactorAt is null)
        {
            // A capacity is missing only where something asks for it: here neither live nor dead load acts in this sense.
            return room is null && row.FactoredDead > 0 ? WithoutCapacity(row) : row with { Status = RatingStatus.NotLoaded };
        }

        return row.Capacity is { } own ? row with { Status = RatingStatus.Rated, Factor = row.FactorWith(own) } : WithoutCapacity(row);
    }

    private RatingRow WithoutCapacity(RatingRow row) => row with { Reason = row.WithoutCapacity(method) };
}
