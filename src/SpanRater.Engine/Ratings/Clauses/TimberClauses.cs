namespace SpanRater;

/// <summary>Clauses of the strength of timber.</summary>
public static class TimberClauses
{
    /// <summary>Bending, tension, shear, compression across and along the grain and moduli by species, size class and grade.</summary>
    public static Clause DesignValues { get; } = new(
        "design values of timber", Standard.TimberSupplement, "Tables 4A and 4D", "bending, tension, shear, compression across and along the grain and moduli by species, size class and grade",
        "12 rows in psi", ClauseMark.Memory)
    { Doubt = "tables change with the edition, and old grades are not today's" };

    /// <summary>2 to 4 in thick; beams and stringers: 5 in and thicker, more than 2 in wider than thick; posts and timbers: 5 by 5 in and larger, others.</summary>
    public static Clause SizeClasses { get; } = new(
        "size classes of timber", Standard.TimberSupplement, "Tables 4A and 4D", "2 to 4 in thick; beams and stringers: 5 in and thicker, more than 2 in wider than thick; posts and timbers: 5 by 5 in and larger, others",
        "2; 4; 5; 2 in", ClauseMark.Memory);

    /// <summary>Factor CD: permanent; ten years; two months; seven days; ten minutes; impact.</summary>
    public static Clause Duration { get; } = new(
        "load duration", Standard.TimberSpecification, "Table 2.3.2", "factor CD: permanent; ten years; two months; seven days; ten minutes; impact",
        "0.9; 1.0; 1.15; 1.25; 1.6; 2.0", ClauseMark.Found);

    /// <summary>Factor CM on bending, where Fb CF is above 1,150 psi; tension; shear; compression across; compression along, where Fc CF is above 750 psi; moduli.</summary>
    public static Clause WetDimension { get; } = new(
        "wet service of timber 2 to 4 in thick", Standard.TimberSupplement, "Table 4A", "factor CM on bending, where Fb CF is above 1,150 psi; tension; shear; compression across; compression along, where Fc CF is above 750 psi; moduli",
        "0.85; 1.0; 0.97; 0.67; 0.8; 0.9", ClauseMark.Memory)
    { Doubt = "look it up in the edition in force" };

    /// <summary>Factor CM on bending; tension; shear; compression across; compression along; moduli; values printed for wet or dry take none.</summary>
    public static Clause WetTimbers { get; } = new(
        "wet service of timber 5 by 5 in and larger", Standard.TimberSupplement, "Table 4D", "factor CM on bending; tension; shear; compression across; compression along; moduli; values printed for wet or dry take none",
        "1.0; 1.0; 1.0; 0.67; 0.91; 1.0", ClauseMark.Memory)
    { Doubt = "look it up in the edition in force" };

    /// <summary>Factor CF on bending, widths 4, 5, 6, 8, 10, 12, 14 in and wider; 4 in thick from 8 in on: 1.3, 1.2, 1.1, 1.0.</summary>
    public static Clause SizeDimension { get; } = new(
        "size factor of timber 2 to 4 in thick", Standard.TimberSupplement, "Table 4A", "factor CF on bending, widths 4, 5, 6, 8, 10, 12, 14 in and wider; 4 in thick from 8 in on: 1.3, 1.2, 1.1, 1.0",
        "1.5; 1.4; 1.3; 1.2; 1.1; 1.0; 0.9", ClauseMark.Memory)
    { Doubt = "look it up in the edition in force" };

    /// <summary>Factor CF on tension and compression along the grain of widths over 12 in; larger ones of narrow widths are left out.</summary>
    public static Clause SizeDimensionAlong { get; } = new(
        "size factor along the grain", Standard.TimberSupplement, "Table 4A", "factor CF on tension and compression along the grain of widths over 12 in; larger ones of narrow widths are left out",
        "0.9", ClauseMark.Memory)
    { Doubt = "look it up in the edition in force" };

