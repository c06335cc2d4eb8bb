using System.CommandLine;
using SpanRater.Files;
using SpanRater.Reports;

namespace SpanRater.Cli.Commands;

/// <summary><c>pack BRIDGE --out FOLDER</c>: the calculation pack for the checker, a draft letter to the owner and a generic drawing of the sign.</summary>
internal static class PackCommand
{
    public static Command Make(Surroundings surroundings)
    {
        var command = new BridgeCommand(surroundings, "pack", "A folder for checker and board: the calculation pack, a draft letter to the owner, and a generic drawing of the sign. " + Words.Caution, draws: false, showsEveryTruss: true, writes: Writes.Folder);
        var date = new PrintedDate();
        return command.With([date.Option], pageTellsWarnings: false, (parsed, reading, units, answer) =>
        {
            string? day = date.In(parsed);
            if (!BridgeRater.Rate(reading.Bridge!, RateCommand.MethodOf(reading), reading.VehiclesAsked, surroundings.Stop).TryGet(out BridgeRating? rating, out Refusal? refusal))
            {
                throw new RefusedException($"Nothing is rated, and no pack is written. {RefusalWording.Sentence(refusal, reading.Bridge!.Truss)}");
            }

            var reviewed = ReviewedBridge.Of(rating, reading, InputFile.In(parsed.GetRequiredValue(command.Bridge), command.CataloguesIn(parsed)), units, day, ProgramVersion.Text);
            var pack = CalculationPack.Of(reviewed);
            return answer.Deliver(PackFolder.Files(reviewed, pack), string.Join("\n", pack.Decision), pack.IsAnswer, pack.UndercutsLimit);
        });
    }
}
