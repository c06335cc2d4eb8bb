using System.Globalization;
using System.Text.Json;

namespace SpanRater.Files;

/// <summary>What <c>rate</c> says: what governs, what is not rated, and the factor of every member, vehicle, level and sense.</summary>
public static class RatingPage
{
    private static readonly ResultColumn[] Columns =
    [
        new("truss"), new("part"), new("member"), new("vehicle"), new("beside"), new("level"), new("effect"), new("sense"), new("mode"), new("status"),
        new("capacity", Quantity.Force), new("dead components", Quantity.Force), new("dead wearing", Quantity.Force), new("live", Quantity.Force),
        new("impact", Quantity.Number, 3), new("factor", Quantity.Number), new("DC factor", Quantity.Number), new("DW factor", Quantity.Number),
        new("live factor", Quantity.Number), new("share", Quantity.Number), new("loaded length", Quantity.Length), new("reason"),
    ];

    /// <summary>The page of a rating.</summary>
    /// <param name="rating">The rating.</param>
    /// <param name="notAsked">The bridge's own vehicles that its list of vehicles leaves out.</param>
    /// <param name="units">The units to show.</param>
    /// <param name="everyRow">True to print every row; else the lowest of each member and sense.</param>
    public static ResultPage Of(BridgeRating rating, IReadOnlyList<string> notAsked, DisplayUnits units, bool everyRow)
    {
        ArgumentNullException.ThrowIfNull(rating);
        ArgumentNullException.ThrowIfNull(units);
        List<string> notRated = NotRated(rating.NotRated, notAsked, units);
        string governing = Governing(rating);
        var blocks = new List<ResultBlock>
        {
            new ResultBlock.Heading($"{rating.Bridge.Name}: {rating.Method.FullName} ({rating.Method.Name})"),
            new ResultBlock.Paragraph(governing, Strong: rating.Governing is not { Factor: >= 1 }),
            new ResultBlock.Paragraph(Words.TrussOnly, Strong: true),
        };
        if (notRated.Count > 0)
        {
            blocks.Add(new ResultBlock.Items("Not rated:", notRated));
        }

        if (rating.GoverningInventory is { } inventory)
        {
            blocks.Add(new ResultBlock.Paragraph($"Lowest at inventory level: {Row(inventory)}."));
        }

        blocks.Add(new ResultBlock.Heading("Lowest factor of each vehicle"));
        blocks.Add(new ResultBlock.Grid(ByVehicle(rating)));
        blocks.Add(new ResultBlock.Paragraph("RF × weight is the rating in tons, cut to a tenth and never rounded up: it compares, and is no posting."));
        RatingRow[] lowest = LowestOfEach(rating);
        if (everyRow)
        {
            blocks.Add(new ResultBlock.Heading("Every rating, the lowest first"));
            blocks.Add(new ResultBlock.Grid(Table(rating.Rows)));
        }
        else if (lowest.Length > 0)
        {
            blocks.Add(new ResultBlock.Heading("Lowest factor of each member and sense"));
            blocks.Add(new ResultBlock.Grid(Table(lowest.Where(r => r.Status != RatingStatus.NotLoaded))));
            blocks.AddRange(RatingWording.NotApplicable(lowest));
            blocks.Add(new ResultBlock.Paragraph(string.Create(CultureInfo.InvariantCulture, $"Of {rating.Rows.Count} rows; --all prints every one, and CSV and JSON hold them.")));
        }

        blocks.AddRange(RatingWording.Caps(everyRow ? rating.Rows : lowest));
        blocks.Add(new ResultBlock.Paragraph($"{DeadLoadWording.Of(rating.Bridge, units)}."));
        blocks.Add(new ResultBlock.Items("Assumed, or done in place of what was asked:", [.. rating.Stamps.Select(s => RatingWording.Of(s, units))]));
        blocks.Add(new ResultBlock.Paragraph($"{RatingWording.Factors(rating)}. They are from {rating.Method.Source}."));
        blocks.Add(new ResultBlock.Paragraph(string.Create(CultureInfo.InvariantCulture, $"Forces: tension positive; live with share and presence, without impact and load factor. Largest residual {rating.Residual:0.0e+0}.")));
        blocks.Add(new ResultBlock.Paragraph(Words.Caution, Strong: true));
        return new ResultPage(
            blocks,
            new ResultTable(Columns, [.. rating.Rows.Select(r => CsvRow(r, units))]),
            [governing, Words.TrussOnly, .. notRated.Select(n => $"Not rated: {n}"), DeadLoadWording.Of(rating.Bridge, units), RatingWording.Factors(rating), .. rating.Stamps.Select(s => RatingWording.Of(s, units)), Words.Caution],
            json => Write(json, rating, notAsked),
            IsAnswer: rating.Rows.Any(r => r.Factor is not null) && !rating.Withheld.Any());
    }

