using System.Text.Json;

namespace SpanRater.Files;

/// <summary>Writes how a truss moves, and what makes one weak, into the JSON of <c>check</c>.</summary>
internal static class MovementFacts
{
    public static void Write(Utf8JsonWriter json, Truss truss, Stability s)
    {
        json.WriteNames("movingMembers", truss.Members.Where((_, m) => s.WaysToMove.Any(w => w.Members.Contains(m))).Select(m => m.Name));
        json.WriteNames("panels", s.WaysToMove.SelectMany(w => w.Panels).Distinct().Select(p => MechanismWording.Name(p, truss)));
        json.WriteNames("sparePanels", s.SparePanels.Select(p => MechanismWording.Name(p, truss)));
        json.WriteStartArray("movements");
        foreach (Movement movement in s.WaysToMove)
        {
            json.WriteStartObject();
            json.WriteString("kind", MechanismWording.Kind(movement.Kind));
            json.WriteStartArray("shifts");
            foreach (int joint in movement.Joints)
            {
                json.WriteStartObject();
                json.WriteString("joint", truss.Joints[joint].Name);
                json.WriteNumber("right", movement.Shifts[joint].Right + 0.0);
                json.WriteNumber("up", movement.Shifts[joint].Up + 0.0);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteNames("members", movement.Members.Select(m => truss.Members[m].Name));
            json.WriteNames("panels", movement.Panels.Select(p => MechanismWording.Name(p, truss)));
            json.WriteStartArray("mends");
            foreach (MissingBar bar in movement.Mends)
            {
                json.WriteStartObject();
                json.WriteString("from", truss.Joints[bar.From].Name);
                json.WriteString("to", truss.Joints[bar.To].Name);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
        WriteSupportFault(json, s.SupportFault);
        if (s.WeakGeometry is not { } weak)
        {
            json.WriteNull("causes");
            return;
        }

        json.WriteStartObject("causes");
        json.WriteString("joint", truss.Joints[weak.Joint].Name);
        json.WriteNames("members", weak.Members.Select(m => truss.Members[m].Name));
        json.WriteNumber("offLineDegrees", weak.OffLine * 180 / Math.PI);
        json.WriteEndObject();
    }

    private static void WriteSupportFault(Utf8JsonWriter json, SupportFault? fault)
    {
        if (fault is null)
        {
            json.WriteNull("supportFault");
            return;
        }

        json.WriteStartObject("supportFault");
        switch (fault)
        {
            case SupportFault.Parallel p:
                json.WriteString("kind", "parallel");
                json.WriteNumber("right", p.Right + 0.0);
                json.WriteNumber("up", p.Up + 0.0);
                break;
            case SupportFault.Concurrent c:
                json.WriteString("kind", "concurrent");
                json.WriteNumber("x", c.X + 0.0);
                json.WriteNumber("y", c.Y + 0.0);
                break;
            default:
                json.WriteString("kind", "oneLine");
                break;
        }

        json.WriteEndObject();
    }
}
