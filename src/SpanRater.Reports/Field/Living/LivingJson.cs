using System.Text;
using System.Text.Json;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>The facts of the living elevation as the page's script reads them: SI, forces tension positive; nothing in it can end the element that holds it.</summary>
internal static class LivingJson
{
    private static readonly Sense[] Senses = [Sense.Tension, Sense.Compression];

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
            WriteTruss(json, living);
            WriteVehicles(json, living, units);
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

    private static void WriteTruss(Utf8JsonWriter json, LivingElevation living)
    {
        Truss truss = living.Rating.Bridge.Truss;
        TrussCrossing crossing = living.Rating.Crossing;
        json.WriteStartArray("joints");
        foreach (Joint joint in truss.Joints)
        {
            json.WriteStartObject();
            json.WriteString("name", joint.Name);
            json.WriteNumber("x", joint.X);
            json.WriteNumber("y", joint.Y);
            json.WriteBoolean("support", joint.Support is not null);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("members");
        bool slackens = false;
        for (int m = 0; m < truss.Members.Count; m++)
        {
            bool byRods = crossing.DependsOnRods(m), inPair = crossing.Pairs.Any(p => p.First == m || p.Second == m);
            slackens |= truss.Members[m].TensionOnly && !inPair && byRods;
            json.WriteStartObject();
            json.WriteString("name", truss.Members[m].Name);
            json.WriteString("role", truss.Members[m].Role);
            json.WriteNumber("from", truss.FromJoint(m));
            json.WriteNumber("to", truss.ToJoint(m));
            json.WriteBoolean("pulls", truss.Members[m].TensionOnly);
            json.WriteBoolean("rods", byRods);
            WriteNumbers(json, "line", crossing.Lines.Members[m].Line.Ordinates);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteBoolean("slackens", slackens);
        WriteNumbers(json, "stations", truss.Stations);
        json.WriteStartArray("panelPoints");
        foreach (int joint in truss.PanelPoints)
        {
            json.WriteNumberValue(joint);
        }

        json.WriteEndArray();
        json.WriteStartArray("deck");
        foreach (Joint joint in truss.PanelPoints.Select(p => truss.Joints[p]))
        {
            json.WriteStartObject();
            json.WriteNumber("x", joint.X);
            json.WriteNumber("y", joint.Y);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteStartArray("trusses");
        foreach (string? name in living.Trusses)
        {
            json.WriteStringValue(name ?? "");
        }

        json.WriteEndArray();
        json.WriteStartArray("dead");
        for (int t = 0; t < living.Trusses.Count; t++)
        {
            json.WriteStartArray();
            for (int m = 0; m < truss.Members.Count; m++)
            {
                json.WriteNumberValue(living.DeadOf(t, m));
            }

            json.WriteEndArray();
        }

        json.WriteEndArray();
    }

    // Rooms and impacts that several vehicles share are written once.
    private static void WriteVehicles(Utf8JsonWriter json, LivingElevation living, DisplayUnits units)
    {
        var rooms = new List<string>();
        var impacts = new List<string>();
        json.WriteStartArray("vehicles");
        foreach (LivingVehicle vehicle in living.Vehicles)
        {
            json.WriteStartObject();
            json.WriteString("name", vehicle.Vehicle.Name);
            WriteNumbers(json, "loads", vehicle.Vehicle.Train.Loads);
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
                WriteNumberOrNull(json, vehicle.ShareOf(t));
            }

            json.WriteEndArray();
            json.WriteStartArray("levels");
            for (int l = 0; l < vehicle.Levels.Count; l++)
            {
                json.WriteStartObject();
                json.WriteString("name", vehicle.Levels[l].Name);
                json.WritePropertyName("factor");
                WriteNumberOrNull(json, vehicle.Levels[l].LiveFactor);
                json.WritePropertyName("table");
                WriteTable(json, living, vehicle, l);
                json.WriteNumber("rooms", PlaceOf(rooms, Table(w => WriteRooms(w, living, vehicle, l))));
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WritePropertyName("told");
            WriteTold(json, living, vehicle);
            json.WriteNumber("impacts", PlaceOf(impacts, Table(w => WriteImpacts(w, living, vehicle))));
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

    // The engine's own factors of the vehicle as it is, or why there is none.
    private static void WriteTable(Utf8JsonWriter json, LivingElevation living, LivingVehicle vehicle, int level) => WriteCells(json, living, (t, m, sense) =>
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

    // Of members whose force depends on rods: the engine's peaks on each truss, share in them; null of all others.
    private static void WriteTold(Utf8JsonWriter json, LivingElevation living, LivingVehicle vehicle) => WriteCells(json, living, (t, m, sense) =>
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
        WriteNumbers(json, "gaps", peak.Gaps);
        json.WriteNumber("approach", (int)peak.Approach);
        json.WriteEndObject();
    });

    // C less the factored dead load; of a rod that only pulls, in compression, the pull that the dead load leaves it.
    private static void WriteRooms(Utf8JsonWriter json, LivingElevation living, LivingVehicle vehicle, int level) => WriteCells(json, living, (t, m, sense) =>
    {
        MemberRow? row = vehicle.RowOf(t, level, m, sense);
        WriteNumberOrNull(json, row is null ? null : sense == Sense.Compression && row.Member.TensionOnly ? -row.FactoredDead : row.Capacity - row.FactoredDead);
    });

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

    private static void WriteImpacts(Utf8JsonWriter json, LivingElevation living, LivingVehicle vehicle)
    {
        json.WriteStartArray();
        for (int m = 0; m < living.Rating.Bridge.Truss.Members.Count; m++)
        {
            json.WriteStartArray();
            foreach (Sense sense in Senses)
            {
                WriteNumberOrNull(json, vehicle.ImpactOf(m, sense, living.Rating));
            }

            json.WriteEndArray();
        }

        json.WriteEndArray();
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

    private static void WriteNumbers(Utf8JsonWriter json, string name, IEnumerable<double> values)
    {
        json.WriteStartArray(name);
        foreach (double value in values)
        {
            json.WriteNumberValue(value);
        }

        json.WriteEndArray();
    }

    private static void WriteNumberOrNull(Utf8JsonWriter json, double? value)
    {
        if (value is { } number)
        {
            json.WriteNumberValue(number);
        }
        else
        {
            json.WriteNullValue();
        }
    }
}
