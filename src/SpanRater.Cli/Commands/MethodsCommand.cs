using System.CommandLine;
using SpanRater.Files;

namespace SpanRater.Cli.Commands;

/// <summary><c>methods BRIDGE</c>: the lowest factor of each vehicle by every rating method, side by side.</summary>
internal static class MethodsCommand
{
    public static Command Make(Surroundings surroundings)
    {
        var command = new BridgeCommand(surroundings, "methods", "Rating methods side by side: the lowest factor of each vehicle by LRFR, LFR and ASR. " + Words.Caution, draws: false, showsEveryTruss: true);
        return command.With([], pageTellsWarnings: false, (_, reading, units, answer) =>
        {
            Bridge bridge = reading.Bridge!;
            RateCommand.AskForComponents(bridge);
            return MethodComparison.Of(bridge, reading.VehiclesAsked, surroundings.Stop).TryGet(out MethodComparison? comparison, out Refusal? refusal)
                ? answer.Deliver(MethodsPage.Of(comparison, units), units)
                : answer.Deliver(MethodsPage.Refused(bridge, refusal), units);
        });
    }
}
