using System.Text.Json;

namespace SpanRater.Files;

/// <summary>Writes the take-off of the dead load as JSON: kN, m, weights positive.</summary>
internal static class DeadLoadJson
{
    public static void Write(Utf8JsonWriter json, Bridge bridge, DeadLoadAccount account)
    {
        json.WriteString("bridge", bridge.Name);
        json.WriteNumber("trusses", bridge.Deck.Trusses);
        json.WriteBoolean("trussesAlike", bridge.TrussesAlike);
        json.WriteStartObject("origins");
        foreach (DeadCase kind in Enum.GetValues<DeadCase>())
        {
            json.WriteString(DeadLoadWording.NameOf(kind), Word(account.Of(kind)));
        }

        json.WriteEndObject();
        json.WriteStartArray("items");
        foreach (TakeOffItem item in account.TakeOff?.Items ?? [])
        {
            Write(json, item, account.Of(item.Item.Case) != DeadOrigin.GivenInstead);
        }

        json.WriteEndArray();
        json.WriteStartArray("jointLoads");
        foreach (Bridge truss in Trusses(bridge))
        {
            foreach ((int joint, ChordPlace chord) in LoadedJoints(bridge))
            {
                string name = bridge.Truss.Joints[joint].Name;
                json.WriteStartObject();
                json.WriteString("truss", NameOf(truss));
                json.WriteString("joint", name);
                json.WriteString("chord", Word(chord));
                json.WriteForce(Bridge.ComponentsCase, Down(truss, DeadCase.Components, name));
                json.WriteForce(Bridge.WearingSurfaceCase, Down(truss, DeadCase.WearingSurface, name));
                json.WriteEndObject();
            }
        }

        json.WriteEndArray();
        json.WriteStartArray("totals");
        foreach (Bridge truss in Trusses(bridge))
        {
            json.WriteStartObject();
            json.WriteString("truss", NameOf(truss));
            foreach (DeadCase kind in Enum.GetValues<DeadCase>())
            {
                json.WriteForce(DeadLoadWording.NameOf(kind), -truss.FindCase(DeadLoadWording.NameOf(kind))?.TotalUp);
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteString("caution", Words.Caution);
    }

    /// <summary>The joints that bear dead load, those of the bottom chord first, each chord from left to right.</summary>
    public static IEnumerable<(int Joint, ChordPlace Chord)> LoadedJoints(Bridge bridge)
    {
        var loaded = DeadLoadWording.CasesOf(bridge).SelectMany(c => bridge.FindCase(DeadLoadWording.NameOf(c))!.Loads.Select(l => l.Joint)).ToHashSet();
        return Enumerable.Range(0, bridge.Truss.Joints.Count).Where(j => loaded.Contains(bridge.Truss.Joints[j].Name))
            .Select(j => (Joint: j, Chord: Chords.PlaceOf(bridge.Truss, j)))
            .OrderBy(j => j.Chord).ThenBy(j => bridge.Truss.Joints[j.Joint].X);
    }

    /// <summary>Weight at a joint [N].</summary>
    public static double Down(Bridge truss, DeadCase kind, string joint) =>
        0.0 - (truss.FindCase(DeadLoadWording.NameOf(kind))?.Loads.Where(l => l.Joint == joint).Sum(l => l.Up) ?? 0);

    /// <summary>The word for a chord.</summary>
    public static string Word(ChordPlace chord) => chord switch
    {
        ChordPlace.Bottom => "bottom",
        ChordPlace.Top => "top",
        _ => "between",
    };

    private static string Word(DeadOrigin origin) => origin switch
    {
        DeadOrigin.None => "none",
        DeadOrigin.Given => "loads",
        DeadOrigin.TakeOff => "takeOff",
        DeadOrigin.Both => "takeOffAndLoads",
        _ => "loadsInPlaceOfTakeOff",
    };

    private static Bridge[] Trusses(Bridge bridge) => bridge.TrussesAlike ? [bridge] : [bridge.OfTruss(0), bridge.OfTruss(1)];

    private static string? NameOf(Bridge truss) => truss.OnlyTruss is { } only ? truss.Deck.TrussNames[only] : null;

    private static void Write(Utf8JsonWriter json, TakeOffItem item, bool counts)
    {
        json.WriteStartObject();
        json.WriteString("item", item.Item.Name);
        json.WriteString("case", DeadLoadWording.NameOf(item.Item.Case));
        WriteWeight(json, item.Item.Weight);
        json.WriteNumber("count", item.Item.Count);
        json.WriteNumber("centre", item.Item.Centre + 0.0);
        json.WriteNumberOrNull("from", item.Item.From);
        json.WriteNumberOrNull("to", item.Item.To);
        if (item.Item.Joints is { } joints)
        {
            json.WriteNames("joints", joints);
        }
        else
        {
            json.WriteNull("joints");
        }

        json.WriteForce("perLength", item.PerLength);
        json.WriteForce("total", item.Total);
        json.WriteForce("left", item.OnTruss(0));
        json.WriteForce("right", item.OnTruss(1));
        json.WriteBoolean("counted", counts);
        json.WriteString("source", DeadWeightWording.Source(item.Item));
        json.WriteEndObject();
    }

    private static void WriteWeight(Utf8JsonWriter json, DeadWeight weight)
    {
        switch (weight)
        {
            case DeadWeight.Layer layer:
                json.WriteString("kind", "layer");
                json.WriteNumber("thickness", layer.Thickness);
                json.WriteNumber("width", layer.Width);
                json.WriteForce("unitWeight", layer.UnitWeight);
                json.WriteString("material", layer.Published?.Material);
                break;
            case DeadWeight.Area area:
                json.WriteString("kind", "area");
                json.WriteForce("areaLoad", area.Pressure);
                json.WriteNumber("width", area.Width);
                break;
            case DeadWeight.Line line:
                json.WriteString("kind", "line");
                json.WriteForce("lineLoad", line.Load);
                break;
            case DeadWeight.AtJoints point:
                json.WriteString("kind", "joints");
                json.WriteForce("load", point.Load);
                break;
            case DeadWeight.Members members:
                json.WriteString("kind", members.Part == 1 ? "members" : "allowance");
                json.WriteNumber("part", members.Part);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(weight), weight, "Every kind of weight has a shape.");
        }
    }
}
