using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>What the doubts of readings do to a factor: at the worst of one, at the worst and the best of all, the chance that it is below 1, and what must remain for 1.</summary>
internal static class DoubtTelling
{
    /// <summary>The factor with one reading off by its doubt to the bad side.</summary>
    public static IEnumerable<ResultBlock> AtWorst(DoubtfulReading reading, BridgeRating rating, DisplayUnits units)
    {
        foreach (ResultBlock block in With(reading.Row, reading.ResistanceAtWorst, reading.AtWorst, rating, units))
        {
            yield return block;
        }

        if (double.IsFinite(reading.Urgency))
        {
            string factor = Told.Number(reading.Row.Factor!.Value), worst = Told.Number(reading.AtWorst);
            yield return SheetUnits.Step($"urgency = loss / (RF·RF at worst) = ({factor} − {worst}) / ({factor}·{worst}) = {Told.Number(reading.Urgency, 3)}");
        }
    }

    /// <summary>Low, high and the chance below 1.</summary>
    public static IEnumerable<ResultBlock> Of(DoubtfulFactor factor, BridgeRating rating, DisplayUnits units)
    {
        var sheet = new SheetUnits(units);
        yield return new ResultBlock.Paragraph($"Readings of {RatingWording.Member(factor.Row)} that have a doubt. What was read is taken as the mean of a normal distribution, its doubt as {DoubtfulFactor.DeviationsInDoubt:0} standard deviations; no value is above what was built:");
        yield return new ResultBlock.Grid(new ResultTable(
            [new("reading"), new($"read [{sheet.SmallUnit}]"), new($"doubt [{sheet.SmallUnit}]"), new($"standard deviation [{sheet.SmallUnit}]"), new($"at worst [{sheet.SmallUnit}]"), new($"at best [{sheet.SmallUnit}]"), new($"as built [{sheet.SmallUnit}]")],
            [.. factor.Readings.Select(r => (IReadOnlyList<object?>)[MeasureWording.What(r), sheet.SmallFigure(r.Value), sheet.SmallFigure(r.Doubt), sheet.SmallFigure(r.Doubt / DoubtfulFactor.DeviationsInDoubt), sheet.SmallFigure(r.AtWorst), sheet.SmallFigure(r.AtBest), r.Most is { } most ? sheet.SmallFigure(most) : ""])]));
        yield return new ResultBlock.Heading("Low: every reading at its worst", 3);
        foreach (ResultBlock block in With(factor.Row, factor.ResistanceAtWorst, factor.Low, rating, units))
        {
            yield return block;
        }

        yield return new ResultBlock.Heading("High: every reading at its best", 3);
        foreach (ResultBlock block in With(factor.Row, factor.ResistanceAtBest, factor.High, rating, units))
        {
            yield return block;
        }

        yield return new ResultBlock.Heading("The chance below 1", 3);
        foreach (ResultBlock block in Chance(factor, sheet, units))
        {
            yield return block;
        }
    }

    /// <summary>What must remain of a dimension for a factor of 1.</summary>
    public static IEnumerable<ResultBlock> Of(NeededDimension needed, BridgeRating rating, DisplayUnits units)
    {
        var sheet = new SheetUnits(units);
        foreach (ResultBlock block in CapacityForOne(needed.Row, needed.NeededCapacity, units))
        {
            yield return block;
        }

        bool isLeast = needed.Needed <= needed.AsBuilt * NeededDimension.Nothing * 1.01;
        yield return new ResultBlock.Paragraph($"With {MeasureWording.What(needed)} at {sheet.Small(needed.Needed!.Value)} {(needed.IsThickerThanBuilt ? "from the start, without loss" : "at every cut, on both faces alike")}, all else as found, the member carries {(isLeast ? $"this, which is enough; less than {NeededDimension.Nothing * 100:0} % of as built is not looked at" : "just this; the dimension is found by halving the stretch that holds it")}:");
        foreach (ResultBlock block in CapacitySheet.Of(needed.ResistanceThen!, needed.Row.Name, needed.Row.Sense, units))
        {
            yield return block;
        }
    }

