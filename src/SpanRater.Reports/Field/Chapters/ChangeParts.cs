using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>The factor of each type with each change, opened: one working a change, what its cells share told once.</summary>
internal static class ChangeParts
{
    /// <summary>The row of the bridge as it is that rates what a row with a change rates; null where there is none.</summary>
    /// <param name="row">The row with the change.</param>
    /// <param name="present">The rating of the bridge as it is.</param>
    public static RatingRow? AsItIs(RatingRow row, BridgeRating present)
    {
        RatingRow[] same = [.. present.Rows.Where(r => r.Vehicle == row.Vehicle && r.Level.Name == row.Level.Name && r.IsOfSameEffect(row))];
        return same.FirstOrDefault(r => r.Beside is null == row.Beside is null) ?? same.FirstOrDefault();
    }

    /// <summary>The rows that the table shows with a change, but for its lowest, which is opened by itself.</summary>
    /// <param name="alternative">The change.</param>
    public static IEnumerable<RatingRow> Others(Alternative alternative) => alternative.Posting is not { } posting ? [] :
        Alternatives.Types(posting).Select(t => t.Lowest).OfType<RatingRow>().Where(r => !ReferenceEquals(r, alternative.Lowest));

    /// <summary>The working of a change.</summary>
    /// <param name="alternative">The change.</param>
    /// <param name="present">The rating of the bridge as it is.</param>
    /// <param name="opened">Anchors of what the report opens of the bridge as it is.</param>
    /// <param name="id">Its anchor.</param>
    /// <param name="units">The units to show.</param>
    public static ReportPart.Fold Of(Alternative alternative, BridgeRating present, IReadOnlyDictionary<RatingRow, string> opened, string id, DisplayUnits units)
    {
        BridgeRating rating = alternative.Posting!.Rating;
        ILookup<bool, Changed> rows = Others(alternative).Select(r => new Changed(r, AsItIs(r, present))).ToLookup(c => c.FollowsFromAsItIs);
        return new ReportPart.Fold(
            id,
            $"{AlternativeWording.Name(alternative.Kind)}: every other type",
            [
                .. rows[true].GroupBy(c => (c.Row.Part, RatingWording.NameAt(c.Row), c.Row.Truss, c.Row.ActsAs, c.Row.InSense, c.Row.Level.Name, (c.Row.Capacity, c.Row.DeadComponents, c.Row.DeadWearing), c.Row.Impact, c.Row.Vehicle.Class))
                    .SelectMany(g => Group([.. g], rating, opened, units)),
                .. rows[false].SelectMany(c => Whole(c.Row, rating, units)),
            ]);
    }

    // What does not follow from the working of the bridge as it is is told in full.
    private static IEnumerable<ReportPart> Whole(RatingRow row, BridgeRating rating, DisplayUnits units) =>
        [new ReportPart.Said([new ResultBlock.Heading(CapacityChapters.Title(row, isOfBoth: false)), .. CapacityChapters.Told(row, rating, units)])];

