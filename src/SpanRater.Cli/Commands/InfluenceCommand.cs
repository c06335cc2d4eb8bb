using System.CommandLine;
using SpanRater.Files;
using SpanRater.Pictures;

namespace SpanRater.Cli.Commands;

/// <summary><c>influence BRIDGE [--member NAME]</c>: influence lines, a unit load at every panel point.</summary>
internal static class InfluenceCommand
{
    public static Command Make(Surroundings surroundings)
    {
        var command = new BridgeCommand(surroundings, "influence", "Influence lines of members and reactions, a unit load at every panel point.", draws: true);
        Option<string?> member = command.MemberOption("Only this member. Unset: every member and reaction.");
        return command.With([member], pageTellsWarnings: false, (parsed, reading, units, answer) =>
        {
            Bridge bridge = reading.Bridge!;
            string? only = parsed.GetValue(member);
            if (only is not null)
            {
                _ = BridgeInput.FindMember(bridge.Truss, only);
            }

            Outcome<InfluenceLines> outcome = InfluenceLines.Of(bridge.Truss);
            return answer.Deliver(
                InfluencePage.Of(bridge, outcome, only, units),
                units,
                outcome.Value is not { } lines ? null
                : () => only is null ? InfluencePicture.OfAll(bridge.Name, lines, units) : InfluencePicture.OfEffect(bridge.Name, lines, only, units));
        });
    }
}
