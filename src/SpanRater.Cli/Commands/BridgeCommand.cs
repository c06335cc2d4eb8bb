using System.CommandLine;
using SpanRater.Files;

namespace SpanRater.Cli.Commands;

/// <summary>A command that reads a bridge folder: its argument, the common options, and a picture where it draws one.</summary>
internal sealed class BridgeCommand
{
    private readonly CommonOptions common;
    private readonly Surroundings surroundings;
    private readonly Option<string?>? picture;
    private readonly Option<string?>? truss;

    public BridgeCommand(Surroundings surroundings, string name, string description, bool draws, bool showsEveryTruss = false, string drawn = "Draw it as well: PNG or SVG by the file's ending.", Writes writes = Writes.Page)
    {
        common = new CommonOptions(writes: writes);
        this.surroundings = surroundings;
        Bridge.CompletionSources.Add(context => NamesToComplete.BridgeFolders(context.WordToComplete));
        Command = new Command(name, description) { Bridge };
        picture = draws ? new Option<string?>("--picture") { Description = drawn, HelpName = "FILE" } : null;
        truss = showsEveryTruss ? null : new Option<string?>("--truss") { Description = "Where the dead loads of the two trusses differ: the truss to show. Unset: the left one, and that is said.", HelpName = "NAME" };
        truss?.CompletionSources.Add(context => NamesToComplete.Trusses(context.ParseResult.GetValue(Bridge)));
    }

    /// <summary>What a command makes of a bridge.</summary>
    public delegate int Act(ParseResult parsed, BridgeReading reading, DisplayUnits units, Answer answer);

    public Command Command { get; }

    public Argument<string> Bridge { get; } = new("BRIDGE")
    {
        Description = "The bridge folder: the one that holds bridge.toml, joints.csv and members.csv.",
        HelpName = "BRIDGE",
    };

    /// <summary>The catalogues that the command line adds.</summary>
    public IReadOnlyList<string> CataloguesIn(ParseResult parsed) => common.CataloguesIn(parsed);

    /// <summary>An option that names a member of the bridge.</summary>
    public Option<string?> MemberOption(string description)
    {
        var option = new Option<string?>("--member") { Description = description, HelpName = "NAME" };
        option.CompletionSources.Add(context => NamesToComplete.Members(context.ParseResult.GetValue(Bridge)));
        return option;
    }

    /// <summary>An option that names a load case of the bridge.</summary>
    public Option<string?> CaseOption(string description, bool required = false)
    {
        var option = new Option<string?>("--case") { Description = description, HelpName = "NAME", Required = required };
        option.CompletionSources.Add(context => NamesToComplete.Cases(context.ParseResult.GetValue(Bridge)));
        return option;
    }

    /// <summary>An option that asks why the answer for a member is as it is.</summary>
    public Option<string?> ExplainOption(string description)
    {
        var option = new Option<string?>("--explain") { Description = description, HelpName = "MEMBER" };
        option.CompletionSources.Add(context => NamesToComplete.Members(context.ParseResult.GetValue(Bridge)));
        return option;
    }

    /// <summary>Adds the options, and says what the command does. Warnings go to the error writer unless the page tells them.</summary>
    public Command With(IReadOnlyList<Option> options, bool pageTellsWarnings, Act act)
    {
        foreach (Option option in options)
        {
            Command.Add(option);
        }

        common.AddTo(Command);
        if (picture is not null)
        {
            Command.Add(picture);
        }

        if (truss is not null)
        {
            Command.Add(truss);
        }

        Command.SetAction(parsed =>
        {
            string? pictureFile = picture is null ? null : parsed.GetValue(picture);
            Answer answer = common.AnswerTo(parsed, surroundings, pictureFile);
            answer.CheckFiles(common.CataloguesIn(parsed));
            BridgeReading reading = BridgeInput.Read(parsed.GetRequiredValue(Bridge), common.CataloguesIn(parsed), pageTellsWarnings ? null : surroundings.Error);
            if (truss is not null)
            {
                OneTruss one = OneTruss.Of(reading.Bridge!, parsed.GetValue(truss));
                (reading, answer) = (reading with { Bridge = one.Bridge }, answer with { Truss = one });
            }

            surroundings.Stop.ThrowIfCancellationRequested();
            return act(parsed, reading, common.UnitsIn(parsed, reading.Units), answer);
        });
        return Command;
    }
}
