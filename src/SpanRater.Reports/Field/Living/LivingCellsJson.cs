using System.Text.Json;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>Tables of the living elevation with a cell for every truss, member and sense.</summary>
internal static class LivingCellsJson
{
    private static readonly Sense[] Senses = [Sense.Tension, Sense.Compression];

    /// <summary>The engine's own factors of the vehicle as it is, or why there is none.</summary>
    public static void WriteTable(Utf8JsonWriter json, LivingElevation living, LivingVehicle vehicle, int level) => WriteCells(json, living, (t, m, sense) =>
    {
        MemberRow? row = vehicle.RowOf(t, level, m, sense);
        if (row?.Factor is { } factor)
        {
            json.WriteNumberValue(factor);
        }
        else
        {
            json.WriteStringValue(row is null ? Words.InTable(RatingStatus.NotRated) : Words.InTable(row.Status));
        }
    });

    /// <summary>Of members whose force depends on rods: the engine's peaks on each truss, share in them; null of all others.</summary>
    public static void WriteTold(Utf8JsonWriter json, LivingElevation living, LivingVehicle vehicle) => WriteCells(json, living, (t, m, sense) =>
    {
        if (!living.Rating.Crossing.DependsOnRods(m) || vehicle.RowOf(t, 0, m, sense) is not { Peak: { } peak, Live: { } live })
        {
            json.WriteNullValue();
            return;
        }

        json.WriteStartObject();
        json.WriteNumber("force", live);
        json.WriteNumber("station", peak.Station);
        json.WriteString("direction", peak.Direction == Direction.Right ? "right" : "left");
        json.WriteSi("gaps", peak.Gaps);
        json.WriteNumber("approach", (int)peak.Approach);
        json.WriteEndObject();
    });

    /// <summary>C less the factored dead load; of a rod that only pulls, in compression, the pull that the dead load leaves it.</summary>
    public static void WriteRooms(Utf8JsonWriter json, LivingElevation living, LivingVehicle vehicle, int level) => WriteCells(json, living, (t, m, sense) =>
    {
        MemberRow? row = vehicle.RowOf(t, level, m, sense);
        json.WriteSiOrNull(row is null ? null : sense == Sense.Compression && row.Member.TensionOnly ? -row.FactoredDead : row.Capacity - row.FactoredDead);
    });

    /// <summary>The allowance of each member and sense, the same on all trusses.</summary>
    public static void WriteImpacts(Utf8JsonWriter json, LivingElevation living, LivingVehicle vehicle)
    {
        json.WriteStartArray();
        for (int m = 0; m < living.Rating.Bridge.Truss.Members.Count; m++)
        {
            json.WriteStartArray();
            foreach (Sense sense in Senses)
            {
                json.WriteSiOrNull(vehicle.ImpactOf(m, sense, living.Rating));
            }

            json.WriteEndArray();
        }

        json.WriteEndArray();
    }

    // [trusses × members × senses]
    private static void WriteCells(Utf8JsonWriter json, LivingElevation living, Action<int, int, Sense> write)
    {
        json.WriteStartArray();
        for (int t = 0; t < living.Trusses.Count; t++)
        {
            json.WriteStartArray();
            for (int m = 0; m < living.Rating.Bridge.Truss.Members.Count; m++)
            {
                json.WriteStartArray();
                foreach (Sense sense in Senses)
                {
                    write(t, m, sense);
                }

                json.WriteEndArray();
            }

            json.WriteEndArray();
        }

        json.WriteEndArray();
    }
}
