using System.Text.Json;

namespace SpanRater.Reports;

/// <summary>Writes the facts of explanations as JSON: kN, m, plain numbers.</summary>
internal static class ExplanationFacts
{
    public static void Write(Utf8JsonWriter json, Bridge bridge, InfluenceNarration narration)
    {
        Truss truss = bridge.Truss;
        json.WriteString("bridge", bridge.Name);
        json.WriteString("member", truss.Members[narration.Member].Name);
        json.WriteStartArray("ordinates");
        for (int i = 0; i < truss.PanelPoints.Count; i++)
        {
            json.WriteStartObject();
            json.WriteString("joint", InfluenceExplanation.Point(truss, i));
            json.WriteNumber("station", truss.Stations[i] + 0.0);
            json.WriteNumber("ordinate", narration.Line.Ordinates[i] + 0.0);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteString("from", narration.IsJointAlone ? "joint" : narration.Section is not null ? "section" : "allJoints");
        Write(json, narration.Tie ?? narration.Section?.Twin, truss);
        Write(json, narration.Section, truss);
        Names(json, "bendsAt", narration.Bends.Select(b => InfluenceExplanation.Point(truss, b.PanelPoint)));
        json.WriteStartArray("neutralPoints");
        foreach (double point in narration.Line.NeutralPoints())
        {
            json.WriteNumberValue(point + 0.0);
        }

        json.WriteEndArray();
        json.WriteNumber("tensionArea", narration.Line.Area(Sense.Tension) + 0.0);
        json.WriteNumber("compressionArea", narration.Line.Area(Sense.Compression) + 0.0);
    }

    public static void Names(Utf8JsonWriter json, string name, IEnumerable<string> names)
    {
        json.WriteStartArray(name);
        foreach (string each in names)
        {
            json.WriteStringValue(each);
        }

        json.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter json, JointTie? tie, Truss truss)
    {
        if (tie is null)
        {
            json.WriteNull("joint");
            return;
        }

        json.WriteStartObject("joint");
        json.WriteString("joint", truss.Joints[tie.Joint].Name);
        json.WriteString("other", tie.Other is { } other ? truss.Members[other].Name : null);
        json.WriteNumber("ratio", tie.Ratio + 0.0);
        json.WriteNumber("ownLoad", tie.OwnLoad + 0.0);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, LineSection? section, Truss truss)
    {
        if (section is null)
        {
            json.WriteNull("section");
            return;
        }

        json.WriteStartObject("section");
        Names(json, "cut", section.Cut.Select(m => truss.Members[m].Name));
        json.WriteString("kind", section.Centre is not null ? "moment" : section.IsShear ? "shear" : "across");
        if (section.Centre is { } centre)
        {
            json.WriteNumber("x", centre.X + 0.0);
            json.WriteNumber("y", centre.Y + 0.0);
        }

        json.WriteStartArray("steps");
        foreach (SectionStep step in section.Steps)
        {
            json.WriteStartObject();
            json.WriteString("load", InfluenceExplanation.Point(truss, step.PanelPoint));
            json.WriteString("stands", step.LoadIsLeft ? "left" : "right");
            json.WriteNumber("effect", step.Effect + 0.0);
            json.WriteNumber("lever", step.Lever + 0.0);
            json.WriteNumber("force", step.Force + 0.0);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }
}
