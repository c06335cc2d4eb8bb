using System.Text.Json;

namespace SpanRater.Files;

/// <summary>Reads back what <see cref="SurveyJson"/> wrote of a bridge.</summary>
internal static class SurveyReader
{
    /// <summary>A bridge.</summary>
    /// <param name="json">Its object.</param>
    /// <param name="folder">Its folder, as the survey shows it.</param>
    /// <exception cref="FormatException">It is not what a survey wrote.</exception>
    public static SurveyedBridge Bridge(JsonElement json, string folder)
    {
        try
        {
            JsonElement governing = json.GetProperty("governing");
            return new SurveyedBridge
            {
                Folder = folder,
                Name = Text(json, "bridge"),
                Hash = Text(json, "hash"),
                Method = Text(json, "method"),
                Standing = SurveyWording.StandingOf(Text(json, "standing")) ?? throw new FormatException(),
                Why = Text(json, "why") ?? throw new FormatException(),
                Governing = Row(governing),
                GoverningVehicle = governing.ValueKind == JsonValueKind.Null ? null : Text(governing, "vehicle"),
                Posting = Posting(json.GetProperty("posting")),
                Scope = Text(json, "scope") ?? throw new FormatException(),
                PartsNotRated = json.GetProperty("partsNotRated").GetInt32(),
                VehiclesNotRated = json.GetProperty("vehiclesNotRated").GetInt32(),
                NotRated = Texts(json, "notRated"),
                Gaps = Texts(json, "missingForAll"),
                Vehicles = [.. json.GetProperty("vehicles").EnumerateArray().Select(Vehicle)],
                Assumed = Texts(json, "assumptions"),
                Errors = Texts(json, "errors"),
                Warnings = Texts(json, "warnings"),
                Inputs = [.. json.GetProperty("inputs").EnumerateArray().Select(i => new SurveyedInput(Text(i, "file") ?? throw new FormatException(), Text(i, "sha256") ?? throw new FormatException()))],
            };
        }
        catch (Exception e) when (e is KeyNotFoundException or InvalidOperationException or JsonException)
        {
            throw new FormatException("It is not what a survey wrote of a bridge.", e);
        }
    }

    /// <summary>What was asked for; its catalogues are not kept by name, but by their hashes among the inputs.</summary>
    /// <param name="json">The document.</param>
    public static SurveyAsked Asked(JsonElement json)
    {
        JsonElement asked = json.GetProperty("asked");
        return new SurveyAsked(asked.GetProperty("vehicles").ValueKind == JsonValueKind.Null ? null : Texts(asked, "vehicles"), Text(asked, "crosses"), []);
    }

    private static SurveyedVehicle Vehicle(JsonElement json) => new(
        Text(json, "vehicle") ?? throw new FormatException(),
        Text(json, "class") ?? throw new FormatException(),
        SurveyWording.VerdictOf(Text(json, "mayCross")) ?? throw new FormatException(),
        json.GetProperty("withheld").GetBoolean(),
        json.GetProperty("atMost").GetBoolean(),
        json.TryGetProperty("member", out _) ? Row(json) : null,
        Texts(json, "missing"),
        Texts(json, "holds"),
        json.TryGetProperty("whyNot", out _) ? Text(json, "whyNot") : null,
        json.TryGetProperty("onlyToCross", out JsonElement guest) && guest.GetBoolean());

    private static SurveyedRow? Row(JsonElement json) => json.ValueKind == JsonValueKind.Null
        ? null
        : new SurveyedRow(
            Text(json, "truss"),
            Text(json, "part") ?? throw new FormatException(),
            Text(json, "member") ?? throw new FormatException(),
            Text(json, "in") ?? throw new FormatException(),
            Text(json, "beside"),
            Text(json, "level") ?? throw new FormatException(),
            Number(json, "factor"));

    private static SurveyedPosting? Posting(JsonElement json) => json.ValueKind == JsonValueKind.Null
        ? null
        : new SurveyedPosting(
            PostingWording.VerdictOf(Text(json, "verdict")) ?? throw new FormatException(),
            (int?)Number(json, "postedUsTons"),
            json.GetProperty("atMost").GetBoolean(),
            Text(json, "setBy"),
            Number(json, "smallestSafeLoad"),
            json.GetProperty("closure") is { ValueKind: not JsonValueKind.Null } closure ? closure.GetBoolean() : null,
            Texts(json, "emergency"));

    private static string? Text(JsonElement json, string name) => json.GetProperty(name).GetString() is { } text ? BridgeSurveyor.Kept(text) : null;

    private static double? Number(JsonElement json, string name) => json.GetProperty(name) is { ValueKind: not JsonValueKind.Null } number ? number.GetDouble() : null;

    private static string[] Texts(JsonElement json, string name) => [.. json.GetProperty(name).EnumerateArray().Select(t => BridgeSurveyor.Kept(t.GetString() ?? throw new FormatException()))];
}