    private static IEnumerable<ResultBlock> Chance(DoubtfulFactor factor, SheetUnits sheet, DisplayUnits units)
    {
        if (factor is not { NeededCapacity: { } needed, Drawn: { } drawn })
        {
            yield return new ResultBlock.Paragraph("No capacity would make the factor 1: whatever is drawn, it is below.");
            yield break;
        }

        foreach (ResultBlock block in CapacityForOne(factor.Row, needed, units))
        {
            yield return block;
        }

        yield return new ResultBlock.Paragraph(string.Create(
            CultureInfo.InvariantCulture,
            $"{DoubtfulFactor.Samples:#,0} times each reading is drawn for itself (a Mersenne Twister that starts at {DoubtfulFactor.Seed}, so that the same input gives the same numbers), and the capacity found with all of them. The least that came is {sheet.Force(drawn.Least)}, the middle one {sheet.Force(drawn.Middle)}, the most {sheet.Force(drawn.Most)}; below C1 are {drawn.Below:#,0} of {DoubtfulFactor.Samples:#,0}."));
        string p = Told.Number(factor.ChanceBelowOne);
        yield return SheetUnits.Step(string.Create(CultureInfo.InvariantCulture, $"p = {drawn.Below:0} / {DoubtfulFactor.Samples:0} = {p} = {100 * factor.ChanceBelowOne:0.0} %; standard error √(p·(1 − p)/n) = √({p}·{Told.Number(1 - factor.ChanceBelowOne)}/{DoubtfulFactor.Samples:0}) = {Told.Number(factor.StandardError)} = {100 * factor.StandardError:0.0} %"));
        if (factor.ByTheCurve is not { } curve)
        {
            yield break;
        }

        Reading reading = curve.Reading;
        double deviation = reading.Doubt / DoubtfulFactor.DeviationsInDoubt;
        if (curve.At is not { } at)
        {
            yield return new ResultBlock.Paragraph($"There is but one reading, and by the curve of the normal distribution itself the chance is {(curve.Chance > 0 ? "1: no value of it makes" : "as good as 0: no value within 10 standard deviations brings")} the factor {(curve.Chance > 0 ? "1" : "below 1")}.");
            yield break;
        }

        double z = (at - reading.Value) / deviation;
        yield return new ResultBlock.Paragraph($"There is but one reading, so that the curve of the normal distribution gives the chance without drawing: the factor is 1 where it is {sheet.Small(at)}.");
        yield return SheetUnits.Step($"z = ({sheet.SmallFigure(at)} − {sheet.SmallFigure(reading.Value)}) / {sheet.SmallFigure(deviation)} = {SheetUnits.Plain(z)}; {(reading.MoreIsBetter ? "p = Φ(z)" : "p = 1 − Φ(z)")} = {SheetUnits.Plain(curve.Chance)}");
    }

    // The rating equation the other way round.
    private static IEnumerable<ResultBlock> CapacityForOne(MemberRow row, double? needed, DisplayUnits units)
    {
        if (needed is not { } capacity)
        {
            yield break;
        }

        if (row is { Reached: null, Live: { } live, Impact: { } impact, Level.LiveFactor: { } liveFactor })
        {
            string beside = row.Beside is { } n ? $" + {Figure(n.Factored, units)}" : "";
            yield return SheetUnits.Step($"C1, at which RF = 1: factored dead load{(row.Beside is null ? "" : " + γN·N·(1 + IM)")} + γLL·LL·(1 + IM) = {Figure(row.FactoredDead, units)}{beside} + {Told.Number(liveFactor, 2)}·{Figure(Math.Abs(live), units)}·(1 + {Told.Number(impact, 3)}) = {Figure(capacity, units)} {units.Symbol(Quantity.Force)}");
        }
        else
        {
            yield return new ResultBlock.Paragraph($"Rods go slack, so that the capacity at which RF = 1 is sought, the factor being found again for each that is tried as that of the member as found: C1 = {Figure(capacity, units)} {units.Symbol(Quantity.Force)}.");
        }
    }

    // The sheet of a capacity that is not that of the member as found, and the factor with it.
    private static IEnumerable<ResultBlock> With(MemberRow row, MemberResistance? resistance, double factor, BridgeRating rating, DisplayUnits units)
    {
        if (resistance is null)
        {
            return [new ResultBlock.Paragraph("Nothing would be left of the member, or no rule would hold any more: its capacity counts as none.")];
        }

        return
        [
            .. CapacitySheet.Of(resistance, row.Name, row.Sense, units),
            .. row.Reached is not null
                ? [new ResultBlock.Paragraph($"Rods go slack: the factor is sought again, as that of the member as found, until dead load and vehicle bring it to this capacity: {Words.Factor(factor)}.")]
                : RatingTelling.Sum(row with { Capacity = resistance.Value, Resistance = resistance, Factor = factor, Status = resistance.Value > row.FactoredDead ? row.Status : RatingStatus.DeadExceeds }, rating, units),
        ];
    }

    private static string Figure(double value, DisplayUnits units) => ResultTable.Figure(units.From(Quantity.Force, value), 3).Replace('-', '−');
}
