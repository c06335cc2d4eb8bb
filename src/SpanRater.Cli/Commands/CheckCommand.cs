using System.CommandLine;
using SpanRater.Files;
using SpanRater.Pictures;

namespace SpanRater.Cli.Commands;

/// <summary><c>check BRIDGE</c>: reads all, and says whether it is a truss.</summary>
internal static class CheckCommand
{
    public static Command Make(Surroundings surroundings) =>
        new BridgeCommand(surroundings, "check", "Read all, and say whether it is a truss: determinate or not, stable or not, what moves if not.", draws: true, showsEveryTruss: true)
            .With([], pageTellsWarnings: true, (_, reading, units, answer) =>
                answer.Deliver(CheckPage.Of(reading.Bridge!, reading.Findings, units), units, () => Drawn(reading.Bridge!, units)));

    // Of a truss that does not stand, what moves; else the elevation with its names and dimensions.
    private static Picture Drawn(Bridge bridge, DisplayUnits units) =>
        Stability.Of(bridge.Truss) is { Movements: > 0 } stability
            ? SwayPicture.Of(bridge.Name, bridge.Truss, stability, units)
            : ElevationPicture.Of(bridge.Name, bridge.Truss, units);
}
