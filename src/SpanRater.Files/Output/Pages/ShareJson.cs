using System.Text.Json;

namespace SpanRater.Files;

/// <summary>The shares of one truss as JSON.</summary>
internal static class ShareJson
{
    public static void Write(Utf8JsonWriter json, Bridge bridge, RatingMethod? method, IReadOnlyList<VehicleShares> shares, IReadOnlyList<StripShares> strips)
    {
        Deck deck = bridge.Deck;
        json.WriteString("bridge", bridge.Name);
        json.WriteString("method", method?.Name);
        json.WriteString("caution", Words.Caution);
        json.WriteStartObject("deck");
        json.WriteNames("trusses", deck.TrussNames);
        json.WriteNumberOrNull("trussSpacing", deck.TrussSpacing);
        json.WriteNumberOrNull("roadway", deck.Roadway);
        json.WriteNumberOrNull("roadwayOffset", deck.RoadwayOffset);
        json.WriteNumberOrNull("wheelToKerb", deck.WheelToKerb);
        json.WriteNumberOrNull("lanes", deck.Roadway is { } roadway ? LeverRule.LanesOn(roadway) : null);
        json.WriteEndObject();
        if (deck.TrussShare is { } given)
        {
            json.WriteStartObject("given");
            json.WriteNumber("share", given);
            json.WriteString("reason", deck.TrussShareReason);
            json.WriteEndObject();
        }
        else
        {
            json.WriteNull("given");
        }

        json.WriteStartArray("shares");
        foreach (VehicleShares group in shares)
        {
            json.WriteStartObject();
            json.WriteNames("vehicles", group.Vehicles.Select(v => v.Name));
            json.WriteNumberOrNull("gauge", group.Gauge);
            json.WriteNumberOrNull("mostLanes", group.MostLanes);
            json.WriteNumberOrNull("fitAbreast", deck.Roadway is null ? null : LeverRule.MostAbreast(deck, group.Gauge));
            json.WriteStartArray("trusses");
            if (group.Outcome is ShareOutcome.Found found)
            {
                WriteTruss(json, deck, 0, group.HasPresence, found.OnLeft, found.Left);
                WriteTruss(json, deck, 1, group.HasPresence, found.OnRight, found.Right);
            }

            json.WriteEndArray();
            json.WriteString("reason", ShareWording.WhyNone(group.Outcome, DisplayUnits.Si));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        WriteStrips(json, deck, strips);
    }

    private static void WriteStrips(Utf8JsonWriter json, Deck deck, IReadOnlyList<StripShares> strips)
    {
        json.WriteStartArray("strips");
        foreach (StripShares load in strips)
        {
            json.WriteStartObject();
            json.WriteString("load", load.Load.Name);
            json.WriteString("kind", load.Lane is null ? "crowd" : "lane");
            json.WriteStartArray("trusses");
            foreach (int truss in load.IsFound ? (int[])[0, 1] : [])
            {
                json.WriteStartObject();
                json.WriteString("truss", deck.TrussNames[truss]);
                if (load.Lane is ShareOutcome.Found found)
                {
                    LateralShare counts = truss == 0 ? found.Left : found.Right;
                    json.WriteNumber("share", counts.Value);
                    json.WriteNumber("lanes", counts.Lanes);
                    json.WriteNumberOrNull("presence", load.HasPresence ? counts.Presence : null);
                    json.WriteNumbers("edges", counts.Strips.SelectMany(s => new[] { s.From, s.To }));
                }
                else if (load.Crowd is { } both)
                {
                    CrowdShare crowd = truss == 0 ? both.Left : both.Right;
                    json.WriteNumber("width", crowd.Width);
                    json.WriteNumbers("edges", [crowd.Strip.From, crowd.Strip.To]);
                }

                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteTruss(Utf8JsonWriter json, Deck deck, int truss, bool hasPresence, IReadOnlyList<LateralShare> tried, LateralShare counts)
    {
        json.WriteStartObject();
        json.WriteString("truss", deck.TrussNames[truss]);
        json.WriteNumberOrNull("share", counts.Value);
        json.WriteStartArray("arrangements");
        foreach (LateralShare share in tried)
        {
            json.WriteStartObject();
            json.WriteNumber("abreast", share.Lanes);
            json.WriteNumbers("wheels", share.Wheels);
            json.WriteNumberOrNull("wheelToKerb", share.WheelToKerb);
            json.WriteNumberOrNull("leverRule", VehicleShares.WithoutPresence(share, deck.TrussSpacing!.Value));
            json.WriteNumberOrNull("presence", hasPresence ? share.Presence : null);
            json.WriteNumberOrNull("share", share.Value);
            json.WriteBoolean("counts", share == counts);
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteEndObject();
    }
}
