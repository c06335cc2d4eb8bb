namespace SpanRater;

/// <summary>
/// One effect that is counted, on one truss or part: the value of a channel, times what of the truck acts here. One vehicle is alone on the bridge, as near to the kerb as it may stand;
/// no load factor and no presence factor.
/// </summary>
/// <param name="Kind">The kind of part.</param>
/// <param name="Name">Name of the member or part.</param>
/// <param name="Acts">The effect.</param>
/// <param name="Sense">Its sense; null where it has none.</param>
/// <param name="Channel">Place of its channel in the plan.</param>
/// <param name="Factor">What of the truck acts: a share [-] or, of a moment across, an arm [m].</param>
/// <param name="Impact">Dynamic allowance.</param>
public sealed record TrafficEffect(PartKind Kind, string Name, PartEffect Acts, Sense? Sense, int Channel, double Factor, AppliedImpact Impact)
{
    /// <summary>Position of the truss member; null of a part of the floor.</summary>
    public int? Member { get; init; }

    /// <summary>The truss, 0 for the left one; null where both are alike, and of a part of the floor.</summary>
    public int? Truss { get; init; }

    /// <summary>The panel point; empty where there is none to tell.</summary>
    public string At { get; init; } = "";

    /// <summary>Dead load, unfactored, positive in the sense of the effect [N or N·m]; null where it is not known.</summary>
    public double? Dead { get; init; }

    /// <summary>What the part carries, a magnitude [N or N·m]; null where it is not known.</summary>
    public double? Capacity { get; init; }

    /// <summary>Why there is no capacity; null where there is one.</summary>
    public NotRatedReason? WithoutCapacity { get; init; }

    /// <summary>True where any pressure makes a member go slack that only pulls, with nothing to take over from it: the capacity is zero.</summary>
    public bool OnlyPulls { get; init; }

    /// <summary>What the value of the channel is multiplied by for the effect with impact [- or m].</summary>
    public double WithImpact => Factor * (1 + Impact.Value);

    /// <summary>Value of the channel above which dead load and live load with impact exceed the capacity; null where dead load or capacity is not known.</summary>
    public double? Limit => Capacity - Dead is { } room && WithImpact > 0 ? room / WithImpact : null;

    /// <summary>Dead load and a live effect with impact, both unfactored, over the capacity [-]; null where one of them is not known.</summary>
    /// <param name="value">Value of the channel [N].</param>
    public double? UsedBy(double value) => Capacity > 0 ? (Dead + (WithImpact * value)) / Capacity : null;
}
