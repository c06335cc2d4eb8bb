namespace SpanRater;

/// <summary>A vehicle on two tracks: its weight is spread evenly over their length.</summary>
/// <param name="Name">Name, unique among all catalogues in use.</param>
/// <param name="Class">What it is rated as.</param>
/// <param name="Weight">Weight of both tracks together, positive [N].</param>
/// <param name="Length">Length of a track on the ground, positive [m].</param>
/// <param name="Gauge">Distance between the middles of the tracks [m].</param>
/// <param name="Source">Where its numbers are from.</param>
public sealed record TrackedVehicle(string Name, VehicleClass Class, double Weight, double Length, double Gauge, string Source)
    : LiveLoad(Name, Class, Source);
