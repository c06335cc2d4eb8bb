using System.CommandLine;
using SpanRater.Files;

namespace SpanRater.Cli.Commands;

/// <summary><c>dead BRIDGE</c>: the take-off of the dead load, item by item, and what reaches each joint.</summary>
internal static class DeadCommand
{
    public static Command Make(Surroundings surroundings) =>
        new BridgeCommand(surroundings, "dead", "Dead load take-off: every item, its share of each truss, and the loads at the joints.", draws: false, showsEveryTruss: true)
            .With([], pageTellsWarnings: false, (_, reading, units, answer) => answer.Deliver(DeadLoadPage.Of(reading.Bridge!, units), units));
}
