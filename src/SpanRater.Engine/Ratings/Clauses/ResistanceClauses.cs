namespace SpanRater;

/// <summary>Clauses of the resistance of steel members in tension and compression.</summary>
public static class ResistanceClauses
{
    /// <summary>Yield of the gross section; rupture of the net section with shear lag U and the factor of punched holes Rp.</summary>
    public static Clause TensionLrfr { get; } = new(
        "LRFR tension", Standard.LoadAndResistanceFactorDesign, "6.8.2.1 and 6.5.4.2", "yield of the gross section; rupture of the net section with shear lag U and the factor of punched holes Rp",
        "0.95 Fy Ag; 0.80 Fu An Rp U", ClauseMark.Memory);

    /// <summary>Factor Rp on the net section: holes drilled or reamed; punched full size.</summary>
    public static Clause PunchedHoles { get; } = new(
        "punched holes", Standard.LoadAndResistanceFactorDesign, "6.8.2.1", "factor Rp on the net section: holes drilled or reamed; punched full size",
        "1.00; 0.90", ClauseMark.Memory);

    /// <summary>Part of the net section that works where not all of it is connected, from the distance x of the centroid from the connected face and the length L of the connection.</summary>
    public static Clause ShearLag { get; } = new(
        "shear lag", Standard.LoadAndResistanceFactorDesign, "Table 6.8.2.2-1", "part of the net section that works where not all of it is connected, from the distance x of the centroid from the connected face and the length L of the connection",
        "1 − x/L", ClauseMark.Memory);

    /// <summary>In place of x/L: all parts connected; I-shape by flanges two thirds of its depth wide or wider; by narrower flanges; by its web with four or more fasteners in line; single angle with four or more fasteners in line; with two or three.</summary>
    public static Clause ShearLagByCase { get; } = new(
        "shear lag by case", Standard.LoadAndResistanceFactorDesign, "Table 6.8.2.2-1", "in place of x/L: all parts connected; I-shape by flanges two thirds of its depth wide or wider; by narrower flanges; by its web with four or more fasteners in line; single angle with four or more fasteners in line; with two or three",
        "1.00; 0.90; 0.85; 0.70; 0.80; 0.60", ClauseMark.Memory);

    /// <summary>Net width of a chain of holes: less every hole, and for each change of line more by the square of the pitch s over four gauges g.</summary>
    public static Clause StaggeredHoles { get; } = new(
        "staggered holes", Standard.LoadAndResistanceFactorDesign, "6.8.3", "net width of a chain of holes: less every hole, and for each change of line more by the square of the pitch s over four gauges g",
        "W − Σ d + Σ s²/(4 g)", ClauseMark.Memory);

    /// <summary>Yield on the effective net section, at most the gross section.</summary>
    public static Clause TensionLfr { get; } = new(
        "LFR tension", Standard.StandardSpecifications, "10.9 and 10.18.4", "yield on the effective net section, at most the gross section",
        "Fy (An + 0.15 Ag)", ClauseMark.Memory)
    { Doubt = "the part of the gross section that is added, 0.15, depends on the steel" };

    /// <summary>Net section of the head through the pin hole, at least this many times the body; a lighter head governs in that proportion.</summary>
    public static Clause Eyebars { get; } = new(
        "eyebar heads", Standard.LoadAndResistanceFactorDesign, "6.8.6.2", "net section of the head through the pin hole, at least this many times the body; a lighter head governs in that proportion",
        "1.35", ClauseMark.Memory)
    { Doubt = "proportions differ between editions" };

    /// <summary>A rod is as strong as the lesser of its body and its section at the root of the thread.</summary>
    public static Clause ThreadedRods { get; } = new(
        "threaded rods", Standard.Practice, "", "a rod is as strong as the lesser of its body and its section at the root of the thread",
        "min(A, Aroot)", ClauseMark.Practice);

    /// <summary>Resistance of a column from its squash load Po and its elastic load Pe, above and below Pe/Po = 0.44; φ 0.95 from the 7th ed. (2014) on, 0.90 before.</summary>
    public static Clause ColumnLrfr { get; } = new(
        "LRFR columns", Standard.LoadAndResistanceFactorDesign, "6.9.4.1 and 6.5.4.2", "resistance of a column from its squash load Po and its elastic load Pe, above and below Pe/Po = 0.44; φ 0.95 from the 7th ed. (2014) on, 0.90 before",
        "0.95 × 0.658^(Po/Pe) Po; 0.95 × 0.877 Pe", ClauseMark.Memory);

