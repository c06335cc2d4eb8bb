using CsCheck;

namespace SpanRater.Tests;

/// <summary>
/// What a rating factor means where rods go slack: the smallest scale of the factored vehicle at which some position, some
/// direction and some pair of dead factors brings the total to the capacity, held against a stepped sweep; and, where no
/// rod changes its state, the plain rating equation.
/// </summary>
public class RodRatingProperties
{
    /// <summary>Live factor of unknown truck traffic, and impact.</summary>
    private const double Live = 1.45 * 1.33;

    private static readonly double[][] DeadFactors = [[1.25, 1.50], [1.25, 0.65], [0.90, 1.50], [0.90, 0.65]];

    [Fact]
    public void Rate_RandomRods_GivesTheSmallestScaleThatReachesTheCapacity() => SeededCases.Check(
        from truss in RandomRodTrusses.Paired(mostPairs: 2, mayHang: false, mayStand: 0)
        from dc in RodRollingProperties.Dead(truss, "DC")
        from dw in RodRollingProperties.Dead(truss, "DW")
        from train in RodRollingProperties.Train(truss, 0)
        from room in Gen.Double[-0.1, 2.5].Array[2 * truss.Members.Count]
        from rows in Gen.Int[0, (2 * truss.Members.Count) - 1].Array[4]
        where truss.Members.Any(m => m.TensionOnly)
        select (truss, dc, dw, train, room, rows),
        30,
        c =>
        {
            var sweep = new RodSweep(c.truss, [c.dc, c.dw], c.train, (c.truss.Stations[1] - c.truss.Stations[0]) / 20, 1);
            double[][] alone = [.. DeadFactors.Select(sweep.Alone)];
            (double[] most, double[] least) = sweep.Totals([1.25, 1.50], Live);
            GivenCapacities[] capacities =
            [
                .. c.truss.Members.Select((_, m) => Capacities(
                    alone.Max(a => a[m]) + (c.room[2 * m] * Math.Max(most[m] - alone[0][m], 1e3)),
                    alone.Max(a => -a[m]) + (c.room[(2 * m) + 1] * Math.Max(alone[0][m] - least[m], 1e3)))),
            ];
            BridgeRating rating = Rate(c.truss, capacities, c.train, c.dc, c.dw);
            foreach (int row in c.rows)
            {
                AssertMeaning(rating.MemberRows.Single(r => r.MemberIndex == row / 2 && r.Sense == (Sense)(row % 2)), sweep, c.train);
            }
        });

    // Of a light vehicle and a capacity just above the dead load no rod takes notice, and the truss of the mains alone says the same.
    [Fact]
    public void Rate_NoRodChangesItsState_IsThePlainEquation()
    {
        int compared = 0;
        SeededCases.Check(
            from truss in RandomRodTrusses.Paired(mostPairs: 3, mayHang: false, mayStand: 0)
            from dc in RodRollingProperties.Dead(truss, "DC")
            from dw in RodRollingProperties.Dead(truss, "DW")
            from train in RodRollingProperties.Train(truss, 1)
            where truss.Members.Any(m => m.TensionOnly)
            select (truss, dc, dw, train),
            60,
            c =>
            {
                RodTruss system = RodTruss.Of(c.truss).Value!;
                int[] slack = [.. system.SlackUnder(system.Solve(LoadCase.Sum("dead", (c.dc, 1), (c.dw, 1))).Value!)];
                OwnStatics mains = OwnStatics.Without(c.truss, slack)!;
                double[][] dead = [.. DeadFactors.Select(f => mains.Forces(LoadCase.Sum("dead", (c.dc, f[0]), (c.dw, f[1]))))];
                int[] acting = [.. system.Pairs.SelectMany(p => new[] { p.First, p.Second }).Except(slack)];
                double slackens = acting.Length == 0 ? 0 : acting.Min(r => dead.Min(d => d[r]));
                if (slackens < 1)
                {
                    return;
                }

                GivenCapacities[] capacities = [.. c.truss.Members.Select((_, m) => Capacities(dead.Max(d => d[m]) + (0.01 * slackens), dead.Max(d => -d[m]) + (0.01 * slackens)))];
                int[] kept = [.. Enumerable.Range(0, c.truss.Members.Count).Except(slack)];
                Truss plain = RandomRedundantTrusses.With(c.truss, kept.Select(m => c.truss.Members[m] with { TensionOnly = false }));
                BridgeRating withRods = Rate(c.truss, capacities, c.train, c.dc, c.dw), without = Rate(plain, [.. kept.Select(m => capacities[m])], c.train, c.dc, c.dw);
                foreach (MemberRow expected in without.MemberRows.Where(r => r.Factor * Live * c.train.Weight * 5 < slackens))
                {
                    MemberRow row = withRods.MemberRows.Single(r => r.Member.Name == expected.Member.Name && r.Sense == expected.Sense);
                    if (row.Member.TensionOnly && row.Sense == Sense.Compression)
                    {
                        Assert.Equal(RatingStatus.Slack, row.Status);
                        continue;
                    }

                    Assert.Equal(expected.Status, row.Status);
                    Assert.Equal(expected.Factor!.Value, row.Factor!.Value, 1e-6 * expected.Factor.Value);
                    Assert.Equal(expected.ComponentsFactor, row.ComponentsFactor);
                    Assert.Equal(expected.WearingFactor, row.WearingFactor);
                    Assert.Equal(slack.Order(), row.SlackAtFactor!.Order());
                    compared++;
                }
            });
        Assert.True(compared > 200, $"{compared} rows compared.");
    }

