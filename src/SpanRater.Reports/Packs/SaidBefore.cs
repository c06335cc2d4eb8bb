using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>What stands in front of a document for all of its chapters: pages that are put together there need not say it again, each on its own.</summary>
/// <param name="blocks">What was said.</param>
internal sealed class SaidBefore(IReadOnlyList<ResultBlock> blocks)
{
    private readonly HashSet<string> paragraphs = [.. blocks.OfType<ResultBlock.Paragraph>().Select(p => p.Text)];
    private readonly ResultBlock.Items[] lists = [.. blocks.OfType<ResultBlock.Items>()];

    /// <summary>The blocks but for those that were said before, word for word.</summary>
    /// <param name="chapter">The blocks of a chapter.</param>
    public IReadOnlyList<ResultBlock> Without(IEnumerable<ResultBlock> chapter) => [.. chapter.Where(b => !WasSaid(b))];

    private bool WasSaid(ResultBlock block) => block switch
    {
        ResultBlock.Paragraph paragraph => paragraphs.Contains(paragraph.Text),
        ResultBlock.Items items => lists.Any(l => l.Lead == items.Lead && l.Entries.SequenceEqual(items.Entries)),
        _ => false,
    };
}
