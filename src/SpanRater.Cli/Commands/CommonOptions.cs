using System.CommandLine;
using SpanRater.Files;

namespace SpanRater.Cli.Commands;

/// <summary>The options that every command with an answer takes, and what they come to.</summary>
internal sealed class CommonOptions
{
    private readonly Option<string?> format;
    private readonly Option<string?> units = new("--units") { Description = "us or si, for all but json. Unset: the system of x in joints.csv. JSON is always SI.", HelpName = "us|si" };
    private readonly Option<string?> output;
    private readonly Option<string[]> catalogue = new("--catalogue")
    {
        Description = "Add a catalogue of vehicles, a file or a folder, to the ones built in.",
        HelpName = "PATH",
        DefaultValueFactory = _ => [],
    };

    private readonly bool isOfBridges;
    private readonly Writes writes;

    public CommonOptions(bool isOfBridges = true, Writes writes = Writes.Page)
    {
        this.isOfBridges = isOfBridges;
        this.writes = writes;
        string[] formats = ["text", "markdown", "csv", "json", .. writes == Writes.Survey ? ["html"] : Array.Empty<string>()];
        format = new("--format") { Description = $"{string.Join(", ", formats[..^1])} or {formats[^1]}. Unset: by the ending of --out, else text.", HelpName = string.Join('|', formats) };
        output = writes switch
        {
            Writes.Survey => new("--out") { Description = "Write to this file, whole or not at all; or, where it has no ending, to this folder: all tables, and the facts of each bridge, from which a survey that was cut short goes on.", HelpName = "FILE|FOLDER" },
            Writes.Report => new("--out") { Description = "The file to write, ending in .html, whole or not at all.", HelpName = "FILE.html", Required = true },
            Writes.Folder => new("--out") { Description = "The folder to write, whole or not at all: one that is not there yet, or an empty one. Nothing is overwritten.", HelpName = "FOLDER", Required = true },
            _ => new("--out") { Description = "Write to this file, whole or not at all, instead of the terminal.", HelpName = "FILE" },
        };

        format.AcceptOnlyFromAmong(formats);
        units.AcceptOnlyFromAmong("us", "si");
    }

    public void AddTo(Command command)
    {
        if (writes is Writes.Page or Writes.Survey)
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
        new(surroundings, writes switch { Writes.Report => "html", Writes.Folder => "folder", _ => parsed.GetValue(format) }, parsed.GetValue(output), pictureFile) { TakesHtml = writes == Writes.Survey };
}
