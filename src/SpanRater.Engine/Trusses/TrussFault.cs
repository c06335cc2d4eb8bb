namespace SpanRater;

/// <summary>Whether a fault forbids the truss or only asks for a second look.</summary>
public enum FaultSeverity
{
    /// <summary>The truss cannot be used.</summary>
    Error,

    /// <summary>The truss can be used; the user should look again.</summary>
    Warning,
}

/// <summary>
/// Something wrong, or worth a look, in the geometry of a truss. Joints and members are named by their
/// positions in the lists handed to <see cref="Truss.Create"/>, so that a reader of files can say where they stand.
/// </summary>
/// <param name="Severity">Whether the fault forbids the truss.</param>
public abstract record TrussFault(FaultSeverity Severity)
{
    /// <summary>There is no joint at all.</summary>
    public sealed record NoJoints() : TrussFault(FaultSeverity.Error);

    /// <summary>There is no member at all.</summary>
    public sealed record NoMembers() : TrussFault(FaultSeverity.Error);

    /// <summary>No joint is supported.</summary>
    public sealed record NoSupport() : TrussFault(FaultSeverity.Error);

    /// <summary>A joint's name was given before.</summary>
    /// <param name="Joint">The later joint.</param>
    /// <param name="First">The joint that has the name already.</param>
    public sealed record DuplicateJoint(int Joint, int First) : TrussFault(FaultSeverity.Error);

    /// <summary>Two joints stand at the same point.</summary>
    /// <param name="Joint">The later joint.</param>
    /// <param name="First">The earlier joint.</param>
    public sealed record CoincidentJoints(int Joint, int First) : TrussFault(FaultSeverity.Error);

    /// <summary>No member ends at the joint: nothing holds it.</summary>
    /// <param name="Joint">The joint.</param>
    public sealed record LooseJoint(int Joint) : TrussFault(FaultSeverity.Error);

    /// <summary>A member's name was given before.</summary>
    /// <param name="Member">The later member.</param>
    /// <param name="First">The member that has the name already.</param>
    public sealed record DuplicateMember(int Member, int First) : TrussFault(FaultSeverity.Error);

    /// <summary>A member names a joint that is not there.</summary>
    /// <param name="Member">The member.</param>
    /// <param name="AtFrom">True when it is the joint of <see cref="SpanRater.Member.From"/>.</param>
    /// <param name="Name">The name that no joint has.</param>
    public sealed record UnknownJoint(int Member, bool AtFrom, string Name) : TrussFault(FaultSeverity.Error);

    /// <summary>A member starts and ends at the same joint.</summary>
    /// <param name="Member">The member.</param>
    public sealed record NoLength(int Member) : TrussFault(FaultSeverity.Error);

    /// <summary>Two members join the same two joints.</summary>
    /// <param name="Member">The later member.</param>
    /// <param name="First">The earlier member.</param>
    public sealed record JoinedTwice(int Member, int First) : TrussFault(FaultSeverity.Error);

    /// <summary>Two members cross where there is no joint, and are not both rods that only pull and pass each other.</summary>
    /// <param name="Member">The later member.</param>
    /// <param name="First">The earlier member.</param>
    public sealed record CrossingMembers(int Member, int First) : TrussFault(FaultSeverity.Warning);

    /// <summary>A member runs past a joint without ending there.</summary>
    /// <param name="Member">The member.</param>
    /// <param name="Joint">The joint between its ends.</param>
    public sealed record PassesJoint(int Member, int Joint) : TrussFault(FaultSeverity.Warning);

    /// <summary>A panel point lies on a member between its ends: the deck's load would bend the member.</summary>
    /// <param name="Member">The member.</param>
    /// <param name="Joint">The panel point between its ends.</param>
    public sealed record LoadBetweenJoints(int Member, int Joint) : TrussFault(FaultSeverity.Error);

    /// <summary>Two panel points stand above one another, so the deck's load has no single way down.</summary>
    /// <param name="Joint">The later panel point.</param>
    /// <param name="First">The earlier panel point.</param>
    public sealed record PanelPointsAbove(int Joint, int First) : TrussFault(FaultSeverity.Error);

    /// <summary>A panel point is listed after one that lies further right; panel points are taken in order of x.</summary>
    /// <param name="Joint">The panel point.</param>
    /// <param name="Previous">The panel point listed before it.</param>
    public sealed record PanelPointsOutOfOrder(int Joint, int Previous) : TrussFault(FaultSeverity.Warning);

    /// <summary>A joint on the straight deck line between two panel points is not a panel point itself.</summary>
    /// <param name="Joint">The joint.</param>
    /// <param name="Left">The panel point to its left.</param>
    /// <param name="Right">The panel point to its right.</param>
    public sealed record DeckJointSkipped(int Joint, int Left, int Right) : TrussFault(FaultSeverity.Warning);

    /// <summary>The deck ends short of a support.</summary>
    /// <param name="Joint">The supported joint beyond the deck.</param>
    /// <param name="Nearest">The last panel point before it.</param>
    public sealed record DeckEndsShort(int Joint, int Nearest) : TrussFault(FaultSeverity.Warning);
}
