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
    private readonly TrussCrossing crossing;
    private readonly ImpactPolicy impact;
    private readonly RatingStamps stamps;
    private readonly List<RatingRow> rows = [];

    private MemberRater(Bridge bridge, RatingMethod method, TrussCrossing crossing)
    {
        this.bridge = bridge;
        this.method = method;
        this.crossing = crossing;
        deadFactors = method.DeadFactorsWith(bridge.Rating);
        impact = new ImpactPolicy(method, bridge.Rating, bridge.Truss.Stations[^1] - bridge.Truss.Stations[0]);
        stamps = new RatingStamps(bridge, method);
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

        if (!TrussCrossing.Of(bridge).TryGet(out TrussCrossing? crossing, out Refusal? refusal))
        {
            return refusal;
        }

        var rater = new MemberRater(bridge, method, crossing);
        rater.stamps.AddForBridge(vehicles, crossing.WearingSurface is not null);
        foreach (LiveLoad vehicle in vehicles)
        {
            rater.Rate(vehicle);
        }

        rater.RateBesideLegalVehicles(vehicles);
        return new BridgeRating(bridge, method, rater.rows, rater.stamps.All, crossing);
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

        if (crossing is RodCrossing rods)
        {
            RateWithRods(load, rods, shared);
            return;
        }

        foreach ((string? name, int truss) in Trusses(shared.Alike))
        {
            RateTruss(load, name, null, row => Rated(WithEffect(row, shared.MostOn(truss, row.Member, crossing.Lines.Members[row.MemberIndex].Line, row.Sense))));
        }
    }

    private (string? Name, int Truss)[] Trusses(bool alike) => alike ? [(null, 0)] : [(bridge.Deck.TrussNames[0], 0), (bridge.Deck.TrussNames[1], 1)];

    private void RateAlike(LiveLoad load, NotRatedReason reason) => RateTruss(load, null, reason, row => Rated(WithEffect(row, null)));

    // A vehicle that no set of rods carries at one level or on one truss is withheld at all of them.
    private void RateWithRods(LiveLoad load, RodCrossing rods, SharedLiveLoad shared)
    {
        if (TrainOf(load) is not { } vehicle)
        {
            RateAlike(load, new NotRatedReason.NotATrainWithRods(load.Name));
            return;
        }

        if (!rods.PlanOf(vehicle).TryGet(out KinkedPlan? plan, out _))
        {
            RateAlike(load, new NotRatedReason.RelievingAxlesWithRods(vehicle.Name));
            return;
        }

        ShareOutcome.Found shares = shared.VehicleShares.Single().Shares;
        var rater = new RodRater(bridge, method, rods, vehicle, plan, impact);
        (string? Truss, LateralShare Share)[] trusses = [.. Trusses(shared.Alike).Select(t => (t.Name, t.Truss == 0 ? shares.Left : shares.Right))];
        var caps = new Dictionary<(string? Truss, RatingLevel Level), NotRatedReason.Uncarried?>();
        foreach ((string? truss, LateralShare share) in trusses)
        {
            foreach (RatingLevel level in method.LevelsOf(load.Class, bridge.Rating))
            {
                caps[(truss, level)] = level.LiveFactor is { } factor ? rater.Uncarried(factor, share.Value) : null;
            }
        }

        NotRatedReason.Uncarried? withheld = caps.Values.Where(c => c?.Factor < 1).MinBy(c => c!.Factor);
        foreach ((string? truss, LateralShare share) in trusses)
        {
            // Where a rod would be compressed there are no peaks, and the row is withheld; any other refusal leaves it unrated.
            bool rolled = rater.PeaksAt(share.Value).TryGet(out IReadOnlyList<PeakPair>? peaks, out Refusal? refusal);
            NotRatedReason? reason = rolled || refusal is Refusal.UncarriedCompression ? null : new NotRatedReason.NoPeaks(refusal!);
            RateTruss(load, truss, reason, row => rater.Rate(
                row with { Share = share, Peak = peaks?[row.MemberIndex].Of(row.Sense) }, caps[(truss, row.Level)], withheld));
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
            RatingRow[] beside = crossing is RodCrossing
                ? []
                : [.. NeighbourRater.Rows(emergency, [.. vehicles.OfType<Vehicle>()], bridge, method, impact, [.. rows.Where(r => r.Vehicle == emergency)], crossing.Lines)];
            rows.AddRange(beside);
            if (beside.Length == 0)
            {
                stamps.Add(new Stamp.EmergencyAlone());
            }
        }
    }

    private void RateTruss(LiveLoad load, string? truss, NotRatedReason? reason, Func<RatingRow, RatingRow> rate)
    {
        foreach (RatingLevel level in method.LevelsOf(load.Class, bridge.Rating))
        {
            NotRatedReason? missing = reason ?? (level.LiveFactor is null ? new NotRatedReason.NoPermitFactor() : null);
            for (int m = 0; m < bridge.Truss.Members.Count; m++)
            {
                foreach (Sense sense in (Sense[])[Sense.Tension, Sense.Compression])
                {
                    rows.Add(rate(new RatingRow
                    {
                        Truss = truss,
                        MemberIndex = m,
                        Member = bridge.Truss.Members[m],
                        Vehicle = load,
                        Level = level,
                        Sense = sense,
                        Status = RatingStatus.NotRated,
                        Reason = missing,
                        Capacity = bridge.Capacities[m][method.CapacityFor(sense, level)],
                        DeadComponents = crossing.Components!.MemberForces[m],
                        DeadWearing = crossing.WearingSurface?.MemberForces[m] ?? 0,
                    }));
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
        if (room <= 0)
        {
            return row with { Status = RatingStatus.DeadExceeds, Factor = 0, Reason = null };
        }

        if (row.Reason is not null)
        {
            return row;
        }

        if (row.Live is not { } live || row.Impact is not { } allowance)
        {
            // A capacity is missing only where something asks for it: here neither live nor dead load acts in this sense.
            return room is null && row.FactoredDead > 0
                ? row with { Reason = new NotRatedReason.NoCapacity(method.CapacityFor(row.Sense, row.Level)) }
                : row with { Status = RatingStatus.NotLoaded };
        }

        return room is null
            ? row with { Reason = new NotRatedReason.NoCapacity(method.CapacityFor(row.Sense, row.Level)) }
            : row with { Status = RatingStatus.Rated, Factor = room / (row.Level.LiveFactor!.Value * Math.Abs(live) * (1 + allowance)) };
    }
}