    /// <summary>Strength of a column, by a parabola down to Pe = Po/2 and by Euler below.</summary>
    public static Clause ColumnLfr { get; } = new(
        "LFR columns", Standard.StandardSpecifications, "10.54.1.1", "strength of a column, by a parabola down to Pe = Po/2 and by Euler below",
        "0.85 Po (1 − Po/(4 Pe)); 0.85 Pe", ClauseMark.Memory);

    /// <summary>Allowable load of a column, by a parabola down to Pe = Po/2 and by Euler below, with the factor of safety at inventory and operating level.</summary>
    public static Clause ColumnAsr { get; } = new(
        "ASR columns", Standard.Manual, "Table 6B.5.2.1-1 and -2", "allowable load of a column, by a parabola down to Pe = Po/2 and by Euler below, with the factor of safety at inventory and operating level",
        "2.12; 1.70", ClauseMark.Memory);

    /// <summary>Allowable stress a − b (KL/r)² psi of unknown steel at inventory level up to KL/r = Cc, with E = 29,000,000 psi; a, b and Cc before 1905; 1905 to 1936; 1936 to 1963; after 1963.</summary>
    public static Clause ColumnAsrByYear { get; } = new(
        "ASR columns by year", Standard.Manual, "Table 6B.5.2.1-1", "allowable stress a − b (KL/r)² psi of unknown steel at inventory level up to KL/r = Cc, with E = 29,000,000 psi; a, b and Cc before 1905; 1905 to 1936; 1936 to 1963; after 1963",
        "12,260 − 0.28, 148.4; 14,150 − 0.37, 138.1; 15,570 − 0.45, 131.7; 16,980 − 0.53, 126.1; beyond 135,008,740/(KL/r)²", ClauseMark.Memory);

    /// <summary>K with ends riveted, bolted or welded; with pinned ends; of single angles.</summary>
    public static Clause EffectiveLength { get; } = new(
        "effective length of truss members", Standard.LoadAndResistanceFactorDesign, "4.6.2.5", "K with ends riveted, bolted or welded; with pinned ends; of single angles",
        "0.75; 0.875; 1.00", ClauseMark.Memory);

    /// <summary>KL/r of main and secondary members in compression; L/r of main members in tension with and without reversal and of secondary ones; eyebars, rods and cables excepted.</summary>
    public static Clause SlendernessLimits { get; } = new(
        "limits of slenderness", Standard.LoadAndResistanceFactorDesign, "6.8.4 and 6.9.3", "KL/r of main and secondary members in compression; L/r of main members in tension with and without reversal and of secondary ones; eyebars, rods and cables excepted",
        "120; 140; 140; 200; 240", ClauseMark.Memory);

    /// <summary>Slenderness of a built-up member whose parts are stitched at distance a, of parts with radius ri: connectors riveted or bolted snug; welded or bolted tight, with α = h/(2 ri).</summary>
    public static Clause BuiltUp { get; } = new(
        "built-up columns", Standard.LoadAndResistanceFactorDesign, "6.9.4.3.1", "slenderness of a built-up member whose parts are stitched at distance a, of parts with radius ri: connectors riveted or bolted snug; welded or bolted tight, with α = h/(2 ri)",
        "√((KL/r)² + (a/ri)²); √((KL/r)² + 0.82 α²/(1 + α²) (a/ri)²)", ClauseMark.Memory);

    /// <summary>A/ri of a part, at most this much of the slenderness of the member.</summary>
    public static Clause PartSlenderness { get; } = new(
        "slenderness of parts between connectors", Standard.LoadAndResistanceFactorDesign, "6.9.4.3.1", "a/ri of a part, at most this much of the slenderness of the member",
        "0.75", ClauseMark.Memory);

    /// <summary>Elastic load of a column on shear flexibility f = 1/(G A): one bar a panel of pitch a between legs b apart, bars d long of area Ad in all planes.</summary>
    public static Clause LacedColumns { get; } = new(
        "laced columns", Standard.ElasticStability, "ch. 2", "elastic load of a column on shear flexibility f = 1/(G A): one bar a panel of pitch a between legs b apart, bars d long of area Ad in all planes",
        "Pe/(1 + f Pe); d³/(a b² E Ad)", ClauseMark.Memory);

    /// <summary>Shear flexibility of battens at distance a between legs b apart: battens of Ib in all planes, legs of Ic each.</summary>
    public static Clause BattenedColumns { get; } = new(
        "battened columns", Standard.ElasticStability, "ch. 2", "shear flexibility of battens at distance a between legs b apart: battens of Ib in all planes, legs of Ic each",
        "a b/(12 E Ib) + a²/(24 E Ic)", ClauseMark.Memory);

    /// <summary>Lacing is to carry this part of the compression as a shear across the member.</summary>
    public static Clause LacingShear { get; } = new(
        "shear on lacing", Standard.Practice, "", "lacing is to carry this part of the compression as a shear across the member",
        "0.025", ClauseMark.Practice);

