using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>A rating that the report opens.</summary>
/// <param name="Shown">The row that is told.</param>
/// <param name="Rows">The rows of the rating that it is told for: one, or those of both trusses.</param>
/// <param name="Id">Its anchor.</param>
internal sealed record OpenedRating(RatingRow Shown, IReadOnlyList<RatingRow> Rows, string Id);

/// <summary>The ratings that the report opens: every row of its rating tables and of what is posted and measured, those of both trusses together where they have the same numbers.</summary>
internal sealed class OpenedRatings
{
    /// <summary>The ratings that a report opens.</summary>
    /// <param name="rating">The rating.</param>
    /// <param name="named">Rows that other tables of the report name; they are opened as well.</param>
    public OpenedRatings(BridgeRating rating, IEnumerable<RatingRow> named)
    {
        All = [.. Opened(rating, named).Select((o, i) => new OpenedRating(o.Shown, o.Rows, $"factor-{i + 1}"))];
        Anchors = All.SelectMany(o => o.Rows.Select(row => (row, o.Id))).ToDictionary(r => r.row, r => r.Id, (IEqualityComparer<RatingRow>)ReferenceEqualityComparer.Instance);
    }

    /// <summary>All of them, in the order of the rating tables, then of those that name them.</summary>
    public IReadOnlyList<OpenedRating> All { get; }

    /// <summary>Their anchors, by the row itself.</summary>
    public IReadOnlyDictionary<RatingRow, string> Anchors { get; }

    /// <summary>What a member is made of: of both trusses together where the same was seen on them, else of each; nothing where it is not given.</summary>
    public static (string? Truss, MemberMake Make, string Id)[] MakesOf(Bridge bridge, int member)
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

    private static IEnumerable<(RatingRow Shown, IReadOnlyList<RatingRow> Rows)> Opened(BridgeRating rating, IEnumerable<RatingRow> named)
    {
        var done = new HashSet<RatingRow>(ReferenceEqualityComparer.Instance);
        RatingRow[] rows = [.. RatingPage.RowsShown(rating), .. named];
        ILookup<(string, Sense?), MemberRow> alike = rows.OfType<MemberRow>().ToLookup(r => (r.Name, r.InSense));
        foreach (RatingRow row in rows.Where(done.Add))
        {
            RatingRow[] same = row is MemberRow { Truss: not null } member
                ? [.. alike[(row.Name, row.InSense)].Where(o => o.Truss != row.Truss && IsSame(member, o, rating.Bridge)).Where(done.Add)]
                : [];
            yield return same.Length == 0 ? (row, [row]) : (row with { Truss = null }, [row, .. same]);
        }
    }

    private static bool IsSame(MemberRow one, MemberRow other, Bridge bridge) =>
        Numbers(one).SequenceEqual(Numbers(other)) && one.Vehicle == other.Vehicle && one.Beside?.Vehicle == other.Beside?.Vehicle && one.Level == other.Level && one.Status == other.Status
        && one.FirstSlack is null && other.FirstSlack is null && MakesOf(bridge, one.MemberIndex).Length < 2;

    private static double?[] Numbers(MemberRow row) =>
    [
        row.Factor, row.Capacity, row.DeadComponents, row.DeadWearing, row.ComponentsFactor, row.WearingFactor, row.Live, row.Impact, row.LoadedLength, row.Share?.Value, row.Share?.WheelToKerb,
        row.Peak?.Station, row.Beside?.Factored, row.Beside?.Part.Share,
    ];
}
