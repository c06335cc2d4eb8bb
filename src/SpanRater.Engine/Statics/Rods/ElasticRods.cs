namespace SpanRater;

/// <summary>
/// Rods of a truss that stays redundant with one rod of every crossed pair taken out: areas decide which of them act. A set
/// acts where no acting rod is compressed, of a crossed pair at most one acts, and the joints of a slack rod do not move
/// apart. Few sets are all examined; of many, one is found as a complementarity problem of all rods, and where both rods of a pair
/// would act, by changing the most violated rod, with every set remembered so that none is visited twice.
/// </summary>
internal sealed class ElasticRods
{
    /// <summary>Up to so many sets all are examined.</summary>
    private const int MostSetsExamined = 1024;

    /// <summary>A search longer than this ends without a result.</summary>
    private const int LongestSearch = 400;

    private readonly Truss truss;
    private readonly IReadOnlyList<CrossedPair> pairs;
    private readonly int[] unpaired;

    private ElasticRods(Truss truss, IReadOnlyList<CrossedPair> pairs, int[] unpaired)
    {
        this.truss = truss;
        this.pairs = pairs;
        this.unpaired = unpaired;
    }

    /// <summary>Choices of a set: of each pair 0 (the first acts), 1 (the second) or 2 (neither); of each other rod 0 (acts) or 1 (slack).</summary>
    private int Choices => pairs.Count + unpaired.Length;

    public static Outcome<ElasticRods> Of(Truss truss, IReadOnlyList<CrossedPair> pairs, Stability withoutSeconds)
    {
        string[] without = [.. Enumerable.Range(0, truss.Members.Count).Where(m => truss.Flexibility(m) is null).Select(m => truss.Members[m].Name)];
        int[] unpaired = [.. Enumerable.Range(0, truss.Members.Count).Where(m => truss.Members[m].TensionOnly && !pairs.Any(p => p.First == m || p.Second == m))];
        return without.Length > 0 ? new Refusal.NoAreas(withoutSeconds, without) : new ElasticRods(truss, pairs, unpaired);
    }

    public Outcome<ForceSolution> Solve(LoadCase loads)
    {
        double sets = Math.Pow(3, pairs.Count) * Math.Pow(2, unpaired.Length);
        return sets <= MostSetsExamined ? Examined(loads) : Searched(loads);
    }

    private Outcome<ForceSolution> Examined(LoadCase loads)
    {
        var found = new List<Trial>();
        Trial? leastCompressed = null;
        int examined = 0;
        var set = new int[Choices];
        do
        {
            examined++;
            if (Try(set, loads) is not { } trial)
            {
                continue;
            }

            if (trial.Violated is null)
            {
                found.Add(trial);
            }
            else if (leastCompressed is null || trial.WorstForce > leastCompressed.WorstForce)
            {
                leastCompressed = trial;
            }
        }
        while (Next(set));

        if (found.Count == 0)
        {
            return None(leastCompressed, loads, examined);
        }

        Trial first = found[0];
        Trial? different = found.Find(t => t.Solution.MemberForces.Zip(first.Solution.MemberForces).Any(f => Math.Abs(f.First - f.Second) > 100 * first.Zero));
        return different is null
            ? first.Solution with { Rods = PairedRods.StateOf(truss, first.Solution.MemberForces, first.Zero, examined) }
            : new Refusal.SeveralSetsAct(Pulling(first), Pulling(different));
    }

    private Outcome<ForceSolution> Searched(LoadCase loads)
    {
        var visited = new HashSet<string>();
        int[] set = Complementary(loads) ?? new int[Choices];
        Trial? last = null;
        while (visited.Count < LongestSearch && visited.Add(string.Concat(set)) && Try(set, loads) is { } trial)
        {
            last = trial;
            if (trial.Violated is not { } change)
            {
                return trial.Solution with { Rods = PairedRods.StateOf(truss, trial.Solution.MemberForces, trial.Zero, visited.Count) };
            }

            set[change.Choice] = change.To;
        }

        // Where rods of a pair would act together, that this search found no set does not say that there is none.
        return pairs.Count > 0 ? new Refusal.NoActingSet(visited.Count) : None(last, loads, visited.Count);
    }

