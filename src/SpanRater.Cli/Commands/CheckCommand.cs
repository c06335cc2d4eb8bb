using System.CommandLine;
using SpanRater.Files;

namespace SpanRater.Cli.Commands;

/// <summary><c>check BRIDGE</c>: reads all, and says whether it is a truss.</summary>
internal static class CheckCommand
{
    public static Command Make(Surroundings surroundings)
    {
        Argument<string> bridge = CommonOptions.Bridge();
        Option<string?> format = CommonOptions.Format(), units = CommonOptions.Units(), output = CommonOptions.Out(), picture = CommonOptions.Picture();
        Option<string[]> catalogue = CommonOptions.Catalogue();
        var command = new Command("check", "Read all, and say whether it is a truss: determinate or not, stable or not, what moves if not.")
        {
            bridge, format, units, output, catalogue, picture,
        };
        command.SetAction(parsed =>
        {
            BridgeReading reading = BridgeInput.Read(parsed.GetRequiredValue(bridge), parsed.GetValue(catalogue)!, warnings: null);
            DisplayUnits shown = BridgeInput.UnitsFor(parsed.GetValue(units), reading.Units);
            var answer = new Answer(surroundings, parsed.GetValue(format), parsed.GetValue(output));
            return answer.Deliver(CheckPage.Of(reading.Bridge!, reading.Findings, shown), shown);
        });
        return command;
    }
}
