using System.CommandLine;
using SpanRater.Files;

namespace SpanRater.Cli.Commands;

/// <summary><c>measure BRIDGE</c>: which reading to take again first, what doubts leave of the factors, and what must remain.</summary>
internal static class MeasureCommand
{
    public static Command Make(Surroundings surroundings)
    {
        var command = new BridgeCommand(surroundings, "measure", "What to measure next: the reading whose doubt costs most, factors with their doubts, and what must remain for a factor of 1. " + Words.Caution, draws: false, showsEveryTruss: true);
        Option<string?> member = command.MemberOption("Show one member alone, with every dimension of it.");
        var vehicle = new Option<string?>("--vehicle") { Description = "Look at one vehicle alone, asked for in bridge.toml or not. Unset: the lowest of all that are.", HelpName = "NAME" };
        vehicle.CompletionSources.Add(context => NamesToComplete.Vehicles(context.ParseResult.GetValue(command.Bridge)));
        return command.With([member, vehicle], pageTellsWarnings: false, (parsed, reading, units, answer) =>
        {
            Bridge bridge = reading.Bridge!;
            RatingMethod method = RateCommand.MethodOf(reading);
            int? only = parsed.GetValue(member) is { } name ? BridgeInput.FindMemberNotPart(bridge, name, $"measure looks at truss members only, and explain --part \"{name}\" opens it") : null;
            IReadOnlyList<LiveLoad> vehicles = parsed.GetValue(vehicle) is { } one ? [BridgeInput.Find(reading.Catalogue, one, "--vehicle")] : reading.VehiclesAsked;
            return BridgeRater.Rate(bridge, method, vehicles, surroundings.Stop).TryGet(out BridgeRating? rating, out Refusal? refusal)
                ? answer.Deliver(InputWarnings.On(MeasurePage.Of(MeasureFirst.Of(rating), only, units), reading.Findings), units)
                : answer.Deliver(InputWarnings.On(RatingPage.Refused(bridge, method, refusal), reading.Findings), units);
        });
    }
}
