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
    private readonly List<RatingRow> rows = [];
    private readonly List<Stamp> stamps = [];

    private MemberRater(Bridge bridge, RatingMethod method, TrussCrossing crossing)
    {
        this.bridge = bridge;
        this.method = method;
        this.crossing = crossing;
        deadFactors = method.DeadFactorsWith(bridge.Rating);
    }

    /// <summary>Rates every member for every vehicle, level and sense.</summary>
    /// <param name="bridge">The bridge; it must have the dead load case DC.</param>
    /// <param name="method">The method.</param>
    /// <param name="vehicles">The vehicles and loadings.</param>
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
        rater.StampWhatWasAssumed(vehicles);
        foreach (LiveLoad vehicle in vehicles)
        {
            rater.Rate(vehicle);
        }

        return new BridgeRating(bridge, method, rater.rows, rater.stamps, crossing);
    }

    private void StampWhatWasAssumed(IReadOnlyList<LiveLoad> vehicles)
    {
        if (crossing.WearingSurface is null)
        {
            stamps.Add(new Stamp.NoWearingSurface());
        }

        if (bridge.Capacities.Any(c => Enum.GetValues<GivenCapacity>().Any(kind => c[kind] is not null)))
        {
            stamps.Add(new Stamp.GivenCapacities(method.GivenCapacityMeaning));
        }

        if (bridge.Deck.TrussShare is { } share)
        {
            stamps.Add(new Stamp.GivenShare(share, bridge.Deck.TrussShareReason));
        }

        if (bridge.Rating.Impact is { } impact)
        {
            stamps.Add(new Stamp.GivenImpact(impact));
        }
        else
        {
            stamps.AddRange(vehicles.Select(v => v.Class).Distinct().Where(c => !method.RuleOf(c).HasImpact).Select(c => new Stamp.NoImpact(c)));
        }

        if (bridge.Rating.TruckTraffic is null
            && vehicles.FirstOrDefault(v => method.UsesTruckTraffic(v.Class)) is { } first
            && method.LevelsOf(first.Class, bridge.Rating)[0].LiveFactor is { } factor)
        {
            stamps.Add(new Stamp.UnknownTruckTraffic(factor));
        }

        double deckLength = bridge.Truss.Stations[^1] - bridge.Truss.Stations[0];
        if (deckLength > method.LaneTypeLegalLoadAbove && vehicles.Any(v => v.Class == VehicleClass.Legal))
        {
            stamps.Add(new Stamp.NoLaneTypeLegalLoad(deckLength));
        }

        if (vehicles.Any(v => v.Class == VehicleClass.Emergency))
        {
            stamps.Add(new Stamp.EmergencyAlone());
        }
    }

    private void Rate(LiveLoad load)
    {
        switch (load)
        {
            case Loading { HasLaneLoad: true }:
                RateAlike(load, new NotRatedReason.LaneLoad(load.Name));
                break;
            case Vehicle { LaneLoading: { } loading }:
                RateAlike(load, new NotRatedReason.LaneLoad(loading));
                break;
            case Vehicle vehicle:
                RateShared(vehicle);
                break;
            default:
                RateAlike(load, new NotRatedReason.SeveralVehicles(load.Name));
                break;
        }
    }

    private void RateAlike(LiveLoad load, NotRatedReason reason) => RateTruss(load, null, null, null, reason);

    private void RateShared(Vehicle vehicle)
    {
        ClassRule rule = method.RuleOf(vehicle.Class);
        ShareOutcome outcome = LeverRule.Share(bridge.Deck, vehicle.Gauge, rule.MostLanes, rule.HasPresence ? method.Presence : _ => 1);
        if (outcome is not ShareOutcome.Found shares)
        {
            RateAlike(vehicle, new NotRatedReason.NoShare(outcome));
            return;
        }

        StampShare(vehicle, rule, shares);
        (string? Truss, LateralShare Share)[] trusses = shares.Alike
            ? [(null, shares.Left)]
            : [(bridge.Deck.TrussNames[0], shares.Left), (bridge.Deck.TrussNames[1], shares.Right)];
        if (crossing is RodCrossing rods)
        {
            RateWithRods(vehicle, rods, trusses);
            return;
        }

        IReadOnlyList<PeakPair> peaks = crossing.Roll(vehicle).Value!;
        foreach ((string? truss, LateralShare share) in trusses)
        {
            RateTruss(vehicle, truss, share, peaks, null);
        }
    }

    // A vehicle that no set of rods carries at one level or on one truss is withheld at all of them.
    private void RateWithRods(Vehicle vehicle, RodCrossing rods, (string? Truss, LateralShare Share)[] trusses)
    {
        if (!rods.PlanOf(vehicle).TryGet(out KinkedPlan? plan, out _))
        {
            RateAlike(vehicle, new NotRatedReason.RelievingAxlesWithRods(vehicle.Name));
            return;
        }

        var rater = new RodRater(bridge, method, rods, vehicle, plan);
        var caps = new Dictionary<(string? Truss, RatingLevel Level), NotRatedReason.Uncarried?>();
        foreach ((string? truss, LateralShare share) in trusses)
        {
            foreach (RatingLevel level in method.LevelsOf(vehicle.Class, bridge.Rating))
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
            RateTruss(vehicle, truss, share, peaks, reason, row => rater.Rate(row, caps[(truss, row.Level)], withheld));
        }
    }

    private void StampShare(Vehicle vehicle, ClassRule rule, ShareOutcome.Found shares)
    {
        if (bridge.Deck is not { TrussShare: null, Roadway: { } roadway })
        {
            return;
        }

        double nearest = Math.Min(shares.Left.WheelToKerb, shares.Right.WheelToKerb);
        if (nearest < bridge.Deck.WheelToKerb)
        {
            stamps.Add(new Stamp.NearerToKerb(vehicle.Name, nearest));
        }

        int lanes = Math.Min(LeverRule.LanesOn(roadway), rule.MostLanes ?? int.MaxValue);
        int abreast = LeverRule.MostAbreast(bridge.Deck, vehicle.Gauge);
        if (abreast < lanes)
        {
            stamps.Add(new Stamp.FewerAbreast(vehicle.Name, lanes, abreast));
        }
    }

    private void RateTruss(LiveLoad vehicle, string? truss, LateralShare? share, IReadOnlyList<PeakPair>? peaks, NotRatedReason? reason, Func<RatingRow, RatingRow>? rate = null)
    {
        foreach (RatingLevel level in method.LevelsOf(vehicle.Class, bridge.Rating))
        {
            NotRatedReason? missing = reason ?? (level.LiveFactor is null ? new NotRatedReason.NoPermitFactor() : null);
            for (int m = 0; m < bridge.Truss.Members.Count; m++)
            {
                foreach (Sense sense in (Sense[])[Sense.Tension, Sense.Compression])
                {
                    var row = new RatingRow
                    {
                        Truss = truss,
                        MemberIndex = m,
                        Member = bridge.Truss.Members[m],
                        Vehicle = vehicle,
                        Level = level,
                        Sense = sense,
                        Status = RatingStatus.NotRated,
                        Reason = missing,
                        Capacity = bridge.Capacities[m][method.CapacityFor(sense, level)],
                        DeadComponents = crossing.Components!.MemberForces[m],
                        DeadWearing = crossing.WearingSurface?.MemberForces[m] ?? 0,
                        Share = share,
                        Peak = peaks?[m].Of(sense),
                    };
                    rows.Add(rate is null ? Rated(WithEffects(row)) : rate(row));
                }
            }
        }
    }

    private RatingRow WithEffects(RatingRow row)
    {
        double sign = row.Sense == Sense.Tension ? 1 : -1;
        double onComponents = deadFactors.OnComponents(sign * row.DeadComponents), onWearing = deadFactors.OnWearingSurface(sign * row.DeadWearing);
        row = row with
        {
            ComponentsFactor = onComponents,
            WearingFactor = onWearing,
            FactoredDead = sign * ((onComponents * row.DeadComponents) + (onWearing * row.DeadWearing)),
        };
        if (row.Peak is null || row.Share is null)
        {
            return row;
        }

        double loadedLength = LoadedLength(crossing.Lines.Members[row.MemberIndex].Line, row.Sense, row.Peak.Axles);
        return row with
        {
            Live = row.Peak.Force * row.Share.Value,
            LoadedLength = loadedLength,
            Impact = bridge.Rating.Impact ?? (method.RuleOf(row.Vehicle.Class).HasImpact ? method.Impact(loadedLength) : 0),
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

        if (row.Live is not { } live || row.Impact is not { } impact)
        {
            // A capacity is missing only where something asks for it: here neither live nor dead load acts in this sense.
            return room is null && row.FactoredDead > 0
                ? row with { Reason = new NotRatedReason.NoCapacity(method.CapacityFor(row.Sense, row.Level)) }
                : row with { Status = RatingStatus.NotLoaded };
        }

        return room is null
            ? row with { Reason = new NotRatedReason.NoCapacity(method.CapacityFor(row.Sense, row.Level)) }
            : row with { Status = RatingStatus.Rated, Factor = room / (row.Level.LiveFactor!.Value * Math.Abs(live) * (1 + impact)) };
    }

    /// <summary>
    /// Length of the stretch of a member's line, in the sense rated, that holds the vehicle: the one that gives most of the
    /// effect [m]; 0 where the line has no such stretch.
    /// </summary>
    internal static double LoadedLength(InfluenceLine line, Sense sense, IReadOnlyList<AxleEffect> axles)
    {
        double sign = sense == Sense.Tension ? 1 : -1;
        IReadOnlyList<DeckStretch> regions = line.Regions(sense);
        return regions.Count == 0
            ? 0
            : regions.MaxBy(region => axles.Where(a => a.Station >= region.Left && a.Station <= region.Right).Sum(a => sign * a.Effect)).Length;
    }
}
