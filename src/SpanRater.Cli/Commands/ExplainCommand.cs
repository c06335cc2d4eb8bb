using System.CommandLine;
using SpanRater.Files;
using SpanRater.Reports;

namespace SpanRater.Cli.Commands;

/// <summary><c>explain BRIDGE --member NAME --vehicle NAME</c>: opens the rating factors of one member under one vehicle.</summary>
internal static class ExplainCommand
{
    public static Command Make(Surroundings surroundings)
    {
        var command = new BridgeCommand(surroundings, "explain", "Open the rating factors of one member under one vehicle down to what was given. " + Words.Caution, draws: false, showsEveryTruss: true);
        Option<string?> member = command.MemberOption("The member.");
        member.Required = true;
        var vehicle = new Option<string>("--vehicle") { Description = "The vehicle, by its name in a catalogue.", HelpName = "NAME", Required = true };
        vehicle.CompletionSources.Add(context => NamesToComplete.Vehicles(context.ParseResult.GetValue(command.Bridge)));
        var sense = new Option<string?>("--sense") { Description = "Only tension or only compression. Unset: both.", HelpName = "tension|compression" };
        sense.AcceptOnlyFromAmong("tension", "compression");
        return command.With([member, vehicle, sense], pageTellsWarnings: false, (parsed, reading, units, answer) =>
        {
            Bridge bridge = reading.Bridge!;
            RatingMethod method = RateCommand.MethodOf(reading);
            int index = BridgeInput.FindMember(bridge.Truss, parsed.GetRequiredValue(member)!);
            LiveLoad load = BridgeInput.Find(reading.Catalogue, parsed.GetRequiredValue(vehicle), "--vehicle");
            Sense? only = parsed.GetValue(sense) switch
            {
                "tension" => Sense.Tension,
                "compression" => Sense.Compression,
                _ => null,
            };
            return answer.Deliver(
                BridgeRater.Rate(bridge, method, [load, .. NeighboursOf(load, reading)]).TryGet(out BridgeRating? rating, out Refusal? refusal)
                    ? RatingExplanation.Of(rating, index, load, only, units)
                    : RatingPage.Refused(bridge, method, refusal),
                units);
        });
    }

    // An emergency vehicle may have any of the legal vehicles asked for in the next lane.
    private static IEnumerable<LiveLoad> NeighboursOf(LiveLoad load, BridgeReading reading) =>
        load.Class == VehicleClass.Emergency ? reading.VehiclesAsked.Where(v => v.Class == VehicleClass.Legal && v != load) : [];
}
