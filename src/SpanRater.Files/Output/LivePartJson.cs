using System.Text.Json;

namespace SpanRater.Files;

/// <summary>Writes what makes up a live force where that is more than the axles of one vehicle.</summary>
internal static class LivePartJson
{
    /// <summary>The parts: kind, effect of the whole part, share, impact, and where it stands.</summary>
    public static void Write(Utf8JsonWriter json, SharedEffect effect)
    {
        json.WriteStartArray("parts");
        foreach (SharedPart part in effect.Parts)
        {
            json.WriteStartObject();
            json.WriteString("kind", Kind(part.Part));
            json.WriteForce("whole", part.Part.Force);
            json.WriteNumber("share", part.Share);
            json.WriteForce("force", part.Force);
            json.WriteNumber("impact", part.Impact.Value);
            WritePlace(json, part.Part);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>The kind of a part and where it lies, between the braces of its object.</summary>
    public static void WritePlace(Utf8JsonWriter json, LivePart part)
    {
        switch (part)
        {
            case LivePart.Axles { Vehicle: var vehicle, Peak: var peak }:
                json.WriteString("vehicle", vehicle.Name);
                json.WriteNumber("station", peak.Station);
                json.WriteString("direction", Words.Of(peak.Direction));
                break;
            case LivePart.Tracks { Peak: var patch }:
                WriteStretches(json, [patch.Stretch]);
                break;
            case LivePart.OfLane { Load: var load }:
                WriteLoad(json, load);
                break;
            case LivePart.OfCrowd { Load: var load }:
                WriteLoad(json, load);
                break;
            case LivePart.PointOfLane point:
                json.WriteForce("load", point.Load);
                json.WriteNumber("station", point.Station);
                break;
        }
    }

    /// <summary>Name of the kind of a part.</summary>
    public static string Kind(LivePart part) => part switch
    {
        LivePart.Axles => "axles",
        LivePart.Tracks => "tracks",
        LivePart.OfLane => "lane",
        LivePart.PointOfLane => "point",
        _ => "crowd",
    };

    // kN/m or kN/m2.
    private static void WriteLoad(Utf8JsonWriter json, AdverseLoad load)
    {
        json.WriteForce("intensity", load.Intensity);
        json.WriteNumber("area", load.Area);
        WriteStretches(json, load.Stretches);
    }

    private static void WriteStretches(Utf8JsonWriter json, IEnumerable<DeckStretch> stretches)
    {
        json.WriteStartArray("stretches");
        foreach (DeckStretch stretch in stretches)
        {
            json.WriteStartObject();
            json.WriteNumber("from", stretch.Left);
            json.WriteNumber("to", stretch.Right);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
