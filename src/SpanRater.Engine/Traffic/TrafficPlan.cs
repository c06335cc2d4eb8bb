namespace SpanRater;

/// <summary>Why something is not taken into the count.</summary>
public abstract record NotCounted
{
    private NotCounted()
    {
    }

    /// <summary>Which rods act changes with the load, and with it the line of the members.</summary>
    /// <param name="Members">Names of the members.</param>
    public sealed record RodsDecide(IReadOnlyList<string> Members) : NotCounted;

    /// <summary>There is no share of the truss.</summary>
    /// <param name="Why">Why.</param>
    public sealed record NoShare(ShareOutcome Why) : NotCounted;

    /// <summary>The deck: a wheel, not the truck, loads a plank.</summary>
    /// <param name="Part">Its name.</param>
    public sealed record DeckByWheels(string Part) : NotCounted;

    /// <summary>An effect on stringers that depends on which axle is over the support.</summary>
    /// <param name="Part">Its name.</param>
    /// <param name="Effect">The effect.</param>
    public sealed record AxleOverSupport(string Part, PartEffect Effect) : NotCounted;

    /// <summary>A trussed floorbeam: what counts depends on its rod and on what it carries.</summary>
    /// <param name="Part">Its name.</param>
    public sealed record TrussedFloorbeam(string Part) : NotCounted;

    /// <summary>A part of the floor lacks what its effect follows from.</summary>
    /// <param name="Part">Its name.</param>
    /// <param name="Effect">The effect.</param>
    /// <param name="Missing">What it lacks.</param>
    public sealed record PartLacks(string Part, PartEffect Effect, IReadOnlyList<MissingDatum> Missing) : NotCounted;

    /// <summary>Connections: forces of several members act on them at once.</summary>
    public sealed record Connections() : NotCounted;

    /// <summary>The floor is not given.</summary>
    public sealed record NoFloor() : NotCounted;
}

/// <summary>A simple span along the deck whose largest moment is counted: that of the worst of several sections.</summary>
/// <param name="Span">The span [m].</param>
/// <param name="Line">Place of its line in the plan.</param>
internal sealed record CountedSpan(double Span, int Line)
{
    /// <summary>
    /// Sections looked at, as parts of the span: by turning the truck round they stand for those of the other half. The moment under a train is a parabola of the section near its top,
    /// so that the worst of these is less than 0.3 % below the largest anywhere: 4 · 0.025² = 0.0025 of it.
    /// </summary>
    public static IReadOnlyList<double> Sections { get; } = [0.50, 0.55, 0.60, 0.65];
}

/// <summary>What is counted when recorded trucks cross a bridge, and what is not: lines, channels and effects. Immutable; made once, shared by all workers.</summary>
public sealed class TrafficPlan
{
    internal TrafficPlan(Bridge bridge, RatingMethod method, RatingLevel level, double gauge, TrafficPlanDraft draft)
    {
        Bridge = bridge;
        Method = method;
        Level = level;
        Gauge = gauge;
        DeckLines = CrossedLines.Of(bridge.Truss.Stations, draft.DeckLines);
        Spans = draft.Spans;
        SpanLines = [.. Spans.Select(s => CrossedLines.Of(StationsOf(s.Span), [.. CountedSpan.Sections.Select(c => MomentLine(s.Span, c))]))];
        Lines = draft.DeckLines.Count + Spans.Count;
        Effects = draft.Effects;
        Channels = draft.Channels;
        Stresses = draft.Stresses;
        NotCounted = draft.NotCounted;
        ImpactMayBeLess = draft.ImpactMayBeLess;
    }

    /// <summary>The bridge.</summary>
    public Bridge Bridge { get; }

    /// <summary>The method whose impact and capacities are taken.</summary>
    public RatingMethod Method { get; }

    /// <summary>The level whose capacities are taken.</summary>
    public RatingLevel Level { get; }

    /// <summary>Gauge taken for every truck [m].</summary>
    public double Gauge { get; }

    /// <summary>The values that are counted at each crossing.</summary>
    public IReadOnlyList<TrafficChannel> Channels { get; }

    /// <summary>The effects: what the channels mean for each truss and part.</summary>
    public IReadOnlyList<TrafficEffect> Effects { get; }

    /// <summary>The members whose stress ranges are counted, and those for which they are not.</summary>
    public IReadOnlyList<TrafficStress> Stresses { get; }

    /// <summary>What is not counted, and why.</summary>
    public IReadOnlyList<NotCounted> NotCounted { get; }

    /// <summary>Whether a line has several stretches of a sense whose allowances differ: the largest is taken.</summary>
    public bool ImpactMayBeLess { get; }

    /// <summary>Number of lines.</summary>
    internal int Lines { get; }

    /// <summary>The lines along the whole deck.</summary>
    internal CrossedLines DeckLines { get; }

    /// <summary>The spans of stringers.</summary>
    internal IReadOnlyList<CountedSpan> Spans { get; }

    /// <summary>Their lines, one for each section.</summary>
    internal IReadOnlyList<CrossedLines> SpanLines { get; }

    /// <summary>What can be counted on a bridge; refused where its truss cannot be solved.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="method">The rating method.</param>
    /// <param name="gauge">Gauge of every truck, positive [m].</param>
    public static Outcome<TrafficPlan> Of(Bridge bridge, RatingMethod method, double gauge = Vehicle.StandardGauge)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(method);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(gauge);
        IReadOnlyList<RatingLevel> levels = method.LevelsOf(VehicleClass.Legal, bridge.Rating);
        RatingLevel level = levels.FirstOrDefault(l => l.Governance == Governance.Governs) ?? levels[^1];
        var draft = new TrafficPlanDraft(bridge, method, level, gauge);
        return draft.AddMembers() is { } refusal ? refusal : new TrafficPlan(bridge, method, level, gauge, draft.WithFloor());
    }

    private static double[] StationsOf(double span) => [0, .. CountedSpan.Sections.Select(c => c * span), span];

    private static InfluenceLine MomentLine(double span, double section) => new(
        StationsOf(span), [.. StationsOf(span).Select(x => Math.Min(x * (1 - section), section * (span - x)))]);
}
