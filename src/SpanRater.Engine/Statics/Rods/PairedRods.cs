using MathNet.Numerics.LinearAlgebra;

namespace SpanRater;

/// <summary>
/// Rods of which statics alone says what acts: with one rod of every crossed pair taken out the truss is determinate. Forces
/// are those of that base truss plus, for each pair, the self-stress of its panel times the force of the rod taken out. Of
/// each pair one rod is at zero, which is a complementarity problem; where the self-stress of a panel touches no rod of
/// another pair, each pair decides by itself.
/// </summary>
internal sealed class PairedRods
{
    /// <summary>Up to this many pairs every set is examined, 1,024 of them; beyond, the complementarity search finds one.</summary>
    private const int MostPairsExamined = 10;

    /// <summary>A rod force below this part of the largest force is zero [-].</summary>
    public const double ZeroForce = 1e-9;

    private readonly Truss truss;
    private readonly IReadOnlyList<CrossedPair> pairs;
    private readonly double[,] couplings;

    private PairedRods(Truss truss, IReadOnlyList<CrossedPair> pairs, ActingTruss baseTruss, double[][] selfStresses)
    {
        this.truss = truss;
        this.pairs = pairs;
        Base = baseTruss;
        SelfStresses = selfStresses;
        couplings = new double[pairs.Count, pairs.Count];
        AreApart = true;
        for (int i = 0; i < pairs.Count; i++)
        {
            for (int j = 0; j < pairs.Count; j++)
            {
                couplings[i, j] = selfStresses[j][pairs[i].First];
                AreApart &= i == j ? couplings[i, j] > ZeroForce : Math.Abs(couplings[i, j]) <= ZeroForce;
            }
        }

        Unpaired = [.. Enumerable.Range(0, truss.Members.Count).Where(m => truss.Members[m].TensionOnly && !pairs.Any(p => p.First == m || p.Second == m))];
    }

    /// <summary>The truss without the second rod of each pair.</summary>
    public ActingTruss Base { get; }

    /// <summary>For each pair, the forces of all members under a unit tension in its second rod.</summary>
    public double[][] SelfStresses { get; }

    /// <summary>The members that only pull and are in no pair.</summary>
    public int[] Unpaired { get; }

    /// <summary>The crossed pairs.</summary>
    public IReadOnlyList<CrossedPair> Pairs => pairs;

    /// <summary>True where each pair decides by itself which of its rods acts.</summary>
    public bool AreApart { get; }

    /// <summary>Force of the second rod of a pair over the compression that its first rod would otherwise have.</summary>
    public double TakeOver(int pair) => 1 / couplings[pair, pair];

    public static Outcome<PairedRods> Of(Truss truss, IReadOnlyList<CrossedPair> pairs, ActingTruss baseTruss)
    {
        var selfStresses = new double[pairs.Count][];
        for (int i = 0; i < pairs.Count; i++)
        {
            int second = pairs[i].Second;
            if (!baseTruss.Reduced.SolveUnitPull(truss.FromJoint(second), truss.ToJoint(second)).TryGet(out ForceSolution? stressed, out Refusal? refusal))
            {
                return refusal;
            }

            selfStresses[i] = baseTruss.Expanded(stressed.MemberForces);
            selfStresses[i][second] = 1;
        }

        return new PairedRods(truss, pairs, baseTruss, selfStresses);
    }

    public Outcome<ForceSolution> Solve(LoadCase loads)
    {
        if (!Base.Solve(loads).TryGet(out ForceSolution? without, out Refusal? refusal))
        {
            return refusal;
        }

        double zero = ZeroForce * Math.Max(without.MemberForces.Max(Math.Abs), double.Epsilon);
        double[] needs = [.. pairs.Select(p => without.MemberForces[p.First])];
        var found = new List<double[]>();
        double[]? nearest = null;
        List<double[]> candidates = Candidates(needs, zero, out int examined);
        foreach (double[] second in candidates)
        {
            double[] forces = With(without.MemberForces, second);
            if (!pairs.All(p => forces[p.First] >= -zero && forces[p.Second] >= -zero))
            {
                continue;
            }

            // What nothing carries is told from a set in which of every pair the right rod acts.
            nearest ??= forces;
            if (Unpaired.All(r => forces[r] >= -zero))
            {
                found.Add(forces);
            }
        }

        if (found.Count == 0)
        {
            return nearest is null ? new Refusal.NoActingSet(examined) : Uncarried(nearest, loads.Name);
        }

        if (found.FirstOrDefault(other => other.Zip(found[0]).Any(f => Math.Abs(f.First - f.Second) > 10 * zero)) is { } different)
        {
            return new Refusal.SeveralSetsAct(Pulling(found[0], zero), Pulling(different, zero));
        }

        return Verified(found[0], loads, zero, examined);
    }

