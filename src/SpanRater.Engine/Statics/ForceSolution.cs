namespace SpanRater;

/// <summary>A reaction at a supported joint.</summary>
/// <param name="Joint">Position of the joint in <see cref="Truss.Joints"/>.</param>
/// <param name="Right">Component to the right [N].</param>
/// <param name="Up">Component upward [N].</param>
public readonly record struct Reaction(int Joint, double Right, double Up);

/// <summary>Forces that balance a truss under one load case.</summary>
/// <param name="MemberForces">Force in each member, tension positive [N]; length = members.</param>
/// <param name="Reactions">One reaction a supported joint, in the order of the joints.</param>
/// <param name="Residual">Largest joint imbalance over largest load, multiplied back from the unfactored matrix [-].</param>
public sealed record ForceSolution(IReadOnlyList<double> MemberForces, IReadOnlyList<Reaction> Reactions, double Residual)
{
    /// <summary>Which of the members that only pull act; null where the truss has none.</summary>
    public RodState? Rods { get; init; }

    /// <summary>Two routes that differ by more than this part of the largest member force refuse the result [-].</summary>
    public const double RouteLimit = 1e-9;

    /// <summary>A residual above this refuses the result [-].</summary>
    public const double ResidualLimit = 1e-9;
}

/// <summary>What the members that only pull do under a load.</summary>
/// <param name="Acting">Positions of those that pull.</param>
/// <param name="Slack">Positions of those that carry nothing.</param>
/// <param name="SetsExamined">Number of sets of acting rods that were examined to find this one.</param>
public sealed record RodState(IReadOnlyList<int> Acting, IReadOnlyList<int> Slack, int SetsExamined);
