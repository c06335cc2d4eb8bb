namespace SpanRater;

/// <summary>The floor of a bridge: what stands between the wheels and the trusses, as far as it is given. Immutable.</summary>
/// <param name="Parts">The parts, in the order of their table.</param>
public sealed record Floor(IReadOnlyList<FloorPart> Parts)
{
    /// <summary>The kinds of parts that a floor usually has, in the order in which a wheel's load passes through them.</summary>
    public static IReadOnlyList<PartKind> Kinds { get; } = [PartKind.Deck, PartKind.Stringer, PartKind.Floorbeam, PartKind.Hanger];

    /// <summary>Kinds that this bridge is said not to have.</summary>
    public IReadOnlyList<PartKind> Without { get; init; } = [];

    /// <summary>Kinds of parts that are neither given nor said not to be there.</summary>
    public IEnumerable<PartKind> NotGiven => Kinds.Where(k => !Without.Contains(k) && !Parts.Any(p => p.Kind == k));

    /// <summary>Weight per area of deck, and of all that lies on it but a wearing surface [Pa]; null where it is not known.</summary>
    public double? Components { get; init; }

    /// <summary>Weight per area of the wearing surface [Pa]; null where it is not known.</summary>
    public double? WearingSurface { get; init; }

    /// <summary>Weight per length of kerb and railing on each side [N/m]; null where none is given, which counts as none.</summary>
    public double? Edge { get; init; }

    /// <summary>Where weights per area are from, and what is assumed; in the words of the reader.</summary>
    public string WeightSource { get; init; } = "";

    /// <summary>The stringers.</summary>
    public IEnumerable<StringerPart> Stringers => Parts.OfType<StringerPart>();
}

/// <summary>A part of the floor; one stands for all alike, at their worst.</summary>
/// <param name="Name">Name, unique in the floor.</param>
/// <param name="Index">Place in the table.</param>
/// <param name="Kind">The kind of part.</param>
public abstract record FloorPart(string Name, int Index, PartKind Kind)
{
    /// <summary>What it lacks beside what its make lacks; empty where nothing is missing.</summary>
    public IReadOnlyList<MissingDatum> Lacking { get; init; } = [];

    /// <summary>The same part without any loss.</summary>
    public abstract FloorPart AsBuilt { get; }
}

/// <summary>Planks, or a laminated or cast deck.</summary>
/// <param name="Name">Name.</param>
/// <param name="Index">Place in the table.</param>
/// <param name="Type">What the deck is.</param>
public sealed record DeckPart(string Name, int Index, DeckType Type) : FloorPart(Name, Index, PartKind.Deck)
{
    /// <inheritdoc/>
    public override FloorPart AsBuilt => this with { Make = Make?.AsBuilt };

    /// <summary>Whether there is a rule for wheels on it: on planks and laminated timber; on no concrete or steel.</summary>
    public bool HasRule => Type is DeckType.Plank or DeckType.NailLaminated or DeckType.GluedLaminated;

    /// <summary>What one plank is made of; null where that is not given.</summary>
    public BeamMake? Make { get; init; }

    /// <summary>Distance of what carries it, centre to centre [m]; null for that of the stringers.</summary>
    public double? Span { get; init; }

    /// <summary>Whether it runs over more than two spans without a joint.</summary>
    public bool IsContinuous { get; init; }
}

/// <summary>Beams along the span, from floorbeam to floorbeam.</summary>
/// <param name="Name">Name.</param>
/// <param name="Index">Place in the table.</param>
/// <param name="Spacing">Distance from one to the next across the deck [m].</param>
/// <param name="Span">Span [m].</param>
public sealed record StringerPart(string Name, int Index, double Spacing, double Span) : FloorPart(Name, Index, PartKind.Stringer)
{
    /// <inheritdoc/>
    public override FloorPart AsBuilt => this with { Make = Make?.AsBuilt };

    /// <summary>What one is made of; null where that is not given.</summary>
    public BeamMake? Make { get; init; }

    /// <summary>How many there are across the deck; null where it is not given.</summary>
    public int? Count { get; init; }

    /// <summary>How many lie across a roadway: as given, else as many as its width holds at their spacing.</summary>
    /// <param name="roadway">Between the kerbs [m].</param>
    public double CountAcross(double roadway) => Count ?? Math.Floor(roadway / Math.Max(Spacing, 0.1)) + 1;

    /// <summary>Weight per length of one [N/m].</summary>
    public double OwnWeight { get; init; }

    /// <summary>Width of its top, on which the deck lies [m]; 0 where it is not known.</summary>
    public double TopWidth { get; init; }
}

/// <summary>Beams across, from truss to truss.</summary>
/// <param name="Name">Name.</param>
/// <param name="Index">Place in the table.</param>
/// <param name="At">Positions of the panel points where they are, in the order of the truss's panel points.</param>
public sealed record FloorbeamPart(string Name, int Index, IReadOnlyList<int> At) : FloorPart(Name, Index, PartKind.Floorbeam)
{
    /// <inheritdoc/>
    public override FloorPart AsBuilt => this with { Make = Make?.AsBuilt, Trussed = Trussed is null ? null : Trussed with { Rod = Trussed.Rod?.AsBuilt } };

    /// <summary>The rod and posts that stiffen it from below; null of a plain beam.</summary>
    public Trussing? Trussed { get; init; }

    /// <summary>What one is made of; null where that is not given.</summary>
    public BeamMake? Make { get; init; }

    /// <summary>Weight per length of one [N/m].</summary>
    public double OwnWeight { get; init; }
}

/// <summary>What hangs the ends of floorbeams from the trusses.</summary>
/// <param name="Name">Name.</param>
/// <param name="Index">Place in the table.</param>
/// <param name="At">Positions of the panel points where they are.</param>
public sealed record HangerPart(string Name, int Index, IReadOnlyList<int> At) : FloorPart(Name, Index, PartKind.Hanger)
{
    /// <inheritdoc/>
    public override FloorPart AsBuilt => this with { Make = Make?.AsBuilt };

    /// <summary>What one is made of; null where that is not given.</summary>
    public MemberMake? Make { get; init; }

    /// <summary>Hangers at each end of a floorbeam, which share its reaction evenly.</summary>
    public int Count { get; init; } = 1;
}
