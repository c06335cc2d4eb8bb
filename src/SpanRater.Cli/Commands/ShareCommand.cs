using System.CommandLine;
using SpanRater.Files;
using SpanRater.Pictures;

namespace SpanRater.Cli.Commands;

/// <summary><c>share BRIDGE</c>: what part of each vehicle one truss carries, worked by the lever rule, with a cross-section as proof.</summary>
internal static class ShareCommand
{
    public static Command Make(Surroundings surroundings)
    {
        var command = new BridgeCommand(surroundings, "share", "What part of each vehicle, lane load or crowd one truss carries, by the lever rule: where it stands, lanes, presence factors, and which counts.", draws: true);
        var vehicle = new Option<string?>("--vehicle") { Description = "One vehicle, loading or crowd, by its name in a catalogue. Unset: those that the bridge is rated for.", HelpName = "NAME" };
        vehicle.CompletionSources.Add(context => NamesToComplete.Vehicles(context.ParseResult.GetValue(command.Bridge)));
        return command.With([vehicle], pageTellsWarnings: false, (parsed, reading, units, answer) =>
        {
            Bridge bridge = reading.Bridge!;
            IReadOnlyList<LiveLoad> asked = parsed.GetValue(vehicle) is { } name ? [BridgeInput.Find(reading.Catalogue, name, "--vehicle")] : reading.VehiclesAsked;
            IReadOnlyList<VehicleShares> shares = VehicleShares.Of(bridge.Deck, asked, bridge.Rating.Method);
            IReadOnlyList<StripShares> strips = StripShares.Of(bridge.Deck, asked, bridge.Rating.Method);
            return answer.Deliver(
                SharePage.Of(bridge, bridge.Rating.Method, shares, strips, units),
                units,
                shares.Any(s => s.Outcome is ShareOutcome.Found) || strips.Any(s => s.IsFound) ? () => CrossSectionPicture.Of(bridge, bridge.Rating.Method, shares, strips, units) : null);
        });
    }
}
