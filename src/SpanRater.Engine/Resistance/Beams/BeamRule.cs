namespace SpanRater;

/// <summary>How a method makes the strength of metal beams. Plastic moments are not used: first yield of the outermost fibre is the most.</summary>
public abstract class BeamRule
{
    /// <summary>Shear buckling coefficient of a web without stiffeners [-].</summary>
    private const double Unstiffened = 5;

    private BeamRule()
    {
    }

    /// <summary>LRFR. Source: AASHTO LRFD 6.10.8.2.3, 6.10.9 and 6.5.4.2, from memory.</summary>
    public static BeamRule LoadAndResistance { get; } = new LrfrRule();

    /// <summary>LFR. Source: AASHTO Standard Specifications 10.48, from memory.</summary>
    public static BeamRule LoadFactor { get; } = new LfrRule();

    /// <summary>ASR. Source: AASHTO Standard Specifications, Table 10.32.1A, and MBE, Table 6B.5.2.1, from memory.</summary>
    /// <param name="level">The level.</param>
    public static BeamRule Allowable(AllowableLevel level) => new AsrRule(level);

    /// <summary>The moment at first yield, flange held.</summary>
    /// <param name="strength">Strength of the metal.</param>
    /// <param name="modulus">Section modulus of the weaker fibre [m³].</param>
    public MetalBending Yielding(MetalStrength strength, double modulus)
    {
        ArgumentNullException.ThrowIfNull(strength);
        Checked.Positive(modulus, nameof(modulus));
        (double stress, IReadOnlyList<StrengthFactor> factors, Clause clause) = YieldOf(strength);
        return new MetalBending(BeamMode.FirstYield, modulus, stress, factors, [clause, BeamClauses.NoPlasticMoments]);
    }

    /// <summary>The moment at which the compression flange buckles sideways between the points that hold it, at most that of first yield.</summary>
    /// <param name="strength">Strength of the metal.</param>
    /// <param name="elastic">Its modulus of elasticity [Pa].</param>
    /// <param name="modulus">Section modulus of the weaker fibre [m³].</param>
    /// <param name="shape">Flange and web.</param>
    /// <param name="unbraced">Distance between the points that hold the flange, positive [m].</param>
    public MetalBending Lateral(MetalStrength strength, double elastic, double modulus, FlangeAndWeb shape, double unbraced)
    {
        ArgumentNullException.ThrowIfNull(strength);
        ArgumentNullException.ThrowIfNull(shape);
        Checked.Positive(elastic, nameof(elastic));
        Checked.Positive(modulus, nameof(modulus));
        Checked.Positive(unbraced, nameof(unbraced));
        (double plain, IReadOnlyList<StrengthFactor> factors, _) = YieldOf(strength);
        (double stress, LateralBuckling how, Clause clause) = LateralOf(strength, elastic, modulus, plain, shape, unbraced);
        return new MetalBending(BeamMode.LateralBuckling, modulus, Math.Min(plain, stress), factors, [clause]) { Lateral = how };
    }

    /// <summary>Shear of webs.</summary>
    /// <param name="strength">Strength of the metal.</param>
    /// <param name="elastic">Its modulus of elasticity [Pa].</param>
    /// <param name="webs">Depth and thickness of each web [m].</param>
    public WebShear Shear(MetalStrength strength, double elastic, IReadOnlyList<(double Depth, double Thickness)> webs)
    {
        ArgumentNullException.ThrowIfNull(strength);
        ArgumentNullException.ThrowIfNull(webs);
        (double stress, IReadOnlyList<StrengthFactor> factors, Clause clause) = ShearOf(strength);
        double area = webs.Sum(w => w.Depth * w.Thickness), carried = webs.Sum(w => w.Depth * w.Thickness * Buckling(w.Depth / w.Thickness, elastic, strength.Yield));
        return new WebShear(area, stress, carried / area, factors, [clause, BeamClauses.WebBuckling]);
    }

    /// <summary>Part C of the shear yield that a web without stiffeners reaches before it buckles [-]. Source: AASHTO LRFD 6.10.9.3.2 and Standard Specifications 10.48.8, from memory.</summary>
    /// <param name="slenderness">Depth over thickness [-].</param>
    /// <param name="elastic">Modulus of elasticity [Pa].</param>
    /// <param name="yield">Yield [Pa].</param>
    public static double Buckling(double slenderness, double elastic, double yield)
    {
        double root = Math.Sqrt(elastic * Unstiffened / yield);
        return slenderness <= 1.12 * root ? 1
            : slenderness <= 1.40 * root ? 1.12 * root / slenderness
            : 1.57 * root * root / (slenderness * slenderness);
    }