    /// <summary>The page of a rating that is refused.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="method">The method.</param>
    /// <param name="refusal">Why.</param>
    public static ResultPage Refused(Bridge bridge, RatingMethod method, Refusal refusal)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(method);
        string why = RefusalWording.Sentence(refusal, bridge.Truss);
        return new ResultPage(
            [
                new ResultBlock.Heading($"{bridge.Name}: {method.FullName} ({method.Name})"),
                new ResultBlock.Paragraph($"Nothing is rated. {why}", Strong: true),
                new ResultBlock.Paragraph(Words.Caution, Strong: true),
            ],
            new ResultTable(Columns, []),
            [$"Nothing is rated. {why}", Words.Caution],
            json =>
            {
                json.WriteString("bridge", bridge.Name);
                json.WriteString("method", method.Name);
                json.WriteString("caution", Words.Caution);
                json.WriteStartArray("ratings");
                json.WriteEndArray();
                json.WriteStartArray("notRated");
                json.WriteEndArray();
                json.WriteNull("governing");
                json.WriteNull("governingMember");
                json.WriteNull("governingInventory");
                json.WriteRefusal(refusal, bridge.Truss);
            },
            IsAnswer: false);
    }

    private static string Governing(BridgeRating rating) => Verdict(rating) + RatingWording.OnlyAtCrawlSpeed(rating.Bridge);

    private static string Verdict(BridgeRating rating) => rating.Governing switch
    {
        null when rating.Withheld.Any() =>
            $"Nothing governs while a rating is withheld. {string.Join(". ", rating.Withheld.GroupBy(w => w.Reason.Member).Select(g => $"{g.Key} goes slack before the factored vehicle is on whole ({string.Join(", ", g.Select(w => w.Vehicle.Name))})"))}: no such vehicle can be called safe here.",
        { Status: RatingStatus.DeadExceeds } row => $"Governing: {Row(row)}: the dead load alone exceeds the capacity. Check the inputs; if they are true, treat the bridge as closed until an engineer has reviewed it.",
        { Factor: 0, Beside: { } beside } row => $"Governing: {Row(row)}. {beside.Vehicle.Name} beside it leaves this member no capacity; {row.Vehicle.Name} alone has the factor {Words.Factor(rating.Alone(row)?.Factor)} there.",
        { Factor: < 1 } row => $"Governing: {Row(row)}. A factor below 1: the vehicle is too heavy for this member as entered.",
        { } row => $"Governing: {Row(row)}.",
        null => "Nothing governs: no member is rated.",
    };

    private static string Row(RatingRow row) =>
        $"{row.Name} in {RatingWording.ActsIn(row)} under {RatingWording.Under(row)} at {row.Level.Name} level, rating factor {Words.Factor(row.Factor)}{((row as MemberRow)?.CappedBy is { } rod ? $", where {rod} goes slack" : "")}{(row.Truss is null ? "" : $" ({row.Truss} truss)")}";

    // One line a reason and sense, with its members or vehicles: not one for each of the rows.
    internal static List<string> NotRated(IEnumerable<RatingRow> rows, IReadOnlyList<string> notAsked, DisplayUnits units) =>
        [
            .. NotRatedEntries(rows, notAsked, units).GroupBy(e => (e.Sense, e.Reason)).Select(g =>
                $"{string.Join(", ", g.GroupBy(e => e.Member ?? e.Vehicle).Select(m => m.Count() == 1 && m.First().Truss is { } truss ? $"{m.Key} ({truss})" : m.Key))}{(g.Key.Sense is null ? "" : $" in {g.Key.Sense}")}: {g.Key.Reason}"),
        ];

    private static List<(string? Truss, string? Member, string? Sense, string? Vehicle, string Reason)> NotRatedEntries(
        IEnumerable<RatingRow> rows, IReadOnlyList<string> notAsked, DisplayUnits units) =>
        [
            .. rows.Select(r => r.IsAboutItsVehicle
                ? ((string?)null, (string?)null, (string?)null, r.Vehicle.Name, RatingWording.Of(r.Reason!, units))
                : (r.Truss, r.Name, RatingWording.ActsIn(r), (string?)null, RatingWording.Of(r.Reason!, units))).Distinct(),
            .. notAsked.Select(v => ((string?)null, (string?)null, (string?)null, (string?)v, "not asked for: name it under vehicles in bridge.toml [rating]")),
        ];

    // A vehicle that is not rated at all stands in the list above, and says nothing about a member.
    private static RatingRow[] LowestOfEach(BridgeRating rating) =>
        [.. rating.Rows.Where(r => !r.IsAboutItsVehicle).DistinctBy(r => (r.Part, r.Name, r.ActsAs, r.InSense, r.Truss))];

    private static ResultTable ByVehicle(BridgeRating rating) => new(
        [new("vehicle"), new("class"), new("level"), new("weight", Quantity.Force), new("lanes"), new("share with presence", Quantity.Number, 3), new("lowest factor"), new("member"), new("sense"), new("RF × weight [US ton]")],
        [
            .. rating.Rows.GroupBy(r => (r.Vehicle, r.Level.Name)).Select(g => g.First()).Select(r => (IReadOnlyList<object?>)
            [
                RatingWording.Under(r),
                VehicleClassNames.Name(r.Vehicle.Class),
                r.Level.Name,
                SafeLoad.WeightOf(r.Vehicle),
                r.Share is null ? "" : r.Share.Lanes == 0 ? "given" : r.Share.Lanes.ToString(CultureInfo.InvariantCulture),
                r.Share?.Value,
                r.Factor is null ? Words.InTable(r.Status) : Words.Factor(r.Factor),
                r.Factor is null ? "" : r.Name,
                r.Factor is null ? "" : RatingWording.ActsIn(r),
                PostingWording.TenthsOfTons(SafeLoad.EquivalentLoad(r)),
            ]),
        ]);

    private static ResultTable Table(IEnumerable<RatingRow> rows)
    {
        RatingRow[] shown = [.. rows];
        bool apart = shown.Any(r => r.Truss is not null), modes = shown.Any(r => RatingWording.Mode(r) is not null);
        return new ResultTable(
            [
                .. apart ? [new ResultColumn("truss")] : Array.Empty<ResultColumn>(),
                new("factor"), new("member"), new("sense"), new("vehicle"), new("level"), new("capacity", Quantity.Force), new("DC", Quantity.Force),
                new("DW", Quantity.Force), new("live", Quantity.Force), new("impact", Quantity.Number, 3), .. modes ? [new ResultColumn("by")] : Array.Empty<ResultColumn>(), new("role"),
            ],
            [
                .. shown.Select(r => (IReadOnlyList<object?>)
                [
                    .. apart ? [r.Truss ?? ""] : Array.Empty<object?>(),
                    r.Factor is null ? Words.InTable(r.Status) : Words.Factor(r.Factor),
                    r.Name,
                    RatingWording.ActsIn(r),
                    RatingWording.Under(r),
                    r.Level.Name,
                    r.Capacity,
                    r.DeadComponents,
                    r.DeadWearing,
                    r.Live,
                    r.Impact,
                    .. modes ? [r.Factor is null ? "" : RatingWording.Mode(r) ?? "given"] : Array.Empty<object?>(),
                    r is MemberRow m ? m.Member.Role : PartWords.Of(r.Part),
                ]),
            ]);
    }

    private static IReadOnlyList<object?> CsvRow(RatingRow r, DisplayUnits units) =>
    [
        r.Truss ?? "", PartWords.Of(r.Part), r.Name, r.Vehicle.Name, r.Beside?.Vehicle.Name ?? "", r.Level.Name, PartWords.Of(r.ActsAs), RatingWording.SenseOf(r) ?? "", RatingWording.Mode(r) ?? "", Words.Of(r.Status),
        r.Capacity, r.DeadComponents, r.DeadWearing, r.Live, r.Impact, r.Factor, r.ComponentsFactor, r.WearingFactor,
        r.Level.LiveFactor, r.Share?.Value, r.LoadedLength, r.Reason is null ? RatingWording.Cap(r) ?? "" : RatingWording.Of(r.Reason, units),
    ];

    private static void Write(Utf8JsonWriter json, BridgeRating rating, IReadOnlyList<string> notAsked)
    {
        // The JSON is the same whatever units a table is asked for in.
        DisplayUnits units = DisplayUnits.Si;
        json.WriteString("bridge", rating.Bridge.Name);
        json.WriteString("method", rating.Method.Name);
        json.WriteString("caution", Words.Caution);
        json.WriteString("scope", Words.TrussOnly);
        json.WriteStartArray("ratings");
        foreach (RatingRow row in rating.Rows)
        {
            WriteRow(json, row, rating.Bridge.Truss);
        }

        json.WriteEndArray();
        WriteNotRated(json, rating.NotRated, notAsked);
        WriteGoverning(json, "governing", rating.Governing);
        WriteGoverning(json, "governingMember", rating.GoverningMember);
        WriteGoverning(json, "governingInventory", rating.GoverningInventory);
        json.WriteStartArray("assumptions");
        foreach (Stamp stamp in rating.Stamps)
        {
            json.WriteStringValue(RatingWording.Of(stamp, units));
        }

        json.WriteEndArray();
        json.WriteNumber("residual", rating.Residual);
    }

    internal static void WriteNotRated(Utf8JsonWriter json, IEnumerable<RatingRow> rows, IReadOnlyList<string> notAsked)
    {
        json.WriteStartArray("notRated");
        foreach ((string? truss, string? member, string? sense, string? vehicle, string reason) in NotRatedEntries(rows, notAsked, DisplayUnits.Si))
        {
            json.WriteStartObject();
            json.WriteString("truss", truss);
            json.WriteString("member", member);
            json.WriteString("sense", sense);
            json.WriteString("vehicle", vehicle);
            json.WriteString("reason", reason);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteRow(Utf8JsonWriter json, RatingRow row, Truss truss)
    {
        json.WriteStartObject();
        WriteRowFields(json, row, truss);
        json.WriteEndObject();
    }

    /// <summary>Writes the fields of a row, between the braces of its object.</summary>
    /// <param name="json">Takes the fields.</param>
    /// <param name="row">The row.</param>
    /// <param name="truss">Its truss.</param>
    public static void WriteRowFields(Utf8JsonWriter json, RatingRow row, Truss truss)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(row);
        ArgumentNullException.ThrowIfNull(truss);
        json.WriteString("truss", row.Truss);
        json.WriteString("part", PartWords.Of(row.Part));
        json.WriteString("member", row.Name);
        json.WriteString("vehicle", row.Vehicle.Name);
        json.WriteString("beside", row.Beside?.Vehicle.Name);
        json.WriteString("level", row.Level.Name);
        json.WriteString("effect", PartWords.Of(row.ActsAs));
        json.WriteString("sense", RatingWording.SenseOf(row));
        json.WriteString("mode", RatingWording.Mode(row));
        json.WriteString("place", RatingWording.Place(row));
        json.WriteString("status", Words.Of(row.Status));
        json.WriteForce("capacity", row.Capacity);
        json.WriteForce("deadComponents", row.DeadComponents);
        json.WriteForce("deadWearing", row.DeadWearing);
        json.WriteForce("live", row.Live);
        json.WriteNumberOrNull("impact", row.Impact);
        json.WriteNumberOrNull("factor", row.Factor);
        json.WriteNumberOrNull("equivalentUsTons", SafeLoad.EquivalentLoad(row) / SafeLoad.UsTon);
        json.WriteNumber("dcFactor", row.ComponentsFactor);
        json.WriteNumber("dwFactor", row.WearingFactor);
        json.WriteNumberOrNull("liveFactor", row.Level.LiveFactor);
        json.WriteNumberOrNull("share", row.Share?.Value);
        json.WriteNumberOrNull("loadedLength", row.LoadedLength);
        if (row.Beside is { } beside)
        {
            json.WriteForce("besideFactored", beside.Factored);
        }

        if (row is not MemberRow member)
        {
            return;
        }

        if (member.Effect is { } effect && effect.Parts is not [{ Part: LivePart.Axles }])
        {
            LivePartJson.Write(json, effect);
        }

        if (member.CappedBy is not null)
        {
            json.WriteString("cappedBy", member.CappedBy);
        }

        if (member.SlackAtFactor is { } slack)
        {
            json.WriteNames("slackAtFactor", slack.Select(m => truss.Members[m].Name));
        }
    }

    internal static void WriteGoverning(Utf8JsonWriter json, string name, RatingRow? row)
    {
        if (row is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WriteString("truss", row.Truss);
        json.WriteString("part", PartWords.Of(row.Part));
        json.WriteString("member", row.Name);
        json.WriteString("vehicle", row.Vehicle.Name);
        json.WriteString("beside", row.Beside?.Vehicle.Name);
        json.WriteString("level", row.Level.Name);
        json.WriteString("sense", RatingWording.SenseOf(row));
        json.WriteNumberOrNull("factor", row.Factor);
        json.WriteEndObject();
    }
}
