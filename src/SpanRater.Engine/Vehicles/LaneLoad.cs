namespace SpanRater;

/// <summary>A uniform load over a lane, on every stretch of the deck that adds to the effect sought and on no other.</summary>
/// <param name="Intensity">Load per length of one lane.</param>
/// <param name="PointOnChords">Concentrated load that goes with it where a chord is rated [N]; null for none.</param>
/// <param name="PointOnOthers">Concentrated load that goes with it for every other effect [N]; null for none.</param>
/// <param name="TakesImpact">Whether the dynamic allowance acts on it: on the lane loads of H and HS, which stand for a row of trucks.</param>
public sealed record LaneLoad(LoadIntensity Intensity, double? PointOnChords = null, double? PointOnOthers = null, bool TakesImpact = false)
{
    /// <summary>Whether it stands in place of the vehicles instead of acting together with them.</summary>
    public bool StandsAlone => PointOnChords is not null || PointOnOthers is not null;

    /// <summary>The concentrated load that goes with it; null for none.</summary>
    /// <param name="isChord">True where a chord is rated.</param>
    public double? PointFor(bool isChord) => isChord ? PointOnChords ?? PointOnOthers : PointOnOthers ?? PointOnChords;
}
