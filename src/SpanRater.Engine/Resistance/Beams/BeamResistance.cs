namespace SpanRater;

/// <summary>One mode of a beam at one cut.</summary>
/// <param name="Place">Name of the cut; null for the beam away from all cuts.</param>
/// <param name="Section">The section there.</param>
/// <param name="Strength">The strength.</param>
public sealed record BeamModeAtCut(string? Place, MemberSection Section, BeamStrength Strength);

/// <summary>What a beam carries for one effect at one level, with all that led to it.</summary>
public sealed record BeamResistance : PartResistance
{
    /// <summary>What it is made of.</summary>
    public required BeamMake Make { get; init; }

    /// <summary>The effect.</summary>
    public required BeamEffect Effect { get; init; }

    /// <summary>Every mode at every cut, in the order examined.</summary>
    public required IReadOnlyList<BeamModeAtCut> Modes { get; init; }

    /// <summary>Condition and system factors; null where the method has none.</summary>
    public MemberFactors? Factors { get; init; }

    /// <summary>The mode that governs: the least strength, the earlier of equal ones.</summary>
    public BeamModeAtCut Governing => Modes.MinBy(m => m.Strength.Value)!;

    /// <inheritdoc/>
    public override double Value => Governing.Strength.Value * (Factors?.Value ?? 1);

    /// <inheritdoc/>
    public override Material? Material => Make.Material;

    /// <inheritdoc/>
    public override IEnumerable<Clause> Clauses => Governing.Strength.Clauses.Concat(Governing.Strength.Factors.Select(f => f.Clause))
        .Concat(Governing.Strength is TimberBeamStrength timber ? timber.Stress.Factors.Select(f => f.Clause) : []);

    /// <inheritdoc/>
    public override MemberFactors? PartFactors => Factors;

    /// <inheritdoc/>
    public override string? Place => Governing.Place;
}

/// <summary>A resistance of a beam, or every datum that is missing for it.</summary>
/// <param name="Resistance">The resistance; null where something is missing.</param>
/// <param name="Missing">What is missing.</param>
public sealed record BeamCheck(BeamResistance? Resistance, IReadOnlyList<MissingDatum> Missing);
