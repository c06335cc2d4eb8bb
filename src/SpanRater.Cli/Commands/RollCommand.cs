using System.CommandLine;
using System.Globalization;
using SpanRater.Files;
using SpanRater.Pictures;
using SpanRater.Reports;

namespace SpanRater.Cli.Commands;

/// <summary><c>roll BRIDGE --vehicle NAME</c>: peak tension and compression of each member, and where the vehicle stood.</summary>
internal static class RollCommand
{
    private const double MostScale = 100;

    public static Command Make(Surroundings surroundings)
    {
        var command = new BridgeCommand(surroundings, "roll", "Roll a vehicle over in both directions: peak tension and compression of each member, and where it stood.", draws: true);
        var vehicle = new Option<string>("--vehicle") { Description = "The vehicle, loading or crowd, by its name in a catalogue.", HelpName = "NAME", Required = true };
        vehicle.CompletionSources.Add(context => NamesToComplete.Vehicles(context.ParseResult.GetValue(command.Bridge)));
        Option<string?> member = command.MemberOption("Show each axle where this member has its peaks.");
        var scale = new Option<string?>("--scale") { Description = "Roll this part of the vehicle, such as the share of one truss. Unset: the whole vehicle.", HelpName = "NUMBER" };
        Option<string?> explain = command.ExplainOption("Tell where the vehicle brings most into this member, what it beat, and why there.");
        return command.With([vehicle, member, scale, explain], pageTellsWarnings: false, (parsed, reading, units, answer) =>
        {
            Bridge bridge = reading.Bridge!;
            LiveLoad load = BridgeInput.Find(reading.Catalogue, parsed.GetRequiredValue(vehicle), "--vehicle");
            int? index = parsed.GetValue(member) is { } name ? BridgeInput.FindMember(bridge.Truss, name) : null;
            int? explained = BridgeInput.FindExplained(bridge.Truss, parsed.GetValue(explain), parsed.GetValue(member));
            double part = ScaleOf(parsed.GetValue(scale));
            if (TrainOf(load) is not { } rolled)
            {
                RefuseWhatAsksForATrain(load.Name, (scale.Name, parsed.GetValue(scale)), (explain.Name, parsed.GetValue(explain)), ("--picture", answer.PictureFile));
                return answer.Deliver(PageOf(bridge, load, index, units), units);
            }

            IReadOnlyList<PeakPair>? peaks = null;
            _ = TrussCrossing.Of(bridge).TryGet(out TrussCrossing? crossing, out Refusal? refusal) && crossing.Roll(rolled, part).TryGet(out peaks, out refusal);
            var result = new RollingResult(rolled, part, crossing, peaks, refusal);
            return answer.Deliver(
                explained is not { } told ? RollPage.Of(bridge, result, index, units)
                : bridge.Truss.Members.Any(m => m.TensionOnly) ? RodPlacementExplanation.Of(bridge, result, told, units)
                : PlacementExplanation.Of(bridge, rolled, part, InfluenceLines.Of(bridge.Truss), told, units),
                units,
                peaks is null ? null : () => RollPicture.Of(bridge.Title, result, parsed.GetValue(member) ?? parsed.GetValue(explain), units));
        });
    }

    // Read without a culture: 0.5 is a half wherever the program runs.
    private static double ScaleOf(string? text)
    {
        double part = 1;
        return (text is null || double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out part)) && part > 0 && part <= MostScale
            ? part
            : throw new RefusedException($"--scale {text}: must be a number above 0 and at most {MostScale:0}, such as 0.65 for the share of one truss.");
    }

    // A loading of one train is that train; a design truck is rolled alone, and its page says what is left out.
    private static Vehicle? TrainOf(LiveLoad load) => load as Vehicle ?? (load is Loading { Lane: null, Trains: [var only] } ? only with { Name = load.Name } : null);

    private static void RefuseWhatAsksForATrain(string load, params (string Option, string? Value)[] options)
    {
        string[] asked = [.. options.Where(o => o.Value is not null).Select(o => $"{o.Option} is for a single vehicle on axles, and \"{load}\" is a lane load, a crowd, tracks, or several vehicles of which the worst counts: leave it out. How a factor comes about is told by: spanrater explain.")];
        if (asked.Length > 0)
        {
            throw new RefusedException(asked);
        }
    }

    private static ResultPage PageOf(Bridge bridge, LiveLoad load, int? member, DisplayUnits units) =>
        bridge.Truss.Members.Any(m => m.TensionOnly) ? LoadPage.Refused(bridge, load, null, units)
        : InfluenceLines.Of(bridge.Truss).TryGet(out InfluenceLines? lines, out Refusal? refusal) ? LoadPage.Of(bridge, load, lines, member, units)
        : LoadPage.Refused(bridge, load, refusal, units);
}
