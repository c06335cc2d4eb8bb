using System.Text.Json;

namespace SpanRater.Files;

/// <summary>Writes values in the units of the JSON: kN and m, from newtons and metres.</summary>
public static class JsonFacts
{
    /// <summary>Newtons as kN.</summary>
    public static void WriteForce(this Utf8JsonWriter json, string name, double? newtons) => json.WriteNumberOrNull(name, newtons / 1000);

    /// <summary>A number, or null.</summary>
    public static void WriteNumberOrNull(this Utf8JsonWriter json, string name, double? value)
    {
        if (value is { } number)
        {
            // Adding zero turns a negative zero into a plain one.
            json.WriteNumber(name, number + 0.0);
        }
        else
        {
            json.WriteNull(name);
        }
    }

    /// <summary>A refusal, where there is one.</summary>
    public static void WriteRefusal(this Utf8JsonWriter json, Refusal refusal, Truss truss)
    {
        json.WriteStartObject("refusal");
        json.WriteString("kind", RefusalWording.Kind(refusal));
        json.WriteString("text", RefusalWording.Sentence(refusal, truss));
        json.WriteEndObject();
    }

    /// <summary>Where a vehicle stood, with what force; of a truss with rods also which are slack there.</summary>
    public static void WritePlacement(this Utf8JsonWriter json, Peak peak, Truss truss)
    {
        ArgumentNullException.ThrowIfNull(peak);
        ArgumentNullException.ThrowIfNull(truss);
        json.WriteForce("force", peak.Force);
        json.WriteNumberOrNull("station", peak.Station);
        json.WriteString("direction", Words.Of(peak.Direction));
        if (peak.Approach != Approach.At)
        {
            json.WriteString("limit", Words.Of(peak.Approach));
        }

        if (peak.Rods is { } rods)
        {
            json.WriteNames("slack", rods.Slack.Select(m => truss.Members[m].Name));
            json.WriteForce("deadShift", rods.DeadShift);
        }
    }

    /// <summary>Each axle where a vehicle stood, front to back.</summary>
    public static void WriteAxles(this Utf8JsonWriter json, Peak peak)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(peak);
        json.WriteStartArray("axles");
        foreach (AxleEffect axle in peak.Axles)
        {
            json.WriteStartObject();
            json.WriteForce("load", axle.Load);
            json.WriteNumberOrNull("station", axle.Station);
            json.WriteNumberOrNull("ordinate", axle.Ordinate);
            json.WriteForce("force", axle.Effect);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>Which rods act.</summary>
    public static void WriteRods(this Utf8JsonWriter json, RodState rods, Truss truss)
    {
        json.WriteStartObject("rods");
        json.WriteNames("acting", rods.Acting.Select(m => truss.Members[m].Name));
        json.WriteNames("slack", rods.Slack.Select(m => truss.Members[m].Name));
        json.WriteNumber("setsExamined", rods.SetsExamined);
        json.WriteEndObject();
    }

    /// <summary>Names in a list.</summary>
    public static void WriteNames(this Utf8JsonWriter json, string name, IEnumerable<string> names)
    {
        json.WriteStartArray(name);
        foreach (string each in names)
        {
            json.WriteStringValue(each);
        }

        json.WriteEndArray();
    }

    /// <summary>Numbers in a list.</summary>
    public static void WriteNumbers(this Utf8JsonWriter json, string name, IEnumerable<double> values)
    {
        json.WriteStartArray(name);
        foreach (double value in values)
        {
            json.WriteNumberValue(value + 0.0);
        }

        json.WriteEndArray();
    }
}