    private protected abstract (double Stress, IReadOnlyList<StrengthFactor> Factors, Clause Clause) YieldOf(MetalStrength strength);

    private protected abstract (double Stress, LateralBuckling How, Clause Clause) LateralOf(
        MetalStrength strength, double elastic, double modulus, double plain, FlangeAndWeb shape, double unbraced);

    private protected abstract (double Stress, IReadOnlyList<StrengthFactor> Factors, Clause Clause) ShearOf(MetalStrength strength);

    // 91,000,000 Cb (Iyc/L) √(0.772 J/Iyc + 9.87 (d/L)²) in pounds and inches is π E with E = 29,000,000 psi.
    private static double Elastic(double elastic, FlangeAndWeb shape, double unbraced) =>
        Math.PI * elastic * shape.FlangeInertia / unbraced
        * Math.Sqrt((0.772 * shape.Torsion / shape.FlangeInertia) + (Math.PI * Math.PI * shape.Depth * shape.Depth / (unbraced * unbraced)));

    private sealed class LrfrRule : BeamRule
    {
        private const double Residual = 0.7;

        private protected override (double Stress, IReadOnlyList<StrengthFactor> Factors, Clause Clause) YieldOf(MetalStrength strength) =>
            (strength.Yield, [new("φf", 1.00, BeamClauses.BendingLrfr)], BeamClauses.BendingLrfr);

        private protected override (double Stress, LateralBuckling How, Clause Clause) LateralOf(
            MetalStrength strength, double elastic, double modulus, double plain, FlangeAndWeb shape, double unbraced)
        {
            double yield = strength.Yield, reduced = Residual * yield, radius = shape.Radius;
            double shortest = radius * Math.Sqrt(elastic / yield), longest = Math.PI * radius * Math.Sqrt(elastic / reduced);
            double stress = unbraced <= shortest ? yield
                : unbraced <= longest ? yield * (1 - ((1 - Residual) * (unbraced - shortest) / (longest - shortest)))
                : Math.PI * Math.PI * elastic * radius * radius / (unbraced * unbraced);
            return (stress, new LateralBuckling(unbraced, plain, shape) { ShortLength = shortest, LongLength = longest }, BeamClauses.LateralLrfr);
        }

        private protected override (double Stress, IReadOnlyList<StrengthFactor> Factors, Clause Clause) ShearOf(MetalStrength strength) =>
            (0.58 * strength.Yield, [new("φv", 1.00, BeamClauses.ShearLrfr)], BeamClauses.ShearLrfr);
    }

    private sealed class LfrRule : BeamRule
    {
        private protected override (double Stress, IReadOnlyList<StrengthFactor> Factors, Clause Clause) YieldOf(MetalStrength strength) =>
            (strength.Yield, [], BeamClauses.BendingLfr);

        private protected override (double Stress, LateralBuckling How, Clause Clause) LateralOf(
            MetalStrength strength, double elastic, double modulus, double plain, FlangeAndWeb shape, double unbraced) =>
            (Elastic(elastic, shape, unbraced) / modulus, new LateralBuckling(unbraced, plain, shape), BeamClauses.LateralLfr);

        private protected override (double Stress, IReadOnlyList<StrengthFactor> Factors, Clause Clause) ShearOf(MetalStrength strength) =>
            (0.58 * strength.Yield, [], BeamClauses.ShearLfr);
    }

    private sealed class AsrRule(AllowableLevel level) : BeamRule
    {
        private protected override (double Stress, IReadOnlyList<StrengthFactor> Factors, Clause Clause) YieldOf(MetalStrength strength)
        {
            AllowableStress allowable = strength.AllowableGross(level);
            return (allowable.Basis, allowable.Factors, allowable.Clause);
        }

        // A factor of safety 1/0.55 on the elastic moment at inventory level, and as much less at operating level as the plain stress is more.
        private protected override (double Stress, LateralBuckling How, Clause Clause) LateralOf(
            MetalStrength strength, double elastic, double modulus, double plain, FlangeAndWeb shape, double unbraced)
        {
            double safety = level == AllowableLevel.Inventory ? 0.55 : 0.75, own = strength.AllowableGross(level).Factor?.Value ?? 1;
            return (safety * Elastic(elastic, shape, unbraced) / modulus / own, new LateralBuckling(unbraced, plain, shape), BeamClauses.LateralAsr);
        }

        private protected override (double Stress, IReadOnlyList<StrengthFactor> Factors, Clause Clause) ShearOf(MetalStrength strength) =>
            (strength.Yield, [new("part allowed", level == AllowableLevel.Inventory ? 0.33 : 0.45, BeamClauses.ShearAsr)], BeamClauses.ShearAsr);
    }
}
