using System.CommandLine;
using SpanRater.Files;

namespace SpanRater.Cli.Commands;

/// <summary><c>forces BRIDGE --case NAME</c>: member forces and reactions for one load case.</summary>
internal static class ForcesCommand
{
    public static Command Make(Surroundings surroundings)
    {
        Argument<string> bridge = CommonOptions.Bridge();
        var caseName = new Option<string>("--case") { Description = "The load case of loads.csv.", HelpName = "NAME", Required = true };
        caseName.CompletionSources.Add(context => NamesToComplete.Cases(context.ParseResult.GetValue(bridge)));
        Option<string?> format = CommonOptions.Format(), units = CommonOptions.Units(), output = CommonOptions.Out();
        Option<string[]> catalogue = CommonOptions.Catalogue();
        var command = new Command("forces", "Member forces and reactions for one case of loads.csv.") { bridge, caseName, format, units, output, catalogue };
        command.SetAction(parsed =>
        {
            BridgeReading reading = BridgeInput.Read(parsed.GetRequiredValue(bridge), parsed.GetValue(catalogue)!, surroundings.Error);
            Bridge read = reading.Bridge!;
            string name = parsed.GetRequiredValue(caseName);
            LoadCase loads = read.FindCase(name) ?? throw new RefusedException(NoCase(read, name));
            DisplayUnits shown = BridgeInput.UnitsFor(parsed.GetValue(units), reading.Units);
            Outcome<ForceSolution> outcome = DeterminateTruss.Of(read.Truss).TryGet(out DeterminateTruss? system, out Refusal? refusal)
                ? system.Solve(loads)
                : refusal;
            var answer = new Answer(surroundings, parsed.GetValue(format), parsed.GetValue(output));
            return answer.Deliver(ForcesPage.Of(read, loads, outcome, shown), shown);
        });
        return command;
    }

    private static string NoCase(Bridge bridge, string name)
    {
        string[] cases = [.. bridge.Cases.Select(c => c.Name)];
        string known = cases.Length == 0 ? "it has none" : $"its cases are: {string.Join(", ", cases)}";
        return $"--case \"{name}\": {BridgeFolder.LoadsFile} has no such case; {known}.{NearestName.Question(name, cases)}";
    }
}
