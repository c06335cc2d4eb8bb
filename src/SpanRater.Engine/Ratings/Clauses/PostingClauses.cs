namespace SpanRater;

/// <summary>Clauses of safe loads and closure.</summary>
public static class PostingClauses
{
    /// <summary>Safe load of a legal type from a factor of 0.3 up to 1; below 0.3 the type is barred.</summary>
    public static Clause Lrfr { get; } = new(
        "LRFR posting", Standard.Manual, "6A.8.3", "safe load of a legal type from a factor of 0.3 up to 1; below 0.3 the type is barred",
        "(W / 0.7)(RF − 0.3); 0.3", ClauseMark.Memory);

    /// <summary>Weight that its factor is applied to.</summary>
    public static Clause LaneType { get; } = new(
        "posted weight of the lane-type load", Standard.Manual, "6A.8.3", "weight that its factor is applied to",
        "40 US ton", ClauseMark.Memory);

    /// <summary>Safe load of a legal type.</summary>
    public static Clause LfrAsr { get; } = new(
        "LFR and ASR posting", Standard.Manual, "6B.7", "safe load of a legal type",
        "RF × W", ClauseMark.Memory);

    /// <summary>A bridge whose smallest safe load is less is to be closed.</summary>
    public static Clause Closure { get; } = new(
        "closure", Standard.FederalRegulations, "650.313", "a bridge whose smallest safe load is less is to be closed",
        "3 US ton", ClauseMark.Memory);

    /// <summary>Single rear axle and tandem of emergency vehicles.</summary>
    public static Clause EmergencyAxles { get; } = new(
        "emergency axle limits", Standard.FederalLaw, "127(r)", "single rear axle and tandem of emergency vehicles",
        "33.5; 62 kip", ClauseMark.Memory);

    /// <summary>Safe axle and gross loads of emergency vehicles.</summary>
    public static Clause Emergency { get; } = new(
        "emergency posting", Standard.EmergencyMemo, "", "safe axle and gross loads of emergency vehicles",
        "RF × axle limit; RF × W", ClauseMark.Memory);

    /// <summary>Axles no farther apart are a tandem.</summary>
    public static Clause Tandem { get; } = new(
        "tandem spacing", Standard.FederalRegulations, "658.5", "axles no farther apart are a tandem",
        "8 ft", ClauseMark.Memory);

    /// <summary>A limit for single units, for tractors with semitrailers, for trucks with full trailers.</summary>
    public static Clause Silhouettes { get; } = new(
        "silhouettes", Standard.TrafficSigns, "2B.49", "a limit for single units, for tractors with semitrailers, for trucks with full trailers",
        "three limits", ClauseMark.Found);

    /// <summary>Posted loads are rounded down.</summary>
    public static Clause WholeTons { get; } = new(
        "whole tons", Standard.Practice, "", "posted loads are rounded down",
        "1 US ton", ClauseMark.Practice);

    /// <summary>All of them.</summary>
    internal static IReadOnlyList<Clause> All { get; } =
    [
        Lrfr, LaneType, LfrAsr, Closure, EmergencyAxles, Emergency, Tandem, Silhouettes, WholeTons
    ];
}