    private static IEnumerable<ReportPart> Group(Changed[] group, BridgeRating rating, IReadOnlyDictionary<RatingRow, string> opened, DisplayUnits units)
    {
        RatingRow row = group[0].Row;
        bool beside = group.Any(c => c.Row.Beside is not null);
        string unit = units.Symbol(QuantityOf(row));
        double sign = row.InSense == Sense.Compression && row is MemberRow ? -1 : 1;
        string top = $"{Figure(row.Capacity!.Value, row, units)} − {Told.Factor(row.ComponentsFactor)}·{Figure(sign * row.DeadComponents, row, units)} − {Told.Factor(row.WearingFactor)}·{Figure(sign * row.DeadWearing, row, units)}";
        double room = row.Capacity.Value - row.FactoredDead;
        yield return new ReportPart.Said(
        [
            new ResultBlock.Heading($"{RatingWording.NameAt(row)} in {RatingWording.ActsIn(row)}{(row.Truss is null ? "" : $", {row.Truss} truss")}, {row.Level.Name} level", 3),
            SheetUnits.Step($"C − γDC·DC − γDW·DW = {top} = {Figure(room, row, units)} {unit}"),
            new ResultBlock.Paragraph($"γLL = {Told.Factor(row.Level.LiveFactor!.Value)}; IM = {Told.Number(row.Impact!.Value, 3)}, {ImpactOf(row, rating, units)}. RF = {(beside ? $"({Figure(room, row, units)} − γN·N·(1 + IM))" : Figure(room, row, units))} / (γLL·LL·(1 + IM)), LL{(beside ? " and N each" : "")} what the whole vehicle brings times what of it acts here{(row is MemberRow { Sense: Sense.Compression } ? "; in \"LL from\" compression is negative" : "")}:"),
        ]);
        var table = new ResultTable(
            [
                new("type"), .. beside ? [new ResultColumn("in the next lane")] : Array.Empty<ResultColumn>(), .. beside ? [new ResultColumn("γN·N·(1 + IM)", QuantityOf(row), 3)] : Array.Empty<ResultColumn>(),
                new("LL from"), new("LL", QuantityOf(row), 3), new("γLL·LL·(1 + IM)", QuantityOf(row), 3), new("RF"),
            ],
            [.. group.Select(c => Cells(c.Row, beside, units))]);
        int from = beside ? 3 : 1;
        yield return new ReportPart.Opening(table, null, group.Select((c, r) => (r, Id: opened.GetValueOrDefault(c.AsItIs!))).Where(c => c.Id is not null).ToDictionary(c => (c.r, from), c => c.Id!));
        yield return new ReportPart.Said([new ResultBlock.Paragraph($"C and the dead load, and the axles that bring the whole: as in the working of the bridge as it is, where \"LL from\" leads{(room - group[0].AsItIs!.Capacity!.Value + group[0].AsItIs!.FactoredDead > 1e-6 * row.Capacity.Value ? ", but for DW, which is gone" : "")}.{(group.Any(c => c.HasOtherShare) ? " What of it acts here is another with this change:" : "")}")]);
        foreach (Changed changed in group.Where(c => c.HasOtherShare).DistinctBy(c => ShareOf(c.Row)))
        {
            yield return new ReportPart.Said([.. Share(changed.Row, rating, units)]);
        }
    }

    private static IReadOnlyList<object?> Cells(RatingRow row, bool beside, DisplayUnits units)
    {
        string lane = row.Beside is not { } n ? "" : $"{n.Vehicle.Name}: {Told.Factor(n.LiveFactor)}·{Told.Number(units.From(WholeOf(row), Math.Abs(n.Part.Part.Force)), 3)}·{Told.Number(row.ActsAs == PartEffect.Moment ? units.From(Quantity.Length, n.Part.Share) : n.Part.Share)}·(1 + {Told.Number(n.Part.Impact.Value, 3)})";
        string how = row switch
        {
            MemberRow { Effect: { } effect } => LiveTelling.How(effect, units),
            PartRow part => PartLiveTelling.How(part, units),
            _ => "",
        };
        return
        [
            row.Vehicle.Name, .. beside ? [lane, row.Beside?.Factored] : Array.Empty<object?>(),
            how, Math.Abs(row.Live!.Value), row.Level.LiveFactor!.Value * Math.Abs(row.Live.Value) * (1 + row.Impact!.Value), PostingWording.Factor(row.Factor),
        ];
    }

    private static Quantity WholeOf(RatingRow row) => row is MemberRow || row.ActsAs == PartEffect.Moment ? Quantity.Force : QuantityOf(row);

    private static IEnumerable<ResultBlock> Share(RatingRow row, BridgeRating rating, DisplayUnits units)
    {
        if (row is MemberRow { Effect: { } effect })
        {
            return effect.Parts.Select(p => p.Lateral).OfType<LateralShare>().Distinct().SelectMany(l => LiveTelling.Lateral(l, rating.Bridge.Deck, "vehicle", units));
        }

        return ((PartRow)row).LiveParts.SelectMany(part => part switch
        {
            PartLive.OnFloorbeam beam => AcrossTelling.Of(beam.Placement, (PartRow)row, rating.Bridge.Deck.TrussSpacing!.Value, units),
            PartLive.OnTrussed trussed => TrussedAcrossTelling.Of(trussed, (PartRow)row, rating, units),
            PartLive.AtEnd { Shared.Lateral: { } lateral } => LiveTelling.Lateral(lateral, rating.Bridge.Deck, "vehicle", units),
            PartLive.InTruss { Shared.Lateral: { } lateral } => LiveTelling.Lateral(lateral, rating.Bridge.Deck, "vehicle", units),
            PartLive.OnStringer { IsLane: false } stringer => [new ResultBlock.Paragraph(PartLiveTelling.Take(stringer, (PartRow)row, rating.Bridge.Floor!.Stringers.First(s => s.Name == row.Name), units))],
            PartLive.OnPlank plank => [new ResultBlock.Paragraph($"Presence factor {Told.Number(plank.Presence, 2)}.")],
            _ => [],
        });
    }

    private static string ImpactOf(RatingRow row, BridgeRating rating, DisplayUnits units) => row switch
    {
        MemberRow member => LiveTelling.Impact(member, rating, units),
        PartRow { LiveParts: [var first, ..] } => ImpactTelling.Of(first.Impact.Reason, row, rating, row.LoadedLength, units),
        _ => "none",
    };

    private static Quantity QuantityOf(RatingRow row) => row is PartRow ? PartWords.QuantityOf(row.ActsAs) : Quantity.Force;

    private static string ShareOf(RatingRow row) => string.Join(' ', Shares(row).Select(s => s.ToString("R", CultureInfo.InvariantCulture)));

    private static double[] Shares(RatingRow row) =>
    [
        .. row switch
        {
            MemberRow { Effect: { } effect } => effect.Parts.Select(p => p.Share),
            PartRow part => part.LiveParts.Select(p => p.Across),
            _ => [],
        },
        .. row.Beside is { } beside ? (double[])[beside.Part.Share] : [],
    ];

    private static double[] Wholes(RatingRow row) =>
    [
        .. row switch
        {
            MemberRow { Effect: { } effect } => effect.Parts.Select(p => p.Part.Force),
            PartRow part => part.LiveParts.Select(p => p.Along),
            _ => [],
        },
        .. row.Beside is { } beside ? (double[])[beside.Part.Part.Force] : [],
    ];

    private static string Figure(double value, RatingRow row, DisplayUnits units) => ResultTable.Figure(units.From(QuantityOf(row), value), 3).Replace('-', '−');

    // A row with a change, and that of the bridge as it is.
    private sealed record Changed(RatingRow Row, RatingRow? AsItIs)
    {
        public bool HasOtherShare => !IsNear(Shares(Row), Shares(AsItIs!));

        // Capacity, components and whole vehicle are those of the bridge as it is; what stands beside may be gone.
        public bool FollowsFromAsItIs =>
            Row is { Status: RatingStatus.Rated, Capacity: { } capacity, Live: not null, Impact: not null, Level.LiveFactor: not null } and not MemberRow { Reached: not null } and not MemberRow { Effect: null } and not PartRow { LighterWheel: not null }
            && AsItIs is { Capacity: { } before } && IsNear([capacity, Row.DeadComponents], [before, AsItIs.DeadComponents]) && RatingWording.NameAt(Row) == RatingWording.NameAt(AsItIs)
            && IsNear(Wholes(Row with { Beside = AsItIs.Beside is null ? null : Row.Beside }), Wholes(AsItIs with { Beside = Row.Beside is null ? null : AsItIs.Beside }));

        private static bool IsNear(double[] one, double[] other) => one.Length == other.Length && one.Zip(other).All(p => Math.Abs(p.First - p.Second) <= 1e-9 * Math.Max(1e-9, Math.Abs(p.Second)));
    }
}
