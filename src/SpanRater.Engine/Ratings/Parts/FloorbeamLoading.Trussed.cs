namespace SpanRater;

/// <summary>
/// Trussed floorbeams: the same reactions as on plain ones, placed across the deck by the influence lines of the beam with its rod. Moment and compression are of one placement, in one section;
/// dead load that relieves counts as none.
/// </summary>
internal sealed partial class FloorbeamLoading
{
    /// <summary>Sections of the beam looked at, evenly, beside those at posts and under wheels nearest to a kerb.</summary>
    private const int Sections = 128;

    private IEnumerable<PartDemand> TrussedDemands(FloorbeamPart part, Trussing trussed, LiveLoad load, PartEffect effect, bool isTimber)
    {
        double span = Deck.TrussSpacing!.Value;
        isTimber = effect == PartEffect.Force ? trussed.Rod?.Material is TimberMaterial : isTimber;
        if (trussed.With(part.Make, span) is not { } beam)
        {
            return [PartDemand.Lacking(part, effect, [.. trussed.MissingFor(part.Make).Distinct()]) with { Sense = SenseOf(effect) }];
        }

        IEnumerable<(string Level, AcrossLine Line)> lines = effect switch
        {
            PartEffect.Force => [("", beam.RodLine)],
            PartEffect.Shear => ShearLines(beam).Select(l => ("", l)),
            _ => method.LevelsOf(load.Class, bridge.Rating).SelectMany(level =>
                FloorCapacity.Of(part, effect, method, level, bridge.Rating.Condition).Resistance is TrussedResistance pressed
                    ? SectionsOf(beam, load).SelectMany(z => (AcrossLine[])[beam.MomentLine(z, false, 1, pressed.Arm), beam.MomentLine(z, true, pressed.HoggingCounts, pressed.Arm)]).Select(l => (level.Name, l))
                    : [(level.Name, beam.MomentLine(span / 2, false, 1, 0))]),
        };
        (string Level, AcrossLine Line)[] all = [.. lines];
        return Distinct(part.At).SelectMany(point => AtPoint(part, load, effect, point, isTimber, all));
    }

    private static Sense? SenseOf(PartEffect effect) => effect == PartEffect.Force ? Sense.Tension : null;

    // Within a field loads that press down only lower the shear from left to right: it is largest beside ends and posts.
    private static IEnumerable<AcrossLine> ShearLines(TrussedBeam beam)
    {
        double[] posts = [.. ((double[])[beam.EndField, beam.Span - beam.EndField]).Distinct()];
        return [beam.ShearLine(0, true, true), beam.ShearLine(beam.Span, false, false), .. posts.SelectMany(p => (AcrossLine[])[beam.ShearLine(p, true, true), beam.ShearLine(p, false, false)])];
    }

    private IEnumerable<double> SectionsOf(TrussedBeam beam, LiveLoad load)
    {
        ClassRule rule = method.RuleOf(load.Class);
        IEnumerable<double> gauges = load switch
        {
            Vehicle vehicle => [vehicle.Gauge],
            TrackedVehicle tracked => [tracked.Gauge],
            Loading loading => loading.Trains.Select(t => t.Gauge),
            _ => [],
        };
        IEnumerable<double> wheels = gauges.Select(g => LeverRule.Share(Deck with { TrussShare = null }, g, rule.MostLanes, _ => 1)).OfType<ShareOutcome.Found>()
            .SelectMany(f => f.OnLeft.SelectMany(s => s.Wheels).Concat(f.OnRight.SelectMany(s => s.Wheels.Select(w => beam.Span - w))));
        return Enumerable.Range(1, Sections - 1).Select(i => beam.Span * i / Sections).Concat([beam.EndField, beam.Span - beam.EndField]).Concat(wheels).Where(z => z > 0 && z < beam.Span).Distinct();
    }

