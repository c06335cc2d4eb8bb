namespace SpanRater;

/// <summary>Why a vehicle stands where it does at the peak of one sense: the peak, and the placements it beat.</summary>
public abstract class Placement
{
    private protected Placement(Sense sense, Peak peak, PlacementCandidates candidates)
    {
        Sense = sense;
        Peak = peak;
        Candidates = candidates;
    }

    /// <summary>The sense.</summary>
    public Sense Sense { get; }

    /// <summary>The peak.</summary>
    public Peak Peak { get; }

    /// <summary>What the search looked at.</summary>
    public PlacementCandidates Candidates { get; }

    /// <summary>The best placement driving the other way; null where that way gives nothing in this sense.</summary>
    public Peak? OtherWay => (Peak.Direction == Direction.Right ? Candidates.Left : Candidates.Right) is [var best, ..] ? best : null;

    /// <summary>The force with the whole vehicle moved, its gaps held [N].</summary>
    /// <param name="distance">How far to the right; negative to the left [m].</param>
    public abstract double ForceMoved(double distance);
}
