using System.Text;
using SpanRater.Files;
using Spectre.Console;
using Spectre.Console.Rendering;

namespace SpanRater.Cli.Terminal;

/// <summary>Writes a result page as text: on a terminal with its width and colour, piped plain and never wrapped or shortened.</summary>
internal static class TextPage
{
    /// <summary>Wider than any line: what is piped is never wrapped.</summary>
    private const int NoLimit = 100_000;

    public static byte[] Write(ResultPage page, DisplayUnits units, int? terminalWidth, bool colour)
    {
        using var writer = new StringWriter { NewLine = "\n" };

        // What is piped needs neither wrapping nor colour, and is written without the console library, which takes a tenth of a second to begin.
        IAnsiConsole? console = terminalWidth is null && !colour ? null : ConsoleOn(writer, terminalWidth ?? NoLimit, colour);
        foreach (ResultBlock block in page.Blocks)
        {
            if (block is ResultBlock.Grid { Content: var content })
            {
                TextGrid.Write(writer, content, units, colour);
            }
            else if (console is null)
            {
                foreach (string line in Lines(block))
                {
                    writer.WriteLine(line);
                }
            }
            else
            {
                console.Write(Prose(block));

                // A paragraph does not end its line; lists and tables do.
                if (block is not (ResultBlock.Items or ResultBlock.Equation))
                {
                    console.WriteLine();
                }
            }

            writer.WriteLine();
        }

        string text = string.Join('\n', writer.ToString().Replace("\r\n", "\n", StringComparison.Ordinal).Split('\n').Select(l => l.TrimEnd()));
        return Encoding.UTF8.GetBytes(text.TrimEnd('\n') + "\n");
    }

    private static IAnsiConsole ConsoleOn(StringWriter writer, int width, bool colour)
    {
        IAnsiConsole console = AnsiConsole.Create(new AnsiConsoleSettings
        {
            Ansi = colour ? AnsiSupport.Yes : AnsiSupport.No,
            ColorSystem = colour ? ColorSystemSupport.Standard : ColorSystemSupport.NoColors,
            Interactive = InteractionSupport.No,
            Out = new AnsiConsoleOutput(writer),
        });
        console.Profile.Width = width;
        return console;
    }

    private static IEnumerable<string> Lines(ResultBlock block) => block switch
    {
        ResultBlock.Heading h => [h.Text],
        ResultBlock.Paragraph p => [p.Text],
        ResultBlock.Equation e => [$"    {e.Text}"],
        ResultBlock.Figure f => [PictureLine(f)],
        ResultBlock.Items i => [i.Lead, .. i.Entries.Select(e => $"  - {e}")],
        _ => throw new ArgumentOutOfRangeException(nameof(block), block, "Every kind of block has a look."),
    };

    private static string PictureLine(ResultBlock.Figure figure) => $"Picture: {figure.File}: {figure.Caption}";

    private static IRenderable Prose(ResultBlock block) => block switch
    {
        ResultBlock.Heading h => new Text(h.Text, new Style(decoration: Decoration.Bold | Decoration.Underline)),
        ResultBlock.Paragraph p => new Text(p.Text, p.Strong ? new Style(decoration: Decoration.Bold) : Style.Plain),
        ResultBlock.Equation e => new Padder(new Text(e.Text), new Padding(4, 0, 0, 0)),
        ResultBlock.Figure f => new Text(PictureLine(f)),
        ResultBlock.Items i => new Rows(
            (IEnumerable<IRenderable>)[new Text(i.Lead, new Style(decoration: Decoration.Bold)), .. i.Entries.Select(e => new Padder(new Text("- " + e), new Padding(2, 0, 0, 0)))]),
        _ => throw new ArgumentOutOfRangeException(nameof(block), block, "Every kind of block has a look."),
    };
}
