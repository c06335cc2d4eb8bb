namespace SpanRater;

/// <summary>
/// What would help a bridge: it is rated again for the same vehicles with one thing changed at a time, and with all changes at
/// once. What stands first gains most.
/// </summary>
public sealed class Alternatives
{
    private readonly IReadOnlyList<LiveLoad> vehicles;
    private readonly LiveLoad[] compared;
    private readonly CancellationToken stop;

    private Alternatives(Posting present, IReadOnlyList<LiveLoad> vehicles, CancellationToken stop)
    {
        this.stop = stop;
        Present = present;
        this.vehicles = vehicles;
        compared = [.. Types(present).Where(r => r.Lowest is not null).Select(r => r.Vehicle)];
        Lowest = LowestOf(present);

        var notOffered = new List<(AlternativeKind Kind, NotOfferedReason Reason)>();
        var kinds = new List<AlternativeKind>();
        foreach (AlternativeKind kind in Enum.GetValues<AlternativeKind>().Where(k => k != AlternativeKind.AllTogether))
        {
            if (WhyNot(kind) is { } reason)
            {
                notOffered.Add((kind, reason));
            }
            else
            {
                kinds.Add(kind);
            }
        }

        NotOffered = notOffered;
        Offered = [.. kinds.Select(k => With(k, [k])).OrderByDescending(a => Math.Round(a.Lowest?.Factor ?? -1, 9)).ThenBy(a => Math.Round(a.Lowest?.Shortfall ?? 0, 3))];
        AllTogether = kinds.Count > 1 ? With(AlternativeKind.AllTogether, kinds) : null;
    }

    /// <summary>The posting of the bridge as it is.</summary>
    public Posting Present { get; }

    /// <summary>The lowest row of the bridge as it is, over its legal types and emergency vehicles; null where none has a factor.</summary>
    public RatingRow? Lowest { get; }

    /// <summary>One change each, the one that gains most first.</summary>
    public IReadOnlyList<Alternative> Offered { get; }

    /// <summary>All changes at once; null where fewer than two are offered.</summary>
    public Alternative? AllTogether { get; }

    /// <summary>What is not offered, and why.</summary>
    public IReadOnlyList<(AlternativeKind Kind, NotOfferedReason Reason)> NotOffered { get; }

    /// <summary>Every alternative, all changes at once the last.</summary>
    public IEnumerable<Alternative> All => AllTogether is null ? Offered : Offered.Append(AllTogether);

    /// <summary>The alternatives to a posting; null where no legal type and no emergency vehicle was asked for.</summary>
    /// <param name="present">The posting.</param>
    /// <param name="vehicles">The vehicles that were asked for, all of them.</param>
    /// <param name="stop">Ends the work between two vehicles.</param>
    /// <exception cref="OperationCanceledException">It was told to stop.</exception>
    public static Alternatives? Of(Posting present, IReadOnlyList<LiveLoad> vehicles, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(present);
        ArgumentNullException.ThrowIfNull(vehicles);
        return Types(present).Any() ? new Alternatives(present, vehicles, stop) : null;
    }

    /// <summary>Legal types and emergency vehicles of a posting.</summary>
    /// <param name="posting">The posting.</param>
    public static IEnumerable<PostingRow> Types(Posting posting)
    {
        ArgumentNullException.ThrowIfNull(posting);
        return posting.Legal.Concat(posting.Emergency);
    }

