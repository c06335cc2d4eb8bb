namespace SpanRater;

/// <summary>A member of one truss whose stress ranges are counted, or why they are not.</summary>
/// <param name="Member">Position of the member.</param>
/// <param name="Truss">The truss, 0 for the left one; null where both are alike.</param>
public sealed record TrafficStress(int Member, int? Truss)
{
    /// <summary>Place of its channel in the plan; null where its ranges are not counted.</summary>
    public int? Channel { get; init; }

    /// <summary>What stands in the way; empty where the ranges are counted.</summary>
    public required IReadOnlyList<FatigueObstacle> Obstacles { get; init; }

    /// <summary>Share of a vehicle on this truss, no presence factor in it unless it was given [-].</summary>
    public required double Share { get; init; }

    /// <summary>Force under dead load, unfactored, tension positive [N]; null where it is not known.</summary>
    public double? Dead { get; init; }

    /// <summary>Area that the force range is spread over [m²]; null where it is not known.</summary>
    public double? Area { get; init; }

    /// <summary>The cut that has it; null away from all cuts.</summary>
    public string? Place { get; init; }

    /// <summary>Whether it is a net area.</summary>
    public bool IsNet { get; init; }

    /// <summary>Length of deck over which the member's line is not zero [m].</summary>
    public double LoadedLength { get; init; }

    /// <summary>Cycles of one passage [-].</summary>
    public int CyclesAPassage => LoadedLength > FatigueStress.ShortLength + 1e-9 ? 1 : 2;

    /// <summary>Stress range of a force range of the whole truck, share and dynamic allowance of fatigue in it [Pa]; null where there is no area.</summary>
    /// <param name="range">Force range of the whole truck on one truss [N].</param>
    public double? StressOf(double range) => Share * (1 + FatigueNote.Impact) * range / Area;
}
