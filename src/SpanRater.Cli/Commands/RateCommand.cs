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
        return command.With([all], pageTellsWarnings: false, (parsed, reading, units, answer) =>
        {
            Bridge bridge = reading.Bridge!;
            RatingMethod method = MethodOf(reading);
            return BridgeRater.Rate(bridge, method, reading.VehiclesAsked, surroundings.Stop).TryGet(out BridgeRating? rating, out Refusal? refusal)
                ? answer.Deliver(InputWarnings.On(RatingPage.Of(rating, reading.OwnVehiclesNotAsked, units, parsed.GetValue(all)), reading.Findings), units, () => RatingPicture.Of(rating, units))
                : answer.Deliver(InputWarnings.On(RatingPage.Refused(bridge, method, refusal), reading.Findings), units);
        });
    }

    // A rating starts from its method and its dead load; neither has a default. Both are asked for in one go.
    public static RatingMethod MethodOf(BridgeReading reading)
    {
        var missing = new List<string>();
        if (reading.Bridge!.Rating.Method is null)
        {
            missing.Add(WithoutMethod(reading));
        }

        if (WithoutComponents(reading.Bridge) is { } withoutComponents)
        {
            missing.Add(withoutComponents);
        }

        return missing.Count > 0 ? throw new RefusedException(missing) : reading.Bridge.Rating.Method!;
    }

    /// <summary>That the method is missing, and where it belongs.</summary>
    public static string WithoutMethod(BridgeReading reading) =>
        $"{reading.MethodPlace}: the rating method is missing: write method = \"LRFR\", \"LFR\", \"ASR\" or \"partial factors\" under [rating].";

    /// <summary>Refuses a bridge without the dead load of its components.</summary>
    public static void AskForComponents(Bridge bridge)
    {
        if (WithoutComponents(bridge) is { } message)
        {
            throw new RefusedException(message);
        }
    }

    private static string? WithoutComponents(Bridge bridge) => bridge.FindCase(Bridge.ComponentsCase) is not null ? null
        : $"{BridgeFolder.LoadsFile}: has no case {Bridge.ComponentsCase}{(bridge.DeadAccount?.TakeOff is null ? "" : $", and the take-off no item of it")}, the dead load of the components on one truss: a bridge is not rated without it.";
}
