namespace SpanRater;

/// <summary>The rating of an effect on a part of the floor or on a connection.</summary>
public sealed record PartRow : RatingRow
{
    /// <summary>The kind of part.</summary>
    public required PartKind Kind { get; init; }

    /// <summary>Name of the part.</summary>
    public required string PartName { get; init; }

    /// <summary>The effect.</summary>
    public required PartEffect Of { get; init; }

    /// <summary>Place of the part in its table.</summary>
    public required int Index { get; init; }

    /// <summary>Sense of the force; null where the effect has none.</summary>
    public Sense? PartSense { get; init; }

    /// <summary>The panel point or joint where it is; empty where all alike are at their worst.</summary>
    public string At { get; init; } = "";

    /// <inheritdoc/>
    public override PartKind Part => Kind;

    /// <inheritdoc/>
    public override string Name => PartName;

    /// <inheritdoc/>
    public override PartEffect ActsAs => Of;

    /// <inheritdoc/>
    public override Sense? InSense => PartSense;

    /// <inheritdoc/>
    public override int Order => Index;

    /// <summary>How the capacity follows; null where there is none.</summary>
    public PartResistance? Resistance { get; init; }

    /// <summary>The dead load item by item; null of a connection, which has the truss's.</summary>
    public FloorDead? Dead { get; init; }

    /// <summary>What makes up the live effect, one part of the load each; empty where there is none.</summary>
    public IReadOnlyList<PartLive> LiveParts { get; init; } = [];
}
