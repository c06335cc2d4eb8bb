namespace SpanRater;

/// <summary>What a strength cannot be found without. None of it is ever assumed in silence.</summary>
public abstract record MissingDatum
{
    private MissingDatum()
    {
    }

    /// <summary>No yield is given, and none was asked for by year.</summary>
    /// <param name="Kind">Kind of the material.</param>
    /// <param name="Built">Year of building, or null.</param>
    /// <param name="Offered">The row that the user may accept; null where there is none.</param>
    public sealed record Yield(MaterialKind Kind, int? Built, PublishedStrength? Offered) : MissingDatum;

    /// <summary>No tensile strength is given, and there is a net section to check.</summary>
    /// <param name="Material">Name of the material.</param>
    public sealed record Ultimate(string Material) : MissingDatum;

    /// <summary>No modulus is given for a material other than steel.</summary>
    /// <param name="Material">Name of the material.</param>
    public sealed record Modulus(string Material) : MissingDatum;

    /// <summary>The method has no rule for timber.</summary>
    /// <param name="Method">Name of the method.</param>
    public sealed record TimberRule(string Method) : MissingDatum;

    /// <summary>The frames of a pony truss are too stiff for Engesser's formula, and the table of the guide is not in the program.</summary>
    /// <param name="EffectiveLengthFactor">K that Engesser's formula would give, below 1.3 [-].</param>
    public sealed record PonyTable(double EffectiveLengthFactor) : MissingDatum;
}
