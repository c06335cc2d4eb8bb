using System.Globalization;
using System.Text.Json;

namespace SpanRater.Files;

/// <summary>What <c>fatigue</c> says: the stress range of a member under one vehicle, and what detail categories make of it.</summary>
public static class FatiguePage
{
    private static readonly ResultColumn[] Columns =
    [
        new("detail"), new("what it is"), new("stress range", Quantity.Stress), new("threshold", Quantity.Stress, 1), new("cycles used", Quantity.Number, 0),
        new("cycles allowed", Quantity.Number, 0), new("used %", Quantity.Number, 1), new("years left", Quantity.Number, 0),
    ];

    /// <summary>The page.</summary>
    /// <param name="check">The note, or what is missing.</param>
    /// <param name="bridge">The bridge.</param>
    /// <param name="member">Position of the member.</param>
    /// <param name="detail">The category asked for; null for all side by side.</param>
    /// <param name="units">The units to show.</param>
    public static ResultPage Of(FatigueCheck check, Bridge bridge, int member, DetailCategory? detail, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(check);
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(units);
        string name = bridge.Truss.Members[member].Name;
        var heading = new ResultBlock.Heading($"{bridge.Title}: fatigue of {name}");
        if (check.Note is not { } note)
        {
            string[] why = [.. check.Obstacles.Select(o => FatigueWording.Of(o, bridge.Truss, units))];
            return new ResultPage(
                [heading, new ResultBlock.Items("No fatigue note, and what is missing:", why), new ResultBlock.Paragraph(Words.Caution, Strong: true)],
                new ResultTable(Columns, []), [.. why, Words.Caution], json => Write(json, bridge, name, null, [], why), IsAnswer: false);
        }

        FatigueAnswer[] answers = [.. (detail is null ? DetailCategory.All : [detail]).Select(note.AnswerOf).OfType<FatigueAnswer>()];
        string[] notes = [.. Sentences(note, name, detail, answers, units)];
        var table = new ResultTable(Columns, [.. answers.Select(Row)]);
        return new ResultPage(
            [
                heading,
                .. notes.Select((n, i) => new ResultBlock.Paragraph(n, Strong: i == 0)),
                .. answers.Length == 0 ? Array.Empty<ResultBlock>() : [new ResultBlock.Grid(table)],
                new ResultBlock.Paragraph(FatigueWording.Indication, Strong: true),
                new ResultBlock.Paragraph(Words.Caution, Strong: true),
            ],
            table, [.. notes, FatigueWording.Indication, Words.Caution], json => Write(json, bridge, name, note, answers, []));
    }

    private static IReadOnlyList<object?> Row(FatigueAnswer a) =>
        [a.Category.Name, FatigueWording.Of(a.Category), a.Range, a.Category.Threshold, a.Used, a.Allowed is { } n ? n : "no end", 100 * a.PartUsed, a.YearsLeft is { } left ? Years(left) : "no end"];

    // No more digits than an indication has: two at most, and none far off.
    private static string Years(double years) =>
        years > 100 ? "more than 100" : years < -100 ? "less than -100" : ResultTable.Figure(years, Math.Abs(years) < 9.95 ? 1 : 0);

    private static IEnumerable<string> Sentences(FatigueNote note, string name, DetailCategory? detail, FatigueAnswer[] answers, DisplayUnits units)
    {
        FatigueStress s = note.Worst;
        string On(double value, Quantity q) => $"{ResultTable.Figure(units.From(q, value), 2)} {units.Symbol(q)}";
        yield return answers.Length == 0
            ? s.IsLoaded ? $"{name} is always in compression, with {note.Vehicle.Name} on as well: no stress range counts." : $"{note.Vehicle.Name} brings no force to {name}: there is no stress range."
            : detail is null ? $"The stress range is {On(s.Range, Quantity.Stress)}. Which category the detail is of is never assumed: all stand side by side. Say --detail once it is known."
            : answers[0] is { YearsLeft: { } left } one ? $"Detail {detail.Name}: {ResultTable.Figure(100 * one.PartUsed, 1)} % of the allowed cycles are used, {(left < 0 ? $"and they were used up {Years(-left)} years ago by this count" : $"and {Years(left)} years of the same traffic are left")}."
            : $"Detail {detail.Name}: {On(s.Range, Quantity.Stress)} is at most half of the threshold of {On(detail.Threshold, Quantity.Stress)}: no end of cycles.";
        bool differ = note.Stresses.Count > 1 && note.Stresses.Max(r => r.Range) - note.Stresses.Min(r => r.Range) > 1e-9 * note.Stresses.Max(r => r.Range);
        string which = s.Truss is { } t ? $" on the {note.Bridge.Deck.TrussNames[t]} truss{(differ ? ", the worse of those looked at," : "")}" : "";
        yield return string.Create(CultureInfo.InvariantCulture, $"{note.Vehicle.Name} alone in one lane{which} brings {On(s.Tension, Quantity.Force)} and {On(s.Compression, Quantity.Force)}: share {s.Share.Value:0.###}{(s.Share.Lanes == 0 ? ", as given, which may hold several lanes" : "")}, dynamic allowance {FatigueNote.Impact:0.00}, no load factor. Dead load brings {Words.ForceInWords(s.Dead, units)}.");
        yield return $"Force range {On(s.ForceRange, Quantity.Force)} on {On(s.Area, Quantity.Area)}{(s.IsNet ? " net" : " gross")}{(s.Place is null ? "" : $" at {s.Place}")}{(s.HeadsNotMeasured ? ", eyebars by their bodies, since their heads are not measured" : "")}; shear lag and bending are not counted.";
        if (answers.Length > 0)
        {
            yield return string.Create(CultureInfo.InvariantCulture, $"{note.Traffic.TrucksADay:0.##} a day × {FatigueTraffic.DaysAYear:0} × {note.Traffic.Years:0.##} years × {s.CyclesAPassage} a passage. N = A/Δσ³; no end at half of the threshold, since the heaviest in the traffic may bring twice as much. Constants from memory of {Standard.LoadAndResistanceFactorDesign.Name}, {Standard.LoadAndResistanceFactorDesign.Edition}, 6.6.1.2: look them up in your copy.");
            yield return "The same section and the same traffic are assumed throughout, in the years that were and in those that are left.";
            yield return FatigueWording.NoCategory;
        }
    }

    private static void Write(Utf8JsonWriter json, Bridge bridge, string member, FatigueNote? note, FatigueAnswer[] answers, string[] missing)
    {
        json.WriteString("bridge", bridge.Name);
        json.WriteString("member", member);
        json.WriteString("caution", $"{FatigueWording.Indication} {Words.Caution}");
        json.WriteNames("missing", missing);
        json.WriteBoolean("counts", note?.Worst.Counts ?? false);
        json.WriteForce("dead", note?.Worst.Dead);
        json.WriteForce("tension", note?.Worst.Tension);
        json.WriteForce("compression", note?.Worst.Compression);
        json.WriteNumberOrNull("area", note?.Worst.Area);
        json.WriteNumberOrNull("stressRange", note?.Worst.Range / 1e6);
        json.WriteStartArray("details");
        foreach (FatigueAnswer a in answers)
        {
            json.WriteStartObject();
            json.WriteString("detail", a.Category.Name);
            json.WriteNumberOrNull("threshold", a.Category.Threshold / 1e6);
            json.WriteNumberOrNull("used", a.Used);
            json.WriteNumberOrNull("allowed", a.Allowed);
            json.WriteNumberOrNull("yearsLeft", a.YearsLeft);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
