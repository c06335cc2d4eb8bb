using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>What <c>influence --explain</c> says: why the influence line of one member looks as it does.</summary>
public static class InfluenceExplanation
{
    private static readonly ResultColumn[] Columns =
    [
        new("panel point"), new("station", Quantity.Length), new("ordinate", Quantity.Number, 4), new("load stands"), new("reactions on the part without it"), new("effect"), new("lever"),
    ];

    /// <summary>Makes the page.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="outcome">The lines, or why there are none.</param>
    /// <param name="member">The member, by position.</param>
    /// <param name="units">The units to show.</param>
    public static ResultPage Of(Bridge bridge, Outcome<InfluenceLines> outcome, int member, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(outcome);
        ArgumentNullException.ThrowIfNull(units);
        Truss truss = bridge.Truss;
        string name = truss.Members[member].Name;
        var title = new ResultBlock.Heading($"{bridge.Name}: why the influence line of {name} looks as it does", 1);
        if (!outcome.TryGet(out InfluenceLines? lines, out Refusal? refusal))
        {
            string why = RefusalWording.Sentence(refusal, truss, units);
            return new ResultPage(
                [title, new ResultBlock.Paragraph(why, Strong: true)],
                new ResultTable(Columns, []),
                [why],
                json =>
                {
                    json.WriteString("bridge", bridge.Name);
                    json.WriteString("member", name);
                    json.WriteRefusal(refusal, truss);
                },
                IsAnswer: false);
        }

        InfluenceNarration narration = InfluenceNarration.Of(lines, member);
        var blocks = new List<ResultBlock>
        {
            title,
            new ResultBlock.Paragraph($"An influence line tells of one thing, here the force in {name}, as one unit of load moves over the deck: positive where the load pulls {name}, negative where it presses it. One unit at the panel points gives:"),
            new ResultBlock.Grid(new ResultTable(
                [new("panel point"), new("station", Quantity.Length), new("ordinate", Quantity.Number, 4)],
                [.. truss.Stations.Select((s, i) => (IReadOnlyList<object?>)[Point(truss, i), s, narration.Line.Ordinates[i]])])),
        };
        if (lines.Slack is { } slack)
        {
            string[] names = [.. slack.Select(m => truss.Members[m].Name)];
            blocks.Add(new ResultBlock.Paragraph($"Members that only pull: {(names.Length == 0 ? "none" : Told.List(names))} {(names.Length == 1 ? "is" : "are")} slack here. The line holds while that stays so, and a load that changes the set changes the line.", Strong: true));
        }

        blocks.AddRange(narration.IsSlack ? [new ResultBlock.Paragraph($"{name} is slack here: it carries nothing. Its line where it pulls: name the rods that are slack then with --slack.")]
            : Origin(narration, truss, units));
        blocks.AddRange(Bends(narration, truss, units));
        blocks.AddRange(ShapeTelling.Of(narration.Line, name, units));
        return new ResultPage(
            blocks,
            new ResultTable(Columns, [.. truss.Stations.Select((s, i) => Row(narration, truss, i, s, units))]),
            [],
            json => ExplanationFacts.Write(json, bridge, narration));
    }

    /// <summary>Where the ordinates of a member that acts come from: one joint, one cut, or neither.</summary>
    internal static IEnumerable<ResultBlock> Origin(InfluenceNarration narration, Truss truss, DisplayUnits units) =>
        narration.IsJointAlone ? JointTelling.Alone(narration, truss)
        : narration.Section is { } section ? SectionTelling.Of(narration, section, truss, units)
        : JointTelling.Otherwise(narration, truss);

    internal static string Point(Truss truss, int panelPoint) => truss.Joints[truss.PanelPoints[panelPoint]].Name;

    private static IReadOnlyList<object?> Row(InfluenceNarration narration, Truss truss, int point, double station, DisplayUnits units)
    {
        if (narration.Section?.Steps[point] is not { } step)
        {
            return [Point(truss, point), station, narration.Line.Ordinates[point], "", "", "", ""];
        }

        IReadOnlyList<object?> told = SectionTelling.Row(narration.Section, step, truss, units);
        return [Point(truss, point), station, narration.Line.Ordinates[point], told[1], told[2], told[3], told[4]];
    }

    private static IEnumerable<ResultBlock> Bends(InfluenceNarration narration, Truss truss, DisplayUnits units)
    {
        InfluenceLine line = narration.Line;
        if (line.Ordinates.All(y => y == 0))
        {
            yield break;
        }

        yield return new ResultBlock.Heading("Where it bends");
        string[] at = [.. narration.Bends.Select(b => Point(truss, b.PanelPoint))];
        string floor = "Between panel points the floor spans simply and hands a load to its two neighbours in proportion, so the line is straight there.";
        if (at.Length == 0)
        {
            yield return new ResultBlock.Paragraph($"{floor} This one bends nowhere: it is straight from {Point(truss, 0)} to {Point(truss, line.Stations.Count - 1)}.");
            yield break;
        }

        if (narration is { BendsOnlyAtTheSection: true, Section: { } section } && section.PanelLeft >= 0 && section.PanelLeft + 1 < line.Stations.Count)
        {
            string left = Point(truss, section.PanelLeft), right = Point(truss, section.PanelLeft + 1);
            string pieces = $"A load up to {left} leaves the right part bare, and that part's reactions change in proportion as the load moves: one straight piece. A load from {right} on leaves the left part bare in the same way: another. Between {left} and {right}, the panel that is cut, the floor hands the load from one piece to the other.";
            string where = at.Length == 2
                ? $"So the line bends at {at[0]} and {at[1]} and nowhere else."
                : Peaks(narration, section, truss) ?? $"So it could bend at {left} and {right} only; it does at {at[0]}.";
            yield return new ResultBlock.Paragraph($"{floor} {pieces} {where}{Ends(line, truss)}");
        }
        else
        {
            yield return new ResultBlock.Paragraph($"{floor} It bends at {Told.List(at)}.{Ends(line, truss)}");
        }
    }

    // The two pieces meet right under or over the centre of moments, where the member's moment is that of a plain beam.
    private static string? Peaks(InfluenceNarration narration, LineSection section, Truss truss)
    {
        LineBend bend = narration.Bends[0];
        double station = narration.Line.Stations[bend.PanelPoint], size = narration.Line.Stations[^1] - narration.Line.Stations[0];
        return section.Centre is { } centre && Math.Abs(centre.X - station) <= 1e-9 * size
            ? $"The two pieces meet at {Point(truss, bend.PanelPoint)}, in line with the point about which moments are taken, so the line bends there and nowhere else."
            : null;
    }

    private static string Ends(InfluenceLine line, Truss truss) =>
        line.Ordinates[0] == 0 && line.Ordinates[^1] == 0 && truss.Joints[truss.PanelPoints[0]].Support is not null && truss.Joints[truss.PanelPoints[^1]].Support is not null
            ? $" Over the supports {Point(truss, 0)} and {Point(truss, line.Stations.Count - 1)} it is zero: a load there goes straight into the ground."
            : "";
}
