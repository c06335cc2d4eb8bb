using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.LinearAlgebra.Factorization;

namespace SpanRater;

/// <summary>What the count and the rank say about a truss.</summary>
public enum StabilityVerdict
{
    /// <summary>It stands, and equilibrium alone gives every force.</summary>
    Determinate,

    /// <summary>It stands, and equilibrium alone cannot divide the forces.</summary>
    Redundant,

    /// <summary>Some of it can move without any member changing its length.</summary>
    Mechanism,
}

/// <summary>
/// Whether a truss stands. The count m + r against 2j is necessary and not sufficient, so the rank of the equilibrium
/// matrix is found as well, from its singular values: a value below 1e-10 of the largest counts as zero.
/// Source: S. Pellegrino and C. R. Calladine, Matrix analysis of statically and kinematically indeterminate frameworks,
/// Int. J. Solids Structures 22 (1986), from memory.
/// </summary>
public sealed class Stability
{
    /// <summary>A singular value below this part of the largest counts as zero [-].</summary>
    public const double ZeroSingularValue = 1e-10;

    private readonly Lazy<IReadOnlyList<Movement>> waysToMove;
    private readonly Lazy<SupportFault?> supportFault;
    private readonly Lazy<IReadOnlyList<TrussPanel>> sparePanels;
    private readonly double[] selfStresses;

    private Stability(Truss truss, Svd<double> svd)
    {
        MemberCount = truss.Members.Count;
        ReactionCount = truss.ReactionCount;
        EquationCount = 2 * truss.Joints.Count;
        double[] values = svd.S.ToArray();
        SingularValues = values;
        double limit = values.Length == 0 ? 0 : values[0] * ZeroSingularValue;
        Rank = values.Count(s => s > limit);
        Condition = Rank == EquationCount && Rank == MemberCount + ReactionCount ? values[0] / values[^1] : null;
        MovingJoints = Moving(truss, svd.U);
        selfStresses = [.. Enumerable.Range(0, MemberCount).Select(m => Math.Sqrt(Enumerable.Range(Rank, Redundancy).Sum(k => svd.VT[k, m] * svd.VT[k, m])))];
        StressedMembers = SelfStressed(truss, svd.VT);
        StressedSupports = SelfStressedSupports(truss, svd.VT);

        // What is told of a mechanism is found when it is asked for: the search for acting rods meets many that nobody asks about.
        waysToMove = new(() => Movements == 0 ? [] : MovementSearch.Of(truss, svd.U.SubMatrix(0, EquationCount, Rank, Movements)));
        supportFault = new(() => Movements == 0 ? null : SupportFault.Of(truss));
        sparePanels = new(() => Movements == 0 || Redundancy == 0 ? [] : [.. TrussPanel.Of(truss).Where(p => HasSpareBar(truss, p))]);
        WeakGeometry = Condition > WeakGeometry.Limit ? WeakGeometry.Of(truss, Condition.Value, svd.U.Column(EquationCount - 1), svd.VT.Row(EquationCount - 1)) : null;
    }

    /// <summary>Number of members, m.</summary>
    public int MemberCount { get; }

    /// <summary>Number of reaction components, r.</summary>
    public int ReactionCount { get; }

    /// <summary>Number of equations, 2j.</summary>
    public int EquationCount { get; }

    /// <summary>Rank of the equilibrium matrix.</summary>
    public int Rank { get; }

    /// <summary>Number of independent ways in which the truss can move: 2j − rank.</summary>
    public int Movements => EquationCount - Rank;

    /// <summary>Number of forces that equilibrium cannot find: m + r − rank.</summary>
    public int Redundancy => MemberCount + ReactionCount - Rank;

    /// <summary>Singular values of the equilibrium matrix, the largest first: as many as the smaller of its two sizes [-].</summary>
    public IReadOnlyList<double> SingularValues { get; }

    /// <summary>Largest over smallest singular value of a determinate truss's equilibrium matrix [-]; else null.</summary>
    public double? Condition { get; }

    /// <summary>Joints that can move, by position in <see cref="Truss.Joints"/>; empty where nothing can.</summary>
    public IReadOnlyList<int> MovingJoints { get; }

    /// <summary>Members whose forces statics cannot divide, by position in <see cref="Truss.Members"/>; empty in a truss without redundancy.</summary>
    public IReadOnlyList<int> StressedMembers { get; }

