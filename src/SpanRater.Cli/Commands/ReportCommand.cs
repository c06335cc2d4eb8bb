using System.CommandLine;
using System.Globalization;
using System.Reflection;
using SpanRater.Files;
using SpanRater.Reports;

namespace SpanRater.Cli.Commands;

/// <summary><c>report BRIDGE --out FILE.html</c>: the report that goes to the field, in one file that fetches nothing.</summary>
internal static class ReportCommand
{
    public static Command Make(Surroundings surroundings)
    {
        var command = new BridgeCommand(surroundings, "report", "One HTML file to take along: decision, rating, posting, what governs opened, and the input. It needs no network. " + Words.Caution, draws: false, showsEveryTruss: true, writesReport: true);
        var date = new Option<string?>("--date") { Description = "Date to print on it, as 2026-11-26. Unset: none, so that the same input gives the same file.", HelpName = "DATE" };
        return command.With([date], pageTellsWarnings: false, (parsed, reading, units, answer) =>
        {
            string? day = parsed.GetValue(date);
            if (day is not null && !DateOnly.TryParseExact(day, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out _))
            {
                throw new RefusedException($"--date \"{day}\": write year, month and day, as 2026-11-26.");
            }

            if (!BridgeRater.Rate(reading.Bridge!, RateCommand.MethodOf(reading), reading.VehiclesAsked).TryGet(out BridgeRating? rating, out Refusal? refusal))
            {
                throw new RefusedException($"Nothing is rated, and no report is written. {RefusalWording.Sentence(refusal, reading.Bridge!.Truss)}");
            }

            string version = typeof(CommandLineProgram).Assembly.GetCustomAttribute<AssemblyInformationalVersionAttribute>()!.InformationalVersion;
            var report = FieldReport.Of(rating, reading, InputFile.In(parsed.GetRequiredValue(command.Bridge), command.CataloguesIn(parsed)), units, day, version);
            return answer.Deliver(ReportFile.Html(report), string.Join("\n", report.Decision), report.IsAnswer, report.UndercutsLimit);
        });
    }
}
