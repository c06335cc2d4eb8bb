using System.CommandLine;
using SpanRater.Files;

namespace SpanRater.Cli.Commands;

/// <summary><c>limits BRIDGE</c>: the largest crowd, single axle and scaled vehicle that still pass.</summary>
internal static class LimitsCommand
{
    public static Command Make(Surroundings surroundings)
    {
        var command = new BridgeCommand(surroundings, "limits", "The largest crowd, single axle and scaled vehicle that still pass. " + Words.Caution, draws: false, showsEveryTruss: true);
        return command.With([], pageTellsWarnings: false, (_, reading, units, answer) =>
        {
            Bridge bridge = reading.Bridge!;
            RatingMethod method = RateCommand.MethodOf(reading);
            return LargestLoads.Of(bridge, method, reading.VehiclesAsked, surroundings.Stop).TryGet(out LargestLoads? limits, out Refusal? refusal)
                ? answer.Deliver(InputWarnings.On(LimitsPage.Of(limits, units), reading.Findings), units)
                : answer.Deliver(InputWarnings.On(RatingPage.Refused(bridge, method, refusal), reading.Findings), units);
        });
    }
}
