namespace SpanRater;

/// <summary>What is sought on a simple span.</summary>
public enum SpanEffect
{
    /// <summary>The largest bending moment.</summary>
    Moment,

    /// <summary>The largest shear at a section.</summary>
    Shear,
}

/// <summary>One way in which a live load acts on a simple span: its axles, its lane load, or both at one section.</summary>
/// <param name="Vehicle">The vehicle; null for a lane load alone.</param>
/// <param name="Axles">The effect of its axles and where they stand; null for a lane load alone.</param>
/// <param name="Lane">The lane load; null where there is none.</param>
/// <param name="LaneEffect">Effect of the lane load, its concentrated load in it [N·m or N].</param>
public sealed record SpanLive(Vehicle? Vehicle, SpanPeak? Axles, LaneLoad? Lane, double LaneEffect)
{
    /// <summary>Both together, without impact [N·m or N].</summary>
    public double Effect => (Axles?.Effect ?? 0) + LaneEffect;

    /// <summary>
    /// The ways of which the worst counts: each vehicle, with the lane load that acts together with it; and the lane load alone where
    /// it stands in place of vehicles or there are none. Empty for crowds and vehicles on tracks.
    /// </summary>
    /// <param name="load">The live load.</param>
    /// <param name="span">The span [m].</param>
    /// <param name="effect">What is sought.</param>
    /// <param name="fromSupport">For shear, distance of the section from the support [m].</param>
    /// <param name="axleFactor">
    /// Factor that the axles take and the lane load does not, impact as a rule: it shifts a little where the two together bring
    /// most. The effects given back are without it [-].
    /// </param>
    public static IReadOnlyList<SpanLive> Ways(LiveLoad load, double span, SpanEffect effect, double fromSupport, double axleFactor = 1)
    {
        ArgumentNullException.ThrowIfNull(load);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(axleFactor);
        var beam = new SimpleSpan(span);
        switch (load)
        {
            case Vehicle vehicle:
                return [.. With(beam, vehicle, null, effect, fromSupport, axleFactor)];
            case Loading loading:
                LaneLoad? together = loading.Lane is { StandsAlone: false } lane ? lane : null;
                SpanLive[] trains = [.. loading.Trains.SelectMany(t => With(beam, t, together, effect, fromSupport, axleFactor))];
                return loading.Lane is { } any && (any.StandsAlone || trains.Length == 0)
                    ? [.. trains, Alone(beam, any, effect, fromSupport)]
                    : trains;
            default:
                return [];
        }
    }

    // In shear each axle in turn is over the section: which is worst depends on what of it and of the others counts.
    private static IEnumerable<SpanLive> With(SimpleSpan beam, Vehicle vehicle, LaneLoad? lane, SpanEffect effect, double fromSupport, double axleFactor)
    {
        double uniform = lane is null ? 0 : Uniform(beam, lane, effect, fromSupport);
        if (effect == SpanEffect.Shear)
        {
            double ofLane = beam.LaneShear(uniform, 0, fromSupport).Effect;
            return beam.Shears(vehicle.Train, fromSupport).Where(s => s.Effect > 0).Select(s => new SpanLive(vehicle, s, lane, ofLane));
        }

        return beam.MostMoment(vehicle.Train, uniform / axleFactor) is { } most
            ? [new SpanLive(vehicle, most with { Effect = most.OfAxles }, lane, uniform * most.Section * (beam.Length - most.Section) / 2)]
            : [];
    }

    private static SpanLive Alone(SimpleSpan beam, LaneLoad lane, SpanEffect effect, double fromSupport)
    {
        double uniform = Uniform(beam, lane, effect, fromSupport), point = lane.PointFor(effect == SpanEffect.Moment) ?? 0;
        SpanPeak peak = effect == SpanEffect.Moment ? beam.LaneMoment(uniform, point) : beam.LaneShear(uniform, point, fromSupport);
        return new SpanLive(null, null, lane, peak.Effect);
    }

    // The loaded length is the stretch of the span that adds to the effect.
    private static double Uniform(SimpleSpan beam, LaneLoad lane, SpanEffect effect, double fromSupport)
    {
        double loaded = effect == SpanEffect.Moment ? beam.Length : beam.Length - fromSupport;
        return loaded > 0 ? lane.Intensity.At(loaded, 0) : 0;
    }
}
