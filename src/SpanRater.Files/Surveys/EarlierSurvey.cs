using System.Globalization;
using System.Text.Json;

namespace SpanRater.Files;

/// <summary>An earlier survey, read back from its JSON.</summary>
/// <param name="Version">Version of the program that made it.</param>
/// <param name="Asked">What was asked for.</param>
/// <param name="Bridges">Its bridges.</param>
public sealed record EarlierSurvey(string Version, SurveyAsked Asked, IReadOnlyList<SurveyedBridge> Bridges)
{
    /// <summary>Reads one.</summary>
    /// <param name="path">The file.</param>
    /// <param name="wrong">Why it cannot be used, with the mend; null where it can.</param>
    /// <returns>The survey; null where it cannot be used.</returns>
    public static EarlierSurvey? Read(string path, out string? wrong)
    {
        ArgumentException.ThrowIfNullOrWhiteSpace(path);
        wrong = null;
        try
        {
            using FileStream stream = File.OpenRead(path);
            using var json = JsonDocument.Parse(stream);
            JsonElement root = json.RootElement;
            if (root.ValueKind != JsonValueKind.Object || !root.TryGetProperty("kind", out JsonElement kind) || kind.ValueKind != JsonValueKind.String || kind.GetString() != SurveyPage.Kind)
            {
                wrong = $"{path}: is JSON, but no survey: name the survey.json that an earlier survey wrote, or what it gave by --format json.";
                return null;
            }

            if (root.GetProperty("format").GetInt32() != ResultFormats.JsonFormat)
            {
                wrong = string.Create(CultureInfo.InvariantCulture, $"{path}: has JSON of format {root.GetProperty("format").GetInt32()}, and this program reads format {ResultFormats.JsonFormat}: run the earlier survey again.");
                return null;
            }

            SurveyedBridge[] bridges = [.. root.GetProperty("bridges").EnumerateArray().Select(b => SurveyReader.Bridge(b, b.GetProperty("folder").GetString() ?? throw new FormatException()))];
            if (bridges.DistinctBy(b => b.Folder).Count() < bridges.Length)
            {
                throw new FormatException();
            }

            return new EarlierSurvey(root.GetProperty("program").GetString() ?? throw new FormatException(), SurveyReader.Asked(root), bridges);
        }
        catch (JsonException e) when (e.LineNumber is not null)
        {
            wrong = string.Create(CultureInfo.InvariantCulture, $"{path}:{e.LineNumber + 1}:{e.BytePositionInLine + 1}: is no whole JSON here: name the survey.json that an earlier survey wrote.");
        }
        catch (Exception e) when (e is FormatException or KeyNotFoundException or InvalidOperationException)
        {
            wrong = $"{path}: is not as a survey writes it: name the survey.json that an earlier survey wrote, unchanged.";
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            wrong = $"{path}: cannot be read: {(e is UnauthorizedAccessException ? "access is denied, or it is a folder" : "it is not there, or cannot be opened")}.";
        }

        return null;
    }
}
