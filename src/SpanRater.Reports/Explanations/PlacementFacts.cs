using System.Text.Json;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>Writes the facts of <c>roll --explain</c> as JSON: kN, m, plain numbers.</summary>
internal static class PlacementFacts
{
    public static void WriteRefused(Utf8JsonWriter json, Bridge bridge, Vehicle vehicle, string member, Refusal refusal)
    {
        Head(json, bridge, vehicle, 1, member);
        json.WriteRefusal(refusal, bridge.Truss);
    }

    public static void Write(Utf8JsonWriter json, Bridge bridge, Vehicle vehicle, double scale, string member, IReadOnlyList<PlacementNarration?> narrations)
    {
        Head(json, bridge, vehicle, scale, member);
        foreach (PlacementNarration narration in narrations.OfType<PlacementNarration>())
        {
            json.WriteStartObject(Words.Of(narration.Sense));
            json.WritePlacement(narration.Peak, bridge.Truss);
            json.WriteNumber("positions", narration.Candidates.Positions);
            json.WriteNumber("changeToTheLeft", (narration.ChangeToTheLeft / 1000) + 0.0);
            json.WriteNumber("changeToTheRight", (narration.ChangeToTheRight / 1000) + 0.0);
            json.WriteBoolean("jumps", narration.Jumps);
            json.WriteStartArray("axles");
            foreach (AxleOnLine axle in narration.Axles)
            {
                json.WriteStartObject();
                json.WriteNumber("load", axle.Axle.Load / 1000);
                json.WriteNumber("station", axle.Axle.Station + 0.0);
                json.WriteString("on", axle.PanelPoint is { } p ? InfluenceExplanation.Point(bridge.Truss, p) : null);
                json.WriteNumber("ordinate", axle.Axle.Ordinate + 0.0);
                json.WriteNumber("force", (axle.Axle.Effect / 1000) + 0.0);
                json.WriteNumber("slopeLeft", axle.SlopeLeft + 0.0);
                json.WriteNumber("slopeRight", axle.SlopeRight + 0.0);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteStartArray("candidates");
            foreach (Peak candidate in PlacementTelling.Ranked(narration))
            {
                json.WriteStartObject();
                json.WritePlacement(candidate, bridge.Truss);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        foreach (Sense sense in (Sense[])[Sense.Tension, Sense.Compression])
        {
            if (!narrations.Any(n => n?.Sense == sense))
            {
                json.WriteNull(Words.Of(sense));
            }
        }
    }

    public static void Head(Utf8JsonWriter json, Bridge bridge, Vehicle vehicle, double scale, string member)
    {
        json.WriteString("bridge", bridge.Name);
        json.WriteString("vehicle", vehicle.Name);
        json.WriteNumber("scale", scale);
        json.WriteString("member", member);
    }
}
