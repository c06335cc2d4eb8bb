namespace SpanRater;

/// <summary>A connection of a truss, in the terms of who measured it; one stands for both trusses. Immutable.</summary>
/// <param name="Name">Name, unique among connections and parts of the floor.</param>
/// <param name="Index">Place in its table.</param>
/// <param name="Kind">The kind of part.</param>
/// <param name="Joint">Position of the joint.</param>
public abstract record Connection(string Name, int Index, PartKind Kind, int Joint)
{
    /// <summary>Its material; null where none is named.</summary>
    public Material? Material { get; init; }

    /// <summary>What was measured of it; null where nothing is told.</summary>
    public MeasuredSize? Size { get; init; }

    /// <summary>The connection with nothing lost; itself where nothing is.</summary>
    public Connection AsBuilt => Size is { IsLess: true } size ? Restored(size) with { Size = size with { Left = size.AsBuilt } } : this;

    /// <summary>Members whose forces it carries, by position.</summary>
    public abstract IReadOnlyList<int> Members { get; }

    /// <summary>The connection at the size as built.</summary>
    /// <param name="size">What was measured.</param>
    protected abstract Connection Restored(MeasuredSize size);
}

/// <summary>The one size of a connection that wear and rust take from: the diameter of a pin, the thickness of a head or plate.</summary>
/// <param name="AsBuilt">Size as built [m].</param>
/// <param name="Left">Size that is left [m].</param>
/// <param name="Source">Who measured it, or where it is from; empty where nothing is told.</param>
public sealed record MeasuredSize(double AsBuilt, double Left, string Source)
{
    /// <summary>Whether something is lost.</summary>
    public bool IsLess => Left < AsBuilt;
}

/// <summary>What a bar on a pin brings to it.</summary>
public abstract record PinLoad
{
    private PinLoad()
    {
    }

    /// <summary>The force of a member, along it.</summary>
    /// <param name="Member">Position of the member.</param>
    public sealed record OfMember(int Member) : PinLoad;

    /// <summary>What the floor brings to the joint, downward.</summary>
    public sealed record OfFloor() : PinLoad;

    /// <summary>What a bearing holds.</summary>
    public sealed record OfBearing() : PinLoad;
}

/// <summary>One bar, plate or hanger on a pin.</summary>
/// <param name="Load">What it brings.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Thickness">Thickness along the pin [m].</param>
/// <param name="Gap">Clear distance from the bar before it along the pin, not negative [m].</param>
public sealed record PackedBar(PinLoad Load, string Name, double Thickness, double Gap);

/// <summary>A pin with what is packed on it.</summary>
/// <param name="Name">Name.</param>
/// <param name="Index">Place in its table.</param>
/// <param name="Joint">Position of the joint.</param>
/// <param name="Diameter">Diameter that is left [m].</param>
/// <param name="Packing">The bars along the pin, from one end to the other.</param>
public sealed record PinConnection(string Name, int Index, int Joint, double Diameter, IReadOnlyList<PackedBar> Packing) : Connection(Name, Index, PartKind.Pin, Joint)
{
    /// <inheritdoc/>
    public override IReadOnlyList<int> Members { get; } = [.. Packing.Select(b => b.Load).OfType<PinLoad.OfMember>().Select(m => m.Member).Distinct()];

    /// <summary>Middle of each bar along the pin, from the outer face of the first [m].</summary>
    public IReadOnlyList<double> Middles { get; } = MiddlesOf(Packing);

    /// <inheritdoc/>
    protected override Connection Restored(MeasuredSize size) => this with { Diameter = size.AsBuilt };

    /// <summary>Part of its load that a bar takes: by thickness among the bars of the same load [-].</summary>
    /// <param name="bar">Position of the bar.</param>
    public double PartOf(int bar) => Packing[bar].Thickness / Packing.Where(b => b.Load == Packing[bar].Load).Sum(b => b.Thickness);

    private static double[] MiddlesOf(IReadOnlyList<PackedBar> packing)
    {
        var middles = new double[packing.Count];
        double face = 0;
        for (int i = 0; i < packing.Count; i++)
        {
            face += i == 0 ? 0 : packing[i].Gap;
            middles[i] = face + (packing[i].Thickness / 2);
            face += packing[i].Thickness;
        }

        return middles;
    }
}

/// <summary>What a connection of one member is.</summary>
public abstract record MemberConnection(string Name, int Index, PartKind Kind, int Joint, int Member) : Connection(Name, Index, Kind, Joint)
{
    /// <inheritdoc/>
    public override IReadOnlyList<int> Members => [Member];
}

/// <summary>The heads of a member's eyebars through the pin hole.</summary>
/// <param name="Name">Name.</param>
/// <param name="Index">Place in its table.</param>
/// <param name="Joint">Position of the joint.</param>
/// <param name="Member">Position of the member.</param>
/// <param name="NetArea">Net area of all heads across the pin hole [m²].</param>
public sealed record HeadConnection(string Name, int Index, int Joint, int Member, double NetArea) : MemberConnection(Name, Index, PartKind.EyebarHead, Joint, Member)
{
    /// <inheritdoc/>
    protected override Connection Restored(MeasuredSize size) => this with { NetArea = NetArea * size.AsBuilt / size.Left };
}