    /// <summary>Factor CF on bending of depths d over 12 in.</summary>
    public static Clause SizeTimbers { get; } = new(
        "size factor of timber 5 by 5 in and larger", Standard.TimberSpecification, "4.3.6", "factor CF on bending of depths d over 12 in",
        "(12/d)^(1/9)", ClauseMark.Memory);

    /// <summary>Factor Cr on bending of three or more alike and close, 2 to 4 in thick.</summary>
    public static Clause Repetitive { get; } = new(
        "repetitive members", Standard.TimberSpecification, "4.3.9", "factor Cr on bending of three or more alike and close, 2 to 4 in thick",
        "1.15", ClauseMark.Memory);

    /// <summary>Resistance factor of bending; shear; compression along; tension; the format factor CKF is 2.5 over each, across the grain 2.1/0.90.</summary>
    public static Clause LrfrTimber { get; } = new(
        "LRFR timber", Standard.LoadAndResistanceFactorDesign, "8.4.4 and 8.5.2.2", "resistance factor of bending; shear; compression along; tension; the format factor CKF is 2.5 over each, across the grain 2.1/0.90",
        "0.85; 0.75; 0.90; 0.80", ClauseMark.Memory);

    /// <summary>Factor Cλ: Strength I; Strength II.</summary>
    public static Clause TimeEffect { get; } = new(
        "time effect", Standard.LoadAndResistanceFactorDesign, "8.4.4.9", "factor Cλ: Strength I; Strength II",
        "0.8; 1.0", ClauseMark.Memory);

    /// <summary>Format and resistance factor on the modulus for stability.</summary>
    public static Clause LrfrModulus { get; } = new(
        "LRFR modulus for stability", Standard.TimberSpecification, "App. N", "format and resistance factor on the modulus for stability",
        "1.76; 0.85", ClauseMark.Memory)
    { Doubt = "AASHTO LRFD writes the stability of columns in a form of its own" };

    /// <summary>Allowable stresses at operating level over those at inventory level.</summary>
    public static Clause OperatingTimber { get; } = new(
        "operating level of timber", Standard.Manual, "6B.5.2.7", "allowable stresses at operating level over those at inventory level",
        "1.33", ClauseMark.Memory)
    { Doubt = "look it up in your copy" };

    /// <summary>Factor CP with c = 0.8 for sawn timber and FcE = 0.822 Emin/(le/d)²; le/d at most 50.</summary>
    public static Clause TimberColumns { get; } = new(
        "timber columns", Standard.TimberSpecification, "3.7.1", "factor CP with c = 0.8 for sawn timber and FcE = 0.822 Emin/(le/d)²; le/d at most 50",
        "(1 + F)/(2c) − √(((1 + F)/(2c))² − F/c), F = FcE/Fc", ClauseMark.Memory);

    /// <summary>Stresses over adjusted values, on the tension side and on the other.</summary>
    public static Clause TimberTensionBending { get; } = new(
        "timber in tension and bending", Standard.TimberSpecification, "3.9.1", "stresses over adjusted values, on the tension side and on the other",
        "ft/Ft + fb/Fb ≤ 1; (fb − ft)/Fb ≤ 1", ClauseMark.Memory);

    /// <summary>Stresses over adjusted values, bending in one plane.</summary>
    public static Clause TimberCompressionBending { get; } = new(
        "timber in compression and bending", Standard.TimberSpecification, "3.9.2", "stresses over adjusted values, bending in one plane",
        "(fc/Fc)² + fb/(Fb (1 − fc/FcE)) ≤ 1", ClauseMark.Memory);

    /// <summary>All of them.</summary>
    internal static IReadOnlyList<Clause> All { get; } =
    [
        DesignValues, SizeClasses, Duration, WetDimension, WetTimbers, SizeDimension, SizeDimensionAlong,
        SizeTimbers, Repetitive, LrfrTimber, TimeEffect, LrfrModulus, OperatingTimber,
        TimberColumns, TimberTensionBending, TimberCompressionBending,
    ];
}
