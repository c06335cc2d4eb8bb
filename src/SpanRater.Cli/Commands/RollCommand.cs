using System.CommandLine;
using SpanRater.Files;

namespace SpanRater.Cli.Commands;

/// <summary><c>roll BRIDGE --vehicle NAME</c>: peak tension and compression of each member, and where the vehicle stood.</summary>
internal static class RollCommand
{
    public static Command Make(Surroundings surroundings)
    {
        Argument<string> bridge = CommonOptions.Bridge();
        var vehicle = new Option<string>("--vehicle") { Description = "The vehicle, by its name in a catalogue.", HelpName = "NAME", Required = true };
        vehicle.CompletionSources.Add(context => NamesToComplete.Vehicles(context.ParseResult.GetValue(bridge)));
        Option<string?> member = CommonOptions.Member(bridge, "Show each axle where this member has its peaks.");
        Option<string?> format = CommonOptions.Format(), units = CommonOptions.Units(), output = CommonOptions.Out(), picture = CommonOptions.Picture();
        Option<string[]> catalogue = CommonOptions.Catalogue();
        var command = new Command("roll", "Roll a vehicle over in both directions: peak tension and compression of each member, and where it stood.")
        {
            bridge, vehicle, member, format, units, output, catalogue, picture,
        };
        command.SetAction(parsed =>
        {
            BridgeReading reading = BridgeInput.Read(parsed.GetRequiredValue(bridge), parsed.GetValue(catalogue)!, surroundings.Error);
            Bridge read = reading.Bridge!;
            if (reading.Catalogue.Find(parsed.GetRequiredValue(vehicle), "--vehicle") is not Vehicle rolled)
            {
                var loading = (Loading)reading.Catalogue.Find(parsed.GetRequiredValue(vehicle), "--vehicle");
                throw new RefusedException($"--vehicle \"{loading.Name}\" is a loading, more than one train: roll one of its vehicles, {string.Join(" or ", loading.Vehicles.Select(v => $"\"{v}\""))}.");
            }

            int? index = parsed.GetValue(member) is { } name ? read.Truss.FindMemberOr(name) : null;
            DisplayUnits shown = BridgeInput.UnitsFor(parsed.GetValue(units), reading.Units);
            PeakPair[]? peaks = null;
            if (DeterminateTruss.Of(read.Truss).TryGet(out DeterminateTruss? system, out Refusal? refusal)
                && InfluenceLines.Of(system).TryGet(out InfluenceLines? lines, out refusal))
            {
                var plan = new RollingPlan(read.Truss.Stations, rolled.Train);
                peaks = [.. lines.Members.Select(m => plan.PeaksOf(m.Line))];
            }

            var answer = new Answer(surroundings, parsed.GetValue(format), parsed.GetValue(output));
            return answer.Deliver(RollPage.Of(read, rolled, peaks, refusal, index, shown), shown);
        });
        return command;
    }
}
