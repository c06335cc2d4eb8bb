using System.CommandLine;
using SpanRater.Files;
using SpanRater.Pictures;
using SpanRater.Reports;

namespace SpanRater.Cli.Commands;

/// <summary><c>influence BRIDGE [--member NAME]</c>: influence lines, a unit load at every panel point.</summary>
internal static class InfluenceCommand
{
    public static Command Make(Surroundings surroundings)
    {
        var command = new BridgeCommand(surroundings, "influence", "Influence lines of members and reactions, a unit load at every panel point.", draws: true, showsEveryTruss: true);
        Option<string?> member = command.MemberOption("Only this member. Unset: every member and reaction.");
        var slack = new Option<string?>("--slack") { Description = "In a truss with rods: the ones that are slack, separated by commas. Unset: those slack under the dead load.", HelpName = "NAMES" };
        var displaced = new Option<bool>("--displaced") { Description = "With --member or --explain, and --picture: draw the truss with the member shortened by one unit, whose deck takes the shape of the line." };
        Option<string?> explain = command.ExplainOption("Tell why this member's line looks as it does: the cut, the ordinates, where it bends, where to load it.");
        return command.With([member, slack, displaced, explain], pageTellsWarnings: false, (parsed, reading, units, answer) =>
        {
            Bridge bridge = reading.Bridge!;
            int? explained = BridgeInput.FindExplained(bridge.Truss, parsed.GetValue(explain), parsed.GetValue(member));
            string? only = parsed.GetValue(member) ?? parsed.GetValue(explain);
            if (only is not null)
            {
                _ = BridgeInput.FindMember(bridge.Truss, only);
            }

            bool moved = parsed.GetValue(displaced);
            if (moved && (only is null || answer.PictureFile is null))
            {
                throw new RefusedException("--displaced: draws one member's shortening: say --member NAME (or --explain) and --picture FILE as well.");
            }

            Outcome<InfluenceLines> outcome = LinesOf(bridge, parsed.GetValue(slack));
            return answer.Deliver(
                explained is { } index ? InfluenceExplanation.Of(bridge, outcome, index, units) : InfluencePage.Of(bridge, outcome, only, units),
                units,
                outcome.Value is not { } lines ? null
                : moved ? () => DisplacedDeckPicture.Of(bridge.Name, lines, Shortened(lines, only!), units)
                : () => only is null ? InfluencePicture.OfAll(bridge.Name, lines, units) : InfluencePicture.OfEffect(bridge.Name, lines, only, units));
        });
    }

    // Lines of a truss with rods belong to a set of acting rods: the one named, or the one that acts under the dead load.
    private static Outcome<InfluenceLines> LinesOf(Bridge bridge, string? slack)
    {
        if (slack is not null)
        {
            int[] members = SlackMembers(bridge.Truss, slack);
            return RodTruss.Of(bridge.Truss).TryGet(out RodTruss? rods, out Refusal? noRods) ? rods.Lines(members) : noRods;
        }

        if (!SolvableTruss.Of(bridge.Truss).TryGet(out SolvableTruss? system, out Refusal? refusal))
        {
            return refusal;
        }

        if (system is not RodTruss rodTruss)
        {
            return InfluenceLines.Of((LinearTruss)system);
        }

        LoadCase? dead = bridge.DeadLoad;
        return dead is null ? new Refusal.NoDeadLoad()
            : rodTruss.Solve(dead).TryGet(out ForceSolution? forces, out refusal) ? rodTruss.Lines([.. rodTruss.SlackUnder(forces)])
            : refusal;
    }

    private static int[] SlackMembers(Truss truss, string names)
    {
        var members = new List<int>();
        var wrong = new List<string>();
        string[] rods = [.. truss.Members.Where(m => m.TensionOnly).Select(m => m.Name)];
        foreach (string name in names.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries).Distinct())
        {
            if (rods.Contains(name))
            {
                members.Add(truss.FindMember(name)!.Value);
            }
            else
            {
                wrong.Add($"--slack \"{name}\": no member of that name is marked tension only.{NearestName.Question(name, rods)}");
            }
        }

        return wrong.Count > 0 ? throw new RefusedException(wrong) : [.. members];
    }

    private static UnitShortening Shortened(InfluenceLines lines, string member) =>
        UnitShortening.Of(lines.Truss, lines.Truss.FindMember(member)!.Value, lines.Slack).Value
        ?? throw new RefusedException($"--displaced \"{member}\": where forces hang on stiffness, or the member is a slack rod, shortening it strains others or nothing, and the geometry alone does not tell the movement. Leave out --displaced.");
}
