namespace SpanRater;

/// <summary>The deck and the trusses that carry it, as far as they decide how a vehicle is shared. Immutable.</summary>
public sealed record Deck
{
    /// <summary>Nearest that a wheel line comes to a kerb unless another distance is given, 2 ft [m].</summary>
    public const double UsualWheelToKerb = 2 * 0.3048;

    /// <summary>Number of trusses that carry the deck.</summary>
    public int Trusses { get; init; } = 2;

    /// <summary>Names of the two trusses, left and right as one looks along the span.</summary>
    public IReadOnlyList<string> TrussNames { get; init; } = ["left", "right"];

    /// <summary>Distance between the trusses, centre to centre [m]; null where none is given.</summary>
    public double? TrussSpacing { get; init; }

    /// <summary>Clear width between kerbs [m]; null where none is given.</summary>
    public double? Roadway { get; init; }

    /// <summary>Centre of the roadway from the middle between the trusses, right positive [m].</summary>
    public double RoadwayOffset { get; init; }

    /// <summary>Nearest a wheel line comes to a kerb [m]; 2 ft unless given.</summary>
    public double WheelToKerb { get; init; } = UsualWheelToKerb;

    /// <summary>Share of one vehicle that one truss carries, presence factor included; null for the lever rule [-].</summary>
    public double? TrussShare { get; init; }

    /// <summary>Why the share was given and the lever rule is not used; null where no reason is given.</summary>
    public string? TrussShareReason { get; init; }

    /// <summary>Most lanes that may be loaded at once, of any class of vehicles; null for as many as the class may load.</summary>
    public int? MostLanes { get; init; }

    /// <summary>Whether every vehicle is held on the middle of the roadway, one lane alone; else it stands as near to a kerb as it may.</summary>
    public bool VehiclesHeldToMiddle { get; init; }

    /// <summary>Lanes that may be loaded at once: the fewest of what the roadway, the deck and the class of vehicles allow.</summary>
    /// <param name="onRoadway">Lanes that fit the roadway.</param>
    /// <param name="ofClass">Lanes that the class may load; null for as many as fit.</param>
    internal int LanesLoaded(int onRoadway, int? ofClass) =>
        VehiclesHeldToMiddle ? 1 : Math.Min(onRoadway, Math.Min(ofClass ?? int.MaxValue, MostLanes ?? int.MaxValue));
}
