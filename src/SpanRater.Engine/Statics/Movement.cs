namespace SpanRater;

/// <summary>What kind of movement it is.</summary>
public enum MovementKind
{
    /// <summary>The whole truss slides or turns on its supports.</summary>
    WholeTruss,

    /// <summary>One joint alone moves.</summary>
    LooseJoint,

    /// <summary>Panels change their shape.</summary>
    Panels,

    /// <summary>Pieces turn against one another, and no closed panel between them shows it.</summary>
    Pieces,
}

/// <summary>How a joint moves.</summary>
/// <param name="Right">To the right; without size, see <see cref="Movement"/>.</param>
/// <param name="Up">Upward.</param>
public readonly record struct JointShift(double Right, double Up)
{
    /// <summary>How far.</summary>
    public double Size => double.Hypot(Right, Up);
}

/// <summary>A bar that is not there, by the positions of its joints.</summary>
/// <param name="From">One joint.</param>
/// <param name="To">The other.</param>
public readonly record struct MissingBar(int From, int To);

/// <summary>
/// One way in which a truss moves without any member changing its length. A small movement has directions and proportions
/// and no size: the largest shift is 1.
/// </summary>
/// <param name="Kind">What kind.</param>
/// <param name="Shifts">How each joint moves, in the order of <see cref="Truss.Joints"/>.</param>
/// <param name="Joints">Joints that move.</param>
/// <param name="Members">Members that turn.</param>
/// <param name="Panels">Panels whose corners move to one another.</param>
/// <param name="Hinges">Joints at which members turn against one another.</param>
/// <param name="Mends">Bars of which any one would stop it: the diagonals of a panel of four corners, else the shortest; empty where none would.</param>
public sealed record Movement(
    MovementKind Kind,
    IReadOnlyList<JointShift> Shifts,
    IReadOnlyList<int> Joints,
    IReadOnlyList<int> Members,
    IReadOnlyList<TrussPanel> Panels,
    IReadOnlyList<int> Hinges,
    IReadOnlyList<MissingBar> Mends);
