namespace SpanRater;

/// <summary>
/// Published factors on the values of timber. Sources: National Design Specification (2018) and its Supplement, AASHTO LRFD 8.4.4 and 8.5.2.2;
/// load durations found, all else from memory.
/// </summary>
public static class TimberFactors
{
    /// <summary>Factor Cr on bending of repetitive members 2 to 4 in thick [-].</summary>
    public const double Repetitive = 1.15;

    /// <summary>Resistance factors by LRFR [-].</summary>
    public const double PhiBending = 0.85, PhiShear = 0.75, PhiCompression = 0.90, PhiTension = 0.80;

    /// <summary>Format and resistance factor on the modulus for stability by LRFR [-].</summary>
    public const double ModulusFormat = 1.76, PhiModulus = 0.85;

    /// <summary>Time effect Cλ for Strength I, and for Strength II, permits [-].</summary>
    public const double TimeEffect = 0.8, TimeEffectOfPermits = 1.0;

    /// <summary>Allowable stresses at operating level over those at inventory level [-].</summary>
    public const double Operating = 1.33;

    private const double Inch = 0.0254, Psi = PublishedStrength.PoundPerSquareInch, Dressed = 0.75 * Inch;

    /// <summary>Format factor CKF = 2.5/φ by LRFR [-].</summary>
    /// <param name="phi">Resistance factor, positive [-].</param>
    public static double Format(double phi) => 2.5 / phi;

    /// <summary>Format factor CKF = 2.1/0.90 of compression across the grain [-].</summary>
    public static double FormatAcross => 2.1 / 0.90;

    /// <summary>Factor CD of load duration, for allowable stresses [-].</summary>
    /// <param name="duration">The duration.</param>
    public static double Duration(LoadDuration duration) => duration switch
    {
        LoadDuration.Permanent => 0.9,
        LoadDuration.TenYears => 1.0,
        LoadDuration.TwoMonths => 1.15,
        LoadDuration.SevenDays => 1.25,
        LoadDuration.TenMinutes => 1.6,
        _ => 2.0,
    };

    /// <summary>Factors CM of wet service on each value.</summary>
    /// <param name="sizeClass">Size class.</param>
    /// <param name="bending">Bending value times size factor, which a small one of frees from the factor [Pa].</param>
    /// <param name="compression">Compression value along the grain, the same [Pa].</param>
    public static WetService Wet(TimberSizeClass sizeClass, double bending, double compression) => sizeClass switch
    {
        TimberSizeClass.Dimension => new(bending <= 1150 * Psi ? 1 : 0.85, 1.0, 0.97, 0.67, compression <= 750 * Psi ? 1 : 0.8, 0.9),
        TimberSizeClass.Timbers => new(1, 1, 1, 1, 1, 1),
        _ => new(1.0, 1.0, 1.0, 0.67, 0.91, 1.0),
    };

    /// <summary>Size factor CF on bending [-].</summary>
    /// <param name="sizeClass">Size class.</param>
    /// <param name="thickness">Thickness, the lesser side [m].</param>
    /// <param name="depth">Depth, the side in the plane of bending; of dimension timber the wider side [m].</param>
    public static double Size(TimberSizeClass sizeClass, double thickness, double depth)
    {
        Checked.Positive(thickness, nameof(thickness));
        Checked.Positive(depth, nameof(depth));
        if (sizeClass != TimberSizeClass.Dimension)
        {
            return depth > 12 * Inch ? Math.Pow(12 * Inch / depth, 1.0 / 9) : 1;
        }

        // Widths are nominal: of a size between two the smaller factor, that of the wider one. The table's first width holds for less too.
        bool thick = thickness > (4 * Inch) - Dressed;
        (double Width, double Factor)[] table = thick
            ? [(6, 1.3), (8, 1.3), (10, 1.2), (12, 1.1), (double.PositiveInfinity, 1.0)]
            : [(4, 1.5), (5, 1.4), (6, 1.3), (8, 1.2), (10, 1.1), (12, 1.0), (double.PositiveInfinity, 0.9)];
        return table.First(row => depth <= (row.Width * Inch) + 1e-6).Factor;
    }

    /// <summary>
    /// Size factor on tension and on compression along the grain [-]: 0.9 of timber 2 to 4 in thick and wider than 12 in, else 1. Larger factors that
    /// the tables have for narrow widths are left out, on the safe side.
    /// </summary>
    /// <param name="sizeClass">Size class.</param>
    /// <param name="width">The wider side [m].</param>
    public static double SizeAlong(TimberSizeClass sizeClass, double width)
    {
        Checked.Positive(width, nameof(width));
        return sizeClass == TimberSizeClass.Dimension && width > (12 * Inch) + 1e-6 ? 0.9 : 1;
    }
}

/// <summary>Factors CM of wet service [-].</summary>
/// <param name="Bending">On bending.</param>
/// <param name="Tension">On tension.</param>
/// <param name="Shear">On shear.</param>
/// <param name="CompressionAcross">On compression across the grain.</param>
/// <param name="Compression">On compression along the grain.</param>
/// <param name="Modulus">On both moduli.</param>
public sealed record WetService(double Bending, double Tension, double Shear, double CompressionAcross, double Compression, double Modulus);
