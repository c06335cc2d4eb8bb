namespace SpanRater.Pictures;

/// <summary>
/// The colour of each ink. Tension and compression lie on either side of the blue–orange axis, which all common kinds of
/// colour blindness keep apart, and differ in lightness, so that grey prints keep them apart as well.
/// </summary>
public static class Palette
{
    /// <summary>The colour of an ink, as #rrggbb.</summary>
    /// <param name="ink">The ink.</param>
    public static string ColourOf(Ink ink) => ink switch
    {
        Ink.Black => "#1c1e21",
        Ink.Grey => "#666b73",
        Ink.Pale => "#c3c8cf",
        Ink.Tension => "#1d4a80",
        Ink.TensionTint => "#d5e1ef",
        Ink.Compression => "#b4561a",
        Ink.CompressionTint => "#f8eadd",
        Ink.Alarm => "#9c1f1f",
        Ink.Paper => "#ffffff",
        _ => throw new ArgumentOutOfRangeException(nameof(ink), ink, "There is no such ink."),
    };

    /// <summary>Lengths drawn and left out in turn [px], by the weight of the stroke; null for an unbroken one.</summary>
    /// <param name="dash">How the stroke is broken.</param>
    /// <param name="weight">Its width [px].</param>
    public static IReadOnlyList<double>? PatternOf(Dash dash, double weight)
    {
        double w = Math.Max(1, weight);
        return dash switch
        {
            Dash.Dashed => [4 + (2 * w), 3 + w],
            Dash.Dotted => [w, 2 + w],
            Dash.DashDot => [6 + (3 * w), 2 + w, w, 2 + w],
            _ => null,
        };
    }
}
