using System.Globalization;

namespace SpanRater.Files;

/// <summary>What <c>rate</c> says: what governs, what is not rated, and the factor of every member, vehicle, level and sense.</summary>
public static class RatingPage
{
    /// <summary>The page of a rating.</summary>
    /// <param name="rating">The rating.</param>
    /// <param name="notAsked">The bridge's own vehicles that its list of vehicles leaves out.</param>
    /// <param name="units">The units to show.</param>
    /// <param name="everyRow">True to print every row; else the lowest of each member and sense.</param>
    public static ResultPage Of(BridgeRating rating, IReadOnlyList<string> notAsked, DisplayUnits units, bool everyRow)
    {
        ArgumentNullException.ThrowIfNull(rating);
        ArgumentNullException.ThrowIfNull(units);
        IReadOnlyList<string> notRated = NotRatedList.Lines(rating.NotRated, notAsked, units);
        string governing = Governing(rating);
        ResultBlock[] blocks =
        [
            new ResultBlock.Heading($"{rating.Bridge.Name}: {rating.Method.FullName} ({rating.Method.Name})"),
            new ResultBlock.Paragraph(governing, Strong: rating.Governing is not { Factor: >= 1 }),
            new ResultBlock.Paragraph(ScopeWording.Of(rating), Strong: true),
            .. GoverningMember(rating),
            .. NotRated(rating, notAsked, units),
            .. LowestAtInventory(rating),
            .. Tables(rating, units, everyRow),
            .. Notes(rating, units, everyRow),
            .. Assumed(rating.Stamps, units),
            .. Factors(rating),
            new ResultBlock.Paragraph(Words.Caution, Strong: true),
        ];
        return new ResultPage(
            blocks,
            new ResultTable(RatingTables.Columns, [.. rating.Rows.Select(r => RatingTables.CsvRow(r, units))]),
            [governing, ScopeWording.Of(rating), .. notRated.Select(n => $"Not rated: {n}"), DeadLoadWording.Of(rating.Bridge, units), RatingWording.Factors(rating), .. rating.Stamps.Select(s => RatingWording.Of(s, units)), Words.Caution],
            json => RatingJson.Write(json, rating, notAsked),
            IsAnswer: rating.Rows.Any(r => r.Factor is not null) && !rating.Withheld.Any());
    }

    /// <summary>What governs: of all that is rated, among the truss members, and at inventory level.</summary>
    /// <param name="rating">The rating.</param>
    public static IReadOnlyList<ResultBlock> WhatGoverns(BridgeRating rating)
    {
        ArgumentNullException.ThrowIfNull(rating);
        return [new ResultBlock.Paragraph(Governing(rating), Strong: rating.Governing is not { Factor: >= 1 }), .. GoverningMember(rating), .. LowestAtInventory(rating)];
    }

    /// <summary>What is not rated and why; nothing where all that is given is rated.</summary>
    /// <param name="rating">The rating.</param>
    /// <param name="notAsked">The bridge's own vehicles that its list of vehicles leaves out.</param>
    /// <param name="units">The units to show.</param>
    public static IReadOnlyList<ResultBlock> NotRated(BridgeRating rating, IReadOnlyList<string> notAsked, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(rating);
        return NotRatedList.Lines(rating.NotRated, notAsked, units) is { Count: > 0 } lines ? [new ResultBlock.Items("Not rated:", lines)] : [];
    }

    /// <summary>The lowest factor of each vehicle, and of each part and effect or every one.</summary>
    /// <param name="rating">The rating.</param>
    /// <param name="units">The units to show.</param>
    /// <param name="everyRow">True for every row; else the lowest of each part and effect.</param>
    public static IReadOnlyList<ResultBlock> Tables(BridgeRating rating, DisplayUnits units, bool everyRow)
    {
        ArgumentNullException.ThrowIfNull(rating);
        RatingRow[] lowest = RatingTables.LowestOfEach(rating);
        return
        [
            new ResultBlock.Heading("Lowest factor of each vehicle"),
            new ResultBlock.Grid(RatingTables.ByVehicle(rating)),
            new ResultBlock.Paragraph("Factors are cut and never rounded up. RF × weight is the rating in tons, by the factor uncut, cut to a tenth: it compares, and is no posting."),
            .. everyRow
                ? (ResultBlock[])[new ResultBlock.Heading("Every rating, the lowest first"), new ResultBlock.Grid(RatingTables.Of(rating.Rows, units))]
                : lowest.Length == 0 ? []
                :
                [
                    new ResultBlock.Heading(rating.PartRows.Count > 0 ? "Lowest factor of each part and effect, at levels that govern" : "Lowest factor of each member and sense, at levels that govern"),
                    new ResultBlock.Grid(RatingTables.Of(LowestShown(rating), units)),
                    .. RatingWording.NotApplicable(lowest),
                ],
        ];
    }

