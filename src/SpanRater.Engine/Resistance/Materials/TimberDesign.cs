namespace SpanRater;

/// <summary>A value of timber with the factors of its use and of the method.</summary>
/// <param name="Reference">Value before any adjustment [Pa].</param>
/// <param name="Factors">Factors on it; those that are 1 are left out.</param>
public sealed record AdjustedValue(double Reference, IReadOnlyList<StrengthFactor> Factors)
{
    /// <summary>The adjusted value [Pa].</summary>
    public double Value => Factors.Aggregate(Reference, (value, factor) => value * factor.Value);
}

/// <summary>What a timber of one section carries by one method, as stresses.</summary>
public sealed record TimberDesign
{
    private TimberDesign(TimberMaterial material, Factored whole)
    {
        Material = material;
        Whole = whole;
    }

    /// <summary>The timber.</summary>
    public TimberMaterial Material { get; }

    /// <summary>Tension along the grain.</summary>
    public required AdjustedValue Tension { get; init; }

    /// <summary>Compression along the grain, before the loss to buckling.</summary>
    public required AdjustedValue Compression { get; init; }

    /// <summary>Bending, before any loss to buckling sideways.</summary>
    public required AdjustedValue Bending { get; init; }

    /// <summary>Shear along the grain.</summary>
    public required AdjustedValue Shear { get; init; }

    /// <summary>Compression across the grain.</summary>
    public required AdjustedValue CompressionAcross { get; init; }

    /// <summary>Modulus for stability.</summary>
    public required AdjustedValue LeastModulus { get; init; }

    /// <summary>Factors of the method on the moment that the timber carries.</summary>
    public IReadOnlyList<StrengthFactor> BendingFactors => Whole.Bending;

    /// <summary>Factors of the method on the shear that the timber carries.</summary>
    public IReadOnlyList<StrengthFactor> ShearFactors => Whole.Shear;

    /// <summary>Factors of the method on the pressure across the grain.</summary>
    public IReadOnlyList<StrengthFactor> AcrossFactors => Whole.Across;

    /// <summary>Factors of the level on any strength.</summary>
    public IReadOnlyList<StrengthFactor> LevelFactors => Whole.Level;

    /// <summary>Factors of the method on a strength as a whole, by what carries it: resistance factors by LRFR, 1.33 at operating level.</summary>
    internal Factored Whole { get; }

    /// <summary>Allowable stresses by ASR. Source: National Design Specification (2018), from memory; AASHTO MBE 6B.5.2.7, from memory.</summary>
    /// <param name="material">The timber.</param>
    /// <param name="thickness">The side across the plane of bending; of dimension timber the lesser side [m].</param>
    /// <param name="depth">The side in the plane of bending; of dimension timber the wider side [m].</param>
    /// <param name="level">The level; at operating level a strength as a whole is 1.33 times that at inventory level.</param>
    public static TimberDesign Allowable(TimberMaterial material, double thickness, double depth, AllowableLevel level)
    {
        ArgumentNullException.ThrowIfNull(material);
        StrengthFactor duration = new("CD", TimberFactors.Duration(material.Use.Duration), TimberClauses.Duration);
        IReadOnlyList<StrengthFactor> whole = level == AllowableLevel.Operating ? [new("operating level", TimberFactors.Operating, TimberClauses.OperatingTimber)] : [];
        return Of(material, thickness, depth, (_, _) => [duration], [], [], new Factored([], [], [], whole) { Shear = [], Across = [] });
    }

