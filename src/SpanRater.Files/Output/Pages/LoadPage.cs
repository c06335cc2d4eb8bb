using System.Text.Json;

namespace SpanRater.Files;

/// <summary>What <c>roll</c> says of a live load that is more than one train: a lane load, a crowd, tracks, or vehicles of which the worst counts.</summary>
public static class LoadPage
{
    private static readonly ResultColumn[] Columns = [new("member"), new("role"), new("sense"), new("force", Quantity.Force), new("loaded with")];

    /// <summary>Makes the page.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="load">The live load.</param>
    /// <param name="lines">Influence lines of the truss.</param>
    /// <param name="member">Position of the one member to show; null for all.</param>
    /// <param name="units">The units to show.</param>
    public static ResultPage Of(Bridge bridge, LiveLoad load, InfluenceLines lines, int? member, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(load);
        ArgumentNullException.ThrowIfNull(lines);
        ArgumentNullException.ThrowIfNull(units);
        (double width, string how) = Whole(bridge.Deck, load, units);
        var plan = new LiveLoadPlan(bridge.Truss.Stations, load);
        double stripWidth = CrowdOn(bridge.Deck, load)?.Strip.Width ?? 0;
        LoadedMember[] rows =
        [
            .. bridge.Truss.Members.Select((m, i) => new LoadedMember(
                m,
                plan.MostOn(lines.Members[i].Line, Sense.Tension, m.IsChord, stripWidth),
                plan.MostOn(lines.Members[i].Line, Sense.Compression, m.IsChord, stripWidth))),
        ];
        string what = LiveLoadWording.Describe(load, units);
        string[] notes = [how, "Tension is positive. Each part stands where it brings most, on every stretch of the deck that adds and on no other; no impact."];
        return new ResultPage(
            [
                new ResultBlock.Heading($"{bridge.Title}: {load.Name}"),
                new ResultBlock.Paragraph($"{char.ToUpperInvariant(what[0])}{what[1..]}. {how}"),
                new ResultBlock.Grid(new ResultTable(
                    Columns,
                    [.. rows.Where((_, i) => member is null || member == i).SelectMany(r => ((Sense[])[Sense.Tension, Sense.Compression]).Select(s => Row(r, s, width, units)))])),
                new ResultBlock.Paragraph(notes[1]),
            ],
            new ResultTable(Columns, [.. rows.SelectMany(r => ((Sense[])[Sense.Tension, Sense.Compression]).Select(s => Row(r, s, width, units)))]),
            notes,
            json => Write(json, bridge, load, rows, width));
    }

    /// <summary>The page where rods go slack, over which only single trains are brought.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="load">The live load.</param>
    /// <param name="refusal">Why the truss has no lines; null where it is the rods.</param>
    /// <param name="units">The units to show.</param>
    public static ResultPage Refused(Bridge bridge, LiveLoad load, Refusal? refusal, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(load);
        string why = refusal is null
            ? $"No result is given: {RatingWording.Of(new NotRatedReason.NotATrainWithRods(load.Name), units)}."
            : RefusalWording.Sentence(refusal, bridge.Truss, units);
        return new ResultPage(
            [new ResultBlock.Heading($"{bridge.Title}: {load.Name}"), new ResultBlock.Paragraph(why, Strong: true)],
            new ResultTable(Columns, []),
            [why],
            json =>
            {
                WriteHead(json, bridge, load);
                json.WriteStartArray("peaks");
                json.WriteEndArray();
                if (refusal is not null)
                {
                    json.WriteRefusal(refusal, bridge.Truss);
                    return;
                }

                json.WriteStartObject("refusal");
                json.WriteString("kind", "notATrainWithRods");
                json.WriteString("text", why);
                json.WriteEndObject();
            },
            IsAnswer: false);
    }

    // A crowd is told with what of it a truss carries, of the truss that carries more; everything else whole, on one truss.
    private static (double Width, string How) Whole(Deck deck, LiveLoad load, DisplayUnits units)
    {
        if (load is not Crowd)
        {
            return (1, load is Loading { Lane: not null } ? "All of one lane on one truss, without share and presence." : "All of it on one truss, without share and presence.");
        }

        string metre = units.Symbol(Quantity.Length);
        return CrowdOn(deck, load) is { } crowd
            ? (crowd.Width, $"Of its width one truss carries {ResultTable.Figure(units.From(Quantity.Length, crowd.Width), 3)} {metre} by the lever rule.")
            : (1 / units.From(Quantity.Length, 1), $"Truss spacing and roadway are not given, so this is for 1 {metre} of its width on one truss.");
    }

    private static CrowdShare? CrowdOn(Deck deck, LiveLoad load) =>
        load is Crowd crowd ? new[] { LeverRule.CrowdOn(deck, 0, crowd.Width), LeverRule.CrowdOn(deck, 1, crowd.Width) }.MaxBy(c => c?.Width) : null;

    private static IReadOnlyList<object?> Row(LoadedMember row, Sense sense, double width, DisplayUnits units) => row.Of(sense) is { } effect
        ? [row.Member.Name, row.Member.Role, Words.Of(sense), width * effect.Force, string.Join("; ", effect.Parts.Select(p => $"{LiveLoadWording.Name(p, units)} {LiveLoadWording.Place(p, units)}"))]
        : [row.Member.Name, row.Member.Role, Words.Of(sense), null, "never"];

    private static void WriteHead(Utf8JsonWriter json, Bridge bridge, LiveLoad load)
    {
        json.WriteString("bridge", bridge.Name);
        json.WriteString("vehicle", load.Name);
    }

    private static void Write(Utf8JsonWriter json, Bridge bridge, LiveLoad load, LoadedMember[] rows, double width)
    {
        WriteHead(json, bridge, load);
        json.WriteStartArray("peaks");
        foreach (LoadedMember row in rows)
        {
            json.WriteStartObject();
            json.WriteString("member", row.Member.Name);
            foreach (Sense sense in (Sense[])[Sense.Tension, Sense.Compression])
            {
                Write(json, Words.Of(sense), row.Of(sense), width);
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, string name, LiveEffect? effect, double width)
    {
        if (effect is null)
        {
            json.WriteNull(name);
            return;
        }

        Peak? peak = effect.Parts.OfType<LivePart.Axles>().FirstOrDefault()?.Peak;
        json.WriteStartObject(name);
        json.WriteForce("force", width * effect.Force);
        json.WriteNumberOrNull("station", peak?.Station);
        json.WriteString("direction", peak is null ? null : Words.Of(peak.Direction));
        json.WriteStartArray("parts");
        foreach (LivePart part in effect.Parts)
        {
            json.WriteStartObject();
            json.WriteString("kind", LivePartJson.Kind(part));
            json.WriteForce("force", width * part.Force);
            LivePartJson.WritePlace(json, part);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private sealed record LoadedMember(Member Member, LiveEffect? Tension, LiveEffect? Compression)
    {
        public LiveEffect? Of(Sense sense) => sense == Sense.Tension ? Tension : Compression;
    }
}
