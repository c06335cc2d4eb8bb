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
    /// <summary>Two routes that differ by more than this part of the largest member force refuse the result [-].</summary>
    public const double RouteLimit = 1e-9;

    /// <summary>A residual above this refuses the result [-].</summary>
    public const double ResidualLimit = 1e-9;
}
