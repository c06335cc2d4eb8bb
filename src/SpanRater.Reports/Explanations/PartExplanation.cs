using System.Text.Json;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>What <c>explain</c> says of a part of the floor or a connection: its rating factors under one vehicle, each opened down to what was given.</summary>
public static class PartExplanation
{
    private static readonly ResultColumn[] Columns =
    [
        new("part"), new("at"), new("level"), new("effect"), new("sense"), new("what"), new("value", Quantity.Number, 6), new("unit"),
    ];

    /// <summary>Makes the page.</summary>
    /// <param name="rating">The rating; of the vehicle alone or of more.</param>
    /// <param name="part">Name of the part.</param>
    /// <param name="vehicle">The vehicle or loading.</param>
    /// <param name="units">The units to show.</param>
    public static ResultPage Of(BridgeRating rating, string part, LiveLoad vehicle, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(rating);
        ArgumentNullException.ThrowIfNull(vehicle);
        ArgumentNullException.ThrowIfNull(units);
        Bridge bridge = rating.Bridge;
        PartRow[] rows = [.. rating.PartRows.Where(r => r.Name == part && r.Vehicle.Name == vehicle.Name)];
        string kind = PartWords.Of(rows[0].Part);
        List<ResultBlock> blocks =
        [
            new ResultBlock.Heading($"{bridge.Name}: the rating of {part} for {vehicle.Name} ({rating.Method.Name})", 1),
            new ResultBlock.Paragraph($"{char.ToUpperInvariant(rating.Method.FullName[0])}{rating.Method.FullName[1..]}. {char.ToUpperInvariant(part[0])}{part[1..]}{(part.Contains(kind, StringComparison.OrdinalIgnoreCase) ? "" : $" ({kind})")}. {vehicle.Name}: {LiveLoadWording.Describe(vehicle, units)}."),
            .. RatingFormula.Of(RatingFormula.OfParts, rows),
        ];
        if (bridge.Floor?.Parts.FirstOrDefault(p => p.Name == part) is { } onFloor)
        {
            blocks.AddRange(SectionSheet.Of(onFloor, units));
        }

        foreach (PartRow row in rows)
        {
            blocks.AddRange(PartTelling.Of(row, rating, units));
        }

        blocks.Add(new ResultBlock.Heading("Where the factors are from"));
        blocks.Add(new ResultBlock.Paragraph($"{rating.Method.Source}."));
        blocks.Add(new ResultBlock.Items("Assumed, or done in place of what was asked:", [.. rating.Stamps.Select(s => RatingWording.Of(s, units))]));
        string scope = ScopeWording.Of(rating);
        blocks.Add(new ResultBlock.Paragraph(scope, Strong: true));
        blocks.Add(new ResultBlock.Paragraph(Words.Caution, Strong: true));
        return new ResultPage(
            blocks,
            new ResultTable(Columns, [.. rows.SelectMany(r => Facts(r).Select(f => Row(r, f, units)))]),
            [scope, Words.Caution],
            json => Write(json, rating, part, vehicle, rows),
            IsAnswer: rows.Any(r => r.Factor is not null));
    }

    /// <summary>Where a pin is worst for the vehicles of a rating, in a sentence; empty where it has no rating.</summary>
    /// <param name="pin">The pin.</param>
    /// <param name="rating">The rating.</param>
    public static string WorstOn(PinConnection pin, BridgeRating rating)
    {
        ArgumentNullException.ThrowIfNull(pin);
        ArgumentNullException.ThrowIfNull(rating);
        return rating.PartRows.FirstOrDefault(r => r.Name == pin.Name && rating.MayGovern(r)) is { Resistance: ConnectionResistance { At: { } at } } worst
            ? $"Lowest for {worst.Vehicle.Name}, {worst.Level.Name} level: {RatingWording.ActsIn(worst)} {at}, RF {Words.Factor(worst.Factor!.Value)} ({rating.Method.Name})."
            : "";
    }

    private static IEnumerable<(string What, double? Value, Quantity Quantity)> Facts(PartRow row)
    {
        Quantity effect = PartWords.QuantityOf(row.ActsAs);
        return
        [
            ("C", row.Capacity, effect), ("DC", row.DeadComponents, effect), ("DW", row.DeadWearing, effect), ("factor on DC", row.ComponentsFactor, Quantity.Number),
            ("factor on DW", row.WearingFactor, Quantity.Number), ("LL", row.Live, effect), ("factor on LL", row.Level.LiveFactor, Quantity.Number), ("IM", row.Impact, Quantity.Number),
            ("loaded length", row.LoadedLength, Quantity.Length), ("RF", row.Factor, Quantity.Number),
        ];
    }

    private static IReadOnlyList<object?> Row(PartRow row, (string What, double? Value, Quantity Quantity) fact, DisplayUnits units) =>
        [row.Name, row.At, row.Level.Name, PartWords.Of(row.ActsAs), RatingWording.SenseOf(row) ?? "", fact.What, fact.Value is { } value ? units.From(fact.Quantity, value) : null, units.Symbol(fact.Quantity)];

    private static void Write(Utf8JsonWriter json, BridgeRating rating, string part, LiveLoad vehicle, PartRow[] rows)
    {
        json.WriteString("bridge", rating.Bridge.Name);
        json.WriteString("method", rating.Method.Name);
        json.WriteString("caution", Words.Caution);
        json.WriteString("scope", ScopeWording.Of(rating));
        json.WriteString("member", part);
        json.WriteString("vehicle", vehicle.Name);
        json.WriteString("source", rating.Method.Source);
        json.WriteStartArray("ratings");
        foreach (PartRow row in rows)
        {
            json.WriteStartObject();
            RatingJson.WriteRowFields(json, row, rating.Bridge.Truss);
            json.WriteNumber("factoredDead", (row.FactoredDead / 1000) + 0.0);
            json.WriteStartArray("deadParts");
            foreach (FloorDeadItem item in row.Dead?.Items ?? [])
            {
                json.WriteStartObject();
                json.WriteString("what", DeadTelling.Of(item.What));
                json.WriteNumber("load", item.Load / 1000);
                json.WriteNumber("from", item.From);
                json.WriteNumber("to", item.To);
                json.WriteNumber("effect", item.Effect / 1000);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteStartArray("liveParts");
            foreach (PartLive live in row.LiveParts)
            {
                json.WriteStartObject();
                json.WriteNumber("along", live.Along / 1000);
                json.WriteNumber("across", live.Across);
                json.WriteNumber("impact", live.Impact.Value);
                json.WriteNumber("effect", live.Effect / 1000);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteString("reason", row.Reason is null ? null : RatingWording.Of(row.Reason, DisplayUnits.Si));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteNames("assumptions", RatingJson.Assumptions(rating));
    }
}
