namespace SpanRater;

/// <summary>What deck planks take: one wheel, the heaviest of the load, on its contact and spread, or a crowd on the plank's width.</summary>
internal sealed class DeckLoading(Bridge bridge, Floor floor, RatingMethod method)
{
    private readonly ImpactPolicy impact = ImpactPolicy.Of(bridge, method);

    public IEnumerable<PartDemand> DemandsOf(DeckPart part, LiveLoad load) => FloorCapacity.EffectsOf(part).Select(effect => DemandOf(part, load, effect));

    private PartDemand DemandOf(DeckPart part, LiveLoad load, PartEffect effect)
    {
        var missing = new List<MissingDatum>(DeckWeights.Missing(floor));
        StringerPart? widest = floor.Stringers.MaxBy(s => s.Spacing);
        double? between = part.Span ?? widest?.Spacing;
        if (!part.HasRule)
        {
            missing.Add(new MissingDatum.DeckRule());
        }

        if (between is null)
        {
            missing.Add(new MissingDatum.DeckSpan());
        }

        if (load is TrackedVehicle)
        {
            missing.Add(new MissingDatum.TracksOnDeck());
        }

        if (part.Make?.Section.AsBuilt.Parts is not [{ Pieces: [{ Shape: { } plank }] }] || plank.AsBuilt(ShapeDimension.Width) is not { } width || plank.AsBuilt(ShapeDimension.Depth) is not { } thickness)
        {
            // What its make lacks is told beside its capacity.
            return PartDemand.Lacking(part, effect, missing);
        }

        if (missing.Count > 0)
        {
            return PartDemand.Lacking(part, effect, missing);
        }

        double top = part.Span is null ? widest!.TopWidth : 0, clear = between!.Value - top;
        bool isTimber = part.Make.Material is TimberMaterial;
        AppliedImpact none = impact.Of(load.Class, isTimber, false, clear);
        double presence = method.RuleOf(load.Class).HasPresence ? method.Presence(1) : 1;
        PartLive.OnPlank On(Vehicle vehicle, double load)
        {
            var wheel = PlankWheel.Of(load, clear, top, width, thickness, part.Type, part.IsContinuous);
            return new PartLive.OnPlank(vehicle, wheel, (effect == PartEffect.Moment ? wheel.Moment : wheel.Shear) * (width / wheel.Spread), presence, none) { Times = part => On(vehicle, part * load) };
        }

        IReadOnlyList<PartLive> Wheel(Vehicle vehicle, double load) => [On(vehicle, load)];

        IReadOnlyList<IReadOnlyList<PartLive>> ways = load switch
        {
            Vehicle vehicle => [Wheel(vehicle, vehicle.Train.Loads.Max() / 2)],
            Loading loading => [.. loading.Trains.Select(t => Wheel(t, t.Train.Loads.Max() / 2))],
            Crowd crowd => [.. new LiveLoadPlan([0, clear / 2, clear], crowd)
                .EffectsOn(new InfluenceLine([0, clear / 2, clear], effect == PartEffect.Moment ? [0, clear / 4, 0] : [1, 0.5, 0]), Sense.Tension, width: width)
                .Select(e => (IReadOnlyList<PartLive>)[.. e.Parts.Select(p => new PartLive.OnStrip(p, width, impact.Of(load.Class, isTimber, false, p)))])],
            _ => [],
        };
        FloorDead dead = new FloorDead(effect, clear)
            .With(FloorWeight.Deck, floor.Components!.Value * width, width, 0, clear)
            .With(FloorWeight.WearingSurface, floor.WearingSurface!.Value * width, width, 0, clear);
        return new PartDemand(part, effect, "", dead, ways, []) { LoadedLength = clear };
    }
}
