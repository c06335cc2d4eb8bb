using System.CommandLine;

namespace SpanRater.Cli.Commands;

/// <summary>The argument and options that commands share, each with its completion.</summary>
internal static class CommonOptions
{
    public static Argument<string> Bridge()
    {
        var argument = new Argument<string>("BRIDGE") { Description = "The bridge folder: the one that holds bridge.toml, joints.csv and members.csv.", HelpName = "BRIDGE" };
        argument.CompletionSources.Add(context => NamesToComplete.BridgeFolders(context.WordToComplete));
        return argument;
    }

    public static Option<string?> Format()
    {
        var option = new Option<string?>("--format") { Description = "text, csv or json. Unset: by the ending of --out, else text.", HelpName = "text|csv|json" };
        option.AcceptOnlyFromAmong("text", "csv", "json");
        return option;
    }

    public static Option<string?> Units()
    {
        var option = new Option<string?>("--units") { Description = "us or si, for text and csv. Unset: the system of x in joints.csv. JSON is always SI.", HelpName = "us|si" };
        option.AcceptOnlyFromAmong("us", "si");
        return option;
    }

    public static Option<string?> Out() => new("--out") { Description = "Write to this file, whole or not at all, instead of the terminal.", HelpName = "FILE" };

    public static Option<string[]> Catalogue() => new("--catalogue")
    {
        Description = "Add a catalogue of vehicles, a file or a folder, to the ones built in.",
        HelpName = "PATH",
        AllowMultipleArgumentsPerToken = false,
        DefaultValueFactory = _ => [],
    };

    public static Option<string?> Picture() => new("--picture") { Description = "Draw it as well: PNG or SVG by the file's ending.", HelpName = "FILE" };

    public static Option<string?> Member(Argument<string> bridge, string description)
    {
        var option = new Option<string?>("--member") { Description = description, HelpName = "NAME" };
        option.CompletionSources.Add(context => NamesToComplete.Members(context.ParseResult.GetValue(bridge)));
        return option;
    }
}
