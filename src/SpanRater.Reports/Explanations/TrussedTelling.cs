using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>How a trussed floorbeam is rated: bending with the compression that its rod brings, and where the load stands on the line of an effect.</summary>
internal static class TrussedTelling
{
    /// <summary>The sheet of bending and compression.</summary>
    public static IEnumerable<ResultBlock> Of(TrussedResistance trussed, string name, SheetUnits sheet)
    {
        foreach (ResultBlock block in BeamTelling.Of(trussed.Bending, name, sheet))
        {
            yield return block;
        }

        foreach (ResultBlock block in CapacitySheet.OfColumn(trussed.Column, name, sheet))
        {
            // The lengths of this column are not those of a truss member, which its sheet would name.
            yield return block is ResultBlock.Paragraph paragraph && paragraph.Text.StartsWith("K in plane", StringComparison.Ordinal)
                ? new ResultBlock.Paragraph("K is 1 both ways: ends and posts hold it upright, and sideways what unbraced says.")
                : block;
        }

        yield return new ResultBlock.Paragraph("The rod presses the beam, and moment M and compression N of one section and one placement are counted together. Where the beam sags:");
        yield return SheetUnits.Step($"M + 2·(Mc/Nc)·N ≤ Mc, 2·Mc/Nc = 2·{sheet.Moment(trussed.Bending.Value)}/{sheet.Force(trussed.Column.Value)} = {sheet.Length(trussed.Arm)}");
        yield return new ResultBlock.Paragraph("Where it hogs, over a post, its lower side is pressed, held only where unbraced below says so, else over the whole span; its moment counts as");
        yield return SheetUnits.Step($"M·Mc/Mc′ = M·{sheet.Moment(trussed.Bending.Value)}/{sheet.Moment(trussed.Hogging.Value)} = {SheetUnits.Plain(trussed.HoggingCounts)}·M, Mc′ by {PartWords.Of(trussed.Hogging.Governing.Strength.Mode)}");
        yield return new ResultBlock.Items("From:", [.. CapacitySheet.From([FloorClauses.TrussedBeams])]);
    }

    /// <summary>Where a load stands, and what of its reaction acts.</summary>
    public static IEnumerable<ResultBlock> Live(PartLive.OnTrussed part, PartRow row, DisplayUnits units)
    {
        AcrossPlacement place = part.Placement;
        string what = row.ActsAs switch
        {
            PartEffect.Moment => $"bending of the beam {(part.IsHogging ? "up" : "down")} with its compression, {Told.Length(place.Section, units)} from one truss",
            PartEffect.Shear => $"shear of the beam, {Told.Length(place.Section, units)} from one truss",
            _ => "tension of the rod",
        };
        if (part.Part is LivePart.OfCrowd)
        {
            yield return new ResultBlock.Paragraph($"It stands only where it adds to the {what}: {PartTelling.Value(part.Effect, row, units)}.");
            yield break;
        }

        string lanes = string.Create(CultureInfo.InvariantCulture, $"{place.Lanes} {(place.Lanes == 1 ? "lane" : "lanes")} loaded, presence factor {place.Presence:0.00##} in it");
        string where = place.Wheels.Count > 0
            ? $"Wheel lines at {string.Join(", ", place.Wheels.Select(w => Told.Length(w, units)))} from that truss, each with half of the reaction of its vehicle"
            : $"Lane loads at {string.Join(", ", place.Strips.Select(s => $"{Told.Length(s.From, units)} to {Told.Length(s.To, units)}"))} from that truss";
        yield return new ResultBlock.Paragraph(row.Beside is null
            ? $"{where}, {lanes}: the {what} is largest, {Across(part.Across, row, units)} times the reaction of one."
            : $"{where}, {lanes}: of the {what} it brings {Across(part.Across, row, units)} times its reaction.");
        if (part.Pressing is { } pressing)
        {
            yield return new ResultBlock.Paragraph($"The compression in that is {Told.Number(pressing)} times the reaction of one.");
        }
    }

    /// <summary>Reaction × what of it acts.</summary>
    public static string Product(PartLive.OnTrussed part, PartRow row, DisplayUnits units) => part.Part is LivePart.OfCrowd
        ? PartTelling.Value(part.Effect, row, units)
        : $"{ResultTable.Figure(units.From(Quantity.Force, part.Along), 3)} {units.Symbol(Quantity.Force)}·{Across(part.Across, row, units)}";

    private static string Across(double across, PartRow row, DisplayUnits units) =>
        row.ActsAs == PartEffect.Moment ? $"{Told.Number(units.From(Quantity.Length, across))} {units.Symbol(Quantity.Length)}" : Told.Number(across);
}
