namespace SpanRater;

/// <summary>Every clause that a formula of the program uses; vehicles carry their own sources.</summary>
public static class Clauses
{
    /// <summary>All of them.</summary>
    public static IReadOnlyList<Clause> All { get; } =
    [
        .. FactorClauses.All, .. ImpactClauses.All, .. LateralClauses.All,
        .. LiveLoadClauses.All, .. PostingClauses.All, .. DeadLoadClauses.All,
        .. StrengthClauses.All, .. ResistanceClauses.All, .. PonyClauses.All, .. TimberClauses.All, .. SectionClauses.All, .. FloorClauses.All, .. BeamClauses.All, .. ConnectionClauses.All,
        .. FatigueClauses.All, .. TrafficClauses.All,
    ];

    /// <summary>Those whose value the user is asked to look up.</summary>
    public static IReadOnlyList<Clause> ToConfirm { get; } = [.. All.Where(c => c.ToConfirm)];

    /// <summary>The clause to confirm of that name, whatever its case, or null.</summary>
    /// <param name="name">Its name.</param>
    public static Clause? FindToConfirm(string name) => ToConfirm.FirstOrDefault(c => string.Equals(c.Name, name, StringComparison.OrdinalIgnoreCase));

    /// <summary>One line of where clauses are from: remembered ones first, standard by standard, then found ones and practice.</summary>
    /// <param name="clauses">The clauses.</param>
    public static string Sources(IEnumerable<Clause> clauses)
    {
        ArgumentNullException.ThrowIfNull(clauses);
        var parts = new List<string>();
        foreach (IGrouping<ClauseMark, Clause> marked in clauses.GroupBy(c => c.Mark).OrderBy(g => g.Key == ClauseMark.Memory ? 0 : g.Key == ClauseMark.Found ? 1 : 2))
        {
            parts.Add(marked.Key switch
            {
                ClauseMark.Memory => $"{Standards(marked)}; all from memory",
                ClauseMark.Found => $"Found: {Standards(marked)}",
                _ => $"Common practice: {string.Join("; ", marked.Select(c => $"{c.Name} {c.Values}"))}",
            });
        }

        return string.Join(". ", parts);
    }

    private static string Standards(IEnumerable<Clause> clauses) =>
        string.Join("; ", clauses.GroupBy(c => c.Standard).Select(g =>
        {
            Clause first = g.First();
            string[] articles = [.. g.GroupBy(c => c.Article).Select(a => $"{a.Key}{(a.Key.Length == 0 ? "" : " ")}({string.Join(", ", a.Select(c => c.Name))})")];
            string between = first.Article.Length == 0 || first.Standard.Edition.Length == 0 ? " " : ", ";
            return $"{first.Edited}{between}{string.Join(", ", articles)}";
        }));
}
