namespace SpanRater;

/// <summary>How heavy a uniform load is, which may depend on the length and width that it covers.</summary>
public abstract record LoadIntensity
{
    /// <summary>Name of the rule.</summary>
    public abstract string Name { get; }

    /// <summary>Where the rule is from.</summary>
    public abstract string Source { get; }

    /// <summary>True for a load per area [Pa], false for a load per length of a lane [N/m].</summary>
    public abstract bool IsPerArea { get; }

    /// <summary>The load per area or per length [Pa or N/m].</summary>
    /// <param name="loadedLength">Loaded length [m].</param>
    /// <param name="width">Loaded width [m].</param>
    public abstract double At(double loadedLength, double width);
}
