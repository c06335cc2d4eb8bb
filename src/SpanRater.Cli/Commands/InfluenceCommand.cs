using System.CommandLine;
using SpanRater.Files;

namespace SpanRater.Cli.Commands;

/// <summary><c>influence BRIDGE [--member NAME]</c>: influence lines, a unit load at every panel point.</summary>
internal static class InfluenceCommand
{
    public static Command Make(Surroundings surroundings)
    {
        Argument<string> bridge = CommonOptions.Bridge();
        Option<string?> member = CommonOptions.Member(bridge, "Only this member. Unset: every member and reaction.");
        Option<string?> format = CommonOptions.Format(), units = CommonOptions.Units(), output = CommonOptions.Out(), picture = CommonOptions.Picture();
        Option<string[]> catalogue = CommonOptions.Catalogue();
        var command = new Command("influence", "Influence lines of members and reactions, a unit load at every panel point.")
        {
            bridge, member, format, units, output, catalogue, picture,
        };
        command.SetAction(parsed =>
        {
            BridgeReading reading = BridgeInput.Read(parsed.GetRequiredValue(bridge), parsed.GetValue(catalogue)!, surroundings.Error);
            Bridge read = reading.Bridge!;
            string? only = parsed.GetValue(member);
            if (only is not null)
            {
                _ = read.Truss.FindMemberOr(only);
            }

            DisplayUnits shown = BridgeInput.UnitsFor(parsed.GetValue(units), reading.Units);
            Outcome<InfluenceLines> outcome = DeterminateTruss.Of(read.Truss).TryGet(out DeterminateTruss? system, out Refusal? refusal)
                ? InfluenceLines.Of(system)
                : refusal;
            var answer = new Answer(surroundings, parsed.GetValue(format), parsed.GetValue(output));
            return answer.Deliver(InfluencePage.Of(read, outcome, only, shown), shown);
        });
        return command;
    }
}
