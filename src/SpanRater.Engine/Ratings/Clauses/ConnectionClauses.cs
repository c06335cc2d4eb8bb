namespace SpanRater;

/// <summary>Clauses of pins, fasteners and gusset plates.</summary>
public static class ConnectionClauses
{
    /// <summary>A pin of diameter D under moment M and shear V at one section; resistance factors 1.00.</summary>
    public static Clause PinLrfr { get; } = new(
        "LRFR pins", Standard.LoadAndResistanceFactorDesign, "6.7.6.2.1 and 6.5.4.2", "a pin of diameter D under moment M and shear V at one section; resistance factors 1.00",
        "6 M/(φf D³ Fy) + (2.2 V/(φv D² Fy))³ ≤ 0.95", ClauseMark.Memory);

    /// <summary>Bearing of plates of thickness t on a pin; resistance factor 1.00.</summary>
    public static Clause PinBearingLrfr { get; } = new(
        "LRFR bearing on pins", Standard.LoadAndResistanceFactorDesign, "6.7.6.2.2 and 6.5.4.2", "bearing of plates of thickness t on a pin; resistance factor 1.00",
        "1.5 t D Fy", ClauseMark.Memory);

    /// <summary>Allowable stress on pins at inventory level, part of Fy: bending; shear; bearing not subject to rotation.</summary>
    public static Clause PinAsr { get; } = new(
        "ASR pins", Standard.StandardSpecifications, "Table 10.32.1A", "allowable stress on pins at inventory level, part of Fy: bending; shear; bearing not subject to rotation",
        "0.80; 0.40; 0.80", ClauseMark.Memory);

    /// <summary>Allowable stress on pins at operating level, part of Fy: bending; shear; bearing not subject to rotation.</summary>
    public static Clause PinAsrOperating { get; } = new(
        "ASR pins at operating level", Standard.Manual, "Table 6B.5.2.1-2", "allowable stress on pins at operating level, part of Fy: bending; shear; bearing not subject to rotation",
        "0.90; 0.55; 0.90", ClauseMark.Memory)
    { Doubt = "the parts at operating level are not surely remembered" };

    /// <summary>Factored shear strength of rivets in ksi, resistance factor in it: before 1936 or of unknown origin; from 1936; A502 grade 1; grade 2.</summary>
    public static Clause RivetsLrfr { get; } = new(
        "LRFR rivets", Standard.Manual, "Table 6A.6.12.5.1-1", "factored shear strength of rivets in ksi, resistance factor in it: before 1936 or of unknown origin; from 1936; A502 grade 1; grade 2",
        "18; 21; 27; 32", ClauseMark.Memory)
    { Doubt = "the values are remembered without their page" };

    /// <summary>Shear of A325 bolts by their tensile strength of 120 ksi, threads out of the planes and in them, with the resistance factor.</summary>
    public static Clause BoltsLrfr { get; } = new(
        "LRFR bolts", Standard.LoadAndResistanceFactorDesign, "6.13.2.7 and 6.5.4.2", "shear of A325 bolts by their tensile strength of 120 ksi, threads out of the planes and in them, with the resistance factor",
        "0.56 Fub; 0.45 Fub; 0.80", ClauseMark.Memory)
    { Doubt = "up to the 7th ed. (2014) the parts were 0.48 and 0.38" };

    /// <summary>Bearing of fasteners of diameter d on thickness t, with the resistance factor; edges far enough.</summary>
    public static Clause FastenerBearing { get; } = new(
        "bearing of fasteners", Standard.LoadAndResistanceFactorDesign, "6.13.2.9 and 6.5.4.2", "bearing of fasteners of diameter d on thickness t, with the resistance factor; edges far enough",
        "0.80 × 2.4 d t Fu", ClauseMark.Memory);

    /// <summary>Width of a gusset plate that carries a member: the outer lines of fasteners spread over the length of the connection.</summary>
    public static Clause Whitmore { get; } = new(
        "Whitmore width", Standard.GussetGuide, "", "width of a gusset plate that carries a member: the outer lines of fasteners spread over the length of the connection",
        "30°", ClauseMark.Memory);

    /// <summary>A gusset plate in tension on the Whitmore width, gross and net.</summary>
    public static Clause GussetTension { get; } = new(
        "gussets in tension", Standard.Manual, "6A.6.12.6", "a gusset plate in tension on the Whitmore width, gross and net",
        "0.95 Fy Ag; 0.80 Fu An", ClauseMark.Memory)
    { Doubt = "resistance factors differ between the guide of 2009 and later editions" };

    /// <summary>A gusset plate in compression on the Whitmore width, K and the middle length, resistance factor.</summary>
    public static Clause GussetCompression { get; } = new(
        "gussets in compression", Standard.Manual, "6A.6.12.6.7", "a gusset plate in compression on the Whitmore width, K and the middle length, resistance factor",
        "K 0.5, Lmid; 0.75", ClauseMark.Memory)
    { Doubt = "interims of 2014" };

    /// <summary>A block torn out around the fasteners, resistance factor.</summary>
    public static Clause BlockShear { get; } = new(
        "block shear", Standard.LoadAndResistanceFactorDesign, "6.13.4 and 6.5.4.2", "a block torn out around the fasteners, resistance factor",
        "0.80 (min(0.58 Fu Avn, 0.58 Fy Avg) + Fu Atn)", ClauseMark.Memory);

    /// <summary>A gusset plate in shear along a plane, gross.</summary>
    public static Clause GussetShearYield { get; } = new(
        "gussets in shear", Standard.Manual, "6A.6.12.6.6", "a gusset plate in shear along a plane, gross",
        "1.00 × 0.58 × 0.88 Fy Ag", ClauseMark.Memory)
    { Doubt = "0.74 or 1.00 in the guide of 2009, 0.88 since the interims of 2014" };

    /// <summary>A gusset plate in shear along a plane, net.</summary>
    public static Clause GussetShearRupture { get; } = new(
        "gussets in shear, net", Standard.GussetGuide, "", "a gusset plate in shear along a plane, net",
        "0.80 × 0.58 Fu An", ClauseMark.Memory);

    /// <summary>A member's bars share its force on a pin by their thickness, each at its middle.</summary>
    public static Clause Packing { get; } = new(
        "packing of pins", Standard.Practice, "", "a member's bars share its force on a pin by their thickness, each at its middle",
        "F t/Σt", ClauseMark.Practice);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Clause> All { get; } =
    [
        PinLrfr, PinBearingLrfr, PinAsr, PinAsrOperating, RivetsLrfr, BoltsLrfr, FastenerBearing, Whitmore, GussetTension, GussetCompression,
        BlockShear, GussetShearYield, GussetShearRupture, Packing,
    ];
}
