using System.Text.Json;

namespace SpanRater.Files;

/// <summary>The facts of a rating.</summary>
public static class RatingJson
{
    /// <summary>Writes a rating.</summary>
    internal static void Write(Utf8JsonWriter json, BridgeRating rating, IReadOnlyList<string> notAsked)
    {
        json.WriteString("bridge", rating.Bridge.Name);
        json.WriteString("method", rating.Method.Name);
        json.WriteString("caution", Words.Caution);
        json.WriteString("scope", ScopeWording.Of(rating));
        json.WriteStartArray("ratings");
        foreach (RatingRow row in rating.Rows)
        {
            WriteRow(json, row, rating.Bridge.Truss);
        }

        json.WriteEndArray();
        NotRatedList.Write(json, rating.NotRated, notAsked);
        WriteGoverning(json, "governing", rating.Governing);
        WriteGoverning(json, "governingMember", rating.GoverningMember);
        WriteGoverning(json, "governingInventory", rating.GoverningInventory);
        json.WriteNames("assumptions", Assumptions(rating));
        json.WriteNumber("residual", rating.Residual);
    }

    /// <summary>What was assumed, as every JSON has it: the same whatever units a table is asked for in.</summary>
    /// <param name="rating">The rating.</param>
    public static IEnumerable<string> Assumptions(BridgeRating rating)
    {
        ArgumentNullException.ThrowIfNull(rating);
        return rating.Stamps.Select(s => RatingWording.Of(s, DisplayUnits.Si));
    }

    private static void WriteRow(Utf8JsonWriter json, RatingRow row, Truss truss)
    {
        json.WriteStartObject();
        WriteRowFields(json, row, truss);
        json.WriteEndObject();
    }

    /// <summary>Writes the fields of a row, between the braces of its object.</summary>
    /// <param name="json">Takes the fields.</param>
    /// <param name="row">The row.</param>
    /// <param name="truss">Its truss.</param>
    public static void WriteRowFields(Utf8JsonWriter json, RatingRow row, Truss truss)
    {
        ArgumentNullException.ThrowIfNull(json);
        ArgumentNullException.ThrowIfNull(row);
        ArgumentNullException.ThrowIfNull(truss);
        WriteWhat(json, row);
        json.WriteString("mode", RatingWording.Mode(row));
        json.WriteString("place", RatingWording.Place(row));
        json.WriteString("status", Words.Of(row.Status));
        json.WriteString("at", row is PartRow { At: { Length: > 0 } at } ? at : null);
        json.WriteForce("capacity", row.Capacity);
        json.WriteForce("deadComponents", row.DeadComponents);
        json.WriteForce("deadWearing", row.DeadWearing);
        json.WriteForce("live", row.Live);
        json.WriteNumberOrNull("impact", row.Impact);
        json.WriteNumberOrNull("factor", row.Factor);
        json.WriteNumberOrNull("equivalentUsTons", SafeLoad.EquivalentLoad(row) / SafeLoad.UsTon);
        json.WriteNumber("dcFactor", row.ComponentsFactor);
        json.WriteNumber("dwFactor", row.WearingFactor);
        json.WriteNumberOrNull("liveFactor", row.Level.LiveFactor);
        json.WriteNumberOrNull("share", row.Share?.Value);
        json.WriteNumberOrNull("loadedLength", row.LoadedLength);
        if (row.Beside is { } beside)
        {
            json.WriteForce("besideFactored", beside.Factored);
        }

        if (row is not MemberRow member)
        {
            return;
        }

        if (member.Effect is { } effect && effect.Parts is not [{ Part: LivePart.Axles }])
        {
            LivePartJson.Write(json, effect);
        }

        if (member.CappedBy is not null)
        {
            json.WriteString("cappedBy", member.CappedBy);
        }

        if (member.SlackAtFactor is { } slack)
        {
            json.WriteNames("slackAtFactor", slack.Select(m => truss.Members[m].Name));
        }
    }

    private static void WriteWhat(Utf8JsonWriter json, RatingRow row)
    {
        json.WriteString("truss", row.Truss);
        json.WriteString("part", PartWords.Of(row.Part));
        json.WriteString("member", row.Name);
        json.WriteString("vehicle", row.Vehicle.Name);
        json.WriteString("beside", row.Beside?.Vehicle.Name);
        json.WriteString("level", row.Level.Name);
        json.WriteString("effect", PartWords.Of(row.ActsAs));
        json.WriteString("sense", RatingWording.SenseOf(row));
    }

    internal static void WriteGoverning(Utf8JsonWriter json, string name, RatingRow? row)
    {
        if (row is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        WriteWhat(json, row);
        json.WriteNumberOrNull("factor", row.Factor);
        json.WriteEndObject();
    }
}
