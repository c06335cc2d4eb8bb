using System.CommandLine;
using SpanRater.Files;
using SpanRater.Pictures;

namespace SpanRater.Cli.Commands;

/// <summary><c>rate BRIDGE</c>: the rating factor of each member for each vehicle, the governing one first.</summary>
internal static class RateCommand
{
    public static Command Make(Surroundings surroundings)
    {
        var command = new BridgeCommand(surroundings, "rate", "Rating factors of each member for each vehicle, the governing one first. " + Words.Caution, draws: true, showsEveryTruss: true);
        var all = new Option<bool>("--all") { Description = "Print every row, not the lowest of each member and sense alone." };
        var limit = new FailBelow(surroundings);
        return command.With([all, limit.Option], pageTellsWarnings: false, (parsed, reading, units, answer) =>
        {
            limit.In(parsed);
            Bridge bridge = reading.Bridge!;
            RatingMethod method = MethodOf(reading);
            return BridgeRater.Rate(bridge, method, reading.VehiclesAsked, surroundings.Stop).TryGet(out BridgeRating? rating, out Refusal? refusal)
                ? answer.Deliver(limit.On(parsed, InputWarnings.On(RatingPage.Of(rating, reading.OwnVehiclesNotAsked, units, parsed.GetValue(all)), reading.Findings), rating), units, () => RatingPicture.Of(rating, units))
                : answer.Deliver(InputWarnings.On(RatingPage.Refused(bridge, method, refusal), reading.Findings), units);
        });
    }

    /// <summary>The method of a bridge that can be rated; the bridge is refused where the method or the dead load is missing. Both are asked for in one go.</summary>
    public static RatingMethod MethodOf(BridgeReading reading) =>
        RatingNeeds.Missing(reading) is { Count: > 0 } missing ? throw new RefusedException(missing) : reading.Bridge!.Rating.Method!;

    /// <summary>That the method is missing, and where it belongs.</summary>
    public static string WithoutMethod(BridgeReading reading) => RatingNeeds.WithoutMethod(reading);

    /// <summary>Refuses a bridge without the dead load of its components.</summary>
    public static void AskForComponents(Bridge bridge)
    {
        if (RatingNeeds.WithoutComponents(bridge) is { } message)
        {
            throw new RefusedException(message);
        }
    }
}
