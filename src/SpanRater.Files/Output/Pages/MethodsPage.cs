using System.Text.Json;

namespace SpanRater.Files;

/// <summary>What <c>methods</c> says: the lowest factor of each vehicle by every rating method, side by side.</summary>
public static class MethodsPage
{
    /// <summary>What holds of every such table.</summary>
    public const string NeverMixed =
        "The methods ask different questions, and so do inventory level and the others: never mix methods in one posting, nor take a factor because it is the higher one.";

    /// <summary>What holds where the bridge is rated by factors of the user's own.</summary>
    public const string NotItsOwnBasis =
        "This bridge is rated by partial factors of its own (factors.toml). The methods here belong to another basis, the evaluation manual, and take none of those factors: "
        + "they take the capacities of members.csv as they stand, though these were given as design resistances of that own basis. Nothing below is to be set against its rating, nor to stand in its place.";

    private static readonly ResultColumn[] Columns =
    [
        new("vehicle"), new("class"), new("method"), new("level"), new("status"), new("factor", Quantity.Number), new("at most"), new("truss"),
        new("member"), new("sense"), new("beside"), new("live factor", Quantity.Number), new("reason"),
    ];

    /// <summary>The page of a comparison.</summary>
    /// <param name="comparison">The comparison.</param>
    /// <param name="units">The units to show.</param>
    public static ResultPage Of(MethodComparison comparison, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(comparison);
        ArgumentNullException.ThrowIfNull(units);
        string[] notRated = [.. NotRated(comparison, units)];
        string[] notes = [.. Notes(comparison)];
        string[] assumed = [.. Assumed(comparison, units)];
        string[] factors = [.. comparison.Ratings.Select(r => $"{r.Method.Name}, {r.Method.FullName}: {RatingWording.Factors(r)}. They are from {r.Method.Source}.")];
        var blocks = new List<ResultBlock>
        {
            new ResultBlock.Heading(Title(comparison.Bridge)),
            new ResultBlock.Paragraph(NeverMixed, Strong: true),
            new ResultBlock.Paragraph(ScopeWording.Of(comparison.Bridge), Strong: true),
            new ResultBlock.Heading("Lowest factor of each vehicle, and the member that governs"),
            new ResultBlock.Grid(SideBySide(comparison)),
        };
        blocks.InsertRange(1, OwnBasis(comparison.Bridge).Select(c => new ResultBlock.Paragraph(c, Strong: true)));
        if (notRated.Length > 0)
        {
            blocks.Add(new ResultBlock.Items("Not rated:", notRated));
        }

        blocks.Add(new ResultBlock.Items("How to read it:", notes));
        blocks.Add(new ResultBlock.Items("Assumed, or done in place of what was asked:", assumed));
        blocks.Add(new ResultBlock.Paragraph($"{DeadLoadWording.Of(comparison.Bridge, units)}."));
        blocks.Add(new ResultBlock.Items("Of each method:", factors));
        blocks.Add(new ResultBlock.Paragraph(Words.Caution, Strong: true));
        return new ResultPage(
            blocks,
            new ResultTable(Columns, [.. comparison.Results.Select(r => CsvRow(r, units))]),
            [.. OwnBasis(comparison.Bridge), NeverMixed, ScopeWording.Of(comparison.Bridge), .. notRated.Select(n => $"Not rated: {n}"), .. notes, .. assumed, DeadLoadWording.Of(comparison.Bridge, units), .. factors, Words.Caution],
            json => Write(json, comparison),
            IsAnswer: comparison.Results.Any(r => r.Lowest is not null));
    }

