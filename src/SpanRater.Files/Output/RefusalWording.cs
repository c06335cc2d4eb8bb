using System.Globalization;

namespace SpanRater.Files;

/// <summary>Says why a question that was understood has no answer.</summary>
public static class RefusalWording
{
    /// <summary>One word for scripts.</summary>
    /// <param name="refusal">The refusal.</param>
    public static string Kind(Refusal refusal) => refusal switch
    {
        Refusal.Mechanism => "mechanism",
        Refusal.Redundant => "redundant",
        Refusal.NoAreas => "noAreas",
        Refusal.NoAreasForDeflection => "noAreasForDeflection",
        Refusal.DeflectionsDiffer => "deflectionsDiffer",
        Refusal.NoMovingMass => "noMovingMass",
        Refusal.NotReciprocal => "notReciprocal",
        Refusal.RodsThatOnlyPull => "rodsThatOnlyPull",
        Refusal.UncarriedCompression => "uncarriedCompression",
        Refusal.NoActingSet => "noActingSet",
        Refusal.SeveralSetsAct => "severalSetsAct",
        Refusal.RodsNotApart => "rodsNotApart",
        Refusal.NoDeadLoad => "noDeadLoad",
        Refusal.RelievingAxlesWithRods => "relievingAxlesWithRods",
        Refusal.PoorResidual => "poorResidual",
        Refusal.RoutesDiffer => "routesDiffer",
        Refusal.NoDeck => "noDeck",
        _ => throw new ArgumentOutOfRangeException(nameof(refusal), refusal, "Every kind of refusal has a word."),
    };

    /// <summary>What it is, which joints and members, and the mend.</summary>
    /// <param name="refusal">The refusal.</param>
    /// <param name="truss">The truss it speaks of.</param>
    /// <param name="units">The units to show; unset, those of the JSON.</param>
    public static string Sentence(Refusal refusal, Truss truss, DisplayUnits? units = null)
    {
        ArgumentNullException.ThrowIfNull(truss);
        return refusal switch
        {
            Refusal.Mechanism { Stability: var s } => MechanismWording.Of(s, truss, units ?? DisplayUnits.Si),
            Refusal.Redundant { Stability: var s } =>
                $"Redundant: {Count(s)} With {s.Redundancy} more than equilibrium can find, statics alone cannot divide the forces of {Names(s.StressedMembers.Select(m => truss.Members[m].Name))}.",
            Refusal.NoAreas { Stability: var s, Members: var members } =>
                $"Redundant: {Count(s)} Only the stiffness of its members divides the forces, and no area is given for {Names(members)}. Write the column area of members.csv; none is guessed, and no forces are given.",
            Refusal.NoAreasForDeflection { Members: var members } =>
                $"Deflections follow from areas, and none is given for {Names(members)}. Write the column area of members.csv; none is guessed.",
            Refusal.DeflectionsDiffer { Difference: var difference } => string.Create(
                CultureInfo.InvariantCulture,
                $"Deflections by virtual work and by stiffness differ by {difference:0.0e+0} of the largest, above {Deflections.RouteLimit:0e+0}: stiff and soft members are too far apart. Check areas and moduli; no result is given."),
            Refusal.NoMovingMass =>
                $"The dead load puts no weight on a joint that can move, so nothing swings. Give the dead load of one truss in {BridgeFolder.LoadsFile}.",
            Refusal.NotReciprocal { Difference: var difference } => string.Create(
                CultureInfo.InvariantCulture,
                $"Deflections that must be equal by reciprocity differ by {difference:0.0e+0} of the largest, above {ElasticTruss.ReciprocityLimit:0e+0}: stiff and soft members are too far apart. Check areas and moduli; no result is given."),
            Refusal.RodsThatOnlyPull { Members: var members } =>
                $"Members that only pull ({Names(members)}): which of them act depends on the load, so that what holds for every load cannot be said.",
            Refusal.UncarriedCompression u => Uncarried(u),
            Refusal.NoActingSet { SetsExamined: var n } =>
                $"None of the {n} set{(n == 1 ? "" : "s")} of acting rods that {(n == 1 ? "was" : "were")} examined carries the load without pressing a member that only pulls. Check which members are marked tension only; no result is given.",
            Refusal.SeveralSetsAct r =>
                $"Two sets of acting rods carry this load with different forces ({Set(r.First)}; {Set(r.Second)}), and nothing here decides between them. No result is given.",
            Refusal.RodsNotApart { Members: var members } =>
                $"Whether {Names(members)} go slack hangs on one another or on areas, so that the worst positions of a vehicle are not found exactly. Forces under a case are given; no vehicle is rolled and nothing is rated.",
            Refusal.NoDeadLoad =>
                $"Which rods act depends on dead and live load together, and {BridgeFolder.LoadsFile} has no case {Bridge.ComponentsCase}. Give the dead load; no result is given.",
            Refusal.RelievingAxlesWithRods { Vehicle: var vehicle } =>
                $"Relieving axles of {vehicle} are to be left out, which has no meaning where rods go slack: a rod acts or not under all axles together. No result is given.",
            Refusal.PoorResidual { Residual: var residual } => string.Create(
                CultureInfo.InvariantCulture,
                $"The solved forces leave {residual:0.0e+0} of the largest load unbalanced at a joint, above {ForceSolution.ResidualLimit:0e+0}: the geometry is too close to a mechanism. Check the coordinates; no result is given."),
            Refusal.RoutesDiffer { Member: null } =>
                "The forces could not be found a second time joint by joint, and no result is given on one route alone: the geometry is too close to a mechanism. Check the coordinates.",
            Refusal.RoutesDiffer { Member: var member, Difference: var difference } => string.Create(
                CultureInfo.InvariantCulture,
                $"The two routes to the forces differ in {member} by {difference:0.0e+0} of the largest member force, above {ForceSolution.RouteLimit:0e+0}: the geometry is too close to a mechanism, or stiff and soft members are too far apart. Check coordinates, areas and moduli; no result is given."),
            Refusal.NoDeck { PanelPoints: var n } =>
                $"There is no deck to load: {n} joint{(n == 1 ? " is" : "s are")} marked as panel point{(n == 1 ? "" : "s")}, and it takes two. Write deck = yes in joints.csv where the floor reaches the truss.",
            _ => throw new ArgumentOutOfRangeException(nameof(refusal), refusal, "Every kind of refusal has a sentence."),
        };
    }

