using System.Text.Json;

namespace SpanRater.Reports;

/// <summary>How numbers of the living elevation are written: SI, every digit.</summary>
internal static class LivingNumbers
{
    /// <summary>A list of numbers.</summary>
    public static void WriteSi(this Utf8JsonWriter json, string name, IEnumerable<double> values)
    {
        json.WriteStartArray(name);
        foreach (double value in values)
        {
            json.WriteNumberValue(value);
        }

        json.WriteEndArray();
    }

    /// <summary>A number, or null.</summary>
    public static void WriteSiOrNull(this Utf8JsonWriter json, double? value)
    {
        if (value is { } number)
        {
            json.WriteNumberValue(number);
        }
        else
        {
            json.WriteNullValue();
        }
    }
}