    /// <summary>The page where the truss is refused.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="refusal">Why.</param>
    public static ResultPage Refused(Bridge bridge, Refusal refusal)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        string why = $"Nothing is rated. {RefusalWording.Sentence(refusal, bridge.Truss)}";
        return new ResultPage(
            [new ResultBlock.Heading(Title(bridge)), new ResultBlock.Paragraph(why, Strong: true), .. OwnBasis(bridge).Select(c => new ResultBlock.Paragraph(c, Strong: true)), new ResultBlock.Paragraph(Words.Caution, Strong: true)],
            new ResultTable(Columns, []),
            [why, .. OwnBasis(bridge), Words.Caution],
            json =>
            {
                WriteHead(json, bridge);
                json.WriteNames("methods", []);
                json.WriteNames("results", []);
                json.WriteRefusal(refusal, bridge.Truss);
            },
            IsAnswer: false);
    }

    private static string[] OwnBasis(Bridge bridge) => bridge.Rating.Method?.OwnFactors is null ? [] : [NotItsOwnBasis];

    private static string Title(Bridge bridge) => $"{bridge.Name}: rating methods side by side";

    // Inventory apart from the rest: a line never holds a level that asks for years of use beside one that does not.
    private static ResultTable SideBySide(MethodComparison comparison)
    {
        RatingMethod[] methods = [.. comparison.Ratings.Select(r => r.Method)];
        return new ResultTable(
            [new("vehicle"), new("level"), .. methods.Select(m => new ResultColumn(m.Name))],
            [
                .. comparison.Results.GroupBy(r => (r.Vehicle, IsInventory: r.Level.Governance == Governance.Inventory)).Select(g => (IReadOnlyList<object?>)
                [
                    g.Key.Vehicle.Name,
                    string.Join(" / ", g.Select(r => r.Level.Name).Distinct()),
                    .. methods.Select(m => g.FirstOrDefault(r => r.Method == m) is { } result ? Cell(result) : "no such level"),
                ]),
            ]);
    }

    private static string Cell(MethodResult result) => result switch
    {
        { Lowest: { Status: RatingStatus.DeadExceeds } dead } => $"0, dead load exceeds {RatingWording.Member(dead)} {RatingWording.ActsIn(dead)}",
        { Lowest: { } lowest } => $"{(result.IsAtMost ? "at most " : "")}{PostingWording.Factor(lowest.Factor)}, {RatingWording.Member(lowest)} {RatingWording.ActsIn(lowest)}{(lowest.Beside is { } beside ? $", beside {beside.Vehicle.Name}" : "")}",
        { Reason: NotRatedReason.Uncarried } => "withheld",
        _ => "not rated",
    };

    private static IEnumerable<string> NotRated(MethodComparison comparison, DisplayUnits units)
    {
        foreach (BridgeRating rating in comparison.Ratings)
        {
            foreach ((string reason, string[] members) in Missing(comparison, rating.Method, blank: true).Concat(Missing(comparison, rating.Method, blank: false)))
            {
                yield return $"{rating.Method.Name}: {reason} for {(members.Length == comparison.Bridge.Truss.Members.Count ? "every member" : string.Join(", ", members))}";
            }
        }

        foreach (var same in comparison.Results.Where(r => r.Reason is not null).GroupBy(r => (r.Vehicle, Reason: RatingWording.Of(r.Reason!, units))))
        {
            yield return $"{same.Key.Vehicle.Name} by {string.Join(", ", same.Select(r => $"{r.Method.Name} {r.Level.Name}"))}: {same.Key.Reason}";
        }
    }

    // Blank columns, or what the makes of members lack, each with its members.
    private static IEnumerable<(string Reason, string[] Members)> Missing(MethodComparison comparison, RatingMethod method, bool blank) =>
        comparison.Missing(method).Where(r => r.Reason is NotRatedReason.NoCapacity { Lacking: null } == blank)
            .GroupBy(r => r.Reason switch
            {
                NotRatedReason.NoCapacity { Lacking: null } given => $"column \"{RatingWording.ColumnOf(given.Capacity)}\" of members.csv is blank",
                NotRatedReason.NoCapacity { Lacking: { } lacking } => string.Join(". ", lacking.Select(MissingDatumWording.Of)),
                _ => string.Join(". ", ((NotRatedReason.PartLacks)r.Reason!).Lacking.Select(MissingDatumWording.Of)),
            })
            .Select(g => (g.Key, g.Select(r => r.Name).Distinct().ToArray()));

    private static IEnumerable<string> Notes(MethodComparison comparison)
    {
        if (comparison.Results.Any(r => r.IsAtMost))
        {
            yield return "At most: a member that the vehicle loads has no capacity for the method, so that the factor is no more than what is given and may be less.";
        }

        if (comparison.Ratings.Any(r => r.Rows.Any(row => RatingWording.Mode(row) is not null)))
        {
            yield return "Where members have sections, each method makes their strength by its own rules, from the same sections, materials and findings.";
        }

        yield return $"Where capacities are given, LRFR and LFR take the two factored columns (\"{RatingWording.ColumnOf(GivenCapacity.Tension)}\", \"{RatingWording.ColumnOf(GivenCapacity.Compression)}\"), ASR the four allowable ones. "
            + "They are taken as they stand: whether one factored capacity serves LRFR and LFR alike, with the resistance factors of both in it, is for the one who gave it to say, and nothing here has checked it.";
        yield return "Inventory is a load that may use the bridge for an indefinite time, operating the most that it may be let carry, and a legal, emergency or permit level is one factor for one class: a factor of one level is not to be held against a factor of another.";
    }

    private static IEnumerable<string> Assumed(MethodComparison comparison, DisplayUnits units) =>
        comparison.Ratings.SelectMany(r => r.Stamps.Select(s => (r.Method.Name, Text: RatingWording.Of(s, units)))).GroupBy(s => s.Text)
            .Select(g => $"{string.Join(", ", g.Select(s => s.Name).Distinct())}: {g.Key}");

    private static string Reason(MethodResult result, DisplayUnits units) =>
        result.Reason is { } reason ? RatingWording.Of(reason, units)
        : result.Unrated.Count > 0 ? string.Join("; ", result.Unrated.Select(r => RatingWording.Of(r.Reason!, units)).Distinct())
        : "";

    private static RatingStatus Status(MethodResult result) => result switch
    {
        { Lowest: { } lowest } => lowest.Status,
        { Reason: NotRatedReason.Uncarried } => RatingStatus.Withheld,
        { Reason: null, Unrated.Count: 0 } => RatingStatus.NotLoaded,
        _ => RatingStatus.NotRated,
    };

    private static IReadOnlyList<object?> CsvRow(MethodResult r, DisplayUnits units) =>
    [
        r.Vehicle.Name, VehicleClassNames.Name(r.Vehicle.Class), r.Method.Name, r.Level.Name, Words.Of(Status(r)), r.Lowest?.Factor, r.IsAtMost ? "yes" : "",
        r.Lowest?.Truss ?? "", r.Lowest?.Name ?? "", r.Lowest is null ? "" : RatingWording.ActsIn(r.Lowest),
        r.Lowest?.Beside?.Vehicle.Name ?? "", r.Level.LiveFactor, Reason(r, units),
    ];

    private static void WriteHead(Utf8JsonWriter json, Bridge bridge)
    {
        json.WriteString("bridge", bridge.Name);
        json.WriteString("caution", Words.Caution);
        json.WriteString("scope", ScopeWording.Of(bridge));
        json.WriteString("comparison", NeverMixed);
        json.WriteString("notItsOwnBasis", OwnBasis(bridge).FirstOrDefault());
    }

    private static void Write(Utf8JsonWriter json, MethodComparison comparison)
    {
        WriteHead(json, comparison.Bridge);
        json.WriteStartArray("methods");
        foreach (BridgeRating rating in comparison.Ratings)
        {
            json.WriteStartObject();
            json.WriteString("method", rating.Method.Name);
            json.WriteString("name", rating.Method.FullName);
            json.WriteString("capacities", rating.Method.GivenCapacityMeaning == CapacityMeaning.AllowableForce ? "allowable" : "factored");
            json.WriteNames("assumptions", RatingJson.Assumptions(rating));
            json.WriteStartArray("blankCapacities");
            foreach ((string column, string[] members) in Missing(comparison, rating.Method, blank: true))
            {
                json.WriteStartObject();
                json.WriteString("column", column.Split('"')[1]);
                json.WriteNames("members", members);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteStartArray("lacking");
            foreach ((string reason, string[] members) in Missing(comparison, rating.Method, blank: false))
            {
                json.WriteStartObject();
                json.WriteString("reason", reason);
                json.WriteNames("members", members);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("results");
        foreach (MethodResult result in comparison.Results)
        {
            string reason = Reason(result, DisplayUnits.Si);
            json.WriteStartObject();
            json.WriteString("vehicle", result.Vehicle.Name);
            json.WriteString("class", VehicleClassNames.Name(result.Vehicle.Class));
            json.WriteString("method", result.Method.Name);
            json.WriteString("level", result.Level.Name);
            json.WriteString("status", Words.Of(Status(result)));
            json.WriteNumberOrNull("factor", result.Lowest?.Factor);
            json.WriteBoolean("atMost", result.IsAtMost);
            json.WriteString("truss", result.Lowest?.Truss);
            json.WriteString("member", result.Lowest?.Name);
            json.WriteString("sense", result.Lowest is null ? null : RatingWording.SenseOf(result.Lowest));
            json.WriteString("beside", result.Lowest?.Beside?.Vehicle.Name);
            json.WriteNumberOrNull("liveFactor", result.Level.LiveFactor);
            json.WriteString("reason", reason.Length == 0 ? null : reason);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
