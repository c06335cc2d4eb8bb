using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>Opens one rating factor: what each number is, where it is from, and the sum itself.</summary>
internal static class RatingTelling
{
    /// <summary>The row as a chapter of its own.</summary>
    public static IEnumerable<ResultBlock> Of(MemberRow row, BridgeRating rating, DisplayUnits units)
    {
        string result = row.Factor is null ? Words.InTable(row.Status) : $"RF = {Words.Factor(row.Factor)}";
        yield return new ResultBlock.Heading($"{Capital(Words.Of(row.Sense))}, {row.Level.Name} level{(row.Beside is { } n ? $", beside {n.Vehicle.Name}" : "")}{(row.Truss is null ? "" : $", {row.Truss} truss")}: {result}");
        if (row.Reason is { } reason)
        {
            yield return new ResultBlock.Paragraph($"{(row.Status == RatingStatus.Withheld ? "Withheld" : "Not rated")}: {RatingWording.Of(reason, units)}.", Strong: true);
        }

        if (row.Status == RatingStatus.Slack)
        {
            yield return new ResultBlock.Paragraph($"{row.Member.Name} only pulls: it goes slack instead of pressing, and has no compression rating.");
            yield break;
        }

        yield return new ResultBlock.Items("What goes in:", [.. Given(row, rating, units)]);
        foreach (ResultBlock block in CapacitySheet.Of(row, units))
        {
            yield return block;
        }

        foreach (ResultBlock block in LiveTelling.Of(row, rating, units))
        {
            yield return block;
        }

        foreach (ResultBlock block in Sum(row, rating, units))
        {
            yield return block;
        }
    }

    /// <summary>The dead forces of a row, and where they are from.</summary>
    internal static IEnumerable<string> Dead(MemberRow row, BridgeRating rating, DisplayUnits units)
    {
        bool rods = row.Peak?.Rods is not null || rating.Crossing.Lines.Slack is not null;
        string set = rods ? "; the rods counted are those that pull under the dead load alone" : "";
        yield return $"DC = {Words.ForceInWords(row.DeadComponents, units)}: case DC {DeadLoadWording.Origin(rating.Bridge, DeadCase.Components)}{set}";
        yield return rating.Crossing.WearingSurface is null ? "DW = 0: there is no case DW" : $"DW = {Words.ForceInWords(row.DeadWearing, units)}: case DW {DeadLoadWording.Origin(rating.Bridge, DeadCase.WearingSurface)}{set}";
    }

    private static IEnumerable<string> Given(MemberRow row, BridgeRating rating, DisplayUnits units)
    {
        yield return row switch
        {
            { Resistance: { } found, Capacity: { } carried } => $"C = {Force(carried, units)}: from its section and material, {CapacityHolds(rating.Method.GivenCapacityMeaning)}; {ModeWords.Of(found.Governing)} governs. Its sheet is below",
            { Capacity: { } capacity } => $"C = {Force(capacity, units)}: column \"{RatingWording.ColumnOf(rating.Method.CapacityFor(row.Sense, row.Level))}\" of members.csv, {CapacityHolds(rating.Method.GivenCapacityMeaning)}",
            { Lacking: not null } => "C does not follow from its section: what is missing is told below",
            _ => $"C is not given: column \"{RatingWording.ColumnOf(rating.Method.CapacityFor(row.Sense, row.Level))}\" of members.csv is blank",
        };
        foreach (string dead in Dead(row, rating, units))
        {
            yield return dead;
        }

        DeadFactors factors = rating.Method.DeadFactorsWith(rating.Bridge.Rating);
        yield return $"γDC = {Told.Factor(row.ComponentsFactor)}: {Adds(row.ComponentsFactor, factors.Components, factors.RelievingComponents)}";
        yield return $"γDW = {Told.Factor(row.WearingFactor)}: {Adds(row.WearingFactor, factors.WearingSurface, factors.RelievingWearingSurface)}";
        yield return row.Level.LiveFactor is { } live
            ? $"γLL = {Told.Factor(live)}: {row.Level.Name} level, class {VehicleClassNames.Name(row.Vehicle.Class)}{(rating.Method.UsesTruckTraffic(row.Vehicle.Class) ? rating.Bridge.Rating.TruckTraffic is { } trucks ? string.Create(CultureInfo.InvariantCulture, $", {trucks:0} trucks a day") : ", truck traffic unknown" : "")}"
            : $"γLL is not given: {RatingWording.Of(rating.Method.WithoutLiveFactor(row.Vehicle.Class), units)}";
        if (row.Impact is { } impact)
        {
            yield return $"IM = {Told.Number(impact, 3)}: {LiveTelling.Impact(row, rating, units)}";
        }

        if (row.Beside is { } beside)
        {
            yield return $"γN = {Told.Factor(beside.LiveFactor)}: {beside.Vehicle.Name} in the next lane, which stays as it is while {row.Vehicle.Name} is scaled";
        }
    }

