namespace SpanRater;

/// <summary>The strength of a member in one mode by one method: what goes into the rating equation before condition and system factors.</summary>
/// <param name="Mode">The mode.</param>
/// <param name="Nominal">Nominal strength, positive [N].</param>
/// <param name="Factors">Factors of the method on it.</param>
/// <param name="Clauses">What nominal strength and factors rest on.</param>
public abstract record MemberStrength(MemberMode Mode, double Nominal, IReadOnlyList<StrengthFactor> Factors, IReadOnlyList<Clause> Clauses)
{
    /// <summary>The strength with its factors [N]: a resistance by LRFR and LFR, an allowable force by ASR.</summary>
    public double Value => Factors.Aggregate(Nominal, (value, factor) => value * factor.Value);
}

/// <summary>Strength in plain tension.</summary>
/// <param name="Mode">The mode.</param>
/// <param name="Area">Area that counts, shear lag and holes in it [m²].</param>
/// <param name="Stress">Stress on it [Pa].</param>
/// <param name="Factors">Factors of the method.</param>
/// <param name="Clauses">What it rests on.</param>
public sealed record TensionStrength(MemberMode Mode, double Area, double Stress, IReadOnlyList<StrengthFactor> Factors, IReadOnlyList<Clause> Clauses)
    : MemberStrength(Mode, Area * Stress, Factors, Clauses);

/// <summary>Which branch of a column curve holds.</summary>
public enum ColumnRange
{
    /// <summary>Yield has part in it.</summary>
    Inelastic,

    /// <summary>Elastic buckling.</summary>
    Elastic,
}

/// <summary>Strength in plain compression.</summary>
/// <param name="Area">Area [m²].</param>
/// <param name="Yield">Yield [Pa].</param>
/// <param name="ElasticForce">Elastic critical force Pe [N].</param>
/// <param name="Range">The branch that holds.</param>
/// <param name="Nominal">Nominal strength [N].</param>
/// <param name="Factors">Factors of the method.</param>
/// <param name="Clauses">What it rests on.</param>
public sealed record ColumnStrength(
    double Area, double Yield, double ElasticForce, ColumnRange Range, double Nominal, IReadOnlyList<StrengthFactor> Factors, IReadOnlyList<Clause> Clauses)
    : MemberStrength(MemberMode.Buckling, Nominal, Factors, Clauses)
{
    /// <summary>Squash force Po = A Fy [N].</summary>
    public double SquashForce => Area * Yield;
}

/// <summary>Strength in force with the moment P e of its eccentricity: the force at which the interaction reaches 1.</summary>
/// <param name="Plain">Strength without eccentricity.</param>
/// <param name="Eccentricity">Distance e of the force from the centroid, or bow, not negative [m].</param>
/// <param name="MomentStrength">Moment that the section carries alone, with the factors of the method [N·m].</param>
/// <param name="ElasticForce">Elastic critical force in the plane of the moment, with the method's factor of safety [N]; null in tension.</param>
/// <param name="Force">The force, the method's factors in it, but for those that follow [N].</param>
/// <param name="Factors">Factors on the force as a whole: of timber at operating level; else none.</param>
/// <param name="Clauses">What it rests on.</param>
public sealed record CombinedStrength(
    MemberStrength Plain, double Eccentricity, double MomentStrength, double? ElasticForce, double Force, IReadOnlyList<StrengthFactor> Factors, IReadOnlyList<Clause> Clauses)
    : MemberStrength(ElasticForce is null ? MemberMode.TensionAndMoment : MemberMode.CompressionAndMoment, Force, Factors, Clauses)
{
    /// <summary>Factor 1/(1 − P/Pe) on the moment at that force; 1 in tension and without eccentricity [-].</summary>
    public double Amplification => ElasticForce is { } pe && Eccentricity > 0 ? 1 / (1 - (Force / pe)) : 1;

    /// <summary>Amplified moment at that force [N·m].</summary>
    public double Moment => Force * Eccentricity * Amplification;
}
