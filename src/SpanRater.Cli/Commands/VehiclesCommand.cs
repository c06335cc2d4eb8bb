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
        var write = new Option<string?>("--write") { Description = "Copy the built-in catalogues to this folder, to read, change and add with --catalogue: one that is not there yet, or an empty one. Nothing is overwritten.", HelpName = "FOLDER" };
        var command = new Command("vehicles", "List the vehicles and loadings there are, or show one with its source.") { name, write };
        common.AddTo(command);
        command.SetAction(parsed =>
        {
            if (parsed.GetValue(write) is { } folder)
            {
                return parsed.GetValue(name) is null
                    ? WriteOut(folder, surroundings)
                    : throw new RefusedException("--write copies whole catalogues: leave NAME out, and take the rows you want from the files.");
            }

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

    private static int WriteOut(string folder, Surroundings surroundings)
    {
        if (NewFolder.WhyNot(folder) is { } why)
        {
            throw new RefusedException($"--write \"{folder}\": {why}");
        }

        IReadOnlyList<NewFile> files = Catalogue.ShippedAsFiles();
        NewCommand.WriteFolder(folder, files);
        string told = $"{folder}: {files.Count} catalogues written: {string.Join(", ", files.Select(f => f.Name))}.\n"
            + "Their names are taken by the built-in ones: give what you change a name of its own, and add it with --catalogue.\n";
        surroundings.Print(System.Text.Encoding.UTF8.GetBytes(told));
        return ExitStatus.Done;
    }
}
