namespace SpanRater;

/// <summary>
/// Rates floorbeams and hangers under an emergency vehicle with a legal one in the next lane, which stays as it is while the emergency vehicle is scaled; as
/// <see cref="NeighbourRater"/> does for the trusses.
/// </summary>
internal sealed class FloorNeighbours
{
    private const int MostSteps = 50;
    private const double SameFactor = 1e-12;

    private readonly Bridge bridge;
    private readonly RatingMethod method;
    private readonly ImpactPolicy impact;
    private readonly (Vehicle Vehicle, LiveLoadPlan Plan)[] legal;

    /// <summary>Begins with the vehicles that may stand beside.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="method">The method.</param>
    /// <param name="loads">All live loads asked for.</param>
    public FloorNeighbours(Bridge bridge, RatingMethod method, IEnumerable<LiveLoad> loads)
    {
        (this.bridge, this.method, impact) = (bridge, method, ImpactPolicy.Of(bridge, method));
        legal = [.. loads.OfType<Vehicle>().Where(v => v is { Class: VehicleClass.Legal, LaneLoading: null }).Select(v => (v, new LiveLoadPlan(bridge.Truss.Stations, v)))];
    }

    /// <summary>The row of an emergency vehicle with the legal vehicle beside it that leaves the lowest factor; null where none stands beside it.</summary>
    /// <param name="alone">The row alone on the bridge.</param>
    /// <param name="demand">What it was rated for.</param>
    /// <param name="isTimber">Whether the part is of timber.</param>
    public PartRow? Of(PartRow alone, PartDemand demand, bool isTimber)
    {
        if (alone is not { Status: RatingStatus.Rated, Vehicle: Vehicle { Class: VehicleClass.Emergency } emergency, LiveParts: [var own] } || demand.Line is not { } line)
        {
            return null;
        }

        return legal.SelectMany(l => l.Plan.MostOn(line, Sense.Tension)?.Parts[0] is LivePart.Axles axles && FactorOf(alone) is { } factor
                ? Beside(alone, emergency, own, demand.Across, axles, impact.Of(VehicleClass.Legal, isTimber, false, axles with { LoadedLength = demand.LoadedLength }), factor)
                : [])
            .OrderBy(c => c.Unclipped).Select(c => c.Row).FirstOrDefault();
    }

    private double? FactorOf(PartRow row) => method.LevelsOf(VehicleClass.Legal, bridge.Rating).FirstOrDefault(l => l.Governance == row.Level.Governance)?.LiveFactor;

    private IEnumerable<(PartRow Row, double Unclipped)> Beside(PartRow alone, Vehicle emergency, PartLive own, AcrossLine? across, LivePart.Axles other, AppliedImpact allowance, double factor) => own switch
    {
        PartLive.OnFloorbeam beam => Bending(
            alone, own, other, allowance, factor, (mine, its, presence) => FloorbeamAcross.MostOfPair(bridge.Deck, emergency.Gauge, other.Vehicle.Gauge, mine, its, presence), place => new PartLive.OnFloorbeam(beam.Part, place, own.Impact)),
        PartLive.OnTrussed beam when across is not null => Bending(
            alone, own, other, allowance, factor, (mine, its, presence) => FloorbeamAcross.MostOfPairOn(across, bridge.Deck, emergency.Gauge, other.Vehicle.Gauge, mine, its, presence), place => new PartLive.OnTrussed(beam.Part, place, own.Impact) { IsHogging = beam.IsHogging }),
        PartLive.AtEnd end => Ends(alone, emergency, end, other, allowance, factor),
        _ => [],
    };

    // Where the two stand worst depends on how far the emergency vehicle is scaled: from the factor of the last placement to the next, which only falls, until it stays.
    private IEnumerable<(PartRow Row, double Unclipped)> Bending(
        PartRow alone, PartLive own, LivePart.Axles other, AppliedImpact allowance, double factor,
        Func<double, double, double, (double Own, double Other, AcrossPlacement Placement)?> most, Func<AcrossPlacement, PartLive> made)
    {
        double presence = method.Presence(2), room = alone.Capacity!.Value - alone.FactoredDead;
        double whole = alone.Level.LiveFactor!.Value * own.Along * (1 + own.Impact.Value), beside = factor * other.Force * (1 + allowance.Value);
        double at = alone.Factor!.Value, unclipped = double.PositiveInfinity;
        (double Own, double Other, AcrossPlacement Placement)? worst = null;
        for (int step = 0; step < MostSteps && at > SameFactor; step++)
        {
            if (most(at * whole, beside, presence) is not { } pair)
            {
                yield break;
            }

            // On a line where the emergency vehicle relieves, what it weighs lowers no factor: the legal vehicle by itself does, in its own row.
            if (pair.Own <= 0)
            {
                yield break;
            }

            double next = (room - pair.Other) / (pair.Own / at);
            worst = (pair.Own / at, pair.Other, pair.Placement);
            bool stays = Math.Abs(next - at) <= SameFactor * at;
            (at, unclipped) = (Math.Max(0, next), next);
            if (stays)
            {
                break;
            }
        }

        if (worst is not { } found)
        {
            yield break;
        }

        double arm = found.Own / whole;
        yield return (Made(
            alone,
            made(found.Placement with { Moment = arm }),
            new Neighbour(other.Vehicle, factor, new SharedPart(other, found.Other / beside, allowance)),
            null), unclipped);
    }

    private IEnumerable<(PartRow Row, double Unclipped)> Ends(PartRow alone, Vehicle emergency, PartLive.AtEnd own, LivePart.Axles other, AppliedImpact allowance, double factor)
    {
        foreach (int truss in (int[])[0, 1])
        {
            foreach (bool isNearer in (bool[])[true, false])
            {
                (double near, double far) = isNearer ? (emergency.Gauge, other.Vehicle.Gauge) : (other.Vehicle.Gauge, emergency.Gauge);
                if (LeverRule.Pair(bridge.Deck, truss, near, far, method.Presence(2)) is not { } pair)
                {
                    continue;
                }

                (LateralShare ours, LateralShare others) = isNearer ? pair : (pair.Far, pair.Near);
                var neighbour = new Neighbour(other.Vehicle, factor, new SharedPart(other, others.Value / own.Ends, allowance) { Lateral = others });
                var live = new PartLive.AtEnd(own.Shared with { Share = ours.Value, Lateral = ours }, own.Ends);
                double room = alone.Capacity!.Value - alone.FactoredDead - neighbour.Factored;
                yield return (Made(alone, live, neighbour, ours), room / (alone.Level.LiveFactor!.Value * live.WithImpact));
            }
        }
    }

    private static PartRow Made(PartRow alone, PartLive live, Neighbour neighbour, LateralShare? share)
    {
        double taken = alone.FactoredDead + neighbour.Factored, factored = alone.Level.LiveFactor!.Value * live.WithImpact;
        return alone with
        {
            Beside = neighbour,
            LiveParts = [live],
            Share = share,
            Live = live.Effect,
            Impact = live.Impact.Value,
            Factor = Math.Max(0, alone.Capacity!.Value - taken) / factored,
            FactorAt = capacity => Math.Max(0, capacity - taken) / factored,
        };
    }
}
