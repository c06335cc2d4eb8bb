using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>Opens one rating factor of a part of the floor or of a connection: what each number is, where it is from, and the sum itself.</summary>
internal static class PartTelling
{
    /// <summary>The row as a chapter of its own.</summary>
    public static IEnumerable<ResultBlock> Of(PartRow row, BridgeRating rating, DisplayUnits units)
    {
        string acts = RatingWording.ActsIn(row);
        yield return new ResultBlock.Heading($"{char.ToUpperInvariant(acts[0])}{acts[1..]}{(row.At.Length > 0 ? $" at {row.At}" : "")}, {row.Level.Name} level{(row.Beside is { } n ? $", beside {n.Vehicle.Name}" : "")}: {(row.Factor is null ? Words.InTable(row.Status) : $"RF = {Words.Factor(row.Factor)}")}");
        if (row.Reason is { } reason)
        {
            yield return new ResultBlock.Paragraph($"Not rated: {RatingWording.Of(reason, units)}.", Strong: true);
        }

        yield return new ResultBlock.Items("What goes in:", [.. Given(row, rating, units)]);
        var sheet = new SheetUnits(units);
        foreach (ResultBlock block in row.Resistance is { } resistance ? PartCapacityTelling.Of(resistance, row, sheet) : [])
        {
            yield return block;
        }

        foreach (ResultBlock block in row.Dead is { } dead ? DeadTelling.Of(dead, row, rating.Bridge, units) : [])
        {
            yield return block;
        }

        foreach (ResultBlock block in PartLiveTelling.Of(row, rating, units))
        {
            yield return block;
        }

        if (row.Status == RatingStatus.DeadExceeds)
        {
            yield return new ResultBlock.Paragraph($"The factored dead load is {Value(row.FactoredDead, row, units)} and uses up the capacity of {Value(row.Capacity!.Value, row, units)}: RF = 0, whatever the vehicle.", Strong: true);
        }
        else if (row is { Status: RatingStatus.Rated, Capacity: { } capacity, Live: { } live, Impact: { } impact, Level.LiveFactor: { } liveFactor, Factor: { } factor })
        {
            string top = $"{Figure(capacity, row, units)} − {Told.Factor(row.ComponentsFactor)}·{Figure(row.DeadComponents, row, units)} − {Told.Factor(row.WearingFactor)}·{Figure(row.DeadWearing, row, units)}";
            double taken = row.FactoredDead + (row.Beside?.Factored ?? 0);
            if (row.Beside is { } beside)
            {
                top += $" − {Told.Factor(beside.LiveFactor)}·{Figure(beside.Part.Force, row, units)}·(1 + {Told.Number(beside.Part.Impact.Value, 3)})";
            }

            string below = $"{Told.Factor(liveFactor)}·{Figure(Math.Abs(live), row, units)}·(1 + {Told.Number(impact, 3)})";
            string sum = $"RF = ({top}) / ({below}) = {Figure(capacity - taken, row, units)} / {Figure(liveFactor * Math.Abs(live) * (1 + impact), row, units)}";
            if (row.LighterWheel is not { } lighter)
            {
                yield return SheetUnits.Step($"{sum} = {ResultTable.Cut(factor, 3)}");
                yield break;
            }

            double inProportion = (capacity - taken) / (liveFactor * Math.Abs(live) * (1 + impact));
            yield return SheetUnits.Step($"{sum} = {ResultTable.Cut(inProportion, 3)} in proportion");
            yield return new ResultBlock.Paragraph($"A lighter wheel stands on less of the deck, and so less of the vehicle passes than in proportion. At {ResultTable.Cut(factor, 3)} of {row.Vehicle.Name} its wheel is P = {ResultTable.Figure(units.From(Quantity.Force, lighter.Wheel.Load), 3)} {units.Symbol(Quantity.Force)}, b = {Told.Length(lighter.Wheel.ContactWidth, units)} wide, and brings {Value(lighter.Effect, row, units)}, presence in it: {Told.Factor(liveFactor)}·{Figure(lighter.Effect, row, units)}·(1 + {Told.Number(impact, 3)}) = {Figure(capacity - taken, row, units)}, all that is left.");
            yield return SheetUnits.Step($"RF = {ResultTable.Cut(factor, 3)}");
        }
    }

    private static IEnumerable<string> Given(PartRow row, BridgeRating rating, DisplayUnits units)
    {
        yield return row.Capacity is { } capacity
            ? $"C = {Value(capacity, row, units)}: {RatingWording.Mode(row)} governs{(RatingWording.Place(row) is { } place ? $", {place}" : "")}. Its sheet is below"
            : "C does not follow from what is given: what is missing is told above";
        (string dc, string dw) = row.Dead is null ? ("the dead load case DC of the truss", "the dead load case DW of the truss") : ("deck, kerbs and beams, worked below", row.DeadWearing == 0 ? "no wearing surface on it" : "the wearing surface on it, worked below");
        yield return $"DC = {Value(row.DeadComponents, row, units)}: {dc}";
        yield return $"DW = {Value(row.DeadWearing, row, units)}: {dw}";
        yield return $"γDC = {Told.Factor(row.ComponentsFactor)}, γDW = {Told.Factor(row.WearingFactor)}";
        yield return row.Level.LiveFactor is { } live
            ? $"γLL = {Told.Factor(live)}: {row.Level.Name} level, class {VehicleClassNames.Name(row.Vehicle.Class)}{(rating.Method.UsesTruckTraffic(row.Vehicle.Class) ? rating.Bridge.Rating.TruckTraffic is { } trucks ? string.Create(CultureInfo.InvariantCulture, $", {trucks:0} trucks a day") : ", truck traffic unknown" : "")}"
            : $"γLL is not given: {RatingWording.Of(rating.Method.WithoutLiveFactor(row.Vehicle.Class), units)}";
        if (row.Impact is { } impact && row.LiveParts.Count > 0)
        {
            yield return $"IM = {Told.Number(impact, 3)}: {ImpactTelling.Of(row.LiveParts[0].Impact.Reason, row, rating, row.LoadedLength, units)}";
        }
    }

    // What the vehicle in the next lane brings, in the words of the part: an arm across for a moment, a share for an end.
    internal static string BesideOf(Neighbour beside, PartRow row, DisplayUnits units)
    {
        string part = row.ActsAs == PartEffect.Moment ? $"{Told.Number(units.From(Quantity.Length, beside.Part.Share))} {units.Symbol(Quantity.Length)}" : Told.Number(beside.Part.Share);
        return $"{beside.Vehicle.Name} in the next lane, which stays as it is while {row.Vehicle.Name} is scaled, brings the reaction {ResultTable.Figure(units.From(Quantity.Force, beside.Part.Part.Force), 3)} {units.Symbol(Quantity.Force)}, and times {part}: N = {Value(beside.Part.Force, row, units)}, γN = {Told.Factor(beside.LiveFactor)}, IM = {Told.Number(beside.Part.Impact.Value, 3)}. The two stand where the factor is lowest.";
    }

    internal static string Value(double value, PartRow row, DisplayUnits units) => $"{Figure(value, row, units)} {units.Symbol(PartWords.QuantityOf(row.ActsAs))}";

    private static string Figure(double value, PartRow row, DisplayUnits units) => ResultTable.Figure(units.From(PartWords.QuantityOf(row.ActsAs), value), 3);
}