    private IEnumerable<PartDemand> AtPoint(FloorbeamPart part, LiveLoad load, PartEffect effect, int point, bool isTimber, (string Level, AcrossLine Line)[] lines)
    {
        double span = Deck.TrussSpacing!.Value, panel = (LengthBeside(point, -1) + LengthBeside(point, 1)) / 2;
        (double left, double right) = Roadway;
        LiveEffect[] ways = [.. PlanOf(load).EffectsOn(LineAlong(point), Sense.Tension, width: Deck.Roadway!.Value)];
        foreach ((string level, AcrossLine line) in lines)
        {
            IReadOnlyList<IReadOnlyList<PartLive>> live = [.. ways.SelectMany(w => OnLine(w, line, load, isTimber, left, right)).Where(w => w.Sum(p => p.WithImpact) > 0)];
            FloorDead dead = DeadOn(new FloorDead(effect, span) { Line = line }, panel, part.OwnWeight);
            yield return new PartDemand(part, effect, bridge.Truss.Joints[bridge.Truss.PanelPoints[point]].Name, dead, live, [])
            {
                LoadedLength = span,
                Line = LineAlong(point),
                Across = line,
                Sense = SenseOf(effect),
                Level = level,
            };
        }
    }

    private IEnumerable<IReadOnlyList<PartLive>> OnLine(LiveEffect way, AcrossLine line, LiveLoad load, bool isTimber, double left, double right)
    {
        ClassRule rule = method.RuleOf(load.Class);
        Func<int, double> presence = rule.HasPresence ? method.Presence : _ => 1;
        IReadOnlyList<AcrossPlacement>[] places = [.. way.Parts.Select(p => PlacesOf(p, line, rule, presence, left, right))];
        return Enumerable.Range(0, places.Min(p => p.Count)).Select(n => (IReadOnlyList<PartLive>)[.. way.Parts.Zip(places, (p, all) =>
            new PartLive.OnTrussed(p, all[n], impact.Of(load.Class, isTimber, false, p with { LoadedLength = Deck.TrussSpacing!.Value }))
            {
                IsHogging = line.IsHogging,
                Pressing = PressingAt(all[n], line),
            })]);
    }

    private static double? PressingAt(AcrossPlacement place, AcrossLine line) => line.Pressing is not { } pressing ? null
        : place.Wheels.Count > 0 ? place.Presence * place.Wheels.Sum(pressing) / 2
        : place.Lanes > 0 ? place.Presence * place.Strips.Sum(s => line.Over(pressing, s.From, s.To) / s.Width)
        : null;

    // By number of lanes, from one up.
    private IReadOnlyList<AcrossPlacement> PlacesOf(LivePart part, AcrossLine line, ClassRule rule, Func<int, double> presence, double left, double right)
    {
        Deck deck = Deck with { TrussShare = null };
        double span = deck.TrussSpacing!.Value;
        if (part is LivePart.OfCrowd crowd)
        {
            return [new AcrossPlacement(line.WorstCrowd(left, right, crowd.Crowd.Width ?? (right - left)), line.Section, [], 0, 1)];
        }

        double? gauge = part switch { LivePart.Axles axles => axles.Vehicle.Gauge, LivePart.Tracks tracks => tracks.Vehicle.Gauge, _ => null };
        if ((gauge is { } g ? LeverRule.Share(deck, g, rule.MostLanes, presence) : LeverRule.LaneShare(deck, rule.MostLanes, presence)) is not ShareOutcome.Found found)
        {
            return [];
        }

        return [.. found.OnLeft.Zip(found.OnRight, (l, r) =>
        {
            if (gauge is { } wide)
            {
                (double effect, IReadOnlyList<double> wheels) = line.Worst(l.Wheels[0], span - r.Wheels[0], wide, LeverRule.BetweenVehicles, l.Lanes);
                return new AcrossPlacement(l.Presence * effect, line.Section, wheels, l.Lanes, l.Presence);
            }

            double width = (l.Strips[^1].To - l.Strips[0].From) / l.Lanes;
            (double onStrips, IReadOnlyList<LateralStrip> strips) = line.WorstStrips(l.Strips[0].From, span - r.Strips[0].From, width, l.Lanes);
            return new AcrossPlacement(l.Presence * onStrips, line.Section, [], l.Lanes, l.Presence) { Strips = strips };
        })];
    }

    private InfluenceLine LineAlong(int point) => new(bridge.Truss.Stations, [.. bridge.Truss.Stations.Select((_, i) => i == point ? 1.0 : 0.0)]);

    private LiveLoadPlan PlanOf(LiveLoad load)
    {
        if (!plans.TryGetValue(load, out LiveLoadPlan? plan))
        {
            plan = new LiveLoadPlan(bridge.Truss.Stations, load);
            plans.Add(load, plan);
        }

        return plan;
    }
}
