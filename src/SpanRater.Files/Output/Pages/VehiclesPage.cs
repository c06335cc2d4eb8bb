using System.Globalization;
using System.Text.Json;

namespace SpanRater.Files;

/// <summary>What <c>vehicles</c> says: the catalogue, or one vehicle of it.</summary>
public static class VehiclesPage
{
    /// <summary>The whole catalogue.</summary>
    /// <param name="catalogue">The catalogue.</param>
    /// <param name="units">The units to show.</param>
    public static ResultPage All(Catalogue catalogue, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(catalogue);
        ArgumentNullException.ThrowIfNull(units);
        return new ResultPage(
            [
                new ResultBlock.Heading("Vehicles and loadings"),
                new ResultBlock.Grid(new ResultTable(
                    [new("name"), new("class"), new("weight", Quantity.Force), new("axles"), new("spacings"), new("from")],
                    [
                        .. catalogue.Entries.Select(e => (IReadOnlyList<object?>)
                        [
                            e.Load.Name,
                            VehicleClassNames.Name(e.Load.Class),
                            (e.Load as Vehicle)?.Train.Weight ?? (e.Load as TrackedVehicle)?.Weight,
                            e.Load is Vehicle v ? Loads(v, units) : LiveLoadWording.Describe(e.Load, units),
                            e.Load is Vehicle w ? Gaps(w, units) : "",
                            e.Where.File,
                        ]),
                    ])),
                new ResultBlock.Paragraph($"Axles in {units.Symbol(Quantity.Force)}, spacings in {units.Symbol(Quantity.Length)}, from the front axle back. One vehicle with its source: spanrater vehicles NAME."),
            ],
            AxleRows([.. catalogue.Entries.Select(e => e.Load)]),
            [],
            json => Write(json, catalogue.Entries.Select(e => e.Load)));
    }

    /// <summary>One vehicle or loading.</summary>
    /// <param name="load">It.</param>
    /// <param name="units">The units to show.</param>
    public static ResultPage One(LiveLoad load, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(load);
        ArgumentNullException.ThrowIfNull(units);
        var blocks = new List<ResultBlock> { new ResultBlock.Heading($"{load.Name} ({VehicleClassNames.Name(load.Class)})") };
        if (load is Vehicle vehicle)
        {
            blocks.Add(new ResultBlock.Paragraph(Describe(vehicle, units) + "."));
            blocks.Add(new ResultBlock.Grid(new ResultTable(
                [new("axle"), new("load", Quantity.Force), new("behind the one ahead", Quantity.Length), new("at most", Quantity.Length)],
                [
                    .. vehicle.Train.Loads.Select((l, i) => (IReadOnlyList<object?>)
                    [
                        (i + 1).ToString(CultureInfo.InvariantCulture),
                        l,
                        i == 0 ? null : vehicle.Train.Gaps[i - 1].Least,
                        i == 0 || !vehicle.Train.Gaps[i - 1].Varies ? null : vehicle.Train.Gaps[i - 1].Most,
                    ]),
                ])));
            if (vehicle.LaneLoading is { } lane)
            {
                blocks.Add(new ResultBlock.Paragraph($"Its standard form is \"{lane}\", which has a lane load: it is rolled alone, and never rated alone."));
            }
        }
        else
        {
            string what = LiveLoadWording.Describe(load, units);
            blocks.Add(new ResultBlock.Paragraph($"{char.ToUpperInvariant(what[0])}{what[1..]}."));
            if (LiveLoadWording.PostedBy(load) is { } posted)
            {
                blocks.Add(new ResultBlock.Paragraph($"{char.ToUpperInvariant(posted[0])}{posted[1..]}: a posting applies the rating factor to the former."));
            }
        }

        blocks.Add(new ResultBlock.Paragraph($"Source: {(load.Source.Length == 0 ? "none given" : load.Source)}."));
        return new ResultPage(blocks, AxleRows([load]), [], json => Write(json, [load]));
    }

    /// <summary>A vehicle in one line: weight, axles, spacings, gauge.</summary>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="units">The units to show.</param>
    public static string Describe(Vehicle vehicle, DisplayUnits units)
    {
        string force = units.Symbol(Quantity.Force), length = units.Symbol(Quantity.Length);
        string spacings = vehicle.Train.Gaps.Count == 0 ? "one axle" : $"spacings {Gaps(vehicle, units)} {length}";
        string left = vehicle.Train.RelievingAxles == RelievingAxles.LeftOut ? ", axles that relieve left out" : "";
        return $"{Short(units.From(Quantity.Force, vehicle.Train.Weight))} {force} in all: axles {Loads(vehicle, units)} {force}, {spacings}, gauge {Short(units.From(Quantity.Length, vehicle.Gauge))} {length}{left}";
    }

