namespace SpanRater;

/// <summary>What a stress range means for a detail category: cycles that there were, against those that it allows.</summary>
/// <param name="Category">The category.</param>
/// <param name="Range">Stress range [Pa].</param>
/// <param name="CyclesAYear">Cycles a year [-].</param>
/// <param name="Years">Years of such traffic [-].</param>
public sealed record FatigueAnswer(DetailCategory Category, double Range, double CyclesAYear, double Years)
{
    /// <summary>Cycles used [-].</summary>
    public double Used => CyclesAYear * Years;

    /// <summary>Cycles allowed; null where there is no end [-].</summary>
    public double? Allowed => Category.AllowedCycles(Range);

    /// <summary>Part used of what is allowed; 0 where there is no end [-].</summary>
    public double PartUsed => Used / Allowed ?? 0;

    /// <summary>Years of the same traffic that are left, negative where they were used up so long ago; null where there is no end.</summary>
    public double? YearsLeft => (Allowed / CyclesAYear) - Years;
}
