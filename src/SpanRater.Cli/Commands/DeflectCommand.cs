using System.CommandLine;
using SpanRater.Files;

namespace SpanRater.Cli.Commands;

/// <summary><c>deflect BRIDGE [--case NAME]</c>: deflections of the panel points under a case, or their influence lines.</summary>
internal static class DeflectCommand
{
    public static Command Make(Surroundings surroundings)
    {
        var command = new BridgeCommand(surroundings, "deflect", "Deflections of the panel points under a case; without one, their influence lines.", draws: false);
        Option<string?> caseName = command.CaseOption("The load case: DC, DW or one of loads.csv. Unset: influence lines of deflection.");
        return command.With([caseName], pageTellsWarnings: false, (parsed, reading, units, answer) =>
        {
            Bridge bridge = reading.Bridge!;
            if (parsed.GetValue(caseName) is not { } name)
            {
                return answer.Deliver(DeflectionPage.OfLines(bridge, Deflections.Lines(bridge.Truss, bridge.DeadLoad), units), units);
            }

            LoadCase loads = BridgeInput.FindCase(bridge, name);
            return answer.Deliver(DeflectionPage.OfCase(bridge, loads, Deflections.Under(bridge.Truss, loads), units), units);
        });
    }
}
