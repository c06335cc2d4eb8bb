namespace SpanRater;

/// <summary>
/// How a method puts force and moment together, where the force acts at an eccentricity e or the member is bowed by e: the moment is P e, in compression
/// times 1/(1 − P/Pe). The strength is the force at which the interaction reaches 1.
/// </summary>
public abstract class CombinedRule
{
    private CombinedRule()
    {
    }

    /// <summary>LRFR. Source: AASHTO LRFD 6.8.2.3 and 6.9.2.2, from memory.</summary>
    public static CombinedRule LoadAndResistance { get; } = new LrfrRule();

    /// <summary>LFR. Source: AASHTO Standard Specifications 10.54.2, from memory; tension is common practice.</summary>
    public static CombinedRule LoadFactor { get; } = new LfrRule();

    /// <summary>ASR. Source: AASHTO Standard Specifications 10.36, from memory; tension is common practice.</summary>
    /// <param name="level">The level.</param>
    public static CombinedRule Allowable(AllowableLevel level) => new AsrRule(level);

    /// <summary>By partial factors that the user gives: a straight line of elastic strengths. Common practice, on the safe side of EN 1993-1-1, 6.3.3.</summary>
    /// <param name="factors">The factors.</param>
    public static CombinedRule Partial(PartialResistance factors) => new PartialRule(factors);

    /// <summary>Moment that a section carries alone, up to the yield of its outermost fibre, with the factors of the method [N·m].</summary>
    /// <param name="strength">Strength of the metal.</param>
    /// <param name="sectionModulus">Elastic section modulus of the side that governs [m³].</param>
    public double MomentStrength(MetalStrength strength, double sectionModulus)
    {
        ArgumentNullException.ThrowIfNull(strength);
        Checked.Positive(sectionModulus, nameof(sectionModulus));
        return BendingStress(strength) * sectionModulus;
    }

    /// <summary>Strength in compression with the moment of an eccentricity.</summary>
    /// <param name="plain">Strength as a column, by the same method and level.</param>
    /// <param name="elasticForceInPlane">Elastic critical force in the plane of the moment, without factor of safety [N].</param>
    /// <param name="momentStrength">Moment that the section carries alone [N·m].</param>
    /// <param name="eccentricity">Eccentricity or bow, not negative [m].</param>
    public CombinedStrength Compression(ColumnStrength plain, double elasticForceInPlane, double momentStrength, double eccentricity)
    {
        ArgumentNullException.ThrowIfNull(plain);
        Checked.Positive(elasticForceInPlane, nameof(elasticForceInPlane));
        Checked.Positive(momentStrength, nameof(momentStrength));
        Checked.NotNegative(eccentricity, nameof(eccentricity));
        double critical = elasticForceInPlane / SafetyFactor;
        double force = eccentricity == 0
            ? plain.Value
            : ForceAtInteraction.Find(p => Lines(plain).Max(l => Excess(l, p, critical, momentStrength, eccentricity)), Math.Min(plain.Value, critical));
        return new CombinedStrength(plain, eccentricity, momentStrength, critical, force, [], [.. plain.Clauses, CompressionClause, ResistanceClauses.FirstYieldMoment]);
    }

    /// <summary>Strength in tension with the moment of an eccentricity; nothing is taken off for the tension that straightens the member.</summary>
    /// <param name="plain">Strength in plain tension, by the same method and level.</param>
    /// <param name="momentStrength">Moment that the section carries alone [N·m].</param>
    /// <param name="eccentricity">Eccentricity or bow, not negative [m].</param>
    public CombinedStrength Tension(MemberStrength plain, double momentStrength, double eccentricity)
    {
        ArgumentNullException.ThrowIfNull(plain);
        Checked.Positive(momentStrength, nameof(momentStrength));
        Checked.NotNegative(eccentricity, nameof(eccentricity));
        double force = eccentricity == 0 ? plain.Value : TensionLines(plain.Value).Min(l => 1 / ((1 / l.Axial) + (l.Moment * eccentricity / momentStrength)));
        return new CombinedStrength(plain, eccentricity, momentStrength, null, force, [], [.. plain.Clauses, TensionClause, ResistanceClauses.FirstYieldMoment]);
    }

    private protected abstract Clause CompressionClause { get; }

    private protected virtual Clause TensionClause => ResistanceClauses.CombinedTension;

    private protected virtual double SafetyFactor => 1;

    private protected abstract double BendingStress(MetalStrength strength);

    private protected abstract IReadOnlyList<Line> Lines(ColumnStrength plain);

    private protected virtual IReadOnlyList<Line> TensionLines(double plain) => [new(plain, 1)];

    // The sign of P/A + w M/(1 − P/Pe)/Mr − 1, kept finite up to Pe.
    private static double Excess(Line line, double force, double critical, double momentStrength, double eccentricity)
    {
        double axial = (force / line.Axial) - 1, bending = line.Moment * force * eccentricity / momentStrength;
        return line.IsAmplified ? (axial * (1 - (force / critical))) + bending : axial + bending;
    }

    /// <summary>One straight limit: P/Axial + Moment × M/Mr ≤ 1.</summary>
    private protected sealed record Line(double Axial, double Moment, bool IsAmplified = true);

    // Below 0.2 of the resistance P/(2 Pr) + M/Mr governs, from there on P/Pr + (8/9) M/Mr: each is the harder one where it governs, so that
    // both hold everywhere.
    private sealed class LrfrRule : CombinedRule
    {
        private protected override Clause CompressionClause => ResistanceClauses.CombinedLrfr;

        private protected override Clause TensionClause => ResistanceClauses.CombinedLrfr;

        private protected override double BendingStress(MetalStrength strength) => strength.Yield;

        private protected override IReadOnlyList<Line> Lines(ColumnStrength plain) => TensionLines(plain.Value);

        private protected override IReadOnlyList<Line> TensionLines(double plain) => [new(plain, 8.0 / 9), new(2 * plain, 1)];
    }

    private sealed class LfrRule : CombinedRule
    {
        private const double Squash = 0.85;

        private protected override Clause CompressionClause => ResistanceClauses.CombinedLfr;

        private protected override double BendingStress(MetalStrength strength) => strength.Yield;

        private protected override IReadOnlyList<Line> Lines(ColumnStrength plain) => [new(plain.Value, 1), new(Squash * plain.SquashForce, 1, IsAmplified: false)];
    }

    private sealed class PartialRule(PartialResistance factors) : CombinedRule
    {
        private protected override Clause CompressionClause => ResistanceClauses.CombinedEuropean;

        private protected override Clause TensionClause => ResistanceClauses.CombinedEuropean;

        private protected override double BendingStress(MetalStrength strength) => strength.Yield / Math.Max(factors.CrossSection, factors.Instability);

        private protected override IReadOnlyList<Line> Lines(ColumnStrength plain) => [new(plain.Value, 1)];
    }

    private sealed class AsrRule(AllowableLevel level) : CombinedRule
    {
        private protected override Clause CompressionClause => ResistanceClauses.CombinedAsr;

        private protected override double SafetyFactor => ColumnCurve.SafetyFactor(level);

        private protected override double BendingStress(MetalStrength strength) => strength.AllowableGross(level).Value;

        private protected override IReadOnlyList<Line> Lines(ColumnStrength plain) => [new(plain.Value, 1)];
    }
}
