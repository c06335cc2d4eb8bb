using System.CommandLine;
using SpanRater.Files;
using SpanRater.Pictures;

namespace SpanRater.Cli.Commands;

/// <summary><c>roll BRIDGE --vehicle NAME</c>: peak tension and compression of each member, and where the vehicle stood.</summary>
internal static class RollCommand
{
    public static Command Make(Surroundings surroundings)
    {
        var command = new BridgeCommand(surroundings, "roll", "Roll a vehicle over in both directions: peak tension and compression of each member, and where it stood.", draws: true);
        var vehicle = new Option<string>("--vehicle") { Description = "The vehicle, by its name in a catalogue.", HelpName = "NAME", Required = true };
        vehicle.CompletionSources.Add(context => NamesToComplete.Vehicles(context.ParseResult.GetValue(command.Bridge)));
        Option<string?> member = command.MemberOption("Show each axle where this member has its peaks.");
        return command.With([vehicle, member], pageTellsWarnings: false, (parsed, reading, units, answer) =>
        {
            Bridge bridge = reading.Bridge!;
            Vehicle rolled = VehicleOf(BridgeInput.Find(reading.Catalogue, parsed.GetRequiredValue(vehicle), "--vehicle"));
            int? index = parsed.GetValue(member) is { } name ? BridgeInput.FindMember(bridge.Truss, name) : null;
            PeakPair[]? peaks = null;
            if (InfluenceLines.Of(bridge.Truss).TryGet(out InfluenceLines? lines, out Refusal? refusal))
            {
                var plan = new RollingPlan(bridge.Truss.Stations, rolled.Train);
                peaks = [.. lines.Members.Select(m => plan.PeaksOf(m.Line))];
            }

            return answer.Deliver(
                RollPage.Of(bridge, rolled, peaks, refusal, index, units),
                units,
                peaks is null ? null : () => RollPicture.Of(bridge.Name, lines!, rolled, peaks, parsed.GetValue(member), units));
        });
    }

    private static Vehicle VehicleOf(LiveLoad load) => load switch
    {
        Vehicle vehicle => vehicle,
        Loading loading => throw new RefusedException($"--vehicle \"{loading.Name}\" is a loading, more than one train: roll one of its vehicles, {string.Join(" or ", loading.Vehicles.Select(v => $"\"{v}\""))}."),
        _ => throw new ArgumentOutOfRangeException(nameof(load), load, "A live load is a vehicle or a loading."),
    };
}
