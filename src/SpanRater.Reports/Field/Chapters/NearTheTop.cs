using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>The short chapters near the top of the report: what governs, what is not rated, what waits for confirmation, what was found.</summary>
internal static class NearTheTop
{
    /// <summary>What governs, and the way to where it is opened.</summary>
    public static ReportChapter Governing(BridgeRating rating, IReadOnlyDictionary<RatingRow, string> opens)
    {
        RatingRow[] told = [.. new RatingRow?[] { rating.Governing, rating.GoverningMember, rating.GoverningInventory }.OfType<RatingRow>().Distinct(ReferenceEqualityComparer.Instance).Cast<RatingRow>()];
        return new ReportChapter("governing", "Governing part", RatingPage.WhatGoverns(rating))
        {
            Parts = [.. told.Where(opens.ContainsKey).Select(r => new ReportPart.Way(ReportPart.Brief($"How {Words.Factor(r.Factor)} follows for {RatingWording.NameAt(r)} in {RatingWording.ActsIn(r)}"), opens[r]))],
        };
    }

    /// <summary>What a reader must not take for rated.</summary>
    public static ReportChapter NotRated(BridgeRating rating, IReadOnlyList<string> notAsked, DisplayUnits units)
    {
        IReadOnlyList<ResultBlock> lines = RatingPage.NotRated(rating, notAsked, units);
        return new ReportChapter("not-rated", "Not rated",
        [
            new ResultBlock.Paragraph(ScopeWording.Of(rating), Strong: true),
            .. lines.Count > 0 ? lines : [new ResultBlock.Paragraph("Of what the bridge folder gives, all has a rating or is loaded by no vehicle.")],
        ]);
    }

    /// <summary>What was assumed: first what waits for somebody to look it up.</summary>
    public static ReportChapter Assumptions(BridgeRating rating, DisplayUnits units)
    {
        ILookup<bool, Stamp> stamps = rating.Stamps.ToLookup(s => s is Stamp.DefaultToConfirm or Stamp.StrengthToConfirm);
        return new ReportChapter("assumptions", "Assumptions and defaults that wait for confirmation",
        [
            stamps[true].Any()
                ? new ResultBlock.Items("Wait for confirmation. Until they are looked up, what rests on them is provisional:", [.. stamps[true].Select(s => RatingWording.Of(s, units))])
                : new ResultBlock.Paragraph("No default used here waits for confirmation."),
            .. stamps[false].Any() ? RatingPage.Assumed([.. stamps[false]], units) : [],
        ]);
    }

    /// <summary>What was seen, with its photos.</summary>
    public static ReportChapter Findings(BridgeReading reading) => new("findings", "Findings with photo numbers", FindingsList.Of(reading));
}
