namespace SpanRater;

/// <summary>Clauses of the strength of beams.</summary>
public static class BeamClauses
{
    /// <summary>Moment at first yield, resistance factor in bending.</summary>
    public static Clause BendingLrfr { get; } = new(
        "LRFR bending", Standard.LoadAndResistanceFactorDesign, "6.10.8 and 6.5.4.2", "moment at first yield, resistance factor in bending",
        "1.00 Fy S", ClauseMark.Memory);

    /// <summary>Moment at first yield.</summary>
    public static Clause BendingLfr { get; } = new(
        "LFR bending", Standard.StandardSpecifications, "10.48", "moment at first yield",
        "Fy S", ClauseMark.Memory);

    /// <summary>Plastic moments are not counted, whatever the section: its outermost fibre is the most.</summary>
    public static Clause NoPlasticMoments { get; } = new(
        "no plastic moments", Standard.Practice, "", "plastic moments are not counted, whatever the section: its outermost fibre is the most",
        "M ≤ Fy S", ClauseMark.Practice);

    /// <summary>Stress of a flange held at distance Lb, straight between Lp = rt √(E/Fy) and Lr = π rt √(E/(0.7 Fy)), elastic beyond; Cb 1.0.</summary>
    public static Clause LateralLrfr { get; } = new(
        "LRFR sideways buckling", Standard.LoadAndResistanceFactorDesign, "6.10.8.2.3", "stress of a flange held at distance Lb, straight between Lp = rt √(E/Fy) and Lr = π rt √(E/(0.7 Fy)), elastic beyond; Cb 1.0",
        "Fy (1 − 0.3 (Lb − Lp)/(Lr − Lp)); π² E (rt/Lb)²", ClauseMark.Memory);

    /// <summary>Elastic moment of a flange held at distance L, at most Fy S; Cb 1.0.</summary>
    public static Clause LateralLfr { get; } = new(
        "LFR sideways buckling", Standard.StandardSpecifications, "10.48.4.1", "elastic moment of a flange held at distance L, at most Fy S; Cb 1.0",
        "π E (Iyc/L) √(0.772 J/Iyc + 9.87 (d/L)²)", ClauseMark.Memory);

    /// <summary>The same moment with a factor at inventory level, and at operating level in the ratio of the plain stresses; Cb 1.0.</summary>
    public static Clause LateralAsr { get; } = new(
        "ASR sideways buckling", Standard.StandardSpecifications, "Table 10.32.1A", "the same moment with a factor at inventory level, and at operating level in the ratio of the plain stresses; Cb 1.0",
        "0.55; 0.75", ClauseMark.Memory);

    /// <summary>Shear of a web of area D tw, resistance factor in shear.</summary>
    public static Clause ShearLrfr { get; } = new(
        "LRFR shear", Standard.LoadAndResistanceFactorDesign, "6.10.9 and 6.5.4.2", "shear of a web of area D tw, resistance factor in shear",
        "1.00 × 0.58 C Fy D tw", ClauseMark.Memory);

    /// <summary>Shear of a web of area D tw.</summary>
    public static Clause ShearLfr { get; } = new(
        "LFR shear", Standard.StandardSpecifications, "10.48.8", "shear of a web of area D tw",
        "0.58 C Fy D tw", ClauseMark.Memory);

    /// <summary>Allowable shear on a web, part of Fy at inventory and operating level.</summary>
    public static Clause ShearAsr { get; } = new(
        "ASR shear", Standard.Manual, "Table 6B.5.2.1-1 and -2", "allowable shear on a web, part of Fy at inventory and operating level",
        "0.33; 0.45", ClauseMark.Memory);

    /// <summary>Part C of its shear yield that a web without stiffeners reaches, by D/tw over √(5 E/Fy): up to 1.12; to 1.40; beyond.</summary>
    public static Clause WebBuckling { get; } = new(
        "shear buckling of webs", Standard.LoadAndResistanceFactorDesign, "6.10.9.3.2", "part C of its shear yield that a web without stiffeners reaches, by D/tw over √(5 E/Fy): up to 1.12; to 1.40; beyond",
        "1; 1.12 √(5 E/Fy)/(D/tw); 1.57 (5 E/Fy)/(D/tw)²", ClauseMark.Memory);

    /// <summary>Moment of a timber beam, with the factor of stability CL.</summary>
    public static Clause TimberBending { get; } = new(
        "timber in bending", Standard.TimberSpecification, "3.3", "moment of a timber beam, with the factor of stability CL",
        "Fb' CL b d²/6", ClauseMark.Memory);

    /// <summary>CL of a timber deeper than wide, held at distance lu: le up to lu = 7 d and beyond, RB, FbE.</summary>
    public static Clause TimberStability { get; } = new(
        "stability of timber beams", Standard.TimberSpecification, "3.3.3", "CL of a timber deeper than wide, held at distance lu: le up to lu = 7 d and beyond, RB, FbE",
        "2.06 lu; 1.63 lu + 3 d; √(le d/b²) ≤ 50; 1.20 Emin'/RB²", ClauseMark.Memory);

    /// <summary>Shear of a timber beam.</summary>
    public static Clause TimberShear { get; } = new(
        "timber in shear", Standard.TimberSpecification, "3.4.2", "shear of a timber beam",
        "2/3 Fv' b d", ClauseMark.Memory);

    /// <summary>Shear over a square notch that leaves dn on the tension side.</summary>
    public static Clause Notch { get; } = new(
        "notched timber", Standard.TimberSpecification, "3.4.3.2", "shear over a square notch that leaves dn on the tension side",
        "2/3 Fv' b dn (dn/d)²", ClauseMark.Memory);

    /// <summary>Shear where a taper leaves dn.</summary>
    public static Clause Taper { get; } = new(
        "tapered timber", Standard.Practice, "", "shear where a taper leaves dn",
        "2/3 Fv' b dn", ClauseMark.Practice);

    /// <summary>Pressure across the grain on a bearing of length lb at an end.</summary>
    public static Clause TimberBearing { get; } = new(
        "bearing of timber", Standard.TimberSpecification, "3.10.2", "pressure across the grain on a bearing of length lb at an end",
        "Fc⊥' b lb", ClauseMark.Memory);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Clause> All { get; } =
    [
        BendingLrfr, BendingLfr, NoPlasticMoments, LateralLrfr, LateralLfr, LateralAsr, ShearLrfr, ShearLfr, ShearAsr, WebBuckling,
        TimberBending, TimberStability, TimberShear, Notch, Taper, TimberBearing,
    ];
}
