using System.Text.Json;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>What <c>explain</c> says: the rating factors of one member under one vehicle, each opened down to what was given.</summary>
public static class RatingExplanation
{
    private static readonly ResultColumn[] Columns =
    [
        new("truss"), new("level"), new("sense"), new("what"), new("value", Quantity.Number, 6), new("unit"),
    ];

    /// <summary>Makes the page.</summary>
    /// <param name="rating">The rating; of the vehicle alone or of more.</param>
    /// <param name="member">The member, by position.</param>
    /// <param name="vehicle">The vehicle or loading.</param>
    /// <param name="sense">Only this sense; null for both.</param>
    /// <param name="units">The units to show.</param>
    public static ResultPage Of(BridgeRating rating, int member, LiveLoad vehicle, Sense? sense, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(rating);
        ArgumentNullException.ThrowIfNull(vehicle);
        ArgumentNullException.ThrowIfNull(units);
        Bridge bridge = rating.Bridge;
        string name = bridge.Truss.Members[member].Name;
        MemberRow[] rows = [.. rating.MemberRows.Where(r => r.MemberIndex == member && r.Vehicle.Name == vehicle.Name && (sense is null || r.Sense == sense))];
        List<ResultBlock> blocks =
        [
            new ResultBlock.Heading($"{bridge.Name}: how {name} is rated for {vehicle.Name} ({rating.Method.Name})", 1),
            new ResultBlock.Paragraph($"{char.ToUpperInvariant(rating.Method.FullName[0])}{rating.Method.FullName[1..]}. {name}{(bridge.Truss.Members[member].Role.Length > 0 ? $", {bridge.Truss.Members[member].Role}" : "")}.{$" {vehicle.Name}: {LiveLoadWording.Describe(vehicle, units)}."}"),
            .. RatingFormula.Of(RatingFormula.OfMembers, rows),
        ];
        blocks.AddRange(SlackTelling.Of(rows, rating, units));
        foreach ((string? truss, MemberMake make) in Makes(rows, bridge))
        {
            blocks.AddRange(SectionSheet.Of(make, name, truss, units));
        }

        foreach (MemberRow row in rows)
        {
            blocks.AddRange(RatingTelling.Of(row, rating, units));
        }

        blocks.Add(new ResultBlock.Heading("Where the factors are from"));
        blocks.Add(new ResultBlock.Paragraph($"{rating.Method.Source}."));
        blocks.Add(new ResultBlock.Items("Assumed, or done in place of what was asked:", [.. rating.Stamps.Select(s => RatingWording.Of(s, units))]));
        blocks.Add(new ResultBlock.Paragraph(ScopeWording.Of(rating), Strong: true));
        blocks.Add(new ResultBlock.Paragraph(Words.Caution, Strong: true));
        return new ResultPage(
            blocks,
            new ResultTable(Columns, [.. rows.SelectMany(r => Facts(r).Select(f => Row(r, f, units)))]),
            [ScopeWording.Of(rating), Words.Caution],
            json => Write(json, rating, name, vehicle, rows),
            IsAnswer: rows.Any(r => r.Factor is not null));
    }

    // Once a truss, where a capacity follows from the section or would but for what is missing.
    private static (string? Truss, MemberMake Make)[] Makes(IEnumerable<MemberRow> rows, Bridge bridge)
    {
        (string? Truss, MemberMake Make)[] makes = [.. MakesOf(rows, bridge)];
        return makes.Select(m => string.Join("; ", m.Make.Section.Observations.Select(MakeWording.Of))).Distinct().Count() == 1 ? [(null, makes[0].Make)] : makes;
    }

    private static IEnumerable<(string? Truss, MemberMake Make)> MakesOf(IEnumerable<MemberRow> rows, Bridge bridge) =>
        from row in rows.Where(r => r.Resistance is not null || r.Lacking is not null).DistinctBy(r => r.Truss)
        let make = bridge.MakeOf(row.Truss is { } name ? Math.Max(0, bridge.Deck.TrussNames.ToList().IndexOf(name)) : 0, row.MemberIndex)
        where make is not null
        select (row.Truss, make);