    /// <summary>The rows of the table of the lowest factors: of each part and effect the lowest, but for those that no vehicle loads.</summary>
    /// <param name="rating">The rating.</param>
    public static IReadOnlyList<RatingRow> LowestShown(BridgeRating rating)
    {
        ArgumentNullException.ThrowIfNull(rating);
        return [.. RatingTables.LowestOfEach(rating).Where(r => r.Status != RatingStatus.NotLoaded)];
    }

    /// <summary>Every row that the tables of the lowest factors show, once each: of each part and effect, then of each vehicle.</summary>
    /// <param name="rating">The rating.</param>
    public static IReadOnlyList<RatingRow> RowsShown(BridgeRating rating)
    {
        var seen = new HashSet<RatingRow>(ReferenceEqualityComparer.Instance);
        return [.. LowestShown(rating).Concat(RatingTables.ByVehicle(rating).Shows!.OfType<RatingRow>()).Where(seen.Add)];
    }

    /// <summary>What holds factors down beside capacity, and where the dead load is from.</summary>
    /// <param name="rating">The rating.</param>
    /// <param name="units">The units to show.</param>
    /// <param name="everyRow">True where every row is shown; else the lowest of each part and effect.</param>
    public static IReadOnlyList<ResultBlock> CapsAndDeadLoad(BridgeRating rating, DisplayUnits units, bool everyRow)
    {
        ArgumentNullException.ThrowIfNull(rating);
        return [.. RatingWording.Caps(everyRow ? rating.Rows : RatingTables.LowestOfEach(rating)), new ResultBlock.Paragraph($"{DeadLoadWording.Of(rating.Bridge, units)}.")];
    }

    /// <summary>What was assumed, or done in place of what was asked.</summary>
    /// <param name="stamps">The stamps to tell.</param>
    /// <param name="units">The units to show.</param>
    public static IReadOnlyList<ResultBlock> Assumed(IReadOnlyList<Stamp> stamps, DisplayUnits units) =>
        [new ResultBlock.Items("Assumed, or done in place of what was asked:", [.. stamps.Select(s => RatingWording.Of(s, units))])];

    /// <summary>The load factors, where they are from, and how forces are shown.</summary>
    /// <param name="rating">The rating.</param>
    public static IReadOnlyList<ResultBlock> Factors(BridgeRating rating)
    {
        ArgumentNullException.ThrowIfNull(rating);
        return
        [
            new ResultBlock.Paragraph($"{RatingWording.Factors(rating)}. They are from {rating.Method.Source}."),
            new ResultBlock.Paragraph($"Forces: tension positive; {(rating.PartRows.Count > 0 ? "moments, shears and bearing without sign; " : "")}live with share and presence, without impact and load factor. {LargestResidual(rating)}"),
        ];
    }

