using System.Globalization;
using SpanRater.Files;
using SpanRater.Pictures;

namespace SpanRater.Reports;

/// <summary>Influence lines of all members, drawn and as a table, and the envelope of the live forces that the rating found.</summary>
internal static class InfluenceChapter
{
    /// <summary>The chapter.</summary>
    /// <param name="rating">The rating.</param>
    /// <param name="open">Position of the member whose line begins open; null for none.</param>
    /// <param name="sets">The solutions that the ordinates come from.</param>
    /// <param name="opened">The ratings that the report opens.</param>
    /// <param name="units">The units to show.</param>
    public static ReportChapter Of(BridgeRating rating, int? open, OrdinateSets sets, OpenedRatings opened, DisplayUnits units)
    {
        InfluenceLines lines = rating.Crossing.Lines;
        string force = units.Symbol(Quantity.Force);
        ResultBlock.Paragraph[] rods = lines.Slack is null ? [] : [new("Rods that only pull make effects that do not add up: these lines are of the set that pulls under the dead load. The rating rolls every vehicle with the dead load on, and takes other sets where they act.", Strong: true)];
        return new ReportChapter("influence", "Influence lines and envelopes",
        [
            new ResultBlock.Paragraph($"An influence line shows the force in one member for a load of 1 {force} on one truss, wherever on the deck that load stands. Positive is tension: a plain area under an unbroken line; negative is compression: a hatched area under dashes."),
            new ResultBlock.Paragraph("Area = Σ (left ordinate + right ordinate)/2 · length, panel after panel; where a line changes its sign within one, at left ordinate/(left − right) · length from its left end, the two parts count apart."),
            .. rods,
        ])
        {
            Parts =
            [
                .. open is { } first ? (ReportPart[])[LineOf(lines, lines.Members[first], first, true, sets.All[0].Id, units)] : [],
                new ReportPart.Fold("lines", $"The lines of {(open is null ? "all members" : "all other members")}", [.. lines.Members.Select((e, m) => (e, m)).Where(l => l.m != open).Select(l => LineOf(lines, l.e, l.m, false, sets.All[0].Id, units))]),
                new ReportPart.Said([new ResultBlock.Heading("All ordinates"), new ResultBlock.Paragraph("Every ordinate opens: the name of a member leads to its line and to the one joint or cut that gives it, the name of a panel point to the whole truss solved for a load of 1 there.")]),
                .. InfluencePage.Of(rating.Bridge, lines, null, units).Blocks.Skip(1).Select(b => b is ResultBlock.Grid { Content: var table } ? OpeningOf(table, lines, sets.All[0]) : (ReportPart)new ReportPart.Said([b])),
                .. sets.Folds(),
                .. EnvelopeParts.Of(rating, open, sets, opened, units),
            ],
        };
    }

    private static ReportPart.Opening OpeningOf(ResultTable table, InfluenceLines lines, OrdinateSet solved) => new(
        table,
        [null, .. lines.Truss.PanelPoints.Select((_, p) => solved.At(p))],
        Enumerable.Range(0, lines.Members.Count).ToDictionary(m => (m + 1, 0), IdOf));

    private static string IdOf(int member) => $"line-{(member + 1).ToString(CultureInfo.InvariantCulture)}";

    // The headings of what opens stand below its title.
    private static IEnumerable<ResultBlock> OriginOf(InfluenceLines lines, int member, DisplayUnits units)
    {
        var narration = InfluenceNarration.Of(lines, member);
        return narration.IsSlack
            ? [new ResultBlock.Paragraph($"{lines.Members[member].Name} is slack while these lines hold: it carries nothing.")]
            : InfluenceExplanation.Origin(narration, lines.Truss, units).Select(b => b is ResultBlock.Heading heading ? heading with { Level = 3 } : b);
    }

    private static ReportPart.Fold LineOf(InfluenceLines lines, InfluenceEffect effect, int member, bool isOpen, string unit, DisplayUnits units)
    {
        double most = effect.Line.Ordinates.Max(), least = effect.Line.Ordinates.Min();
        string[] ends = [.. most > 0 ? (string[])[$"tension to {Told.Number(most)}"] : [], .. least < 0 ? (string[])[$"compression to {Told.Number(-least)}"] : []];
        string said = ends.Length == 0 ? "no force from the deck" : string.Join(", ", ends);
        string name = ReportPart.Brief(effect.Name);
        ResultBlock.Items reading = InfluencePage.Reading(effect.Line, units);
        return new ReportPart.Fold(
            IdOf(member),
            $"{name}: {said}",
            [new ReportPart.Sketch(InfluenceSketch.Of(lines, effect, units), $"Influence line of {name}", $"Influence line of {name}. {string.Join("; ", reading.Entries)}. Ordinates at every panel point stand in the table."), new ReportPart.Said([reading, .. OriginOf(lines, member, units)]), new ReportPart.Way("Its ordinates, by the whole truss", unit)],
            isOpen);
    }
}
