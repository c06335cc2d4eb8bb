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
        var blocks = new List<ResultBlock>
        {
            new ResultBlock.Heading($"{rating.Bridge.Name}: {rating.Method.FullName} ({rating.Method.Name})"),
            new ResultBlock.Paragraph(governing, Strong: rating.Governing is not { Factor: >= 1 }),
            new ResultBlock.Paragraph(ScopeWording.Of(rating), Strong: true),
        };
        if (rating is { Governing: PartRow, GoverningMember: { } member })
        {
            blocks.Add(new ResultBlock.Paragraph($"Governing truss member: {Row(member)}."));
        }

        if (notRated.Count > 0)
        {
            blocks.Add(new ResultBlock.Items(NotRatedList.Lead, notRated));
        }

        if (rating.GoverningInventory is { } inventory)
        {
            blocks.Add(new ResultBlock.Paragraph($"Lowest at inventory level: {Row(inventory)}."));
        }

        blocks.Add(new ResultBlock.Heading("Lowest factor of each vehicle"));
        blocks.Add(new ResultBlock.Grid(RatingTables.ByVehicle(rating)));
        blocks.Add(new ResultBlock.Paragraph("Factors are cut and never rounded up. RF × weight is the rating in tons, by the factor uncut, cut to a tenth: it compares, and is no posting."));
        RatingRow[] lowest = RatingTables.LowestOfEach(rating);
        if (everyRow)
        {
            blocks.Add(new ResultBlock.Heading("Every rating, the lowest first"));
            blocks.Add(new ResultBlock.Grid(RatingTables.Of(rating.Rows, units)));
        }
        else if (lowest.Length > 0)
        {
            blocks.Add(new ResultBlock.Heading(rating.PartRows.Count > 0 ? "Lowest factor of each part and effect" : "Lowest factor of each member and sense"));
            blocks.Add(new ResultBlock.Grid(RatingTables.Of(lowest.Where(r => r.Status != RatingStatus.NotLoaded), units)));
            blocks.AddRange(RatingWording.NotApplicable(lowest));
            blocks.Add(new ResultBlock.Paragraph(string.Create(CultureInfo.InvariantCulture, $"Of {rating.Rows.Count} rows; --all prints every one, and CSV and JSON hold them.")));
        }

        if (rating.Governing is { } opened)
        {
            blocks.Add(new ResultBlock.Paragraph($"Open any factor down to what was given with explain: --{(opened is MemberRow ? "member" : "part")} \"{opened.Name}\" --vehicle \"{opened.Vehicle.Name}\" opens the one that governs. post gives posting loads and what would help."));
        }

        else if (rating.Withheld.FirstOrDefault() is { Vehicle: { } withheld, Reason: { } slack })
        {
            blocks.Add(new ResultBlock.Paragraph($"Open why it is withheld with explain: --member \"{slack.Member}\" --vehicle \"{withheld.Name}\" gives the placement, the forces there and the sum."));
        }

        blocks.AddRange(RatingWording.Caps(everyRow ? rating.Rows : lowest));
        blocks.Add(new ResultBlock.Paragraph($"{DeadLoadWording.Of(rating.Bridge, units)}."));
        blocks.Add(new ResultBlock.Items("Assumed, or done in place of what was asked:", [.. rating.Stamps.Select(s => RatingWording.Of(s, units))]));
        blocks.Add(new ResultBlock.Paragraph($"{RatingWording.Factors(rating)}. They are from {rating.Method.Source}."));
        blocks.Add(new ResultBlock.Paragraph(string.Create(CultureInfo.InvariantCulture, $"Forces: tension positive; {(rating.PartRows.Count > 0 ? "moments, shears and bearing without sign; " : "")}live with share and presence, without impact and load factor. Largest residual {rating.Residual:0.0e+0}.")));
        blocks.Add(new ResultBlock.Paragraph(Words.Caution, Strong: true));
        return new ResultPage(
            blocks,
            new ResultTable(RatingTables.Columns, [.. rating.Rows.Select(r => RatingTables.CsvRow(r, units))]),
            [governing, ScopeWording.Of(rating), .. notRated.Select(n => $"Not rated: {n}"), DeadLoadWording.Of(rating.Bridge, units), RatingWording.Factors(rating), .. rating.Stamps.Select(s => RatingWording.Of(s, units)), Words.Caution],
            json => RatingJson.Write(json, rating, notAsked),
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
