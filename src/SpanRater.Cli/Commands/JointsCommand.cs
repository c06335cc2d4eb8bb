using System.CommandLine;
using SpanRater.Reports;

namespace SpanRater.Cli.Commands;

/// <summary><c>joints BRIDGE --case NAME | --unit-load JOINT</c>: the forces worked joint by joint, as on paper.</summary>
internal static class JointsCommand
{
    public static Command Make(Surroundings surroundings)
    {
        var command = new BridgeCommand(surroundings, "joints", "Work the forces joint by joint as on paper: the order, every equation, every number, and what must close.", draws: false);
        var load = new LoadOptions(command.Bridge);
        var pictures = new Option<string?>("--pictures") { Description = "Draw the free body of every step into this folder, PNG. It is made where it is not there.", HelpName = "FOLDER" };
        return command.With([.. load.All, pictures], pageTellsWarnings: false, (parsed, reading, units, answer) =>
        {
            Bridge bridge = reading.Bridge!;
            LoadAsked asked = load.In(parsed, bridge);
            PictureFolder? folder = parsed.GetValue(pictures) is { } path ? new PictureFolder(path, answer.OutFile) : null;
            Outcome<WorkedSolution> outcome = WorkedSolution.Of(bridge.Truss, asked.Loads);
            if (outcome.Value is { } worked && folder is not null)
            {
                folder.Draw(bridge.Title, worked, asked, units);
            }

            return answer.Deliver(WorkedSolutionPage.Of(bridge, asked, outcome, units, s => folder?.ShownNameOf(outcome.Value!, s)), units);
        });
    }
}
