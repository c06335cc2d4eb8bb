using CsCheck;

namespace SpanRater.Tests;

/// <summary>Which rods act, held against every set there is, each solved by the plain statics of the tests.</summary>
public class RodProperties
{
    private const double Round = 1e-8;

    [Fact]
    public void Solve_PairsThatDecideByThemselves_FindsTheOnlySetWithoutCompression() => SeededCases.Check(
        from truss in RandomRodTrusses.Paired(mostPairs: 5, mayHang: false, mayStand: 0)
        from loads in RandomRodTrusses.Case(truss, 4e4)
        where truss.Members.Any(m => m.TensionOnly)
        select (truss, loads),
        1_000,
        c => AssertTheSetThatActs(c.truss, c.loads));

    [Fact]
    public void Solve_OtherMembersThatOnlyPullToo_FindsTheSetOrTheCompressionNothingCarries() => SeededCases.Check(
        from truss in RandomRodTrusses.Paired(mostPairs: 4, mayHang: false, mayStand: 0.15)
        from live in Gen.Double[0, 1]
        from loads in RandomRodTrusses.Case(truss, 2e4 * live)
        where truss.Members.Any(m => m.TensionOnly)
        select (truss, loads),
        1_000,
        c => AssertTheSetThatActs(c.truss, c.loads));

    [Fact]
    public void Solve_PairsThatHangOnOneAnother_FindsTheSetsOfTheFullExamination() => SeededCases.Check(
        from truss in RandomRodTrusses.Paired(mostPairs: 4, mayHang: true, mayStand: 0.03)
        from loads in RandomRodTrusses.Case(truss, 4e4)
        where truss.Members.Any(m => m.TensionOnly)
        select (truss, loads),
        1_000,
        c => AssertTheSetThatActs(c.truss, c.loads));

    // A rod beside a stiff diagonal acts where its joints would move apart without it, and then it is pulled.
    [Fact]
    public void Solve_RodsBesideStiffDiagonals_PullOrTheirJointsDoNotMoveApart() => SeededCases.Check(
        from truss in RandomRodTrusses.Elastic(fewestPanels: 4, mostPanels: 7, fewestRods: 1)
        from loads in RandomRodTrusses.Case(truss, 4e4)
        select (truss, loads),
        120,
        c => AssertConditionsHold(c.truss, c.loads));

    // More sets than are all examined. The truss stands without any rod, so that one set always acts, and it must be found.
    [Fact]
    public void Solve_ManyRodsBesideStiffDiagonals_FindsTheSet() => SeededCases.Check(
        from truss in RandomRodTrusses.Elastic(fewestPanels: 14, mostPanels: 18, fewestRods: 12)
        from loads in RandomRodTrusses.Case(truss, 4e4)
        select (truss, loads),
        30,
        c => AssertConditionsHold(c.truss, c.loads));

    [Fact]
    public void Solve_SpansOverThreeSupportsWithCrossedPanels_HoldTheConditions() => SeededCases.Check(
        from panels in Gen.Int[5, 9]
        from height in Gen.Double[0.7, 1.4]
        from areas in RandomRedundantTrusses.Area().Array[12 * panels]
        from order in Gen.Shuffle(Enumerable.Range(1, (2 * panels) - 2).ToArray())
        from count in Gen.OneOf(Gen.Int[1, 3], Gen.Int[7, 16])
        from settles in Gen.Double[-0.01, 0.01]
        let truss = OverThreeSupports(panels, height, [.. order.Take(count)], areas)
        from loads in RandomRodTrusses.Case(truss, 3e4)
        select (truss, loads: loads with { Movements = [new SupportMovement($"L{panels}", 0, settles)] }),
        40,
        c => AssertConditionsHold(c.truss, c.loads));

