namespace SpanRater;

/// <summary>A legal vehicle in the next lane, which stays as it is while the vehicle rated is scaled.</summary>
/// <param name="Vehicle">The vehicle.</param>
/// <param name="LiveFactor">Its live-load factor [-].</param>
/// <param name="Part">Its effect on the truss.</param>
public sealed record Neighbour(Vehicle Vehicle, double LiveFactor, SharedPart Part)
{
    /// <summary>What it takes of the capacity: factor × effect with impact, positive [N].</summary>
    public double Factored => LiveFactor * Math.Abs(Part.WithImpact);
}
