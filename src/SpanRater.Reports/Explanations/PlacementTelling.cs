using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>Tells of the peak of one sense.</summary>
internal static class PlacementTelling
{
    /// <summary>The peak axle by axle, the placements tried, and why it wins.</summary>
    public static IEnumerable<ResultBlock> Of(PlacementNarration narration, AxleTrain train, string name, Truss truss, DisplayUnits units)
    {
        Peak peak = narration.Peak;
        yield return new ResultBlock.Heading($"Largest {Words.Of(narration.Sense)}");
        yield return new ResultBlock.Paragraph($"{name} gets {Words.ForceInWords(peak.Force, units)} with the front axle {Side(peak)} {Told.Length(peak.Station, units)}, driving to the {Words.Of(peak.Direction)}{Gaps(peak, train, units)}. Each axle, from the front back:");
        yield return new ResultBlock.Grid(new ResultTable(
            [new("axle"), new("stands"), new("station", Quantity.Length), new("load", Quantity.Force), new("ordinate", Quantity.Number, 4), new("adds", Quantity.Force)],
            [
                .. narration.Axles.Select((a, i) => (IReadOnlyList<object?>)[Number(i), Stands(a, truss), a.Axle.Station, a.Axle.Load, a.Axle.Ordinate, a.Axle.Effect]),
                ["sum", "", null, peak.Axles.Sum(a => a.Load), null, peak.Force],
            ]));
        if (train.RelievingAxles == RelievingAxles.LeftOut)
        {
            yield return new ResultBlock.Paragraph("Axles that would relieve are left out, as this loading asks.");
        }

        yield return new ResultBlock.Paragraph(string.Create(CultureInfo.InvariantCulture, $"{narration.Candidates.Positions} placements were tried, both directions. The best of each direction:"));
        yield return new ResultBlock.Grid(new ResultTable(
            [new("direction"), new("front axle at", Quantity.Length), new("axles on panel points"), new("force", Quantity.Force)],
            [.. Ranked(narration).Select(p => (IReadOnlyList<object?>)[.. Row(narration.Sense, p, truss).Skip(1)])]));
        yield return new ResultBlock.Paragraph(OtherWay(narration, units));
        yield return new ResultBlock.Heading("Why there", 3);
        foreach (ResultBlock block in Why(narration, units))
        {
            yield return block;
        }
    }

    /// <summary>The placements told, the best first; of equal ones the peak itself first.</summary>
    public static IEnumerable<Peak> Ranked(Placement placement)
    {
        double sign = placement.Sense == Sense.Tension ? 1 : -1, equal = 1e-9 * Math.Abs(placement.Peak.Force);
        IEnumerable<Peak> others = placement.Candidates.Right.Concat(placement.Candidates.Left).Where(p => !IsSame(p, placement.Peak));
        return [placement.Peak, .. others.OrderByDescending(p => Math.Round(sign * p.Force / equal)).ThenBy(p => p.Direction).ThenBy(p => p.Station)];
    }

    /// <summary>A placement as a row: sense, direction, front axle, axles on panel points, force.</summary>
    public static IReadOnlyList<object?> Row(Sense sense, Peak peak, Truss truss) =>
    [
        Words.Of(sense),
        peak.Approach == Approach.At ? Words.Of(peak.Direction) : $"{Words.Of(peak.Direction)} ({Words.Of(peak.Approach)} of it)",
        peak.Station,
        string.Join(", ", OnPoints(peak, truss)),
        peak.Force,
    ];

    private static IEnumerable<ResultBlock> Why(PlacementNarration narration, DisplayUnits units)
    {
        yield return new ResultBlock.Paragraph("Moved a little, each axle goes along the piece of the line on that side of it. Its load times that slope is what it changes for each unit of length moved to the right:");
        yield return new ResultBlock.Grid(new ResultTable(
            [
                new("axle"), new("load", Quantity.Force), new($"slope on its left [1/{units.Symbol(Quantity.Length)}]"), new($"slope on its right [1/{units.Symbol(Quantity.Length)}]"),
                new("load × slope, left", Quantity.LineLoad, 3), new("load × slope, right", Quantity.LineLoad, 3),
            ],
            [
                .. narration.Axles.Select((a, i) => (IReadOnlyList<object?>)[Number(i), a.Axle.Load, Slope(a.SlopeLeft, units), Slope(a.SlopeRight, units), a.Axle.Load * a.SlopeLeft, a.Axle.Load * a.SlopeRight]),
                ["sum", null, "", "", -narration.ChangeToTheLeft, narration.ChangeToTheRight],
            ]));
        yield return new ResultBlock.Equation("change of F = Σ load × slope × distance", "\\Delta F = \\Delta x \\sum P \\, m");
        yield return new ResultBlock.Paragraph(Criterion(narration, units));
    }