/// <summary>Plates of a member's end that bear on a pin.</summary>
/// <param name="Name">Name.</param>
/// <param name="Index">Place in its table.</param>
/// <param name="Joint">Position of the joint.</param>
/// <param name="Member">Position of the member.</param>
/// <param name="Thickness">Thickness of all plates on the pin together [m].</param>
/// <param name="PinDiameter">Diameter of the pin [m].</param>
public sealed record PinPlateConnection(string Name, int Index, int Joint, int Member, double Thickness, double PinDiameter) : MemberConnection(Name, Index, PartKind.PinPlate, Joint, Member)
{
    /// <inheritdoc/>
    protected override Connection Restored(MeasuredSize size) => this with { Thickness = Thickness * size.AsBuilt / size.Left };
}

/// <summary>What fasteners are.</summary>
public enum FastenerGrade
{
    /// <summary>Rivets of which only the year is known: before 1936.</summary>
    RivetBefore1936,

    /// <summary>Rivets of which only the year is known: 1936 and later.</summary>
    RivetFrom1936,

    /// <summary>Rivets of ASTM A502 Grade 1.</summary>
    RivetGrade1,

    /// <summary>Rivets of ASTM A502 Grade 2.</summary>
    RivetGrade2,

    /// <summary>High-strength bolts A325, threads out of the shear planes.</summary>
    BoltThreadsOut,

    /// <summary>High-strength bolts A325, threads in the shear planes.</summary>
    BoltThreadsIn,
}

/// <summary>Rivets or bolts at a member's end.</summary>
/// <param name="Name">Name.</param>
/// <param name="Index">Place in its table.</param>
/// <param name="Kind">Rivets or bolts.</param>
/// <param name="Joint">Position of the joint.</param>
/// <param name="Member">Position of the member.</param>
/// <param name="Grade">What they are.</param>
/// <param name="Count">How many carry the member's force.</param>
/// <param name="Diameter">Diameter [m].</param>
/// <param name="Planes">Shear planes of each.</param>
/// <param name="Thickness">Lesser thickness of what they bear on, in one sense of the force [m].</param>
public sealed record FastenerConnection(string Name, int Index, PartKind Kind, int Joint, int Member, FastenerGrade Grade, int Count, double Diameter, int Planes, double Thickness)
    : MemberConnection(Name, Index, Kind, Joint, Member)
{
    /// <inheritdoc/>
    protected override Connection Restored(MeasuredSize size) => this with { Thickness = size.AsBuilt };
}

/// <summary>Gusset plates where one member is fastened to them.</summary>
/// <param name="Name">Name.</param>
/// <param name="Index">Place in its table.</param>
/// <param name="Joint">Position of the joint.</param>
/// <param name="Member">Position of the member.</param>
/// <param name="Plates">How many plates.</param>
/// <param name="Thickness">Thickness that is left of each [m].</param>
/// <param name="Lines">Lines of fasteners side by side.</param>
/// <param name="PerLine">Fasteners in each line.</param>
/// <param name="Gauge">Distance of the lines [m].</param>
/// <param name="Pitch">Distance of fasteners along a line [m].</param>
/// <param name="Edge">From the last fastener to the edge along the member [m].</param>
/// <param name="Hole">Diameter of the holes [m].</param>
/// <param name="MiddleLength">Length from the middle of the Whitmore width to the nearest fastened edge, along the member [m]; null where it is not given.</param>
public sealed record GussetConnection(
    string Name, int Index, int Joint, int Member, int Plates, double Thickness, int Lines, int PerLine, double Gauge, double Pitch, double Edge, double Hole, double? MiddleLength)
    : MemberConnection(Name, Index, PartKind.Gusset, Joint, Member)
{
    /// <summary>Whitmore width: the outer lines spread by 30° over the length of the connection [m].</summary>
    public double WhitmoreWidth => ((Lines - 1) * Gauge) + (2 * (PerLine - 1) * Pitch * Math.Tan(Math.PI / 6));

    /// <inheritdoc/>
    protected override Connection Restored(MeasuredSize size) => this with { Thickness = size.AsBuilt };
}

/// <summary>Gusset plates in shear along a plane beside the chord: it carries what the web members bring along it.</summary>
/// <param name="Name">Name.</param>
/// <param name="Index">Place in its table.</param>
/// <param name="Joint">Position of the joint.</param>
/// <param name="Webs">Web members, by position.</param>
/// <param name="Plates">How many plates.</param>
/// <param name="Thickness">Thickness that is left of each [m].</param>
/// <param name="Length">Length of the plane [m].</param>
/// <param name="Holes">Sum of the holes along it [m].</param>
public sealed record GussetShear(string Name, int Index, int Joint, IReadOnlyList<int> Webs, int Plates, double Thickness, double Length, double Holes)
    : Connection(Name, Index, PartKind.Gusset, Joint)
{
    /// <inheritdoc/>
    public override IReadOnlyList<int> Members => Webs;

    /// <inheritdoc/>
    protected override Connection Restored(MeasuredSize size) => this with { Thickness = size.AsBuilt };
}
