using CsCheck;

namespace SpanRater.Tests;

/// <summary>The exact search with rods held against a stepped sweep in which every position has its own acting set.</summary>
public class RodRollingProperties
{
    private const double StepOfPanel = 1 / 40.0;

    [Fact]
    public void Roll_RandomRodsAndFixedGaps_MatchesTheSweep() => SeededCases.Check(
        from truss in RandomRodTrusses.Paired(mostPairs: 3, mayHang: false, mayStand: 0)
        from dead in Dead(truss)
        from train in Train(truss, 0)
        from scale in Gen.Double[0.4, 1.5]
        where truss.Members.Any(m => m.TensionOnly)
        select (truss, dead, train, scale),
        150,
        c => AssertMatchesSweep(c.truss, c.dead, c.train, c.scale, 1));

    [Fact]
    public void Roll_RandomRodsAndVaryingGaps_MatchesTheSweep() => SeededCases.Check(
        from truss in RandomRodTrusses.Paired(mostPairs: 2, mayHang: false, mayStand: 0)
        from dead in Dead(truss)
        from train in Train(truss, 2)
        where truss.Members.Any(m => m.TensionOnly)
        select (truss, dead, train),
        30,
        c => AssertMatchesSweep(c.truss, c.dead, c.train, 1, 8));

    // Whole numbers throughout: axles on several panel points at once, and rods at zero where an axle stands on one.
    [Fact]
    public void Roll_WholeNumbers_MatchesTheSweep() => SeededCases.Check(
        from panels in Gen.Int[4, 6]
        from crossed in Gen.Shuffle(Enumerable.Range(1, panels - 2).ToArray())
        from count in Gen.Int[1, 2]
        from dead in Gen.Int[0, 2]
        from loads in Gen.Int[1, 3].Array[1, 3]
        from gaps in Gen.Int[1, 3].Array[loads.Length - 1]
        let truss = Level(panels, [.. crossed.Take(count)])
        select (
            truss,
            dead: new LoadCase("DC", [.. truss.PanelPoints.Select(p => new JointLoad(truss.Joints[p].Name, 0, -1000.0 * dead))]),
            train: new AxleTrain([.. loads.Select(l => 1000.0 * l)], [.. gaps.Select(g => AxleGap.Fixed(2 * g))])),
        60,
        c => AssertMatchesSweep(c.truss, c.dead, c.train, 1, 1));

    // The peak's position, solved as a load case of its own, gives the reported force.
    [Fact]
    public void Roll_RandomRods_IsTheSolutionOfTheLoadWhereItStands() => SeededCases.Check(
        from truss in RandomRodTrusses.Paired(mostPairs: 3, mayHang: false, mayStand: 0)
        from dead in Dead(truss)
        from train in Train(truss, 2)
        where truss.Members.Any(m => m.TensionOnly)
        select (truss, dead, train),
        40,
        c =>
        {
            RodTruss system = RodTruss.Of(c.truss).Value!;
            IReadOnlyList<PeakPair> peaks = Roll(c.truss, c.dead, c.train, 1);
            IReadOnlyList<double> alone = system.Solve(c.dead).Value!.MemberForces;
            for (int m = 0; m < peaks.Count; m++)
            {
                foreach (Peak peak in new[] { peaks[m].Tension, peaks[m].Compression }.OfType<Peak>())
                {
                    LoadCase live = new("live", [.. peak.Axles.SelectMany(a => OnPanelPoints(c.truss, a))]);
                    IReadOnlyList<double> total = system.Solve(LoadCase.Sum("both", (c.dead, 1), (live, 1))).Value!.MemberForces;
                    Assert.Equal(total[m] - alone[m], peak.Force, 1e-6 * (c.train.Weight + Math.Abs(alone[m])));
                }
            }
        });

    [Fact]
    public void Roll_OtherMembersThatOnlyPull_IsRefusedWhereTheSweepPressesOne() => SeededCases.Check(
        from truss in RandomRodTrusses.Paired(mostPairs: 2, mayHang: false, mayStand: 0.2)
        from heavy in Gen.Double[1e4, 6e4]
        from train in Train(truss, 0)
        where truss.Members.Any(m => m.TensionOnly)
        select (truss, dead: new LoadCase("DC", [.. truss.PanelPoints.Select(p => new JointLoad(truss.Joints[p].Name, 0, -heavy))]), train),
        150,
        c =>
        {
            RodTruss system = RodTruss.Of(c.truss).Value!;
            int[] unpaired = [.. Enumerable.Range(0, c.truss.Members.Count).Where(m => c.truss.Members[m].TensionOnly && !system.Pairs.Any(p => p.First == m || p.Second == m))];
            double step = (c.truss.Stations[1] - c.truss.Stations[0]) * StepOfPanel, small = 1e-6 * (c.train.Weight + 1e5);
            var sweep = new RodSweep(c.truss, [c.dead], c.train, step, 1);
            double[] alone = sweep.Alone([1]), least = sweep.Totals([1], 1).Least;
            Outcome<TrussCrossing> crossing = TrussCrossing.Of(c.truss, c.dead, null);
            if (unpaired.Any(m => alone[m] < -small))
            {
                Assert.IsType<Refusal.UncarriedCompression>(crossing.Refusal);
                return;
            }

            Outcome<IReadOnlyList<PeakPair>> roll = crossing.Value!.Roll(VehicleOf(c.train));
            if (unpaired.Any(m => least[m] < -small))
            {
                var refusal = Assert.IsType<Refusal.UncarriedCompression>(roll.Refusal);
                int rod = c.truss.FindMember(refusal.Member)!.Value;
                Assert.Contains(rod, unpaired);
                Assert.True(refusal.Force <= unpaired.Min(m => least[m]) + small);
                Assert.True(refusal.Force >= least[rod] - sweep.MostMissed(rod, 1) - small);
            }
            else if (unpaired.All(m => least[m] - sweep.MostMissed(m, 1) > small))
            {
                Assert.Null(roll.Refusal);
            }
        });

