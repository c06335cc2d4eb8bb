namespace SpanRater;

/// <summary>Rates the parts of a floor under the same live loads as the trusses: every effect by its worst way to load the deck.</summary>
internal sealed class FloorRater
{
    private readonly Bridge bridge;
    private readonly Floor floor;
    private readonly RatingMethod method;
    private readonly DeadFactors deadFactors;
    private readonly FloorNeighbours neighbours;
    private readonly Dictionary<(int Part, PartEffect Effect, string Level), (PartResistance? Resistance, IReadOnlyList<MissingDatum> Missing)> found = [];

    private FloorRater(Bridge bridge, Floor floor, RatingMethod method, IReadOnlyList<LiveLoad> loads)
    {
        neighbours = new FloorNeighbours(bridge, method, loads);
        this.bridge = bridge;
        this.floor = floor;
        this.method = method;
        deadFactors = method.DeadFactorsWith(bridge.Rating);
    }

    /// <summary>One row for every part, effect, live load and level.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="method">The method.</param>
    /// <param name="loads">The live loads.</param>
    /// <param name="stop">Ends the work between two live loads.</param>
    public static IReadOnlyList<PartRow> Rows(Bridge bridge, RatingMethod method, IReadOnlyList<LiveLoad> loads, CancellationToken stop)
    {
        if (bridge.Floor is not { } floor)
        {
            return [];
        }

        var rater = new FloorRater(bridge, floor, method, loads);
        var onFloor = new FloorLoading(bridge, floor, method);
        // A vehicle that stands for its loading is not rated by its axles alone, here as on the trusses.
        var rows = new List<PartRow>();
        foreach (LiveLoad load in loads.Where(l => l is not Vehicle { LaneLoading: not null }))
        {
            stop.ThrowIfCancellationRequested();
            rows.AddRange(onFloor.DemandsOf(load).GroupBy(d => (d.Part.Index, d.Effect, d.Sense)).SelectMany(same => rater.RowsOf(load, [.. same])));
        }

        return rows;
    }

    // Of several panel points the one with the lowest factor; after it that with a legal vehicle beside an emergency vehicle, where one is.
    private IEnumerable<PartRow> RowsOf(LiveLoad load, PartDemand[] same)
    {
        static double Factor(PartRow row) => row.Factor ?? double.PositiveInfinity;
        foreach (RatingLevel level in method.LevelsOf(load.Class, bridge.Rating))
        {
            PartDemand[] here = [.. same.Where(d => d.Level.Length == 0 || d.Level == level.Name)];
            PartRow[] rows = [.. here.Select(d => RowOf(load, level, d))];
            yield return rows.MinBy(Factor)!;
            if (rows.Zip(here, (r, d) => neighbours.Of(r, d, d is { Effect: not PartEffect.Force, Part: FloorbeamPart { Make.Material: TimberMaterial } })).OfType<PartRow>().MinBy(Factor) is { } beside)
            {
                yield return beside;
            }
        }
    }

    private PartRow RowOf(LiveLoad load, RatingLevel level, PartDemand demand)
    {
        // Compression of a floorbeam is that of its posts, which have no rule.
        (PartResistance? resistance, IReadOnlyList<MissingDatum> missing) = demand.Sense == Sense.Compression ? (null, []) : CapacityOf(demand, level);
        IReadOnlyList<PartLive> worst = demand.Ways.MaxBy(w => w.Sum(p => p.WithImpact)) ?? [];
        double live = worst.Sum(p => p.Effect), withImpact = worst.Sum(p => p.WithImpact);
        double onComponents = deadFactors.OnComponents(demand.Dead.Components), onWearing = deadFactors.OnWearingSurface(demand.Dead.Wearing);
        // A deck that the program has no rule for asks for nothing else.
        MissingDatum[] lacking = demand.Missing.Any(m => m is MissingDatum.DeckRule) ? [new MissingDatum.DeckRule()] : [.. demand.Part.Lacking, .. demand.Missing, .. missing];
        var row = new PartRow
        {
            Kind = demand.Part.Kind,
            PartName = demand.Part.Name,
            Index = demand.Part.Index,
            Of = demand.Effect,
            At = demand.At,
            PartSense = demand.Sense,
            Vehicle = load,
            Level = level,
            Status = RatingStatus.NotRated,
            Reason = lacking.Length > 0 ? new NotRatedReason.PartLacks([.. lacking.Distinct()]) : level.LiveFactor is null ? method.WithoutLiveFactor(load.Class) : null,
            Capacity = resistance?.Value,
            Resistance = resistance,
            DeadComponents = demand.Dead.Components,
            DeadWearing = demand.Dead.Wearing,
            ComponentsFactor = onComponents,
            WearingFactor = onWearing,
            FactoredDead = (onComponents * demand.Dead.Components) + (onWearing * demand.Dead.Wearing),
            Dead = demand.Dead,
            LiveParts = worst,
            Share = worst is [PartLive.AtEnd end, ..] ? end.Shared.Lateral : null,
            Live = live > 0 ? live : null,
            LoadedLength = live > 0 ? demand.LoadedLength : null,
            Impact = live > 0 ? (withImpact / live) - 1 : null,
        };
        row = row with { Impact = worst.Select(p => p.Impact.Value).Distinct().Count() == 1 ? worst[0].Impact.Value : row.Impact };
        return lacking.Length > 0 ? row : ((PartRow)row.Rated(r => r)).WithContact();
    }

    private (PartResistance? Resistance, IReadOnlyList<MissingDatum> Missing) CapacityOf(PartDemand demand, RatingLevel level)
    {
        (int, PartEffect, string) key = (demand.Part.Index, demand.Effect, level.Name);
        if (!found.TryGetValue(key, out (PartResistance?, IReadOnlyList<MissingDatum>) known))
        {
            known = FloorCapacity.Of(demand.Part, demand.Effect, method, level, bridge.Rating.Condition);
            found.Add(key, known);
        }

        return known;
    }
}
