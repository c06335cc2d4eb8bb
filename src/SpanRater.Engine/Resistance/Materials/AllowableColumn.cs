namespace SpanRater;

/// <summary>A published allowable stress of columns at inventory level: a − b (KL/r)² up to Cc, Euler's stress over 2.12 beyond.</summary>
/// <param name="AtZero">Stress a of a column without slenderness [Pa].</param>
/// <param name="Fall">Fall b with the square of the slenderness [Pa].</param>
/// <param name="Limit">Slenderness Cc at which Euler takes over [-].</param>
public sealed record AllowableColumn(double AtZero, double Fall, double Limit);
