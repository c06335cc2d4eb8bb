namespace SpanRater;

/// <summary>How the ends of a member are fastened.</summary>
public enum EndFastening
{
    /// <summary>On pins.</summary>
    Pinned,

    /// <summary>Riveted.</summary>
    Riveted,

    /// <summary>Bolted.</summary>
    Bolted,

    /// <summary>Welded.</summary>
    Welded,
}

/// <summary>What a member of one truss is made of and how it is held: all that its strength follows from. Immutable.</summary>
public sealed record MemberMake
{
    /// <summary>Its section, with what was seen on it.</summary>
    public required FoundSection Section { get; init; }

    /// <summary>Its material; null where none is named.</summary>
    public Material? Material { get; init; }

    /// <summary>How its ends are fastened; null where that is not said.</summary>
    public EndFastening? Ends { get; init; }

    /// <summary>Unbraced length for buckling in the plane of the truss [m].</summary>
    public required double InPlaneLength { get; init; }

    /// <summary>Unbraced length for buckling out of the plane of the truss [m]; null where it is not known.</summary>
    public double? OutOfPlaneLength { get; init; }

    /// <summary>Names of the joints at its ends that nothing is known to hold sideways.</summary>
    public IReadOnlyList<string> LooseJoints { get; init; } = [];

    /// <summary>Effective length factor in the plane of the truss, where given [-].</summary>
    public double? InPlaneFactor { get; init; }

    /// <summary>Effective length factor out of the plane of the truss, where given [-].</summary>
    public double? OutOfPlaneFactor { get; init; }

    /// <summary>Part U of the net section that works in tension; null where it is not given [-].</summary>
    public double? ShearLag { get; init; }

    /// <summary>How the parts of the section are held together along the member; null where that is not said.</summary>
    public Binding? Binding { get; init; }

    /// <summary>The elastic frames that hold it out of the plane of a pony truss, as a chord; null for any other member.</summary>
    public PonyHold? Pony { get; init; }

    /// <summary>Moment of its own weight in the middle of its length, unfactored [N·m]; counted on timbers.</summary>
    public double OwnMoment { get; init; }

    /// <summary>The same member without any loss, bow or slack.</summary>
    public MemberMake AsBuilt => this with
    {
        Section = FoundSection.Sound(Section.AsBuilt),
        Binding = Binding is Binding.Laced laced ? laced with { MissingInRow = 0 } : Binding,
    };
}

/// <summary>How the top chord of a pony truss is held.</summary>
/// <param name="Frame">A floorbeam with its posts.</param>
/// <param name="PanelLength">Distance of the frames [m].</param>
/// <param name="GivenFactor">K read in the guide, at least 1, where the frames are too stiff for Engesser's formula; null where none is given [-].</param>
public sealed record PonyHold(PonyFrame Frame, double PanelLength, double? GivenFactor);

/// <summary>How the parts of a built-up member are held together along it.</summary>
public abstract record Binding
{
    private Binding()
    {
    }

    /// <summary>By lacing bars.</summary>
    /// <param name="Lacing">The lacing.</param>
    /// <param name="MissingInRow">Bars, or crossed pairs, missing or loose next to each other.</param>
    public sealed record Laced(Lacing Lacing, int MissingInRow) : Binding;

    /// <summary>By batten plates.</summary>
    /// <param name="Pitch">Distance of the battens along the member [m].</param>
    /// <param name="Separation">Distance between the centroids of the legs [m].</param>
    /// <param name="BattenInertia">Moment of inertia of the battens at one place, all planes together [m⁴].</param>
    public sealed record Battened(double Pitch, double Separation, double BattenInertia) : Binding;

    /// <summary>By rivets, bolts or welds at intervals, the parts touching or with fillers between.</summary>
    /// <param name="Pitch">Distance of the connectors [m].</param>
    /// <param name="Connection">What they are.</param>
    public sealed record Stitched(double Pitch, BuiltUpConnection Connection) : Binding;

    /// <summary>All along, so that the parts are one piece: by plates and angles without a break.</summary>
    public sealed record Solid() : Binding;
}