    /// <summary>The rating equation of a row with its numbers, or why there is none.</summary>
    internal static IEnumerable<ResultBlock> Sum(MemberRow row, BridgeRating rating, DisplayUnits units)
    {
        if (row.Status == RatingStatus.DeadExceeds)
        {
            yield return new ResultBlock.Paragraph($"The factored dead load is {Force(row.FactoredDead, units)} in this sense and uses up the capacity of {Force(row.Capacity!.Value, units)}: RF = 0, whatever the vehicle.", Strong: true);
            yield break;
        }

        if (row.Status == RatingStatus.NotLoaded)
        {
            yield return new ResultBlock.Paragraph("The vehicle brings no force in this sense, or never enough to reach the capacity: there is no factor, and none is infinite.");
            yield break;
        }

        if (row is not { Status: RatingStatus.Rated, Capacity: { } capacity, Live: { } live, Impact: { } impact, Level.LiveFactor: { } liveFactor, Factor: { } factor })
        {
            yield break;
        }

        if (row.Reached is { } reached)
        {
            foreach (ResultBlock block in SumWithRods(row, reached, rating.Bridge.Truss, units))
            {
                yield return block;
            }

            yield break;
        }

        double sign = row.Sense == Sense.Tension ? 1 : -1;
        string top = $"{Figure(capacity, units)} − {Told.Factor(row.ComponentsFactor)}·{Bracketed(sign * row.DeadComponents, units)} − {Told.Factor(row.WearingFactor)}·{Bracketed(sign * row.DeadWearing, units)}";
        double room = capacity - row.FactoredDead - (row.Beside?.Factored ?? 0), weight = liveFactor * Math.Abs(live) * (1 + impact);
        if (row.Beside is { } beside)
        {
            top += $" − {Told.Factor(beside.LiveFactor)}·{Figure(Math.Abs(beside.Part.Force), units)}·(1 + {Told.Number(beside.Part.Impact.Value, 3)})";
        }

        string below = $"{Told.Factor(liveFactor)}·{Figure(Math.Abs(live), units)}·(1 + {Told.Number(impact, 3)})";
        yield return new ResultBlock.Equation(
            $"RF = ({top}) / ({below}) = {Figure(room, units)} / {Figure(weight, units)} = {ResultTable.Cut(factor, 3)}",
            $"RF = \\frac{{{Tex(top)}}}{{{Tex(below)}}} = \\frac{{{Figure(room, units)}}}{{{Figure(weight, units)}}} = {ResultTable.Cut(factor, 3)}");
    }