    /// <summary>Resistances by LRFR. Source: AASHTO LRFD 8.4.4 and 8.5.2.2, from memory; the modulus for stability by National Design Specification, App. N, from memory.</summary>
    /// <param name="material">The timber; its load duration has no part in this.</param>
    /// <param name="thickness">The side across the plane of bending; of dimension timber the lesser side [m].</param>
    /// <param name="depth">The side in the plane of bending; of dimension timber the wider side [m].</param>
    /// <param name="isPermit">Whether the load is a permit vehicle, rated as Strength II.</param>
    public static TimberDesign LoadAndResistance(TimberMaterial material, double thickness, double depth, bool isPermit)
    {
        ArgumentNullException.ThrowIfNull(material);
        StrengthFactor time = new("Cλ", isPermit ? TimberFactors.TimeEffectOfPermits : TimberFactors.TimeEffect, TimberClauses.TimeEffect);
        StrengthFactor Phi(double value) => new("φ", value, TimberClauses.LrfrTimber);
        StrengthFactor Format(double value) => new("CKF", value, TimberClauses.LrfrTimber);
        return Of(
            material,
            thickness,
            depth,
            (phi, isAcross) => [Format(isAcross ? TimberFactors.FormatAcross : TimberFactors.Format(phi)), time],
            [Format(TimberFactors.FormatAcross)],
            [new("KF", TimberFactors.ModulusFormat, TimberClauses.LrfrModulus), new("φs", TimberFactors.PhiModulus, TimberClauses.LrfrModulus)],
            new Factored([Phi(TimberFactors.PhiTension)], [Phi(TimberFactors.PhiCompression)], [Phi(TimberFactors.PhiBending)], []) { Shear = [Phi(TimberFactors.PhiShear)], Across = [Phi(TimberFactors.PhiCompression)] });
    }

    private static TimberDesign Of(
        TimberMaterial material,
        double thickness,
        double depth,
        Func<double, bool, IReadOnlyList<StrengthFactor>> ofMethod,
        IReadOnlyList<StrengthFactor> across,
        IReadOnlyList<StrengthFactor> modulus,
        Factored whole)
    {
        TimberDesignValues values = material.Values;
        bool isDimension = values.SizeClass == TimberSizeClass.Dimension;
        bool isPublished = material.Origin is StrengthOrigin.ByGrade;
        double size = isPublished ? TimberFactors.Size(values.SizeClass, thickness, depth) : 1;
        double along = isPublished ? TimberFactors.SizeAlong(values.SizeClass, Math.Max(thickness, depth)) : 1;
        WetService wet = isPublished && material.Use.IsWet
            ? TimberFactors.Wet(values.SizeClass, values.Bending * size, values.Compression * along)
            : new WetService(1, 1, 1, 1, 1, 1);
        double repetitive = material.Use.IsRepetitive && isPublished && isDimension ? TimberFactors.Repetitive : 1;
        Clause wetClause = isDimension ? TimberClauses.WetDimension : TimberClauses.WetTimbers;
        Clause sizeClause = isDimension ? TimberClauses.SizeDimension : TimberClauses.SizeTimbers;

        AdjustedValue Adjusted(double reference, IReadOnlyList<StrengthFactor> method, double service, double sizeFactor = 1, double cr = 1, Clause? ofSize = null) => new(
            reference,
            [
                .. method,
                .. ((StrengthFactor[])[new("CM", service, wetClause), new("CF", sizeFactor, ofSize ?? sizeClause), new("Cr", cr, TimberClauses.Repetitive)]).Where(f => f.Value != 1),
            ]);

        return new TimberDesign(material, whole)
        {
            Tension = Adjusted(values.Tension, ofMethod(TimberFactors.PhiTension, false), wet.Tension, along, ofSize: TimberClauses.SizeDimensionAlong),
            Compression = Adjusted(values.Compression, ofMethod(TimberFactors.PhiCompression, false), wet.Compression, along, ofSize: TimberClauses.SizeDimensionAlong),
            Bending = Adjusted(values.Bending, ofMethod(TimberFactors.PhiBending, false), wet.Bending, size, repetitive),
            Shear = Adjusted(values.Shear, ofMethod(TimberFactors.PhiShear, false), wet.Shear),
            CompressionAcross = Adjusted(values.CompressionAcross, across, wet.CompressionAcross),
            LeastModulus = Adjusted(values.LeastModulus, modulus, wet.Modulus),
        };
    }

    /// <summary>Factors on a strength as a whole.</summary>
    internal sealed record Factored(
        IReadOnlyList<StrengthFactor> Tension, IReadOnlyList<StrengthFactor> Compression, IReadOnlyList<StrengthFactor> Bending, IReadOnlyList<StrengthFactor> Level)
    {
        public required IReadOnlyList<StrengthFactor> Shear { get; init; }

        public required IReadOnlyList<StrengthFactor> Across { get; init; }
    }
}
