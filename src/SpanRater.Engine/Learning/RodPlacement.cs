namespace SpanRater;

/// <summary>
/// Why a placement gives the peak of one sense in a truss with rods, dead load on: each axle on the lines of the set that acts
/// there, what the change of the set does to the dead load, and the placements it beat.
/// </summary>
public sealed class RodPlacement
{
    private readonly RodCrossing crossing;
    private readonly int member;

    private RodPlacement(RodCrossing crossing, int member, Sense sense, Peak peak, PlacementCandidates candidates)
    {
        this.crossing = crossing;
        this.member = member;
        Sense = sense;
        Peak = peak;
        Candidates = candidates;
    }

    /// <summary>The sense.</summary>
    public Sense Sense { get; }

    /// <summary>The peak: total less dead load alone.</summary>
    public Peak Peak { get; }

    /// <summary>What the search looked at.</summary>
    public PlacementCandidates Candidates { get; }

    /// <summary>The best placement driving the other way; null where that way gives nothing in this sense.</summary>
    public Peak? OtherWay => (Peak.Direction == Direction.Right ? Candidates.Left : Candidates.Right) is [var best, ..] ? best : null;

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

    /// <summary>The force, less that of the dead load alone, with the whole vehicle moved, its gaps held and rods acting as they then do [N].</summary>
    /// <param name="distance">How far to the right; negative to the left [m].</param>
    public double ForceMoved(double distance) => crossing.ChangeUnder(Peak.Axles.Select(a => (a.Load, a.Station + distance)), member);
}
