using SpanRater.Files;

namespace SpanRater.Cli.Commands;

/// <summary>The truss that a command shows, where the dead loads of the two differ; told on its page, so that one is never taken for both.</summary>
/// <param name="Bridge">The bridge with the cases of that truss.</param>
/// <param name="Name">Its name; null where the trusses are alike.</param>
/// <param name="Note">What is said of it; null where the trusses are alike.</param>
internal sealed record OneTruss(Bridge Bridge, string? Name, string? Note)
{
    /// <summary>The truss asked for; unset, the left one.</summary>
    public static OneTruss Of(Bridge bridge, string? asked)
    {
        IReadOnlyList<string> names = bridge.Deck.TrussNames;
        int index = asked is null ? 0 : names.ToList().IndexOf(asked);
        if (index < 0)
        {
            throw new RefusedException($"--truss \"{asked}\": the trusses are {string.Join(" and ", names)}.{NearestName.Question(asked!, names)}");
        }

        return bridge.TrussesAlike
            ? new OneTruss(bridge, null, null)
            : new OneTruss(bridge.OfTruss(index), names[index], $"The dead loads of the two trusses differ: where they count, what stands here is for the {names[index]} truss; --truss {Quoted(names[1 - index])} shows the other.");
    }

    /// <summary>The page, with the truss told on it.</summary>
    public ResultPage On(ResultPage page) => Note is null
        ? page
        : page with
        {
            Blocks = [.. page.Blocks.Take(1), new ResultBlock.Paragraph(Note, Strong: true), .. page.Blocks.Skip(1)],
            Notes = [Note, .. page.Notes],
            WriteJson = json =>
            {
                page.WriteJson(json);
                json.WriteString("truss", Name);
            },
        };

    private static string Quoted(string name) => name.Contains(' ', StringComparison.Ordinal) ? $"\"{name}\"" : name;
}
