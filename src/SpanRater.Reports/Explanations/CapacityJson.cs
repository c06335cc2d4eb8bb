using System.Text.Json;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>The facts of the section and capacity sheets: SI, m and kN.</summary>
internal static class CapacityJson
{
    /// <summary>Writes the sheet as <c>capacitySheet</c>; null where the capacity is given or missing.</summary>
    public static void Write(Utf8JsonWriter json, MemberResistance? resistance)
    {
        if (resistance is null)
        {
            json.WriteNull("capacitySheet");
            return;
        }

        json.WriteStartObject("capacitySheet");
        json.WriteString("section", resistance.Make.Section.AsBuilt.Name);
        json.WriteString("material", resistance.Make.Material?.Name);
        json.WriteNumberOrNull("conditionFactor", resistance.Factors?.Condition.Value);
        json.WriteNumberOrNull("systemFactor", resistance.Factors?.System.Value);
        json.WriteNumberOrNull("memberFactor", resistance.Factors?.Value);
        json.WriteStartArray("modes");
        foreach (ModeAtCut mode in resistance.Modes)
        {
            Write(json, mode, ReferenceEquals(mode, resistance.Governing));
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, ModeAtCut mode, bool governs)
    {
        json.WriteStartObject();
        json.WriteString("mode", ModeWords.Of(mode));
        json.WriteString("place", mode.Place);
        json.WriteBoolean("governs", governs);
        json.WriteForce("nominal", mode.Strength.Nominal);
        json.WriteStartArray("factors");
        foreach (StrengthFactor factor in mode.Strength.Factors)
        {
            json.WriteStartObject();
            json.WriteString("name", factor.Name);
            json.WriteNumber("value", factor.Value);
            json.WriteString("source", factor.Clause.CitationWithMark);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteForce("value", mode.Strength.Value);
        json.WriteNumber("area", mode.Section.Area);
        json.WriteNumberOrNull("netArea", mode.Section.NetArea);
        json.WriteNumberOrNull("rx", mode.Section.Properties?.Rx);
        json.WriteNumberOrNull("ry", mode.Section.Properties?.Ry);
        json.WriteNumberOrNull("slendernessInPlane", mode.Axes?.InPlane.Slenderness);
        json.WriteNumberOrNull("slendernessOutOfPlane", mode.Axes?.OutOfPlane.Slenderness);
        json.WriteForce("elasticForce", mode.Axes?.Governing.ElasticForce);
        json.WriteNumberOrNull("eccentricity", (mode.Strength as CombinedStrength)?.Eccentricity);
        json.WriteNames("sources", mode.Strength.Clauses.Select(c => c.CitationWithMark).Distinct());
        json.WriteEndObject();
    }
}
