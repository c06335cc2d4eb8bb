namespace SpanRater;

/// <summary>
/// How a method makes the strength of a column from its squash force Po = A Fy and its elastic critical force Pe. Pe may be Euler's or, for laced columns
/// and chords on elastic frames, what takes its place.
/// </summary>
public abstract class ColumnCurve
{
    private ColumnCurve()
    {
    }

    /// <summary>Resistance by LRFR. Source: AASHTO LRFD 6.9.4.1 and 6.5.4.2, from memory.</summary>
    public static ColumnCurve LoadAndResistance { get; } = new LrfrCurve();

    /// <summary>Strength by LFR. Source: AASHTO Standard Specifications 10.54.1.1, from memory.</summary>
    public static ColumnCurve LoadFactor { get; } = new ParabolaCurve("strength of columns", 0.85, ResistanceClauses.ColumnLfr);

    /// <summary>Allowable force by ASR from any yield. Source: AASHTO MBE, Table 6B.5.2.1, from memory.</summary>
    /// <param name="level">The level.</param>
    public static ColumnCurve Allowable(AllowableLevel level) => new ParabolaCurve("1/factor of safety", 1 / SafetyFactor(level), ResistanceClauses.ColumnAsr);

    /// <summary>Allowable force by ASR of a metal: where its strength is by year, and a stress is printed for the level, the printed one.</summary>
    /// <param name="strength">Its strength.</param>
    /// <param name="level">The level.</param>
    public static ColumnCurve Allowable(MetalStrength strength, AllowableLevel level)
    {
        ArgumentNullException.ThrowIfNull(strength);
        return strength.Row?.AllowableColumn is { } printed && level == AllowableLevel.Inventory ? new PrintedCurve(printed) : Allowable(level);
    }

    /// <summary>Resistance by partial factors that the user gives. Source: EN 1993-1-1:2005, 6.3.1, from memory.</summary>
    /// <param name="factors">The factors.</param>
    public static ColumnCurve Partial(PartialResistance factors) => new PartialCurve(factors);

    /// <summary>Factor of safety of columns by ASR [-].</summary>
    /// <param name="level">The level.</param>
    public static double SafetyFactor(AllowableLevel level) => level == AllowableLevel.Inventory ? 2.12 : 1.70;

    /// <summary>The strength of a column.</summary>
    /// <param name="area">Area A [m²].</param>
    /// <param name="yield">Yield Fy [Pa].</param>
    /// <param name="elasticForce">Elastic critical force Pe [N].</param>
    public ColumnStrength Strength(double area, double yield, double elasticForce)
    {
        Checked.Positive(area, nameof(area));
        Checked.Positive(yield, nameof(yield));
        Checked.Positive(elasticForce, nameof(elasticForce));
        return Of(area, yield, elasticForce);
    }

    private protected abstract ColumnStrength Of(double area, double yield, double elasticForce);

    private sealed class LrfrCurve : ColumnCurve
    {
        private static readonly StrengthFactor[] Phi = [new("φc", 0.95, ResistanceClauses.ColumnLrfr)];

        private protected override ColumnStrength Of(double area, double yield, double elasticForce)
        {
            double squash = area * yield;
            bool inelastic = elasticForce >= 0.44 * squash;
            double nominal = inelastic ? Math.Pow(0.658, squash / elasticForce) * squash : 0.877 * elasticForce;
            return new(area, yield, elasticForce, inelastic ? ColumnRange.Inelastic : ColumnRange.Elastic, nominal, Phi, [ResistanceClauses.ColumnLrfr]);
        }
    }

    private sealed class PartialCurve(PartialResistance factors) : ColumnCurve
    {
        private readonly StrengthFactor[] gamma = [new("1/γM1", 1 / factors.Instability, FactorClauses.EuropeanBuckling)];

        private protected override ColumnStrength Of(double area, double yield, double elasticForce)
        {
            double squash = area * yield, slenderness = BucklingCurve.Slenderness(squash, elasticForce);
            ColumnRange range = slenderness > Math.Sqrt(2) ? ColumnRange.Elastic : ColumnRange.Inelastic;
            return new(area, yield, elasticForce, range, factors.Curve.Reduction(slenderness) * squash, gamma, [FactorClauses.EuropeanBuckling]);
        }
    }

    private sealed class ParabolaCurve(string name, double factor, Clause clause) : ColumnCurve
    {
        private readonly StrengthFactor[] factors = [new(name, factor, clause)];

        private protected override ColumnStrength Of(double area, double yield, double elasticForce)
        {
            double squash = area * yield;
            bool inelastic = elasticForce >= squash / 2;
            double nominal = inelastic ? squash * (1 - (squash / (4 * elasticForce))) : elasticForce;
            return new(area, yield, elasticForce, inelastic ? ColumnRange.Inelastic : ColumnRange.Elastic, nominal, factors, [clause]);
        }
    }

    // The printed constants are rounded, and at Cc Euler's branch may start up to 0.6 % above the end of the parabola; it is held
    // down to that end, so that no longer column is stronger than a shorter one.
    private sealed class PrintedCurve(AllowableColumn printed) : ColumnCurve
    {
        private const double Euler = 135_008_740 * PublishedStrength.PoundPerSquareInch;

        private protected override ColumnStrength Of(double area, double yield, double elasticForce)
        {
            double slenderness = ElasticBuckling.Slenderness(PublishedStrength.Modulus, area, elasticForce);
            bool inelastic = slenderness <= printed.Limit;
            double along = Math.Min(slenderness, printed.Limit);
            double stress = printed.AtZero - (printed.Fall * along * along);
            stress = inelastic ? stress : Math.Min(stress, Euler / (slenderness * slenderness));
            return new(area, yield, elasticForce, inelastic ? ColumnRange.Inelastic : ColumnRange.Elastic, area * stress, [], [ResistanceClauses.ColumnAsrByYear]);
        }
    }
}