    /// <summary>Joints whose supports take part in forces that statics cannot divide, by position in <see cref="Truss.Joints"/>.</summary>
    public IReadOnlyList<int> StressedSupports { get; }

    /// <summary>The independent ways in which the truss moves, the simplest first; as many as <see cref="Movements"/>.</summary>
    public IReadOnlyList<Movement> WaysToMove => waysToMove.Value;

    /// <summary>What is wrong with the supports of a truss that moves; null where they would hold it as one plate.</summary>
    public SupportFault? SupportFault => supportFault.Value;

    /// <summary>Panels with a bar more than they need, in a truss that moves elsewhere; empty where the spare one is not within a panel.</summary>
    public IReadOnlyList<TrussPanel> SparePanels => sparePanels.Value;

    /// <summary>What makes a determinate truss ill-conditioned; null where it is not.</summary>
    public WeakGeometry? WeakGeometry { get; }

    /// <summary>The verdict. A truss that can move is a mechanism even where it has a member too many elsewhere.</summary>
    public StabilityVerdict Verdict =>
        Movements > 0 ? StabilityVerdict.Mechanism : Redundancy > 0 ? StabilityVerdict.Redundant : StabilityVerdict.Determinate;

    /// <summary>How much a member takes part in forces that balance without any load [-]: from 0, not at all, to 1.</summary>
    /// <param name="member">Position of the member in <see cref="Truss.Members"/>.</param>
    internal double SelfStress(int member) => selfStresses[member];

    /// <summary>Counts and ranks a truss.</summary>
    /// <param name="truss">The truss.</param>
    public static Stability Of(Truss truss)
    {
        ArgumentNullException.ThrowIfNull(truss);
        return Of(truss, Matrix<double>.Build.DenseOfArray(new EquilibriumSystem(truss).ToMatrix()));
    }

    internal static Stability Of(Truss truss, Matrix<double> equilibrium) => new(truss, equilibrium.Svd());

    // The columns of U past the rank are the displacements that lengthen no member: u with uT A = 0.
    private int[] Moving(Truss truss, Matrix<double> u)
    {
        var moving = new List<int>();
        for (int j = 0; j < truss.Joints.Count; j++)
        {
            double size = 0;
            for (int k = Rank; k < EquationCount; k++)
            {
                size = Math.Max(size, double.Hypot(u[2 * j, k], u[(2 * j) + 1, k]));
            }

            if (size > 1e-6)
            {
                moving.Add(j);
            }
        }

        return [.. moving];
    }

    // A panel of n corners needs n − 3 members across it; one with more of them in the stressed set has a spare one.
    private bool HasSpareBar(Truss truss, TrussPanel panel)
    {
        int across = 0;
        foreach (int m in StressedMembers.Where(m => panel.Corners.Contains(truss.FromJoint(m)) && panel.Corners.Contains(truss.ToJoint(m))))
        {
            int from = Place(truss.FromJoint(m)), to = Place(truss.ToJoint(m)), apart = Math.Abs(from - to);
            across += apart == 1 || apart == panel.Corners.Count - 1 ? 0 : 1;
        }

        return across > panel.Corners.Count - 3;

        int Place(int joint) => Enumerable.Range(0, panel.Corners.Count).First(c => panel.Corners[c] == joint);
    }

    private int[] SelfStressedSupports(Truss truss, Matrix<double> vt)
    {
        IReadOnlyList<EquilibriumSystem.ReactionComponent> reactions = new EquilibriumSystem(truss).Reactions;
        return
        [
            .. Enumerable.Range(0, reactions.Count)
                .Where(r => Enumerable.Range(Rank, Redundancy).Any(k => Math.Abs(vt[k, MemberCount + r]) > 1e-6))
                .Select(r => reactions[r].Joint).Distinct(),
        ];
    }

    // The rows of VT past the rank are the forces that balance without any load: q with A q = 0.
    private int[] SelfStressed(Truss truss, Matrix<double> vt)
    {
        var stressed = new List<int>();
        for (int m = 0; m < truss.Members.Count; m++)
        {
            double size = 0;
            for (int k = Rank; k < MemberCount + ReactionCount; k++)
            {
                size = Math.Max(size, Math.Abs(vt[k, m]));
            }

            if (size > 1e-6)
            {
                stressed.Add(m);
            }
        }

        return [.. stressed];
    }
}
