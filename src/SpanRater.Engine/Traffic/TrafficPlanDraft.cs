namespace SpanRater;

/// <summary>Gathers what is counted on a bridge: members of the trusses first, then the floor.</summary>
internal sealed class TrafficPlanDraft(Bridge bridge, RatingMethod method, RatingLevel level, double gauge)
{
    /// <summary>An ordinate below this part of a unit load is round-off [-].</summary>
    private const double NoOrdinate = 1e-9;

    private readonly ImpactPolicy impact = ImpactPolicy.Of(bridge, method);
    private readonly List<TrafficChannel> channels = [];
    private readonly Dictionary<int, int> reactionLines = [];

    public List<InfluenceLine> DeckLines { get; } = [];

    public List<CountedSpan> Spans { get; } = [];

    public List<TrafficEffect> Effects { get; } = [];

    public List<TrafficStress> Stresses { get; } = [];

    public List<NotCounted> NotCounted { get; } = [];

    public bool ImpactMayBeLess { get; private set; }

    public IReadOnlyList<TrafficChannel> Channels => channels;

    /// <summary>Adds the members of the trusses; the refusal where the truss cannot be solved.</summary>
    public Refusal? AddMembers()
    {
        var crossings = new List<TrussCrossing>();
        foreach (int truss in bridge.RightCases is null ? [0] : (int[])[0, 1])
        {
            if (!TrussCrossing.Of(bridge.OfTruss(truss)).TryGet(out TrussCrossing? crossing, out Refusal? refusal))
            {
                return refusal;
            }

            crossings.Add(crossing);
        }

        ShareOutcome outcome = LeverRule.Share(bridge.Deck, gauge, mostLanes: 1, presence: _ => 1);
        if (outcome is not ShareOutcome.Found shares)
        {
            NotCounted.Add(new NotCounted.NoShare(outcome));
            return null;
        }

        int?[] trusses = bridge.OnlyTruss is { } only ? [only] : shares.Alike && bridge.RightCases is null && bridge.RightMakes is null ? [null] : [0, 1];
        string[] decided = [.. bridge.Truss.Members.Where((_, m) => crossings[0].DependsOnRods(m)).Select(m => m.Name)];
        if (decided.Length > 0)
        {
            NotCounted.Add(new NotCounted.RodsDecide(decided));
        }

        MemberCapacities capacities = MemberCapacities.Of(bridge, method);
        for (int m = 0; m < bridge.Truss.Members.Count; m++)
        {
            if (!crossings[0].DependsOnRods(m))
            {
                AddMember(m, crossings, shares, trusses, capacities);
            }
        }

        return null;
    }

    /// <summary>Adds the parts of the floor.</summary>
    public TrafficPlanDraft WithFloor()
    {
        if (bridge.Floor is { } floor)
        {
            new TrafficFloor(this, bridge, floor, method, level, gauge).Add();
        }
        else
        {
            NotCounted.Add(new NotCounted.NoFloor());
        }

        if (bridge.Connections.Count > 0)
        {
            NotCounted.Add(new NotCounted.Connections());
        }

        return this;
    }

    /// <summary>The channel of the greatest reaction at a panel point, whose line is 1 there and 0 at its neighbours.</summary>
    public int ReactionAt(int point, InfluenceLine line)
    {
        if (!reactionLines.TryGetValue(point, out int channel))
        {
            DeckLines.Add(line);
            channel = Add(DeckLines.Count - 1, CrossingValue.Greatest, 1);
            reactionLines.Add(point, channel);
        }

        return channel;
    }

    /// <summary>Adds the channel of the largest moment on a simple span; its line is numbered once all along the deck are there.</summary>
    public int MomentOn(double span)
    {
        Spans.Add(new CountedSpan(span, DeckLines.Count + Spans.Count));
        return Add(DeckLines.Count + Spans.Count - 1, CrossingValue.Greatest, span / 4);
    }

    private int Add(int line, CrossingValue value, double largestOrdinate)
    {
        channels.Add(new TrafficChannel(line, value, largestOrdinate * TrafficChannel.BinWeight));
        return channels.Count - 1;
    }

