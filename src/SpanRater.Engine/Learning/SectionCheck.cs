namespace SpanRater;

/// <summary>
/// The force in one member a second time, by cutting the truss in two: no joint is worked, only the reactions are taken over.
/// Immutable.
/// </summary>
public sealed class SectionCheck
{
    private SectionCheck(WorkedSolution worked, string name, int? member, IReadOnlyList<SectionCut>? cuts)
    {
        Worked = worked;
        Name = name;
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

    /// <summary>Name of the member.</summary>
    public string Name { get; }

    /// <summary>The member, by position in the truss that is worked; null where it is a rod that stays slack.</summary>
    public int? Member { get; }

    /// <summary>The cuts in the order in which they are worked, that of the member last; empty where no cut finds it.</summary>
    public IReadOnlyList<SectionCut> Cuts { get; }

    /// <summary>The reactions, and the forces that the cuts find; 0 for all others [N].</summary>
    public IReadOnlyList<double> Forces { get; }

    /// <summary>The force by sections, tension positive [N]; null where no cut finds it.</summary>
    public double? BySections => Cuts.Count == 0 ? null : Forces[Cuts[^1].Member];

    /// <summary>The force joint by joint, tension positive; 0 for a rod that stays slack [N].</summary>
    public double ByJoints => Member is { } member ? Worked.Forces[member] : 0;

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
        if (!WorkedSolution.Of(truss, loads).TryGet(out WorkedSolution? worked, out Refusal? refusal))
        {
            return refusal;
        }

        // A rod that stays slack is no member of the truss that is worked.
        int? found = worked.Truss.FindMember(truss.Members[member].Name);
        return new SectionCheck(worked, truss.Members[member].Name, found, found is { } m ? new SectionSearch(worked.Truss, worked.JointLoads).Of(m) : null);
    }
}
