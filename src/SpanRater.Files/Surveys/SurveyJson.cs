using System.Text.Json;

namespace SpanRater.Files;

/// <summary>Writes what a survey keeps of a bridge.</summary>
internal static class SurveyJson
{
    /// <summary>The fields of a bridge, its folder apart.</summary>
    public static void WriteBridge(Utf8JsonWriter json, SurveyedBridge bridge)
    {
        json.WriteString("bridge", bridge.Name);
        json.WriteString("hash", bridge.Hash);
        json.WriteString("method", bridge.Method);
        json.WriteString("standing", SurveyWording.Key(bridge.Standing));
        json.WriteString("why", bridge.Why);
        WriteRow(json, "governing", bridge.Governing, bridge.GoverningVehicle);
        WritePosting(json, "posting", bridge.Posting);
        json.WriteString("scope", bridge.Scope);
        json.WriteNumber("partsNotRated", bridge.PartsNotRated);
        json.WriteNumber("vehiclesNotRated", bridge.VehiclesNotRated);
        json.WriteNames("notRated", bridge.NotRated);
        json.WriteNames("missingForAll", bridge.Gaps);
        json.WriteStartArray("vehicles");
        foreach (SurveyedVehicle vehicle in bridge.Vehicles)
        {
            WriteVehicle(json, vehicle);
        }

        json.WriteEndArray();
        json.WriteNames("assumptions", bridge.Assumed);
        json.WriteNames("errors", bridge.Errors);
        json.WriteNames("warnings", bridge.Warnings);
        json.WriteStartArray("inputs");
        foreach (SurveyedInput input in bridge.Inputs)
        {
            json.WriteStartObject();
            json.WriteString("file", input.Name);
            json.WriteString("sha256", input.Hash);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    /// <summary>What was asked for.</summary>
    public static void WriteAsked(Utf8JsonWriter json, SurveyAsked asked)
    {
        json.WriteStartObject("asked");
        if (asked.Vehicles is null)
        {
            json.WriteNull("vehicles");
        }
        else
        {
            json.WriteNames("vehicles", asked.Vehicles);
        }

        json.WriteString("crosses", asked.Crosses);
        json.WriteEndObject();
    }

    /// <summary>A row, or null.</summary>
    public static void WriteRow(Utf8JsonWriter json, string name, SurveyedRow? row, string? vehicle)
    {
        if (row is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WriteString("vehicle", vehicle);
        WriteFields(json, row);
        json.WriteEndObject();
    }

    /// <summary>A posting, or null.</summary>
    public static void WritePosting(Utf8JsonWriter json, string name, SurveyedPosting? posting)
    {
        if (posting is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WriteString("verdict", PostingWording.Of(posting.Verdict));
        json.WriteNumberOrNull("postedUsTons", posting.Tons);
        json.WriteBoolean("atMost", posting.IsAtMost);
        json.WriteString("setBy", posting.SetBy);
        json.WriteNumberOrNull("smallestSafeLoad", posting.SmallestSafeLoad);
        if (posting.Closure is { } closure)
        {
            json.WriteBoolean("closure", closure);
        }
        else
        {
            json.WriteNull("closure");
        }

        json.WriteNames("emergency", posting.Emergency);
        json.WriteEndObject();
    }

    private static void WriteVehicle(Utf8JsonWriter json, SurveyedVehicle vehicle)
    {
        json.WriteStartObject();
        json.WriteString("vehicle", vehicle.Name);
        json.WriteString("class", vehicle.Class);
        json.WriteString("mayCross", SurveyWording.Key(vehicle.Verdict));
        json.WriteBoolean("withheld", vehicle.IsWithheld);
        json.WriteBoolean("atMost", vehicle.IsAtMost);
        if (vehicle.Lowest is { } row)
        {
            WriteFields(json, row);
        }

        json.WriteNames("missing", vehicle.Gaps);
        json.WriteNames("holds", vehicle.Conditions);
        json.WriteString("whyNot", vehicle.WhyNot);
        json.WriteBoolean("onlyToCross", vehicle.IsGuest);
        json.WriteEndObject();
    }

    private static void WriteFields(Utf8JsonWriter json, SurveyedRow row)
    {
        json.WriteString("truss", row.Truss);
        json.WriteString("part", row.Kind);
        json.WriteString("member", row.Part);
        json.WriteString("in", row.In);
        json.WriteString("beside", row.Beside);
        json.WriteString("level", row.Level);
        json.WriteNumberOrNull("factor", row.Factor);
    }
}
