namespace SpanRater;

/// <summary>One panel point's load, worked with a section: the part without the load is held by its reactions and by the members cut.</summary>
/// <param name="PanelPoint">The panel point, by position in <see cref="Truss.PanelPoints"/>.</param>
/// <param name="LoadIsLeft">True where the load stands on the left part, so that the right part is looked at.</param>
/// <param name="Reactions">Reactions on the part without the load [-], those that are not zero.</param>
/// <param name="Effect">Their moment about the section's centre, anticlockwise positive [m], or where there is none their sum along its normal [-].</param>
/// <param name="Lever">What a unit tension in the member adds to that on the same part [m, or -].</param>
/// <param name="Force">Force in the member that balances it, −effect/lever [-].</param>
public sealed record SectionStep(int PanelPoint, bool LoadIsLeft, IReadOnlyList<Reaction> Reactions, double Effect, double Lever, double Force);

/// <summary>
/// A section that parts a truss in two and cuts a member so that one equation of equilibrium gives its force: the others
/// cut meet in one point, or are parallel.
/// Source: the method of sections, W. Ritter's moments, any text on statics.
/// </summary>
/// <param name="Cut">Every member cut, by position.</param>
/// <param name="LeftJoints">Joints of the left part, by position.</param>
/// <param name="PanelLeft">Last panel point of the left part, by position in <see cref="Truss.PanelPoints"/>; -1 where it has none.</param>
/// <param name="Centre">Point in which the others meet [m]; null where they are parallel.</param>
/// <param name="Normal">Unit vector across the others where they are parallel, up, or to the right where it is level.</param>
/// <param name="Twin">A member that is cut too and whose force is a fixed part of this one's, by the balance of a joint; null for none.</param>
/// <param name="Steps">The load at each panel point, in their order.</param>
public sealed record LineSection(
    IReadOnlyList<int> Cut,
    IReadOnlyList<int> LeftJoints,
    int PanelLeft,
    (double X, double Y)? Centre,
    (double X, double Y) Normal,
    JointTie? Twin,
    IReadOnlyList<SectionStep> Steps)
{
    /// <summary>True where the equation is the vertical one: the shear of the panel.</summary>
    public bool IsShear => Centre is null && Normal.X == 0;
}

/// <summary>What the balance of one joint says of a member: across the line of all others but one there is only the other and the joint's own load.</summary>
/// <param name="Joint">The joint, by position.</param>
/// <param name="Other">The other member that leaves that line; null where there is none.</param>
/// <param name="Ratio">Force in the member for a unit force in the other [-]; 0 where there is none.</param>
/// <param name="OwnLoad">Force in the member for a unit load on the joint itself, the other aside [-]; 0 where the joint is no panel point.</param>
public sealed record JointTie(int Joint, int? Other, double Ratio, double OwnLoad);
