namespace SpanRater;

/// <summary>Clauses of the strengths of steel and iron, and of the factors on a member's resistance.</summary>
public static class StrengthClauses
{
    /// <summary>Yield and tensile strength of structural steel by year of building: before 1905; 1905 to 1936; 1936 to 1963; after 1963.</summary>
    public static Clause UnknownSteel { get; } = new(
        "strength of unknown steel", Standard.Manual, "Table 6A.6.2.1-1", "yield and tensile strength of structural steel by year of building: before 1905; 1905 to 1936; 1936 to 1963; after 1963",
        "26/52; 30/60; 33/66; 36/66 ksi", ClauseMark.Memory);

    /// <summary>Yield of pins by year of building: before 1905; 1905 through 1935; 1936 through 1963; after 1963.</summary>
    public static Clause UnknownPins { get; } = new(
        "strength of unknown pins", Standard.Manual, "Table 6A.6.2.2-1", "yield of pins by year of building: before 1905; 1905 through 1935; 1936 through 1963; after 1963",
        "25.5; 30; 33; 36 ksi", ClauseMark.Memory);

    /// <summary>Yield and tensile strength of wrought iron.</summary>
    public static Clause WroughtIron { get; } = new(
        "strength of wrought iron", Standard.Manual, "6A.6.2.3", "yield and tensile strength of wrought iron",
        "26; 48 ksi", ClauseMark.Memory);

    /// <summary>Allowable stress of unknown steel on the gross section at inventory and operating level: before 1905; 1905 to 1936; 1936 to 1963; after 1963.</summary>
    public static Clause AllowableByYear { get; } = new(
        "allowable tension by year", Standard.Manual, "Table 6B.5.2.1-1 and -2", "allowable stress of unknown steel on the gross section at inventory and operating level: before 1905; 1905 to 1936; 1936 to 1963; after 1963",
        "14/19.5; 16/22.5; 18/24.5; 20/27 ksi", ClauseMark.Memory);

    /// <summary>Allowable stress of wrought iron in tension and bending at inventory and operating level.</summary>
    public static Clause AllowableIron { get; } = new(
        "allowable tension of wrought iron", Standard.Manual, "6B.5.2.3", "allowable stress of wrought iron in tension and bending at inventory and operating level",
        "14.6; 20.0 ksi", ClauseMark.Memory)
    { Doubt = "remembered less surely than the table of steel" };

    /// <summary>Part of the yield at inventory and operating level; bending takes the same.</summary>
    public static Clause AllowableGross { get; } = new(
        "allowable tension on the gross section", Standard.Manual, "Table 6B.5.2.1-1 and -2", "part of the yield at inventory and operating level; bending takes the same",
        "0.55; 0.75", ClauseMark.Memory);

    /// <summary>Part of the tensile strength at inventory and operating level.</summary>
    public static Clause AllowableNet { get; } = new(
        "allowable tension on the net section", Standard.Manual, "Table 6B.5.2.1-1 and -2", "part of the tensile strength at inventory and operating level",
        "0.50; 0.67", ClauseMark.Memory)
    { Doubt = "remembered less surely than the factors on the gross section" };

    /// <summary>Factor on the resistance under LRFR by condition: good; fair; poor.</summary>
    public static Clause ConditionFactor { get; } = new(
        "condition factor", Standard.Manual, "Table 6A.4.2.3-1", "factor on the resistance under LRFR by condition: good; fair; poor",
        "1.00; 0.95; 0.85", ClauseMark.Memory);

    /// <summary>Condition factor where the condition is not given: that of poor.</summary>
    public static Clause UnknownCondition { get; } = new(
        "condition not given", Standard.Practice, "", "condition factor where the condition is not given: that of poor",
        "0.85", ClauseMark.Practice);

    /// <summary>Factor on the resistance under LRFR: welded members of trusses; riveted members of trusses; multiple eyebars; floorbeams over 12 ft apart with stringers that are not continuous; stringers between floorbeams.</summary>
    public static Clause SystemFactor { get; } = new(
        "system factor", Standard.Manual, "Table 6A.4.2.4-1", "factor on the resistance under LRFR: welded members of trusses; riveted members of trusses; multiple eyebars; floorbeams over 12 ft apart with stringers that are not continuous; stringers between floorbeams",
        "0.85; 0.90; 0.90; 0.85; 1.00", ClauseMark.Memory);

    /// <summary>Single bars and rods, timber and whatever the table does not name take the least value of the table.</summary>
    public static Clause OtherTrussMember { get; } = new(
        "system factor of other truss members", Standard.Practice, "", "single bars and rods, timber and whatever the table does not name take the least value of the table",
        "0.85", ClauseMark.Practice);

    /// <summary>Product of condition and system factor, at least.</summary>
    public static Clause LeastOfBoth { get; } = new(
        "least condition and system factor", Standard.Manual, "6A.4.2.1", "product of condition and system factor, at least",
        "0.85", ClauseMark.Memory);

    /// <summary>All of them.</summary>
    internal static IReadOnlyList<Clause> All { get; } =
    [
        UnknownSteel, UnknownPins, WroughtIron, AllowableByYear, AllowableIron, AllowableGross,
        AllowableNet, ConditionFactor, UnknownCondition, SystemFactor, OtherTrussMember, LeastOfBoth,
    ];
}
