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
        Refusal.RodsThatOnlyPull => "rodsThatOnlyPull",
        Refusal.PoorResidual => "poorResidual",
        Refusal.RoutesDiffer => "routesDiffer",
        Refusal.NoDeck => "noDeck",
        _ => throw new ArgumentOutOfRangeException(nameof(refusal), refusal, "Every kind of refusal has a word."),
    };

    /// <summary>What it is, which joints and members, and the mend.</summary>
    /// <param name="refusal">The refusal.</param>
    /// <param name="truss">The truss it speaks of.</param>
    public static string Sentence(Refusal refusal, Truss truss)
    {
        ArgumentNullException.ThrowIfNull(truss);
        return refusal switch
        {
            Refusal.Mechanism { Stability: var s } => Mechanism(s, truss),
            Refusal.Redundant { Stability: var s } =>
                $"Redundant: {Count(s)} With {s.Redundancy} more than equilibrium can find, statics alone cannot divide the forces of {Names(s.StressedMembers.Select(m => truss.Members[m].Name))}. This version does not divide them by stiffness; no forces are given.",
            Refusal.RodsThatOnlyPull { Members: var members } =>
                $"Members that only pull ({Names(members)}): which of them act depends on the load, and this version does not find the acting set. No forces are given, since a rod must never be counted as a strut.",
            Refusal.PoorResidual { Residual: var residual } => string.Create(
                CultureInfo.InvariantCulture,
                $"The solved forces leave {residual:0.0e+0} of the largest load unbalanced at a joint, above {ForceSolution.ResidualLimit:0e+0}: the geometry is too close to a mechanism. Check the coordinates; no result is given."),
            Refusal.RoutesDiffer { Member: null } =>
                "The forces could not be found a second time joint by joint, and no result is given on one route alone: the geometry is too close to a mechanism. Check the coordinates.",
            Refusal.RoutesDiffer { Member: var member, Difference: var difference } => string.Create(
                CultureInfo.InvariantCulture,
                $"The whole-truss solution and the joint-by-joint solution differ in {member} by {difference:0.0e+0} of the largest member force, above {ForceSolution.RouteLimit:0e+0}: the geometry is too close to a mechanism. Check the coordinates; no result is given."),
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

    private static string Mechanism(Stability s, Truss truss)
    {
        string moving = Names(s.MovingJoints.Select(j => truss.Joints[j].Name));
        string spare = s.StressedMembers.Count == 0
            ? ""
            : $" Elsewhere there is a member too many, among {Names(s.StressedMembers.Select(m => truss.Members[m].Name))}: the count is deceived, the rank is not.";
        string held = s.ReactionCount < 3 ? " Fewer than three reactions cannot hold a truss." : "";
        return $"Mechanism: {Count(s)} Joint{(s.MovingJoints.Count == 1 ? "" : "s")} {moving} can move without any member changing its length.{spare}{held} Add the missing diagonal or support there; no forces are given.";
    }

    private static string Names(IEnumerable<string> names) => string.Join(", ", names);
}