    private void AddMember(int m, List<TrussCrossing> crossings, ShareOutcome.Found shares, int?[] trusses, MemberCapacities capacities)
    {
        Member member = bridge.Truss.Members[m];
        InfluenceLine line = crossings[0].Lines.Members[m].Line;
        double up = Math.Max(0, line.Ordinates.Max()), down = Math.Max(0, -line.Ordinates.Min());
        if (Math.Max(up, down) <= NoOrdinate)
        {
            return;
        }

        DeckLines.Add(line);
        int index = DeckLines.Count - 1;
        foreach ((Sense sense, double most) in ((Sense, double)[])[(Sense.Tension, up), (Sense.Compression, down)])
        {
            if (most <= NoOrdinate)
            {
                continue;
            }

            int channel = Add(index, sense == Sense.Tension ? CrossingValue.Greatest : CrossingValue.Least, most);
            AppliedImpact allowance = ImpactOn(member, line, sense);
            foreach (int? truss in trusses)
            {
                TrussCrossing crossing = crossings[crossings.Count == 1 ? 0 : truss ?? 0];
                double? dead = crossing.Components is { } dc ? dc.MemberForces[m] + (crossing.WearingSurface?.MemberForces[m] ?? 0) : null;
                MemberCapacityRow? carries = capacities.Rows.FirstOrDefault(r => r.MemberIndex == m && r.Sense == sense
                    && (r.Level is null || r.Level == level.Name) && (r.Truss is null || truss is null || r.Truss == bridge.Deck.TrussNames[truss.Value]));
                bool slack = member.TensionOnly && sense == Sense.Compression;
                Effects.Add(new TrafficEffect(PartKind.TrussMember, member.Name, PartEffect.Force, sense, channel, (truss == 1 ? shares.Right : shares.Left).Value, allowance)
                {
                    Member = m,
                    Truss = truss,
                    Dead = sense == Sense.Tension ? dead : -dead,
                    Capacity = slack ? 0 : carries?.Value,
                    OnlyPulls = slack,
                    WithoutCapacity = slack || carries?.Value is not null ? null : new NotRatedReason.NoCapacity(method.CapacityFor(sense, level), carries?.AsFound?.Missing),
                });
            }
        }

        AddStress(m, index, line, up + down, crossings, shares, trusses);
    }

    private void AddStress(int m, int index, InfluenceLine line, double swing, List<TrussCrossing> crossings, ShareOutcome.Found shares, int?[] trusses)
    {
        Member member = bridge.Truss.Members[m];
        int? channel = null;
        foreach (int? truss in trusses)
        {
            TrussCrossing crossing = crossings[crossings.Count == 1 ? 0 : truss ?? 0];
            MemberMake? make = bridge.MakeOf(truss ?? 0, m);
            FatigueObstacle[] obstacles = [.. FatigueArea.Obstacles(member, make), .. crossing.Components is null ? (FatigueObstacle[])[new FatigueObstacle.NoDeadLoad()] : []];
            FatigueArea? area = obstacles.Length > 0 ? null : FatigueArea.Of(make!.Section);
            channel = area is null ? channel : channel ?? Add(index, CrossingValue.Range, swing);
            Stresses.Add(new TrafficStress(m, truss)
            {
                Channel = area is null ? null : channel,
                Obstacles = obstacles,
                Share = (truss == 1 ? shares.Right : shares.Left).Value,
                Dead = crossing.Components?.MemberForces[m] + (crossing.WearingSurface?.MemberForces[m] ?? 0),
                Area = area?.Value,
                Place = area?.Place,
                IsNet = area?.IsNet ?? false,
                LoadedLength = line.Regions(Sense.Tension).Concat(line.Regions(Sense.Compression)).Sum(r => r.Length),
            });
        }
    }

    // Where a line has several stretches of a sense, which of them holds the truck is not kept: the largest allowance is on the safe side.
    private AppliedImpact ImpactOn(Member member, InfluenceLine line, Sense sense)
    {
        AppliedImpact[] of = [.. line.Regions(sense).Select(r => impact.Of(VehicleClass.Permit, member, r.Length))];
        ImpactMayBeLess |= of.Max(i => i.Value) - of.Min(i => i.Value) > 1e-12;
        return of.MaxBy(i => i.Value);
    }
}