    internal static Vehicle VehicleOf(AxleTrain train) => new("train", VehicleClass.Legal, train, Vehicle.StandardGauge, "made up for the test");

    /// <summary>Dead load of up to a third of a heavy axle at each panel point, uneven.</summary>
    internal static Gen<LoadCase> Dead(Truss truss, string name = "DC") =>
        Gen.Double[500, 2e4].Array[truss.PanelPoints.Count]
            .Select(loads => new LoadCase(name, [.. truss.PanelPoints.Select((p, i) => new JointLoad(truss.Joints[p].Name, 0, -loads[i]))]));

    /// <summary>A train of one to four axles, shorter than the deck.</summary>
    internal static Gen<AxleTrain> Train(Truss truss, int mostVarying) =>
        from axles in Gen.Int[mostVarying > 0 ? 2 : 1, 4]
        from loads in Gen.Double[1e4, 1e5].Array[axles]
        from gaps in Gen.Double[0.2, 2].Array[axles - 1]
        from ranges in Gen.Double[0.3, 1.5].Array[axles - 1]
        from varying in Gen.Int[Math.Min(1, mostVarying), mostVarying]
        let panel = truss.Stations[1] - truss.Stations[0]
        select new AxleTrain(loads, [.. gaps.Select((g, i) => i < varying ? new AxleGap(g * panel, (g + ranges[i]) * panel) : AxleGap.Fixed(g * panel))]);

    private static void AssertMatchesSweep(Truss truss, LoadCase dead, AxleTrain train, double scale, int gapSteps)
    {
        IReadOnlyList<PeakPair> peaks = Roll(truss, dead, train, scale);
        var sweep = new RodSweep(truss, [dead], train, (truss.Stations[1] - truss.Stations[0]) * StepOfPanel, gapSteps);
        double[] alone = sweep.Alone([1]);
        (double[] most, double[] least) = sweep.Totals([1], scale);
        double equal = 1e-9 * ((train.Weight * scale) + alone.Max(Math.Abs));
        for (int m = 0; m < truss.Members.Count; m++)
        {
            double missed = sweep.MostMissed(m, scale);
            AssertPeak(truss.Members[m].Name, peaks[m].Tension?.Force ?? 0, most[m] - alone[m], missed, equal);
            AssertPeak(truss.Members[m].Name, -(peaks[m].Compression?.Force ?? 0), alone[m] - least[m], missed, equal);
        }
    }

    private static void AssertPeak(string member, double exact, double swept, double missed, double equal)
    {
        Assert.True(exact >= swept - equal, $"{member}: the sweep reaches {swept:R}, the search {exact:R}.");
        Assert.True(exact <= swept + missed + equal, $"{member}: the search reports {exact:R}, the sweep {swept:R}, which misses {missed:R} at most.");
    }

    private static IReadOnlyList<PeakPair> Roll(Truss truss, LoadCase dead, AxleTrain train, double scale)
    {
        Assert.True(TrussCrossing.Of(truss, dead, null).TryGet(out TrussCrossing? crossing, out Refusal? refusal), $"{refusal}");
        Assert.True(crossing.Roll(VehicleOf(train), scale).TryGet(out IReadOnlyList<PeakPair>? peaks, out refusal), $"{refusal}");
        return peaks;
    }

    private static IEnumerable<JointLoad> OnPanelPoints(Truss truss, AxleEffect axle)
    {
        for (int i = 1; i < truss.Stations.Count; i++)
        {
            double left = truss.Stations[i - 1], right = truss.Stations[i], t = (axle.Station - left) / (right - left);
            if (t is >= 0 and < 1)
            {
                yield return new JointLoad(truss.Joints[truss.PanelPoints[i - 1]].Name, 0, -axle.Load * (1 - t));
                yield return new JointLoad(truss.Joints[truss.PanelPoints[i]].Name, 0, -axle.Load * t);
            }
        }
    }

    private static Truss Level(int panels, int[] crossed)
    {
        Truss pratt = new PrattTruss(panels, 4, 3).Build();
        var members = pratt.Members.Select(m => m with { TensionOnly = crossed.Any(i => m.Name == $"U{i}L{i + 1}" || m.Name == $"L{i}U{i + 1}") }).ToList();
        foreach (int i in crossed)
        {
            (string from, string to) = pratt.FindMember($"U{i}L{i + 1}") is null ? ($"U{i}", $"L{i + 1}") : ($"L{i}", $"U{i + 1}");
            members.Add(new Member(from + to, from, to, TensionOnly: true));
        }

        return RandomRedundantTrusses.With(pratt, members);
    }
}
