namespace SpanRater;

/// <summary>How the ends of a compression member are held.</summary>
public enum MemberEnds
{
    /// <summary>Riveted, bolted or welded at both ends.</summary>
    Riveted,

    /// <summary>On pins.</summary>
    Pinned,

    /// <summary>A single angle, whatever its ends.</summary>
    SingleAngle,
}

/// <summary>Effective lengths. Source: AASHTO LRFD 4.6.2.5, from memory.</summary>
public static class EffectiveLength
{
    /// <summary>Factor K [-].</summary>
    /// <param name="ends">How the ends are held.</param>
    public static double Factor(MemberEnds ends) => ends switch
    {
        MemberEnds.Riveted => 0.75,
        MemberEnds.Pinned => 0.875,
        _ => 1.0,
    };
}

/// <summary>Slenderness about one axis.</summary>
/// <param name="Factor">K [-].</param>
/// <param name="Length">Unbraced length L [m].</param>
/// <param name="Radius">Radius of gyration r about the axis [m].</param>
public sealed record AxisSlenderness(double Factor, double Length, double Radius)
{
    /// <summary>KL/r [-].</summary>
    public double Value => Factor * Length / Radius;
}

/// <summary>Slenderness about both axes.</summary>
/// <param name="X">About x.</param>
/// <param name="Y">About y.</param>
public sealed record MemberSlenderness(AxisSlenderness X, AxisSlenderness Y)
{
    /// <summary>The larger one; x where both are equal.</summary>
    public AxisSlenderness Governing => Y.Value > X.Value ? Y : X;
}
