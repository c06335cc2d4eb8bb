namespace SpanRater;

/// <summary>What counts of a member in tension.</summary>
/// <param name="Gross">Gross area [m²].</param>
/// <param name="Net">Net area, at most the gross one [m²]; null where there are no holes and all of the section is connected, so that no net section is checked.</param>
/// <param name="ShearLag">Part U of the net area that works [-].</param>
/// <param name="IsPunched">Whether holes are punched full size and not reamed, as in old work they are unless known otherwise.</param>
public sealed record TensionArea(double Gross, double? Net = null, double ShearLag = 1, bool IsPunched = true);

/// <summary>How a method makes the strength of a member in tension. Every mode is given; the least governs.</summary>
public abstract class TensionRule
{
    private TensionRule()
    {
    }

    /// <summary>Resistance by LRFR. Source: AASHTO LRFD 6.8.2.1 and 6.5.4.2, from memory.</summary>
    public static TensionRule LoadAndResistance { get; } = new LrfrRule();

    /// <summary>Strength by LFR. Source: AASHTO Standard Specifications 10.9 and 10.18.4, from memory. Shear lag lessens the net section here too.</summary>
    public static TensionRule LoadFactor { get; } = new LfrRule();

    /// <summary>Allowable force by ASR. Source: AASHTO MBE, Table 6B.5.2.1, from memory. Shear lag lessens the net section here too.</summary>
    /// <param name="level">The level.</param>
    public static TensionRule Allowable(AllowableLevel level) => new AsrRule(level);

    /// <summary>Resistance by partial factors that the user gives. Source: EN 1993-1-1:2005, 6.2.3, from memory. Shear lag lessens the net section here too.</summary>
    /// <param name="factors">The factors.</param>
    public static TensionRule Partial(PartialResistance factors) => new PartialRule(factors);

    /// <summary>Whether the net section takes the tensile strength, so that it cannot be checked without it.</summary>
    public virtual bool NetNeedsUltimate => true;

    /// <summary>The modes of a member made of shapes, the gross section first.</summary>
    /// <param name="strength">Strength of the metal; with its tensile strength where there is a net section and the method asks for it.</param>
    /// <param name="area">What counts of the member.</param>
    /// <exception cref="ArgumentException">The tensile strength is missing, or an area is out of range.</exception>
    public IReadOnlyList<TensionStrength> Strengths(MetalStrength strength, TensionArea area)
    {
        ArgumentNullException.ThrowIfNull(strength);
        ArgumentNullException.ThrowIfNull(area);
        Checked.Positive(area.Gross, nameof(area));
        Checked.Part(area.ShearLag, nameof(area));
        if (area.Net is { } net && !(net > 0 && net <= area.Gross * (1 + 1e-12)))
        {
            throw new ArgumentOutOfRangeException(nameof(area), net, "A net area is positive and at most the gross area [m²].");
        }

        if (area.Net is not null && NetNeedsUltimate && strength.Ultimate is null)
        {
            throw new ArgumentException("The net section takes the tensile strength, and there is none.", nameof(strength));
        }

        TensionStrength gross = YieldOn(strength, area.Gross, MemberMode.GrossYield, null);
        return area.Net is null ? [gross] : [gross, NetOf(strength, area)];
    }

    /// <summary>Eyebars: the body, or the heads where their net section is less than 1.35 of it.</summary>
    /// <param name="strength">Strength of the metal.</param>
    /// <param name="body">Area of the bodies of all bars [m²].</param>
    /// <param name="head">Net area of the heads through the pin holes, of all bars [m²]; null where it is not measured, which leaves the body alone.</param>
    public TensionStrength Eyebar(MetalStrength strength, double body, double? head)
    {
        ArgumentNullException.ThrowIfNull(strength);
        Checked.Positive(body, nameof(body));
        Checked.Positive(head ?? 1, nameof(head));
        bool headGoverns = head < LeastHead * body;
        return YieldOn(strength, headGoverns ? head!.Value / LeastHead : body, headGoverns ? MemberMode.EyebarHead : MemberMode.EyebarBody, ResistanceClauses.Eyebars);
    }

