using System.Globalization;

namespace SpanRater.Files;

/// <summary>The tables of a rating.</summary>
internal static class RatingTables
{
    public static readonly ResultColumn[] Columns =
    [
        new("truss"), new("part"), new("member"), new("vehicle"), new("beside"), new("level"), new("effect"), new("sense"), new("mode"), new("status"),
        new("capacity", Quantity.Force), new("dead components", Quantity.Force), new("dead wearing", Quantity.Force), new("live", Quantity.Force),
        new("impact", Quantity.Number, 3), new("factor", Quantity.Number), new("DC factor", Quantity.Number), new("DW factor", Quantity.Number),
        new("live factor", Quantity.Number), new("share", Quantity.Number), new("loaded length", Quantity.Length), new("reason"),
        new("moment capacity", Quantity.Moment), new("dead components moment", Quantity.Moment), new("dead wearing moment", Quantity.Moment), new("live moment", Quantity.Moment),
        new("at"), new("place"),
    ];

    /// <summary>The lowest row of each part and effect. A vehicle that is not rated at all stands in the list above, and says nothing about a member.</summary>
    public static RatingRow[] LowestOfEach(BridgeRating rating) =>
        [.. rating.Rows.Where(r => !r.IsAboutItsVehicle).DistinctBy(r => (r.Part, r.Name, r.ActsAs, r.InSense, r.Truss))];

    /// <summary>The lowest factor of each vehicle at each level.</summary>
    public static ResultTable ByVehicle(BridgeRating rating)
    {
        bool whole = rating.PartRows.Count > 0;
        (RatingRow Row, LateralShare? Share)[] shown =
        [
            .. rating.Rows.GroupBy(r => (r.Vehicle, r.Level.Name))

                // Of a load that is withheld or not rated on the trusses no part of the floor gives the lowest factor.
                .Select(g => (g.FirstOrDefault(r => r.IsAboutItsVehicle && r.Status != RatingStatus.DeadExceeds) ?? g.First(), g.FirstOrDefault(r => r.Share is not null)?.Share)),
        ];
        return new ResultTable(
            [new("vehicle"), new("class"), new("level"), new("weight", Quantity.Force), new("lanes"), new("share with presence", Quantity.Number, 3), new("lowest factor"), new(whole ? "part" : "member"), new(whole ? "in" : "sense"), new("RF × weight [US ton]")],
            [.. shown.Select(s => VehicleRow(s.Row, s.Share))])
        { Shows = [.. shown.Select(s => s.Row)] };
    }

    private static IReadOnlyList<object?> VehicleRow(RatingRow r, LateralShare? share) =>
    [
        RatingWording.Under(r),
        VehicleClassNames.Name(r.Vehicle.Class),
        r.Level.Name,
        SafeLoad.WeightOf(r.Vehicle),
        share is null ? "" : share.Lanes == 0 ? "given" : share.Lanes.ToString(CultureInfo.InvariantCulture),
        share?.Value,
        r.Factor is null ? Words.InTable(r.Status) : Words.Factor(r.Factor),
        r.Factor is null ? "" : RatingWording.NameAt(r),
        r.Factor is null ? "" : RatingWording.ActsIn(r),
        PostingWording.TenthsOfTons(SafeLoad.EquivalentLoad(r)),
    ];

    /// <summary>Rows as people read them. Where moments stand among forces every row names its unit.</summary>
    public static ResultTable Of(IEnumerable<RatingRow> rows, DisplayUnits units)
    {
        RatingRow[] shown = [.. rows];
        bool apart = shown.Any(r => r.Truss is not null), modes = shown.Any(r => RatingWording.Mode(r) is not null), whole = shown.Any(r => r is PartRow);
        Quantity measure = whole ? Quantity.Number : Quantity.Force;
        return new ResultTable(
            [
                .. apart ? [new ResultColumn("truss")] : Array.Empty<ResultColumn>(),
                new("factor"), new(whole ? "part" : "member"), new(whole ? "in" : "sense"), new("vehicle"), new("level"), new("capacity", measure), new("DC", measure),
                new("DW", measure), new("live", measure), .. whole ? [new ResultColumn("unit")] : Array.Empty<ResultColumn>(), new("impact", Quantity.Number, 3),
                .. modes ? [new ResultColumn("by")] : Array.Empty<ResultColumn>(), new(whole ? "kind" : "role"),
            ],
            [.. shown.Select(r => Row(r, units, apart, modes, whole))])
        { Shows = shown };
    }

    private static IReadOnlyList<object?> Row(RatingRow r, DisplayUnits units, bool apart, bool modes, bool whole)
    {
        Quantity quantity = PartWords.QuantityOf(r.ActsAs);
        double? Shown(double? si) => si is { } value && whole ? units.From(quantity, value) : si;
        return
        [
            .. apart ? [r.Truss ?? ""] : Array.Empty<object?>(),
            r.Factor is null ? Words.InTable(r.Status) : Words.Factor(r.Factor),
            RatingWording.NameAt(r),
            RatingWording.ActsIn(r),
            RatingWording.Under(r),
            r.Level.Name,
            Shown(r.Capacity),
            Shown(r.DeadComponents),
            Shown(r.DeadWearing),
            Shown(r.Live),
            .. whole ? [units.Symbol(quantity)] : Array.Empty<object?>(),
            r.Impact,
            .. modes ? [r.Factor is null ? "" : RatingWording.HeldBy(r) ?? "given"] : Array.Empty<object?>(),
            r is MemberRow { Member.Role: { Length: > 0 } role } ? role : whole ? PartWords.Of(r.Part) : "",
        ];
    }

    /// <summary>A row as files have it: forces and moments each in columns of their own.</summary>
    public static IReadOnlyList<object?> CsvRow(RatingRow r, DisplayUnits units)
    {
        bool isMoment = r.ActsAs == PartEffect.Moment;
        double?[] values = [r.Capacity, r.DeadComponents, r.DeadWearing, r.Live];
        IEnumerable<object?> forces = values.Select(v => isMoment ? null : (object?)v), moments = values.Select(v => isMoment ? (object?)v : null);
        return
        [
            r.Truss ?? "", PartWords.Of(r.Part), r.Name, r.Vehicle.Name, r.Beside?.Vehicle.Name ?? "", r.Level.Name, PartWords.Of(r.ActsAs), RatingWording.SenseOf(r) ?? "", RatingWording.Mode(r) ?? "", Words.Of(r.Status),
            .. forces, r.Impact, r.Factor, r.ComponentsFactor, r.WearingFactor,
            r.Level.LiveFactor, r.Share?.Value, r.LoadedLength, r.Reason is null ? RatingWording.Cap(r) ?? "" : RatingWording.Of(r.Reason, units),
            .. moments, (r as PartRow)?.At ?? "", RatingWording.Place(r) ?? "",
        ];
    }
}
