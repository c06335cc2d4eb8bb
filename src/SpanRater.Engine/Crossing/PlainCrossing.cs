namespace SpanRater;

/// <summary>The crossing of a truss without rods: its effects are proportional to the vehicle, and dead load has no part in them.</summary>
internal sealed class PlainCrossing : TrussCrossing
{
    private PlainCrossing(InfluenceLines lines, ForceSolution? components, ForceSolution? wearingSurface)
        : base(lines, components, wearingSurface)
    {
    }

    public static Outcome<TrussCrossing> Of(LinearTruss system, LoadCase? components, LoadCase? wearingSurface)
    {
        ForceSolution? dc = null, dw = null;
        return InfluenceLines.Of(system).TryGet(out InfluenceLines? lines, out Refusal? refusal)
            && (components is null || system.Solve(components).TryGet(out dc, out refusal))
            && (wearingSurface is null || system.Solve(wearingSurface).TryGet(out dw, out refusal))
            ? new PlainCrossing(lines, dc, dw)
            : refusal!;
    }

    public override Outcome<IReadOnlyList<PeakPair>> Roll(Vehicle vehicle, double scale = 1)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        var plan = new RollingPlan(Lines.Truss.Stations, scale == 1 ? vehicle.Train : vehicle.Train.Times(scale));
        return new List<PeakPair>(Lines.Members.Select(m => plan.PeaksOf(m.Line)));
    }
}
