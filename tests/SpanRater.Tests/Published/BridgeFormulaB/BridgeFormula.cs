namespace SpanRater.Tests.Published.BridgeFormulaB;

/// <summary>
/// The weight that a group of neighbouring axles may have on the Interstate system: W = 500 [L N/(N − 1) + 12 N + 36] lb.
/// Source: Public Law 97-424, 96 Stat. 2124 (found); limits of 20,000 lb an axle, 34,000 lb a tandem and 80,000 lb gross
/// in the same law.
/// </summary>
internal static class BridgeFormula
{
    public const double SingleAxle = 20_000;

    public const double Tandem = 34_000;

    public const double Gross = 80_000;

    /// <summary>Up to this length axles are a tandem, 96 in [ft].</summary>
    public const double TandemLength = 8;

    /// <summary>The formula as it stands, not rounded [lb].</summary>
    public static double Exact(double length, int axles) =>
        500 * ((length * axles / (axles - 1)) + (12 * axles) + 36);

    /// <summary>The formula to the nearest 500 lb; the published tables round an exact tie down [lb].</summary>
    public static double Rounded(double length, int axles) => 500 * Math.Ceiling((Exact(length, axles) / 500) - 0.5);

    /// <summary>What the tables print: up to 8 ft the weight of a tandem, however many axles [lb].</summary>
    public static double Tabulated(double length, int axles) => length <= TandemLength ? Tandem : Rounded(length, axles);
}
