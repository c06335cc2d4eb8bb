namespace SpanRater;

/// <summary>A kind of shape: its dimensions, and the outline they give. Each kind is one object; nothing else asks which it is.</summary>
public abstract class ShapeKind
{
    private protected ShapeKind(string name, IReadOnlyList<ShapeDimension> needed, IReadOnlyList<ShapeDimension>? optional = null)
    {
        Name = name;
        Needed = needed;
        Optional = optional ?? [];
    }

    /// <summary>A plate that lies: its width is across the member.</summary>
    public static ShapeKind Plate { get; } = new RectangleKind("plate", ShapeDimension.Width, ShapeDimension.Thickness, ShapeDimension.Thickness);

    /// <summary>A plate that stands: its depth is in the plane of the truss.</summary>
    public static ShapeKind StandingPlate { get; } = new RectangleKind("standing plate", ShapeDimension.Thickness, ShapeDimension.Depth, ShapeDimension.Thickness);

    /// <summary>A solid timber.</summary>
    public static ShapeKind Timber { get; } = new RectangleKind("timber", ShapeDimension.Width, ShapeDimension.Depth, ShapeDimension.Width);

    /// <summary>An eyebar, which stands: its width is in the plane of the truss.</summary>
    public static ShapeKind Eyebar { get; } = new EyebarKind();

    /// <summary>A round bar.</summary>
    public static ShapeKind RoundBar { get; } = new BarKind("round bar", ShapeDimension.Diameter);

    /// <summary>A square bar.</summary>
    public static ShapeKind SquareBar { get; } = new BarKind("square bar", ShapeDimension.Width);

    /// <summary>A pipe.</summary>
    public static ShapeKind Pipe { get; } = new PipeKind();

    /// <summary>An angle, with sharp corners as the older tables have it.</summary>
    public static ShapeKind Angle { get; } = new AngleKind();

    /// <summary>A rolled channel whose flanges taper by 1 in 6, the American standard.</summary>
    public static ShapeKind Channel { get; } = new FlangedKind("channel", isChannel: true, FlangedKind.StandardTaper);

    /// <summary>A channel with parallel flanges.</summary>
    public static ShapeKind ParallelChannel { get; } = new FlangedKind("parallel channel", isChannel: true, 0);

    /// <summary>An I-beam whose flanges taper by 1 in 6, the American standard and what most old beams are.</summary>
    public static ShapeKind IBeam { get; } = new FlangedKind("I-beam", isChannel: false, FlangedKind.StandardTaper);

    /// <summary>A wide-flange beam, its flanges parallel.</summary>
    public static ShapeKind WideFlange { get; } = new FlangedKind("wide-flange", isChannel: false, 0);

    /// <summary>Every kind there is.</summary>
    public static IReadOnlyList<ShapeKind> All { get; } =
        [Plate, StandingPlate, Angle, Channel, ParallelChannel, IBeam, WideFlange, Eyebar, RoundBar, SquareBar, Pipe, Timber];

    /// <summary>The word for it.</summary>
    public string Name { get; }

    /// <summary>Dimensions that it takes to draw it.</summary>
    public IReadOnlyList<ShapeDimension> Needed { get; }

    /// <summary>Dimensions that it may have as well.</summary>
    public IReadOnlyList<ShapeDimension> Optional { get; }

    /// <summary>Dimensions that an inspector may find smaller, those of several faces together included.</summary>
    public IReadOnlyList<ShapeDimension> CanBeLost =>
        [.. Needed.Concat(Optional).Concat(Senses.Keys).Distinct().Where(d => FinerOf(d).All(f => SenseOf(f) != MeasureSense.Fixed))];

    /// <summary>Dimensions through which a hole may go: a thickness each.</summary>
    public virtual IReadOnlyList<ShapeDimension> Walls => [];

    /// <summary>Whether it has a face at left, right, top and bottom that can decay.</summary>
    internal virtual bool HasFourFaces => false;

    /// <summary>Whether the back of a pair is told: the heel of an angle, the web of a channel.</summary>
    internal virtual bool HasBack => false;

    /// <summary>The finest measures, each with its faces.</summary>
    internal abstract IReadOnlyDictionary<ShapeDimension, MeasureSense> Senses { get; }

    /// <summary>How the faces of a measure lie.</summary>
    internal MeasureSense SenseOf(ShapeDimension dimension) => Senses.GetValueOrDefault(dimension, MeasureSense.Fixed);

    /// <summary>The finer measures that a dimension stands for: itself, or those of both legs or flanges.</summary>
    internal virtual IReadOnlyList<ShapeDimension> FinerOf(ShapeDimension dimension) => [dimension];

    /// <summary>What is wrong with measures that are all there and above zero.</summary>
    internal abstract IEnumerable<ShapeFault> Faults(ShapeMeasures measures);

    /// <summary>The outline in the shape's own drawing; its origin is the heel of an angle, the middle of a channel's back, the centre of all others.</summary>
    internal abstract Outline OutlineOf(ShapeMeasures measures);

    /// <summary>A wall as a rectangle, and whether its thickness is from left to right.</summary>
    internal virtual (double Left, double Right, double Bottom, double Top, bool IsUpright) WallOf(ShapeMeasures measures, ShapeDimension wall) =>
        throw new ArgumentOutOfRangeException(nameof(wall), wall, $"A {Name} has no such wall.");

    /// <summary>Net area without holes, where the shape itself says it: of a thread, of an eyebar's head; null where it does not [m²].</summary>
    internal virtual double? OwnNetArea(ShapeMeasures measures) => null;

    /// <summary>Whether <see cref="OwnNetArea"/> is the only one: no path of holes replaces it.</summary>
    internal virtual bool NetAreaIsItsOwn => false;
}
