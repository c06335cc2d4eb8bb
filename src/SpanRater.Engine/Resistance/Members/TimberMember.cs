namespace SpanRater;

/// <summary>Strength of a timber along the grain.</summary>
/// <param name="Mode">Tension or compression.</param>
/// <param name="Area">Area that counts [m²].</param>
/// <param name="Stress">Adjusted stress.</param>
/// <param name="StabilityFactor">Factor CP of buckling; 1 in tension [-].</param>
/// <param name="Slenderness">Larger le/d; 0 in tension [-].</param>
/// <param name="Factors">Factors on the strength as a whole.</param>
/// <param name="Clauses">What it rests on.</param>
public sealed record TimberStrength(
    MemberMode Mode, double Area, AdjustedValue Stress, double StabilityFactor, double Slenderness, IReadOnlyList<StrengthFactor> Factors, IReadOnlyList<Clause> Clauses)
    : MemberStrength(Mode, Area * Stress.Value * StabilityFactor, Factors, Clauses)
{
    /// <summary>Slenderness above which the rule does not hold [-].</summary>
    public const double MostSlender = 50;

    /// <summary>Compression along the grain before the loss to buckling, resistance factor in it, Fc* [Pa]; null in tension.</summary>
    public double? ColumnStress { get; init; }

    /// <summary>Euler's stress 0.822 E'min/(le/d)² [Pa]; null in tension.</summary>
    public double? EulerStress { get; init; }

    /// <summary>Whether it is more slender than the rule holds for: the strength is then not to be used.</summary>
    public bool IsTooSlender => Slenderness > MostSlender;
}

/// <summary>Strength of rectangular timbers by allowable stresses and by LRFR; by LFR there is no rule. Dimensions are those that are left, decay taken off. Source: National Design Specification (2018), 3.7 and 3.9, from memory.</summary>
public static class TimberMember
{
    /// <summary>Factor c of sawn timber in CP [-].</summary>
    public const double Sawn = 0.8;

    /// <summary>What is missing for a rating by load factors: a rule for timber.</summary>
    public static MissingDatum NoLoadFactorRule { get; } = new MissingDatum.TimberRule("LFR");

    /// <summary>Strength in tension.</summary>
    /// <param name="design">Adjusted stresses.</param>
    /// <param name="netArea">Net area [m²].</param>
    public static TimberStrength Tension(TimberDesign design, double netArea)
    {
        ArgumentNullException.ThrowIfNull(design);
        Checked.Positive(netArea, nameof(netArea));
        return new(MemberMode.TimberTension, netArea, design.Tension, 1, 0, [.. design.Whole.Tension, .. design.Whole.Level], ClausesOf(design.Tension, design.Whole.Tension));
    }

    /// <summary>Factor CP of buckling [-].</summary>
    /// <param name="compression">Compression along the grain before it, Fc* [Pa].</param>
    /// <param name="leastModulus">Modulus for stability, adjusted [Pa].</param>
    /// <param name="slenderness">Larger le/d [-].</param>
    public static double Stability(double compression, double leastModulus, double slenderness)
    {
        Checked.Positive(compression, nameof(compression));
        double ratio = Euler(leastModulus, slenderness) / compression, half = (1 + ratio) / (2 * Sawn);
        return half - Math.Sqrt((half * half) - (ratio / Sawn));
    }

    /// <summary>Strength in compression.</summary>
    /// <param name="design">Adjusted stresses.</param>
    /// <param name="thickness">One side [m].</param>
    /// <param name="depth">The other side [m].</param>
    /// <param name="lengthAcross">Effective length for buckling in the direction of the thickness [m].</param>
    /// <param name="lengthAlong">Effective length for buckling in the direction of the depth [m].</param>
    public static TimberStrength Compression(TimberDesign design, double thickness, double depth, double lengthAcross, double lengthAlong)
    {
        ArgumentNullException.ThrowIfNull(design);
        Checked.Positive(thickness, nameof(thickness));
        Checked.Positive(depth, nameof(depth));
        Checked.Positive(lengthAcross, nameof(lengthAcross));
        Checked.Positive(lengthAlong, nameof(lengthAlong));
        double slenderness = Math.Max(lengthAcross / thickness, lengthAlong / depth);
        double before = Phi(design.Compression.Value, design.Whole.Compression);
        double stability = Stability(before, design.LeastModulus.Value, slenderness);
        return new(
            MemberMode.TimberCompression,
            thickness * depth,
            design.Compression,
            stability,
            slenderness,
            [.. design.Whole.Compression, .. design.Whole.Level],
            [.. ClausesOf(design.Compression, design.Whole.Compression), TimberClauses.TimberColumns])
        {
            ColumnStress = before,
            EulerStress = Euler(design.LeastModulus.Value, slenderness),
        };
    }

