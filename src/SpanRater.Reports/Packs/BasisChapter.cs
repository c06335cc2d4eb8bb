using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>What a rating rests on: method, clauses with their sources, what was assumed, and which values wait for somebody to look them up.</summary>
internal static class BasisChapter
{
    /// <summary>The blocks.</summary>
    public static IEnumerable<ResultBlock> Of(ReviewedBridge reviewed)
    {
        BridgeRating rating = reviewed.Rating;
        Clause[] clauses = [.. RatingClauses.Of(rating)];
        yield return new ResultBlock.Paragraph($"Method: {rating.Method.FullName} ({rating.Method.Name}). {RatingWording.Factors(rating)}.");
        if (rating.Method.Basis.Count == 0)
        {
            yield return new ResultBlock.Paragraph($"Factors by {rating.Method.Source}.");
        }

        yield return StampsOf(reviewed);
        if (clauses.Length > 0)
        {
            yield return new ResultBlock.Heading("Clauses");
            yield return new ResultBlock.Paragraph(
                "Of the method, of the share of one truss, of the modes that govern the capacities, and of posting. Values from memory are to be looked up in a copy of the standard; a clause in force wins over this table.");
            yield return new ResultBlock.Grid(new ResultTable(
                [new("clause"), new("where"), new("what is taken"), new("value"), new("known"), new("to confirm")],
                [.. clauses.Select(c => (IReadOnlyList<object?>)[c.Name, c.Citation, c.Says, c.Values, Known(c.Mark), ToConfirm(c, rating.Bridge)])]));
        }
    }

    /// <summary>What was assumed, as every page has it.</summary>
    public static ResultBlock.Items StampsOf(ReviewedBridge reviewed) =>
        new("Assumed, or done in place of what was asked:", [.. reviewed.Rating.Stamps.Select(s => RatingWording.Of(s, reviewed.Units))]);

    private static string Known(ClauseMark mark) => mark switch
    {
        ClauseMark.Found => "found",
        ClauseMark.Memory => "from memory",
        _ => "common practice",
    };

    private static string ToConfirm(Clause clause, Bridge bridge) =>
        clause.Doubt is not { } doubt ? "" : bridge.Rating.Confirmed.Contains(clause.Name) ? "confirmed by the user" : doubt;
}