    // Eyebar chords over a middle support, and rods beside stiff diagonals, too many to examine every set. The energy of a truss
    // with rods is convex, so that its least place, found by Newton's method, is the answer wherever there is one.
    [Fact]
    public void Solve_ManyRodsOfWhichSomeCarryTheSpan_FindsTheSetWhereverTheEnergyHasOne()
    {
        int solved = 0, refused = 0;
        SeededCases.Check(
            from panels in Gen.Int[4, 6]
            from height in Gen.Double[0.7, 1.4]
            from areas in RandomRedundantTrusses.Area().Array[12 * panels]
            from only in Gen.Double.Unit.Array[12 * panels]
            let bare = OverThreeSupports(panels, height, [], areas)
            let beside = bare.Members.Where(m => m.Role == "diagonal").Select((m, i) => Other(m) with { Area = areas[i], TensionOnly = true })
            let truss = RandomRedundantTrusses.With(bare, bare.Members.Select((m, i) => m with { TensionOnly = m.Role == "bottom chord" && only[i] < 0.6 }).Concat(beside))
            from loads in RandomRodTrusses.Case(truss, 2e4)
            where truss.Members.Count(m => m.TensionOnly) > 10
            select (truss, loads),
            80,
            c =>
            {
                Outcome<ForceSolution> outcome = RodTruss.Of(c.truss).Value!.Solve(c.loads);
                double[]? forces = OwnEnergy.Forces(c.truss, c.loads);
                if (forces is null)
                {
                    Assert.NotNull(outcome.Refusal);
                    refused++;
                    return;
                }

                Assert.True(outcome.TryGet(out ForceSolution? found, out Refusal? refusal), $"{refusal}");
                Assert.All(forces.Zip(found.MemberForces), pair => Assert.Equal(pair.First, pair.Second, 1e-5 * forces.Max(Math.Abs)));
                solved++;
            });
        Assert.True(solved > 20, $"{solved} solved, {refused} refused.");
    }

    // Forty panels, each crossed: the panel's shear says which rod acts, and over the sine it is the force.
    [Theory]
    [InlineData(42, 40)]
    [InlineData(14, 12)]
    public void Solve_ManyCrossedPanels_GivesTheShearOverTheSine(int panels, int pairs)
    {
        Truss pratt = new PrattTruss(panels, 5, 6).Build();
        var members = pratt.Members.Select(m => m with { TensionOnly = m.Role == "diagonal" }).ToList();
        for (int i = 1; i < panels - 1; i++)
        {
            (string from, string to) = pratt.FindMember($"U{i}L{i + 1}") is null ? ($"U{i}", $"L{i + 1}") : ($"L{i}", $"U{i + 1}");
            members.Add(new Member(from + to, from, to, TensionOnly: true));
        }

        Truss truss = RandomRedundantTrusses.With(pratt, members);
        RodTruss system = RodTruss.Of(truss).Value!;
        Assert.Equal(pairs, system.Pairs.Count);
        double[] down = [.. Enumerable.Range(0, panels + 1).Select(i => i is 0 || i == panels ? 0.0 : 1e4 * (1 + (i < panels / 3 ? 12 : 0) + (i * 37 % 11)))];
        double left = down.Select((p, i) => p * (panels - i) / panels).Sum(), sine = 6 / Math.Sqrt((5 * 5) + (6 * 6));

        Assert.True(system.Solve(new LoadCase("load", [.. down.Select((p, i) => new JointLoad($"L{i}", 0, -p))])).TryGet(out ForceSolution? found, out Refusal? refusal), $"{refusal}");

        Assert.InRange(found.Rods!.SetsExamined, 1, Math.Max(1024 * 4, Complementarity.MostPivots(pairs)));
        for (int i = 1; i < panels - 1; i++)
        {
            double shear = left - down.Take(i + 1).Sum();
            Assert.Equal(Math.Max(0, shear) / sine, found.MemberForces[truss.FindMember($"U{i}L{i + 1}")!.Value], 1e-6 * left);
            Assert.Equal(Math.Max(0, -shear) / sine, found.MemberForces[truss.FindMember($"L{i}U{i + 1}")!.Value], 1e-6 * left);
        }
    }

