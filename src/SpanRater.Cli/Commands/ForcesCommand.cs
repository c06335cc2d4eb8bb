using System.CommandLine;
using SpanRater.Files;

namespace SpanRater.Cli.Commands;

/// <summary><c>forces BRIDGE --case NAME</c>: member forces and reactions for one load case.</summary>
internal static class ForcesCommand
{
    public static Command Make(Surroundings surroundings)
    {
        var command = new BridgeCommand(surroundings, "forces", "Member forces and reactions for one case of loads.csv.", draws: false);
        var caseName = new Option<string>("--case") { Description = "The load case of loads.csv.", HelpName = "NAME", Required = true };
        caseName.CompletionSources.Add(context => NamesToComplete.Cases(context.ParseResult.GetValue(command.Bridge)));
        return command.With([caseName], pageTellsWarnings: false, (parsed, reading, units, answer) =>
        {
            Bridge bridge = reading.Bridge!;
            string name = parsed.GetRequiredValue(caseName);
            LoadCase loads = bridge.FindCase(name) ?? throw new RefusedException(NoCase(bridge, name));
            Outcome<ForceSolution> outcome = SolvableTruss.Of(bridge.Truss).TryGet(out SolvableTruss? system, out Refusal? refusal)
                ? system.Solve(loads)
                : refusal;
            return answer.Deliver(ForcesPage.Of(bridge, loads, outcome, units), units);
        });
    }

    private static string NoCase(Bridge bridge, string name)
    {
        string[] cases = [.. bridge.Cases.Select(c => c.Name)];
        string known = cases.Length == 0 ? "it has none" : $"its cases are: {string.Join(", ", cases)}";
        return $"--case \"{name}\": {BridgeFolder.LoadsFile} has no such case; {known}.{NearestName.Question(name, cases)}";
    }
}
