using System.CommandLine;
using SpanRater.Files;

namespace SpanRater.Cli.Commands;

/// <summary><c>rate BRIDGE</c>: the rating factor of each member for each vehicle, the governing one first.</summary>
internal static class RateCommand
{
    public static Command Make(Surroundings surroundings)
    {
        Argument<string> bridge = CommonOptions.Bridge();
        var all = new Option<bool>("--all") { Description = "Print every row, not the lowest of each member and sense alone." };
        Option<string?> format = CommonOptions.Format(), units = CommonOptions.Units(), output = CommonOptions.Out(), picture = CommonOptions.Picture();
        Option<string[]> catalogue = CommonOptions.Catalogue();
        var command = new Command("rate", "Rating factors of each member for each vehicle, the governing one first. " + Words.Caution)
        {
            bridge, all, format, units, output, catalogue, picture,
        };
        command.SetAction(parsed =>
        {
            BridgeReading reading = BridgeInput.Read(parsed.GetRequiredValue(bridge), parsed.GetValue(catalogue)!, surroundings.Error);
            Bridge read = reading.Bridge!;
            RatingMethod method = MethodOf(reading);
            DisplayUnits shown = BridgeInput.UnitsFor(parsed.GetValue(units), reading.Units);
            Outcome<BridgeRating> outcome = MemberRater.Rate(read, method, VehiclesOf(reading));
            var answer = new Answer(surroundings, parsed.GetValue(format), parsed.GetValue(output));
            return outcome.TryGet(out BridgeRating? rating, out Refusal? refusal)
                ? answer.Deliver(RatingPage.Of(rating, shown, parsed.GetValue(all)), shown)
                : answer.Deliver(RatingPage.Refused(read, method, refusal), shown, parsed.GetValue(picture));
        });
        return command;
    }

    // A rating starts from its method and its dead load; neither has a default. Both are asked for in one go.
    private static RatingMethod MethodOf(BridgeReading reading)
    {
        var missing = new List<string>();
        if (reading.Bridge!.Rating.Method is null)
        {
            missing.Add($"{reading.MethodPlace}: the rating method is missing: write method = \"LRFR\", \"LFR\" or \"ASR\" under [rating].");
        }

        if (reading.Bridge.FindCase(Bridge.ComponentsCase) is null)
        {
            missing.Add($"{BridgeFolder.LoadsFile}: has no case {Bridge.ComponentsCase}, the dead load of the components on one truss: a bridge is not rated without it.");
        }

        return missing.Count > 0 ? throw new RefusedException(missing) : reading.Bridge.Rating.Method!;
    }

    private static LiveLoad[] VehiclesOf(BridgeReading reading) =>
        reading.Bridge!.Rating.Vehicles is { } names
            ? [.. names.Select(n => reading.Catalogue.Find(n)!)]
            : [.. reading.Catalogue.Entries.Select(e => e.Load).Where(l => l.Class is VehicleClass.Legal or VehicleClass.Emergency)];
}
