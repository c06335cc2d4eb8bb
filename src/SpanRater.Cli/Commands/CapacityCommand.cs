using System.CommandLine;
using SpanRater.Files;

namespace SpanRater.Cli.Commands;

/// <summary><c>capacity BRIDGE</c>: what each member carries, as built and as found, and what is missing.</summary>
internal static class CapacityCommand
{
    public static Command Make(Surroundings surroundings)
    {
        var command = new BridgeCommand(surroundings, "capacity", "What each member carries, as built and as found, by the rating method; and what is missing. " + Words.Caution, draws: false, showsEveryTruss: true);
        Option<string?> member = command.MemberOption("Show one member alone.");
        return command.With([member], pageTellsWarnings: false, (parsed, reading, units, answer) =>
        {
            Bridge bridge = reading.Bridge!;
            RatingMethod method = bridge.Rating.Method ?? throw new RefusedException(RateCommand.WithoutMethod(reading));
            int? only = parsed.GetValue(member) is { } name ? BridgeInput.FindMember(bridge.Truss, name) : null;
            return answer.Deliver(InputWarnings.On(CapacityPage.Of(MemberCapacities.Of(bridge, method), only, units), reading.Findings), units);
        });
    }
}
