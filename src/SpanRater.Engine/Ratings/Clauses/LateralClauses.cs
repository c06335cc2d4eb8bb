namespace SpanRater;

/// <summary>Clauses of how vehicles stand on the deck and what one truss takes.</summary>
public static class LateralClauses
{
    /// <summary>What stands on the deck is shared between two trusses as on a simple beam between them.</summary>
    public static Clause LeverRule { get; } = new(
        "lever rule", Standard.LoadAndResistanceFactorDesign, "C4.6.2.2.1", "what stands on the deck is shared between two trusses as on a simple beam between them",
        "(S − a) / S", ClauseMark.Memory);

    /// <summary>One lane on a roadway under 18 ft, two from 18 to 24 ft, above that whole lanes of 12 ft.</summary>
    public static Clause Lanes { get; } = new(
        "lanes by roadway", Standard.Manual, "6A.2.3.2", "one lane on a roadway under 18 ft, two from 18 to 24 ft, above that whole lanes of 12 ft",
        "18; 24; 12 ft", ClauseMark.Memory);

    /// <summary>Least distance of a wheel line from the kerb; another is given as wheel_to_kerb.</summary>
    public static Clause WheelToKerb { get; } = new(
        "wheel to kerb", Standard.Manual, "6A.2.3.2", "least distance of a wheel line from the kerb; another is given as wheel_to_kerb",
        "2 ft", ClauseMark.Memory);

    /// <summary>Distance from the kerb where a vehicle does not fit otherwise.</summary>
    public static Clause ReducedWheelToKerb { get; } = new(
        "reduced wheel to kerb", Standard.Practice, "", "distance from the kerb where a vehicle does not fit otherwise",
        "1 ft", ClauseMark.Practice);

    /// <summary>Least distance between the wheel lines of vehicles abreast.</summary>
    public static Clause BetweenVehicles { get; } = new(
        "between vehicles", Standard.Manual, "6A.2.3.2", "least distance between the wheel lines of vehicles abreast",
        "4 ft", ClauseMark.Memory);

    /// <summary>Distance between the wheel lines of a standard truck.</summary>
    public static Clause Gauge { get; } = new(
        "wheel gauge", Standard.StandardSpecifications, "3.7", "distance between the wheel lines of a standard truck",
        "6 ft", ClauseMark.Memory);

    /// <summary>A lane load covers this width, or a narrower roadway; the same in the Standard Specifications, 3.6.1.</summary>
    public static Clause LaneLoadWidth { get; } = new(
        "width of a lane load", Standard.LoadAndResistanceFactorDesign, "3.6.1.2.4", "a lane load covers this width, or a narrower roadway; the same in the Standard Specifications, 3.6.1",
        "10 ft", ClauseMark.Memory);

    /// <summary>Multiple presence of one, two, three and more lanes.</summary>
    public static Clause LrfrPresence { get; } = new(
        "LRFR presence", Standard.LoadAndResistanceFactorDesign, "3.6.1.1.2", "multiple presence of one, two, three and more lanes",
        "1.20; 1.00; 0.85; 0.65", ClauseMark.Memory);

    /// <summary>Reduction for one, two, three and more lanes loaded.</summary>
    public static Clause OlderPresence { get; } = new(
        "LFR and ASR presence", Standard.StandardSpecifications, "3.12.1", "reduction for one, two, three and more lanes loaded",
        "1.00; 1.00; 0.90; 0.75", ClauseMark.Memory);

    /// <summary>A permit vehicle is alone on the bridge, and no presence is applied.</summary>
    public static Clause PermitPresence { get; } = new(
        "presence of permit vehicles", Standard.Manual, "6A.4.5.4.2", "a permit vehicle is alone on the bridge, and no presence is applied",
        "none", ClauseMark.Memory);

    /// <summary>Farm and maintenance vehicles are taken one at a time.</summary>
    public static Clause OneAtATime { get; } = new(
        "one vehicle at a time", Standard.Practice, "", "farm and maintenance vehicles are taken one at a time",
        "1 lane", ClauseMark.Practice);

    /// <summary>All of them.</summary>
    internal static IReadOnlyList<Clause> All { get; } =
    [
        LeverRule, Lanes, WheelToKerb, ReducedWheelToKerb, BetweenVehicles, Gauge, LaneLoadWidth, LrfrPresence, OlderPresence,
        PermitPresence, OneAtATime
    ];
}
