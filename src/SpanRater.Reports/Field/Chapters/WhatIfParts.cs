using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>Factors that hold only if something were otherwise, opened like those of the bridge as it is: a change that would help, a reading that is off by its doubt.</summary>
internal static class WhatIfParts
{
    /// <summary>Most readings that are opened: those that the page shows.</summary>
    private const int MostReadings = MeasurePage.MostReadings;

    /// <summary>Anchors of the lowest factor with each change.</summary>
    /// <param name="alternatives">The changes; null where none is offered.</param>
    public static IEnumerable<(RatingRow Row, string Id)> Anchors(Alternatives? alternatives) =>
        Lowest(alternatives).Select((l, i) => (l.Row, IdOf("change", i)));

    /// <summary>The lowest factor with each change, opened.</summary>
    /// <param name="alternatives">The changes; null where none is offered.</param>
    /// <param name="units">The units to show.</param>
    public static IEnumerable<ReportPart> Changes(Alternatives? alternatives, DisplayUnits units)
    {
        (Alternative Of, RatingRow Row)[] lowest = [.. Lowest(alternatives)];
        return lowest.Length == 0 ? [] :
        [
            new ReportPart.Fold(
                "changes",
                "The lowest factor with each change, opened",
                [
                    new ReportPart.Said([new ResultBlock.Paragraph("The bridge is rated again with the change and nothing else: the other factors with it follow in the same way.")]),
                    .. lowest.Select((l, i) => new ReportPart.Fold(IdOf("change", i), $"{AlternativeWording.Name(l.Of.Kind)}: {CapacityChapters.Title(l.Row, isOfBoth: false)}", [new ReportPart.Said([.. CapacityChapters.Told(l.Row, l.Of.Posting!.Rating, units)])])),
                ]),
        ];
    }

    /// <summary>What each member carries with the reading that is named off by its doubt, and the factor that leaves.</summary>
    /// <param name="measure">What to measure next.</param>
    /// <param name="units">The units to show.</param>
    public static IEnumerable<ReportPart> Readings(MeasureFirst measure, DisplayUnits units)
    {
        ReportPart.Fold[] folds =
        [
            .. measure.Readings.Take(MostReadings).Select((r, i) => new ReportPart.Fold(
                IdOf("doubt", i),
                ReportPart.Brief($"{Words.Factor(r.AtWorst)}: {MeasurePage.Where(r)}, at its worst {new SheetUnits(units).Small(r.Reading.AtWorst)}"),
                [new ReportPart.Said([.. AtWorst(r, measure.Rating, units)])])),
        ];
        return folds.Length == 0 ? [] : [new ReportPart.Fold("doubts", "Factors at worst, opened", folds)];
    }

    private static IEnumerable<ResultBlock> AtWorst(DoubtfulReading reading, BridgeRating rating, DisplayUnits units)
    {
        if (reading.ResistanceAtWorst is not { } worst)
        {
            yield return new ResultBlock.Paragraph("Nothing would be left of the member, or no rule would hold any more: its capacity counts as none.");
            yield break;
        }

        foreach (ResultBlock block in CapacitySheet.Of(worst, reading.Row.Name, reading.Row.Sense, units))
        {
            yield return block;
        }

        if (reading.Row.Reached is not null)
        {
            yield return new ResultBlock.Paragraph($"Rods go slack: the factor is sought again, as that of the member as found, until dead load and vehicle bring it to this capacity: {Words.Factor(reading.AtWorst)}.");
            yield break;
        }

        foreach (ResultBlock block in RatingTelling.Sum(reading.Row with { Capacity = worst.Value, Resistance = worst, Factor = reading.AtWorst }, rating, units))
        {
            yield return block;
        }
    }

    private static IEnumerable<(Alternative Of, RatingRow Row)> Lowest(Alternatives? alternatives) =>
        (alternatives?.All ?? []).Where(a => a is { Lowest.Factor: not null, Posting: not null }).Select(a => (a, a.Lowest!));

    private static string IdOf(string what, int i) => $"{what}-{(i + 1).ToString(CultureInfo.InvariantCulture)}";
}