    internal static string DescribeWithName(Vehicle vehicle, DisplayUnits units) => $"{vehicle.Name} ({Describe(vehicle, units)})";

    private static string Loads(Vehicle vehicle, DisplayUnits units) =>
        string.Join(' ', vehicle.Train.Loads.Select(l => Short(units.From(Quantity.Force, l))));

    private static string Gaps(Vehicle vehicle, DisplayUnits units) =>
        string.Join(' ', vehicle.Train.Gaps.Select(g => Short(units.From(Quantity.Length, g.Least)) + (g.Varies ? "–" + Short(units.From(Quantity.Length, g.Most)) : "")));

    private static string Short(double value) => Math.Round(value, 2).ToString(CultureInfo.InvariantCulture);

    private static ResultTable AxleRows(IReadOnlyList<LiveLoad> loads) => new(
        [
            new("vehicle"), new("class"), new("load", Quantity.Force), new("spacing", Quantity.Length), new("spacing max", Quantity.Length),
            new("gauge", Quantity.Length), new("relieving axles"), new("source"),
        ],
        [
            .. loads.OfType<Vehicle>().SelectMany(v => v.Train.Loads.Select((l, i) => (IReadOnlyList<object?>)
            [
                v.Name,
                i == 0 ? VehicleClassNames.Name(v.Class) : "",
                l,
                i == 0 ? null : v.Train.Gaps[i - 1].Least,
                i == 0 || !v.Train.Gaps[i - 1].Varies ? null : v.Train.Gaps[i - 1].Most,
                i == 0 ? v.Gauge : null,
                i == 0 && v.Train.RelievingAxles == RelievingAxles.LeftOut ? "left out" : "",
                i == 0 ? v.Source : "",
            ])),
        ]);

    private static void Write(Utf8JsonWriter json, IEnumerable<LiveLoad> loads)
    {
        json.WriteStartArray("vehicles");
        foreach (LiveLoad load in loads)
        {
            json.WriteStartObject();
            json.WriteString("name", load.Name);
            json.WriteString("class", VehicleClassNames.Name(load.Class));
            json.WriteString("source", load.Source);
            if (load is Vehicle vehicle)
            {
                json.WriteNumbers("loads", vehicle.Train.Loads.Select(l => l / 1000));
                json.WriteStartArray("spacings");
                foreach (AxleGap gap in vehicle.Train.Gaps)
                {
                    json.WriteStartObject();
                    json.WriteNumber("least", gap.Least);
                    json.WriteNumber("most", gap.Most);
                    json.WriteEndObject();
                }

                json.WriteEndArray();
                json.WriteNumber("gauge", vehicle.Gauge);
                json.WriteBoolean("relievingAxlesLeftOut", vehicle.Train.RelievingAxles == RelievingAxles.LeftOut);
                json.WriteString("laneLoading", vehicle.LaneLoading);
            }
            else
            {
                WriteOther(json, load);
            }

            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WriteOther(Utf8JsonWriter json, LiveLoad load)
    {
        switch (load)
        {
            case Loading loading:
                json.WriteNames("of", loading.Trains.Select(t => t.Name));
                json.WriteBoolean("laneLoad", loading.Lane is not null);
                if (loading.Lane is { } lane)
                {
                    WriteIntensity(json, "lane", lane.Intensity);
                    json.WriteForce("pointMoment", lane.PointOnChords);
                    json.WriteForce("pointShear", lane.PointOnOthers);
                    json.WriteBoolean("laneImpact", lane.TakesImpact);
                }

                json.WriteNumberOrNull("deckOver", loading.DeckOver);
                json.WriteBoolean("interiorSupports", loading.ForInteriorSupports);
                json.WriteForce("weight", loading.PostedWeight);
                json.WriteForce("trainWeight", loading.TrainWeight);
                break;
            case Crowd crowd:
                WriteIntensity(json, "pressure", crowd.Intensity);
                json.WriteNumberOrNull("width", crowd.Width);
                break;
            case TrackedVehicle tracked:
                json.WriteForce("weight", tracked.Weight);
                json.WriteNumberOrNull("length", tracked.Length);
                json.WriteNumberOrNull("gauge", tracked.Gauge);
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(load), load, "Every live load is written.");
        }
    }

    // kN/m or kN/m2 where it is constant; else the name of its rule.
    private static void WriteIntensity(Utf8JsonWriter json, string name, LoadIntensity intensity)
    {
        switch (intensity)
        {
            case ConstantLineLoad line:
                json.WriteForce(name, line.Load);
                break;
            case ConstantPressure area:
                json.WriteForce(name, area.Pressure);
                break;
            default:
                json.WriteString(name, intensity.Name);
                break;
        }
    }
}
