using System.CommandLine;
using SpanRater.Files;

namespace SpanRater.Cli.Commands;

/// <summary><c>post BRIDGE</c>: the safe load of each legal type and emergency vehicle, and what would be posted.</summary>
internal static class PostCommand
{
    public static Command Make(Surroundings surroundings)
    {
        var command = new BridgeCommand(surroundings, "post", "Posting review: the safe load of each legal type and emergency vehicle, in whole US tons. " + Words.Caution, draws: false, showsEveryTruss: true);
        var level = new Option<string?>("--level") { Description = "The rating of legal types that counts, LFR and ASR. Unset: operating.", HelpName = "inventory|operating" };
        level.AcceptOnlyFromAmong("inventory", "operating");
        var limit = new FailBelow(surroundings);
        return command.With([level, limit.Option], pageTellsWarnings: false, (parsed, reading, units, answer) =>
        {
            limit.In(parsed);
            Bridge bridge = reading.Bridge!;
            RatingMethod method = RateCommand.MethodOf(reading);
            if (!method.HasPosting)
            {
                return answer.Deliver(InputWarnings.On(PostingPage.WithoutRule(bridge, method), reading.Findings), units);
            }

            if (parsed.GetValue(level) is { } asked && !Posting.HasInventory(method, bridge.Rating))
            {
                throw new RefusedException($"--level {asked}: {method.Name} posts legal types by their legal rating, and has no other: leave --level out.");
            }

            if (!BridgeRater.Rate(bridge, method, reading.VehiclesAsked, surroundings.Stop).TryGet(out BridgeRating? rating, out Refusal? refusal))
            {
                return answer.Deliver(InputWarnings.On(PostingPage.Refused(bridge, method, refusal), reading.Findings), units);
            }

            var posting = Posting.Of(rating, parsed.GetValue(level) == "inventory");
            ResultPage page = InputWarnings.On(PostingPage.Of(posting, reading.PostedKindsNotAsked, units, Alternatives.Of(posting, reading.VehiclesAsked, surroundings.Stop)), reading.Findings);
            return answer.Deliver(limit.On(parsed, page, rating, posting.Rows), units);
        });
    }
}
