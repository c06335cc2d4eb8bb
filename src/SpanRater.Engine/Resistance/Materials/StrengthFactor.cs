namespace SpanRater;

/// <summary>A factor on a strength.</summary>
/// <param name="Name">What it is, as the standard names it.</param>
/// <param name="Value">Its value [-].</param>
/// <param name="Clause">Where it is from.</param>
public sealed record StrengthFactor(string Name, double Value, Clause Clause);
