using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>What every part carries, opened to section and formula, and every factor of the rating tables opened down to what was given.</summary>
internal static class CapacityChapters
{
    /// <summary>The table of capacities, and what each member and part is made of.</summary>
    public static ReportChapter Sheets(BridgeRating rating, OpenedRatings opened, IReadOnlyList<ResultBlock> table, DisplayUnits units) =>
        new("capacity", "Capacity sheets", [])
        {
            Parts =
            [
                .. table.Select(b => b is ResultBlock.Grid { Content: var grid } ? TableOf(grid, rating, opened) : (ReportPart)new ReportPart.Said([b])),
                new ReportPart.Said([new ResultBlock.Heading("Each part opened"), new ResultBlock.Paragraph("What each part is made of, as built and as found, and the way to its capacities and factors.")]),
                .. Group("made-members", "Truss members", [.. OfMembers(rating, opened, units)]),
                .. Group("made-floor", "Parts of the floor",
                [
                    .. (rating.Bridge.Floor?.Parts ?? []).Select((p, i) => (Part: p, Blocks: SectionSheet.Of(p, units).ToArray(), Id: $"made-part-{i + 1}")).Where(p => p.Blocks.Length > 0)
                        .Select(p => new ReportPart.Fold(p.Id, ReportPart.Brief(p.Part.Name), [new ReportPart.Said(p.Blocks), .. Ways(opened, r => r is PartRow && r.Name == p.Part.Name)])),
                ]),
            ],
        };

    /// <summary>Every row of the rating tables, opened.</summary>
    public static ReportChapter Factors(BridgeRating rating, OpenedRatings opened, OrdinateSets sets, DisplayUnits units)
    {
        bool IsGoverning(OpenedRating o) => o.Rows.Any(r => ReferenceEquals(r, rating.Governing));
        ReportPart.Fold FoldOf(OpenedRating o) =>
            new(o.Id, Title(o.Shown, o.Rows.Count > 1), [new ReportPart.Said([.. Told(o.Shown, rating, units), .. Unrated(o.Shown, rating, units)]), .. Made(o.Rows[0], rating), .. o.Shown is MemberRow member ? [.. sets.WaysFrom(member), new ReportPart.Way(ReportPart.Brief($"Dead forces of {member.Name}"), DeadForces.Id)] : (ReportPart[])[]], IsGoverning(o));
        return new ReportChapter("factors", "Every factor opened", [.. RatingFormula.Of(RatingFormula.OfAll, opened.All.Select(o => o.Shown)), new ResultBlock.Paragraph("Each row of the rating tables, down to what was given, so that a pocket calculator can follow. The lowest factors stand first.")])
        {
            Parts =
            [
                .. opened.All.Where(o => IsGoverning(o)).Select(FoldOf),
                .. opened.All.Where(o => !IsGoverning(o)).GroupBy(o => o.Shown.Part).SelectMany(g => Group($"factors-{Array.IndexOf(Enum.GetValues<PartKind>(), g.Key) + 1}", Plural(g.Key), [.. g.Select(FoldOf)])),
            ],
        };
    }

    // A capacity leads to a factor that opens its sheet, else to what the member is made of, where the sheet stands.
    private static ReportPart.Opening TableOf(ResultTable table, BridgeRating rating, OpenedRatings opened)
    {
        MemberCapacityRow[] rows = [.. MemberCapacities.Of(rating.Bridge, rating.Method).Rows.Where(r => r.Value is not null)];
        int[] columns = [.. Enumerable.Range(0, table.Columns.Count).Where(c => table.Columns[c].Heading is "as built" or "as found" or "KL/r")];
        return new ReportPart.Opening(
            table,
            null,
            rows.SelectMany((row, r) => columns.Where(c => row.Given is null && table.Rows[r][c] is double).Select(c => (At: (r, c), Id: (table.Columns[c].Heading == "as built" && row.IsChanged ? null : SheetOf(row, opened)) ?? MadeOf(rating, row.MemberIndex, row.Truss)))).Where(l => l.Id is not null).ToDictionary(l => l.At, l => l.Id!));
    }

    private static string? SheetOf(MemberCapacityRow row, OpenedRatings opened) => opened.All.FirstOrDefault(o => o.Shown is MemberRow { Resistance: { } found } shown
        && (shown.MemberIndex, shown.Sense) == (row.MemberIndex, row.Sense) && Math.Abs(found.Value - row.Value!.Value) <= 1e-9 * found.Value
        && o.Rows.Any(r => row.Truss is null || r.Truss is null || r.Truss == row.Truss))?.Id;

    private static string? MadeOf(BridgeRating rating, int member, string? truss) => OpenedRatings.MakesOf(rating.Bridge, member).FirstOrDefault(m => m.Truss is null || m.Truss == truss).Id;

