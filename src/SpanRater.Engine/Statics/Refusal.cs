namespace SpanRater;

/// <summary>Why a question that was read and understood has no answer. A typed result, never an exception.</summary>
public abstract record Refusal
{
    private Refusal()
    {
    }

    /// <summary>Parts of the truss can move without any member changing its length.</summary>
    /// <param name="Stability">The count and the rank, and what moves.</param>
    public sealed record Mechanism(Stability Stability) : Refusal;

    /// <summary>There are more members and reactions than equilibrium can tell apart.</summary>
    /// <param name="Stability">The count and the rank, and the members whose forces statics cannot divide.</param>
    public sealed record Redundant(Stability Stability) : Refusal;

    /// <summary>A redundant truss whose forces only the stiffness of its members divides, and an area is missing.</summary>
    /// <param name="Stability">The count and the rank.</param>
    /// <param name="Members">Names of the members without an area that need one.</param>
    public sealed record NoAreas(Stability Stability, IReadOnlyList<string> Members) : Refusal;

    /// <summary>Deflections are asked for, and an area is missing.</summary>
    /// <param name="Members">Names of the members without an area.</param>
    public sealed record NoAreasForDeflection(IReadOnlyList<string> Members) : Refusal;

    /// <summary>Deflections by virtual work and by stiffness differ.</summary>
    /// <param name="Difference">Largest difference over the largest deflection [-].</param>
    public sealed record DeflectionsDiffer(double Difference) : Refusal;

    /// <summary>The dead load puts no mass on a joint that can move.</summary>
    public sealed record NoMovingMass() : Refusal;

    /// <summary>Deflections of a redundant truss that ought to be equal by reciprocity differ.</summary>
    /// <param name="Difference">Largest difference over the largest deflection [-].</param>
    public sealed record NotReciprocal(double Difference) : Refusal;

    /// <summary>Members are marked as pulling only, so that which of them act depends on the load, where every member was asked to act.</summary>
    /// <param name="Members">Names of the members so marked.</param>
    public sealed record RodsThatOnlyPull(IReadOnlyList<string> Members) : Refusal;

    /// <summary>A member that only pulls would be compressed, and nothing else can carry the load.</summary>
    /// <param name="Member">Name of the member.</param>
    /// <param name="Force">The force that it cannot carry, negative [N].</param>
    /// <param name="Load">The load under which it happens: a case, or a vehicle and where it stands.</param>
    public sealed record UncarriedCompression(string Member, double Force, UncarriedUnder Load) : Refusal;

    /// <summary>No set of acting rods that was examined makes the truss stand without compressing one.</summary>
    /// <param name="SetsExamined">Number of sets examined.</param>
    public sealed record NoActingSet(int SetsExamined) : Refusal;

    /// <summary>Two sets of acting rods carry the load with different forces, and nothing decides between them.</summary>
    /// <param name="First">Names of the rods that pull in the one.</param>
    /// <param name="Second">Names of the rods that pull in the other.</param>
    public sealed record SeveralSetsAct(IReadOnlyList<string> First, IReadOnlyList<string> Second) : Refusal;

    /// <summary>Whether a rod goes slack hangs on other rods or on areas, so that a vehicle cannot be rolled exactly.</summary>
    /// <param name="Members">Names of the rods.</param>
    public sealed record RodsNotApart(IReadOnlyList<string> Members) : Refusal;

    /// <summary>A vehicle is rolled over a truss with rods together with the dead load, and there is none.</summary>
    public sealed record NoDeadLoad() : Refusal;

    /// <summary>Relieving axles of the vehicle are to be left out, which has no meaning where rods go slack.</summary>
    /// <param name="Vehicle">Name of the vehicle.</param>
    public sealed record RelievingAxlesWithRods(string Vehicle) : Refusal;

    /// <summary>The solved forces do not balance the joints.</summary>
    /// <param name="Residual">Largest joint imbalance over largest load [-].</param>
    public sealed record PoorResidual(double Residual) : Refusal;

    /// <summary>The whole-truss solution and the joint-by-joint solution differ.</summary>
    /// <param name="Member">Name of the member in which they differ most; null where no order of joints was found.</param>
    /// <param name="Difference">Largest difference over the largest member force [-].</param>
    public sealed record RoutesDiffer(string? Member, double Difference) : Refusal;

    /// <summary>Fewer than two panel points: there is no deck to load.</summary>
    /// <param name="PanelPoints">Number of panel points.</param>
    public sealed record NoDeck(int PanelPoints) : Refusal;
}

/// <summary>The load under which a member that only pulls would be compressed.</summary>
/// <param name="Name">Name of the case, or of the vehicle.</param>
/// <param name="Station">x of the vehicle's front axle [m]; null for a case.</param>
/// <param name="Direction">The way the vehicle drives; null for a case.</param>
/// <param name="Scale">Part of the vehicle that is on the truss [-].</param>
public sealed record UncarriedUnder(string Name, double? Station = null, Direction? Direction = null, double Scale = 1);
