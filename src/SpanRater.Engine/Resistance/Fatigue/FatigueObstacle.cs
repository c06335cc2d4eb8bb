namespace SpanRater;

/// <summary>Why there is no fatigue note.</summary>
public abstract record FatigueObstacle
{
    private FatigueObstacle()
    {
    }

    /// <summary>The member has no section.</summary>
    public sealed record NoSection() : FatigueObstacle;

    /// <summary>The member has no material.</summary>
    public sealed record NoMaterial() : FatigueObstacle;

    /// <summary>The categories are of steel, and the member is not.</summary>
    /// <param name="Material">Name of the material; empty where members.csv names its kind alone.</param>
    /// <param name="Kind">What it is.</param>
    public sealed record NotSteel(string Material, MaterialKind Kind) : FatigueObstacle;

    /// <summary>The holes of parts are not given, so that the net section is not known.</summary>
    /// <param name="Section">Name of the section.</param>
    /// <param name="Parts">Names of the parts.</param>
    public sealed record Holes(string Section, string Parts) : FatigueObstacle;

    /// <summary>At a cut nothing is left that carries.</summary>
    /// <param name="Place">The cut; null away from all cuts.</param>
    public sealed record NothingLeft(string? Place) : FatigueObstacle;

    /// <summary>The member is cracked: it is past the question.</summary>
    /// <param name="Place">Where.</param>
    public sealed record Cracked(string Place) : FatigueObstacle;

    /// <summary>The dead load of the components is not given, and with it whether the member comes under tension.</summary>
    public sealed record NoDeadLoad() : FatigueObstacle;

    /// <summary>What part of the vehicle one truss carries is not known.</summary>
    /// <param name="Why">Why.</param>
    public sealed record NoShare(ShareOutcome Why) : FatigueObstacle;

    /// <summary>The truss cannot be solved, or the vehicle not be rolled over it.</summary>
    /// <param name="Why">Why.</param>
    public sealed record NotSolved(Refusal Why) : FatigueObstacle;
}
