using SpanRater.Files;
using SpanRater.Pictures;

namespace SpanRater.Reports;

/// <summary>Influence lines of all members, drawn and as a table, and the envelope of the live forces that the rating found.</summary>
internal static class InfluenceChapter
{
    /// <summary>The chapter.</summary>
    /// <param name="rating">The rating.</param>
    /// <param name="open">Position of the member whose line begins open; null for none.</param>
    /// <param name="units">The units to show.</param>
    public static ReportChapter Of(BridgeRating rating, int? open, DisplayUnits units)
    {
        InfluenceLines lines = rating.Crossing.Lines;
        ResultBlock[] table = [.. InfluencePage.Of(rating.Bridge, lines, null, units).Blocks.Skip(1)];
        string force = units.Symbol(Quantity.Force);
        ResultBlock.Paragraph[] rods = lines.Slack is null ? [] : [new("Rods that only pull make effects that do not add up: these lines are of the set that pulls under the dead load. The rating rolls every vehicle with the dead load on, and takes other sets where they act.", Strong: true)];
        return new ReportChapter("influence", "Influence lines and envelopes",
        [
            new ResultBlock.Paragraph($"An influence line shows the force in one member for a load of 1 {force} on one truss, wherever on the deck that load stands. Positive is tension: a plain area under an unbroken line; negative is compression: a hatched area under dashes."),
            .. rods,
        ])
        {
            Parts =
            [
                .. open is { } first ? (ReportPart[])[LineOf(lines, lines.Members[first], first, true, units)] : [],
                new ReportPart.Fold("lines", $"The lines of {(open is null ? "all members" : "all other members")}", [.. lines.Members.Select((e, m) => (e, m)).Where(l => l.m != open).Select(l => LineOf(lines, l.e, l.m, false, units))]),
                new ReportPart.Said([new ResultBlock.Heading("All ordinates"), .. table]),
                .. EnvelopeParts.Of(rating, open, units),
            ],
        };
    }

    private static ReportPart.Fold LineOf(InfluenceLines lines, InfluenceEffect effect, int member, bool isOpen, DisplayUnits units)
    {
        double most = effect.Line.Ordinates.Max(), least = effect.Line.Ordinates.Min();
        string[] ends = [.. most > 0 ? (string[])[$"tension to {Told.Number(most)}"] : [], .. least < 0 ? (string[])[$"compression to {Told.Number(-least)}"] : []];
        string said = ends.Length == 0 ? "no force from the deck" : string.Join(", ", ends);
        string name = ReportPart.Brief(effect.Name);
        ResultBlock.Items reading = InfluencePage.Reading(effect.Line, units);
        return new ReportPart.Fold(
            $"line-{member + 1}",
            $"{name}: {said}",
            [new ReportPart.Sketch(InfluenceSketch.Of(lines, effect, units), $"Influence line of {name}", $"Influence line of {name}. {string.Join("; ", reading.Entries)}. Ordinates at every panel point stand in the table."), new ReportPart.Said([reading])],
            isOpen);
    }
}
