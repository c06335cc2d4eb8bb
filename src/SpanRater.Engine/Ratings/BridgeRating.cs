namespace SpanRater;

/// <summary>
/// The rating of a bridge: of its truss members, floor and connections. Rows stand in the order in which they are read: what can govern from the
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
        IReadOnlyList<TrussCrossing> crossings)
    {
        Bridge = bridge;
        Method = method;
        Stamps = stamps;
        Crossings = crossings;
        Residual = crossings.Max(c => c.Residual);

        othersRated = rows.Any(r => HasFactor(r) && r.Level.Governance == Governance.Governs);

        // Members that mirror each other differ in the last bits; rounded, they stand in the order of the members.
        Rows = [.. rows.OrderBy(Rank).ThenBy(r => Math.Round(r.Factor ?? 0, 9)).ThenByDescending(r => r.Factor is 0 ? Math.Round(r.Shortfall, 3) : 0)];
        MemberRows = [.. Rows.OfType<MemberRow>()];
        PartRows = [.. Rows.OfType<PartRow>()];
        bool withheld = rows.Any(r => r.Status == RatingStatus.Withheld);
        Governing = withheld ? null : Rows.FirstOrDefault(MayGovern);
        GoverningMember = withheld ? null : MemberRows.FirstOrDefault(MayGovern);
        GoverningInventory = withheld ? null : Rows.FirstOrDefault(r => HasFactor(r) && r.Level.Governance == Governance.Inventory);
    }

    /// <summary>The bridge.</summary>
    public Bridge Bridge { get; }

    /// <summary>The method.</summary>
    public RatingMethod Method { get; }

    /// <summary>Every row, in the order in which they are read.</summary>
    public IReadOnlyList<RatingRow> Rows { get; }

    /// <summary>The rows of truss members, in their order.</summary>
    public IReadOnlyList<MemberRow> MemberRows { get; }

    /// <summary>The rows of the floor and of connections, in their order.</summary>
    public IReadOnlyList<PartRow> PartRows { get; }

    /// <summary>What was assumed.</summary>
    public IReadOnlyList<Stamp> Stamps { get; }

    /// <summary>The truss with its dead load on; where the trusses differ, the left one.</summary>
    public TrussCrossing Crossing => Crossings[0];

    /// <summary>Every truss with its dead load on: one where they are alike, else the left and the right.</summary>
    public IReadOnlyList<TrussCrossing> Crossings { get; }

    /// <summary>Largest residual of all solutions used, of both trusses [-].</summary>
    public double Residual { get; }

    /// <summary>The row that governs; null where nothing is rated, and while a vehicle is withheld.</summary>
    public RatingRow? Governing { get; }

    /// <summary>The row of a truss member that governs among truss members; null where none is rated, and while a vehicle is withheld.</summary>
    public MemberRow? GoverningMember { get; }

    /// <summary>The lowest row at inventory level; null where there is none.</summary>
    public RatingRow? GoverningInventory { get; }

    /// <summary>Rows that are not rated, or withheld.</summary>
    public IEnumerable<RatingRow> NotRated => Rows.Where(r => r.Status is RatingStatus.NotRated or RatingStatus.Withheld);

    /// <summary>What withholds ratings, by vehicle; empty where nothing does.</summary>
    public IEnumerable<(LiveLoad Vehicle, NotRatedReason.Uncarried Reason)> Withheld =>
        Rows.Where(r => r.Status == RatingStatus.Withheld).Select(r => (r.Vehicle, (NotRatedReason.Uncarried)r.Reason!)).DistinctBy(w => w.Vehicle);

    /// <summary>The lowest row of each member that may govern, by member; null where none of its rows may.</summary>
    public IReadOnlyList<MemberRow?> LowestByMember() =>
        [.. Enumerable.Range(0, Bridge.Truss.Members.Count).Select(m => MemberRows.FirstOrDefault(r => r.MemberIndex == m && MayGovern(r)))];

    /// <summary>The row of the same effect, vehicle and level with nothing beside the vehicle; null where the row itself is that.</summary>
    /// <param name="row">A row of this rating.</param>
    public RatingRow? Alone(RatingRow row)
    {
        ArgumentNullException.ThrowIfNull(row);
        return row.Beside is null ? null : Rows.FirstOrDefault(r => r.Beside is null && r.Vehicle == row.Vehicle && r.Level == row.Level && r.IsOfSameEffect(row));
    }

    /// <summary>The rating as it would be had one vehicle not been asked for. A legal type may stand beside emergency vehicles and is in their rows: it cannot be left out.</summary>
    /// <param name="vehicle">A vehicle of this rating.</param>
    /// <exception cref="ArgumentException">It is a legal type.</exception>
    public BridgeRating Without(LiveLoad vehicle)
    {
        ArgumentNullException.ThrowIfNull(vehicle);
        return vehicle.Class == VehicleClass.Legal
            ? throw new ArgumentException("Rows of emergency vehicles rest on legal types.", nameof(vehicle))
            : new BridgeRating(Bridge, Method, [.. Rows.Where(r => !ReferenceEquals(r.Vehicle, vehicle))], Stamps, Crossings);
    }

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