    // No shear at all in the middle panels: both rods idle, in every one of forty.
    [Fact]
    public void Solve_ManyCrossedPanelsWithoutShear_LeavesAllRodsSlack()
    {
        const int Panels = 42;
        Truss pratt = new PrattTruss(Panels, 5, 6).Build();
        var members = pratt.Members.Select(m => m with { TensionOnly = m.Role == "diagonal" }).ToList();
        for (int i = 1; i < Panels - 1; i++)
        {
            (string from, string to) = pratt.FindMember($"U{i}L{i + 1}") is null ? ($"U{i}", $"L{i + 1}") : ($"L{i}", $"U{i + 1}");
            members.Add(new Member(from + to, from, to, TensionOnly: true));
        }

        Truss truss = RandomRedundantTrusses.With(pratt, members);
        Outcome<ForceSolution> outcome = RodTruss.Of(truss).Value!.Solve(new LoadCase("ends", [new JointLoad("L1", 0, -1e5), new JointLoad("L41", 0, -1e5)]));

        Assert.True(outcome.TryGet(out ForceSolution? found, out Refusal? refusal), $"{refusal}");
        Assert.Empty(found.Rods!.Acting);
        Assert.Equal(1e5 * 5 / 6, found.MemberForces[truss.FindMember("L20L21")!.Value], 1e-3);
    }

    private static void AssertTheSetThatActs(Truss truss, LoadCase loads)
    {
        RodTruss system = RodTruss.Of(truss).Value!;
        int[] rods = [.. Enumerable.Range(0, truss.Members.Count).Where(m => truss.Members[m].TensionOnly)];
        double[][] all = [.. OwnStatics.Sets(system.Pairs).Select(slack => OwnStatics.Without(truss, slack)?.Forces(loads)).OfType<double[]>()];
        double largest = all[0].Max(Math.Abs);
        double[][] valid = [.. all.Where(forces => rods.All(r => forces[r] >= -1e-10 * largest))];
        Outcome<ForceSolution> outcome = system.Solve(loads);
        if (valid.Length == 0)
        {
            // Told of is a rod that is pressed in a set in which of every pair the right one acts, and there most.
            int[] paired = [.. system.Pairs.SelectMany(p => new[] { p.First, p.Second })], unpaired = [.. rods.Except(paired)];
            double[][] pairsHold = [.. all.Where(forces => paired.All(r => forces[r] >= -1e-10 * largest))];
            if (pairsHold.Length == 0)
            {
                Assert.IsType<Refusal.NoActingSet>(outcome.Refusal);
                return;
            }

            var uncarried = Assert.IsType<Refusal.UncarriedCompression>(outcome.Refusal);
            int rod = truss.FindMember(uncarried.Member)!.Value;
            Assert.Equal("loads", uncarried.Load.Name);
            Assert.True(uncarried.Force < 0);
            Assert.Contains(pairsHold, forces => Math.Abs(forces[rod] - uncarried.Force) <= Round * largest && forces[rod] <= unpaired.Min(r => forces[r]) + (Round * largest));
            return;
        }

        if (valid.Any(v => v.Zip(valid[0]).Any(f => Math.Abs(f.First - f.Second) > 1e-6 * largest)))
        {
            Assert.IsType<Refusal.SeveralSetsAct>(outcome.Refusal);
            return;
        }

        Assert.True(outcome.TryGet(out ForceSolution? found, out Refusal? refusal), $"{refusal}");
        for (int m = 0; m < truss.Members.Count; m++)
        {
            Assert.Equal(valid[0][m], found.MemberForces[m], Round * largest);
        }

        Assert.All(found.Rods!.Slack, r => Assert.Equal(0, found.MemberForces[r], Round * largest));
        Assert.Equal(rods, found.Rods.Slack.Concat(found.Rods.Acting).Order());
        AssertBalanced(truss, found.MemberForces, loads, found.Reactions);
    }