    /// <summary>The largest residual of all solutions that the rating rests on.</summary>
    /// <param name="rating">The rating.</param>
    public static string LargestResidual(BridgeRating rating)
    {
        ArgumentNullException.ThrowIfNull(rating);
        return string.Create(CultureInfo.InvariantCulture, $"Largest residual {rating.Residual:0.0e+0}.");
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
            new ResultTable(RatingTables.Columns, []),
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

    private static IEnumerable<ResultBlock> GoverningMember(BridgeRating rating) =>
        rating is { Governing: PartRow, GoverningMember: { } member } ? [new ResultBlock.Paragraph($"Governing truss member: {Row(member)}.")] : [];

    private static IEnumerable<ResultBlock> LowestAtInventory(BridgeRating rating) =>
        rating.GoverningInventory is { } inventory ? [new ResultBlock.Paragraph($"Lowest at inventory level: {Row(inventory)}.")] : [];

    // What the other commands open, as a terminal needs it.
    private static IEnumerable<ResultBlock> Notes(BridgeRating rating, DisplayUnits units, bool everyRow)
    {
        if (!everyRow && RatingTables.LowestOfEach(rating).Length > 0)
        {
            yield return new ResultBlock.Paragraph(string.Create(CultureInfo.InvariantCulture, $"Of {rating.Rows.Count} rows; --all prints every one, and CSV and JSON hold them."));
        }

        if (rating.Governing is { } opened)
        {
            yield return new ResultBlock.Paragraph($"Open any factor down to what was given with explain: --{(opened is MemberRow ? "member" : "part")} \"{opened.Name}\" --vehicle \"{opened.Vehicle.Name}\" opens the one that governs. post gives posting loads and what would help.");
        }
        else if (rating.Withheld.FirstOrDefault() is { Vehicle: { } withheld, Reason: { } slack })
        {
            yield return new ResultBlock.Paragraph($"Open why it is withheld with explain: --member \"{slack.Member}\" --vehicle \"{withheld.Name}\" gives the placement, the forces there and the sum. Look at the bridge for a rod that crosses it in its panel and would take over, and at what the dead load rests on; limits gives the largest single axle.");
        }

        foreach (ResultBlock block in CapsAndDeadLoad(rating, units, everyRow))
        {
            yield return block;
        }
    }

    private static string Governing(BridgeRating rating) => Verdict(rating) + LeftOut(rating) + RatingWording.OnlyAtCrawlSpeed(rating.Bridge);

    // What governs is named among vehicles that could be rated: the others must not be taken for lighter ones.
    private static string LeftOut(BridgeRating rating)
    {
        string[] names = [.. rating.Rows.Where(r => r.IsAboutItsVehicle && r.Status == RatingStatus.NotRated).Select(r => r.Vehicle.Name).Distinct()];
        return names.Length == 0 || rating.Governing is null ? "" : $" Not rated, so that this says nothing about {(names.Length == 1 ? "it" : "them")}: {string.Join(", ", names)}.";
    }

    private static string Verdict(BridgeRating rating) => rating.Governing switch
    {
        null when rating.Withheld.Any() =>
            $"Nothing governs while a rating is withheld. {string.Join(". ", rating.Withheld.GroupBy(w => w.Reason.Member).Select(g => $"{g.Key} goes slack before the factored vehicle is on whole ({string.Join(", ", g.Select(w => w.Vehicle.Name))})"))}: no such vehicle can be called safe here. Until an engineer has reviewed it, keep such vehicles off.",
        { Status: RatingStatus.DeadExceeds } row => $"Governing: {Row(row)}: the dead load alone exceeds the capacity. Check the inputs; if they are true, treat the bridge as closed until an engineer has reviewed it.",
        { Factor: 0, Beside: { } beside } row => $"Governing: {Row(row)}. {beside.Vehicle.Name} beside it leaves this {(row is MemberRow ? "member" : "part")} no capacity; {row.Vehicle.Name} alone has the factor {Words.Factor(rating.Alone(row)?.Factor)} there.",
        { Factor: < 1 } row => $"Governing: {Row(row)}. A factor below 1: the vehicle is too heavy for this {(row is MemberRow ? "member" : "part")} as entered.",
        { } row => $"Governing: {Row(row)}.",
        null => rating.PartRows.Count > 0 ? "Nothing governs: nothing is rated." : "Nothing governs: no member is rated.",
    };

    private static string Row(RatingRow row) =>
        $"{RatingWording.NameAt(row)} in {RatingWording.ActsIn(row)} under {RatingWording.Under(row)} at {row.Level.Name} level, rating factor {Words.Factor(row.Factor)}{((row as MemberRow)?.CappedBy is { } rod ? $", where {rod} goes slack" : "")}{(row.Truss is null ? "" : $" ({row.Truss} truss)")}";
}
