namespace SpanRater;

/// <summary>How well a detail of steel bears stress that comes again and again. Which category a detail is of is never guessed.</summary>
/// <param name="Name">A, B, B', C, C', D, E or E'.</param>
/// <param name="Constant">Constant A of N = A/Δσ³ [Pa³].</param>
/// <param name="Threshold">Threshold of a stress range that never changes [Pa].</param>
public sealed record DetailCategory(string Name, double Constant, double Threshold)
{
    private const double Ksi = 1000 * PublishedStrength.PoundPerSquareInch;

    /// <summary>
    /// Part of the threshold up to which a stress range may come without end: the vehicle stands for the whole traffic, whose heaviest may bring
    /// twice as much [-].
    /// </summary>
    public const double EndlessPart = 0.5;

    /// <summary>The categories, the best first. Sources: AASHTO LRFD, 8th ed. (2017), Tables 6.6.1.2.5-1 and -3, from memory.</summary>
    public static IReadOnlyList<DetailCategory> All { get; } =
    [
        Of("A", 250, 24), Of("B", 120, 16), Of("B'", 61, 12), Of("C", 44, 10), Of("C'", 44, 12), Of("D", 22, 7), Of("E", 11, 4.5), Of("E'", 3.9, 2.6),
    ];

    /// <summary>The stress range up to which there is no end of cycles [Pa].</summary>
    public double EndlessRange => EndlessPart * Threshold;

    /// <summary>The category of that name, whatever its case, or null. A shell takes an apostrophe for its own: "B prime" is B'.</summary>
    /// <param name="name">Its name.</param>
    public static DetailCategory? Find(string name)
    {
        ArgumentNullException.ThrowIfNull(name);
        string plain = name.Trim().Replace('’', '\'').Replace('′', '\'').Replace(" prime", "'", StringComparison.OrdinalIgnoreCase);
        return All.FirstOrDefault(c => string.Equals(c.Name, plain, StringComparison.OrdinalIgnoreCase));
    }

    /// <summary>How often a stress range may come; null where there is no end.</summary>
    /// <param name="range">Stress range, not negative [Pa].</param>
    public double? AllowedCycles(double range) => range <= EndlessRange ? null : Constant / (range * range * range);

    private static DetailCategory Of(string name, double constant, double threshold) => new(name, constant * 1e8 * Ksi * Ksi * Ksi, threshold * Ksi);
}
