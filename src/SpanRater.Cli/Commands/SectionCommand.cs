using System.CommandLine;
using SpanRater.Pictures;
using SpanRater.Reports;

namespace SpanRater.Cli.Commands;

/// <summary><c>section BRIDGE --case NAME | --unit-load JOINT --member NAME</c>: one member a second time, by a cut.</summary>
internal static class SectionCommand
{
    public static Command Make(Surroundings surroundings)
    {
        var command = new BridgeCommand(surroundings, "section", "Find the force of one member a second time, by cutting the truss in two, and compare it with the joints.", draws: true);
        var load = new LoadOptions(command.Bridge);
        Option<string?> member = command.MemberOption("The member.");
        member.Required = true;
        return command.With([.. load.All, member], pageTellsWarnings: false, (parsed, reading, units, answer) =>
        {
            Bridge bridge = reading.Bridge!;
            LoadAsked asked = load.In(parsed, bridge);
            string name = parsed.GetValue(member)!;
            Outcome<SectionCheck> outcome = SectionCheck.Of(bridge.Truss, asked.Loads, BridgeInput.FindMember(bridge.Truss, name));
            return answer.Deliver(
                SectionPage.Of(bridge, asked, name, outcome, units),
                units,
                outcome.Value is not { Cuts.Count: > 0 } check ? null
                : () => FreeBodyPicture.OfSection($"{bridge.Title}: {name} by sections under {asked.Title}", check, asked.Notation(check.Worked, units)));
        });
    }
}