    /// <summary>The bridge with one change, or with several.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="changes">The changes.</param>
    /// <param name="repaired">A row of what <see cref="AlternativeKind.AsBuilt"/> repairs, a member, a part of the floor or a connection; asked for by that change alone.</param>
    public static Bridge Changed(Bridge bridge, IEnumerable<AlternativeKind> changes, RatingRow? repaired = null)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(changes);
        return changes.Aggregate(bridge, (b, change) => change switch
        {
            AlternativeKind.OneLane => b with { Deck = b.Deck with { MostLanes = 1 } },
            AlternativeKind.HeldToMiddle => b with { Deck = b.Deck with { VehiclesHeldToMiddle = true } },
            AlternativeKind.CrawlSpeed => b with { Rating = b.Rating with { Impact = null, CrawlSpeed = "what if" } },
            AlternativeKind.OverlayOff => b with { Cases = WithoutSurface(b.Cases)!, RightCases = WithoutSurface(b.RightCases), Floor = b.Floor is { } floor ? floor with { WearingSurface = 0 } : null },
            AlternativeKind.AsBuilt when repaired is MemberRow row => b with { Makes = Repaired(b.Makes, row.MemberIndex)!, RightMakes = Repaired(b.RightMakes, row.MemberIndex) },
            AlternativeKind.AsBuilt when repaired is PartRow row && FloorPartOf(b, row) is not null => b with { Floor = Repaired(b.Floor!, row) },
            AlternativeKind.AsBuilt when repaired is PartRow row && ConnectionOf(b, row) is not null => b with { Connections = [.. b.Connections.Select(c => c.Name == row.Name ? c.AsBuilt : c)] },
            _ => throw new ArgumentOutOfRangeException(nameof(changes), change, "One change at a time, and of a repair the member."),
        });
    }

    private static IReadOnlyList<LoadCase>? WithoutSurface(IReadOnlyList<LoadCase>? cases) =>
        cases is null ? null : [.. cases.Where(c => c.Name != Bridge.WearingSurfaceCase)];

    private static IReadOnlyList<MemberMake?>? Repaired(IReadOnlyList<MemberMake?>? makes, int member) =>
        makes is null ? null : [.. makes.Select((make, m) => m == member ? make?.AsBuilt : make)];

    private static Floor Repaired(Floor floor, PartRow row) => floor with { Parts = [.. floor.Parts.Select(p => p.Name == row.Name ? p.AsBuilt : p)] };

    private static FloorPart? FloorPartOf(Bridge bridge, PartRow row) => bridge.Floor?.Parts.FirstOrDefault(p => p.Kind == row.Kind && p.Name == row.Name);

    private static Connection? ConnectionOf(Bridge bridge, PartRow row) => bridge.Connections.FirstOrDefault(c => c.Kind == row.Kind && c.Name == row.Name);

    // Given capacities, and what was seen without loss, leave a repair nothing to give back.
    private bool TakesAway(RatingRow row)
    {
        BridgeRating rating = Present.Rating;
        Condition? condition = rating.Bridge.Rating.Condition;
        if (row is PartRow { Resistance: ConnectionResistance worn } connected)
        {
            // Every mode but the shear of fasteners grows with the size that is left.
            return worn.Governing.Mode != ConnectionMode.FastenerShear && ConnectionOf(rating.Bridge, connected) is { Size.IsLess: true };
        }

        return row.Capacity is { } found && rating.Method.StrengthsAt(row.Level) is { } rules && (row switch
        {
            MemberRow { Resistance: { } member } of => MemberCapacity.Of(member.Make.AsBuilt, of.Sense, rules, condition).Resistance?.Value,
            PartRow of when FloorPartOf(rating.Bridge, of) is { } part => FloorCapacity.Of(part.AsBuilt, of.ActsAs, rating.Method, of.Level, condition).Resistance?.Value,
            _ => null,
        }) > found * (1 + 1e-9);
    }

    private NotOfferedReason? WhyNot(AlternativeKind kind)
    {
        Bridge bridge = Present.Rating.Bridge;
        RatingRow[] rows = [.. Present.Rows.Where(r => r.Live is not null)];
        switch (kind)
        {
            case AlternativeKind.OneLane or AlternativeKind.HeldToMiddle:
                return bridge.Deck.TrussShare is not null ? NotOfferedReason.GivenShare
                    : !rows.Any(r => r.Share is { Lanes: > 0 }) ? NotOfferedReason.NoPlaceAcross
                    : kind == AlternativeKind.OneLane && !rows.Any(r => r.Share is { Lanes: > 1 } || r.Beside is not null) ? NotOfferedReason.OneLaneAlready
                    : null;
            case AlternativeKind.CrawlSpeed:
                return rows.Any(r => r.Impact > 0) ? null : NotOfferedReason.NoImpact;
            case AlternativeKind.AsBuilt:
                return Lowest is { } lowest && TakesAway(lowest) ? null : NotOfferedReason.NothingLost;
            default:
                return bridge.FindCase(Bridge.WearingSurfaceCase) is null && bridge.RightCases?.Any(c => c.Name == Bridge.WearingSurfaceCase) is not true
                    ? NotOfferedReason.NoWearingSurface
                    : null;
        }
    }

    private Alternative With(AlternativeKind kind, IReadOnlyList<AlternativeKind> parts)
    {
        RatingRow? repaired = parts.Contains(AlternativeKind.AsBuilt) ? Lowest : null;
        var alternative = new Alternative { Kind = kind, Parts = parts, Repaired = repaired?.Name };
        if (!BridgeRater.Rate(Changed(Present.Rating.Bridge, parts, repaired), Present.Rating.Method, vehicles, stop).TryGet(out BridgeRating? rating, out Refusal? refusal))
        {
            return alternative with { Refusal = refusal };
        }

        var posting = Posting.Of(rating, Present.AtInventory);
        RatingRow? lowest = LowestOf(posting);
        return alternative with { Posting = posting, Lowest = lowest, Gain = Math.Round(lowest?.Factor - Lowest?.Factor ?? double.NaN, 12) is var gain && double.IsNaN(gain) ? null : gain };
    }

    // Over the same types on both sides: one that is rated on one side alone would make the two lowest factors answer different questions.
    private RatingRow? LowestOf(Posting posting)
    {
        PostingRow[] types = [.. Types(posting).Where(r => compared.Length == 0 || compared.Contains(r.Vehicle))];
        return compared.Length > 0 && types.Any(r => r.Lowest is null)
            ? null
            : types.Where(r => r.Lowest is not null).Select(r => r.Lowest!).OrderBy(r => Math.Round(r.Factor!.Value, 9)).ThenByDescending(r => Math.Round(r.Shortfall, 3)).FirstOrDefault();
    }
}
