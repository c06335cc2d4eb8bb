using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>What every part carries, opened to section and formula, and every factor of the rating tables opened down to what was given.</summary>
internal static class CapacityChapters
{
    /// <summary>Anchors of the ratings that the report opens: those of the rating tables, by the row itself.</summary>
    public static IReadOnlyDictionary<RatingRow, string> Opens(BridgeRating rating) =>
        RatingPage.RowsShown(rating).Select((row, i) => (row, Id: $"factor-{i + 1}")).ToDictionary(r => r.row, r => r.Id, (IEqualityComparer<RatingRow>)ReferenceEqualityComparer.Instance);

    /// <summary>The table of capacities, and what each member and part is made of.</summary>
    public static ReportChapter Sheets(BridgeRating rating, IReadOnlyDictionary<RatingRow, string> opens, IReadOnlyList<ResultBlock> table, DisplayUnits units) =>
        new("capacity", "Capacity sheets", table)
        {
            Parts =
            [
                new ReportPart.Said([new ResultBlock.Heading("Each part opened"), new ResultBlock.Paragraph("What each part is made of, as built and as found, and the way to its capacities and factors.")]),
                .. OfMembers(rating, opens, units),
                .. (rating.Bridge.Floor?.Parts ?? []).Select((p, i) => (Part: p, Blocks: SectionSheet.Of(p, units).ToArray(), Id: $"made-part-{i + 1}")).Where(p => p.Blocks.Length > 0)
                    .Select(p => new ReportPart.Fold(p.Id, ReportPart.Brief(p.Part.Name), [new ReportPart.Said(p.Blocks), .. Ways(opens, r => r is PartRow && r.Name == p.Part.Name)])),
            ],
        };

    /// <summary>Every row of the rating tables, opened.</summary>
    public static ReportChapter Factors(BridgeRating rating, IReadOnlyDictionary<RatingRow, string> opens, DisplayUnits units)
    {
        IReadOnlyList<RatingRow> rows = RatingPage.RowsShown(rating);
        return new ReportChapter("factors", "Every factor opened", [.. RatingFormula.Of(RatingFormula.OfAll, rows), new ResultBlock.Paragraph("Each row of the rating tables, down to what was given, so that a pocket calculator can follow. The lowest factors stand first.")])
        {
            Parts = [.. rows.Select(r => new ReportPart.Fold(opens[r], ReportPart.Brief($"{Lead(r)}: {RatingPage.InALine(r)}"), [new ReportPart.Said([.. Told(r, rating, units)]), .. Made(r, rating)], ReferenceEquals(r, rating.Governing)))],
        };
    }

    private static string Lead(RatingRow row) => row.Factor is null ? Words.InTable(row.Status) : Words.Factor(row.Factor);

    private static IEnumerable<ResultBlock> Told(RatingRow row, BridgeRating rating, DisplayUnits units) => row switch
    {
        MemberRow member => SlackTelling.Of([member], rating, units).Concat(RatingTelling.Of(member, rating, units)),
        PartRow part => PartTelling.Of(part, rating, units),
        _ => throw new ArgumentOutOfRangeException(nameof(row), row, "Every row is told."),
    };

    // The way from a factor to what the part is made of.
    private static IEnumerable<ReportPart> Made(RatingRow row, BridgeRating rating)
    {
        string? id = row switch
        {
            MemberRow member => MakesOf(rating.Bridge, member.MemberIndex).FirstOrDefault(m => m.Truss is null || m.Truss == row.Truss).Id,
            _ => rating.Bridge.Floor?.Parts.ToList().FindIndex(p => p.Name == row.Name) is { } i and >= 0 && SectionSheet.Of(rating.Bridge.Floor.Parts[i], DisplayUnits.Si).Any() ? $"made-part-{i + 1}" : null,
        };
        return id is null ? [] : [new ReportPart.Way(ReportPart.Brief($"What {row.Name} is made of"), id)];
    }

    private static IEnumerable<ReportPart> OfMembers(BridgeRating rating, IReadOnlyDictionary<RatingRow, string> opens, DisplayUnits units)
    {
        ILookup<int, MemberCapacityRow> capacities = MemberCapacities.Of(rating.Bridge, rating.Method).Rows.ToLookup(r => r.MemberIndex);
        for (int m = 0; m < rating.Bridge.Truss.Members.Count; m++)
        {
            string name = rating.Bridge.Truss.Members[m].Name;
            int member = m;
            foreach ((string? truss, MemberMake make, string id) in MakesOf(rating.Bridge, m))
            {
                // What no vehicle loads has no row in the rating tables, and its sheet stands here.
                MemberCapacityRow[] untold = [.. capacities[m].Where(c => (truss is null || c.Truss is null || c.Truss == truss) && !opens.Keys.OfType<MemberRow>().Any(r => r.MemberIndex == member && r.Sense == c.Sense)).DistinctBy(c => (c.Sense, c.Level))];
                yield return new ReportPart.Fold(
                    id,
                    ReportPart.Brief($"{name}{(truss is null ? "" : $", {truss} truss")}: {make.Section.AsBuilt.Name}"),
                    [
                        new ReportPart.Said([.. SectionSheet.Of(make, name, truss, units), .. untold.SelectMany(c => CapacitySheet.Of(c, units))]),
                        .. Ways(opens, r => r is MemberRow row && row.MemberIndex == member && (truss is null || row.Truss is null || row.Truss == truss)),
                    ]);
            }
        }
    }

    private static IEnumerable<ReportPart> Ways(IReadOnlyDictionary<RatingRow, string> opens, Func<RatingRow, bool> belongs) =>
        opens.Where(o => belongs(o.Key)).Select(o => new ReportPart.Way(ReportPart.Brief($"{Lead(o.Key)}: {RatingPage.InALine(o.Key)}"), o.Value));

    // Both trusses together where the same was seen on them.
    private static (string? Truss, MemberMake Make, string Id)[] MakesOf(Bridge bridge, int member)
    {
        if (bridge.MakeOf(0, member) is not { } left)
        {
            return [];
        }

        string id = $"made-member-{member + 1}";
        return bridge.RightMakes is not null && bridge.MakeOf(1, member) is { } right && Seen(left) != Seen(right)
            ? [(bridge.Deck.TrussNames[0], left, id), (bridge.Deck.TrussNames[1], right, $"{id}-right")]
            : [(null, left, id)];
    }

    private static string Seen(MemberMake make) => string.Join("; ", make.Section.Observations.Select(MakeWording.Of));
}
