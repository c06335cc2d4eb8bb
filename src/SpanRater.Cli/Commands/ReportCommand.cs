using System.CommandLine;
using SpanRater.Files;
using SpanRater.Reports;

namespace SpanRater.Cli.Commands;

/// <summary><c>report BRIDGE --out FILE.html</c>: the report that goes to the field, in one file that fetches nothing.</summary>
internal static class ReportCommand
{
    public static Command Make(Surroundings surroundings)
    {
        var command = new BridgeCommand(surroundings, "report", "One HTML file to take along: decision, rating, posting, what governs opened, and the input. It needs no network. " + Words.Caution, draws: false, showsEveryTruss: true, writes: Writes.Report);
        var date = new PrintedDate();
        return command.With([date.Option], pageTellsWarnings: false, (parsed, reading, units, answer) =>
        {
            string? day = date.In(parsed);
            if (!BridgeRater.Rate(reading.Bridge!, RateCommand.MethodOf(reading), reading.VehiclesAsked, surroundings.Stop).TryGet(out BridgeRating? rating, out Refusal? refusal))
            {
                throw new RefusedException($"Nothing is rated, and no report is written. {RefusalWording.Sentence(refusal, reading.Bridge!.Truss)}");
            }

            var report = FieldReport.Of(rating, reading, InputFile.In(parsed.GetRequiredValue(command.Bridge), command.CataloguesIn(parsed)), units, day, ProgramVersion.Text);
            return answer.Deliver(ReportFile.Html(report), string.Join("\n", report.Decision), report.IsAnswer, report.UndercutsLimit);
        });
    }
}
