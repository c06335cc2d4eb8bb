using System.CommandLine;
using System.Globalization;
using SpanRater.Files;
using SpanRater.Reports;

namespace SpanRater.Cli.Commands;

/// <summary><c>survey FOLDER</c>: every bridge below a folder, what needs doing first.</summary>
internal static class SurveyCommand
{
    public static Command Make(Surroundings surroundings)
    {
        var folder = new Argument<string>("FOLDER") { Description = "The folder below which the bridge folders are. Links in it are not followed.", HelpName = "FOLDER" };
        var vehicle = new Option<string[]>("--vehicle") { Description = "Rate every bridge for this vehicle; may be given several times. Unset: for those that each bridge asks for, as rate does.", HelpName = "NAME", DefaultValueFactory = _ => [] };
        var crosses = new Option<string?>("--crosses") { Description = "Tell which bridges this vehicle may cross: yes, no or not known, with the factor and the part that decides.", HelpName = "NAME" };
        var matrix = new Option<bool>("--matrix") { Description = "Show the lowest factor of each bridge under each vehicle." };
        var since = new Option<string?>("--since") { Description = "Tell what changed since an earlier survey, by the JSON that it wrote.", HelpName = "OLD.json" };
        var workers = new Option<string?>("--workers") { Description = "How many bridges are worked at a time. Unset: one for each core. The answer is the same.", HelpName = "N" };
        var limit = new FailBelow(surroundings);
        var common = new CommonOptions(writes: Writes.Survey);
        vehicle.CompletionSources.Add(_ => NamesToComplete.Vehicles(null).Select(n => new System.CommandLine.Completions.CompletionItem(n)));
        crosses.CompletionSources.Add(_ => NamesToComplete.Vehicles(null).Select(n => new System.CommandLine.Completions.CompletionItem(n)));
        var command = new Command("survey", "Rate every bridge below a folder, and tell what needs doing first. " + Words.Caution) { folder, vehicle, crosses, matrix, since, limit.Option, workers };
        common.AddTo(command);
        command.SetAction(parsed =>
        {
            string place = parsed.GetRequiredValue(folder);
            double? below = limit.In(parsed);
            int atATime = WorkersIn(parsed.GetValue(workers));
            SurveyAsked asked = AskedIn(parsed.GetValue(vehicle)!, parsed.GetValue(crosses), common.CataloguesIn(parsed), surroundings);
            string? earlierFile = parsed.GetValue(since), wrong = null;
            EarlierSurvey? earlier = earlierFile is null ? null : EarlierSurvey.Read(earlierFile, out wrong);
            if (wrong is not null)
            {
                throw new RefusedException($"--since {wrong}");
            }

            Answer answer = common.AnswerTo(parsed, surroundings);
            string? outFolder = answer.Format is null && answer.OutFile is { } named && Path.GetExtension(Path.TrimEndingDirectorySeparator(named)).Length == 0 ? named : null;
            if (asked.Crosses is not null && parsed.GetValue(matrix) && outFolder is null && answer.Form is not ("json" or "html"))
            {
                throw new RefusedException("--crosses and --matrix: each asks for a table of its own: say one of them, or ask for JSON, HTML or a folder (--out with a name that has no ending), which hold both.");
            }

            if (outFolder is null)
            {
                answer.CheckFiles([.. common.CataloguesIn(parsed), .. earlierFile is null ? Array.Empty<string>() : [earlierFile]]);
            }
            else if (SurveyStore.WhyNot(outFolder) is { } why)
            {
                throw new RefusedException($"--out \"{outFolder}\": {why}");
            }

            BridgeFolders folders = FoldersIn(place, surroundings);
            using SurveyStore? store = outFolder is null ? null : SurveyInFolder.Open(outFolder, asked);
            var run = new SurveyRun(asked, store, surroundings);
            SurveyedBridge[] bridges = store is null ? run.Rate(folders, atATime) : SurveyInFolder.Written(outFolder!, () => run.Rate(folders, atATime), () => run.Kept);
            var survey = new Survey(ProgramVersion.Text, asked, bridges, folders.NotSearched);
            SurveyChanges? changes = earlier is null ? null : SurveyChanges.Of(earlier, survey);
            ResultPage page = SurveyPage.Of(survey, changes, asked.Crosses is not null ? SurveyTable.Crossings : parsed.GetValue(matrix) ? SurveyTable.Matrix : SurveyTable.Bridges);
            DisplayUnits units = common.UnitsIn(parsed, DisplayUnits.Us);
            int status;
            if (store is not null)
            {
                SurveyInFolder.Written(outFolder!, () => SurveyInFolder.Write(store, survey, changes, units), () => run.Kept);
                status = (answer with { OutFile = null }).Deliver(page, units);
            }
            else
            {
                status = answer.Deliver(page, units, html: () => SurveyFile.Html(survey, changes, units));
            }

            return bridges.Any(b => b.IsFault) ? ExitStatus.ProgramFault : new SurveyLimit(surroundings.Error, below, place).Status(survey, status);
        });
        return command;
    }

    private static int WorkersIn(string? text) =>
        text is null ? Environment.ProcessorCount
        : int.TryParse(text, NumberStyles.None, CultureInfo.InvariantCulture, out int number) && number is >= 1 and <= 256 ? number
        : throw new RefusedException($"--workers \"{text}\": write a whole number from 1 to 256.");

    // A vehicle of one bridge's own folder is not there for the others.
    private static SurveyAsked AskedIn(string[] vehicles, string? crosses, IReadOnlyList<string> catalogues, Surroundings surroundings)
    {
        Catalogue catalogue = BridgeInput.ReadCatalogue(catalogues, surroundings.Error);
        string[] names = [.. vehicles.Select(v => BridgeInput.Find(catalogue, v, "--vehicle").Name).Distinct()];
        LiveLoad? crossing = crosses is null ? null : BridgeInput.Find(catalogue, crosses, "--crosses");
        return crossing is { Class: VehicleClass.Design or VehicleClass.Screening }
            ? throw new RefusedException($"--crosses \"{crosses}\": a load for design or screening stands for others and is never itself on the road: name a vehicle that drives, or ask for its factors with --vehicle.")
            : new SurveyAsked(names.Length == 0 ? null : names, crossing?.Name, catalogues);
    }

    private static BridgeFolders FoldersIn(string place, Surroundings surroundings)
    {
        if (!Directory.Exists(place))
        {
            throw new RefusedException(File.Exists(place) ? $"{place}: is a file: name the folder below which the bridge folders are." : $"{place}: is not there: name the folder below which the bridge folders are.");
        }

        var folders = BridgeFolders.Below(place, surroundings.Stop);
        return folders.Found.Count > 0
            ? folders
            : throw new RefusedException([$"{place}: no bridge is in it or below it: a bridge is a folder that holds {BridgeFolder.BridgeFile}.", .. folders.NotSearched.Select(n => $"{n.Shown}: {n.Why}")]);
    }
}
