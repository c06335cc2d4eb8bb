namespace SpanRater.Tests.Published;

/// <summary>The units of the American sources in SI; exact by definition (international yard and pound, 1959).</summary>
internal static class CustomaryUnits
{
    /// <summary>One foot [m].</summary>
    public const double Foot = 0.3048;

    /// <summary>One pound of force [N].</summary>
    public const double Pound = 4.4482216152605;

    /// <summary>One thousand pounds of force [N].</summary>
    public const double Kip = 1000 * Pound;

    /// <summary>One kip on an arm of one foot [N·m].</summary>
    public const double KipFoot = Kip * Foot;

    /// <summary>One kip on each foot [N/m].</summary>
    public const double KipPerFoot = Kip / Foot;

    /// <summary>One pound on each square inch [Pa].</summary>
    public const double Psi = Pound / (Foot * Foot / 144);

    /// <summary>One inch [m].</summary>
    public const double Inch = Foot / 12;
}
