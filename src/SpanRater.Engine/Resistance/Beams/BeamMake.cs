namespace SpanRater;

/// <summary>What a beam is rated for.</summary>
public enum BeamEffect
{
    /// <summary>Bending in the vertical plane.</summary>
    Moment,

    /// <summary>Vertical shear.</summary>
    Shear,

    /// <summary>Pressure on its bearing.</summary>
    Bearing,
}

/// <summary>What a beam of the floor is made of and how it is held: all that its strength follows from. Immutable.</summary>
public sealed record BeamMake
{
    /// <summary>Its section, y upward, with what was seen on it.</summary>
    public required FoundSection Section { get; init; }

    /// <summary>Its material; null where none is named.</summary>
    public Material? Material { get; init; }

    /// <summary>Distance between the points that hold its compression flange sideways [m]; 0 where it is held all along, null where it is not given.</summary>
    public double? Unbraced { get; init; }

    /// <summary>Length of its bearing along it [m]; null where it is not given.</summary>
    public double? Bearing { get; init; }

    /// <summary>Depth that is left over the bearing [m]; null for all of it.</summary>
    public double? DepthAtEnd { get; init; }

    /// <summary>Whether it is cut away there along a taper, and not by a square notch.</summary>
    public bool NotchIsTapered { get; init; }

    /// <summary>What it is within the bridge.</summary>
    public required SystemKind System { get; init; }

    /// <summary>Its span [m].</summary>
    public double Span { get; init; }

    /// <summary>The same beam without any loss; a notch stays.</summary>
    public BeamMake AsBuilt => this with { Section = FoundSection.Sound(Section.AsBuilt) };
}
