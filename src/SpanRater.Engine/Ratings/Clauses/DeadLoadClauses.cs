namespace SpanRater;

/// <summary>Clauses of weights and of the simple formula for the frequency.</summary>
public static class DeadLoadClauses
{
    /// <summary>Steel; concrete; rolled gravel and macadam; compacted earth; loose earth.</summary>
    public static Clause UnitWeights { get; } = new(
        "unit weights", Standard.StandardSpecifications, "3.3.6", "steel; concrete; rolled gravel and macadam; compacted earth; loose earth",
        "490; 150; 140; 120; 100 pcf", ClauseMark.Memory);

    /// <summary>Timber, treated or not.</summary>
    public static Clause TimberWeight { get; } = new(
        "unit weight of timber", Standard.TimberBridges, "ch. 6", "timber, treated or not",
        "50 pcf", ClauseMark.Found);

    /// <summary>Vertical frequency from the largest dead-load deflection.</summary>
    public static Clause Frequency { get; } = new(
        "simple frequency", Standard.FloorVibrations, "3.3", "vertical frequency from the largest dead-load deflection",
        "0.18 √(g/Δ)", ClauseMark.Memory);

    /// <summary>All of them.</summary>
    internal static IReadOnlyList<Clause> All { get; } =
    [
        UnitWeights, TimberWeight, Frequency
    ];
}
