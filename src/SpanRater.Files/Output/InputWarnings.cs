namespace SpanRater.Files;

/// <summary>Tells what the input was warned of on the page whose numbers it may have changed.</summary>
public static class InputWarnings
{
    private const string Lead = "Warnings of the input, which may change the numbers here:";

    /// <summary>The page with the warnings under its first sentences, in the notes of its table, and as an array <c>warnings</c> in its JSON.</summary>
    /// <param name="page">The page.</param>
    /// <param name="findings">What was found in the input.</param>
    public static ResultPage On(ResultPage page, FindingList findings)
    {
        ArgumentNullException.ThrowIfNull(page);
        ArgumentNullException.ThrowIfNull(findings);
        string[] warnings = [.. findings.All.Select(f => f.ToString())];
        int sentences = page.Blocks.Skip(1).TakeWhile(b => b is ResultBlock.Paragraph).Count() + 1;
        return page with
        {
            Blocks = warnings.Length == 0 ? page.Blocks : [.. page.Blocks.Take(sentences), new ResultBlock.Items(Lead, warnings), .. page.Blocks.Skip(sentences)],
            Notes = [.. page.Notes, .. warnings.Select(w => $"Warning of the input: {w}")],
            WriteJson = json =>
            {
                page.WriteJson(json);
                json.WriteStartArray("warnings");
                foreach (string warning in warnings)
                {
                    json.WriteStringValue(warning);
                }

                json.WriteEndArray();
            },
        };
    }
}
