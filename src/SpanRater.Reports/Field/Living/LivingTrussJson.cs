using System.Text.Json;

namespace SpanRater.Reports;

/// <summary>The truss of the living elevation: joints, members with their lines, the deck, and the dead forces of each truss.</summary>
internal static class LivingTrussJson
{
    /// <summary>Writes it.</summary>
    public static void Write(Utf8JsonWriter json, LivingElevation living)
    {
        Truss truss = living.Rating.Bridge.Truss;
        WriteJoints(json, truss);
        WriteMembers(json, truss, living.Rating.Crossing);
        WriteDeck(json, truss);
        WriteDead(json, living);
    }

    private static void WriteJoints(Utf8JsonWriter json, Truss truss)
    {
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
    }

    private static void WriteMembers(Utf8JsonWriter json, Truss truss, TrussCrossing crossing)
    {
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
            json.WriteSi("line", crossing.Lines.Members[m].Line.Ordinates);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteBoolean("slackens", slackens);
    }

    private static void WriteDeck(Utf8JsonWriter json, Truss truss)
    {
        json.WriteSi("stations", truss.Stations);
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
    }

    private static void WriteDead(Utf8JsonWriter json, LivingElevation living)
    {
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
            for (int m = 0; m < living.Rating.Bridge.Truss.Members.Count; m++)
            {
                json.WriteNumberValue(living.DeadOf(t, m));
            }

            json.WriteEndArray();
        }

        json.WriteEndArray();
    }
}