    // Many things that open, behind one that opens.
    private static IEnumerable<ReportPart> Group(string id, string title, IReadOnlyList<ReportPart> folds) =>
        folds.Count == 0 ? [] : [new ReportPart.Fold(id, $"{title} ({folds.Count.ToString(CultureInfo.InvariantCulture)})", folds)];

    private static string Plural(PartKind kind)
    {
        string name = PartWords.Of(kind);
        return $"{char.ToUpperInvariant(name[0])}{name[1..]}{(kind == PartKind.Deck || name.EndsWith('s') ? "" : "s")}";
    }

    /// <summary>A row in a line, its factor first.</summary>
    internal static string Title(RatingRow row, bool isOfBoth) => ReportPart.Brief($"{Lead(row)}: {RatingWording.NameAt(row)} in {RatingWording.ActsIn(row)} under {RatingWording.Under(row)} at {row.Level.Name} level{(isOfBoth ? " (both trusses)" : row.Truss is null ? "" : $" ({row.Truss} truss)")}");

    private static string Lead(RatingRow row) => row.Factor is null ? Words.InTable(row.Status) : Words.Factor(row.Factor);

    /// <summary>A row opened down to what was given.</summary>
    internal static IEnumerable<ResultBlock> Told(RatingRow row, BridgeRating rating, DisplayUnits units) => row switch
    {
        MemberRow member => SlackTelling.Of([member], rating, units).Concat(RatingTelling.Of(member, rating, units)),
        PartRow part => PartTelling.Of(part, rating, units),
        _ => throw new ArgumentOutOfRangeException(nameof(row), row, "Every row is told."),
    };

    // A member that goes slack instead of pressing has no factor; the dead force and what a vehicle takes from it stand in the table all the same.
    private static IEnumerable<ResultBlock> Unrated(RatingRow row, BridgeRating rating, DisplayUnits units) => row is MemberRow { Status: RatingStatus.Slack } member
        ? [new ResultBlock.Items("The dead force, and what the vehicle takes from it:", [.. RatingTelling.Dead(member, rating, units), .. member.Impact is { } impact ? (string[])[$"IM = {SpanRater.Reports.Told.Number(impact, 3)}: {LiveTelling.Impact(member, rating, units)}"] : []]), .. LiveTelling.Of(member, rating, units)]
        : [];

    // The way from a factor to what the part is made of.
    private static IEnumerable<ReportPart> Made(RatingRow row, BridgeRating rating)
    {
        string? id = row switch
        {
            MemberRow member => MadeOf(rating, member.MemberIndex, row.Truss),
            _ => rating.Bridge.Floor?.Parts.ToList().FindIndex(p => p.Name == row.Name) is { } i and >= 0 && SectionSheet.Of(rating.Bridge.Floor.Parts[i], DisplayUnits.Si).Any() ? $"made-part-{i + 1}" : null,
        };
        return id is null ? [] : [new ReportPart.Way(ReportPart.Brief($"Section and material of {row.Name}"), id)];
    }

    private static IEnumerable<ReportPart> OfMembers(BridgeRating rating, OpenedRatings opened, DisplayUnits units)
    {
        ILookup<int, MemberCapacityRow> capacities = MemberCapacities.Of(rating.Bridge, rating.Method).Rows.ToLookup(r => r.MemberIndex);
        for (int m = 0; m < rating.Bridge.Truss.Members.Count; m++)
        {
            string name = rating.Bridge.Truss.Members[m].Name;
            int member = m;
            foreach ((string? truss, MemberMake make, string id) in OpenedRatings.MakesOf(rating.Bridge, m))
            {
                // What no vehicle loads, or not at its level, has no factor that opens its sheet: it stands here.
                MemberCapacityRow[] of = [.. capacities[m].Where(c => truss is null || c.Truss is null || c.Truss == truss)];
                MemberCapacityRow[] untold = [.. of.Where(c => c.Value is null || SheetOf(c, opened) is null).DistinctBy(c => (c.Sense, c.Level))];
                yield return new ReportPart.Fold(
                    id,
                    ReportPart.Brief($"{name}{(truss is null ? "" : $", {truss} truss")}: {make.Section.AsBuilt.Name}"),
                    [
                        new ReportPart.Said([.. SectionSheet.Of(make, name, truss, units), .. untold.SelectMany(c => CapacitySheet.Of(c, units)), .. of.DistinctBy(c => (c.Sense, c.Level)).SelectMany(c => CapacitySheet.AsBuilt(c, units))]),
                        .. Ways(opened, r => r is MemberRow row && row.MemberIndex == member && (truss is null || row.Truss is null || row.Truss == truss)),
                    ]);
            }
        }
    }

    private static IEnumerable<ReportPart> Ways(OpenedRatings opened, Func<RatingRow, bool> belongs) =>
        opened.All.Where(o => o.Rows.Any(belongs)).Select(o => new ReportPart.Way(Title(o.Shown, o.Rows.Count > 1), o.Id));
}
