namespace SpanRater.Pictures;

/// <summary>The upright hatching that marks compression, so that it is told from tension without colour.</summary>
internal static class Hatching
{
    /// <summary>Distance between its lines [px].</summary>
    public const double Spacing = 7;

    /// <summary>Width of its lines [px].</summary>
    public const double Weight = 1;
}
