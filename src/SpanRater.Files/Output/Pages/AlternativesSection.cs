using System.Text.Json;

namespace SpanRater.Files;

/// <summary>The part of <c>post</c> that says what would help, most first.</summary>
internal static class AlternativesSection
{
    private const string AsItIs = "as it is";

    public static IEnumerable<ResultBlock> Blocks(Alternatives alternatives, DisplayUnits units)
    {
        yield return new ResultBlock.Heading("What would help, most first");
        if (alternatives.Offered.Count > 0)
        {
            yield return new ResultBlock.Grid(Lowest(alternatives));
            yield return new ResultBlock.Items("What each asks for:", [.. AsksFor(alternatives, units)]);
            yield return new ResultBlock.Heading("Factor of each type with each change", 3);
            yield return new ResultBlock.Grid(ByType(alternatives));
        }

        if (alternatives.NotOffered.Count > 0)
        {
            yield return new ResultBlock.Items("Not offered:", [.. AlternativeWording.NotOffered(alternatives)]);
        }

        yield return new ResultBlock.Paragraph(AlternativeWording.NotInForce, Strong: true);
    }

    /// <summary>The same in lines above a table in CSV.</summary>
    public static IEnumerable<string> Notes(Alternatives alternatives, DisplayUnits units)
    {
        Bridge bridge = alternatives.Present.Rating.Bridge;
        foreach (Alternative each in alternatives.All)
        {
            yield return $"What would help: {AlternativeWording.Name(each.Kind)}: {Comes(each, bridge)}; it asks for {AlternativeWording.AsksFor(each, bridge, units)}";
        }

        foreach (string line in AlternativeWording.NotOffered(alternatives))
        {
            yield return $"Not offered: {line}";
        }

        yield return AlternativeWording.NotInForce;
    }

    public static void Write(Utf8JsonWriter json, Alternatives? alternatives)
    {
        json.WriteStartArray("alternatives");
        foreach (Alternative each in alternatives?.All ?? [])
        {
            Write(json, each, alternatives!.Present.Rating.Bridge);
        }

        json.WriteEndArray();
        json.WriteStartArray("alternativesNotOffered");
        foreach ((AlternativeKind kind, NotOfferedReason reason) in alternatives?.NotOffered ?? [])
        {
            json.WriteStartObject();
            json.WriteString("change", AlternativeWording.InJson(kind));
            json.WriteString("reason", AlternativeWording.Why(reason));
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static ResultTable Lowest(Alternatives alternatives) => new(
        [
            new("change"), new("lowest factor"), new("gain"), new("vehicle"), new(PartWords.Headings(alternatives.Present.Rating).Name), new(PartWords.Headings(alternatives.Present.Rating).In), new("level"),
            new("one limit for all legal types [US ton]"),
        ],
        [
            Row(AsItIs, alternatives.Lowest, "", alternatives.Present),
            .. alternatives.All.Select(a => Row(AlternativeWording.Name(a.Kind), a.Lowest, AlternativeWording.Gain(a.Gain), a.Posting)),
        ])
    {
        Shows = [alternatives.Lowest, .. alternatives.All.Select(a => a.Lowest)],
    };

    private static IReadOnlyList<object?> Row(string name, RatingRow? lowest, string gain, Posting? posting) =>
    [
        name,
        PostingWording.Factor(lowest?.Factor),
        gain,
        lowest is null ? "" : RatingWording.Under(lowest),
        lowest is null ? "" : RatingWording.Member(lowest),
        lowest is null ? "" : RatingWording.ActsIn(lowest),
        lowest?.Level.Name ?? "",
        posting is null ? "refused" : PostingWording.InTable(posting.Common.Verdict, posting.Common.SetBy?.Tons, posting.Common.IsAtMost),
    ];

    private static IEnumerable<string> AsksFor(Alternatives alternatives, DisplayUnits units)
    {
        Bridge bridge = alternatives.Present.Rating.Bridge;
        foreach (Alternative each in alternatives.All)
        {
            string unknown = each.Refusal is { } refusal ? $". With it nothing is rated: {RefusalWording.Sentence(refusal, bridge.Truss)}"
                : each.Lowest is null && alternatives.Lowest is null ? ". With it no type has a factor either"
                : each.Gain is null && alternatives.Lowest is not null ? ". With it a type that has a factor now has none, so that its gain is not known"
                : "";
            yield return $"{AlternativeWording.Name(each.Kind)}: {AlternativeWording.AsksFor(each, bridge, units)}{unknown}";
        }
    }

    private static string Comes(Alternative each, Bridge bridge) => each switch
    {
        { Refusal: { } refusal } => $"nothing is rated with it: {RefusalWording.Sentence(refusal, bridge.Truss)}",
        { Lowest: { } lowest } => $"lowest factor {PostingWording.Factor(lowest.Factor)} ({RatingWording.Under(lowest)}, {RatingWording.Member(lowest)} in {RatingWording.ActsIn(lowest)}, {lowest.Level.Name} level), gain {AlternativeWording.Gain(each.Gain)}",
        _ => "the lowest factor is not known with it",
    };

    private static ResultTable ByType(Alternatives alternatives)
    {
        // As it is, then with each change; null where nothing is rated with it.
        PostingRow?[][] types =
        [
            .. Alternatives.Types(alternatives.Present).Select(r => (PostingRow?[])
                [r, .. alternatives.All.Select(a => a.Posting is null ? null : Alternatives.Types(a.Posting).Single(t => t.Vehicle == r.Vehicle))]),
        ];
        return new ResultTable(
            [new("type"), new("level"), new(AsItIs), .. alternatives.All.Select(a => new ResultColumn(AlternativeWording.Name(a.Kind)))],
            [.. types.Select(t => (IReadOnlyList<object?>)[t[0]!.Vehicle.Name, t[0]!.Level.Name, .. t.Select(r => r is null ? "refused" : Factor(r))])])
        {
            ShowsAt = types.SelectMany((t, r) => t.Select((of, c) => (At: (r, c + 2), of?.Lowest))).Where(c => c.Lowest is not null).ToDictionary(c => c.At, c => c.Lowest!),
        };
    }

    private static string Factor(PostingRow row) => row switch
    {
        { Lowest: { } lowest } => $"{(row.IsAtMost ? "at most " : "")}{PostingWording.Factor(lowest.Factor)}",
        { Reason: NotRatedReason.Uncarried } => "withheld",
        _ => "not rated",
    };

    private static void Write(Utf8JsonWriter json, Alternative each, Bridge bridge)
    {
        json.WriteStartObject();
        json.WriteString("change", AlternativeWording.InJson(each.Kind));
        json.WriteNames("changes", each.Parts.Select(AlternativeWording.InJson));
        json.WriteString("repaired", each.Repaired);
        json.WriteString("asksFor", AlternativeWording.AsksFor(each, bridge, DisplayUnits.Si));
        json.WriteNumberOrNull("gain", each.Gain);
        RatingJson.WriteGoverning(json, "lowest", each.Lowest);
        if (each.Posting is { } posting)
        {
            json.WriteStartObject("singleLimit");
            PostingJson.WriteLimit(json, null, posting.Common);
            json.WriteStartArray("postings");
            foreach (PostingRow row in Alternatives.Types(posting))
            {
                PostingJson.WriteRow(json, row);
            }

            json.WriteEndArray();
        }
        else
        {
            json.WriteRefusal(each.Refusal!, bridge.Truss);
        }

        json.WriteEndObject();
    }
}
