namespace SpanRater;

/// <summary>What a live load and the dead load bring to one effect on a part of the floor.</summary>
/// <param name="Part">The part.</param>
/// <param name="Effect">The effect.</param>
/// <param name="At">The panel point; empty where all alike are at their worst.</param>
/// <param name="Dead">The dead load.</param>
/// <param name="Ways">The ways to load the deck of which the worst counts, each with the parts that act together.</param>
/// <param name="Missing">What the effect cannot be found without; empty where it is found.</param>
internal sealed record PartDemand(
    FloorPart Part, PartEffect Effect, string At, FloorDead Dead, IReadOnlyList<IReadOnlyList<PartLive>> Ways, IReadOnlyList<MissingDatum> Missing)
{
    /// <summary>Length that the formula for impact takes [m].</summary>
    public double LoadedLength { get; init; }

    /// <summary>Influence line of the reaction that it follows from; null where it follows from none.</summary>
    public InfluenceLine? Line { get; init; }

    /// <summary>Influence line across the deck of one section of a trussed floorbeam; null of all else.</summary>
    public AcrossLine? Across { get; init; }

    /// <summary>Sense of the force; null where the effect has none.</summary>
    public Sense? Sense { get; init; }

    /// <summary>Name of the level that it holds for, where what counts depends on the strength there; empty for every level.</summary>
    public string Level { get; init; } = "";

    /// <summary>The demand of an effect that cannot be found.</summary>
    public static PartDemand Lacking(FloorPart part, PartEffect effect, IReadOnlyList<MissingDatum> missing) => new(part, effect, "", new FloorDead(effect, 0), [], missing);
}
