namespace SpanRater;

/// <summary>
/// The rating of a bridge's truss members. Rows stand in the order in which they are read: what can govern from the
/// lowest factor up, then the other factors, then what is not rated, withheld, not loaded and slack.
/// </summary>
public sealed class BridgeRating
{
    private readonly bool othersRated;

    internal BridgeRating(
        Bridge bridge,
        RatingMethod method,
        IReadOnlyList<RatingRow> rows,
        IReadOnlyList<Stamp> stamps,
        ForceSolution components,
        ForceSolution? wearingSurface,
        InfluenceLines lines)
    {
        Bridge = bridge;
        Method = method;
        Stamps = stamps;
        Components = components;
        WearingSurface = wearingSurface;
        Lines = lines;
        Residual = Math.Max(lines.Residual, Math.Max(components.Residual, wearingSurface?.Residual ?? 0));

        othersRated = rows.Any(r => HasFactor(r) && r.Level.Governance == Governance.Governs);

        // Members that mirror each other differ in the last bits; rounded, they stand in the order of the members.
        Rows = [.. rows.OrderBy(Rank).ThenBy(r => Math.Round(r.Factor ?? 0, 9))];
        bool withheld = rows.Any(r => r.Status == RatingStatus.Withheld);
        Governing = withheld ? null : Rows.FirstOrDefault(MayGovern);
        GoverningInventory = withheld ? null : Rows.FirstOrDefault(r => HasFactor(r) && r.Level.Governance == Governance.Inventory);
    }

    /// <summary>The bridge.</summary>
    public Bridge Bridge { get; }

    /// <summary>The method.</summary>
    public RatingMethod Method { get; }

    /// <summary>Every row, in the order in which they are read.</summary>
    public IReadOnlyList<RatingRow> Rows { get; }

    /// <summary>What was assumed.</summary>
    public IReadOnlyList<Stamp> Stamps { get; }

    /// <summary>Forces under the components' dead load.</summary>
    public ForceSolution Components { get; }

    /// <summary>Forces under the wearing surface; null where there is none.</summary>
    public ForceSolution? WearingSurface { get; }

    /// <summary>The influence lines.</summary>
    public InfluenceLines Lines { get; }

    /// <summary>Largest residual of all solutions used [-].</summary>
    public double Residual { get; }

    /// <summary>The row that governs; null where nothing is rated.</summary>
    public RatingRow? Governing { get; }

    /// <summary>The lowest row at inventory level; null where there is none.</summary>
    public RatingRow? GoverningInventory { get; }

    /// <summary>Rows that are not rated.</summary>
    public IEnumerable<RatingRow> NotRated => Rows.Where(r => r.Status == RatingStatus.NotRated);

    /// <summary>The lowest row of each member that may govern, by member; null where none of its rows may.</summary>
    public IReadOnlyList<RatingRow?> LowestByMember() =>
        [.. Enumerable.Range(0, Bridge.Truss.Members.Count).Select(m => Rows.FirstOrDefault(r => r.MemberIndex == m && MayGovern(r)))];

    /// <summary>Whether a row takes part in naming what governs: it has a factor, at a level that counts.</summary>
    /// <param name="row">A row of this rating.</param>
    public bool MayGovern(RatingRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        return HasFactor(row)
            && (row.Level.Governance == Governance.Governs || (!othersRated && row.Level.Governance == Governance.GovernsForWantOfOthers));
    }

    private static bool HasFactor(RatingRow row) => row.Status is RatingStatus.Rated or RatingStatus.DeadExceeds;

    private int Rank(RatingRow row) => row.Status switch
    {
        _ when MayGovern(row) => 0,
        RatingStatus.Rated or RatingStatus.DeadExceeds => 1,
        RatingStatus.NotRated => 2,
        RatingStatus.Withheld => 3,
        RatingStatus.NotLoaded => 4,
        _ => 5,
    };
}
