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
