namespace SpanRater;

/// <summary>Clauses of the rating equations and the factors on dead and live load.</summary>
public static class FactorClauses
{
    /// <summary>Rating factor from the factored resistance, effects positive in the sense rated.</summary>
    public static Clause LrfrEquation { get; } = new(
        "LRFR rating equation", Standard.Manual, "6A.4.2.1", "rating factor from the factored resistance, effects positive in the sense rated",
        "RF = (C − γDC DC − γDW DW) / (γLL LL (1 + IM))", ClauseMark.Memory);

    /// <summary>Factors on components and on the wearing surface where they add.</summary>
    public static Clause LrfrDead { get; } = new(
        "LRFR dead-load factors", Standard.Manual, "Table 6A.4.2.2-1", "factors on components and on the wearing surface where they add",
        "1.25; 1.50", ClauseMark.Memory);

    /// <summary>Live-load factors of design loads at inventory and operating level.</summary>
    public static Clause LrfrDesign { get; } = new(
        "LRFR design factors", Standard.Manual, "Table 6A.4.2.2-1", "live-load factors of design loads at inventory and operating level",
        "1.75; 1.35", ClauseMark.Memory);

    /// <summary>Live-load factor of legal loads by trucks a day in one direction, straight between; the heavier where traffic is unknown.</summary>
    public static Clause LrfrLegal { get; } = new(
        "LRFR legal factors", Standard.Manual, "6A.4.4.2.3a", "live-load factor of legal loads by trucks a day in one direction, straight between; the heavier where traffic is unknown",
        "1.30 up to 1,000; 1.45 from 5,000", ClauseMark.Memory);

    /// <summary>LRFR live-load factor of SU4 to SU7 and of the notional load that screens them.</summary>
    public static Clause SpecialHauling { get; } = new(
        "special hauling factor", Standard.Manual, "6A.4.4.2.3b", "LRFR live-load factor of SU4 to SU7 and of the notional load that screens them",
        "1.30 up to 1,000; 1.45 from 5,000", ClauseMark.Memory)
    { Doubt = "earlier printings have other values" };

    /// <summary>LRFR live-load factor of emergency vehicles.</summary>
    public static Clause Emergency { get; } = new(
        "emergency factor", Standard.EmergencyMemo, "", "LRFR live-load factor of emergency vehicles",
        "1.30", ClauseMark.Memory)
    { Doubt = "later editions give values by truck traffic" };

    /// <summary>Live-load factor of a permit vehicle, as the permit calls for; always given by the user (permit_factor).</summary>
    public static Clause Permit { get; } = new(
        "permit factor", Standard.Manual, "6A.4.5.4.2", "live-load factor of a permit vehicle, as the permit calls for; always given by the user (permit_factor)",
        "none assumed", ClauseMark.Memory);

    /// <summary>Factors on components and on the wearing surface where they relieve.</summary>
    public static Clause LrfrRelieving { get; } = new(
        "LRFR relieving dead load", Standard.LoadAndResistanceFactorDesign, "Table 3.4.1-2", "factors on components and on the wearing surface where they relieve",
        "0.90; 0.65", ClauseMark.Memory);

    /// <summary>Rating factor from the capacity by load factors, or from the allowable force.</summary>
    public static Clause LfrAsrEquation { get; } = new(
        "LFR and ASR rating equation", Standard.Manual, "6B.4.1", "rating factor from the capacity by load factors, or from the allowable force",
        "RF = (C − A1 D) / (A2 L (1 + I))", ClauseMark.Memory);

    /// <summary>A1 on dead load; A2 on live load at inventory and operating level.</summary>
    public static Clause Lfr { get; } = new(
        "LFR factors", Standard.Manual, "6B.4.3", "A1 on dead load; A2 on live load at inventory and operating level",
        "1.3; 2.17; 1.3", ClauseMark.Memory);

    /// <summary>A1 and A2, at both levels.</summary>
    public static Clause Asr { get; } = new(
        "ASR factors", Standard.Manual, "6B.4.2", "A1 and A2, at both levels",
        "1.0; 1.0", ClauseMark.Memory);

    /// <summary>Factor on dead load that relieves.</summary>
    public static Clause LfrAsrRelieving { get; } = new(
        "LFR and ASR relieving dead load", Standard.Practice, "", "factor on dead load that relieves",
        "1.0", ClauseMark.Practice);

    /// <summary>Rated by LRFR with the factors of design loads.</summary>
    public static Clause MaintenanceAndCrowd { get; } = new(
        "maintenance vehicles and crowds", Standard.Practice, "", "rated by LRFR with the factors of design loads",
        "1.75; 1.35", ClauseMark.Practice);

    /// <summary>Rated by LRFR with the factors of legal loads.</summary>
    public static Clause Farm { get; } = new(
        "farm vehicles", Standard.Practice, "", "rated by LRFR with the factors of legal loads",
        "1.30 up to 1,000; 1.45 from 5,000", ClauseMark.Practice);

    /// <summary>Buckling curves of members in compression.</summary>
    public static Clause EuropeanBuckling { get; } = new(
        "European buckling curves", Standard.EuropeanSteel, "6.3.1.2 and Table 6.1", "reduction of a compressed member by its slenderness, curves a0, a, b, c and d",
        "χ = 1/(Φ + √(Φ² − λ²)); 0.13, 0.21, 0.34, 0.49, 0.76", ClauseMark.Memory);

    /// <summary>All of them.</summary>
    internal static IReadOnlyList<Clause> All { get; } =
    [
        LrfrEquation, LrfrDead, LrfrDesign, LrfrLegal, SpecialHauling, Emergency, Permit, LrfrRelieving, LfrAsrEquation, Lfr, Asr,
        LfrAsrRelieving, MaintenanceAndCrowd, Farm, EuropeanBuckling
    ];
}
