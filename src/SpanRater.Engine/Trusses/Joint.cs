namespace SpanRater;

/// <summary>A frictionless pin where members meet.</summary>
/// <param name="Name">Name, unique in the truss.</param>
/// <param name="X">Distance along the span, right positive [m].</param>
/// <param name="Y">Height, up positive [m].</param>
/// <param name="Support">How the ground holds the joint; null where it does not.</param>
/// <param name="IsPanelPoint">True where the deck's load reaches the truss.</param>
public sealed record Joint(string Name, double X, double Y, Support? Support = null, bool IsPanelPoint = false)
{
    /// <summary>Whether lateral bracing holds the joint out of the plane of the truss, where that is said; the floor holds panel points, and supports hold themselves.</summary>
    public bool? Braced { get; init; }

    /// <summary>Whether the joint is held out of the plane of the truss as far as is known.</summary>
    public bool IsHeldSideways => Braced ?? (IsPanelPoint || Support is not null);
}
