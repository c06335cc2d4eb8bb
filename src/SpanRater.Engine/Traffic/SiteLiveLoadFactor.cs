namespace SpanRater;

/// <summary>
/// The live-load factor of legal loads that the trucks of a site ask for, by the published form: mean W* and standard deviation σ* of the heaviest fifth of the trucks, and a fractile t by the
/// trucks a day. For an engineer to confirm: no rating takes it. Source: AASHTO Manual for Bridge Evaluation, 3rd ed. (2018), 6A.4.4.2.3b and its commentary, from memory.
/// </summary>
/// <param name="Mean">W* [N].</param>
/// <param name="Deviation">σ* [N].</param>
/// <param name="Trucks">Trucks in the heaviest fifth [-].</param>
/// <param name="TrucksADay">Trucks a day in one direction, positive [1/day].</param>
public sealed record SiteLiveLoadFactor(double Mean, double Deviation, double Trucks, double TrucksADay)
{
    /// <summary>Part of the trucks that counts: the heaviest fifth [-].</summary>
    public const double HeaviestPart = 0.20;

    /// <summary>Least factor where one lane is loaded [-]. From memory of the commentary: check against the manual.</summary>
    public const double LeastOneLane = 1.80;

    /// <summary>Least factor where two lanes or more are loaded [-]. From memory of the commentary: check against the manual.</summary>
    public const double LeastMoreLanes = 1.30;

    private const double Kip = 4448.2216152605, Factor = 1.80, OneLaneWeight = 120 * Kip, MoreLanesWeight = 240 * Kip, ForTwo = 1.41;

    private static readonly (double TrucksADay, double OneLane, double MoreLanes)[] Fractiles = [(100, 3.9, 1.5), (1000, 4.5, 3.3), (5000, 4.9, 4.3)];

    /// <summary>Fractile t where one lane is loaded [-].</summary>
    public double FractileOfOneLane => Between(f => f.OneLane);

    /// <summary>Fractile t where two lanes or more are loaded [-].</summary>
    public double FractileOfMoreLanes => Between(f => f.MoreLanes);

    /// <summary>The formula's value for one lane, before its least value [-].</summary>
    public double OneLaneByFormula => Factor * (Mean + (FractileOfOneLane * Deviation)) / OneLaneWeight;

    /// <summary>The formula's value for two lanes and more, before its least value [-].</summary>
    public double MoreLanesByFormula => Factor * ((2 * Mean) + (FractileOfMoreLanes * ForTwo * Deviation)) / MoreLanesWeight;

    /// <summary>Live-load factor where one lane is loaded [-].</summary>
    public double OneLane => Math.Max(LeastOneLane, OneLaneByFormula);

    /// <summary>Live-load factor where two lanes or more are loaded [-].</summary>
    public double MoreLanes => Math.Max(LeastMoreLanes, MoreLanesByFormula);

    /// <summary>The factor of counted trucks; null where there are too few of them.</summary>
    /// <param name="weights">Their gross weights.</param>
    /// <param name="trucksADay">Trucks a day in one direction, positive [1/day].</param>
    public static SiteLiveLoadFactor? Of(GrossWeights weights, double trucksADay)
    {
        ArgumentNullException.ThrowIfNull(weights);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(trucksADay);
        return weights.HeaviestPart(HeaviestPart) is { } heaviest ? new SiteLiveLoadFactor(heaviest.Mean, heaviest.Deviation, heaviest.Trucks, trucksADay) : null;
    }

    // Straight between the published trucks a day; beyond them as at the ends.
    private double Between(Func<(double TrucksADay, double OneLane, double MoreLanes), double> fractile)
    {
        if (TrucksADay <= Fractiles[0].TrucksADay)
        {
            return fractile(Fractiles[0]);
        }

        for (int i = 1; i < Fractiles.Length; i++)
        {
            if (TrucksADay <= Fractiles[i].TrucksADay)
            {
                double part = (TrucksADay - Fractiles[i - 1].TrucksADay) / (Fractiles[i].TrucksADay - Fractiles[i - 1].TrucksADay);
                return fractile(Fractiles[i - 1]) + (part * (fractile(Fractiles[i]) - fractile(Fractiles[i - 1])));
            }
        }

        return fractile(Fractiles[^1]);
    }
}