    // Effects do not add up: the sum is shown at the factor, where the total is the capacity.
    private static IEnumerable<ResultBlock> SumWithRods(MemberRow row, CapacityReached reached, Truss truss, DisplayUnits units)
    {
        double sign = row.Sense == Sense.Tension ? 1 : -1, liveFactor = row.Level.LiveFactor!.Value, share = row.Share!.Value, impact = row.Impact!.Value;
        Peak position = reached.Position;
        double live = position.Axles.Sum(a => a.Effect), scale = position.Axles.Sum(a => a.Load) / row.Train!.Train.Weight;
        double factor = scale / (liveFactor * share * (1 + impact));
        string slack = position.Rods!.Slack.Count == 0 ? "none" : string.Join(", ", position.Rods.Slack.Select(m => truss.Members[m].Name));
        yield return new ResultBlock.Paragraph(
            $"Rods go slack, so that the forces of dead load and vehicle cannot be found apart and added. RF is found by making the vehicle on this truss heavier, from nothing, until dead load and vehicle together, factors in both, first bring {row.Member.Name} to its capacity C. That is so when {Told.Number(scale, 4)} of every axle stands on this truss, the front axle at {Told.Length(position.Station, units)}, driving to the {Words.Of(position.Direction)}. Slack then: {slack}. These axle loads on the lines of the rods that pull then:");
        yield return new ResultBlock.Grid(new ResultTable(
            [new("axle"), new("station", Quantity.Length), new("load on this truss", Quantity.Force, 3), new("ordinate", Quantity.Number, 5), new("load × ordinate", Quantity.Force, 3)],
            [
                .. position.Axles.Select((a, i) => (IReadOnlyList<object?>)[(i + 1).ToString(CultureInfo.InvariantCulture), a.Station, a.Load, a.Ordinate, a.Effect]),
                ["factored dead load, with these rods", null, null, null, reached.FactoredDead],
                ["sum: the capacity", null, null, null, reached.FactoredDead + live],
            ]));
        string sum = $"{Told.Number(scale, 4)} / ({Told.Factor(liveFactor)}·{Told.Number(share, 4)}·(1 + {Told.Number(impact, 3)}))";
        yield return new ResultBlock.Equation(
            $"{Told.Number(scale, 4)} of the vehicle = RF·γLL·share·(1 + IM), so RF = {sum} = {ResultTable.Cut(factor, 3)}",
            $"RF = \\frac{{{Told.Number(scale, 4)}}}{{{Tex($"{Told.Factor(liveFactor)}·{Told.Number(share, 4)}·(1 + {Told.Number(impact, 3)})")}}} = {ResultTable.Cut(factor, 3)}");
        if (sign * (reached.FactoredDead + live) < 0 || row.CappedBy is not null)
        {
            yield return new ResultBlock.Paragraph($"Before that {row.CappedBy} goes slack with nothing to take over: no factor is above {Told.Number(row.Factor!.Value, 3)}.", Strong: true);
        }
    }

    private static string CapacityHolds(CapacityMeaning meaning) => meaning switch
    {
        CapacityMeaning.AllowableForce => "an allowable force",
        CapacityMeaning.DesignResistance => "a design resistance, with its partial factors in it",
        _ => "resistance, condition and system factors in it",
    };

    private static string Adds(double used, double adding, double relieving) =>
        adding == relieving ? "adding or relieving, it is the same" : used == adding ? "it adds to the sense rated" : "it relieves the sense rated";

    private static string Bracketed(double value, DisplayUnits units) => value < 0 ? $"({Signed(value, units)})" : Figure(value, units);

    private static string Signed(double value, DisplayUnits units) => Figure(value, units).Replace('-', '−');

    private static string Figure(double value, DisplayUnits units) => ResultTable.Figure(units.From(Quantity.Force, value), 3);

    private static string Force(double value, DisplayUnits units) => $"{Figure(value, units)} {units.Symbol(Quantity.Force)}";

    private static string Tex(string text) => text.Replace("·", " \\cdot ", StringComparison.Ordinal).Replace('−', '-');

    private static string Capital(string word) => char.ToUpperInvariant(word[0]) + word[1..];
}
