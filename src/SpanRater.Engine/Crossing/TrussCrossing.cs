namespace SpanRater;

/// <summary>
/// A truss with its dead load on, ready for vehicles to cross it: the peaks of every member under a vehicle. Without rods they
/// come from influence lines; with members that only pull, from dead and live load together.
/// </summary>
public abstract class TrussCrossing
{
    private protected TrussCrossing(InfluenceLines lines, ForceSolution? components, ForceSolution? wearingSurface)
    {
        Lines = lines;
        Components = components;
        WearingSurface = wearingSurface;
    }

    /// <summary>Influence lines; of a truss with rods, those while the rods act that act under dead load.</summary>
    public InfluenceLines Lines { get; }

    /// <summary>Forces under the components' dead load; null where there is none. With rods, while those act that act under all dead load.</summary>
    public ForceSolution? Components { get; }

    /// <summary>Forces under the wearing surface; null where there is none. With rods, while those act that act under all dead load.</summary>
    public ForceSolution? WearingSurface { get; }

    /// <summary>The crossed pairs of rods; empty in a truss without.</summary>
    public virtual IReadOnlyList<CrossedPair> Pairs => [];

    /// <summary>Whether the force in a member depends on which rods act.</summary>
    /// <param name="member">Position of the member.</param>
    public virtual bool DependsOnRods(int member) => false;

    /// <summary>Largest residual of all solutions used [-].</summary>
    public double Residual => Math.Max(Lines.Residual, Math.Max(Components?.Residual ?? 0, WearingSurface?.Residual ?? 0));

    /// <summary>Prepares a truss, or says why no vehicle can be rolled over it.</summary>
    /// <param name="truss">The truss.</param>
    /// <param name="components">Dead load of the components; null for none, which a truss with rods does not take.</param>
    /// <param name="wearingSurface">Dead load of the wearing surface; null for none.</param>
    public static Outcome<TrussCrossing> Of(Truss truss, LoadCase? components, LoadCase? wearingSurface)
    {
        ArgumentNullException.ThrowIfNull(truss);
        if (!SolvableTruss.Of(truss).TryGet(out SolvableTruss? system, out Refusal? refusal))
        {
            return refusal;
        }

        return system is RodTruss rods
            ? RodCrossing.Of(rods, components, wearingSurface)
            : PlainCrossing.Of((LinearTruss)system, components, wearingSurface);
    }

    /// <summary>Prepares a bridge's truss with its dead load on.</summary>
    /// <param name="bridge">The bridge.</param>
    public static Outcome<TrussCrossing> Of(Bridge bridge)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        return Of(bridge.Truss, bridge.FindCase(Bridge.ComponentsCase), bridge.FindCase(Bridge.WearingSurfaceCase));
    }

    /// <summary>The peaks of every member under a vehicle on this truss: total less dead load alone, no impact.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="scale">Part of the vehicle that is on this truss, positive [-].</param>
    public abstract Outcome<IReadOnlyList<PeakPair>> Roll(Vehicle vehicle, double scale = 1);

    /// <summary>The influence lines that hold at a peak: of a truss with rods, those of the set that acts there.</summary>
    /// <param name="peak">A peak that this crossing gave.</param>
    public virtual InfluenceLines LinesAt(Peak peak) => Lines;
}
