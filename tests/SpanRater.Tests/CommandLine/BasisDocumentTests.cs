namespace SpanRater.Tests.CommandLine;

/// <summary>docs/basis.md and the catalogue of clauses hold the same rows, in the same order.</summary>
public class BasisDocumentTests
{
    [Fact]
    public void Basis_EveryRow_IsAClauseAndEveryClauseARow()
    {
        string[] rows =
        [
            .. File.ReadAllLines(Path.Combine(Repository.Root, "docs/basis.md"))
                .Where(l => l.StartsWith("| ", StringComparison.Ordinal) && !l.StartsWith("| Clause |", StringComparison.Ordinal)),
        ];

        Assert.Equal(Clauses.All.Select(RowOf), rows.Select(r => string.Join('|', r[1..^1].Split('|').Select(c => c.Trim()))));
    }

    private static string RowOf(Clause clause) => string.Join(
        '|',
        clause.Name,
        clause.Standard.Name,
        clause.Standard.Edition,
        clause.Article,
        clause.Says,
        clause.Values,
        clause.Mark switch { ClauseMark.Found => "found", ClauseMark.Memory => "from memory", _ => "common practice" },
        clause.Doubt ?? "");
}