    // The set that acts where both rods of a pair may act: the forces with all rods acting, and what they gain where rods give way by
    // w, f = q + M w, of each rod one of the two zero. M is symmetric and nowhere negative, so that the search ends with the
    // set or there is none. Null where there is none, or where both rods of a pair act.
    private int[]? Complementary(LoadCase loads)
    {
        int[] rods = [.. pairs.SelectMany(p => new[] { p.First, p.Second }), .. unpaired];
        if (!ActingTruss.Of(truss, []).TryGet(out ActingTruss? all, out _) || !all.Solve(loads).TryGet(out ForceSolution? solution, out _))
        {
            return null;
        }

        // In units in which every rod is as stiff as another and the largest force is 1.
        double[] units = [.. rods.Select(r => Math.Sqrt(truss.Flexibility(r)!.Value))];
        double[] q = [.. rods.Select((r, i) => solution.MemberForces[r] * units[i])];
        double largest = q.Max(Math.Abs);
        var m = new double[q.Length, q.Length];
        for (int c = 0; c < q.Length; c++)
        {
            if (!all.Reduced.SolveUnitPull(truss.FromJoint(rods[c]), truss.ToJoint(rods[c])).TryGet(out ForceSolution? pulled, out _))
            {
                return null;
            }

            for (int r = 0; r < q.Length; r++)
            {
                m[r, c] = (pulled.MemberForces[rods[r]] * units[r] / units[c]) + (r == c ? 1 : 0);
            }
        }

        if (Complementarity.Lemke(m, [.. q.Select(value => largest > 0 ? value / largest : 0)], out _) is not { } givesWay)
        {
            return null;
        }

        bool Acts(int rod) => givesWay[Array.IndexOf(rods, rod)] == 0;
        int[] together = [.. pairs.Select(p => (Acts(p.First), Acts(p.Second)) switch { (true, true) => -1, (true, false) => 0, (false, true) => 1, _ => 2 })];
        return together.Contains(-1) ? null : [.. together, .. unpaired.Select(r => Acts(r) ? 0 : 1)];
    }

    private Refusal None(Trial? nearest, LoadCase loads, int examined) =>
        nearest is { WorstForce: < 0 }
            ? new Refusal.UncarriedCompression(truss.Members[nearest.WorstRod].Name, nearest.WorstForce, new UncarriedUnder(loads.Name))
            : new Refusal.NoActingSet(examined);

    // A set and what is most wrong with it; null where the truss does not stand with it.
    private Trial? Try(int[] set, LoadCase loads)
    {
        int[] slack = [.. SlackOf(set)];
        if (!ActingTruss.Of(truss, slack).TryGet(out ActingTruss? acting, out _) || !acting.Solve(loads).TryGet(out ForceSolution? solution, out _))
        {
            return null;
        }

        double[] displacements = acting.Reduced.Displacements(loads);
        double zero = PairedRods.ZeroForce * solution.MemberForces.Max(Math.Abs);
        double noStretch = 1e-9 * displacements.Max(Math.Abs);
        (int Choice, int To)? violated = null;
        double worst = 1, worstForce = 0;
        int worstRod = -1;
        for (int c = 0; c < set.Length; c++)
        {
            foreach ((int rod, int ifCompressed) in ActingIn(c, set[c]))
            {
                double force = solution.MemberForces[rod];
                if (force < worstForce)
                {
                    (worstForce, worstRod) = (force, rod);
                }

                if (zero > 0 && -force / zero > worst)
                {
                    (worst, violated) = (-force / zero, (c, ifCompressed));
                }
            }

            foreach ((int rod, int ifStretched) in SlackIn(c, set[c]))
            {
                double stretch = StiffnessRoute.Stretch(truss, rod, displacements);
                if (noStretch > 0 && stretch / noStretch > worst)
                {
                    (worst, violated) = (stretch / noStretch, (c, ifStretched));
                }
            }
        }

        return new Trial(solution, zero, violated, worstRod, worstForce);
    }

    private IEnumerable<int> SlackOf(int[] set)
    {
        for (int c = 0; c < set.Length; c++)
        {
            if (c >= pairs.Count)
            {
                if (set[c] == 1)
                {
                    yield return unpaired[c - pairs.Count];
                }

                continue;
            }

            if (set[c] != 0)
            {
                yield return pairs[c].First;
            }

            if (set[c] != 1)
            {
                yield return pairs[c].Second;
            }
        }
    }

    private IEnumerable<(int Rod, int IfCompressed)> ActingIn(int choice, int setting) => (choice < pairs.Count, setting) switch
    {
        (true, 0) => [(pairs[choice].First, 1)],
        (true, 1) => [(pairs[choice].Second, 0)],
        (false, 0) => [(unpaired[choice - pairs.Count], 1)],
        _ => [],
    };

    // Of a crossed pair the other rod of an acting one stays slack whatever its joints do: at most one of the two acts.
    private IEnumerable<(int Rod, int IfStretched)> SlackIn(int choice, int setting) => (choice < pairs.Count, setting) switch
    {
        (true, 2) => [(pairs[choice].First, 0), (pairs[choice].Second, 1)],
        (false, 1) => [(unpaired[choice - pairs.Count], 0)],
        _ => [],
    };

    private bool Next(int[] set)
    {
        for (int c = 0; c < set.Length; c++)
        {
            if (++set[c] < (c < pairs.Count ? 3 : 2))
            {
                return true;
            }

            set[c] = 0;
        }

        return false;
    }

    private string[] Pulling(Trial trial) =>
        [.. PairedRods.StateOf(truss, trial.Solution.MemberForces, trial.Zero, 0).Acting.Select(m => truss.Members[m].Name)];

    private sealed record Trial(ForceSolution Solution, double Zero, (int Choice, int To)? Violated, int WorstRod, double WorstForce);
}
