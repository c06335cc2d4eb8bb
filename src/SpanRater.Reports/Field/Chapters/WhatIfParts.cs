using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>Factors that hold only with a change that would help, opened like those of the bridge as it is.</summary>
internal static class WhatIfParts
{
    /// <summary>Anchor of the fold that holds them.</summary>
    public const string Id = "changes";

    /// <summary>Anchors of every factor with every change.</summary>
    /// <param name="alternatives">The changes; null where none is offered.</param>
    public static IEnumerable<(RatingRow Row, string Id)> Anchors(Alternatives? alternatives) => Rated(alternatives).SelectMany((a, i) =>
        (IEnumerable<(RatingRow, string)>)[.. a.Lowest is { Factor: not null } lowest ? ((RatingRow, string)[])[(lowest, IdOf("change", i))] : [], .. ChangeParts.Others(a).Select(r => (r, IdOf("with", i)))]);

    /// <summary>Rows of the bridge as it is that the factors with the changes follow from.</summary>
    /// <param name="alternatives">The changes; null where none is offered.</param>
    public static IEnumerable<RatingRow> Rests(Alternatives? alternatives) =>
        Rated(alternatives).SelectMany(ChangeParts.Others).Select(r => ChangeParts.AsItIs(r, alternatives!.Present.Rating)).OfType<RatingRow>().Where(r => r.Factor is not null);

    /// <summary>The factors with each change, opened.</summary>
    /// <param name="alternatives">The changes; null where none is offered.</param>
    /// <param name="opened">Anchors of what the report opens of the bridge as it is.</param>
    /// <param name="units">The units to show.</param>
    public static IEnumerable<ReportPart> Changes(Alternatives? alternatives, IReadOnlyDictionary<RatingRow, string> opened, DisplayUnits units)
    {
        ReportPart.Fold[] folds =
        [
            .. Rated(alternatives).SelectMany((a, i) => (IEnumerable<ReportPart.Fold>)
            [
                .. a.Lowest is { Factor: not null } lowest
                    ? (ReportPart.Fold[])[new ReportPart.Fold(IdOf("change", i), $"{AlternativeWording.Name(a.Kind)}: {CapacityChapters.Title(lowest, isOfBoth: false)}", [new ReportPart.Said([.. CapacityChapters.Told(lowest, a.Posting!.Rating, units)])])]
                    : [],
                .. ChangeParts.Others(a).Any() ? (ReportPart.Fold[])[ChangeParts.Of(a, alternatives!.Present.Rating, opened, IdOf("with", i), units)] : [],
            ]),
        ];
        return folds.Length == 0 ? [] :
        [
            new ReportPart.Fold(
                Id,
                "The factors with each change, opened",
                [new ReportPart.Said([new ResultBlock.Paragraph("The bridge is rated again with the change and nothing else. The lowest factor is told in full, then those of all other types."), .. SafeLoadTelling.Of(alternatives!)]), .. folds]),
        ];
    }

    // Without a posting nothing is rated with the change.
    private static IEnumerable<Alternative> Rated(Alternatives? alternatives) => (alternatives?.All ?? []).Where(a => a.Posting is not null);

    private static string IdOf(string what, int i) => $"{what}-{(i + 1).ToString(CultureInfo.InvariantCulture)}";
}