    private static void AssertBalanced(Truss truss, IReadOnlyList<double> forces, LoadCase loads, IReadOnlyList<Reaction> reactions)
    {
        double size = loads.Loads.Sum(l => double.Hypot(l.Right, l.Up));
        for (int j = 0; j < truss.Joints.Count; j++)
        {
            Joint at = truss.Joints[j];
            double right = loads.Loads.Where(l => l.Joint == at.Name).Sum(l => l.Right) + reactions.Where(r => r.Joint == j).Sum(r => r.Right);
            double up = loads.Loads.Where(l => l.Joint == at.Name).Sum(l => l.Up) + reactions.Where(r => r.Joint == j).Sum(r => r.Up);
            for (int m = 0; m < truss.Members.Count; m++)
            {
                if (truss.FromJoint(m) == j || truss.ToJoint(m) == j)
                {
                    Joint other = truss.Joints[truss.FromJoint(m) == j ? truss.ToJoint(m) : truss.FromJoint(m)];
                    double length = double.Hypot(other.X - at.X, other.Y - at.Y);
                    right += forces[m] * (other.X - at.X) / length;
                    up += forces[m] * (other.Y - at.Y) / length;
                }
            }

            Assert.Equal(0, right, 1e-9 * size);
            Assert.Equal(0, up, 1e-9 * size);
        }
    }

    private static void AssertConditionsHold(Truss truss, LoadCase loads)
    {
        RodTruss system = RodTruss.Of(truss).Value!;
        Assert.True(system.AreasDecide);
        Assert.True(system.Solve(loads).TryGet(out ForceSolution? found, out Refusal? refusal), $"{refusal}");
        int[] slack = [.. found.Rods!.Slack];
        Truss acting = RandomRedundantTrusses.With(truss, truss.Members.Where((_, m) => !slack.Contains(m)));
        double[] moved = OwnStiffness.Of(acting).Displacements(loads), forces = OwnStiffness.Of(acting).ForcesOf(moved);
        double largest = forces.Max(Math.Abs), farthest = moved.Max(Math.Abs);
        for (int m = 0; m < truss.Members.Count; m++)
        {
            int among = acting.FindMember(truss.Members[m].Name) ?? -1;
            Assert.Equal(among < 0 ? 0 : forces[among], found.MemberForces[m], 1e-6 * largest);
            if (!truss.Members[m].TensionOnly)
            {
                continue;
            }

            bool partnerActs = system.Pairs.Any(p => (p.First == m && !slack.Contains(p.Second)) || (p.Second == m && !slack.Contains(p.First)));
            Assert.True(among < 0 || forces[among] >= -1e-6 * largest, $"{truss.Members[m].Name} is pressed by {forces[Math.Max(0, among)]}.");
            Assert.True(
                among >= 0 || partnerActs || OwnStiffness.Stretch(truss, m, moved) <= 1e-6 * farthest,
                $"{truss.Members[m].Name} is slack, and its joints move {OwnStiffness.Stretch(truss, m, moved)} apart of {farthest}.");
            Assert.False(among >= 0 && partnerActs);
        }
    }

    private static Member Other(Member diagonal)
    {
        (string from, string to) = ($"{diagonal.From[0]}{diagonal.To[1..]}", $"{diagonal.To[0]}{diagonal.From[1..]}");
        return diagonal with { Name = from + to, From = from, To = to };
    }

    private static Truss OverThreeSupports(int halfPanels, double height, int[] crossed, double[] areas)
    {
        Truss pratt = new PrattTruss(2 * halfPanels, 5, 5 * height).Build();
        var members = pratt.Members.ToList();
        for (int i = 1; i < (2 * halfPanels) - 1; i++)
        {
            if (crossed.Contains(i))
            {
                int main = members.FindIndex(m => m.Name == $"U{i}L{i + 1}" || m.Name == $"L{i}U{i + 1}");
                members[main] = members[main] with { TensionOnly = true };
                (string from, string to) = members[main].From[0] == 'L' ? ($"U{i}", $"L{i + 1}") : ($"L{i}", $"U{i + 1}");
                members.Add(new Member(from + to, from, to, TensionOnly: true));
            }
        }

        return Truss.Create(
            [.. pratt.Joints.Select(j => j.Name == $"L{halfPanels}" ? j with { Support = Support.Roller() } : j)],
            [.. members.Select((m, i) => m with { Area = areas[i] })]).Truss!;
    }
}