    private static IEnumerable<(string What, double? Value, Quantity Quantity)> Facts(MemberRow row) =>
    [
        ("C", row.Capacity, Quantity.Force), ("DC", row.DeadComponents, Quantity.Force), ("DW", row.DeadWearing, Quantity.Force),
        ("factor on DC", row.ComponentsFactor, Quantity.Number), ("factor on DW", row.WearingFactor, Quantity.Number), ("LL", row.Live, Quantity.Force),
        ("factor on LL", row.Level.LiveFactor, Quantity.Number), ("IM", row.Impact, Quantity.Number), ("share", row.Share?.Value, Quantity.Number),
        ("loaded length", row.LoadedLength, Quantity.Length), ("RF", row.Factor, Quantity.Number),
    ];

    private static IReadOnlyList<object?> Row(MemberRow row, (string What, double? Value, Quantity Quantity) fact, DisplayUnits units) =>
        [row.Truss ?? "", row.Level.Name, Words.Of(row.Sense), fact.What, fact.Value is { } value ? units.From(fact.Quantity, value) : null, units.Symbol(fact.Quantity)];

    private static void Write(Utf8JsonWriter json, BridgeRating rating, string name, LiveLoad vehicle, MemberRow[] rows)
    {
        json.WriteString("bridge", rating.Bridge.Name);
        json.WriteString("method", rating.Method.Name);
        json.WriteString("caution", Words.Caution);
        json.WriteString("scope", ScopeWording.Of(rating));
        json.WriteString("member", name);
        json.WriteString("vehicle", vehicle.Name);
        json.WriteString("source", rating.Method.Source);
        json.WriteStartArray("sections");
        foreach ((string? truss, MemberMake make) in Makes(rows, rating.Bridge))
        {
            SectionJson.Write(json, truss, make);
        }

        json.WriteEndArray();
        json.WriteStartArray("ratings");
        foreach (MemberRow row in rows)
        {
            json.WriteStartObject();
            RatingJson.WriteRowFields(json, row, rating.Bridge.Truss);
            json.WriteNumber("factoredDead", (row.FactoredDead / 1000) + 0.0);
            json.WriteNumberOrNull("presence", row.Share?.Presence);
            json.WriteNumbers("wheels", row.Share?.Wheels ?? []);
            CapacityJson.Write(json, row);
            json.WriteString("reason", row.Reason is null ? null : RatingWording.Of(row.Reason, DisplayUnits.Si));
            WritePosition(json, "position", row.Peak, rating.Bridge.Truss);
            WritePosition(json, "positionAtFactor", row.Reached?.Position, rating.Bridge.Truss);
            WriteSlack(json, row.FirstSlack, rating.Bridge.Truss);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteNames("assumptions", RatingJson.Assumptions(rating));
    }

    private static void WriteSlack(Utf8JsonWriter json, GoesSlack? slack, Truss truss)
    {
        if (slack is null)
        {
            json.WriteNull("goesSlack");
            return;
        }

        json.WriteStartObject("goesSlack");
        json.WriteString("member", slack.Member);
        json.WriteNumber("factor", slack.Factor);
        json.WriteForce("deadComponents", slack.DeadComponents);
        json.WriteForce("deadWearing", slack.DeadWearing);
        json.WriteNumber("componentsFactor", slack.ComponentsFactor);
        json.WriteNumber("wearingFactor", slack.WearingFactor);
        json.WriteNumberOrNull("live", slack.Live / 1000);
        json.WriteNumber("impact", slack.Impact);
        json.WriteNumber("share", slack.Share.Value);
        WritePosition(json, "position", slack.Position, truss);
        json.WriteEndObject();
    }

    private static void WritePosition(Utf8JsonWriter json, string name, Peak? peak, Truss truss)
    {
        if (peak is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WritePlacement(peak, truss);
        json.WriteNumbers("spacings", peak.Gaps);
        json.WriteAxles(peak);
        json.WriteEndObject();
    }
}
