namespace SpanRater;

/// <summary>People or animals on every stretch of the deck that adds to the effect sought, and on no other.</summary>
/// <param name="Name">Name, unique among all catalogues in use.</param>
/// <param name="Class">What it is rated as.</param>
/// <param name="Intensity">Load per area.</param>
/// <param name="Width">Width that they take up along the kerb of the truss considered [m]; null for the whole roadway.</param>
/// <param name="Source">Where it is from.</param>
public sealed record Crowd(string Name, VehicleClass Class, LoadIntensity Intensity, double? Width, string Source)
    : LiveLoad(Name, Class, Source);
