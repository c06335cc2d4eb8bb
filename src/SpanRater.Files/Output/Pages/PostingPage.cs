using System.Globalization;
using System.Text.Json;

namespace SpanRater.Files;

/// <summary>What <c>post</c> says: what is urgent, what is not rated, and the safe load of every legal type and emergency vehicle.</summary>
public static class PostingPage
{
    private static readonly ResultColumn[] Columns =
    [
        new("vehicle"), new("class"), new("silhouette"), new("level"), new("weight", Quantity.Force), new("factor", Quantity.Number), new("truss"),
        new("member"), new("sense"), new("mode"), new("rule"), new("verdict"), new("safe load", Quantity.Force), new("single axle", Quantity.Force),
        new("tandem", Quantity.Force), new("posted [US ton]"), new("at most"), new("reason"),
    ];

    /// <summary>The page of a posting.</summary>
    /// <param name="posting">The posting.</param>
    /// <param name="notAsked">Legal and emergency vehicles that the bridge does not ask for.</param>
    /// <param name="units">The units to show.</param>
    /// <param name="alternatives">What would help; null where that is not asked for, or no type is posted.</param>
    public static ResultPage Of(Posting posting, IReadOnlyList<string> notAsked, DisplayUnits units, Alternatives? alternatives = null)
    {
        ArgumentNullException.ThrowIfNull(posting);
        ArgumentNullException.ThrowIfNull(notAsked);
        ArgumentNullException.ThrowIfNull(units);
        BridgeRating rating = posting.Rating;
        string[] warnings = [.. PostingWording.Warnings(posting, units)];
        string answer = PostingWording.Answer(posting);
        RatingRow[] unrated = [.. NotRated(posting)];
        IReadOnlyList<string> notRated = NotRatedList.Lines(unrated, [], units);
        var blocks = new List<ResultBlock> { new ResultBlock.Heading(Title(rating.Bridge, rating.Method)) };
        blocks.AddRange(warnings.Select(w => new ResultBlock.Paragraph(w, Strong: true)));
        blocks.Add(new ResultBlock.Paragraph(answer, Strong: posting.Legal.Concat(posting.Emergency).Any(r => r.Verdict != PostingVerdict.NotNeeded)));
        blocks.Add(new ResultBlock.Paragraph(ScopeWording.Of(rating), Strong: true));
        if (notRated.Count > 0)
        {
            blocks.Add(new ResultBlock.Items(NotRatedList.Lead, notRated));
        }

        if (notAsked.Count > 0)
        {
            blocks.Add(new ResultBlock.Paragraph($"{PostingWording.NotCovered(notAsked)}."));
        }

        if (posting.Legal.Count > 0)
        {
            blocks.Add(new ResultBlock.Heading("Limits by silhouette"));
            blocks.Add(new ResultBlock.Grid(Limits(posting, notAsked)));
            blocks.Add(new ResultBlock.Heading("Each legal type"));
            blocks.Add(new ResultBlock.Grid(Legal(posting)));
            blocks.AddRange(PostedByWeight(posting).Select(w => new ResultBlock.Paragraph($"{w}.")));
        }

        if (posting.Emergency.Count > 0)
        {
            blocks.Add(new ResultBlock.Heading("Emergency vehicles, apart from the legal types"));
            blocks.Add(new ResultBlock.Grid(Emergency(posting)));
            blocks.AddRange(PostingWording.AloneOnTheBridge(posting).Select(a => new ResultBlock.Paragraph(a)));
        }

        if (posting.Others.Count > 0)
        {
            blocks.Add(new ResultBlock.Heading("Loads without a posting rule"));
            blocks.Add(new ResultBlock.Grid(Others(posting)));
            blocks.Add(new ResultBlock.Paragraph(PostingWording.OthersRule));
        }

        if (alternatives is not null)
        {
            blocks.AddRange(AlternativesSection.Blocks(alternatives, units));
        }
        else if (!Alternatives.Types(posting).Any())
        {
            blocks.Add(new ResultBlock.Paragraph("What would help is worked for legal types and emergency vehicles, and none was asked for: measure says which reading to take first, and rate which part comes next."));
        }

        string[] stamps = [.. rating.Stamps.Select(s => RatingWording.Of(s, units))];
        blocks.Add(new ResultBlock.Items("Assumed, or done in place of what was asked:", stamps));
        blocks.Add(new ResultBlock.Paragraph($"{PostingWording.Rules}."));
        blocks.Add(new ResultBlock.Paragraph($"{DeadLoadWording.Of(rating.Bridge, units)}. {RatingWording.Factors(rating)}. They are from {rating.Method.Source}."));
        blocks.Add(new ResultBlock.Paragraph(Words.Caution, Strong: true));
        return new ResultPage(
            blocks,
            new ResultTable(Columns, [.. posting.Legal.Concat(posting.Emergency).Select(r => CsvRow(r, units))]),
            [
                .. warnings, answer, ScopeWording.Of(rating), .. notRated.Select(n => $"Not rated: {n}"), .. notAsked.Count > 0 ? [PostingWording.NotCovered(notAsked)] : Array.Empty<string>(),
                .. posting.Others.Count > 0 ? [$"No posting rule: {string.Join(", ", posting.Others.Select(Other))}. {PostingWording.OthersRule}"] : Array.Empty<string>(), .. PostedByWeight(posting), .. stamps,
                .. alternatives is null ? [] : AlternativesSection.Notes(alternatives, units), PostingWording.Rules, Words.Caution,
            ],
            json => PostingJson.Write(json, posting, unrated, notAsked, alternatives),
            IsAnswer: posting.IsComplete,
            UndercutsLimit: posting.Closure);
    }

