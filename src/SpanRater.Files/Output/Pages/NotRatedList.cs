using System.Text.Json;

namespace SpanRater.Files;

/// <summary>What is not rated and why, once for each reason: not one line for each of the rows.</summary>
public static class NotRatedList
{
    /// <summary>The lead of such a list.</summary>
    public const string Lead = "Not rated:";

    /// <summary>One line a reason and effect, with its parts or vehicles.</summary>
    /// <param name="rows">Rows that are not rated, or withheld.</param>
    /// <param name="notAsked">The bridge's own vehicles that its list of vehicles leaves out.</param>
    /// <param name="units">The units to show.</param>
    public static IReadOnlyList<string> Lines(IEnumerable<RatingRow> rows, IReadOnlyList<string> notAsked, DisplayUnits units) =>
        [
            .. Entries(rows, notAsked, units)
                .GroupBy(e => (e.Truss, e.Member, e.Vehicle, e.Reason)).Select(same => same.First() with { Sense = same.First().Sense is null ? null : string.Join(" and ", same.Select(e => e.Sense)) })
                .GroupBy(e => (e.Sense, e.Reason)).Select(g =>
                $"{string.Join(", ", g.GroupBy(e => e.Member ?? e.Vehicle).Select(m => m.Count() == 1 && m.First().Truss is { } truss ? $"{m.Key} ({truss})" : m.Key))}{(g.Key.Sense is null ? "" : $" in {g.Key.Sense}")}: {g.Key.Reason}"),
        ];

    private static List<Entry> Entries(
        IEnumerable<RatingRow> rows, IReadOnlyList<string> notAsked, DisplayUnits units) =>
        [
            .. rows.Select(r => r.IsAboutItsVehicle
                ? new Entry(null, null, null, r.Vehicle.Name, RatingWording.Of(r.Reason!, units))
                : new Entry(r.Truss, r.Name, RatingWording.ActsIn(r), null, RatingWording.Of(r.Reason!, units))).Distinct(),
            .. notAsked.Select(v => new Entry(null, null, null, v, "not asked for: name it under vehicles in bridge.toml [rating]")),
        ];

    /// <summary>The same as facts.</summary>
    /// <param name="json">The writer.</param>
    /// <param name="rows">Rows that are not rated, or withheld.</param>
    /// <param name="notAsked">The bridge's own vehicles that its list of vehicles leaves out.</param>
    internal static void Write(Utf8JsonWriter json, IEnumerable<RatingRow> rows, IReadOnlyList<string> notAsked)
    {
        json.WriteStartArray("notRated");
        foreach ((string? truss, string? member, string? sense, string? vehicle, string reason) in Entries(rows, notAsked, DisplayUnits.Si))
        {
            json.WriteStartObject();
            json.WriteString("truss", truss);
            json.WriteString("member", member);
            bool hasSense = sense == Words.Of(Sense.Tension) || sense == Words.Of(Sense.Compression);
            json.WriteString("effect", member is null ? null : hasSense ? PartWords.Of(PartEffect.Force) : sense == PartWords.InWords(PartEffect.Moment) ? PartWords.Of(PartEffect.Moment) : sense);
            json.WriteString("sense", hasSense ? sense : null);
            json.WriteString("vehicle", vehicle);
            json.WriteString("reason", reason);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private sealed record Entry(string? Truss, string? Member, string? Sense, string? Vehicle, string Reason);
}
