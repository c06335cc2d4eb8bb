namespace SpanRater;

/// <summary>How often a vehicle crosses, and for how long it has.</summary>
/// <param name="TrucksADay">Passages a day, positive [-].</param>
/// <param name="Years">Years of such traffic, positive [-].</param>
public sealed record FatigueTraffic(double TrucksADay, double Years)
{
    /// <summary>Days of a year [-].</summary>
    public const double DaysAYear = 365;

    /// <summary>Passages a year [-].</summary>
    public double PassagesAYear => TrucksADay * DaysAYear;
}
