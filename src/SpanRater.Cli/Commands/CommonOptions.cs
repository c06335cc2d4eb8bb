using System.CommandLine;
using SpanRater.Files;

namespace SpanRater.Cli.Commands;

/// <summary>The options that every command with an answer takes, and what they come to.</summary>
internal sealed class CommonOptions
{
    private readonly Option<string?> format = new("--format") { Description = "text, markdown, csv or json. Unset: by the ending of --out, else text.", HelpName = "text|markdown|csv|json" };
    private readonly Option<string?> units = new("--units") { Description = "us or si, for all but json. Unset: the system of x in joints.csv. JSON is always SI.", HelpName = "us|si" };
    private readonly Option<string?> output = new("--out") { Description = "Write to this file, whole or not at all, instead of the terminal.", HelpName = "FILE" };
    private readonly Option<string[]> catalogue = new("--catalogue")
    {
        Description = "Add a catalogue of vehicles, a file or a folder, to the ones built in.",
        HelpName = "PATH",
        DefaultValueFactory = _ => [],
    };

    private readonly bool isOfBridges, writesReport;

    public CommonOptions(bool isOfBridges = true, bool writesReport = false)
    {
        this.isOfBridges = isOfBridges;
        this.writesReport = writesReport;
        if (writesReport)
        {
            output = new("--out") { Description = "The file to write, ending in .html, whole or not at all.", HelpName = "FILE.html", Required = true };
        }

        format.AcceptOnlyFromAmong("text", "markdown", "csv", "json");
        units.AcceptOnlyFromAmong("us", "si");
    }

    public void AddTo(Command command)
    {
        if (!writesReport)
        {
            command.Add(format);
        }

        if (isOfBridges)
        {
            command.Add(units);
        }

        command.Add(output);
        if (isOfBridges)
        {
            command.Add(catalogue);
        }
    }

    public IReadOnlyList<string> CataloguesIn(ParseResult parsed) => parsed.GetValue(catalogue)!;

    public DisplayUnits UnitsIn(ParseResult parsed, DisplayUnits unset) => parsed.GetValue(units) switch
    {
        "us" => DisplayUnits.Us,
        "si" => DisplayUnits.Si,
        _ => unset,
    };

    public Answer AnswerTo(ParseResult parsed, Surroundings surroundings, string? pictureFile = null) =>
        new(surroundings, writesReport ? "html" : parsed.GetValue(format), parsed.GetValue(output), pictureFile);
}
