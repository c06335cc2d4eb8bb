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

    /// <summary>
    /// The wheel on a plank made lighter until it just passes: its contact shrinks with it, so that less of the vehicle passes than in proportion, and
    /// this is the factor. Null where a factor of at least 1 is in proportion, and of all else.
    /// </summary>
    public PartLive.OnPlank? LighterWheel { get; init; }

    /// <inheritdoc/>
    public override double? Passes => Scale(Capacity) ?? Factor;

    /// <summary>What makes up the live effect, one part of the load each; empty where there is none.</summary>
    public IReadOnlyList<PartLive> LiveParts { get; init; } = [];

    /// <summary>The row with its factor, no more of the vehicle than passes with the contact that its wheels then have.</summary>
    internal PartRow WithContact()
    {
        if (Factor is not { } inProportion || Scale(Capacity) is not { } passes || passes >= inProportion)
        {
            return this;
        }

        Func<double, double?> proportion = FactorAt!;
        PartRow row = this;
        return this with
        {
            Factor = passes,
            LighterWheel = ((PartLive.OnPlank)LiveParts[0]).Times(passes),
            FactorAt = capacity => proportion(capacity) is { } plain ? Math.Min(plain, row.Scale(capacity) ?? plain) : null,
        };
    }

    // How much of the vehicle just passes on planks; null of all else, and where nothing passes. The effect grows with the wheel throughout, and halving finds it to the last bits.
    private double? Scale(double? capacity)
    {
        if (LiveParts is not [PartLive.OnPlank plank] || Level.LiveFactor is not { } factor || capacity - FactoredDead is not > 0)
        {
            return null;
        }

        double room = ((capacity ?? 0) - FactoredDead) / factor, low = 0, high = 1;
        while (plank.Times(high).WithImpact < room)
        {
            (low, high) = (high, 2 * high);
        }

        for (int i = 0; i < 100 && high - low > 1e-14 * high; i++)
        {
            double middle = (low + high) / 2;
            (low, high) = plank.Times(middle).WithImpact < room ? (middle, high) : (low, middle);
        }

        return low;
    }
}
