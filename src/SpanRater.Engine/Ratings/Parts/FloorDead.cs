namespace SpanRater;

/// <summary>What lies on a part of the floor.</summary>
public enum FloorWeight
{
    /// <summary>The deck and all that lies on it but a wearing surface.</summary>
    Deck,

    /// <summary>The wearing surface.</summary>
    WearingSurface,

    /// <summary>Stringers.</summary>
    Stringers,

    /// <summary>Kerbs and railings, one on each side.</summary>
    Kerbs,

    /// <summary>The part itself, or the floorbeam that hangs from it.</summary>
    Own,
}

/// <summary>One item of the dead load on a part of the floor.</summary>
/// <param name="What">What it is.</param>
/// <param name="Load">Its load along the part [N/m]; of kerbs the weight of the one on each side [N].</param>
/// <param name="Strip">Width of deck or length of panel of which it comes onto the part [m]; 0 of its own weight.</param>
/// <param name="From">Where it starts along the part [m]; of kerbs where one stands.</param>
/// <param name="To">Where it ends [m]; of kerbs where the other stands.</param>
/// <param name="Effect">What it brings [N or N·m].</param>
public sealed record FloorDeadItem(FloorWeight What, double Load, double Strip, double From, double To, double Effect);

/// <summary>The dead load on one effect of a part of the floor, item by item. The largest effect of each is added up, though they may be at different places: on the safe side.</summary>
/// <param name="Of">The effect.</param>
/// <param name="Span">Length between the supports of the part [m].</param>
public sealed record FloorDead(PartEffect Of, double Span)
{
    /// <summary>The items, those without weight left out.</summary>
    public IReadOnlyList<FloorDeadItem> Items { get; private init; } = [];

    /// <summary>Distance from the support at which a shear is taken [m].</summary>
    public double Section { get; init; }

    /// <summary>Hangers that share what comes to one end.</summary>
    public int Ends { get; init; } = 1;

    /// <summary>Influence line across the deck by which the effect follows; null of a simple span.</summary>
    public AcrossLine? Line { get; init; }

    /// <summary>Effect of all but the wearing surface; what relieves a beam with a rod counts as none.</summary>
    public double Components => Sum(wearing: false);

    /// <summary>Effect of the wearing surface; what relieves a beam with a rod counts as none.</summary>
    public double Wearing => Sum(wearing: true);

    /// <summary>With an even load on a stretch.</summary>
    /// <param name="what">What it is.</param>
    /// <param name="load">Its load along the part [N/m].</param>
    /// <param name="strip">Width of deck or length of panel of which it comes onto the part [m].</param>
    /// <param name="from">Where it starts [m].</param>
    /// <param name="to">Where it ends [m].</param>
    public FloorDead With(FloorWeight what, double load, double strip, double from, double to)
    {
        double effect = Line is { } line ? load * line.Over(from, to)
            : Of == PartEffect.Moment ? Moment(load, from, to)
            : (Reaction(load, from, to) - (load * Math.Max(0, Section - from))) / Ends;
        return Plus(new FloorDeadItem(what, load, strip, from, to, effect));
    }

    /// <summary>With a kerb and railing on each side.</summary>
    /// <param name="load">Weight of each [N].</param>
    /// <param name="strip">Length of panel of which it comes onto the part [m].</param>
    /// <param name="left">Where one stands [m].</param>
    /// <param name="right">Where the other stands [m].</param>
    public FloorDead WithKerbs(double load, double strip, double left, double right)
    {
        // The farther one from its support, as if both were so; each at its own end.
        double effect = Line is { } line ? load * (line.Ordinate(left) + line.Ordinate(right))
            : Of == PartEffect.Moment ? load * Math.Max(left, Span - right)
            : load / Ends;
        return Plus(new FloorDeadItem(FloorWeight.Kerbs, load, strip, left, right, effect));
    }

    private FloorDead Plus(FloorDeadItem item) => item.Load == 0 ? this : this with { Items = [.. Items, item] };

    private double Sum(bool wearing)
    {
        double sum = Items.Where(i => (i.What == FloorWeight.WearingSurface) == wearing).Sum(i => i.Effect);
        return Line is null ? sum : Math.Max(0, sum);
    }

    // No shear where the reaction is used up: the moment is largest there.
    private double Moment(double load, double from, double to)
    {
        double left = LeftReaction(load, from, to);
        return load == 0 ? 0 : (left * from) + (left * left / (2 * load));
    }

    private double Reaction(double load, double from, double to)
    {
        double left = LeftReaction(load, from, to);
        return Math.Max(left, (load * (to - from)) - left);
    }

    private double LeftReaction(double load, double from, double to) => load * (to - from) * (Span - ((from + to) / 2)) / Span;
}
