namespace SpanRater;

/// <summary>Condition of a bridge as its inspection found it.</summary>
public enum Condition
{
    /// <summary>Good or satisfactory.</summary>
    Good,

    /// <summary>Fair.</summary>
    Fair,

    /// <summary>Poor.</summary>
    Poor,
}

/// <summary>How a bridge is to be rated. Immutable; what is null was not given.</summary>
public sealed record RatingSettings
{
    /// <summary>The method.</summary>
    public RatingMethod? Method { get; init; }

    /// <summary>Dynamic allowance that replaces the method's own [-].</summary>
    public double? Impact { get; init; }

    /// <summary>How even the riding surface is; null where it is not given, which counts as rough.</summary>
    public RidingSurface? Surface { get; init; }

    /// <summary>How crossing at crawl speed is enforced, which leaves impact out; null where it is not assumed.</summary>
    public string? CrawlSpeed { get; init; }

    /// <summary>Average daily truck traffic in one direction [trucks/day].</summary>
    public double? TruckTraffic { get; init; }

    /// <summary>Condition of the bridge. Given capacities hold it already.</summary>
    public Condition? Condition { get; init; }

    /// <summary>Names of the vehicles to rate; null means all legal and emergency vehicles.</summary>
    public IReadOnlyList<string>? Vehicles { get; init; }

    /// <summary>Names of the clauses in doubt whose value the user has looked up and found right.</summary>
    public IReadOnlyList<string> Confirmed { get; init; } = [];

    /// <summary>Live-load factor of emergency vehicles by LRFR, in place of the one in doubt [-].</summary>
    public double? EmergencyFactor { get; init; }

    /// <summary>Live-load factor of permit vehicles [-].</summary>
    public double? PermitFactor { get; init; }

    /// <summary>Factor on components' dead load that relieves, in place of the method's own [-].</summary>
    public double? RelievingComponents { get; init; }

    /// <summary>Factor on the wearing surface that relieves, in place of the method's own [-].</summary>
    public double? RelievingWearingSurface { get; init; }
}
