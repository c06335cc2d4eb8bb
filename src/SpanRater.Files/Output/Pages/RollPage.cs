using System.Globalization;
using System.Text.Json;

namespace SpanRater.Files;

/// <summary>What <c>roll</c> says: the peaks of every member under a vehicle, and where it stood.</summary>
public static class RollPage
{
    private static readonly ResultColumn[] Columns =
    [
        new("member"), new("role"), new("sense"), new("force", Quantity.Force), new("front axle at", Quantity.Length), new("direction"), new("spacings"),
    ];

    /// <summary>Makes the page.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="result">What came of rolling the vehicle.</param>
    /// <param name="member">Position of the one member to describe axle by axle; null for none.</param>
    /// <param name="units">The units to show.</param>
    public static ResultPage Of(Bridge bridge, RollingResult result, int? member, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(units);
        Truss truss = bridge.Truss;
        Vehicle vehicle = result.Vehicle;
        IReadOnlyList<PeakPair>? peaks = result.Peaks;
        string part = result.Scale == 1
            ? "The whole vehicle on one truss, no impact."
            : string.Create(CultureInfo.InvariantCulture, $"{result.Scale:0.####} of the vehicle on one truss, no impact.");
        var blocks = new List<ResultBlock>
        {
            new ResultBlock.Heading($"{bridge.Name}: {vehicle.Name} rolled over in both directions"),
            new ResultBlock.Paragraph($"{VehiclesPage.Describe(vehicle, units)}. {part}"),
        };
        if (vehicle.LaneLoading is { } loading)
        {
            blocks.Add(new ResultBlock.Paragraph($"Its standard form (\"{loading}\") has a lane load as well, which is not part of this."));
        }

        if (peaks is null)
        {
            string why = RefusalWording.Sentence(result.Refusal!, truss, units);
            blocks.Add(new ResultBlock.Paragraph(why, Strong: true));
            return new ResultPage(blocks, new ResultTable(Columns, []), [why], json => WriteRefused(json, bridge, result), IsAnswer: false);
        }

        IReadOnlyList<object?>[] rows =
        [
            .. truss.Members.SelectMany((m, i) => ((Sense[])[Sense.Tension, Sense.Compression]).Select(sense => Row(m, sense, peaks[i].Of(sense), vehicle, units))),
        ];
        IReadOnlyList<object?>[] shown = [.. rows.Select((row, i) => AsShown(row, truss.Members[i / 2]))];
        if (result.Crossing?.Lines.Slack is { } slackUnderDead)
        {
            blocks.Add(new ResultBlock.Paragraph(RodWording.OfRolling(slackUnderDead, truss)));
        }

        bool varies = vehicle.Train.Gaps.Any(g => g.Varies);
        blocks.Add(new ResultBlock.Grid(varies
            ? new ResultTable(Columns, shown)
            : new ResultTable(Columns[..^1], [.. shown.Select(r => (IReadOnlyList<object?>)[.. r.Take(Columns.Length - 1)])])));
        if (member is { } index)
        {
            foreach (Sense sense in (Sense[])[Sense.Tension, Sense.Compression])
            {
                if (peaks[index].Of(sense) is { } peak)
                {
                    blocks.Add(new ResultBlock.Paragraph($"{truss.Members[index].Name}, peak {Words.Of(sense)}, driving {Words.Of(peak.Direction)}: each axle, from the front back.{(peak.Rods is { } rods ? $" {RodWording.AtPeak(rods.Slack, truss)}" : "")}"));
                    blocks.Add(AxleTable(peak));
                }
            }
        }

        blocks.Add(new ResultBlock.Paragraph("Tension is positive. Direction is the way the vehicle drives; right means that the front axle has the largest x."));
        return new ResultPage(blocks, new ResultTable(Columns, rows), [], json => Write(json, bridge, result, varies));
    }

    // A rod is never pressed: what is below its dead force is tension that it loses.
    private static IReadOnlyList<object?> AsShown(IReadOnlyList<object?> row, Member member) =>
        member.TensionOnly && row[3] is < 0.0 ? [.. row.Take(2), "tension lost", .. row.Skip(3)] : row;

