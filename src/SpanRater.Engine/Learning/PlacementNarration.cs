namespace SpanRater;

/// <summary>An axle at a peak, and how the line runs on either side of it.</summary>
/// <param name="Axle">The axle.</param>
/// <param name="PanelPoint">The panel point on which it stands, by position in the line's stations; null between them and off the deck.</param>
/// <param name="IsOnDeck">False where it is off the deck.</param>
/// <param name="SlopeLeft">Slope of what the axle adds for a unit load, just to the left of it [effect/load/m]; 0 where it adds nothing.</param>
/// <param name="SlopeRight">The same just to the right of it.</param>
public readonly record struct AxleOnLine(AxleEffect Axle, int? PanelPoint, bool IsOnDeck, double SlopeLeft, double SlopeRight);

/// <summary>
/// Why a placement gives the peak of one sense: each axle's share, the placements it beat, and how the effect changes as the
/// vehicle moves a little either way. At a peak the sum of load times slope does not grow in either direction: the
/// classical criterion that it changes its sign there.
/// </summary>
public sealed class PlacementNarration : Placement
{
    private readonly InfluenceLine line;
    private readonly AxleTrain train;

    private PlacementNarration(InfluenceLine line, AxleTrain train, Sense sense, Peak peak, PlacementCandidates candidates)
        : base(sense, peak, candidates)
    {
        this.line = line;
        this.train = train;
        Axles = [.. peak.Axles.Select(Describe)];
    }

    /// <summary>Each axle, front to back.</summary>
    public IReadOnlyList<AxleOnLine> Axles { get; }

    /// <summary>Change of the effect for each metre that the vehicle moves to the right, its gaps held [N/m].</summary>
    public double ChangeToTheRight => Axles.Sum(a => a.Axle.Load * a.SlopeRight);

    /// <summary>Change of the effect for each metre that the vehicle moves to the left, its gaps held [N/m].</summary>
    public double ChangeToTheLeft => -Axles.Sum(a => a.Axle.Load * a.SlopeLeft);

    /// <summary>True where an axle stands on a deck end whose ordinate is not zero, so that the effect jumps there and slopes do not tell all.</summary>
    public bool Jumps => Peak.Approach != Approach.At || Axles.Any(a => a.PanelPoint is { } p && (p == 0 || p == line.Stations.Count - 1) && line.Ordinates[p] != 0);

    /// <summary>Why the peak of a sense stands where it does; null where the sense never occurs.</summary>
    /// <param name="plan">The search.</param>
    /// <param name="line">The influence line.</param>
    /// <param name="sense">The sense.</param>
    /// <param name="count">How many placements of each direction are told, at most.</param>
    public static PlacementNarration? Of(RollingPlan plan, InfluenceLine line, Sense sense, int count)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(line);
        return plan.PeaksOf(line).Of(sense) is { } peak
            ? new PlacementNarration(line, plan.Train, sense, peak, plan.CandidatesOf(line, sense, count))
            : null;
    }

    /// <inheritdoc/>
    public override double ForceMoved(double distance) => Peak.Axles.Sum(a =>
    {
        double effect = a.Load * line.OrdinateAt(a.Station + distance);
        return IsLeftOut(effect) ? 0 : effect;
    });

    private bool IsLeftOut(double effect) => train.RelievingAxles == RelievingAxles.LeftOut && (Sense == Sense.Tension ? effect : -effect) < 0;

    private AxleOnLine Describe(AxleEffect axle)
    {
        IReadOnlyList<double> stations = line.Stations;
        double near = RollingPlan.OnPanelPoint * (stations[^1] - stations[0]);
        int? point = Enumerable.Range(0, stations.Count).Where(i => Math.Abs(stations[i] - axle.Station) <= near).Select(i => (int?)i).FirstOrDefault();
        bool on = axle.Station >= stations[0] - near && axle.Station <= stations[^1] + near;
        double left = 0, right = 0;
        for (int i = 1; i < stations.Count && on; i++)
        {
            double slope = (line.Ordinates[i] - line.Ordinates[i - 1]) / (stations[i] - stations[i - 1]);
            left = axle.Station > stations[i - 1] + near && axle.Station <= stations[i] + near ? slope : left;
            right = axle.Station >= stations[i - 1] - near && axle.Station < stations[i] - near ? slope : right;
        }

        return new AxleOnLine(axle, point, on, Counted(axle, left, -1), Counted(axle, right, 1));
    }

    // A relieving axle that is left out adds nothing on either side; one at zero adds only where it would help.
    private double Counted(AxleEffect axle, double slope, int way)
    {
        double sign = Sense == Sense.Tension ? 1 : -1;
        bool nothing = train.RelievingAxles == RelievingAxles.LeftOut && (sign * axle.Ordinate < 0 || (axle.Ordinate == 0 && way * sign * slope < 0));
        return nothing ? 0 : slope;
    }
}
