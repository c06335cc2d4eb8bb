namespace SpanRater;

/// <summary>
/// What floorbeams and their hangers take: the reaction of simple stringer spans at a panel point, by its influence line over the two panels beside it, and
/// what it brings across the deck, where wheels stand worst between the kerbs. The largest moments of live load, deck, kerbs and own weight are added up, though they may stand at
/// different places: on the safe side.
/// </summary>
internal sealed partial class FloorbeamLoading(Bridge bridge, Floor floor, RatingMethod method)
{
    private readonly ImpactPolicy impact = ImpactPolicy.Of(bridge, method);
    private readonly Dictionary<LiveLoad, LiveLoadPlan> plans = [];

    private Deck Deck => bridge.Deck;

    public IEnumerable<PartDemand> DemandsOf(FloorPart part, LiveLoad load)
    {
        (IReadOnlyList<int> at, bool isTimber, double own) = part switch
        {
            FloorbeamPart beam => (beam.At, beam.Make?.Material is TimberMaterial, beam.OwnWeight),
            HangerPart hanger => (hanger.At, false, HangerBeamWeight(hanger)),
            _ => throw new ArgumentOutOfRangeException(nameof(part), part, "A floorbeam or its hangers."),
        };
        foreach (PartEffect effect in FloorCapacity.EffectsOf(part))
        {
            MissingDatum[] missing = [.. DeckWeights.Missing(floor), .. DeckWeights.MissingOfBeams(floor, part), .. Across(effect)];
            if (missing.Length > 0)
            {
                yield return PartDemand.Lacking(part, effect, missing) with { Sense = part is FloorbeamPart ? SenseOf(effect) : null };
                continue;
            }

            if (part is FloorbeamPart { Trussed: { } trussed } beam && effect != PartEffect.Bearing)
            {
                foreach (PartDemand demand in TrussedDemands(beam, trussed, load, effect, isTimber))
                {
                    yield return demand;
                }

                continue;
            }

            foreach (int point in Distinct(at))
            {
                yield return DemandAt(part, load, effect, point, isTimber, own);
            }
        }

        if (part is FloorbeamPart { Trussed: not null })
        {
            yield return PartDemand.Lacking(part, PartEffect.Force, [new MissingDatum.PostsOfBeam()]) with { Sense = Sense.Compression };
        }
    }

    // What is not said of where wheels stand; a given share of a truss says what comes to an end, and not where.
    private IEnumerable<MissingDatum> Across(PartEffect effect)
    {
        bool needsWheels = effect == PartEffect.Moment || Deck.TrussShare is null;
        return Deck.TrussSpacing is null || (needsWheels && Deck.Roadway is null) || Deck.Roadway is null
            ? [new MissingDatum.PlaceAcross(new ShareOutcome.NotGiven(Deck.TrussSpacing is null, Deck.Roadway is null))]
            : Deck.Trusses != 2 ? [new MissingDatum.PlaceAcross(new ShareOutcome.NotTwoTrusses(Deck.Trusses))] : [];
    }

    // Panel points between panels alike are rated once.
    private IEnumerable<int> Distinct(IReadOnlyList<int> at) => at.DistinctBy(p => (Math.Round(LengthBeside(p, -1), 6), Math.Round(LengthBeside(p, 1), 6)) is var (a, b) && a > b ? (b, a) : (Math.Round(LengthBeside(p, -1), 6), Math.Round(LengthBeside(p, 1), 6)));

    private double LengthBeside(int point, int side)
    {
        IReadOnlyList<double> x = bridge.Truss.Stations;
        int other = point + side;
        return other < 0 || other >= x.Count ? 0 : Math.Abs(x[other] - x[point]);
    }

    private PartDemand DemandAt(FloorPart part, LiveLoad load, PartEffect effect, int point, bool isTimber, double own)
    {
        double span = Deck.TrussSpacing!.Value, panel = (LengthBeside(point, -1) + LengthBeside(point, 1)) / 2;
        FloorDead dead = DeadOn(new FloorDead(effect, span) { Ends = part is HangerPart { Count: var hangers } ? hangers : 1 }, panel, own);
        var line = new InfluenceLine(bridge.Truss.Stations, [.. bridge.Truss.Stations.Select((_, i) => i == point ? 1.0 : 0.0)]);
        double impactLength = part is HangerPart ? line.Regions(Sense.Tension)[0].Length : span;
        return new PartDemand(part, effect, bridge.Truss.Joints[bridge.Truss.PanelPoints[point]].Name, dead, [.. WaysOf(part, load, effect, line, isTimber, impactLength)], [])
        {
            LoadedLength = impactLength,
            Line = line,
            Sense = effect == PartEffect.Force ? Sense.Tension : null,
        };
    }

