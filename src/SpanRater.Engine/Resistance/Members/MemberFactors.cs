namespace SpanRater;

/// <summary>What a member is within its bridge, as the system factor of LRFR asks.</summary>
public enum SystemKind
{
    /// <summary>A riveted or bolted member of a truss.</summary>
    RivetedTrussMember,

    /// <summary>A welded member of a truss.</summary>
    WeldedTrussMember,

    /// <summary>A member of several eyebars.</summary>
    MultipleEyebars,

    /// <summary>Any other member of a truss: a single bar or rod, a timber.</summary>
    OtherTrussMember,

    /// <summary>A floorbeam over 12 ft from the next, with stringers that are not continuous.</summary>
    WideFloorbeam,

    /// <summary>Any other beam of a floor.</summary>
    OtherFloorPart,

    /// <summary>A stringer between floorbeams.</summary>
    Stringer,
}

/// <summary>Condition and system factor on a resistance by LRFR. Source: AASHTO MBE, 3rd ed. (2018), 6A.4.2.1, 6A.4.2.3 and 6A.4.2.4, from memory.</summary>
/// <param name="Condition">Factor by condition.</param>
/// <param name="System">Factor by what the member is.</param>
/// <param name="Given">The condition that was given; null where none was, so that the factor of a poor one is assumed.</param>
/// <param name="Kind">What the member is.</param>
public sealed record MemberFactors(StrengthFactor Condition, StrengthFactor System, Condition? Given, SystemKind Kind)
{
    /// <summary>Least product of both [-].</summary>
    public const double Least = 0.85;

    /// <summary>Whether the condition is not given, so that the factor of a poor one is assumed.</summary>
    public bool IsConditionAssumed => Given is null;

    /// <summary>The factor on the resistance: the product of both, at least 0.85 [-].</summary>
    public double Value => Math.Max(Least, Condition.Value * System.Value);

    /// <summary>Whether 0.85 stands in place of a lesser product.</summary>
    public bool IsHeldAtLeast => Condition.Value * System.Value < Least - 1e-12;

    /// <summary>The factors of a member.</summary>
    /// <param name="condition">Condition of the bridge; null where it is not given.</param>
    /// <param name="kind">What the member is.</param>
    public static MemberFactors Of(Condition? condition, SystemKind kind) => new(
        new StrengthFactor("φc", ByCondition(condition), condition is null ? StrengthClauses.UnknownCondition : StrengthClauses.ConditionFactor),
        new StrengthFactor("φs", BySystem(kind), kind == SystemKind.OtherTrussMember ? StrengthClauses.OtherTrussMember : StrengthClauses.SystemFactor),
        condition,
        kind);

    private static double ByCondition(Condition? condition) => condition switch
    {
        SpanRater.Condition.Good => 1.00,
        SpanRater.Condition.Fair => 0.95,
        _ => 0.85,
    };

    private static double BySystem(SystemKind kind) => kind switch
    {
        SystemKind.RivetedTrussMember or SystemKind.MultipleEyebars => 0.90,
        SystemKind.Stringer or SystemKind.OtherFloorPart => 1.00,
        _ => 0.85,
    };
}