    // Without pairs nothing takes over: the first rod that would be pressed ends every rating, or withholds them all.
    [Fact]
    public void Rate_MembersThatOnlyPullWithoutPartners_CapOrWithholdThePlainFactors()
    {
        int withheld = 0, capped = 0, rated = 0;
        SeededCases.Check(
            from truss in RandomRodTrusses.Paired(mostPairs: 0, mayHang: false, mayStand: 0.25)
            from heavy in Gen.Double[3e4, 4e5]
            from wearing in Gen.Double[0, 0.5]
            from train in RodRollingProperties.Train(truss, 1)
            from room in Gen.Double[-0.1, 12].Array[2 * truss.Members.Count]
            where truss.Members.Any(m => m.TensionOnly)
            select (truss, heavy, wearing, train, room),
            250,
            c =>
            {
                LoadCase Even(string name, double down) => new(name, [.. c.truss.PanelPoints.Select(p => new JointLoad(c.truss.Joints[p].Name, 0, -down))]);
                LoadCase dc = Even("DC", c.heavy), dw = Even("DW", c.heavy * c.wearing);
                Truss plain = RandomRedundantTrusses.With(c.truss, c.truss.Members.Select(m => m with { TensionOnly = false }));
                OwnStatics statics = OwnStatics.Without(plain, [])!;
                double[] components = statics.Forces(dc), surface = statics.Forces(dw);
                int[] rods = [.. Enumerable.Range(0, plain.Members.Count).Where(m => c.truss.Members[m].TensionOnly)];
                if (rods.Any(r => components[r] + surface[r] < -1e-6 * c.heavy))
                {
                    Assert.IsType<Refusal.UncarriedCompression>(BridgeRater.Rate(BridgeOf(c.truss, [], dc, dw), RatingMethod.Find("LRFR")!, [RodRollingProperties.VehicleOf(c.train)]).Refusal);
                    return;
                }

                double Factored(int m, double sign) => DeadFactors.Max(f => sign * ((f[0] * components[m]) + (f[1] * surface[m])));
                IReadOnlyList<PeakPair> peaks = TrussCrossing.Of(plain, null, null).Value!.Roll(RodRollingProperties.VehicleOf(c.train)).Value!;
                double cap = rods.Select(r => peaks[r].Compression is { } peak ? -Factored(r, -1) / (Live * -peak.Force) : double.PositiveInfinity).Min();
                if (Math.Abs(cap - 1) < 1e-6)
                {
                    return;
                }

                GivenCapacities[] capacities =
                [
                    .. plain.Members.Select((_, m) => Capacities(
                        Factored(m, 1) + (c.room[2 * m] * Math.Max(1e3, Live * peaks[m].Tension?.Force ?? 0)),
                        Factored(m, -1) + (c.room[(2 * m) + 1] * Math.Max(1e3, -Live * peaks[m].Compression?.Force ?? 0)))),
                ];
                BridgeRating withRods = Rate(c.truss, capacities, c.train, dc, dw), without = Rate(plain, capacities, c.train, dc, dw);
                foreach (MemberRow expected in without.MemberRows)
                {
                    MemberRow row = withRods.MemberRows.Single(r => r.MemberIndex == expected.MemberIndex && r.Sense == expected.Sense);
                    if (row.Member.TensionOnly && row.Sense == Sense.Compression)
                    {
                        Assert.Equal(RatingStatus.Slack, row.Status);
                    }
                    else if (expected.Status == RatingStatus.DeadExceeds)
                    {
                        Assert.Equal(RatingStatus.DeadExceeds, row.Status);
                    }
                    else if (cap < 1)
                    {
                        Assert.Equal(RatingStatus.Withheld, row.Status);
                        Assert.Equal(Math.Max(0, cap), ((NotRatedReason.Uncarried)row.Reason!).Factor, 1e-6);
                        Assert.Null(withRods.Governing);
                        withheld++;
                    }
                    else
                    {
                        Assert.Equal(expected.Status, row.Status);
                        if (expected.Factor is { } factor)
                        {
                            Assert.Equal(Math.Min(factor, cap), row.Factor!.Value, 1e-6 * Math.Min(factor, cap));
                            Assert.True(Math.Abs(factor - cap) < 1e-6 * cap || row.CappedBy is not null == factor > cap);
                            (capped, rated) = factor > cap ? (capped + 1, rated) : (capped, rated + 1);
                        }
                    }
                }
            });
        Assert.True(withheld > 100 && capped > 40 && rated > 100, $"{withheld} rows withheld, {capped} capped, {rated} rated.");
    }