    // Deck, stringers and kerbs of half a panel on each side, and the floorbeam itself.
    private FloorDead DeadOn(FloorDead dead, double panel, double own)
    {
        (double left, double right) = Roadway;
        double stringers = floor.Stringers.Sum(s => s.OwnWeight * s.CountAcross(Deck.Roadway!.Value)) * panel / (right - left);
        return dead
            .With(FloorWeight.Deck, floor.Components!.Value * panel, panel, left, right)
            .With(FloorWeight.Stringers, stringers, panel, left, right)
            .With(FloorWeight.Own, own, 0, 0, dead.Span)
            .WithKerbs((floor.Edge ?? 0) * panel, panel, left, right)
            .With(FloorWeight.WearingSurface, floor.WearingSurface!.Value * panel, panel, left, right);
    }

    // From kerb to kerb, as far as it lies between the trusses.
    private (double Left, double Right) Roadway
    {
        get
        {
            double span = Deck.TrussSpacing!.Value, left = (span / 2) + Deck.RoadwayOffset - (Deck.Roadway!.Value / 2);
            return (Math.Max(0, left), Math.Min(span, left + Deck.Roadway.Value));
        }
    }

    private double HangerBeamWeight(HangerPart hanger) => floor.Parts.OfType<FloorbeamPart>().Where(b => b.At.Intersect(hanger.At).Any()).Select(b => b.OwnWeight).DefaultIfEmpty(0).Max();

    private IEnumerable<IReadOnlyList<PartLive>> WaysOf(FloorPart part, LiveLoad load, PartEffect effect, InfluenceLine line, bool isTimber, double impactLength)
    {
        if (!plans.TryGetValue(load, out LiveLoadPlan? plan))
        {
            plan = new LiveLoadPlan(bridge.Truss.Stations, load);
            plans.Add(load, plan);
        }

        ClassRule rule = method.RuleOf(load.Class);
        Func<int, double> presence = rule.HasPresence ? method.Presence : _ => 1;
        foreach (LiveEffect way in plan.EffectsOn(line, Sense.Tension, width: Deck.Roadway!.Value))
        {
            AppliedImpact ImpactOn(LivePart p) => impact.Of(load.Class, isTimber, false, p with { LoadedLength = impactLength });
            IReadOnlyList<IReadOnlyList<PartLive>> byPart = [.. way.Parts.Select(p => effect == PartEffect.Moment
                ? MomentsOf(p, rule, presence, ImpactOn(p))
                : EndsOf(p, rule, presence, ImpactOn(p), part is HangerPart hanger ? hanger.Count : 1))];
            for (int n = 0; n < byPart.Min(b => b.Count); n++)
            {
                yield return [.. byPart.Select(b => b[n])];
            }
        }
    }

    // By number of lanes, from one up.
    private IReadOnlyList<PartLive> MomentsOf(LivePart part, ClassRule rule, Func<int, double> presence, AppliedImpact allowance)
    {
        AcrossOutcome outcome = part switch
        {
            LivePart.Axles axles => FloorbeamAcross.Wheels(Deck, axles.Vehicle.Gauge, rule.MostLanes, presence),
            LivePart.Tracks tracks => FloorbeamAcross.Wheels(Deck, tracks.Vehicle.Gauge, rule.MostLanes, presence),
            LivePart.OfCrowd crowd => new AcrossOutcome.Found([FloorbeamAcross.Crowd(Deck, crowd.Crowd.Width)!]),
            _ => FloorbeamAcross.Strips(Deck, rule.MostLanes, presence),
        };
        return outcome is AcrossOutcome.Found found ? [.. found.ByLanes.Select(p => new PartLive.OnFloorbeam(part, p, allowance))] : [];
    }

    // The end that takes more, left or right, by number of lanes.
    private IReadOnlyList<PartLive> EndsOf(LivePart part, ClassRule rule, Func<int, double> presence, AppliedImpact allowance, int ends)
    {
        if (part is LivePart.OfCrowd crowd)
        {
            CrowdShare left = LeverRule.CrowdOn(Deck, 0, crowd.Crowd.Width)!, right = LeverRule.CrowdOn(Deck, 1, crowd.Crowd.Width)!, worst = left.Width >= right.Width ? left : right;
            return [new PartLive.AtEnd(new SharedPart(part, worst.Width, allowance) { Crowd = worst }, ends)];
        }

        ShareOutcome outcome = part switch
        {
            LivePart.Axles axles => LeverRule.Share(Deck, axles.Vehicle.Gauge, rule.MostLanes, presence),
            LivePart.Tracks tracks => LeverRule.Share(Deck, tracks.Vehicle.Gauge, rule.MostLanes, presence),
            _ => LeverRule.LaneShare(Deck, rule.MostLanes, presence),
        };
        return outcome is ShareOutcome.Found found
            ? [.. found.OnLeft.Zip(found.OnRight, (l, r) => l.Value >= r.Value ? l : r).Select(s => new PartLive.AtEnd(new SharedPart(part, s.Value, allowance) { Lateral = s }, ends))]
            : [];
    }
}
