using System.Globalization;
using System.Text.Json;

namespace SpanRater.Files;

/// <summary>Says what differs since an earlier survey, and why.</summary>
internal static class SurveyChangeWording
{
    private static readonly ResultColumn[] Columns =
    [
        new("bridge"), new("folder"), new("what"), new("vehicle"), new("factor before"), new("factor after"), new("part before"), new("part after"), new("posting before"), new("posting now"), new("asked for before"), new("asks for"), new("why"),
    ];

    /// <summary>The sentence on top.</summary>
    public static string Summary(SurveyChanges changes)
    {
        int Count(SurveyChangeKind kind) => changes.Bridges.Count(b => b.Kind == kind);
        string program = changes.VersionBefore == changes.VersionAfter ? "" : $" The program changed from version {changes.VersionBefore} to {changes.VersionAfter}: factors may differ by its rules.";
        string asked = changes.AskedDiffers ? " Other vehicles were asked for then." : "";
        int signs = changes.Bridges.Count(b => b.SignDiffers);
        string limits = signs == 0 ? "" : string.Create(CultureInfo.InvariantCulture, $" The limit of legal types differs on {signs} bridge{(signs == 1 ? "" : "s")}: a sign that stands there would have to be replaced.");
        return string.Create(
            CultureInfo.InvariantCulture,
            $"Since the earlier survey: changed {Count(SurveyChangeKind.Changed)}, new {Count(SurveyChangeKind.New)}, gone {Count(SurveyChangeKind.Gone)}, the same {changes.Same}.{limits}{program}{asked}");
    }

    /// <summary>A line a factor that differs, or a bridge that is new, gone or differs in anything else.</summary>
    /// <param name="changes">The changes.</param>
    /// <param name="isForFile">True for every digit; else as people read factors.</param>
    public static ResultTable Table(SurveyChanges changes, bool isForFile) => new(Columns, [.. changes.Bridges.SelectMany(c => Rows(changes, c, isForFile))]);

    /// <summary>The facts.</summary>
    public static void Write(Utf8JsonWriter json, SurveyChanges changes)
    {
        json.WriteStartObject("changes");
        json.WriteString("programBefore", changes.VersionBefore);
        json.WriteBoolean("otherVehiclesAsked", changes.AskedDiffers);
        json.WriteNumber("same", changes.Same);
        json.WriteStartArray("bridges");
        foreach (SurveyChange change in changes.Bridges)
        {
            json.WriteStartObject();
            json.WriteString("folder", (change.After ?? change.Before!).Folder);
            json.WriteString("folderBefore", change.Before?.Folder);
            json.WriteString("bridge", (change.After ?? change.Before!).Name);
            json.WriteString("what", Of(change.Kind));
            json.WriteString("standingBefore", change.Before is { } before ? SurveyWording.Key(before.Standing) : null);
            json.WriteString("standing", change.After is { } after ? SurveyWording.Key(after.Standing) : null);
            json.WriteBoolean("postingDiffers", change.PostingDiffers);
            SurveyJson.WritePosting(json, "postingBefore", change.Before?.Posting);
            SurveyJson.WritePosting(json, "posting", change.After?.Posting);
            json.WriteNames("files", change.Files);
            json.WriteString("why", Why(changes, change));
            json.WriteStartArray("factors");
            foreach (SurveyFactorChange factor in change.Factors)
            {
                json.WriteStartObject();
                json.WriteString("vehicle", factor.Vehicle);
                SurveyJson.WriteRow(json, "before", factor.Before, factor.VehicleBefore);
                SurveyJson.WriteRow(json, "after", factor.After, factor.VehicleAfter);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static IEnumerable<IReadOnlyList<object?>> Rows(SurveyChanges changes, SurveyChange change, bool isForFile)
    {
        SurveyedBridge shown = change.After ?? change.Before!;
        string what = change is { Before: { } old, After: { } now } && old.Folder != now.Folder ? $"moved from {old.Folder}" : Of(change.Kind);
        string before = change.Before is { } b ? SurveyWording.InTable(b.Standing) : "", after = change.After is { } a ? SurveyWording.InTable(a.Standing) : "";
        (string then, string limit) = change.PostingDiffers ? (Limit(change.Before!), Limit(change.After!)) : ("", "");
        string why = Why(changes, change);
        SurveyFactorChange?[] factors = change.Factors.Count > 0 ? [.. change.Factors] : [null];

        // People read the posting once a bridge; in a file every row stands for itself.
        return factors.Select((f, i) => (IReadOnlyList<object?>)
        [
            shown.Name ?? "", shown.Folder, what, f is null ? "" : f.Vehicle ?? "what governs", Factor(f?.Before, isForFile), Factor(f?.After, isForFile),
            Part(f?.Before, f?.Vehicle is null ? f?.VehicleBefore : null), Part(f?.After, f?.Vehicle is null ? f?.VehicleAfter : null),
            isForFile || i == 0 ? then : "", isForFile || i == 0 ? limit : "", before, after, why,
        ]);
    }

    private static string Factor(SurveyedRow? row, bool isForFile) => row?.Factor is not { } factor ? "" : isForFile ? factor.ToString("R", CultureInfo.InvariantCulture) : Words.Factor(factor);

    private static string Part(SurveyedRow? row, string? vehicle) => row is null ? "" : $"{row.Where} in {row.In}{(vehicle is null ? "" : $" under {vehicle}")}";

    private static string Limit(SurveyedBridge bridge) => bridge.Posting is not { } posting ? "none made" : string.Join(
        "; ",
        [
            $"{SurveyWording.InTable(posting)}{(posting.Tons is null ? "" : " US tons")}{(posting.SetBy is { } type ? $" by {type}" : "")}",
            $"under 3 US tons: {SurveyWording.UnderLine(posting)}",
            .. posting.Emergency.Count == 0 ? Array.Empty<string>() : [$"to post apart: {string.Join(", ", posting.Emergency)}"],
        ]);

    private static string Of(SurveyChangeKind kind) => kind switch { SurveyChangeKind.New => "new", SurveyChangeKind.Gone => "gone", _ => "changed" };

    private static string Why(SurveyChanges changes, SurveyChange change)
    {
        if (change.Kind != SurveyChangeKind.Changed)
        {
            return "";
        }

        string[] reasons =
        [
            .. change.Files,
            .. changes.VersionBefore == changes.VersionAfter ? Array.Empty<string>() : [$"program {changes.VersionBefore} then, {changes.VersionAfter} now"],
            .. changes.AskedDiffers ? ["other vehicles asked for"] : Array.Empty<string>(),
        ];
        return reasons.Length > 0 ? string.Join("; ", reasons) : change.Before!.Folder != change.After!.Folder ? "its folder moved" : "no cause found: input, program and vehicles are the same";
    }
}
