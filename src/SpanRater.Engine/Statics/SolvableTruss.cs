namespace SpanRater;

/// <summary>A truss whose forces can be found under a load: every member acting, or with members that only pull.</summary>
public abstract class SolvableTruss
{
    private protected SolvableTruss(Truss truss) => Truss = truss;

    /// <summary>The truss.</summary>
    public Truss Truss { get; }

    /// <summary>Makes the system that the truss calls for, or says why there is none.</summary>
    /// <param name="truss">The truss.</param>
    public static Outcome<SolvableTruss> Of(Truss truss)
    {
        ArgumentNullException.ThrowIfNull(truss);
        if (truss.Members.Any(m => m.TensionOnly))
        {
            return RodTruss.Of(truss).TryGet(out RodTruss? rods, out Refusal? noRods) ? rods : noRods;
        }

        return LinearTruss.Of(truss).TryGet(out LinearTruss? linear, out Refusal? refusal) ? linear : refusal;
    }

    /// <summary>Forces under a load case.</summary>
    /// <param name="loads">The case; its joints must be joints of the truss, and those that move must be supported.</param>
    /// <exception cref="ArgumentException">The case names a joint that the truss does not have, or moves one that is not supported.</exception>
    public abstract Outcome<ForceSolution> Solve(LoadCase loads);
}
