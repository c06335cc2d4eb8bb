namespace SpanRater;

/// <summary>A point of a section.</summary>
/// <param name="X">Across the member, out of the plane of the truss [m].</param>
/// <param name="Y">In the plane of the truss [m].</param>
public readonly record struct SectionPoint(double X, double Y);
