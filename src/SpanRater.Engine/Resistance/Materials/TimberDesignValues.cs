namespace SpanRater;

/// <summary>Values of timber before any adjustment.</summary>
/// <param name="Species">Species; empty where the values are given.</param>
/// <param name="SizeClass">Size class.</param>
/// <param name="Grade">Grade; empty where the values are given.</param>
/// <param name="Bending">Bending Fb [Pa].</param>
/// <param name="Tension">Tension along the grain Ft [Pa].</param>
/// <param name="Shear">Shear along the grain Fv [Pa].</param>
/// <param name="CompressionAcross">Compression across the grain [Pa].</param>
/// <param name="Compression">Compression along the grain Fc [Pa].</param>
/// <param name="Modulus">Modulus of elasticity E [Pa].</param>
/// <param name="LeastModulus">Modulus for stability Emin [Pa].</param>
public sealed record TimberDesignValues(
    string Species,
    TimberSizeClass SizeClass,
    string Grade,
    double Bending,
    double Tension,
    double Shear,
    double CompressionAcross,
    double Compression,
    double Modulus,
    double LeastModulus)
{
    private const string Fir = "Douglas Fir-Larch", Pine = "Southern Pine", Select = "Select Structural", One = "No.1", Two = "No.2";

    /// <summary>The published rows. Source: National Design Specification, Supplement (2018), Tables 4A and 4D, from memory.</summary>
    public static IReadOnlyList<TimberDesignValues> Published { get; } =
    [
        Psi(Fir, TimberSizeClass.Dimension, Select, 1500, 1000, 180, 625, 1700, 1_900_000, 690_000),
        Psi(Fir, TimberSizeClass.Dimension, One, 1000, 675, 180, 625, 1500, 1_700_000, 620_000),
        Psi(Fir, TimberSizeClass.Dimension, Two, 900, 575, 180, 625, 1350, 1_600_000, 580_000),
        Psi(Fir, TimberSizeClass.BeamsAndStringers, Select, 1600, 950, 170, 625, 1100, 1_600_000, 580_000),
        Psi(Fir, TimberSizeClass.BeamsAndStringers, One, 1350, 675, 170, 625, 925, 1_600_000, 580_000),
        Psi(Fir, TimberSizeClass.BeamsAndStringers, Two, 875, 425, 170, 625, 600, 1_300_000, 470_000),
        Psi(Fir, TimberSizeClass.PostsAndTimbers, Select, 1500, 1000, 170, 625, 1150, 1_600_000, 580_000),
        Psi(Fir, TimberSizeClass.PostsAndTimbers, One, 1200, 825, 170, 625, 1000, 1_600_000, 580_000),
        Psi(Fir, TimberSizeClass.PostsAndTimbers, Two, 750, 475, 170, 625, 700, 1_300_000, 470_000),
        Psi(Pine, TimberSizeClass.Timbers, Select, 1500, 1000, 165, 375, 950, 1_500_000, 550_000),
        Psi(Pine, TimberSizeClass.Timbers, One, 1350, 900, 165, 375, 825, 1_500_000, 550_000),
        Psi(Pine, TimberSizeClass.Timbers, Two, 850, 550, 165, 375, 525, 1_200_000, 440_000),
    ];

    /// <summary>The published row of a species, size class and grade, or null.</summary>
    /// <param name="species">Species, in any case.</param>
    /// <param name="sizeClass">Size class.</param>
    /// <param name="grade">Grade, in any case.</param>
    public static TimberDesignValues? Find(string species, TimberSizeClass sizeClass, string grade) => Published.FirstOrDefault(r =>
        string.Equals(r.Species, species, StringComparison.OrdinalIgnoreCase) && r.SizeClass == sizeClass && string.Equals(r.Grade, grade, StringComparison.OrdinalIgnoreCase));

    private static TimberDesignValues Psi(
        string species, TimberSizeClass sizeClass, string grade, double fb, double ft, double fv, double across, double fc, double e, double eMin)
    {
        const double psi = PublishedStrength.PoundPerSquareInch;
        return new(species, sizeClass, grade, fb * psi, ft * psi, fv * psi, across * psi, fc * psi, e * psi, eMin * psi);
    }
}
