using MathNet.Numerics.LinearAlgebra;

namespace SpanRater;

/// <summary>One member of a redundant truss as the force method finds its force.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Flexibility">L/(E A) [m/N]; null where no area is given, and no redundant reaches it.</param>
/// <param name="Released">Force under the loads with the redundant members cut, tension positive [N].</param>
/// <param name="Unit">Force for a pull of 1 in each redundant member, in their order, tension positive [-].</param>
/// <param name="Force">Released force and redundants' parts together, tension positive [N].</param>
public sealed record ReleasedMember(string Name, double? Flexibility, double Released, IReadOnlyList<double> Unit, double Force);

/// <summary>
/// The forces of a redundant truss by cutting as many members as it has too many: the rest is determinate, and the cut members' forces are those under which no cut opens,
/// <c>f X = d − f0</c> with f = Σ n n L/EA, f0 = Σ n N0 L/EA, and d what moving supports do. A third route beside the two by which they are rated, and refused where it differs from them.
/// Source: the force method, any text on structures.
/// </summary>
public sealed class ReleasedTruss
{
    private ReleasedTruss(Truss truss, IReadOnlyList<int> cut, LoadCase loads, double[] moved, double[,] flexibilities, double[] gaps, double[] redundants, IReadOnlyList<ReleasedMember> members, double difference) =>
        (Truss, Cut, Loads, Moved, Flexibilities, Gaps, Redundants, Members, Difference) = (truss, cut, loads, moved, flexibilities, gaps, redundants, members, difference);

    /// <summary>The truss that is worked: without the rods that are slack.</summary>
    public Truss Truss { get; }

    /// <summary>The members cut, by position in <see cref="Truss"/>.</summary>
    public IReadOnlyList<int> Cut { get; }

    /// <summary>The loads.</summary>
    public LoadCase Loads { get; }

    /// <summary>What the movements of the supports close of each cut, d [m]; zero where none moves.</summary>
    public IReadOnlyList<double> Moved { get; }

    /// <summary>How far each cut closes for a pull of 1 in each redundant, f [m/N].</summary>
    public double[,] Flexibilities { get; }

    /// <summary>How far each cut closes under the loads, f0 [m].</summary>
    public IReadOnlyList<double> Gaps { get; }

    /// <summary>Forces of the cut members, tension positive [N].</summary>
    public IReadOnlyList<double> Redundants { get; }

    /// <summary>Every member, in the order of <see cref="Truss"/>.</summary>
    public IReadOnlyList<ReleasedMember> Members { get; }

    /// <summary>Largest difference of a member's force from the one that is rated, over the largest force [-].</summary>
    public double Difference { get; }

    /// <summary>Works the truss, or says why it cannot be.</summary>
    /// <param name="truss">The truss.</param>
    /// <param name="loads">The loads; their joints must be joints of the truss.</param>
    /// <param name="slack">Positions of the members that are slack; empty for none.</param>
    public static Outcome<ReleasedTruss> Of(Truss truss, LoadCase loads, IReadOnlyList<int> slack)
    {
        ArgumentNullException.ThrowIfNull(truss);
        ArgumentNullException.ThrowIfNull(loads);
        ArgumentNullException.ThrowIfNull(slack);
        Truss acting = truss.Without([.. slack]);
        if (!LinearTruss.Of(acting).TryGet(out LinearTruss? whole, out Refusal? refusal) || !whole.Solve(loads).TryGet(out ForceSolution? rated, out refusal))
        {
            return refusal;
        }

        int[] cut = CutsOf(acting);
        if (!DeterminateTruss.Of(acting.Without(cut)).TryGet(out DeterminateTruss? released, out refusal) || !released.Solve(loads).TryGet(out ForceSolution? under, out refusal))
        {
            return refusal;
        }

        var pulls = new List<ForceSolution>();
        foreach (int c in cut)
        {
            if (!released.SolveUnitPull(acting.FromJoint(c), acting.ToJoint(c)).TryGet(out ForceSolution? pull, out refusal))
            {
                return refusal;
            }

            pulls.Add(pull);
        }

        return Closed(acting, cut, loads, under, pulls, rated);
    }

    private static Outcome<ReleasedTruss> Closed(Truss acting, int[] cut, LoadCase loads, ForceSolution under, List<ForceSolution> pulls, ForceSolution rated)
    {
        int count = acting.Members.Count;
        int[] kept = [.. Enumerable.Range(0, count).Except(cut)];
        double?[] stretch = [.. Enumerable.Range(0, count).Select(acting.Flexibility)];
        double[] loaded = new double[count];
        double[][] unit = [.. cut.Select(_ => new double[count])];
        for (int k = 0; k < kept.Length; k++)
        {
            loaded[kept[k]] = under.MemberForces[k];
            for (int i = 0; i < cut.Length; i++)
            {
                unit[i][kept[k]] = pulls[i].MemberForces[k];
            }
        }

        for (int i = 0; i < cut.Length; i++)
        {
            unit[i][cut[i]] = 1;
        }

        // Where no area is given no redundant reaches the member, but for round-off.
        double Sum(double[] one, double[] other) => Enumerable.Range(0, count).Sum(m => one[m] * other[m] * (stretch[m] ?? 0));
        double[] gaps = [.. unit.Select(n => Sum(n, loaded))];
        double[] moved = [.. pulls.Select(p => loads.Movements.Sum(m => p.Reactions.Where(r => r.Joint == acting.FindJoint(m.Joint)).Sum(r => (r.Right * m.Right) + (r.Up * m.Up))))];
        double[,] flexibilities = new double[cut.Length, cut.Length];
        for (int i = 0; i < cut.Length; i++)
        {
            for (int k = 0; k < cut.Length; k++)
            {
                flexibilities[i, k] = Sum(unit[i], unit[k]);
            }
        }

        double[] redundants = cut.Length == 0 ? [] : Matrix<double>.Build.DenseOfArray(flexibilities).Solve(Vector<double>.Build.Dense([.. gaps.Select((g, i) => moved[i] - g)])).ToArray();
        ReleasedMember[] members =
        [
            .. Enumerable.Range(0, count).Select(m => new ReleasedMember(
                acting.Members[m].Name, stretch[m], loaded[m], [.. unit.Select(n => n[m])], loaded[m] + unit.Select((n, i) => n[m] * redundants[i]).Sum())),
        ];
        double largest = rated.MemberForces.Max(Math.Abs), difference = members.Select((m, i) => Math.Abs(m.Force - rated.MemberForces[i])).Max();
        double part = largest == 0 ? difference : difference / largest;
        int worst = Enumerable.Range(0, count).MaxBy(m => Math.Abs(members[m].Force - rated.MemberForces[m]));

        // Written so that NaN counts as a difference.
        return part <= ForceSolution.RouteLimit
            ? new ReleasedTruss(acting, cut, loads, moved, flexibilities, gaps, redundants, members, part)
            : new Refusal.RoutesDiffer(members[worst].Name, part);
    }

    // One at a time the member that takes the largest part in what statics cannot divide: what is left is far from a mechanism.
    private static int[] CutsOf(Truss truss)
    {
        var cut = new List<int>();
        while (true)
        {
            int[] kept = [.. Enumerable.Range(0, truss.Members.Count).Except(cut)];
            Truss rest = truss.Without(cut);
            Stability stability = Stability.Of(rest);
            if (stability.Redundancy == 0)
            {
                return [.. cut.Order()];
            }

            cut.Add(kept[stability.StressedMembers.MaxBy(m => Math.Round(stability.SelfStress(m), 6))]);
        }
    }
}
