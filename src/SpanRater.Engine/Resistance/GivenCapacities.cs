namespace SpanRater;

/// <summary>The capacities that a bridge folder may give for a member.</summary>
public enum GivenCapacity
{
    /// <summary>Factored tensile resistance, for LRFR and LFR.</summary>
    Tension,

    /// <summary>Factored compressive resistance, for LRFR and LFR.</summary>
    Compression,

    /// <summary>Allowable tensile force at inventory level, for ASR.</summary>
    InventoryTension,

    /// <summary>Allowable tensile force at operating level, for ASR.</summary>
    OperatingTension,

    /// <summary>Allowable compressive force at inventory level, for ASR.</summary>
    InventoryCompression,

    /// <summary>Allowable compressive force at operating level, for ASR.</summary>
    OperatingCompression,
}

/// <summary>
/// Capacities given for one member [N], magnitudes, null where none is given. They are used as they stand: resistance,
/// condition and system factors are already in them.
/// </summary>
public sealed record GivenCapacities
{
    private readonly double?[] values = new double?[6];

    /// <summary>Makes the set.</summary>
    /// <param name="values">Capacity by kind, positive [N]; a kind that is not there is not given.</param>
    /// <exception cref="ArgumentException">A capacity is not positive and finite.</exception>
    public GivenCapacities(IReadOnlyDictionary<GivenCapacity, double> values)
    {
        ArgumentNullException.ThrowIfNull(values);
        foreach ((GivenCapacity kind, double value) in values)
        {
            if (!(value > 0 && double.IsFinite(value)))
            {
                throw new ArgumentException($"The {kind} capacity must be positive and finite [N]; it is {value}.", nameof(values));
            }

            this.values[(int)kind] = value;
        }
    }

    /// <summary>No capacity at all.</summary>
    public static GivenCapacities None { get; } = new(new Dictionary<GivenCapacity, double>());

    /// <summary>The capacity of a kind [N], or null.</summary>
    /// <param name="kind">The kind.</param>
    public double? this[GivenCapacity kind] => values[(int)kind];
}
