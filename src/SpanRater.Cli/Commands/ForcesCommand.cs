using System.CommandLine;
using SpanRater.Files;

namespace SpanRater.Cli.Commands;

/// <summary><c>forces BRIDGE --case NAME</c>: member forces and reactions for one load case.</summary>
internal static class ForcesCommand
{
    public static Command Make(Surroundings surroundings)
    {
        var command = new BridgeCommand(surroundings, "forces", "Member forces and reactions for one load case.", draws: false);
        Option<string?> caseName = command.CaseOption("The load case: DC, DW or one of loads.csv.", required: true);
        return command.With([caseName], pageTellsWarnings: false, (parsed, reading, units, answer) =>
        {
            Bridge bridge = reading.Bridge!;
            LoadCase loads = BridgeInput.FindCase(bridge, parsed.GetRequiredValue(caseName)!);
            Outcome<ForceSolution> outcome = SolvableTruss.Of(bridge.Truss).TryGet(out SolvableTruss? system, out Refusal? refusal)
                ? system.Solve(loads)
                : refusal;
            return answer.Deliver(ForcesPage.Of(bridge, loads, outcome, units), units);
        });
    }
}
