using System.CommandLine;
using SpanRater.Files;
using SpanRater.Pictures;

namespace SpanRater.Cli.Commands;

/// <summary><c>check BRIDGE</c>: reads all, and says whether it is a truss.</summary>
internal static class CheckCommand
{
    public static Command Make(Surroundings surroundings) =>
        new BridgeCommand(surroundings, "check", "Read all, and say whether it is a truss: determinate or not, stable or not, what moves if not.", draws: true)
            .With([], pageTellsWarnings: true, (_, reading, units, answer) =>
                answer.Deliver(CheckPage.Of(reading.Bridge!, reading.Findings, units), units, () => ElevationPicture.Of(reading.Bridge!.Name, reading.Bridge.Truss, units)));
}
