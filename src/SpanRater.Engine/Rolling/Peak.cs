namespace SpanRater;

/// <summary>The way a vehicle drives.</summary>
public enum Direction
{
    /// <summary>To the right: the front axle has the largest x.</summary>
    Right,

    /// <summary>To the left: the front axle has the smallest x.</summary>
    Left,
}

/// <summary>
/// At a deck end whose ordinate is not zero the response jumps as an axle crosses it. A peak stands at the position
/// itself, where an axle on an end counts, or in the limit just to one side of it.
/// </summary>
public enum Approach
{
    /// <summary>The position itself.</summary>
    At,

    /// <summary>The limit with the axles a little further left: those at the left end of the deck are off it.</summary>
    JustLeft,

    /// <summary>The limit with the axles a little further right: those at the right end of the deck are off it.</summary>
    JustRight,
}

/// <summary>One axle where a peak occurs.</summary>
/// <param name="Load">Axle load [N].</param>
/// <param name="Station">x of the axle [m].</param>
/// <param name="Ordinate">Ordinate of the influence line under it; 0 off the deck [effect/load].</param>
/// <param name="Effect">What the axle adds to the peak; 0 where a relieving axle is left out [effect].</param>
public readonly record struct AxleEffect(double Load, double Station, double Ordinate, double Effect);

/// <summary>The largest effect of a train in one sense, and where it stood.</summary>
/// <param name="Force">Signed effect, tension positive [N].</param>
/// <param name="Station">x of the front axle [m].</param>
/// <param name="Direction">The way the vehicle drives.</param>
/// <param name="Gaps">All gaps, front to back, at the peak [m].</param>
/// <param name="Axles">Each axle with its position and its share of the peak, front to back.</param>
/// <param name="Approach">
/// Whether the peak is at the station itself, or in the limit just to one side of it, with an axle at a deck end already off.
/// Where gaps vary and several axles are at deck ends, the side of the foremost of them.
/// </param>
public sealed record Peak(
    double Force,
    double Station,
    Direction Direction,
    IReadOnlyList<double> Gaps,
    IReadOnlyList<AxleEffect> Axles,
    Approach Approach = Approach.At)
{
    /// <summary>Which rods are slack there and what that does to the dead load; null where the truss has none.</summary>
    public PeakRods? Rods { get; init; }
}

/// <summary>The rods at a peak. The force is that of the axles on the lines of this set, and the shift of the dead load.</summary>
/// <param name="Slack">Positions of the members of crossed pairs that are slack there.</param>
/// <param name="DeadShift">Dead force while this set acts less dead force alone [N].</param>
/// <param name="AtZero">Crossed pairs, by position, of which both rods are just at zero there.</param>
public sealed record PeakRods(IReadOnlyList<int> Slack, double DeadShift, IReadOnlyList<int> AtZero);

/// <summary>The peaks of one influence line under one train.</summary>
/// <param name="Tension">Largest positive effect; null where there is none.</param>
/// <param name="Compression">Largest negative effect; null where there is none.</param>
public sealed record PeakPair(Peak? Tension, Peak? Compression)
{
    /// <summary>The peak of a sense, or null.</summary>
    /// <param name="sense">The sense.</param>
    public Peak? Of(Sense sense) => sense == Sense.Tension ? Tension : Compression;
}
