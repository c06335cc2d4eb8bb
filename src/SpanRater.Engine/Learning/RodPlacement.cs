namespace SpanRater;

/// <summary>
/// Why a placement gives the peak of one sense in a truss with rods, dead load on: each axle on the lines of the set that acts
/// there, what the change of the set does to the dead load, and the placements it beat. Forces are totals less that of the dead load
/// alone; moved, the rods act as they then do.
/// </summary>
public sealed class RodPlacement : Placement
{
    private readonly RodCrossing crossing;
    private readonly int member;

    private RodPlacement(RodCrossing crossing, int member, Sense sense, Peak peak, PlacementCandidates candidates)
        : base(sense, peak, candidates)
    {
        this.crossing = crossing;
        this.member = member;
    }

    /// <summary>Why the peaks of both senses stand where they do, tension first; null where a sense never occurs.</summary>
    /// <param name="crossing">A truss with rods and its dead load on.</param>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="scale">Part of it that is on this truss [-].</param>
    /// <param name="member">The member, by position.</param>
    /// <param name="count">How many placements of each direction are told, at most.</param>
    /// <exception cref="ArgumentException">The truss has no rods.</exception>
    public static Outcome<IReadOnlyList<RodPlacement?>> Of(TrussCrossing crossing, Vehicle vehicle, double scale, int member, int count)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        RodCrossing rods = crossing as RodCrossing ?? throw new ArgumentException("A truss without rods is told of by its influence lines.", nameof(crossing));
        if (!rods.Roll(vehicle, scale).TryGet(out IReadOnlyList<PeakPair>? peaks, out Refusal? refusal))
        {
            return refusal;
        }

        var told = new List<RodPlacement?>();
        foreach (Sense sense in (Sense[])[Sense.Tension, Sense.Compression])
        {
            if (peaks[member].Of(sense) is not { } peak)
            {
                told.Add(null);
            }
            else if (rods.CandidatesOf(vehicle, scale, member, sense, count).TryGet(out PlacementCandidates? candidates, out refusal))
            {
                told.Add(new RodPlacement(rods, member, sense, peak, candidates));
            }
            else
            {
                return refusal;
            }
        }

        return told;
    }

    /// <inheritdoc/>
    public override double ForceMoved(double distance) => crossing.ChangeUnder(Peak.Axles.Select(a => (a.Load, a.Station + distance)), member);
}
