using System.CommandLine;
using SpanRater.Files;

namespace SpanRater.Cli.Commands;

/// <summary><c>vehicles [NAME]</c>: lists the catalogue, or shows one vehicle with its source.</summary>
internal static class VehiclesCommand
{
    public static Command Make(Surroundings surroundings)
    {
        var common = new CommonOptions();
        var name = new Argument<string?>("NAME") { Description = "Show this one. Unset: list all.", Arity = ArgumentArity.ZeroOrOne, HelpName = "NAME" };
        name.CompletionSources.Add(_ => NamesToComplete.Vehicles(null));
        var command = new Command("vehicles", "List the vehicles and loadings there are, or show one with its source.") { name };
        common.AddTo(command);
        command.SetAction(parsed =>
        {
            Catalogue catalogue = BridgeInput.ReadCatalogue(common.CataloguesIn(parsed), surroundings.Error);
            DisplayUnits units = common.UnitsIn(parsed, DisplayUnits.Us);
            Answer answer = common.AnswerTo(parsed, surroundings);
            answer.CheckFiles(common.CataloguesIn(parsed));
            return answer.Deliver(
                parsed.GetValue(name) is { } one ? VehiclesPage.One(BridgeInput.Find(catalogue, one, "NAME"), units) : VehiclesPage.All(catalogue, units),
                units);
        });
        return command;
    }
}