    /// <summary>A threaded rod: the lesser of its body and its section at the root of the thread.</summary>
    /// <param name="strength">Strength of the metal.</param>
    /// <param name="body">Area of the body [m²].</param>
    /// <param name="root">Area at the root of the thread [m²].</param>
    public TensionStrength Rod(MetalStrength strength, double body, double root)
    {
        ArgumentNullException.ThrowIfNull(strength);
        Checked.Positive(body, nameof(body));
        Checked.Positive(root, nameof(root));
        return YieldOn(strength, Math.Min(body, root), root < body ? MemberMode.RodRoot : MemberMode.GrossYield, ResistanceClauses.ThreadedRods);
    }

    /// <summary>Net section of an eyebar's head over its body, at least [-]. Source: AASHTO LRFD 6.8.6.2, from memory.</summary>
    public const double LeastHead = 1.35;

    private protected abstract (double Stress, IReadOnlyList<StrengthFactor> Factors, Clause Clause) YieldOf(MetalStrength strength);

    private protected abstract TensionStrength NetOf(MetalStrength strength, TensionArea area);

    private TensionStrength YieldOn(MetalStrength strength, double area, MemberMode mode, Clause? also)
    {
        (double stress, IReadOnlyList<StrengthFactor> factors, Clause clause) = YieldOf(strength);
        return new TensionStrength(mode, area, stress, factors, also is null ? [clause] : [clause, also]);
    }

    private sealed class LrfrRule : TensionRule
    {
        private const double Punched = 0.90;

        private protected override (double Stress, IReadOnlyList<StrengthFactor> Factors, Clause Clause) YieldOf(MetalStrength strength) =>
            (strength.Yield, [new("φy", 0.95, ResistanceClauses.TensionLrfr)], ResistanceClauses.TensionLrfr);

        private protected override TensionStrength NetOf(MetalStrength strength, TensionArea area)
        {
            var phi = new StrengthFactor("φu", 0.80, ResistanceClauses.TensionLrfr);
            StrengthFactor[] factors = area.IsPunched ? [phi, new("Rp", Punched, ResistanceClauses.PunchedHoles)] : [phi];
            return new(MemberMode.NetRupture, area.Net!.Value * area.ShearLag, strength.Ultimate!.Value, factors, [ResistanceClauses.TensionLrfr, ResistanceClauses.PunchedHoles, ResistanceClauses.ShearLag]);
        }
    }

    private sealed class LfrRule : TensionRule
    {
        private const double GrossAdded = 0.15;

        public override bool NetNeedsUltimate => false;

        private protected override (double Stress, IReadOnlyList<StrengthFactor> Factors, Clause Clause) YieldOf(MetalStrength strength) =>
            (strength.Yield, [], ResistanceClauses.TensionLfr);

        private protected override TensionStrength NetOf(MetalStrength strength, TensionArea area) => new(
            MemberMode.NetYield, Math.Min(area.Gross, (area.Net!.Value * area.ShearLag) + (GrossAdded * area.Gross)), strength.Yield, [], [ResistanceClauses.TensionLfr, ResistanceClauses.ShearLag]);
    }

    private sealed class PartialRule(PartialResistance factors) : TensionRule
    {
        private protected override (double Stress, IReadOnlyList<StrengthFactor> Factors, Clause Clause) YieldOf(MetalStrength strength) =>
            (strength.Yield, [new("1/γM0", 1 / factors.CrossSection, ResistanceClauses.TensionEuropean)], ResistanceClauses.TensionEuropean);

        private protected override TensionStrength NetOf(MetalStrength strength, TensionArea area) => new(
            MemberMode.NetRupture,
            area.Net!.Value * area.ShearLag,
            strength.Ultimate!.Value,
            [new("0.9", 0.9, ResistanceClauses.TensionEuropean), new("1/γM2", 1 / factors.Rupture, ResistanceClauses.TensionEuropean)],
            [ResistanceClauses.TensionEuropean, ResistanceClauses.ShearLag]);
    }

    private sealed class AsrRule(AllowableLevel level) : TensionRule
    {
        private protected override (double Stress, IReadOnlyList<StrengthFactor> Factors, Clause Clause) YieldOf(MetalStrength strength)
        {
            AllowableStress allowed = strength.AllowableGross(level);
            return (allowed.Basis, allowed.Factors, allowed.Clause);
        }

        private protected override TensionStrength NetOf(MetalStrength strength, TensionArea area)
        {
            AllowableStress allowed = strength.AllowableNet(level)!;
            return new(MemberMode.NetRupture, area.Net!.Value * area.ShearLag, allowed.Basis, allowed.Factors, [allowed.Clause, ResistanceClauses.ShearLag]);
        }
    }
}
