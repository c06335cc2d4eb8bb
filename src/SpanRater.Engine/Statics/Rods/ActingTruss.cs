namespace SpanRater;

/// <summary>A truss with some of its members slack: solved without them, told of with them.</summary>
internal sealed class ActingTruss
{
    private readonly Truss whole;
    private readonly int[] slack;
    private readonly int[] kept;

    private ActingTruss(Truss whole, int[] slack, LinearTruss reduced)
    {
        this.whole = whole;
        this.slack = slack;
        kept = [.. Enumerable.Range(0, whole.Members.Count).Where(m => !slack.Contains(m))];
        Reduced = reduced;
    }

    /// <summary>The truss without its slack members.</summary>
    public LinearTruss Reduced { get; }

    public static Outcome<ActingTruss> Of(Truss whole, IReadOnlyCollection<int> slack) =>
        LinearTruss.Of(whole.Without(slack)).TryGet(out LinearTruss? reduced, out Refusal? refusal)
            ? new ActingTruss(whole, [.. slack.Order()], reduced)
            : refusal;

    public Outcome<ForceSolution> Solve(LoadCase loads) =>
        Reduced.Solve(loads).TryGet(out ForceSolution? solution, out Refusal? refusal)
            ? solution with { MemberForces = Expanded(solution.MemberForces) }
            : refusal;

    /// <summary>Influence lines of all members, zero for the slack ones.</summary>
    public Outcome<InfluenceLines> Lines() =>
        InfluenceLines.Of(Reduced).TryGet(out InfluenceLines? lines, out Refusal? refusal) ? lines.Of(whole, slack) : refusal;

    /// <summary>Values by member of the reduced truss, in the order of the whole one; 0 for slack members.</summary>
    public double[] Expanded(IReadOnlyList<double> values)
    {
        var all = new double[whole.Members.Count];
        for (int m = 0; m < kept.Length; m++)
        {
            all[kept[m]] = values[m];
        }

        return all;
    }
}
