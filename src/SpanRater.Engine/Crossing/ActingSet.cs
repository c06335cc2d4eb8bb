namespace SpanRater;

/// <summary>One set of acting rods: its influence lines, and the dead forces while it acts.</summary>
internal sealed record ActingSet(InfluenceLines Lines, ForceSolution Components, ForceSolution? WearingSurface)
{
    /// <param name="system">The truss.</param>
    /// <param name="components">Dead load of the components.</param>
    /// <param name="wearingSurface">Dead load of the wearing surface, or null.</param>
    /// <param name="secondActs">A character for each pair, 1 where its second rod acts.</param>
    public static Outcome<ActingSet> Of(RodTruss system, LoadCase components, LoadCase? wearingSurface, string secondActs)
    {
        int[] slack = [.. system.Pairs.Select((p, i) => secondActs[i] == '1' ? p.First : p.Second)];
        ForceSolution? dw = null;
        return ActingTruss.Of(system.Truss, slack).TryGet(out ActingTruss? acting, out Refusal? refusal)
            && acting.Lines().TryGet(out InfluenceLines? lines, out refusal)
            && acting.Solve(components).TryGet(out ForceSolution? dc, out refusal)
            && (wearingSurface is null || acting.Solve(wearingSurface).TryGet(out dw, out refusal))
            ? new ActingSet(lines, dc, dw)
            : refusal!;
    }

    /// <summary>Force of a member under all dead load while this set acts [N].</summary>
    public double Dead(int member) => Components.MemberForces[member] + (WearingSurface?.MemberForces[member] ?? 0);
}
