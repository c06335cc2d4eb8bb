namespace SpanRater;

/// <summary>A live load shared to the trusses of a bridge: what it brings to each member, with share, presence and impact.</summary>
internal sealed class SharedLiveLoad
{
    private readonly LiveLoad load;
    private readonly LiveLoadPlan plan;
    private readonly ImpactPolicy impact;
    private readonly Dictionary<double, ShareOutcome.Found> byGauge;
    private readonly ShareOutcome.Found? lane;
    private readonly CrowdShare?[] crowd;

    private SharedLiveLoad(
        LiveLoad load, LiveLoadPlan plan, ImpactPolicy impact, Dictionary<double, ShareOutcome.Found> byGauge, ShareOutcome.Found? lane, CrowdShare?[] crowd)
    {
        this.load = load;
        this.plan = plan;
        this.impact = impact;
        this.byGauge = byGauge;
        this.lane = lane;
        this.crowd = crowd;
    }

    /// <summary>The shares of its vehicles, by the vehicle's name.</summary>
    public IEnumerable<(string Vehicle, double Gauge, ShareOutcome.Found Shares)> VehicleShares => VehiclesOf(load).Select(v => (v.Name, v.Gauge, byGauge[v.Gauge]));

    /// <summary>True when both trusses carry the same.</summary>
    public bool Alike => byGauge.Values.All(s => s.Alike) && lane is not { Alike: false }
        && (crowd[0] is null || Math.Abs(crowd[0]!.Width - crowd[1]!.Width) <= 1e-12 * crowd[0]!.Width);

    /// <summary>The live load on the trusses of a bridge; null, with the reason, where there is no share.</summary>
    public static (SharedLiveLoad? Shared, NotRatedReason? Reason) Of(LiveLoad load, Bridge bridge, RatingMethod method, ImpactPolicy impact)
    {
        ClassRule rule = method.RuleOf(load.Class);
        Func<int, double> presence = rule.HasPresence ? method.Presence : _ => 1;
        var byGauge = new Dictionary<double, ShareOutcome.Found>();
        foreach (double gauge in VehiclesOf(load).Select(v => v.Gauge).Distinct())
        {
            ShareOutcome outcome = LeverRule.Share(bridge.Deck, gauge, rule.MostLanes, presence);
            if (outcome is not ShareOutcome.Found found)
            {
                return (null, new NotRatedReason.NoShare(outcome));
            }

            byGauge.Add(gauge, found);
        }

        ShareOutcome.Found? lane = null;
        if (load is Loading { Lane: not null })
        {
            ShareOutcome outcome = LeverRule.LaneShare(bridge.Deck, rule.MostLanes, presence);
            if (outcome is not ShareOutcome.Found found)
            {
                return (null, new NotRatedReason.NoShare(outcome));
            }

            lane = found;
        }

        CrowdShare?[] crowd = [null, null];
        if (load is Crowd people)
        {
            crowd = [LeverRule.CrowdOn(bridge.Deck, 0, people.Width), LeverRule.CrowdOn(bridge.Deck, 1, people.Width)];
            if (crowd[0] is null)
            {
                Deck deck = bridge.Deck;
                return (null, new NotRatedReason.NoShare(
                    deck.Trusses != 2 ? new ShareOutcome.NotTwoTrusses(deck.Trusses) : new ShareOutcome.NotGiven(deck.TrussSpacing is null, deck.Roadway is null)));
            }
        }

        return (new SharedLiveLoad(load, new LiveLoadPlan(bridge.Truss.Stations, load), impact, byGauge, lane, crowd), null);
    }

    /// <summary>What it brings to a member of a truss in a sense, the worst of all ways; null where it brings nothing.</summary>
    /// <param name="truss">0 for the left truss, 1 for the right one.</param>
    /// <param name="member">The member.</param>
    /// <param name="line">Its influence line.</param>
    /// <param name="sense">The sense.</param>
    public SharedEffect? MostOn(int truss, Member member, InfluenceLine line, Sense sense) =>
        MostOn(truss, line, sense, member.IsChord, part => impact.Of(load.Class, member, part));

    /// <summary>What it brings to a connection of a truss in a sense, the worst of all ways; null where it brings nothing.</summary>
    /// <param name="truss">0 for the left truss, 1 for the right one.</param>
    /// <param name="line">Influence line of the effect.</param>
    /// <param name="sense">The sense.</param>
    /// <param name="impactLength">Length that the formula for impact takes [m]; null for that of the line itself.</param>
    public SharedEffect? MostOnConnection(int truss, InfluenceLine line, Sense sense, double? impactLength) =>
        MostOn(truss, line, sense, false, part => impact.Of(load.Class, false, false, impactLength is { } length ? part with { LoadedLength = length } : part));

    private SharedEffect? MostOn(int truss, InfluenceLine line, Sense sense, bool isChord, Func<LivePart, AppliedImpact> allowance)
    {
        SharedEffect? most = null;
        List<SharedEffect>? others = null;
        foreach (LiveEffect effect in plan.EffectsOn(line, sense, isChord, crowd[truss]?.Strip.Width ?? 0))
        {
            // Vehicles and lane loads that act together load the same number of lanes.
            int numbers = effect.Parts.Min(p => SharesOf(p, truss)?.Count ?? 1);
            SharedEffect? way = null;
            for (int n = 0; n < numbers; n++)
            {
                var shared = new SharedEffect([.. effect.Parts.Select(p => Shared(p, truss, n, allowance))]);
                way = way is null || Math.Abs(shared.WithImpact) > Math.Abs(way.WithImpact) ? shared : way;
            }

            if (most is null || way is null)
            {
                most ??= way;
                continue;
            }

            bool isMore = Math.Abs(way.WithImpact) > Math.Abs(most.WithImpact);
            (others ??= []).Add(isMore ? most : way);
            most = isMore ? way : most;
        }

        return others is null ? most : most! with { Others = others };
    }

    private static IEnumerable<(string Name, double Gauge)> VehiclesOf(LiveLoad load) => load switch
    {
        Vehicle vehicle => [(vehicle.Name, vehicle.Gauge)],
        TrackedVehicle tracked => [(tracked.Name, tracked.Gauge)],
        Loading loading => loading.Trains.Select(t => (t.Name, t.Gauge)),
        _ => [],
    };

    private IReadOnlyList<LateralShare>? SharesOf(LivePart part, int truss)
    {
        ShareOutcome.Found? found = part switch
        {
            LivePart.Axles axles => byGauge[axles.Vehicle.Gauge],
            LivePart.Tracks tracks => byGauge[tracks.Vehicle.Gauge],
            LivePart.OfLane or LivePart.PointOfLane => lane,
            _ => null,
        };
        return truss == 0 ? found?.OnLeft : found?.OnRight;
    }

    private SharedPart Shared(LivePart part, int truss, int number, Func<LivePart, AppliedImpact> allowance)
    {
        LateralShare? lateral = SharesOf(part, truss)?[number];
        return new SharedPart(part, lateral?.Value ?? crowd[truss]!.Width, allowance(part))
        {
            Lateral = lateral,
            Crowd = lateral is null ? crowd[truss] : null,
        };
    }
}
