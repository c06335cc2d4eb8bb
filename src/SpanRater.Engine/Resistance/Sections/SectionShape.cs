namespace SpanRater;

/// <summary>A shape or what is wrong with it.</summary>
/// <param name="Shape">The shape; null where there are faults.</param>
/// <param name="Faults">Every fault.</param>
public sealed record ShapeCheck(SectionShape? Shape, IReadOnlyList<ShapeFault> Faults);

/// <summary>
/// One rolled or forged shape, a plate, a bar or a timber, in its own drawing: the origin is the heel of an angle, the middle of the back of a
/// channel, and the centre of all others. Immutable. A shape of the shape table keeps its published properties; once it is thinned, they are
/// lowered in the ratio of what its outline gives as found to what it gives as built.
/// </summary>
public sealed class SectionShape
{
    private readonly ShapeMeasures measures;
    private readonly IReadOnlyList<(ShapeDimension Wall, double Length)> holes;

    private SectionShape(ShapeKind kind, ShapeMeasures measures, PublishedShape? published, IReadOnlyList<(ShapeDimension Wall, double Length)> holes)
    {
        Kind = kind;
        this.measures = measures;
        Published = published;
        this.holes = holes;
        Outline = holes.GroupBy(h => h.Wall).Aggregate(kind.OutlineOf(measures), Cut);
        Properties = PropertiesOf();
    }

    /// <summary>What kind of shape it is.</summary>
    public ShapeKind Kind { get; }

    /// <summary>Its row of the shape table; null where it is given by its dimensions.</summary>
    public PublishedShape? Published { get; }

    /// <summary>Properties in its own drawing.</summary>
    public SectionProperties Properties { get; }

    /// <summary>Area [m²].</summary>
    public double Area => Properties.Area;

    /// <summary>Net area that the shape itself tells, of the root of a thread or of an eyebar's head; null where it does not [m²].</summary>
    public double? OwnNetArea => Kind.OwnNetArea(measures);

    internal Outline Outline { get; }

    /// <summary>Makes a shape of its dimensions, all faults told at once.</summary>
    /// <param name="kind">Its kind.</param>
    /// <param name="dimensions">Its dimensions [m].</param>
    public static ShapeCheck Create(ShapeKind kind, IReadOnlyDictionary<ShapeDimension, double> dimensions)
    {
        ArgumentNullException.ThrowIfNull(kind);
        ArgumentNullException.ThrowIfNull(dimensions);
        ShapeDimension[] own = [.. kind.Needed, .. kind.Optional];
        var faults = new List<ShapeFault>();
        faults.AddRange(kind.Needed.Where(d => !dimensions.ContainsKey(d)).Select(d => new ShapeFault.Missing(d)));
        faults.AddRange(dimensions.Keys.Where(d => !own.Contains(d)).Order().Select(d => new ShapeFault.NotOfShape(d)));
        faults.AddRange(dimensions.Where(d => !(d.Value > 0 && double.IsFinite(d.Value))).OrderBy(d => d.Key).Select(d => new ShapeFault.NotPositive(d.Key)));
        if (faults.Count > 0)
        {
            return new ShapeCheck(null, faults);
        }

        var measures = new ShapeMeasures(dimensions.SelectMany(d => kind.FinerOf(d.Key).Select(f => (Finer: f, d.Value))).ToDictionary(d => d.Finer, d => new ShapeMeasure(d.Value, 0, 0)));
        faults.AddRange(kind.Faults(measures));
        return faults.Count > 0 ? new ShapeCheck(null, faults) : new ShapeCheck(new SectionShape(kind, measures, null, []), []);
    }

    /// <summary>A dimension as it is now; null where the shape does not have it, or where two legs or flanges that it stands for differ [m].</summary>
    /// <param name="dimension">The dimension.</param>
    public double? this[ShapeDimension dimension]
    {
        get
        {
            double[] values = [.. Kind.FinerOf(dimension).Where(measures.Has).Select(measures.Now)];
            return values.Length > 0 && Array.TrueForAll(values, v => v == values[0]) ? values[0] : null;
        }
    }

    /// <summary>A dimension as built; null where the shape does not have it [m].</summary>
    /// <param name="dimension">The dimension.</param>
    public double? AsBuilt(ShapeDimension dimension) =>
        Kind.FinerOf(dimension) is var finer && finer.All(measures.Has) ? measures.Built(finer[0]) : null;

    /// <summary>The area that a path of holes leaves; null where the shape's own net area is the only one [m²].</summary>
    /// <param name="path">The path.</param>
    public double? NetArea(HolePath path)
    {
        ArgumentNullException.ThrowIfNull(path);
        if (Kind.NetAreaIsItsOwn)
        {
            return OwnNetArea;
        }

        return path.Count == 0 ? Area : Kind.Walls.Count == 0 ? null : Area - (path.Deduction * WallOf(path.Wall));
    }

    /// <summary>Thickness of a wall now: the larger one where it is not told which of two [m].</summary>
    internal double WallOf(ShapeDimension? wall) =>
        (wall is { } told ? Kind.FinerOf(told) : Kind.Walls).Max(measures.Now);

    /// <summary>How long a wall is, across which holes stand side by side [m].</summary>
    internal double LengthOf(ShapeDimension wall)
    {
        (double left, double right, double bottom, double top, bool isUpright) = Kind.WallOf(measures, wall);
        return (isUpright ? top - bottom : right - left) - HolesIn(wall);
    }

    /// <summary>How much of a wall is holes, side by side [m].</summary>
    internal double HolesIn(ShapeDimension wall) => holes.Where(h => h.Wall == wall).Sum(h => h.Length);

    internal SectionShape OfTable(PublishedShape published) => new(Kind, measures, published, holes);

    /// <summary>The shape with so much lost at the faces of one of its finest measures [m].</summary>
    internal SectionShape Trimmed(ShapeDimension finer, double atLow, double atHigh)
    {
        ShapeMeasure measure = measures[finer];
        return new SectionShape(Kind, measures.With(finer, measure with { AtLow = measure.AtLow + atLow, AtHigh = measure.AtHigh + atHigh }), Published, holes);
    }

    /// <summary>The shape with holes side by side in the middle of a wall [m].</summary>
    internal SectionShape WithHole(ShapeDimension wall, double length) => new(Kind, measures, Published, [.. holes, (wall, length)]);

    internal bool Has(ShapeDimension finer) => measures.Has(finer);

    internal double Now(ShapeDimension finer) => measures.Now(finer);

    // Holes in one wall stand side by side in its middle.
    private Outline Cut(Outline outline, IGrouping<ShapeDimension, (ShapeDimension Wall, double Length)> wall)
    {
        (double left, double right, double bottom, double top, bool isUpright) = Kind.WallOf(measures, wall.Key);
        double half = wall.Sum(h => h.Length) / 2, middle = (isUpright ? bottom + top : left + right) / 2;
        return isUpright ? outline.Without(left, right, middle - half, middle + half) : outline.Without(middle - half, middle + half, bottom, top);
    }

    private SectionProperties PropertiesOf()
    {
        SectionProperties drawn = Outline.Properties();
        return Published is null ? drawn : Published.Corrected(drawn, Kind.OutlineOf(measures.AsBuilt()).Properties());
    }
}
