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

    /// <summary>What makes up the live effect, one part of the load each; empty where there is none.</summary>
    public IReadOnlyList<PartLive> LiveParts { get; init; } = [];
}

/// <summary>What a part carries, with all that led to it.</summary>
public abstract record PartResistance
{
    /// <summary>The capacity, all factors in it [N or N·m].</summary>
    public abstract double Value { get; }

    /// <summary>What it is made of; null of what is of no one material.</summary>
    public abstract Material? Material { get; }

    /// <summary>What the capacity rests on.</summary>
    public abstract IEnumerable<Clause> Clauses { get; }

    /// <summary>Condition and system factors; null where the method has none.</summary>
    public abstract MemberFactors? PartFactors { get; }

    /// <summary>Name of the cut, bar or plane that governs; null where there is only one.</summary>
    public abstract string? Place { get; }
}

/// <summary>One part of a live load as a part of the floor or a connection carries it: effect along the span × what of it acts across.</summary>
/// <param name="Along">Effect of the whole vehicle, lane or metre of crowd along the span [N or N·m].</param>
/// <param name="Across">What of it acts, presence in it: a share [-] or, of a moment across, an arm [m].</param>
/// <param name="Impact">Dynamic allowance on it.</param>
public abstract record PartLive(double Along, double Across, AppliedImpact Impact)
{
    /// <summary>The effect without impact [N or N·m].</summary>
    public double Effect => Along * Across;

    /// <summary>The effect with impact [N or N·m].</summary>
    public double WithImpact => Effect * (1 + Impact.Value);
}
