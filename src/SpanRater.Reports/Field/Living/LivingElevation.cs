namespace SpanRater.Reports;

/// <summary>
/// The facts that the page rolls vehicles with: lines, dead forces, and for each vehicle what the engine found of shares, levels, rooms and impact. The page takes
/// peaks, factors and posting from these and finds nothing else. SI; forces tension positive.
/// </summary>
public sealed class LivingElevation
{
    private LivingElevation(BridgeRating rating)
    {
        Rating = rating;
        Trusses = [.. rating.MemberRows.Select(r => r.Truss).Where(t => t is not null).Distinct().Order(StringComparer.Ordinal)];
        if (Trusses.Count == 0)
        {
            Trusses = [null];
        }

        LiveLoad[] loads = [.. rating.MemberRows.Select(r => r.Vehicle).Distinct()];
        Vehicles = [.. loads.OfType<Vehicle>().Where(v => v.LaneLoading is null).Select(v => new LivingVehicle(v, rating, Trusses))];
        NotRolled = [.. loads.Where(l => l is not SpanRater.Vehicle { LaneLoading: null }).Select(l => l.Name)];
    }

    /// <summary>The rating.</summary>
    public BridgeRating Rating { get; }

    /// <summary>Names of the trusses that are told apart; one null where they are alike.</summary>
    public IReadOnlyList<string?> Trusses { get; }

    /// <summary>The vehicles that can be rolled: axles, and nothing that acts with them.</summary>
    public IReadOnlyList<LivingVehicle> Vehicles { get; }

    /// <summary>Names of what is rated and cannot be rolled here: lane loads, crowds, tracks, rows of vehicles.</summary>
    public IReadOnlyList<string> NotRolled { get; }

    /// <summary>The facts of a rating; null where it has no vehicle on axles.</summary>
    /// <param name="rating">The rating.</param>
    public static LivingElevation? Of(BridgeRating rating)
    {
        ArgumentNullException.ThrowIfNull(rating);
        var living = new LivingElevation(rating);
        return living.Vehicles.Count == 0 ? null : living;
    }

    /// <summary>Dead force of a member of one truss, unfactored [N]; with rods that only pull, under the set that pulls there.</summary>
    /// <param name="truss">Place in <see cref="Trusses"/>.</param>
    /// <param name="member">The member.</param>
    public double DeadOf(int truss, int member) =>
        Rating.MemberRows.First(r => r.MemberIndex == member && (r.Truss ?? Trusses[truss]) == Trusses[truss]) is var row ? row.DeadComponents + row.DeadWearing : 0;
}

/// <summary>What the page needs of one vehicle.</summary>
public sealed class LivingVehicle
{
    private readonly MemberRow[] rows;
    private readonly IReadOnlyList<string?> trusses;

    internal LivingVehicle(Vehicle vehicle, BridgeRating rating, IReadOnlyList<string?> trusses)
    {
        Vehicle = vehicle;
        this.trusses = trusses;
        rows = [.. rating.MemberRows.Where(r => r.Vehicle == vehicle && r.Beside is null)];
        Levels = [.. rating.Method.LevelsOf(vehicle.Class, rating.Bridge.Rating)];
        Reason = rows.Select(r => r.Reason).FirstOrDefault(r => r is not null and not (NotRatedReason.NoCapacity or NotRatedReason.PartLacks));
        Lowest = rating.Rows.FirstOrDefault(r => r.Vehicle == vehicle && rating.MayGovern(r));
        LowestMember = rating.MemberRows.FirstOrDefault(r => r.Vehicle == vehicle && r.Beside is null && rating.MayGovern(r));
        Posting = rating.Method.HasPosting && vehicle.Class is VehicleClass.Legal or VehicleClass.Emergency
            ? vehicle.Class == VehicleClass.Legal ? rating.Method.LegalPosting : PostingRule.FactorTimesWeight
            : null;
    }

    /// <summary>The vehicle.</summary>
    public Vehicle Vehicle { get; }

    /// <summary>Its levels, in the order of the method.</summary>
    public IReadOnlyList<RatingLevel> Levels { get; }

    /// <summary>The lowest row of the bridge under it that may govern, with whatever is beside it; null where there is none.</summary>
    public RatingRow? Lowest { get; }

    /// <summary>The lowest row of a truss member under it alone; null where there is none.</summary>
    public MemberRow? LowestMember { get; }

    /// <summary>Why it is not rated; null where it is.</summary>
    public NotRatedReason? Reason { get; }

    /// <summary>How its safe load follows from its factor; null of a class that is not posted.</summary>
    public PostingRule? Posting { get; }

    /// <summary>Share of one vehicle that a truss carries, presence in it; null where no row has one.</summary>
    /// <param name="truss">Place of the truss.</param>
    public double? ShareOf(int truss) => OfTruss(truss).FirstOrDefault(r => r.Share is not null)?.Share!.Value;

    /// <summary>The row of a member; null where there is none.</summary>
    /// <param name="truss">Place of the truss.</param>
    /// <param name="level">Place of the level.</param>
    /// <param name="member">The member.</param>
    /// <param name="sense">The sense.</param>
    public MemberRow? RowOf(int truss, int level, int member, Sense sense) =>
        OfTruss(truss).FirstOrDefault(r => r.MemberIndex == member && r.Sense == sense && r.Level.Name == Levels[level].Name);

    /// <summary>
    /// Dynamic allowance on a member whatever the axles are [-]; null where it depends on them: a formula takes the length of the stretch
    /// that holds the vehicle, and the line has several in this sense, or the vehicle brings nothing there.
    /// </summary>
    /// <param name="member">The member.</param>
    /// <param name="sense">The sense.</param>
    /// <param name="rating">The rating.</param>
    public double? ImpactOf(int member, Sense sense, BridgeRating rating)
    {
        ArgumentNullException.ThrowIfNull(rating);
        MemberRow? row = rows.FirstOrDefault(r => r.MemberIndex == member && r.Sense == sense && r.Impact is not null);
        bool byLength = row?.Effect?.Parts[0].Impact.Reason == ImpactReason.OfMethod && rating.Method.Impact(1) != rating.Method.Impact(100);
        return byLength && rating.Crossing.Lines.Members[member].Line.Regions(sense).Count > 1 ? null : row?.Impact;
    }

    private IEnumerable<MemberRow> OfTruss(int truss) => rows.Where(r => (r.Truss ?? trusses[truss]) == trusses[truss]);
}
