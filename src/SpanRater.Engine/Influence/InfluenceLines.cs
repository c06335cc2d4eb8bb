namespace SpanRater;

/// <summary>What an influence line tells of.</summary>
public enum EffectKind
{
    /// <summary>The force in a member, tension positive.</summary>
    Member,

    /// <summary>A component of a reaction, right and up positive.</summary>
    Reaction,

    /// <summary>The deflection of a panel point, down positive.</summary>
    Deflection,
}

/// <summary>One influence line of a truss.</summary>
/// <param name="Name">Name of the member, or joint and direction of the reaction: <c>L0 up</c>.</param>
/// <param name="Kind">Member or reaction.</param>
/// <param name="Line">Force for a unit downward load on the truss [-].</param>
public sealed record InfluenceEffect(string Name, EffectKind Kind, InfluenceLine Line);

/// <summary>The influence lines of every member and reaction of a truss, from a unit load at each panel point.</summary>
public sealed class InfluenceLines
{
    private InfluenceLines(Truss truss, InfluenceEffect[] members, InfluenceEffect[] reactions, double residual, int[]? slack = null)
    {
        Slack = slack;
        Truss = truss;
        Members = members;
        Reactions = reactions;
        Residual = residual;
    }

    /// <summary>The truss.</summary>
    public Truss Truss { get; }

    /// <summary>One line a member, in the order of <see cref="Truss.Members"/>.</summary>
    public IReadOnlyList<InfluenceEffect> Members { get; }

    /// <summary>The lines of the reactions: right and up for a pin or an inclined roller, else the one along the roller's normal.</summary>
    public IReadOnlyList<InfluenceEffect> Reactions { get; }

    /// <summary>Largest residual of all unit loads [-].</summary>
    public double Residual { get; }

    /// <summary>
    /// Positions of the members that only pull and are taken as slack; null where the truss has no such members. Lines with
    /// slack members hold for loads under which just these stay slack, and do not add up beyond them.
    /// </summary>
    public IReadOnlyList<int>? Slack { get; }

    /// <summary>Solves the truss for a unit load at each panel point.</summary>
    /// <param name="truss">The truss.</param>
    public static Outcome<InfluenceLines> Of(Truss truss) =>
        LinearTruss.Of(truss).TryGet(out LinearTruss? system, out Refusal? refusal) ? Of(system) : refusal;

    /// <summary>Solves the truss for a unit load at each panel point.</summary>
    /// <param name="system">The truss and its factored equations.</param>
    public static Outcome<InfluenceLines> Of(LinearTruss system)
    {
        ArgumentNullException.ThrowIfNull(system);
        Truss truss = system.Truss;
        if (truss.PanelPoints.Count < 2)
        {
            return new Refusal.NoDeck(truss.PanelPoints.Count);
        }

        var solutions = new List<ForceSolution>();
        foreach (Outcome<ForceSolution> outcome in system.SolveUnitLoads())
        {
            if (!outcome.TryGet(out ForceSolution? solution, out Refusal? refusal))
            {
                return refusal;
            }

            solutions.Add(solution);
        }

        InfluenceEffect[] members =
        [
            .. truss.Members.Select((member, m) =>
                new InfluenceEffect(member.Name, EffectKind.Member, LineOf(truss, solutions, s => s.MemberForces[m]))),
        ];
        var reactions = new List<InfluenceEffect>();
        for (int r = 0; r < solutions[0].Reactions.Count; r++)
        {
            int index = r;
            Joint joint = truss.Joints[solutions[0].Reactions[r].Joint];
            Support support = joint.Support!;
            if (support.Kind == SupportKind.Pin || support.NormalX != 0)
            {
                reactions.Add(new($"{joint.Name} right", EffectKind.Reaction, LineOf(truss, solutions, s => s.Reactions[index].Right)));
            }

            if (support.Kind == SupportKind.Pin || support.NormalY != 0)
            {
                reactions.Add(new($"{joint.Name} up", EffectKind.Reaction, LineOf(truss, solutions, s => s.Reactions[index].Up)));
            }
        }

        return new InfluenceLines(truss, members, [.. reactions], solutions.Max(s => s.Residual));
    }

    /// <summary>These lines, of a truss without its slack members, as lines of the whole truss.</summary>
    internal InfluenceLines Of(Truss whole, int[] slack)
    {
        var members = new InfluenceEffect[whole.Members.Count];
        for (int m = 0, acting = 0; m < members.Length; m++)
        {
            members[m] = slack.Contains(m)
                ? new InfluenceEffect(whole.Members[m].Name, EffectKind.Member, new InfluenceLine(whole.Stations, new double[whole.Stations.Count]))
                : Members[acting++];
        }

        return new InfluenceLines(whole, members, [.. Reactions], Residual, slack);
    }

    private static InfluenceLine LineOf(Truss truss, List<ForceSolution> solutions, Func<ForceSolution, double> effect) =>
        new(truss.Stations, [.. solutions.Select(effect)]);
}
