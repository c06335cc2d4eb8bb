namespace SpanRater;

/// <summary>Where a crowd stands across the deck, and what of it one truss carries.</summary>
/// <param name="Strip">The strip it covers, by distance from the truss.</param>
/// <param name="Width">Width of crowd that the truss carries: the strip's width times its lever-rule share [m].</param>
public sealed record CrowdShare(LateralStrip Strip, double Width);
