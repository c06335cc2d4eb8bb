namespace SpanRater;

/// <summary>Adds the parts of a floor whose effect is one line along the deck, times what of it acts across: the demands are those of the rating, of one axle of one vehicle.</summary>
internal sealed class TrafficFloor(TrafficPlanDraft draft, Bridge bridge, Floor floor, RatingMethod method, RatingLevel level, double gauge)
{
    /// <summary>One vehicle in one lane, without presence factor: as class permit is taken.</summary>
    private readonly Vehicle probe = new("a recorded truck", VehicleClass.Permit, new AxleTrain([1000], []), gauge, "");

    public void Add()
    {
        var stringers = new List<PartDemand>();
        foreach (PartDemand demand in new FloorLoading(bridge, floor, method).DemandsOf(probe).DistinctBy(d => (d.Part.Index, d.Effect, d.Sense, d.At)))
        {
            if (WhyNot(demand) is { } why)
            {
                if (!draft.NotCounted.Contains(why))
                {
                    draft.NotCounted.Add(why);
                }
            }
            else if (demand.Part is StringerPart)
            {
                stringers.Add(demand);
            }
            else if (demand.Line is { } line && demand.Ways is [[var live, ..], ..])
            {
                AddEffect(demand, live, draft.ReactionAt(Enumerable.Range(0, line.Ordinates.Count).MaxBy(i => line.Ordinates[i]), line));
            }
        }

        // Behind all lines along the deck.
        foreach (PartDemand demand in stringers)
        {
            if (demand.Ways is [[var live, ..], ..])
            {
                AddEffect(demand, live, draft.MomentOn(((StringerPart)demand.Part).Span));
            }
        }
    }

    private static NotCounted? WhyNot(PartDemand demand) => demand.Part switch
    {
        DeckPart => new NotCounted.DeckByWheels(demand.Part.Name),
        FloorbeamPart { Trussed: not null } => new NotCounted.TrussedFloorbeam(demand.Part.Name),
        _ when demand.Missing.Count > 0 => new NotCounted.PartLacks(demand.Part.Name, demand.Effect, demand.Missing),
        StringerPart when demand.Effect != PartEffect.Moment => new NotCounted.AxleOverSupport(demand.Part.Name, demand.Effect),
        _ => null,
    };

    private void AddEffect(PartDemand demand, PartLive live, int channel)
    {
        double presence = live switch
        {
            PartLive.OnFloorbeam beam => beam.Placement.Presence,
            PartLive.OnStringer stringer => stringer.Share.Presence,
            PartLive.AtEnd end => end.Shared.Lateral?.Presence ?? 1,
            _ => 1,
        };
        (PartResistance? resistance, IReadOnlyList<MissingDatum> missing) = FloorCapacity.Of(demand.Part, demand.Effect, method, level, bridge.Rating.Condition);
        MissingDatum[] lacking = [.. demand.Part.Lacking.Concat(missing).Distinct()];
        draft.Effects.Add(new TrafficEffect(demand.Part.Kind, demand.Part.Name, demand.Effect, demand.Sense, channel, live.Across / presence, live.Impact)
        {
            At = demand.At,
            Dead = demand.Dead.Components + demand.Dead.Wearing,
            Capacity = lacking.Length > 0 ? null : resistance?.Value,
            WithoutCapacity = lacking.Length > 0 ? new NotRatedReason.PartLacks(lacking) : null,
        });
    }
}
