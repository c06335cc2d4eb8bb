namespace SpanRater;

/// <summary>A step from one hole to the next that is not square to the member.</summary>
/// <param name="Pitch">s, along the member [m].</param>
/// <param name="Gauge">g, across it [m].</param>
public readonly record struct Stagger(double Pitch, double Gauge);

/// <summary>
/// The holes in the path that leaves a part the least net area: each takes its diameter, each stagger gives back s²/(4 g).
/// Source: AASHTO LRFD, 8th ed. (2017), 6.8.3, from memory.
/// </summary>
public sealed class HolePath
{
    /// <summary>Makes a path.</summary>
    /// <param name="count">Holes in the path, 0 where there are none.</param>
    /// <param name="diameter">Diameter taken out for each, allowance for punching in it [m].</param>
    /// <param name="staggers">Staggers in the path, fewer than holes.</param>
    /// <param name="wall">The wall that they go through; null where the shape has one thickness only, or for the thicker of two.</param>
    /// <exception cref="ArgumentException">A value is negative or not finite, or there are as many staggers as holes.</exception>
    public HolePath(int count, double diameter, IReadOnlyList<Stagger> staggers, ShapeDimension? wall = null)
    {
        ArgumentNullException.ThrowIfNull(staggers);
        ArgumentOutOfRangeException.ThrowIfNegative(count);
        if (!(diameter >= 0 && double.IsFinite(diameter)) || (count > 0 && diameter == 0))
        {
            throw new ArgumentOutOfRangeException(nameof(diameter), diameter, "A hole has a diameter above 0 m.");
        }

        if (staggers.Count > 0 && staggers.Count >= count)
        {
            throw new ArgumentException($"There are {staggers.Count} staggers and {count} holes: a stagger is between two holes.", nameof(staggers));
        }

        if (staggers.Any(s => !(s.Pitch >= 0 && s.Gauge > 0 && double.IsFinite(s.Pitch) && double.IsFinite(s.Gauge))))
        {
            throw new ArgumentException("A stagger has a pitch of 0 m or more and a gauge above 0 m.", nameof(staggers));
        }

        (Count, Diameter, Staggers, Wall) = (count, diameter, [.. staggers], wall);
    }

    /// <summary>No holes: welded, or upset and looped bars.</summary>
    public static HolePath None { get; } = new(0, 0, []);

    /// <summary>Holes in the path.</summary>
    public int Count { get; }

    /// <summary>Diameter taken out for each [m].</summary>
    public double Diameter { get; }

    /// <summary>Staggers in the path.</summary>
    public IReadOnlyList<Stagger> Staggers { get; }

    /// <summary>The wall that they go through; null where the shape has one thickness only, or for the thicker of two.</summary>
    public ShapeDimension? Wall { get; }

    /// <summary>Width that the path takes away, n d − Σ s²/(4 g), not below the straight cut through one hole [m].</summary>
    public double Deduction => Math.Max(Count > 0 ? Diameter : 0, (Count * Diameter) - Staggers.Sum(s => s.Pitch * s.Pitch / (4 * s.Gauge)));
}