    private static string Criterion(PlacementNarration narration, DisplayUnits units)
    {
        double step = units.Name == "us" ? 0.3048 : 0.25;
        string moved = $"Moved {Told.Length(step, units)}, it is {Words.ForceInWords(narration.ForceMoved(-step), units)} to the left and {Words.ForceInWords(narration.ForceMoved(step), units)} to the right.";
        if (narration.Jumps)
        {
            return $"An axle stands at an end of the deck where the ordinate is not zero: as it crosses the end the force jumps, and the slopes tell only of the side on which it stays on. {moved}";
        }

        double sign = narration.Sense == Sense.Tension ? 1 : -1;
        double left = sign * narration.ChangeToTheLeft, right = sign * narration.ChangeToTheRight;
        string sense = Words.Of(narration.Sense);
        string verdict = (IsZero(left, narration), IsZero(right, narration)) switch
        {
            (true, true) => $"Neither way changes it: the {sense} is the same over a stretch, and of equal placements one is told.",
            (true, false) => $"To the right the {sense} falls; to the left it stays the same for a while, so placements there are as good.",
            (false, true) => $"To the left the {sense} falls; to the right it stays the same for a while, so placements there are as good.",
            _ => $"The {sense} falls whichever way the vehicle moves: the sum of load times slope changes its sign as the axle passes its panel point, which is the classical mark of a peak.",
        };
        return $"{verdict} {moved}";
    }

    private static bool IsZero(double change, PlacementNarration narration) =>
        Math.Abs(change) <= 1e-9 * narration.Axles.Sum(a => a.Axle.Load * (Math.Abs(a.SlopeLeft) + Math.Abs(a.SlopeRight)));

    /// <summary>The best that driving the other way brings.</summary>
    public static string OtherWay(Placement placement, DisplayUnits units)
    {
        string way = Words.Of(placement.Peak.Direction == Direction.Right ? Direction.Left : Direction.Right);
        return placement.OtherWay is not { } other
            ? $"Driving to the {way} it brings no {Words.Of(placement.Sense)}."
            : Math.Abs(other.Force - placement.Peak.Force) <= 1e-9 * Math.Abs(placement.Peak.Force)
                ? $"Driving to the {way} it brings the same, with the front axle {Side(other)} {Told.Length(other.Station, units)}."
                : $"Driving to the {way} the most is {Words.ForceInWords(other.Force, units)}, with the front axle {Side(other)} {Told.Length(other.Station, units)}.";
    }

    private static string Side(Peak peak) => peak.Approach == Approach.At ? "at" : $"{Words.Of(peak.Approach)} of";

    private static string Gaps(Peak peak, AxleTrain train, DisplayUnits units)
    {
        string[] varying =
        [
            .. Enumerable.Range(0, train.Gaps.Count).Where(g => train.Gaps[g].Varies)
                .Select(g => $"{Told.Length(peak.Gaps[g], units)} of {Told.Length(train.Gaps[g].Least, units)} to {Told.Length(train.Gaps[g].Most, units)} behind axle {Number(g)}"),
        ];
        return varying.Length == 0 ? "" : $", with spacing {Told.List(varying)}";
    }

    private static string Stands(AxleOnLine axle, Truss truss)
    {
        if (!axle.IsOnDeck)
        {
            return "off the deck";
        }

        if (axle.PanelPoint is { } point)
        {
            return $"on {InfluenceExplanation.Point(truss, point)}";
        }

        int right = Enumerable.Range(0, truss.Stations.Count).First(i => truss.Stations[i] > axle.Axle.Station);
        return $"between {InfluenceExplanation.Point(truss, right - 1)} and {InfluenceExplanation.Point(truss, right)}";
    }

    /// <summary>Which axle stands on which panel point.</summary>
    public static IEnumerable<string> OnPoints(Peak peak, Truss truss)
    {
        double near = 1e-9 * (truss.Stations[^1] - truss.Stations[0]);
        return peak.Axles.SelectMany((a, i) => Enumerable.Range(0, truss.Stations.Count)
            .Where(p => Math.Abs(truss.Stations[p] - a.Station) <= near)
            .Select(p => $"{Number(i)} on {InfluenceExplanation.Point(truss, p)}"));
    }

    private static bool IsSame(Peak one, Peak other) =>
        one.Direction == other.Direction && one.Axles.Zip(other.Axles, (a, b) => Math.Abs(a.Station - b.Station)).Max() <= 1e-6;

    private static string Slope(double perMetre, DisplayUnits units) => Told.Number(perMetre / units.From(Quantity.Length, 1), 5);

    private static string Number(int index) => (index + 1).ToString(CultureInfo.InvariantCulture);
}
