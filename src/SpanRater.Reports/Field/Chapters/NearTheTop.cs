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
            Parts =
            [
                .. told.Where(opens.ContainsKey).Select(r => new ReportPart.Way(ReportPart.Brief($"How {Words.Factor(r.Factor)} follows for {RatingWording.NameAt(r)} in {RatingWording.ActsIn(r)}"), opens[r])),
                .. rating.Withheld.Select(w => (w.Reason, Row: WithheldBy(w.Vehicle, w.Reason, rating, opens))).Where(w => w.Row is not null)
                    .Select(w => new ReportPart.Way(ReportPart.Brief($"How {w.Reason.Member} comes to withhold {w.Row!.Vehicle.Name}: slack at {ResultTable.Cut(w.Reason.Factor, 2)} of it, factored for {w.Reason.Level} level"), opens[w.Row])),
            ],
        };
    }

    // The row that tells at what part of the vehicle the bar goes slack: at the level of the reason where that is opened.
    private static RatingRow? WithheldBy(LiveLoad vehicle, NotRatedReason.Uncarried reason, BridgeRating rating, IReadOnlyDictionary<RatingRow, string> opens) =>
        rating.Rows.Where(r => r.Status == RatingStatus.Withheld && r.Vehicle == vehicle && opens.ContainsKey(r)).OrderBy(r => r.Level.Name == reason.Level ? 0 : 1).FirstOrDefault();

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