    private static IReadOnlyList<object?> Row(Member member, Sense sense, Peak? peak, Vehicle vehicle, DisplayUnits units) =>
        peak is null
            ? [member.Name, member.Role, Words.Of(sense), null, null, "never", ""]
            : [member.Name, member.Role, Words.Of(sense), peak.Force, peak.Station, Driving(peak), Spacings(peak, vehicle, units)];

    // Where the response jumps, the largest value may be reached just before or after the station and not at it.
    private static string Driving(Peak peak) =>
        peak.Approach == Approach.At ? Words.Of(peak.Direction) : $"{Words.Of(peak.Direction)} ({Words.Of(peak.Approach)} of it)";

    private static string Spacings(Peak peak, Vehicle vehicle, DisplayUnits units) =>
        vehicle.Train.Gaps.Any(g => g.Varies)
            ? string.Join(' ', peak.Gaps.Select(g => Math.Round(units.From(Quantity.Length, g), 3).ToString(CultureInfo.InvariantCulture)))
            : "";

    private static ResultBlock.Grid AxleTable(Peak peak) => new(new ResultTable(
        [new("axle"), new("load", Quantity.Force), new("station", Quantity.Length), new("ordinate", Quantity.Number, 4), new("adds", Quantity.Force)],
        [
            .. peak.Axles.Select((a, i) => (IReadOnlyList<object?>)[(i + 1).ToString(CultureInfo.InvariantCulture), a.Load, a.Station, a.Ordinate, a.Effect]),
            .. peak.Rods is { DeadShift: not 0 } rods ? (IEnumerable<IReadOnlyList<object?>>)[["dead load, on other rods", null, null, null, rods.DeadShift]] : [],
            ["sum", peak.Axles.Sum(a => a.Load), null, null, peak.Force],
        ]));

    private static void Write(Utf8JsonWriter json, Bridge bridge, RollingResult result, bool varies)
    {
        IReadOnlyList<PeakPair> peaks = result.Peaks!;
        WriteHead(json, bridge, result);
        json.WriteStartArray("peaks");
        for (int m = 0; m < peaks.Count; m++)
        {
            json.WriteStartObject();
            json.WriteString("member", bridge.Truss.Members[m].Name);
            WritePeak(json, "tension", peaks[m].Tension, bridge.Truss, varies);
            WritePeak(json, "compression", peaks[m].Compression, bridge.Truss, varies);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void WritePeak(Utf8JsonWriter json, string name, Peak? peak, Truss truss, bool varies)
    {
        if (peak is null)
        {
            json.WriteNull(name);
            return;
        }

        json.WriteStartObject(name);
        json.WritePlacement(peak, truss);
        if (varies)
        {
            json.WriteNumbers("spacings", peak.Gaps);
        }

        json.WriteAxles(peak);
        json.WriteEndObject();
    }

    private static void WriteRefused(Utf8JsonWriter json, Bridge bridge, RollingResult result)
    {
        WriteHead(json, bridge, result);
        json.WriteStartArray("peaks");
        json.WriteEndArray();
        json.WriteRefusal(result.Refusal!, bridge.Truss);
    }

    private static void WriteHead(Utf8JsonWriter json, Bridge bridge, RollingResult result)
    {
        json.WriteString("bridge", bridge.Name);
        json.WriteString("vehicle", result.Vehicle.Name);
        if (result.Scale != 1)
        {
            json.WriteNumber("scale", result.Scale);
        }
    }
}

/// <summary>What came of rolling a vehicle over a bridge.</summary>
/// <param name="Vehicle">The vehicle.</param>
/// <param name="Scale">Part of it that was rolled [-].</param>
/// <param name="Crossing">The truss with its dead load on; null where there is none.</param>
/// <param name="Peaks">The peaks by member; null where they are refused.</param>
/// <param name="Refusal">Why there are no peaks; null where there are.</param>
public sealed record RollingResult(Vehicle Vehicle, double Scale, TrussCrossing? Crossing, IReadOnlyList<PeakPair>? Peaks, Refusal? Refusal);
