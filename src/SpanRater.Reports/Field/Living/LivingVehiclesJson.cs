using System.Text;
using System.Text.Json;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>The vehicles of the living elevation: axles, shares, levels, and what the engine says of each.</summary>
internal static class LivingVehiclesJson
{
    /// <summary>Writes them: rooms and impacts that several vehicles share are written once.</summary>
    public static void Write(Utf8JsonWriter json, LivingElevation living, DisplayUnits units)
    {
        var rooms = new List<string>();
        var impacts = new List<string>();
        json.WriteStartArray("vehicles");
        foreach (LivingVehicle vehicle in living.Vehicles)
        {
            json.WriteStartObject();
            json.WriteString("name", vehicle.Vehicle.Name);
            json.WriteSi("loads", vehicle.Vehicle.Train.Loads);
            json.WriteStartArray("gaps");
            foreach (AxleGap gap in vehicle.Vehicle.Train.Gaps)
            {
                json.WriteStartArray();
                json.WriteNumberValue(gap.Least);
                json.WriteNumberValue(gap.Most);
                json.WriteEndArray();
            }

            json.WriteEndArray();
            json.WriteBoolean("leaveOut", vehicle.Vehicle.Train.RelievingAxles == RelievingAxles.LeftOut);
            json.WriteStartArray("shares");
            for (int t = 0; t < living.Trusses.Count; t++)
            {
                json.WriteSiOrNull(vehicle.ShareOf(t));
            }

            json.WriteEndArray();
            json.WriteStartArray("levels");
            for (int l = 0; l < vehicle.Levels.Count; l++)
            {
                json.WriteStartObject();
                json.WriteString("name", vehicle.Levels[l].Name);
                json.WritePropertyName("factor");
                json.WriteSiOrNull(vehicle.Levels[l].LiveFactor);
                json.WritePropertyName("table");
                LivingCellsJson.WriteTable(json, living, vehicle, l);
                json.WriteNumber("rooms", PlaceOf(rooms, Table(w => LivingCellsJson.WriteRooms(w, living, vehicle, l))));
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WritePropertyName("told");
            LivingCellsJson.WriteTold(json, living, vehicle);
            json.WriteNumber("impacts", PlaceOf(impacts, Table(w => LivingCellsJson.WriteImpacts(w, living, vehicle))));
            json.WriteNumber("postLevel", Math.Max(0, vehicle.Levels.ToList().FindIndex(l => l.Governance != Governance.Inventory)));
            json.WriteString("posting", vehicle.Posting switch { null => null, PostingRule.ReducedLegal => "reduced", _ => "product" });
            json.WriteString("reason", vehicle.Reason is null ? null : RatingWording.Of(vehicle.Reason, units));
            json.WriteBoolean("withheld", vehicle.Reason is NotRatedReason.Uncarried);
            json.WriteString("whole", WholeBridge(vehicle));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        WriteRaw(json, "rooms", rooms);
        WriteRaw(json, "impacts", impacts);
    }

    // What the engine says of the whole bridge under the vehicle as it is.
    private static string WholeBridge(LivingVehicle vehicle) => vehicle.Lowest is not { } row
        ? "The whole bridge has no factor under it: see Rating."
        : $"Whole bridge, by the rating: {RatingWording.NameAt(row)} in {RatingWording.ActsIn(row)}{(row.Beside is { } beside ? $" beside {beside.Vehicle.Name}" : "")}, {row.Level.Name} level, factor {Words.Factor(row.Factor)}.";

    private static int PlaceOf(List<string> tables, string table)
    {
        int at = tables.IndexOf(table);
        if (at < 0)
        {
            tables.Add(table);
            at = tables.Count - 1;
        }

        return at;
    }

    private static string Table(Action<Utf8JsonWriter> write)
    {
        using var stream = new MemoryStream();
        using (var json = new Utf8JsonWriter(stream))
        {
            write(json);
        }

        return Encoding.UTF8.GetString(stream.ToArray());
    }

    private static void WriteRaw(Utf8JsonWriter json, string name, List<string> tables)
    {
        json.WriteStartArray(name);
        tables.ForEach(t => json.WriteRawValue(t));
        json.WriteEndArray();
    }
}
