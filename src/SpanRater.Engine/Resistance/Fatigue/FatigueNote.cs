namespace SpanRater;

/// <summary>A fatigue note, or all that is missing for it.</summary>
/// <param name="Note">The note; null where something is missing.</param>
/// <param name="Obstacles">What is missing.</param>
public sealed record FatigueCheck(FatigueNote? Note, IReadOnlyList<FatigueObstacle> Obstacles);

/// <summary>
/// How near a member of steel is to the end of its fatigue life under one vehicle that stands for the traffic: an indication, and no inspection.
/// The vehicle is alone in one lane, with the dynamic allowance of fatigue and no load factor.
/// </summary>
public sealed class FatigueNote
{
    /// <summary>Dynamic allowance of fatigue [-]. Source: AASHTO LRFD, 8th ed. (2017), Table 3.6.2.1-1, from memory.</summary>
    public const double Impact = 0.15;

    private FatigueNote(Bridge bridge, int member, Vehicle vehicle, FatigueTraffic traffic, IReadOnlyList<FatigueStress> stresses) =>
        (Bridge, Member, Vehicle, Traffic, Stresses, Worst) = (bridge, member, vehicle, traffic, stresses, stresses.MaxBy(s => (s.Counts, s.Range))!);

    /// <summary>The bridge.</summary>
    public Bridge Bridge { get; }

    /// <summary>Position of the member.</summary>
    public int Member { get; }

    /// <summary>The vehicle.</summary>
    public Vehicle Vehicle { get; }

    /// <summary>How often it crosses.</summary>
    public FatigueTraffic Traffic { get; }

    /// <summary>The stress range on each truss; one where the trusses are alike.</summary>
    public IReadOnlyList<FatigueStress> Stresses { get; }

    /// <summary>The largest of those that count; the largest of all where none does.</summary>
    public FatigueStress Worst { get; }

    /// <summary>The answer of a category; null where no range counts.</summary>
    /// <param name="category">The category.</param>
    public FatigueAnswer? AnswerOf(DetailCategory category) =>
        Worst.Counts ? new FatigueAnswer(category, Worst.Range, Traffic.PassagesAYear * Worst.CyclesAPassage, Traffic.Years) : null;

    /// <summary>The note of a member, or all that is missing for it.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="member">Position of the member.</param>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="traffic">How often it crosses.</param>
    public static FatigueCheck Of(Bridge bridge, int member, Vehicle vehicle, FatigueTraffic traffic)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(vehicle);
        ArgumentNullException.ThrowIfNull(traffic);
        int[] trusses = bridge.RightCases is null && bridge.RightMakes is null ? [bridge.OnlyTruss ?? 0] : [0, 1];
        var obstacles = new List<FatigueObstacle>();
        obstacles.AddRange(trusses.SelectMany(t => FatigueArea.Obstacles(bridge.Truss.Members[member], bridge.MakeOf(t, member))).Distinct());
        if (bridge.FindCase(Bridge.ComponentsCase) is null)
        {
            obstacles.Add(new FatigueObstacle.NoDeadLoad());
        }

        ShareOutcome share = LeverRule.Share(bridge.Deck, vehicle.Gauge, mostLanes: 1, presence: _ => 1);
        if (share is not ShareOutcome.Found)
        {
            obstacles.Add(new FatigueObstacle.NoShare(share));
        }

        if (obstacles.Count > 0)
        {
            return new FatigueCheck(null, obstacles);
        }

        var shares = (ShareOutcome.Found)share;
        bool alike = trusses.Length == 1 && shares.Alike && bridge.OnlyTruss is null;
        var stresses = new List<FatigueStress>();
        foreach (int truss in alike || bridge.OnlyTruss is not null ? trusses : [0, 1])
        {
            if (!Range(bridge, truss, member, vehicle, truss == 1 ? shares.Right : shares.Left).TryGet(out FatigueStress? stress, out Refusal? refusal))
            {
                return new FatigueCheck(null, [new FatigueObstacle.NotSolved(refusal)]);
            }

            stresses.Add(alike ? stress with { Truss = null } : stress);
        }

        return new FatigueCheck(new FatigueNote(bridge, member, vehicle, traffic, stresses), []);
    }

    private static Outcome<FatigueStress> Range(Bridge bridge, int truss, int member, Vehicle vehicle, LateralShare share)
    {
        // With rods effects are not in proportion to the load, so that share and allowance are rolled together.
        IReadOnlyList<PeakPair>? peaks = null;
        if (!TrussCrossing.Of(bridge.OfTruss(truss)).TryGet(out TrussCrossing? crossing, out Refusal? refusal)
            || !crossing.Roll(vehicle, share.Value * (1 + Impact)).TryGet(out peaks, out refusal))
        {
            return refusal!;
        }

        PeakPair pair = peaks![member];
        Peak? any = pair.Tension ?? pair.Compression;
        InfluenceLine line = (any is null ? crossing.Lines : crossing.LinesAt(any)).Members[member].Line;
        FatigueArea area = FatigueArea.Of(bridge.MakeOf(truss, member)!.Section);
        return new FatigueStress(truss)
        {
            Share = share,
            Dead = crossing.Components!.MemberForces[member] + (crossing.WearingSurface?.MemberForces[member] ?? 0),
            Tension = pair.Tension?.Force ?? 0,
            Compression = pair.Compression?.Force ?? 0,
            LoadedLength = line.Regions(Sense.Tension).Concat(line.Regions(Sense.Compression)).Sum(r => r.Length),
            Area = area.Value,
            Place = area.Place,
            IsNet = area.IsNet,
            HeadsNotMeasured = area.HeadsNotMeasured,
        };
    }
}
