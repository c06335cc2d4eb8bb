using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>The posting review, its loads and gains leading to where they are worked.</summary>
internal static class PostingChapter
{
    private const string Loads = "safe-loads";

    private static readonly string[] OfLoads = ["posted [US ton]", "safe load [US ton]", "gross [US ton]", "single axle [US ton]", "tandem [US ton]"];

    private static readonly string[] OfChanges = ["gain", "one limit for all legal types [US ton]"];

    /// <summary>The chapter.</summary>
    /// <param name="page">What the command says.</param>
    /// <param name="posting">The posting; null where no posting rule belongs to the method.</param>
    /// <param name="alternatives">What would help; null where nothing is offered.</param>
    /// <param name="opened">Anchors of what the report opens of the bridge as it is.</param>
    /// <param name="units">The units to show.</param>
    public static ReportChapter Of(ResultPage page, Posting? posting, Alternatives? alternatives, IReadOnlyDictionary<RatingRow, string> opened, DisplayUnits units)
    {
        ResultBlock[] loads = posting is null ? [] : [.. SafeLoadTelling.Of(posting)];
        ReportPart[] changes = [.. WhatIfParts.Changes(alternatives, opened, units)];
        IReadOnlyList<ResultBlock> blocks = FieldReport.Body(page);
        return new ReportChapter("posting", "Posting review", blocks)
        {
            Leads =
            [
                .. blocks.OfType<ResultBlock.Grid>().Select(g => new ReportPart.Opening(
                    g.Content,
                    null,
                    (loads.Length == 0 ? [] : Cells(g.Content, OfLoads, Loads)).Concat(changes.Length == 0 ? [] : Cells(g.Content, OfChanges, WhatIfParts.Id)).ToDictionary(c => c.At, c => c.Id))),
            ],
            Parts = [.. loads.Length == 0 ? (ReportPart[])[] : [new ReportPart.Fold(Loads, "Safe loads, opened", [new ReportPart.Said(loads)])], .. changes],
        };
    }

    // What is not given has no number to open.
    private static IEnumerable<((int, int) At, string Id)> Cells(ResultTable table, string[] headings, string id) =>
        from c in Enumerable.Range(0, table.Columns.Count)
        where headings.Contains(table.Columns[c].Heading)
        from r in Enumerable.Range(0, table.Rows.Count)
        where table.Rows[r][c] is string text && text.Any(char.IsAsciiDigit)
        select ((r, c), id);
}
