namespace SpanRater;

/// <summary>What a step of the joint-by-joint route works at.</summary>
public enum StepKind
{
    /// <summary>The whole truss, for its reactions.</summary>
    WholeTruss,

    /// <summary>One joint with at most two unknown forces; or with more of them, all but one in one line, of which it finds that one.</summary>
    Joint,

    /// <summary>A part of the truss, cut off through at most three unknown forces, since no joint is left with two.</summary>
    Section,

    /// <summary>Several joints solved together, since no joint is left with two unknown forces and no section helps.</summary>
    Group,
}

/// <summary>A joint that is put off.</summary>
/// <param name="Joint">The joint, by position in <see cref="Truss.Joints"/>.</param>
/// <param name="Forces">The forces at it that are not known yet: more than two, or two in one line.</param>
public sealed record WaitingJoint(int Joint, IReadOnlyList<int> Forces);

/// <summary>Equations that are solved at once, and what they find. All but a group of joints go one by one.</summary>
/// <param name="Forces">The forces found.</param>
/// <param name="Balances">As many equations.</param>
/// <param name="System">The equations taken apart.</param>
internal sealed record RouteStage(int[] Forces, Balance[] Balances, Elimination System);

/// <summary>A step of the joint-by-joint route.</summary>
/// <param name="Kind">What it works at.</param>
/// <param name="Joints">The joints of the free body or of the group.</param>
/// <param name="Unknown">The forces on the body that are not known when it is taken, in the order of <paramref name="Stages"/> and then those that it does not find.</param>
/// <param name="Stages">Its equations in the order in which they are taken.</param>
/// <param name="Waiting">Joints beside the last one that are put off; where no joint can be solved whole, every joint that is left.</param>
/// <param name="IsAfresh">True where the work goes on at a joint away from all that are done.</param>
internal sealed record RouteStep(StepKind Kind, int[] Joints, int[] Unknown, RouteStage[] Stages, WaitingJoint[] Waiting, bool IsAfresh);
