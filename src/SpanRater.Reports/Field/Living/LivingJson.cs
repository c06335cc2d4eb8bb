using System.Text;
using System.Text.Json;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>The facts of the living elevation as the page's script reads them: SI, forces tension positive; nothing in it can end the element that holds it.</summary>
internal static class LivingJson
{
    /// <summary>The document.</summary>
    /// <param name="living">The facts.</param>
    /// <param name="units">Units that the page shows.</param>
    public static string Of(LivingElevation living, DisplayUnits units)
    {
        using var stream = new MemoryStream();

        // The writer's own encoder writes <, > and & as escapes.
        using (var json = new Utf8JsonWriter(stream))
        {
            json.WriteStartObject();
            WriteUnit(json, "force", "newtons", Quantity.Force, units);
            WriteUnit(json, "length", "metres", Quantity.Length, units);
            LivingTrussJson.Write(json, living);
            LivingVehiclesJson.Write(json, living, units);
            WriteBegin(json, living);
            json.WriteString("leavesOut", LeavesOut(living));
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    /// <summary>What a vehicle with other axles is not rated for in the page.</summary>
    /// <param name="living">The facts.</param>
    public static string LeavesOut(LivingElevation living)
    {
        string[] others = [.. living.Rating.PartRows.Select(r => r.Part).Distinct().Select(k => k == PartKind.Deck ? "deck" : $"{PartWords.Of(k)}s")];
        return others.Length == 0
            ? "Truss members only: nothing is given of floor and connections."
            : $"Not available here: {string.Join(", ", others)}, and what stands beside it. They may say less: write the vehicle into vehicles.toml and rate it.";
    }

    private static void WriteUnit(Utf8JsonWriter json, string name, string si, Quantity quantity, DisplayUnits units)
    {
        json.WriteStartObject(name);
        json.WriteString("symbol", units.Symbol(quantity));
        json.WriteNumber(si, 1 / units.From(quantity, 1));
        json.WriteEndObject();
    }

    // Where the page begins: at its worst what governs among truss members, else the rod that withholds a rating.
    private static void WriteBegin(Utf8JsonWriter json, LivingElevation living)
    {
        MemberRow? row = living.Rating.GoverningMember
            ?? living.Rating.MemberRows.FirstOrDefault(r => r.Sense == Sense.Compression && living.Rating.Withheld.Any(w => w.Vehicle == r.Vehicle && w.Reason.Member == r.Name));
        row = living.Vehicles.Any(v => v.Vehicle == row?.Vehicle) ? row : null;
        json.WriteStartObject("begin");
        json.WriteNumber("vehicle", row is null ? 0 : living.Vehicles.ToList().FindIndex(v => v.Vehicle == row.Vehicle));
        json.WriteNumber("truss", row?.Truss is { } truss ? Math.Max(0, living.Trusses.ToList().IndexOf(truss)) : 0);
        json.WriteNumber("member", row?.MemberIndex ?? 0);
        json.WriteString("sense", row?.Sense == Sense.Compression ? "compression" : "tension");
        json.WriteEndObject();
    }
}
