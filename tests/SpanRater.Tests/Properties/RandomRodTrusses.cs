using CsCheck;

namespace SpanRater.Tests;

/// <summary>
/// Random trusses with crossed rods that only pull: Pratt and Parker with counters, among them pairs over two panels that
/// hang on the pair of one of them, and other members that only pull.
/// </summary>
internal static class RandomRodTrusses
{
    /// <summary>Trusses of which statics alone says what acts.</summary>
    /// <param name="mostPairs">At most so many crossed pairs.</param>
    /// <param name="mayHang">Whether a pair may span two panels, of which one has a pair of its own.</param>
    /// <param name="mayStand">Part of the truss's other members that only pull as well [-].</param>
    internal static Gen<Truss> Paired(int mostPairs, bool mayHang, double mayStand) =>
        from panels in Gen.Int[4, 8]
        from length in Gen.Double[3, 8]
        from level in Gen.Bool
        from heights in Gen.Double[0.6, 1.6].Array[panels - 1]
        from crossed in Gen.Shuffle(Enumerable.Range(1, panels - 2).ToArray())
        from count in Gen.Int[0, mostPairs]
        from hangs in Gen.Bool
        from only in Gen.Double.Unit.Array[6 * panels]
        let form = level ? (TrussForm)new PrattTruss(panels, length, length * heights[0]) : new ParkerTruss(length, [.. heights.Select(h => h * length)])
        select Crossed(form.Build(), panels, [.. crossed.Take(count)], mayHang && hangs, only, mayStand);

    /// <summary>Trusses with stiff diagonals, some with a rod beside them: the areas decide.</summary>
    internal static Gen<Truss> Elastic(int fewestPanels, int mostPanels, int fewestRods) =>
        from panels in Gen.Int[fewestPanels, mostPanels]
        from length in Gen.Double[3, 8]
        from height in Gen.Double[0.6, 1.6]
        from crossed in Gen.Shuffle(Enumerable.Range(1, panels - 2).ToArray())
        from count in Gen.Int[fewestRods, panels - 2]
        from areas in RandomRedundantTrusses.Area().Array[8 * panels]
        let truss = new PrattTruss(panels, length, height * length).Build()
        let members = truss.Members.Concat(crossed.Take(count).Select(i => Counter(truss, i)))
        select RandomRedundantTrusses.With(truss, members.Select((m, i) => m with { Area = areas[i] }));

    /// <summary>A dead load at the lower panel points and, on some, a live load each way at every joint.</summary>
    internal static Gen<LoadCase> Case(Truss truss, double live) =>
        from dead in Gen.Double[0, 5e4]
        from loads in Gen.Select(Gen.Double[-1, 1], Gen.Double[-1, 1]).Array[truss.Joints.Count]
        select new LoadCase(
            "loads",
            [.. truss.Joints.Select((j, i) => new JointLoad(j.Name, live * loads[i].Item1, (live * loads[i].Item2) - (j.IsPanelPoint ? dead : 0)))]);

    // A counter beside the diagonal of a panel, as a rod.
    private static Member Counter(Truss truss, int panel)
    {
        (string from, string to) = truss.FindMember($"U{panel}L{panel + 1}") is null ? ($"U{panel}", $"L{panel + 1}") : ($"L{panel}", $"U{panel + 1}");
        return new Member(from + to, from, to, TensionOnly: true);
    }

    private static Truss Crossed(Truss truss, int panels, int[] crossed, bool hangs, double[] only, double mayStand)
    {
        var members = truss.Members.Select((m, i) => m with { TensionOnly = only[i] < mayStand }).ToList();
        foreach (int panel in crossed)
        {
            int main = members.FindIndex(m => m.Name == $"U{panel}L{panel + 1}" || m.Name == $"L{panel}U{panel + 1}");
            members[main] = members[main] with { TensionOnly = true };
            members.Add(Counter(truss, panel));
        }

        // A pair over this panel and the next, whose diagonal it replaces.
        if (hangs && crossed.Length > 0 && crossed[0] + 2 < panels && !crossed.Contains(crossed[0] + 1))
        {
            int first = crossed[0];
            members.RemoveAll(m => m.Name == $"U{first + 1}L{first + 2}" || m.Name == $"L{first + 1}U{first + 2}");
            members.Add(new Member($"U{first}L{first + 2}", $"U{first}", $"L{first + 2}", TensionOnly: true));
            members.Add(new Member($"L{first}U{first + 2}", $"L{first}", $"U{first + 2}", TensionOnly: true));
        }

        return RandomRedundantTrusses.With(truss, members);
    }
}