    /// <summary>The page where the truss cannot be solved.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="method">The method.</param>
    /// <param name="refusal">Why.</param>
    public static ResultPage Refused(Bridge bridge, RatingMethod method, Refusal refusal)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(method);
        return WithoutLoads(bridge, method, $"No posting load is given, and no vehicle can be called safe here. {RefusalWording.Sentence(refusal, bridge.Truss)}", json => PostingJson.WriteRefused(json, bridge, method, refusal));
    }

    /// <summary>The page of a method to which no posting rule belongs.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="method">The method.</param>
    public static ResultPage WithoutRule(Bridge bridge, RatingMethod method)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(method);
        string why = PostingWording.NoRule(method);
        return WithoutLoads(bridge, method, why, json => PostingJson.WriteWithoutRule(json, bridge, method, why));
    }

    private static ResultPage WithoutLoads(Bridge bridge, RatingMethod method, string why, Action<Utf8JsonWriter> json) =>
        new(
            [
                new ResultBlock.Heading(Title(bridge, method)),
                new ResultBlock.Paragraph(why, Strong: true),
                new ResultBlock.Paragraph(ScopeWording.Of(bridge), Strong: true),
                new ResultBlock.Paragraph(Words.Caution, Strong: true),
            ],
            new ResultTable(Columns, []),
            [why, ScopeWording.Of(bridge), Words.Caution],
            json,
            IsAnswer: false);

    private static string Title(Bridge bridge, RatingMethod method) => $"{bridge.Name}: posting review by {method.FullName} ({method.Name})";

    private static IEnumerable<string> PostedByWeight(Posting posting) =>
        posting.Legal.Concat(posting.Emergency).Select(r => r.Vehicle).Distinct().Where(v => LiveLoadWording.PostedBy(v) is not null).Select(v => $"{v.Name}: {LiveLoadWording.PostedBy(v)}");

    private static IEnumerable<RatingRow> NotRated(Posting posting) => posting.Rows.Where(r => r.Status is RatingStatus.NotRated or RatingStatus.Withheld);

    private static ResultTable Limits(Posting posting, IReadOnlyList<string> notAsked)
    {
        var limits = posting.Limits.Select(l => (Name: PostingWording.Of(l.Key), Limit: l.Value))
            .Concat(posting.OwnTypes.Select(t => (Name: t.Vehicle.Name, Limit: new PostingLimit([t]))));
        return new ResultTable(
            [new("silhouette or type"), new("posted [US ton]"), new("set by"), new("types"), .. notAsked.Any(n => Posting.SilhouetteOf(n) is not null) ? [new ResultColumn("not asked for: a sign would let them on")] : Array.Empty<ResultColumn>()],
            [
                .. limits.Select(l => (IReadOnlyList<object?>)
                [
                    l.Name,
                    PostingWording.InTable(l.Limit.Verdict, l.Limit.SetBy?.Tons, l.Limit.IsAtMost),
                    l.Limit.SetBy?.Vehicle.Name ?? "",
                    string.Join(", ", l.Limit.Types.Select(t => t.Vehicle.Name)),
                    .. notAsked.Any(n => Posting.SilhouetteOf(n) is not null) ? [string.Join(", ", notAsked.Where(n => Posting.SilhouetteOf(n) is { } s && PostingWording.Of(s) == l.Name))] : Array.Empty<object?>(),
                ]),
            ]);
    }

    private static ResultTable Legal(Posting posting) => new(
        [new("type"), new("posted [US ton]"), new("safe load [US ton]"), new("weight [US ton]"), new("factor"), new(PartWords.Headings(posting.Rating).Name), new(PartWords.Headings(posting.Rating).In), .. posting.Legal.Any(r => PostingWording.Mode(r) is not null) ? [new ResultColumn("by")] : Array.Empty<ResultColumn>(), new("level")],
        [
            .. posting.Legal.Select(r => (IReadOnlyList<object?>)
            [
                r.Vehicle.Name,
                PostingWording.InTable(r.Verdict, r.Tons, r.IsAtMost),
                r.Verdict == PostingVerdict.NotNeeded ? "" : PostingWording.Tons(r.SafeLoad),
                PostingWording.Tons(r.Weight),
                PostingWording.Factor(r.Lowest?.Factor),
                r.Lowest is null ? "" : RatingWording.NameAt(r.Lowest),
                r.Lowest is null ? "" : RatingWording.ActsIn(r.Lowest),
                .. posting.Legal.Any(l => PostingWording.Mode(l) is not null) ? [HeldBy(r) ?? ""] : Array.Empty<object?>(),
                r.Level.Name,
            ]),
        ])
    {
        Shows = [.. posting.Legal.Select(r => r.Lowest)],
    };

    private static ResultTable Emergency(Posting posting) => new(
        [new("vehicle"), new("gross [US ton]"), new("single axle [US ton]"), new("tandem [US ton]"), new("factor"), new(PartWords.Headings(posting.Rating).Name), new(PartWords.Headings(posting.Rating).In), .. posting.Emergency.Any(r => PostingWording.Mode(r) is not null) ? [new ResultColumn("by")] : Array.Empty<ResultColumn>(), new("level")],
        [
            .. posting.Emergency.Select(r => (IReadOnlyList<object?>)
            [
                r.Lowest is null ? r.Vehicle.Name : RatingWording.Under(r.Lowest),
                PostingWording.InTable(r.Verdict, r.Tons, r.IsAtMost),
                AxleTons(r.SingleAxle, r.IsAtMost),
                AxleTons(r.Tandem, r.IsAtMost),
                PostingWording.Factor(r.Lowest?.Factor),
                r.Lowest is null ? "" : RatingWording.NameAt(r.Lowest),
                r.Lowest is null ? "" : RatingWording.ActsIn(r.Lowest),
                .. posting.Emergency.Any(l => PostingWording.Mode(l) is not null) ? [HeldBy(r) ?? ""] : Array.Empty<object?>(),
                r.Level.Name,
            ]),
        ])
    {
        Shows = [.. posting.Emergency.Select(r => r.Lowest)],
    };

    private static ResultTable Others(Posting posting) => new(
        [new("load"), new("class"), new("as entered"), new("factor"), new(PartWords.Headings(posting.Rating).Name), new(PartWords.Headings(posting.Rating).In), new("level")],
        [
            .. posting.Others.Select(o => (IReadOnlyList<object?>)
            [
                o.Vehicle.Name,
                VehicleClassNames.Name(o.Vehicle.Class),
                PostingWording.InTable(o.Verdict),
                PostingWording.Factor(o.Deciding?.Factor),
                o.Deciding is { Factor: not null } named ? RatingWording.NameAt(named) : "",
                o.Deciding is { Factor: not null } acting ? RatingWording.ActsIn(acting) : "",
                o.Deciding?.Level.Name ?? "",
            ]),
        ])
    {
        Shows = [.. posting.Others.Select(o => o.Deciding)],
    };

    private static string Other(OtherLoad load) => $"{load.Vehicle.Name} {PostingWording.InTable(load.Verdict)}{(load.Deciding?.Factor is { } factor ? $" ({PostingWording.Factor(factor)})" : "")}";

    private static string? HeldBy(PostingRow row) => row.Lowest is { } lowest ? RatingWording.HeldBy(lowest) : null;

    private static string AxleTons(double? load, bool isAtMost) => load is { } l ? PostingWording.InTable(PostingVerdict.Posted, SafeLoad.WholeTons(l), isAtMost) : "";

    private static IReadOnlyList<object?> CsvRow(PostingRow r, DisplayUnits units) =>
    [
        r.Vehicle.Name, VehicleClassNames.Name(r.Vehicle.Class), PostingWording.Of(r.Silhouette), r.Level.Name, r.Weight, r.Lowest?.Factor,
        r.Lowest?.Truss ?? "", r.Lowest?.Name ?? "", r.Lowest is null ? "" : RatingWording.ActsIn(r.Lowest), PostingWording.Mode(r) ?? "", PostingWording.Of(r.Rule),
        PostingWording.Of(r.Verdict), r.SafeLoad, r.SingleAxle, r.Tandem, r.Tons?.ToString(CultureInfo.InvariantCulture) ?? "",
        r.IsAtMost ? "yes" : "", r.Verdict == PostingVerdict.NotGiven ? PostingWording.WhyNotGiven(r, units) : "",
    ];
}