    /// <summary>Strength in compression at an eccentricity in the direction of the depth, or with a bow that way.</summary>
    /// <param name="plain">Strength without it.</param>
    /// <param name="design">Adjusted stresses.</param>
    /// <param name="thickness">The side across the plane of bending [m].</param>
    /// <param name="depth">The side in the plane of bending [m].</param>
    /// <param name="lengthAlong">Effective length for buckling in that plane [m].</param>
    /// <param name="beamStability">Factor CL of buckling sideways in bending; 1 where the depth is not above twice the thickness [-].</param>
    /// <param name="eccentricity">Eccentricity or bow, not negative [m].</param>
    public static CombinedStrength CompressionAndMoment(
        TimberStrength plain, TimberDesign design, double thickness, double depth, double lengthAlong, double beamStability, double eccentricity)
    {
        ArgumentNullException.ThrowIfNull(plain);
        ArgumentNullException.ThrowIfNull(design);
        Checked.NotNegative(eccentricity, nameof(eccentricity));
        double axial = Phi(plain.Nominal, design.Whole.Compression), moment = MomentStrength(design, thickness, depth, beamStability);
        double critical = Euler(design.LeastModulus.Value, lengthAlong / depth) * thickness * depth;
        double force = eccentricity == 0
            ? axial
            : ForceAtInteraction.Find(p => ((((p / axial) * (p / axial)) - 1) * (1 - (p / critical))) + (p * eccentricity / moment), Math.Min(axial, critical));
        return new(plain, eccentricity, moment, critical, force, design.Whole.Level, [.. plain.Clauses, TimberClauses.TimberCompressionBending]);
    }

    /// <summary>Strength in tension at an eccentricity in the direction of the depth, or with a bow that way.</summary>
    /// <param name="plain">Strength without it.</param>
    /// <param name="design">Adjusted stresses.</param>
    /// <param name="thickness">The side across the plane of bending [m].</param>
    /// <param name="depth">The side in the plane of bending [m].</param>
    /// <param name="beamStability">Factor CL of buckling sideways in bending, for the side that bending presses [-].</param>
    /// <param name="eccentricity">Eccentricity or bow, not negative [m].</param>
    public static CombinedStrength TensionAndMoment(TimberStrength plain, TimberDesign design, double thickness, double depth, double beamStability, double eccentricity)
    {
        ArgumentNullException.ThrowIfNull(plain);
        ArgumentNullException.ThrowIfNull(design);
        Checked.NotNegative(eccentricity, nameof(eccentricity));
        double axial = Phi(plain.Nominal, design.Whole.Tension), free = MomentStrength(design, thickness, depth, 1), held = MomentStrength(design, thickness, depth, beamStability);
        double force = eccentricity == 0 ? axial : 1 / ((1 / axial) + (eccentricity / free));
        double pressed = eccentricity - (SectionModulus(thickness, depth) / (thickness * depth));
        return new(plain, eccentricity, free, null, pressed > 0 ? Math.Min(force, held / pressed) : force, design.Whole.Level, [.. plain.Clauses, TimberClauses.TimberTensionBending]);
    }

    /// <summary>Moment that a timber carries alone, the method's factors in it but for that of operating level [N·m].</summary>
    /// <param name="design">Adjusted stresses.</param>
    /// <param name="thickness">The side across the plane of bending [m].</param>
    /// <param name="depth">The side in the plane of bending [m].</param>
    /// <param name="beamStability">Factor CL of buckling sideways [-].</param>
    public static double MomentStrength(TimberDesign design, double thickness, double depth, double beamStability)
    {
        ArgumentNullException.ThrowIfNull(design);
        Checked.Positive(thickness, nameof(thickness));
        Checked.Positive(depth, nameof(depth));
        Checked.Part(beamStability, nameof(beamStability));
        return Phi(design.Bending.Value, design.Whole.Bending) * beamStability * SectionModulus(thickness, depth);
    }

    private static double SectionModulus(double thickness, double depth) => thickness * depth * depth / 6;

    private static double Euler(double leastModulus, double slenderness)
    {
        Checked.Positive(leastModulus, nameof(leastModulus));
        Checked.Positive(slenderness, nameof(slenderness));
        return 0.822 * leastModulus / (slenderness * slenderness);
    }

    private static double Phi(double value, IReadOnlyList<StrengthFactor> factors) => factors.Aggregate(value, (v, f) => v * f.Value);

    private static Clause[] ClausesOf(AdjustedValue stress, IReadOnlyList<StrengthFactor> whole) => [.. stress.Factors.Concat(whole).Select(f => f.Clause).Distinct()];
}
