namespace SpanRater;

/// <summary>One item of the dead load, as it is there on the bridge. Immutable.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Case">Components or wearing surface.</param>
/// <param name="Weight">What gives it its weight.</param>
public sealed record DeadItem(string Name, DeadCase Case, DeadWeight Weight)
{
    /// <summary>How many of it there are.</summary>
    public int Count { get; init; } = 1;

    /// <summary>Its centre from the middle between the trusses, right positive [m].</summary>
    public double Centre { get; init; }

    /// <summary>x at which it starts [m]; null for the first of the joints that carry it.</summary>
    public double? From { get; init; }

    /// <summary>x at which it ends [m]; null for the last of the joints that carry it.</summary>
    public double? To { get; init; }

    /// <summary>Names of the joints that carry it; null for the panel points.</summary>
    public IReadOnlyList<string>? Joints { get; init; }

    /// <summary>Where its size is from; empty where that is not said.</summary>
    public string Source { get; init; } = "";
}
