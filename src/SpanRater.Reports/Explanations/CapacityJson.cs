using System.Text.Json;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>The capacity sheet as JSON: forces in kN as everywhere, lengths in metres.</summary>
internal static class CapacityJson
{
    public static void Write(Utf8JsonWriter json, MemberRow row)
    {
        ExplanationFacts.Names(json, "missing", row.Lacking?.Select(MissingDatumWording.Of) ?? []);
        if (row.Resistance is not { } resistance)
        {
            json.WriteNull("capacitySheet");
            return;
        }

        json.WriteStartObject("capacitySheet");
        json.WriteStartArray("modes");
        foreach (ModeAtCut mode in resistance.Modes)
        {
            Write(json, mode, ReferenceEquals(mode, resistance.Governing));
        }

        json.WriteEndArray();
        json.WriteNumberOrNull("conditionFactor", resistance.Factors?.Condition.Value);
        json.WriteNumberOrNull("systemFactor", resistance.Factors?.System.Value);
        json.WriteNumberOrNull("memberFactor", resistance.Factors?.Value);
        json.WriteBoolean("conditionAssumed", resistance.Factors?.IsConditionAssumed ?? false);
        json.WriteForce("capacity", resistance.Value);
        json.WriteNumberOrNull("slendernessAboveLimit", resistance.Slender?.Slenderness);
        json.WriteBoolean("headsNotMeasured", resistance.HeadsNotMeasured);
        json.WriteForce("postForce", resistance.Make.Pony is not null && resistance.Governing.Axes?.OutOfPlane.Factor is { } k ? PonyChord.PostForce(resistance.Value, Math.Max(1, k)) : null);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, ModeAtCut mode, bool governs)
    {
        json.WriteStartObject();
        json.WriteString("mode", ModeWords.Of(mode));
        json.WriteString("place", mode.Place);
        json.WriteBoolean("governs", governs);
        json.WriteForce("nominal", mode.Strength.Nominal);
        json.WriteForce("strength", mode.Strength.Value);
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
        ExplanationFacts.Names(json, "sources", mode.Strength.Clauses.Select(c => c.CitationWithMark).Distinct());
        if (mode.Strength is CombinedStrength combined)
        {
            json.WriteNumber("eccentricity", combined.Eccentricity);
            json.WriteNumber("amplification", combined.Amplification);
            json.WriteNumber("moment", combined.Moment / 1000);
            json.WriteNumber("momentStrength", combined.MomentStrength / 1000);
        }

        if (mode.Strength is TimberStrength timber)
        {
            json.WriteNumber("stabilityFactor", timber.StabilityFactor);
            json.WriteNumber("slenderness", timber.Slenderness);
        }

        if (mode.Axes is { } axes)
        {
            Write(json, "inPlane", axes.InPlane);
            Write(json, "outOfPlane", axes.OutOfPlane);
        }

        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string name, BucklingAxis axis)
    {
        json.WriteStartObject(name);
        json.WriteNumberOrNull("k", axis.Factor);
        json.WriteNumber("length", axis.Length);
        json.WriteNumber("radius", axis.Radius);
        json.WriteNumber("slenderness", axis.Slenderness);
        json.WriteForce("elasticForce", axis.ElasticForce);
        json.WriteForce("elasticForceAsOnePiece", axis.Bound?.WholeForce);
        json.WriteForce("elasticForceOfLegs", axis.LegForce);
        json.WriteNumberOrNull("frameStiffness", axis.Pony?.FrameStiffness / 1000);
        json.WriteEndObject();
    }
}