    /// <summary>Effective length of a bar of double lacing riveted where bars cross, over its length.</summary>
    public static Clause CrossedBars { get; } = new(
        "crossed lacing bars", Standard.Practice, "", "effective length of a bar of double lacing riveted where bars cross, over its length",
        "0.7", ClauseMark.Practice);

    /// <summary>Slenderness of a single angle of a planar truss by L/rx up to 80 and above, equal legs or connected by the longer leg; connected by the shorter leg add 4((bl/bs)² − 1) and take no less than 0.95 L/rz.</summary>
    public static Clause SingleAngles { get; } = new(
        "single angles", Standard.LoadAndResistanceFactorDesign, "6.9.4.4", "slenderness of a single angle of a planar truss by L/rx up to 80 and above, equal legs or connected by the longer leg; connected by the shorter leg add 4((bl/bs)² − 1) and take no less than 0.95 L/rz",
        "72 + 0.75 L/rx; 32 + 1.25 L/rx", ClauseMark.Memory);

    /// <summary>Axial force with moment, below and from 0.2 of the resistance; the moment of compression is amplified by 1/(1 − P/Pe).</summary>
    public static Clause CombinedLrfr { get; } = new(
        "LRFR force and moment", Standard.LoadAndResistanceFactorDesign, "6.8.2.3 and 6.9.2.2", "axial force with moment, below and from 0.2 of the resistance; the moment of compression is amplified by 1/(1 − P/Pe)",
        "P/(2 Pr) + M/Mr ≤ 1; P/Pr + (8/9) M/Mr ≤ 1", ClauseMark.Memory);

    /// <summary>Compression with moment, along the member and at its ends.</summary>
    public static Clause CombinedLfr { get; } = new(
        "LFR force and moment", Standard.StandardSpecifications, "10.54.2", "compression with moment, along the member and at its ends",
        "P/(0.85 A Fcr) + M/(Mu (1 − P/Pe)) ≤ 1; P/(0.85 A Fy) + M/Mu ≤ 1", ClauseMark.Memory);

    /// <summary>Stresses of force and moment, F'e being Euler's stress with the factor of safety of columns.</summary>
    public static Clause CombinedAsr { get; } = new(
        "ASR force and moment", Standard.StandardSpecifications, "10.36", "stresses of force and moment, F'e being Euler's stress with the factor of safety of columns",
        "fa/Fa + fb/((1 − fa/F'e) Fb) ≤ 1", ClauseMark.Memory);

    /// <summary>Tension with moment, no relief taken from straightening.</summary>
    public static Clause CombinedTension { get; } = new(
        "LFR and ASR tension and moment", Standard.Practice, "", "tension with moment, no relief taken from straightening",
        "P/Pr + M/Mr ≤ 1", ClauseMark.Practice);

    /// <summary>Moments are carried up to the yield of the outermost fibre only.</summary>
    public static Clause FirstYieldMoment { get; } = new(
        "moment at first yield", Standard.Practice, "", "moments are carried up to the yield of the outermost fibre only",
        "Fy S", ClauseMark.Practice);

    /// <summary>Resistance of cross-sections and net sections in tension by partial factors.</summary>
    public static Clause TensionEuropean { get; } = new(
        "European tension", Standard.EuropeanSteel, "6.2.3", "resistance of the cross-section and of the net section in tension, the partial factors given by the user",
        "A fy/γM0; 0.9 Anet fu/γM2", ClauseMark.Memory);

    /// <summary>Force and moment together by partial factors.</summary>
    public static Clause CombinedEuropean { get; } = new(
        "European force and moment", Standard.Practice, "", "force and amplified moment by a straight line of elastic strengths, on the safe side of EN 1993-1-1, 6.3.3",
        "N/NRd + M/((1 − N/Ncr) Wel fy/γM) ≤ 1", ClauseMark.Practice);

    /// <summary>All of them.</summary>
    internal static IReadOnlyList<Clause> All { get; } =
    [
        TensionLrfr, PunchedHoles, ShearLag, ShearLagByCase, StaggeredHoles, TensionLfr,
        Eyebars, ThreadedRods, ColumnLrfr, ColumnLfr, ColumnAsr, ColumnAsrByYear,
        EffectiveLength, SlendernessLimits, BuiltUp, PartSlenderness, LacedColumns, BattenedColumns,
        LacingShear, CrossedBars, SingleAngles, CombinedLrfr, CombinedLfr, CombinedAsr, CombinedTension,
        FirstYieldMoment, TensionEuropean, CombinedEuropean,
    ];
}
