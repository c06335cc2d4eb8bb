using System.CommandLine;
using SpanRater.Files;
using SpanRater.Pictures;
using SpanRater.Reports;

namespace SpanRater.Cli.Commands;

/// <summary><c>explain BRIDGE --member NAME | --part NAME --vehicle NAME</c>: opens the rating factors of one member or part under one vehicle.</summary>
internal static class ExplainCommand
{
    public static Command Make(Surroundings surroundings)
    {
        var command = new BridgeCommand(surroundings, "explain", "Open the rating factors of one member or part under one vehicle down to what was given. " + Words.Caution, draws: true, showsEveryTruss: true, drawn: "Draw the packing of the pin that --part names: PNG or SVG by the file's ending.");
        Option<string?> member = command.MemberOption("The truss member. This, or --part.");
        var part = new Option<string?>("--part") { Description = "The part of the floor, or the connection, by its name in floor.csv or connections.csv.", HelpName = "NAME" };
        part.CompletionSources.Add(context => NamesToComplete.Parts(context.ParseResult.GetValue(command.Bridge)));
        var vehicle = new Option<string?>("--vehicle") { Description = "The vehicle, by its name in a catalogue.", HelpName = "NAME" };
        vehicle.CompletionSources.Add(context => NamesToComplete.Vehicles(context.ParseResult.GetValue(command.Bridge)));
        var sense = new Option<string?>("--sense") { Description = "Only tension or only compression. Unset: both.", HelpName = "tension|compression" };
        sense.AcceptOnlyFromAmong("tension", "compression");
        return command.With([member, part, vehicle, sense], pageTellsWarnings: false, (parsed, reading, units, answer) =>
        {
            Bridge bridge = reading.Bridge!;
            RatingMethod method = RateCommand.MethodOf(reading);
            (int? index, string? name) = Asked(bridge, parsed.GetValue(member), parsed.GetValue(part), parsed.GetValue(vehicle), reading);
            PinConnection? pin = bridge.Connections.OfType<PinConnection>().FirstOrDefault(c => c.Name == name);
            if (answer.PictureFile is not null && pin is null)
            {
                throw new RefusedException("--picture: explain draws the packing of a pin, and nothing else: name a pin with --part, or leave --picture out.");
            }

            LiveLoad load = BridgeInput.Find(reading.Catalogue, parsed.GetValue(vehicle)!, "--vehicle");
            Sense? only = parsed.GetValue(sense) switch
            {
                "tension" => Sense.Tension,
                "compression" => Sense.Compression,
                _ => null,
            };
            return answer.Deliver(
                BridgeRater.Rate(bridge, method, [load, .. NeighboursOf(load, reading)], surroundings.Stop).TryGet(out BridgeRating? rating, out Refusal? refusal)
                    ? index is { } at ? RatingExplanation.Of(rating, at, load, only, units) : PartExplanation.Of(rating, name!, load, units)
                    : RatingPage.Refused(bridge, method, refusal),
                units,
                pin is not null && rating is not null ? () => PinPicture.Of(bridge, pin, PartExplanation.WorstOn(pin, rating), units) : null);
        });
    }

    private static (int? Member, string? Part) Asked(Bridge bridge, string? member, string? part, string? vehicle, BridgeReading reading)
    {
        var lacking = new List<string>();
        if (member is null == part is null)
        {
            lacking.Add(member is null
                ? "name what is to be explained: --member NAME for a truss member, --part NAME for a part of the floor or a connection."
                : "--member and --part are both given: name one of the two.");
        }

        if (vehicle is null)
        {
            lacking.Add($"name the vehicle: --vehicle NAME. The bridge asks for: {string.Join(", ", reading.VehiclesAsked.Select(v => v.Name))}.");
        }

        if (lacking.Count > 0)
        {
            throw new RefusedException([.. lacking]);
        }

        if (part is not null)
        {
            return (null, BridgeInput.FindPart(bridge, part));
        }

        return (BridgeInput.FindMemberNotPart(bridge, member!, $"write --part \"{member}\""), null);
    }

    // An emergency vehicle may have any of the legal vehicles asked for in the next lane.
    private static IEnumerable<LiveLoad> NeighboursOf(LiveLoad load, BridgeReading reading) =>
        load.Class == VehicleClass.Emergency ? reading.VehiclesAsked.Where(v => v.Class == VehicleClass.Legal && v != load) : [];
}
