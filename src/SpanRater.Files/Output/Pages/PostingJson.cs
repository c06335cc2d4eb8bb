using System.Text.Json;

namespace SpanRater.Files;

/// <summary>A posting as JSON.</summary>
internal static class PostingJson
{
    public static void Write(Utf8JsonWriter json, Posting posting, IReadOnlyList<RatingRow> unrated, IReadOnlyList<string> notAsked, Alternatives? alternatives)
    {
        WriteHead(json, posting.Rating.Bridge, posting.Rating.Method, ScopeWording.Of(posting.Rating));
        json.WriteStartArray("postings");
        foreach (PostingRow row in posting.Legal.Concat(posting.Emergency))
        {
            WriteRow(json, row);
        }

        json.WriteEndArray();
        json.WriteStartArray("limits");
        foreach ((Silhouette silhouette, PostingLimit limit) in posting.Limits)
        {
            json.WriteStartObject();
            WriteLimit(json, PostingWording.Of(silhouette), limit);
        }

        foreach (PostingRow own in posting.OwnTypes)
        {
            json.WriteStartObject();
            WriteLimit(json, null, new PostingLimit([own]));
        }

        json.WriteEndArray();
        json.WriteStartObject("singleLimit");
        WriteLimit(json, null, posting.Common);
        if (posting.IsClosureKnown)
        {
            json.WriteBoolean("closure", posting.Closure);
        }
        else
        {
            json.WriteNull("closure");
        }

        json.WriteBoolean("complete", posting.IsComplete);
        json.WriteForce("smallestSafeLoad", posting.Smallest?.SafeLoad);
        NotRatedList.Write(json, unrated, []);
        json.WriteStartArray("withoutRule");
        foreach (OtherLoad load in posting.Others)
        {
            WriteOther(json, load);
        }

        json.WriteEndArray();
        json.WriteNames("notAsked", notAsked);
        AlternativesSection.Write(json, alternatives);
        json.WriteNames("assumptions", RatingJson.Assumptions(posting.Rating));
        json.WriteNumber("residual", posting.Rating.Residual);
    }

    public static void WriteRefused(Utf8JsonWriter json, Bridge bridge, RatingMethod method, Refusal refusal)
    {
        WriteNoLoads(json, bridge, method);
        json.WriteRefusal(refusal, bridge.Truss);
    }

    public static void WriteWithoutRule(Utf8JsonWriter json, Bridge bridge, RatingMethod method, string why)
    {
        WriteNoLoads(json, bridge, method);
        json.WriteString("reason", why);
    }

    private static void WriteNoLoads(Utf8JsonWriter json, Bridge bridge, RatingMethod method)
    {
        WriteHead(json, bridge, method, ScopeWording.Of(bridge));
        json.WriteNames("postings", []);
        json.WriteNames("limits", []);
        json.WriteNull("singleLimit");
        json.WriteNull("closure");
        json.WriteBoolean("complete", false);
        json.WriteNull("smallestSafeLoad");
        AlternativesSection.Write(json, null);
    }

    private static void WriteHead(Utf8JsonWriter json, Bridge bridge, RatingMethod method, string scope)
    {
        json.WriteString("bridge", bridge.Name);
        json.WriteString("method", method.Name);
        json.WriteString("caution", Words.Caution);
        json.WriteString("scope", scope);
    }

    public static void WriteRow(Utf8JsonWriter json, PostingRow row)
    {
        json.WriteStartObject();
        json.WriteString("vehicle", row.Vehicle.Name);
        json.WriteString("class", VehicleClassNames.Name(row.Vehicle.Class));
        json.WriteString("silhouette", row.Silhouette is null ? null : PostingWording.Of(row.Silhouette));
        json.WriteString("level", row.Level.Name);
        json.WriteForce("weight", row.Weight);
        json.WriteForce("trainWeight", (row.Vehicle as Loading)?.TrainWeight);
        json.WriteNumberOrNull("factor", row.Lowest?.Factor);
        WriteNamed(json, row.Lowest);
        json.WriteString("rule", PostingWording.Of(row.Rule));
        json.WriteString("verdict", PostingWording.Of(row.Verdict));
        json.WriteForce("safeLoad", row.SafeLoad);
        json.WriteForce("singleAxle", row.SingleAxle);
        json.WriteForce("tandem", row.Tandem);
        json.WriteNumberOrNull("postedUsTons", row.Tons);
        json.WriteBoolean("atMost", row.IsAtMost);
        json.WriteString("reason", row.Verdict == PostingVerdict.NotGiven ? PostingWording.WhyNotGiven(row, DisplayUnits.Si) : null);
        json.WriteEndObject();
    }

    private static void WriteOther(Utf8JsonWriter json, OtherLoad load)
    {
        RatingRow? row = load.Deciding is { Factor: not null } rated ? rated : null;
        json.WriteStartObject();
        json.WriteString("vehicle", load.Vehicle.Name);
        json.WriteString("class", VehicleClassNames.Name(load.Vehicle.Class));
        json.WriteString("verdict", PostingWording.Of(load.Verdict));
        json.WriteNumberOrNull("factor", row?.Factor);
        json.WriteString("level", load.Deciding?.Level.Name);
        WriteNamed(json, row);
        json.WriteString("reason", load.Deciding?.Reason is { } reason ? RatingWording.Of(reason, DisplayUnits.Si) : null);
        json.WriteEndObject();
    }

    private static void WriteNamed(Utf8JsonWriter json, RatingRow? row)
    {
        json.WriteString("truss", row?.Truss);
        json.WriteString("part", row is null ? null : PartWords.Of(row.Part));
        json.WriteString("member", row?.Name);
        json.WriteString("effect", row is null ? null : PartWords.Of(row.ActsAs));
        json.WriteString("sense", row is null ? null : RatingWording.SenseOf(row));
        json.WriteString("mode", row is null ? null : RatingWording.Mode(row));
        json.WriteString("place", row is null ? null : RatingWording.Place(row));
    }

    public static void WriteLimit(Utf8JsonWriter json, string? silhouette, PostingLimit limit)
    {
        json.WriteString("silhouette", silhouette);
        json.WriteNames("types", limit.Types.Select(t => t.Vehicle.Name));
        json.WriteString("verdict", PostingWording.Of(limit.Verdict));
        json.WriteForce("safeLoad", limit.SetBy?.SafeLoad);
        json.WriteNumberOrNull("postedUsTons", limit.SetBy?.Tons);
        json.WriteBoolean("atMost", limit.IsAtMost);
        json.WriteString("setBy", limit.SetBy?.Vehicle.Name);
        json.WriteEndObject();
    }
}
