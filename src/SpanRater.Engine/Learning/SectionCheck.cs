namespace SpanRater;

/// <summary>
/// The force in one member a second time, by cutting the truss in two: no joint is worked, only the reactions are taken over.
/// Immutable.
/// </summary>
public sealed class SectionCheck
{
    private SectionCheck(WorkedSolution worked, int member, IReadOnlyList<SectionCut>? cuts)
    {
        Worked = worked;
        Member = member;
        Cuts = cuts ?? [];
        var forces = new double[worked.Forces.Count];
        for (int r = worked.Truss.Members.Count; r < forces.Length; r++)
        {
            forces[r] = worked.Forces[r];
        }

        double[] loads = [.. worked.JointLoads.SelectMany(l => (double[])[l.Right, l.Up])];
        double roundOff = 1e-12 * loads.Max(Math.Abs);
        foreach (SectionCut cut in Cuts)
        {
            double force = -cut.Balance.Sum(worked.Truss, loads, forces) / cut.Balance.CoefficientOf(cut.Member);
            forces[cut.Member] = Math.Abs(force) <= roundOff ? 0 : force;
        }

        Forces = forces;
    }

    /// <summary>The solution joint by joint, whose reactions are taken over and with which the result is compared.</summary>
    public WorkedSolution Worked { get; }

    /// <summary>The member, by position in <see cref="Truss.Members"/>.</summary>
    public int Member { get; }

    /// <summary>The cuts in the order in which they are worked, that of the member last; empty where no cut finds it.</summary>
    public IReadOnlyList<SectionCut> Cuts { get; }

    /// <summary>The reactions, and the forces that the cuts find; 0 for all others [N].</summary>
    public IReadOnlyList<double> Forces { get; }

    /// <summary>The force by sections, tension positive [N]; null where no cut finds it.</summary>
    public double? BySections => Cuts.Count == 0 ? null : Forces[Member];

    /// <summary>The force joint by joint, tension positive [N].</summary>
    public double ByJoints => Worked.Forces[Member];

    /// <summary>Difference of the two over the largest member force [-]; null where no cut finds the member.</summary>
    public double? Difference
    {
        get
        {
            double largest = Worked.Forces.Take(Worked.Truss.Members.Count).Max(Math.Abs);
            return BySections is not { } force ? null : largest == 0 ? Math.Abs(force - ByJoints) : Math.Abs(force - ByJoints) / largest;
        }
    }

    /// <summary>Checks one member of a truss under a load case, or says why statics alone cannot.</summary>
    /// <param name="truss">The truss.</param>
    /// <param name="loads">The loads; their joints must be joints of the truss.</param>
    /// <param name="member">Position of the member.</param>
    /// <exception cref="ArgumentException">A load names a joint that the truss does not have.</exception>
    /// <exception cref="ArgumentOutOfRangeException">There is no such member.</exception>
    public static Outcome<SectionCheck> Of(Truss truss, LoadCase loads, int member)
    {
        ArgumentNullException.ThrowIfNull(truss);
        ArgumentOutOfRangeException.ThrowIfNegative(member);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(member, truss.Members.Count);
        return WorkedSolution.Of(truss, loads).TryGet(out WorkedSolution? worked, out Refusal? refusal)
            ? new SectionCheck(worked, member, new SectionSearch(truss, worked.JointLoads).Of(member))
            : refusal;
    }
}
