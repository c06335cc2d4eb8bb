namespace SpanRater;

/// <summary>Clauses of the loads that are more than a truck.</summary>
public static class LiveLoadClauses
{
    /// <summary>Uniform load with a concentrated load for moment and for shear (H20 and HS20; others in proportion), in place of the truck where it is worse; chords and members whose line keeps one sign take the one for moment.</summary>
    public static Clause OlderLane { get; } = new(
        "H and HS lane loads", Standard.StandardSpecifications, "3.7", "uniform load with a concentrated load for moment and for shear (H20 and HS20; others in proportion), in place of the truck where it is worse; chords and members whose line keeps one sign take the one for moment",
        "0.64 klf; 18 kip; 26 kip", ClauseMark.Memory);

    /// <summary>Truck or tandem, whichever is worse, together with a lane load.</summary>
    public static Clause Hl93 { get; } = new(
        "HL-93", Standard.LoadAndResistanceFactorDesign, "3.6.1.2", "truck or tandem, whichever is worse, together with a lane load",
        "0.64 klf", ClauseMark.Memory);

    /// <summary>On spans over 200 ft: part of a Type 3-3 together with a lane load.</summary>
    public static Clause LegalLane { get; } = new(
        "lane-type legal load", Standard.Manual, "Fig. D6A-4", "on spans over 200 ft: part of a Type 3-3 together with a lane load",
        "200 ft; 0.75; 0.2 klf", ClauseMark.Memory);

    /// <summary>Over interior supports: part of two Type 3-3 with this gap, and a lane load.</summary>
    public static Clause LegalLaneTwoTrucks { get; } = new(
        "lane-type legal load, two trucks", Standard.Manual, "Fig. D6A-5", "over interior supports: part of two Type 3-3 with this gap, and a lane load",
        "30 ft; 0.75; 0.2 klf", ClauseMark.Memory);

    /// <summary>One emergency vehicle on the bridge.</summary>
    public static Clause EmergencyAlone { get; } = new(
        "emergency vehicle alone", Standard.EmergencyMemo, "", "one emergency vehicle on the bridge",
        "1 lane", ClauseMark.Memory);

    /// <summary>A legal vehicle in the next lane, with its own factor, stays as it is while the emergency vehicle is scaled.</summary>
    public static Clause EmergencyBeside { get; } = new(
        "legal vehicle beside an emergency vehicle", Standard.EmergencyMemo, "", "a legal vehicle in the next lane, with its own factor, stays as it is while the emergency vehicle is scaled",
        "RF = (C − γDC DC − γDW DW − γN N (1 + IM)) / (γLL L (1 + IM))", ClauseMark.Memory);

    /// <summary>The notional load is rated as a legal load and never posted.</summary>
    public static Clause Screening { get; } = new(
        "screening load", Standard.Manual, "6A.4.4.2.1b", "the notional load is rated as a legal load and never posted",
        "legal factors", ClauseMark.Memory);

    /// <summary>People on a footbridge.</summary>
    public static Clause Crowd { get; } = new(
        "crowd of 90 psf", Standard.Footbridges, "3.1", "people on a footbridge",
        "90 psf", ClauseMark.Memory);

    /// <summary>People on a footbridge, by the older guide.</summary>
    public static Clause OldCrowd { get; } = new(
        "crowd of 85 psf", Standard.OldFootbridges, "", "people on a footbridge, by the older guide",
        "85 psf", ClauseMark.Memory);

    /// <summary>People on a footbridge, by the loaded length.</summary>
    public static Clause EuropeanCrowd { get; } = new(
        "European footbridge crowd", Standard.EuropeanTraffic, "5.3.2.1(2)", "people on a footbridge, by the loaded length L in m",
        "2.0 + 120/(L + 30) kN/m², from 2.5 to 5.0", ClauseMark.Memory);

    /// <summary>People on a sidewalk or footbridge, by the loaded length and width.</summary>
    public static Clause Sidewalk { get; } = new(
        "sidewalk crowd", Standard.StandardSpecifications, "3.14.1.1", "people on a sidewalk, by the loaded length L and width W in ft",
        "85 psf to 25 ft; 60 psf to 100 ft; (30 + 3000/L)(55 − W)/50 psf, at most 60", ClauseMark.Memory);

    /// <summary>Lane load of British highway bridges, by the loaded length, and its concentrated load.</summary>
    public static Clause BritishLane { get; } = new(
        "HA lane load", Standard.BritishLoads, "6.2 and Table 13", "lane load by the loaded length L in m, with a concentrated load; impact is in it",
        "336 L^−0.67 kN/m to 50 m; 36 L^−0.1 above; 120 kN", ClauseMark.Memory);

    /// <summary>All of them.</summary>
    internal static IReadOnlyList<Clause> All { get; } =
    [
        OlderLane, Hl93, LegalLane, LegalLaneTwoTrucks, EmergencyAlone, EmergencyBeside, Screening, Crowd, OldCrowd, EuropeanCrowd, Sidewalk, BritishLane
    ];
}
