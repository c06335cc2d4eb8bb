namespace SpanRater;

/// <summary>Clauses of the dynamic allowance.</summary>
public static class ImpactClauses
{
    /// <summary>Allowance on vehicles.</summary>
    public static Clause OfLrfr { get; } = new(
        "LRFR dynamic allowance", Standard.Manual, "6A.4.4.3", "allowance on vehicles",
        "0.33", ClauseMark.Memory);

    /// <summary>Allowance on members along spans over 40 ft, on other than design loads: smooth surface; minor deviations.</summary>
    public static Clause BySurface { get; } = new(
        "allowance by riding surface", Standard.Manual, "Table C6A.4.4.3-1", "allowance on members along spans over 40 ft, on other than design loads: smooth surface; minor deviations",
        "0.10; 0.20", ClauseMark.Memory);

    /// <summary>No allowance at 10 mph or less; applied to every vehicle where the user says how that speed is enforced.</summary>
    public static Clause AtCrawl { get; } = new(
        "crawl speed", Standard.Manual, "6A.4.5.5", "no allowance at 10 mph or less; applied to every vehicle where the user says how that speed is enforced",
        "0", ClauseMark.Memory);

    /// <summary>Impact under LFR and ASR, L the loaded length in feet.</summary>
    public static Clause ByLength { get; } = new(
        "impact by loaded length", Standard.StandardSpecifications, "3.8.2.1", "impact under LFR and ASR, L the loaded length in feet",
        "50/(L + 125), at most 0.30", ClauseMark.Memory);

    /// <summary>No allowance on members of timber.</summary>
    public static Clause OnTimber { get; } = new(
        "impact on timber", Standard.LoadAndResistanceFactorDesign, "3.6.2.3", "no allowance on members of timber",
        "0", ClauseMark.Memory);

    /// <summary>No allowance on the lane load of HL-93 and of legal loads.</summary>
    public static Clause OnLane { get; } = new(
        "allowance on lane loads", Standard.LoadAndResistanceFactorDesign, "3.6.2.1", "no allowance on the lane load of HL-93 and of legal loads",
        "0", ClauseMark.Memory);

    /// <summary>The lane load stands for a row of trucks, and takes impact as a truck does.</summary>
    public static Clause OnOlderLane { get; } = new(
        "impact on H and HS lane loads", Standard.StandardSpecifications, "3.8.1", "the lane load stands for a row of trucks, and takes impact as a truck does",
        "50/(L + 125), at most 0.30", ClauseMark.Memory);

    /// <summary>No allowance on people.</summary>
    public static Clause OnCrowd { get; } = new(
        "impact on crowds", Standard.Footbridges, "3.1", "no allowance on people",
        "0", ClauseMark.Memory);

    /// <summary>No allowance on a vehicle that maintains a footbridge.</summary>
    public static Clause OnMaintenance { get; } = new(
        "impact on maintenance vehicles", Standard.Practice, "", "no allowance on a vehicle that maintains a footbridge",
        "0", ClauseMark.Practice);

    /// <summary>All of them.</summary>
    internal static IReadOnlyList<Clause> All { get; } =
    [
        OfLrfr, BySurface, AtCrawl, ByLength, OnTimber, OnLane, OnOlderLane, OnCrowd, OnMaintenance
    ];
}
