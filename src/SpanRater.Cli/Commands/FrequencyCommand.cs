using System.CommandLine;
using SpanRater.Files;

namespace SpanRater.Cli.Commands;

/// <summary><c>frequency BRIDGE</c>: the first vertical frequency under the dead load.</summary>
internal static class FrequencyCommand
{
    public static Command Make(Surroundings surroundings) =>
        new BridgeCommand(surroundings, "frequency", "First vertical frequency of a footbridge from the stiffness and the dead mass.", draws: false)
            .With([], pageTellsWarnings: false, (_, reading, units, answer) =>
            {
                Bridge bridge = reading.Bridge!;
                LoadCase dead = bridge.DeadLoad
                    ?? throw new RefusedException($"{BridgeFolder.LoadsFile}: has no case {Bridge.ComponentsCase}, the dead load of the components on one truss: it is the mass that swings.");
                return answer.Deliver(DeflectionPage.OfFrequency(bridge, VerticalFrequency.Of(bridge.Truss, dead), units), units);
            });
}
