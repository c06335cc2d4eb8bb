namespace SpanRater;

/// <summary>What live and dead load bring to the parts of a floor.</summary>
internal sealed class FloorLoading
{
    private readonly Bridge bridge;
    private readonly Floor floor;
    private readonly RatingMethod method;
    private readonly StringerLoading stringers;
    private readonly FloorbeamLoading floorbeams;
    private readonly DeckLoading deck;

    public FloorLoading(Bridge bridge, Floor floor, RatingMethod method)
    {
        this.bridge = bridge;
        this.floor = floor;
        this.method = method;
        stringers = new StringerLoading(bridge, floor, method);
        floorbeams = new FloorbeamLoading(bridge, floor, method);
        deck = new DeckLoading(bridge, floor, method);
    }

    /// <summary>The demands of a live load on every part, in the order of the parts and their effects.</summary>
    public IEnumerable<PartDemand> DemandsOf(LiveLoad load)
    {
        if (Misfit(load) is { } why)
        {
            // What does not fit is not rated at all, and the trusses say so; with a given share they are rated, and the floor says so itself.
            return bridge.Deck.TrussShare is null ? [] : floor.Parts.SelectMany(p => FloorCapacity.EffectsOf(p).Select(e => PartDemand.Lacking(p, e, [new MissingDatum.PlaceAcross(why)]) with { Sense = p is FloorbeamPart && e == PartEffect.Force ? Sense.Tension : null }));
        }

        return floor.Parts.SelectMany(part => part switch
        {
            DeckPart planks => deck.DemandsOf(planks, load),
            StringerPart stringer => stringers.DemandsOf(stringer, load),
            _ => floorbeams.DemandsOf(part, load),
        });
    }

    private ShareOutcome? Misfit(LiveLoad load)
    {
        IEnumerable<double> gauges = load switch
        {
            Vehicle vehicle => [vehicle.Gauge],
            TrackedVehicle tracked => [tracked.Gauge],
            Loading loading => loading.Trains.Select(t => t.Gauge),
            _ => [],
        };
        return gauges.Select(g => LeverRule.Share(bridge.Deck with { TrussShare = null }, g, method.RuleOf(load.Class).MostLanes, _ => 1))
            .FirstOrDefault(s => s is ShareOutcome.TooWide or ShareOutcome.WheelOutside);
    }
}
