namespace SpanRater;

/// <summary>The distance between an axle and the one ahead of it: fixed, or any value within a range.</summary>
public readonly record struct AxleGap
{
    /// <summary>A gap.</summary>
    /// <param name="least">Smallest distance, positive [m].</param>
    /// <param name="most">Largest distance; equal to the smallest for a fixed gap [m].</param>
    /// <exception cref="ArgumentOutOfRangeException">A distance is not positive and finite, or the range is reversed.</exception>
    public AxleGap(double least, double most)
    {
        if (!(least > 0 && double.IsFinite(least)))
        {
            throw new ArgumentOutOfRangeException(nameof(least), least, "An axle gap must be a positive length [m].");
        }

        if (!(most >= least && double.IsFinite(most)))
        {
            throw new ArgumentOutOfRangeException(nameof(most), most, $"An axle gap's largest value must be finite and not below its smallest, {least} m.");
        }

        Least = least;
        Most = most;
    }

    /// <summary>Smallest distance [m].</summary>
    public double Least { get; }

    /// <summary>Largest distance [m].</summary>
    public double Most { get; }

    /// <summary>True when the gap may take more than one value.</summary>
    public bool Varies => Most > Least;

    /// <summary>A gap of one length.</summary>
    /// <param name="length">Distance, positive [m].</param>
    public static AxleGap Fixed(double length) => new(length, length);
}

/// <summary>How axles that relieve the effect sought are treated.</summary>
public enum RelievingAxles
{
    /// <summary>The vehicle is used whole.</summary>
    Counted,

    /// <summary>An axle whose effect is of the other sense counts nothing.</summary>
    LeftOut,
}

/// <summary>Axles in a row, from the front axle back. Immutable.</summary>
public sealed class AxleTrain
{
    /// <summary>At most so many gaps may vary.</summary>
    public const int MostVaryingGaps = 3;

    private readonly double[] loads;
    private readonly AxleGap[] gaps;

    /// <summary>Makes a train.</summary>
    /// <param name="loads">Axle loads, positive, from the front axle back [N].</param>
    /// <param name="gaps">Distance of each axle from the one ahead; one less than the axles.</param>
    /// <param name="relievingAxles">How axles that relieve the effect sought are treated.</param>
    /// <exception cref="ArgumentException">There is no axle, a load is not positive and finite, the gaps do not match, or more than three vary.</exception>
    public AxleTrain(IReadOnlyList<double> loads, IReadOnlyList<AxleGap> gaps, RelievingAxles relievingAxles = RelievingAxles.Counted)
    {
        ArgumentNullException.ThrowIfNull(loads);
        ArgumentNullException.ThrowIfNull(gaps);
        if (loads.Count == 0 || !loads.All(load => load > 0 && double.IsFinite(load)))
        {
            throw new ArgumentException("A train has at least one axle, and every axle load is positive [N].", nameof(loads));
        }

        if (gaps.Count != loads.Count - 1)
        {
            throw new ArgumentException($"{gaps.Count} gaps for {loads.Count} axles; there must be one less than the axles.", nameof(gaps));
        }

        if (!gaps.All(gap => gap.Least > 0))
        {
            throw new ArgumentException("A gap without a length stands in the list.", nameof(gaps));
        }

        if (gaps.Count(gap => gap.Varies) > MostVaryingGaps)
        {
            throw new ArgumentException($"At most {MostVaryingGaps} gaps of a train may vary.", nameof(gaps));
        }

        this.loads = [.. loads];
        this.gaps = [.. gaps];
        RelievingAxles = relievingAxles;
        Weight = this.loads.Sum();
    }

    /// <summary>Axle loads, from the front axle back [N].</summary>
    public IReadOnlyList<double> Loads => loads;

    /// <summary>Distance of each axle from the one ahead; one less than the axles.</summary>
    public IReadOnlyList<AxleGap> Gaps => gaps;

    /// <summary>How axles that relieve the effect sought are treated.</summary>
    public RelievingAxles RelievingAxles { get; }

    /// <summary>Sum of the axle loads [N].</summary>
    public double Weight { get; }

    /// <summary>The same train with every axle load times a factor.</summary>
    /// <param name="factor">The factor, positive [-].</param>
    public AxleTrain Times(double factor) => new([.. loads.Select(load => factor * load)], gaps, RelievingAxles);

    /// <summary>This train with another behind it.</summary>
    /// <param name="gap">From the last axle of this one to the first of the other.</param>
    /// <param name="follower">The train behind; relieving axles are left out only where both leave them out.</param>
    /// <exception cref="ArgumentException">More than three gaps would vary.</exception>
    public AxleTrain FollowedBy(AxleGap gap, AxleTrain follower)
    {
        ArgumentNullException.ThrowIfNull(follower);
        RelievingAxles relieving = RelievingAxles == follower.RelievingAxles ? RelievingAxles : RelievingAxles.Counted;
        return new AxleTrain([.. loads, .. follower.loads], [.. gaps, gap, .. follower.gaps], relieving);
    }
}
