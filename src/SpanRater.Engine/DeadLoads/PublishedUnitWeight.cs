namespace SpanRater;

/// <summary>The published unit weight of a material.</summary>
/// <param name="Material">The word for it in a table.</param>
/// <param name="Weight">Weight per volume [N/m³].</param>
/// <param name="Source">Where it is from.</param>
public sealed record PublishedUnitWeight(string Material, double Weight, string Source)
{
    /// <summary>One pound per cubic foot [N/m³].</summary>
    public const double PoundPerCubicFoot = 4.4482216152605 / 0.028316846592;

    /// <summary>Every material there is.</summary>
    public static IReadOnlyList<PublishedUnitWeight> All { get; } =
    [
        Of("steel", 490, DeadLoadClauses.UnitWeights),
        Of("concrete", 150, DeadLoadClauses.UnitWeights),
        Of("timber", 50, DeadLoadClauses.TimberWeight),
        Of("rolled gravel", 140, DeadLoadClauses.UnitWeights),
        Of("macadam", 140, DeadLoadClauses.UnitWeights),
        Of("compacted earth", 120, DeadLoadClauses.UnitWeights),
        Of("loose earth", 100, DeadLoadClauses.UnitWeights),
    ];

    /// <summary>The material of that name, or null.</summary>
    /// <param name="material">Name, in any letter case.</param>
    public static PublishedUnitWeight? Find(string material) =>
        All.FirstOrDefault(u => string.Equals(u.Material, material, StringComparison.OrdinalIgnoreCase));

    private static PublishedUnitWeight Of(string material, double pounds, Clause clause) => new(material, pounds * PoundPerCubicFoot, clause.CitationWithMark);
}
