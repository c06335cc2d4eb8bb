using System.CommandLine;
using SpanRater.Files;

namespace SpanRater.Cli.Commands;

/// <summary><c>vehicles [NAME]</c>: lists the catalogue, or shows one vehicle with its source.</summary>
internal static class VehiclesCommand
{
    public static Command Make(Surroundings surroundings)
    {
        var name = new Argument<string?>("NAME") { Description = "Show this one. Unset: list all.", Arity = ArgumentArity.ZeroOrOne, HelpName = "NAME" };
        name.CompletionSources.Add(_ => NamesToComplete.Vehicles(null));
        Option<string?> format = CommonOptions.Format(), units = CommonOptions.Units(), output = CommonOptions.Out();
        Option<string[]> catalogue = CommonOptions.Catalogue();
        var command = new Command("vehicles", "List the vehicles and loadings there are, or show one with its source.") { name, format, units, output, catalogue };
        command.SetAction(parsed =>
        {
            Catalogue read = BridgeInput.ReadCatalogue(parsed.GetValue(catalogue)!);
            DisplayUnits shown = BridgeInput.UnitsFor(parsed.GetValue(units), DisplayUnits.Us);
            var answer = new Answer(surroundings, parsed.GetValue(format), parsed.GetValue(output));
            return answer.Deliver(parsed.GetValue(name) is { } one ? VehiclesPage.One(read.Find(one, "NAME"), shown) : VehiclesPage.All(read, shown), shown);
        });
        return command;
    }
}
