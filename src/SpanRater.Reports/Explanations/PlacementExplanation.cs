using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>What <c>roll --explain</c> says: where a vehicle brings most into one member, and why there.</summary>
public static class PlacementExplanation
{
    /// <summary>How many placements of each direction are told.</summary>
    private const int PlacementsTold = 4;

    private static readonly ResultColumn[] Columns =
    [
        new("sense"), new("direction"), new("front axle at", Quantity.Length), new("axles on panel points"), new("force", Quantity.Force),
    ];

    /// <summary>Makes the page.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="vehicle">The vehicle.</param>
    /// <param name="scale">Part of the vehicle that is rolled [-].</param>
    /// <param name="outcome">The influence lines, or why there are none.</param>
    /// <param name="member">The member, by position.</param>
    /// <param name="units">The units to show.</param>
    public static ResultPage Of(Bridge bridge, Vehicle vehicle, double scale, Outcome<InfluenceLines> outcome, int member, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(vehicle);
        ArgumentNullException.ThrowIfNull(outcome);
        ArgumentNullException.ThrowIfNull(units);
        Truss truss = bridge.Truss;
        string name = truss.Members[member].Name;
        string part = scale == 1 ? "The whole vehicle" : string.Create(CultureInfo.InvariantCulture, $"{scale:0.####} of the vehicle");
        var blocks = new List<ResultBlock>
        {
            new ResultBlock.Heading($"{bridge.Name}: where {vehicle.Name} brings most into {name}, and why there", 1),
            new ResultBlock.Paragraph($"{VehiclesPage.Describe(vehicle, units)}. {part} on one truss, no impact."),
        };
        if (!outcome.TryGet(out InfluenceLines? lines, out Refusal? refusal))
        {
            string why = RefusalWording.Sentence(refusal, truss, units);
            blocks.Add(new ResultBlock.Paragraph(why, Strong: true));
            return new ResultPage(blocks, new ResultTable(Columns, []), [why], json => PlacementFacts.WriteRefused(json, bridge, vehicle, name, refusal), IsAnswer: false);
        }

        InfluenceLine line = lines.Members[member].Line;
        var plan = new RollingPlan(truss.Stations, vehicle.Train.Times(scale));
        Sense[] senses = [Sense.Tension, Sense.Compression];
        PlacementNarration?[] narrations = [.. senses.Select(s => PlacementNarration.Of(plan, line, s, PlacementsTold))];
        blocks.Add(new ResultBlock.Paragraph(
            "The force is the sum of axle load times ordinate. Between two placements in which an axle stands on a panel point every axle moves along a straight piece of the line, so the force changes in proportion and cannot turn back: the largest is among the placements with an axle on a panel point or at an end of the deck, and all of them are tried."));
        for (int s = 0; s < senses.Length; s++)
        {
            blocks.AddRange(narrations[s] is { } narration
                ? PlacementTelling.Of(narration, plan.Train, name, truss, units)
                : [new ResultBlock.Heading($"Largest {Words.Of(senses[s])}"), new ResultBlock.Paragraph($"No placement of {vehicle.Name} brings {Words.Of(senses[s])} into {name}.")]);
        }

        return new ResultPage(
            blocks,
            new ResultTable(Columns, [.. narrations.OfType<PlacementNarration>().SelectMany(n => PlacementTelling.Ranked(n).Select(p => PlacementTelling.Row(n.Sense, p, truss)))]),
            [],
            json => PlacementFacts.Write(json, bridge, vehicle, scale, name, narrations));
    }
}