    /// <summary>Forces of the base truss together with the self-stresses of rods that act in place of their partners.</summary>
    private double[] With(IReadOnlyList<double> without, double[] second)
    {
        double[] forces = [.. without];
        for (int i = 0; i < pairs.Count; i++)
        {
            for (int m = 0; m < forces.Length && second[i] != 0; m++)
            {
                forces[m] += second[i] * SelfStresses[i][m];
            }
        }

        return forces;
    }

    // The forces of the second rods in every set in which no rod of a pair is compressed.
    private List<double[]> Candidates(double[] needs, double zero, out int examined)
    {
        if (pairs.Count > MostPairsExamined)
        {
            double[]? z = Complementarity.Lemke(couplings, needs, out int pivots);
            examined = pivots + 1;
            return z is null ? [] : [z];
        }

        examined = 0;
        var candidates = new List<double[]>();
        for (int set = 0; set < 1 << pairs.Count; set++)
        {
            examined++;
            int[] acting = [.. Enumerable.Range(0, pairs.Count).Where(i => (set & (1 << i)) != 0)];
            if (SecondRods(acting, needs) is { } second && second.All(z => z >= -zero))
            {
                candidates.Add(second);
            }
        }

        return candidates;
    }

    // The first rod of each acting pair is slack: its force in the base truss is taken off by the self-stresses.
    private double[]? SecondRods(int[] acting, double[] needs)
    {
        var all = new double[pairs.Count];
        if (acting.Length == 0)
        {
            return all;
        }

        Matrix<double> part = Matrix<double>.Build.Dense(acting.Length, acting.Length, (r, c) => couplings[acting[r], acting[c]]);
        if (Math.Abs(part.Determinant()) < 1e-12)
        {
            return null;
        }

        double[] found = part.Solve(Vector<double>.Build.Dense([.. acting.Select(i => -needs[i])])).ToArray();
        for (int a = 0; a < acting.Length; a++)
        {
            all[acting[a]] = found[a];
        }

        return all;
    }

    // The set found is solved once more as a truss of its own, by both of its routes.
    private Outcome<ForceSolution> Verified(double[] forces, LoadCase loads, double zero, int examined)
    {
        int[] slack = [.. pairs.Select(p => forces[p.Second] > zero ? p.First : p.Second)];
        if (!ActingTruss.Of(truss, slack).TryGet(out ActingTruss? acting, out Refusal? refusal) || !acting.Solve(loads).TryGet(out ForceSolution? solution, out refusal))
        {
            return refusal;
        }

        double largest = Math.Max(solution.MemberForces.Max(Math.Abs), zero);
        for (int m = 0; m < forces.Length; m++)
        {
            if (!(Math.Abs(forces[m] - solution.MemberForces[m]) <= ForceSolution.RouteLimit * 10 * largest))
            {
                return new Refusal.RoutesDiffer(truss.Members[m].Name, Math.Abs(forces[m] - solution.MemberForces[m]) / largest);
            }
        }

        return solution with { Rods = StateOf(truss, solution.MemberForces, zero, examined) };
    }

    public static RodState StateOf(Truss truss, IReadOnlyList<double> forces, double zero, int examined)
    {
        int[] rods = [.. Enumerable.Range(0, truss.Members.Count).Where(m => truss.Members[m].TensionOnly)];
        return new RodState([.. rods.Where(m => forces[m] > zero)], [.. rods.Where(m => forces[m] <= zero)], examined);
    }

    private Refusal.UncarriedCompression Uncarried(double[] forces, string name)
    {
        int worst = Unpaired.MinBy(r => forces[r]);
        return new Refusal.UncarriedCompression(truss.Members[worst].Name, forces[worst], new UncarriedUnder(name));
    }

    private string[] Pulling(double[] forces, double zero) =>
        [.. Enumerable.Range(0, truss.Members.Count).Where(m => truss.Members[m].TensionOnly && forces[m] > zero).Select(m => truss.Members[m].Name)];
}
