using System.Globalization;
using System.Text.Json;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>What <c>roll --explain</c> says of a truss with rods: where dead and live load together bring most into one member, and why there.</summary>
public static class RodPlacementExplanation
{
    private const int PlacementsTold = 4;

    private static readonly ResultColumn[] Columns =
    [
        new("sense"), new("direction"), new("front axle at", Quantity.Length), new("axles on panel points"), new("rods just at zero"), new("slack"), new("force", Quantity.Force),
    ];

    /// <summary>Makes the page.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="result">What came of rolling the vehicle.</param>
    /// <param name="member">The member, by position.</param>
    /// <param name="units">The units to show.</param>
    public static ResultPage Of(Bridge bridge, RollingResult result, int member, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(units);
        Truss truss = bridge.Truss;
        string name = truss.Members[member].Name;
        var blocks = new List<ResultBlock>
        {
            new ResultBlock.Heading($"{bridge.Name}: where {result.Vehicle.Name} brings most into {name}, and why there", 1),
            new ResultBlock.Paragraph($"{VehiclesPage.Describe(result.Vehicle, units)}. {(result.Scale == 1 ? "The whole vehicle" : string.Create(CultureInfo.InvariantCulture, $"{result.Scale:0.####} of the vehicle"))} on one truss, no impact."),
        };
        IReadOnlyList<RodPlacement?>? told = null;
        Refusal? refusal = result.Refusal;
        if (result.Crossing is null || !RodPlacement.Of(result.Crossing, result.Vehicle, result.Scale, member, PlacementsTold).TryGet(out told, out refusal))
        {
            string why = RefusalWording.Sentence(refusal!, truss, units);
            blocks.Add(new ResultBlock.Paragraph(why, Strong: true));
            return new ResultPage(blocks, new ResultTable(Columns, []), [why], json => PlacementFacts.WriteRefused(json, bridge, result.Vehicle, name, refusal!), IsAnswer: false);
        }

        blocks.Add(new ResultBlock.Paragraph(RodWording.OfRolling(result.Crossing.Lines.Slack!, truss)));
        blocks.Add(new ResultBlock.Paragraph(
            "While one set of rods acts, the force is the sum of axle load times ordinate on the lines of that set, and of what the change of the set does to the dead load. It changes in proportion until an axle comes to a panel point or a rod comes to zero: the largest is at such a placement, and all of them are tried."));
        foreach (Sense sense in (Sense[])[Sense.Tension, Sense.Compression])
        {
            blocks.AddRange(told[(int)sense] is { } placement
                ? Told(placement, name, result.Crossing, truss, units)
                : [new ResultBlock.Heading($"Largest {Words.Of(sense)}"), new ResultBlock.Paragraph($"No placement of {result.Vehicle.Name} adds {Words.Of(sense)} to {name}.")]);
        }

        return new ResultPage(
            blocks,
            new ResultTable(Columns, [.. told.OfType<RodPlacement>().SelectMany(p => PlacementTelling.Ranked(p).Select(c => Row(p.Sense, c, result.Crossing, truss)))]),
            [],
            json => Write(json, bridge, result, name, told));
    }

    private static IEnumerable<ResultBlock> Told(RodPlacement placement, string name, TrussCrossing crossing, Truss truss, DisplayUnits units)
    {
        Peak peak = placement.Peak;
        bool rod = truss.Members[truss.FindMember(name)!.Value].TensionOnly && placement.Sense == Sense.Compression;
        string InWords(double force) => rod ? $"{Words.ForceInWords(-force, units)} lost" : Words.ForceInWords(force, units);
        yield return new ResultBlock.Heading(rod ? "Most tension lost" : $"Largest {Words.Of(placement.Sense)}");
        yield return new ResultBlock.Paragraph(
            $"{name}: {InWords(peak.Force)} with the front axle at {Reports.Told.Length(peak.Station, units)}, driving to the {Words.Of(peak.Direction)}. Slack there: {Names(peak.Rods!.Slack, truss)}.{AtZero(peak, crossing, truss)} Each axle, from the front back:");
        yield return new ResultBlock.Grid(new ResultTable(
            [new("axle"), new("station", Quantity.Length), new("load", Quantity.Force), new("ordinate", Quantity.Number, 4), new("adds", Quantity.Force)],
            [
                .. peak.Axles.Select((a, i) => (IReadOnlyList<object?>)[(i + 1).ToString(CultureInfo.InvariantCulture), a.Station, a.Load, a.Ordinate, a.Effect]),
                [RodWording.DeadChange, null, null, null, peak.Rods.DeadShift],
                ["sum", null, peak.Axles.Sum(a => a.Load), null, peak.Force],
            ]));
        yield return new ResultBlock.Paragraph(string.Create(CultureInfo.InvariantCulture, $"{placement.Candidates.Positions} placements were tried, both directions. The best of each direction:"));
        yield return new ResultBlock.Grid(new ResultTable(Columns[1..], [.. PlacementTelling.Ranked(placement).Select(p => (IReadOnlyList<object?>)[.. Row(placement.Sense, p, crossing, truss).Skip(1)])]));
        double step = units.Name == "us" ? 0.3048 : 0.25;
        yield return new ResultBlock.Paragraph(
            $"Moved {Reports.Told.Length(step, units)}, the rods acting as they then do, it is {InWords(placement.ForceMoved(-step))} to the left and {InWords(placement.ForceMoved(step))} to the right, against {InWords(peak.Force)} here: {Verdict(placement, step)}");
    }

    private static string Verdict(RodPlacement placement, double step)
    {
        double sign = placement.Sense == Sense.Tension ? 1 : -1, here = sign * placement.Peak.Force, equal = 1e-9 * Math.Abs(here);
        bool left = sign * placement.ForceMoved(-step) < here - equal, right = sign * placement.ForceMoved(step) < here - equal;
        return (left, right) switch
        {
            (true, true) => "it falls whichever way the vehicle moves, which is the mark of a peak.",
            (true, false) => "to the left it falls; to the right it stays the same for a while, so placements there are as good.",
            (false, true) => "to the right it falls; to the left it stays the same for a while, so placements there are as good.",
            _ => "it is the same over a stretch, and of equal placements one is told.",
        };
    }

    private static IReadOnlyList<object?> Row(Sense sense, Peak peak, TrussCrossing crossing, Truss truss) =>
    [
        Words.Of(sense), Words.Of(peak.Direction), peak.Station, string.Join(", ", PlacementTelling.OnPoints(peak, truss)),
        string.Join(", ", Pairs(peak, crossing, truss)), Names(peak.Rods!.Slack, truss), peak.Force,
    ];

    private static string AtZero(Peak peak, TrussCrossing crossing, Truss truss) =>
        Pairs(peak, crossing, truss) is { Length: > 0 } pairs
            ? $" Of the pair {string.Join(" and of the pair ", pairs)} both rods are just at zero: moved one way the one wakes, moved the other way the other."
            : "";

    private static string[] Pairs(Peak peak, TrussCrossing crossing, Truss truss) =>
        [.. peak.Rods!.AtZero.Select(p => crossing.Pairs[p]).Select(p => $"{truss.Members[p.First].Name} and {truss.Members[p.Second].Name}")];

    private static string Names(IReadOnlyList<int> members, Truss truss) => members.Count == 0 ? "none" : string.Join(", ", members.Select(m => truss.Members[m].Name));

    private static void Write(Utf8JsonWriter json, Bridge bridge, RollingResult result, string name, IReadOnlyList<RodPlacement?> told)
    {
        PlacementFacts.Head(json, bridge, result.Vehicle, result.Scale, name);
        foreach (Sense sense in (Sense[])[Sense.Tension, Sense.Compression])
        {
            if (told[(int)sense] is not { } placement)
            {
                json.WriteNull(Words.Of(sense));
                continue;
            }

            json.WriteStartObject(Words.Of(sense));
            json.WritePlacement(placement.Peak, bridge.Truss);
            json.WriteNumber("positions", placement.Candidates.Positions);
            json.WriteAxles(placement.Peak);
            json.WriteStartArray("candidates");
            foreach (Peak candidate in PlacementTelling.Ranked(placement))
            {
                json.WriteStartObject();
                json.WritePlacement(candidate, bridge.Truss);
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        }
    }
}
