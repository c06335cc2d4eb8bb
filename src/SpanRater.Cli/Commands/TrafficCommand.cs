using System.CommandLine;
using System.Diagnostics;
using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Cli.Commands;

/// <summary><c>traffic BRIDGE --records FILE</c>: recorded trucks rolled over the bridge, and what they brought.</summary>
internal static class TrafficCommand
{
    private const double MostYears = 1000;

    public static Command Make(Surroundings surroundings)
    {
        var command = new BridgeCommand(surroundings, "traffic", "Roll recorded trucks over the bridge, one by one: the largest effects and which truck brought them, how often, and what may come in years. " + Words.Caution, draws: false, showsEveryTruss: true);
        var records = new Option<string>("--records") { Description = "The file of recorded trucks: a CSV with the columns time, loads [kip], spacings [ft], one truck a row, lists separated by spaces.", HelpName = "FILE", Required = true };
        var years = new Option<string?>("--years") { Description = "Extrapolate to what is exceeded once in so many years. Unset: not extrapolated.", HelpName = "NUMBER" };
        Option<string?> member = command.MemberOption("Tell this member in full: crossings by level, and by stress range.");
        var all = new Option<bool>("--all") { Description = "Print every row, not those alone that are nearest to their capacity." };
        return command.With([records, years, member, all], pageTellsWarnings: false, (parsed, reading, units, answer) =>
        {
            string path = parsed.GetRequiredValue(records);
            answer.CheckFiles([path]);
            Bridge bridge = reading.Bridge!;
            double? period = parsed.GetValue(years) is { } text ? YearsOf(text) : null;
            int? index = parsed.GetValue(member) is { } name ? BridgeInput.FindMember(bridge.Truss, name) : null;
            RatingMethod method = bridge.Rating.Method ?? throw new RefusedException(RateCommand.WithoutMethod(reading));
            if (!TrafficPlan.Of(bridge, method).TryGet(out TrafficPlan? plan, out Refusal? refusal))
            {
                return answer.Deliver(InputWarnings.On(TrafficPage.Refused(bridge, refusal, units), reading.Findings), units);
            }

            TrafficReading counted = Read(path, plan, answer.Surroundings);
            return answer.Deliver(InputWarnings.On(TrafficPage.Of(counted, period, index, parsed.GetValue(all), units), reading.Findings), units);
        });
    }

    private static TrafficReading Read(string path, TrafficPlan plan, Surroundings surroundings)
    {
        var findings = new FindingList();
        var clock = Stopwatch.StartNew();
        long told = 0;
        void Tell(TrafficProgress progress)
        {
            // Twice a second, over itself.
            if (clock.ElapsedMilliseconds - told >= 500)
            {
                told = clock.ElapsedMilliseconds;
                string part = progress.AllBytes > 0 ? string.Create(CultureInfo.InvariantCulture, $" ({100.0 * progress.Bytes / progress.AllBytes:0} %)") : "";
                surroundings.Error.Write($"\r{Rate(progress.Rows)}{part} ");
            }
        }

        string Rate(long rows) => string.Create(CultureInfo.InvariantCulture, $"{rows:#,0} row{(rows == 1 ? "" : "s")} read, {rows / Math.Max(1e-3, clock.Elapsed.TotalSeconds):#,0} a second");
        TrafficReading? reading = TrafficFile.Read(path, path, plan, findings, progress: surroundings.ErrorIsTerminal ? Tell : null, stop: surroundings.Stop);
        if (reading is null)
        {
            throw new RefusedException(findings.All.Select(f => f.ToString()));
        }

        surroundings.Error.WriteLine($"{(told > 0 ? "\r" : "")}{Rate(reading.Rows)}.");
        return reading;
    }

    private static double YearsOf(string text) =>
        double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double years) && years >= 1 && years <= MostYears
            ? years
            : throw new RefusedException(string.Create(CultureInfo.InvariantCulture, $"--years {text}: must be a number from 1 to {MostYears:0}, such as 75."));
}
