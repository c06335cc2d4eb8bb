namespace SpanRater;

/// <summary>
/// Crowd on a sidewalk that falls with the loaded length: 85 psf up to 25 ft, 60 psf from 26 to 100 ft, above that
/// (30 + 3000/L) (55 − W)/50 psf and not above 60, L the loaded length and W the width in feet. Between 25 and 26 ft, of which
/// the clause says nothing, the larger holds. The reduction for width is meant for sidewalks: from 55 ft on, where it would leave
/// nothing, 60 psf holds. Source: AASHTO Standard Specifications, 17th ed. (2002), 3.14.1.1, from memory.
/// </summary>
public sealed record SidewalkPressure : LoadIntensity
{
    private const double Foot = 0.3048;
    private const double PoundPerSquareFoot = 4.4482216152605 / (Foot * Foot);
    private const double OnMost = 60;

    /// <summary>Widths from this on are no sidewalk's [ft].</summary>
    private const double WidestSidewalk = 55;

    /// <inheritdoc/>
    public override string Name => "AASHTO sidewalk";

    /// <inheritdoc/>
    public override string Source =>
        "AASHTO Standard Specifications, 17th ed. (2002), 3.14.1.1, from memory: 85 psf to 25 ft, 60 psf from 26 to 100 ft, above that " +
        "(30 + 3000/L) (55 − W)/50 psf, not above 60, L the loaded length and W the width in feet";

    /// <inheritdoc/>
    public override bool IsPerArea => true;

    /// <inheritdoc/>
    public override double At(double loadedLength, double width)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(loadedLength);
        ArgumentOutOfRangeException.ThrowIfNegative(width);
        return InPoundsPerSquareFoot(Math.Round(loadedLength / Foot, 9), width / Foot) * PoundPerSquareFoot;
    }

    private static double InPoundsPerSquareFoot(double length, double width) => length switch
    {
        < 26 => 85,
        <= 100 => OnMost,
        _ when width >= WidestSidewalk => OnMost,
        _ => Math.Min(OnMost, (30 + (3000 / length)) * (55 - width) / 50),
    };
}
