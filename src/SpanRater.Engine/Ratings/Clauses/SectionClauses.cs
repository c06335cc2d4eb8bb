namespace SpanRater;

/// <summary>Clauses of what members are made of.</summary>
public static class SectionClauses
{
    /// <summary>Slope of the flanges of American standard beams and channels.</summary>
    public static Clause FlangeTaper { get; } = new(
        "taper of flanges", Standard.SteelManual, "part 1", "inner faces of the flanges of American standard beams and channels",
        "1 in 6", ClauseMark.Memory);

    /// <summary>What a thinned shape of the table keeps.</summary>
    public static Clause ThinnedShape { get; } = new(
        "thinned table shape", Standard.Practice, "", "published properties are lowered in the ratio of those of the outline as found to those of the outline as built",
        "published × found / built", ClauseMark.Practice);

    /// <summary>All of them.</summary>
    internal static IReadOnlyList<Clause> All { get; } =
    [
        FlangeTaper, ThinnedShape
    ];
}
