namespace SpanRater;

/// <summary>Clauses of what recorded trucks tell.</summary>
public static class TrafficClauses
{
    /// <summary>Live-load factor by the trucks of a site, one lane and more.</summary>
    public static Clause SiteFactor { get; } = new(
        "site live-load factor", Standard.Manual, "6A.4.4.2.3b", "live-load factor of legal loads by the trucks of a site, W* and σ* of the heaviest fifth in kip, for one lane loaded and for more; at least the values behind; for information, in no rating",
        "1.80 (W* + t σ*)/120; 1.80; 1.80 (2 W* + t 1.41 σ*)/240; 1.30", ClauseMark.Memory);

    /// <summary>Fractile t by trucks a day.</summary>
    public static Clause SiteFractiles { get; } = new(
        "site fractiles", Standard.Manual, "6A.4.4.2.3b", "fractile t for 100, 1,000 and 5,000 trucks a day, one lane loaded, then two or more; straight between, at the ends as they are",
        "3.9; 4.5; 4.9; 1.5; 3.3; 4.3", ClauseMark.Memory);

    /// <summary>Effective stress range of varying ranges.</summary>
    public static Clause EffectiveRange { get; } = new(
        "effective stress range", Standard.Manual, "7.2.2", "stress range that stands for varying ones of the same number: the cube root of the mean of their cubes",
        "(Σ Δσ³/n)^(1/3)", ClauseMark.Memory);

    /// <summary>All of them.</summary>
    public static IReadOnlyList<Clause> All { get; } = [SiteFactor, SiteFractiles, EffectiveRange];
}
