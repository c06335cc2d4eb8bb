using System.Text.Json;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>The section sheet as JSON, in metres and pascals.</summary>
internal static class SectionJson
{
    public static void Write(Utf8JsonWriter json, string? truss, MemberMake make)
    {
        json.WriteStartObject();
        json.WriteString("truss", truss);
        json.WriteString("section", make.Section.AsBuilt.Name);
        json.WriteString("material", make.Material?.Name);
        json.WriteString("strength", make.Material switch
        {
            MetalMaterial metal => MakeWording.StrengthOf(metal, DisplayUnits.Si),
            TimberMaterial timber => MakeWording.StrengthOf(timber),
            _ => null,
        });
        json.WriteStartArray("parts");
        foreach (SectionPart part in make.Section.AsBuilt.Parts)
        {
            Write(json, part);
        }

        json.WriteEndArray();
        json.WriteStartArray("places");
        foreach ((string name, MemberSection section, FoundCut? cut) in SectionSheet.Places(make.Section))
        {
            Write(json, cut is null ? null : name, cut is null ? name : "cut", section, cut);
        }

        json.WriteEndArray();
        ExplanationFacts.Names(json, "seen", make.Section.Observations.Select(MakeWording.Of));
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, SectionPart part)
    {
        SectionShape shape = part.Pieces[0].Shape;
        json.WriteStartObject();
        json.WriteString("part", part.Name);
        json.WriteString("shape", shape.Published?.Name ?? shape.Kind.Name);
        json.WriteNumber("pieces", part.Pieces.Count);
        json.WriteStartObject("dimensions");
        foreach (ShapeDimension dimension in shape.Kind.Needed.Concat(shape.Kind.Optional))
        {
            if (shape.AsBuilt(dimension) is { } value)
            {
                json.WriteNumber(MakeWording.Of(dimension), value);
            }
        }

        json.WriteEndObject();
        json.WriteStartArray("positions");
        foreach (PiecePlacement place in part.Pieces.Select(p => p.Placement).OfType<PiecePlacement>())
        {
            json.WriteStartObject();
            json.WriteNumber("x", place.X + 0.0);
            json.WriteNumber("y", place.Y + 0.0);
            json.WriteNumber("turned", place.Turned + 0.0);
            json.WriteBoolean("mirrored", place.Mirrored);
            json.WriteBoolean("upsideDown", place.UpsideDown);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteNumber("area", part.Area);
        json.WriteNumberOrNull("netArea", part.NetArea);
        json.WriteEndObject();
    }

    private static void Write(Utf8JsonWriter json, string? place, string kind, MemberSection section, FoundCut? cut)
    {
        SectionProperties? properties = section.Properties;
        json.WriteStartObject();
        json.WriteString("place", place);
        json.WriteString("kind", kind);
        json.WriteNumber("area", section.Area);
        json.WriteNumberOrNull("netArea", section.NetArea);
        json.WriteNumberOrNull("x", properties?.X);
        json.WriteNumberOrNull("y", properties?.Y);
        json.WriteNumberOrNull("shiftX", cut?.ShiftX);
        json.WriteNumberOrNull("shiftY", cut?.ShiftY);
        json.WriteNumberOrNull("ix", properties?.Ix);
        json.WriteNumberOrNull("iy", properties?.Iy);
        json.WriteNumberOrNull("rx", properties?.Rx);
        json.WriteNumberOrNull("ry", properties?.Ry);
        json.WriteEndObject();
    }
}
