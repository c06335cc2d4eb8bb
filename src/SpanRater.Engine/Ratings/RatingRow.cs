namespace SpanRater;

/// <summary>One rating: a part of the bridge, an effect on it, a vehicle and a level, with all that led to the factor.</summary>
public abstract record RatingRow
{
    /// <summary>Name of the truss; null where both are alike, and of what belongs to no truss.</summary>
    public string? Truss { get; init; }

    /// <summary>What kind of part it is.</summary>
    public abstract PartKind Part { get; }

    /// <summary>Name of the member or part.</summary>
    public abstract string Name { get; }

    /// <summary>The effect rated.</summary>
    public abstract PartEffect ActsAs { get; }

    /// <summary>Sense of the force rated; null of any other effect, and of forces that have no sense.</summary>
    public abstract Sense? InSense { get; }

    /// <summary>Place of the part among those of its kind in the bridge folder.</summary>
    public abstract int Order { get; }

    /// <summary>The vehicle or loading.</summary>
    public required LiveLoad Vehicle { get; init; }

    /// <summary>The level and its live-load factor.</summary>
    public required RatingLevel Level { get; init; }

    /// <summary>What stands in the next lane; null where the vehicle is alone or has only its like abreast.</summary>
    public Neighbour? Beside { get; init; }

    /// <summary>What came of it.</summary>
    public required RatingStatus Status { get; init; }

    /// <summary>Why it is not rated; null where it is.</summary>
    public NotRatedReason? Reason { get; init; }

    /// <summary>True where the whole vehicle is not rated: the row says nothing about its part.</summary>
    public bool IsAboutItsVehicle => Reason is not null && !LacksCapacity;

    /// <summary>True where the part is asked for a capacity, or for what its effect follows from, and has none.</summary>
    public bool LacksCapacity => Reason is NotRatedReason.NoCapacity or NotRatedReason.PartLacks;

    /// <summary>Capacity, a magnitude [N or N·m]; null where there is none.</summary>
    public double? Capacity { get; init; }

    /// <summary>Effect of the components' dead load, forces tension positive [N or N·m].</summary>
    public double DeadComponents { get; init; }

    /// <summary>Effect of the wearing surface, forces tension positive [N or N·m].</summary>
    public double DeadWearing { get; init; }

    /// <summary>Factor on the components' dead load, adding or relieving as it acts here [-].</summary>
    public double ComponentsFactor { get; init; }

    /// <summary>Factor on the wearing surface, adding or relieving as it acts here [-].</summary>
    public double WearingFactor { get; init; }

    /// <summary>Factored dead effect, positive in the sense rated [N or N·m].</summary>
    public double FactoredDead { get; init; }

    /// <summary>Share of the vehicle, or of its lane load; null where there is none, and of a crowd.</summary>
    public LateralShare? Share { get; init; }

    /// <summary>Live effect of all parts of the load, forces tension positive, with share and presence, without impact or load factor [N or N·m]; null where none was found.</summary>
    public double? Live { get; init; }

    /// <summary>Length that the formula for impact takes [m]; null where there is no live effect.</summary>
    public double? LoadedLength { get; init; }

    /// <summary>Dynamic allowance on all parts of the load together [-]; null where there is no live effect.</summary>
    public double? Impact { get; init; }

    /// <summary>How much the dead load, and what stands beside the vehicle, take beyond the capacity [N or N·m]; 0 where they leave room.</summary>
    public double Shortfall => Capacity is { } capacity ? Math.Max(0, FactoredDead + (Beside?.Factored ?? 0) - capacity) : 0;

    /// <summary>Rating factor [-]; null where there is none.</summary>
    public double? Factor { get; init; }

    /// <summary>How much of the vehicle, in all its axles, just passes: the factor, but for wheels whose contact grows with them [-]; null where there is no factor.</summary>
    public virtual double? Passes => Factor;

    /// <summary>The factor that the row would have with another capacity, all else as it is; null where the row has no factor of its own.</summary>
    /// <param name="capacity">The capacity, not negative [N or N·m].</param>
    public double? FactorWith(double capacity)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(capacity);
        return FactorAt?.Invoke(capacity);
    }

    /// <summary>How the factor follows from the capacity; null where there is no factor.</summary>
    internal Func<double, double?>? FactorAt { get; init; }

    /// <summary>Whether another row rates the same effect on the same part.</summary>
    /// <param name="other">The other row.</param>
    public bool IsOfSameEffect(RatingRow other)
    {
        ArgumentNullException.ThrowIfNull(other);
        return (Part, Name, Truss, ActsAs, InSense) == (other.Part, other.Name, other.Truss, other.ActsAs, other.InSense);
    }

    /// <summary>
    /// The row with its status and factor, from capacity, factored dead effect and live effect. Dead load that uses up the capacity comes first: it holds
    /// whatever the vehicle, and whether or not that is rated.
    /// </summary>
    /// <param name="withoutCapacity">The row where a capacity is asked for and there is none.</param>
    internal RatingRow Rated(Func<RatingRow, RatingRow> withoutCapacity)
    {
        double? room = Capacity - FactoredDead;
        Func<double, double?>? factorAt = FactorAt;
        if (this is { Live: { } live, Impact: { } allowance, Level.LiveFactor: { } liveFactor, Reason: null })
        {
            double factored = liveFactor * Math.Abs(live) * (1 + allowance), dead = FactoredDead;
            factorAt = capacity => Math.Max(0, capacity - dead) / factored;
        }

        if (room <= 0)
        {
            return this with { FactorAt = factorAt, Status = RatingStatus.DeadExceeds, Factor = 0, Reason = null };
        }

        if (Reason is not null)
        {
            return this;
        }

        if (factorAt is null)
        {
            // A capacity is missing only where something asks for it: here neither live nor dead load acts in this sense.
            return room is null && FactoredDead > 0 ? withoutCapacity(this) : this with { Status = RatingStatus.NotLoaded };
        }

        return Capacity is { } own ? this with { FactorAt = factorAt, Status = RatingStatus.Rated, Factor = factorAt(own) } : withoutCapacity(this with { FactorAt = factorAt });
    }
}
