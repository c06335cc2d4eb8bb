namespace SpanRater;

/// <summary>Clauses of the fatigue note.</summary>
public static class FatigueClauses
{
    /// <summary>Constant A of the detail categories A, B, B', C, C', D, E, E'.</summary>
    public static Clause Constants { get; } = new(
        "fatigue constants", Standard.LoadAndResistanceFactorDesign, "Table 6.6.1.2.5-1", "constant A of the detail categories A, B, B', C, C', D, E, E', in 10⁸ ksi³",
        "250; 120; 61; 44; 44; 22; 11; 3.9", ClauseMark.Memory);

    /// <summary>Threshold of the detail categories A, B, B', C, C', D, E, E'.</summary>
    public static Clause Thresholds { get; } = new(
        "fatigue thresholds", Standard.LoadAndResistanceFactorDesign, "Table 6.6.1.2.5-3", "threshold of the detail categories A, B, B', C, C', D, E, E', in ksi",
        "24; 16; 12; 10; 12; 7; 4.5; 2.6", ClauseMark.Memory);

    /// <summary>Cycles that a stress range may come, and half of the threshold, below which there is no end.</summary>
    public static Clause Life { get; } = new(
        "fatigue life", Standard.LoadAndResistanceFactorDesign, "6.6.1.2.5", "cycles that a stress range may come; no end to them at half of the threshold, since the heaviest in the traffic may bring twice the range that is reckoned with",
        "N = A/Δσ³; Δσ ≤ 0.5 of the threshold", ClauseMark.Memory)
    { Doubt = "the half of the threshold stood in older editions; later ones put a factor on the truck in its place" };

    /// <summary>Years by days of 365, and cycles a passage of trusses and of girders up to 40 ft.</summary>
    public static Clause Passages { get; } = new(
        "cycles a passage", Standard.LoadAndResistanceFactorDesign, "Table 6.6.1.2.5-2", "cycles a passage, of trusses and of girders over 40 ft; of girders up to 40 ft, as which members are counted whose influence line is no longer",
        "1.0; 2.0", ClauseMark.Memory);

    /// <summary>Fatigue is looked at only where the member comes under tension.</summary>
    public static Clause TensionOnly { get; } = new(
        "fatigue in tension", Standard.LoadAndResistanceFactorDesign, "6.6.1.2.1", "fatigue is looked at only where the member comes under tension, here by dead load and the vehicle with its dynamic allowance",
        "D + L (1 + IM) > 0", ClauseMark.Memory)
    { Doubt = "the factor on the truck differs between editions; the program takes the vehicle as it is" };

    /// <summary>Dynamic allowance of fatigue.</summary>
    public static Clause Impact { get; } = new(
        "fatigue dynamic allowance", Standard.LoadAndResistanceFactorDesign, "Table 3.6.2.1-1", "dynamic allowance of fatigue; one lane is loaded, without presence factor",
        "0.15", ClauseMark.Memory);

    /// <summary>Detail categories of what is found on old trusses.</summary>
    public static Clause Details { get; } = new(
        "detail categories", Standard.LoadAndResistanceFactorDesign, "Table 6.6.1.2.3-1", "riveted connections on the net section; eyebar heads and pin plates on the net section",
        "D; E", ClauseMark.Memory);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Clause> All { get; } = [Constants, Thresholds, Life, Passages, TensionOnly, Impact, Details];
}