    private static void AssertMeaning(MemberRow row, RodSweep sweep, AxleTrain train)
    {
        double sign = row.Sense == Sense.Tension ? 1 : -1;
        int m = row.MemberIndex;
        double capacity = row.Capacity!.Value;
        double[][] alone = [.. DeadFactors.Select(sweep.Alone)];
        double near = 1e-6 * (capacity + (train.Weight * Live) + alone[0].Max(Math.Abs));
        double Highest(double factor) => DeadFactors.Max(f =>
        {
            (double[] most, double[] least) = sweep.Totals(f, factor * Live);
            return sign > 0 ? most[m] : -least[m];
        });
        if (row.Member.TensionOnly && sign < 0)
        {
            Assert.Equal(RatingStatus.Slack, row.Status);
            return;
        }

        if (capacity <= alone.Max(a => sign * a[m]))
        {
            // A capacity that is the dead load to the last bit may come out on either side.
            bool isEqual = capacity >= alone.Max(a => sign * a[m]) * (1 - 1e-12);
            Assert.True(row.Status == RatingStatus.DeadExceeds || isEqual);
            Assert.InRange(row.Factor!.Value, 0, isEqual ? 1e-9 : 0);
            return;
        }

        if (row.Status == RatingStatus.NotLoaded)
        {
            Assert.True(Highest(20) < capacity + near);
            return;
        }

        Assert.Equal(RatingStatus.Rated, row.Status);
        double factor = row.Factor!.Value;
        double reached = Highest(factor);
        Assert.True(reached <= capacity + (near * Math.Max(1, factor)), $"{row.Member.Name} {row.Sense}: the sweep reaches {reached:R} at {factor:R}, over the capacity of {capacity:R}.");
        Assert.True(reached >= capacity - sweep.MostMissed(m, factor * Live) - near, $"{row.Member.Name} {row.Sense}: at {factor:R} the sweep reaches {reached:R} of {capacity:R}.");
        foreach (double part in (double[])[0.999, 0.9, 0.6, 0.3])
        {
            Assert.True(Highest(part * factor) < capacity + (1e-9 * capacity), $"{row.Member.Name} {row.Sense}: {part} of {factor:R} reaches the capacity.");
        }
    }

    private static BridgeRating Rate(Truss truss, GivenCapacities[] capacities, AxleTrain train, LoadCase dc, LoadCase dw)
    {
        Assert.True(
            BridgeRater.Rate(BridgeOf(truss, capacities, dc, dw), RatingMethod.Find("LRFR")!, [RodRollingProperties.VehicleOf(train)]).TryGet(out BridgeRating? rating, out Refusal? refusal),
            $"{refusal}");
        return rating;
    }

    private static Bridge BridgeOf(Truss truss, GivenCapacities[] capacities, LoadCase dc, LoadCase dw) =>
        new("rods", null, truss, new Deck { TrussShare = 1 }, new RatingSettings(), [dc, dw], capacities);

    private static GivenCapacities Capacities(double tension, double compression) => new(new Dictionary<GivenCapacity, double>
    {
        [GivenCapacity.Tension] = Math.Max(1, tension),
        [GivenCapacity.Compression] = Math.Max(1, compression),
    });
}