    /// <summary>The count: members and reactions against equations, and the rank.</summary>
    /// <param name="stability">The count and the rank.</param>
    public static string Count(Stability stability)
    {
        ArgumentNullException.ThrowIfNull(stability);
        int unknowns = stability.MemberCount + stability.ReactionCount;
        string compared = unknowns < stability.EquationCount ? "fewer than" : unknowns > stability.EquationCount ? "more than" : "equal to";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"{stability.MemberCount} members + {stability.ReactionCount} reactions = {unknowns}, {compared} 2 × {stability.EquationCount / 2} joints = {stability.EquationCount}; rank {stability.Rank}.");
    }

    private static string Uncarried(Refusal.UncarriedCompression u)
    {
        string force = string.Create(CultureInfo.InvariantCulture, $"{u.Force / 1000:0.0#} kN ({u.Force / Unit.Find("kip")!.Size:0.0#} kip)");
        string under = u.Load.Station is not { } station
            ? $"under case {u.Load.Name}"
            : string.Create(
                CultureInfo.InvariantCulture,
                $"under dead load and {(u.Load.Scale == 1 ? "" : u.Load.Scale.ToString("0.#### times ", CultureInfo.InvariantCulture))}{u.Load.Name}, driving {Words.Of(u.Load.Direction!.Value)} with its front axle at {station:0.00} m ({station / 0.3048:0.00} ft)");
        return $"Uncarried compression in {u.Member}: it only pulls, and {under} it would have to carry {force}. No other member can; no result is given.";
    }

    private static string Set(IReadOnlyList<string> pulling) => pulling.Count == 0 ? "none pulls" : $"{Names(pulling)} pull{(pulling.Count == 1 ? "s" : "")}";

    private static string Names(IEnumerable<string> names) => string.Join(", ", names);
}
