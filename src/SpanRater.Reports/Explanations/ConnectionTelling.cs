using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>How the capacity of a connection follows from what was measured.</summary>
internal static class ConnectionTelling
{
    /// <summary>The sheet.</summary>
    public static IEnumerable<ResultBlock> Of(ConnectionResistance resistance, PartRow row, SheetUnits sheet)
    {
        ConnectionStrength governing = resistance.Governing;
        yield return new ResultBlock.Heading($"Capacity of {row.Name}", 3);
        if (resistance.Connection.Size is { } size)
        {
            string what = resistance.Connection is PinConnection ? "diameter" : "thickness";
            yield return new ResultBlock.Paragraph($"{char.ToUpperInvariant(what[0])}{what[1..]} as built {sheet.Small(size.AsBuilt)}, {(size.IsLess ? $"of which {sheet.Small(size.Left)} is left" : "of which nothing is reported lost")}{(size.Source.Length == 0 ? "" : $"; source: {size.Source}")}.");
        }

        if (resistance.Connection is PinConnection pin)
        {
            yield return new ResultBlock.Paragraph("Packed on the pin, from one end to the other; the bars of one member share its force by their thickness and push at their middles:");
            yield return new ResultBlock.Grid(new ResultTable(
                [new("bar"), new("on the pin"), new("gap before", Quantity.Deflection, 3), new("thickness", Quantity.Deflection, 3), new("middle", Quantity.Deflection, 3), new("part of its load", Quantity.Number, 3)],
                [.. pin.Packing.Select((b, i) => (IReadOnlyList<object?>)[(i + 1).ToString(System.Globalization.CultureInfo.InvariantCulture), b.Name, b.Gap, b.Thickness, pin.Middles[i], pin.PartOf(i)])]));
        }

        if (resistance.Direction is { } direction)
        {
            foreach (ResultBlock block in PinTelling.Of(resistance, direction, row, sheet))
            {
                yield return block;
            }
        }

        foreach (ConnectionStrength mode in resistance.Modes)
        {
            string word = PartWords.Of(mode.Mode);
            bool governs = ReferenceEquals(mode, governing);
            yield return new ResultBlock.Paragraph($"{char.ToUpperInvariant(word[0])}{word[1..]}{(governs ? ": governs" : "")}.", Strong: governs);
            string factors = string.Concat(mode.Factors.Select(f => $"{SheetUnits.Plain(f.Value)}·"));
            yield return SheetUnits.Step($"{string.Join(", ", mode.Terms.Select(t => Term(t.Term, t.Value, sheet)))}: {Formula(mode.Mode)} = {Value(mode, mode.Nominal, sheet)}");
            if (mode.Factors.Count > 0)
            {
                yield return SheetUnits.Step($"{string.Concat(mode.Factors.Select(f => $"{StrengthTelling.Symbol(f)}·"))}Rn = {factors}{Value(mode, mode.Nominal, sheet)} = {Value(mode, mode.Value, sheet)}");
            }

            yield return new ResultBlock.Items("From:", [.. CapacitySheet.From(mode.Clauses.Concat(mode.Factors.Select(f => f.Clause)))]);
        }

        if (resistance.Factors is { } reduced)
        {
            yield return SheetUnits.Step($"C = φc·φs·Rr; φc·φs = {SheetUnits.Plain(reduced.Condition.Value)}·{SheetUnits.Plain(reduced.System.Value)}{(reduced.IsHeldAtLeast ? $", held at {SheetUnits.Plain(MemberFactors.Least)}" : "")}; C = {SheetUnits.Plain(reduced.Value)}·{Value(governing, governing.Value, sheet)} = {Value(governing, resistance.Value, sheet)}");
            yield return FactorsTelling.Of(reduced);
        }
        else
        {
            yield return SheetUnits.Step($"C = {Value(governing, resistance.Value, sheet)}");
        }
    }

    private static string Term(ConnectionTerm term, double value, SheetUnits sheet) => term switch
    {
        ConnectionTerm.Diameter => $"D = {sheet.Small(value)}",
        ConnectionTerm.Yield => $"Fy = {sheet.Stress(value)}",
        ConnectionTerm.Ultimate => $"Fu = {sheet.Stress(value)}",
        ConnectionTerm.Thickness => $"t = {sheet.Small(value)}",
        ConnectionTerm.Modulus => $"S = {sheet.Modulus(value)}",
        ConnectionTerm.Area => $"A = {sheet.Area(value)}",
        ConnectionTerm.NetArea => $"An = {sheet.Area(value)}",
        ConnectionTerm.Width => $"w = {sheet.Small(value)}",
        ConnectionTerm.Length => $"L = {sheet.Small(value)}",
        ConnectionTerm.Stress => $"F = {sheet.Stress(value)}",
        ConnectionTerm.Count => $"n = {SheetUnits.Plain(value)}",
        ConnectionTerm.Shear => $"V = {sheet.Force(value)}",
        ConnectionTerm.ElasticForce => $"Pe = {sheet.Force(value)}",
        _ => throw new ArgumentOutOfRangeException(nameof(term), term, "Every term has its symbol."),
    };

    private static string Formula(ConnectionMode mode) => mode switch
    {
        ConnectionMode.PinBending => "Rn = Fy·S",
        ConnectionMode.PinBendingAndShear => "Rn = (0.95 − (2.2·V/(D²·Fy))³)·D³·Fy/6, V the largest factored shear of the pin at the factor",
        ConnectionMode.PinShear => "Rn = Fy·A",
        ConnectionMode.PinBearing => "Rn by D·t·Fy",
        ConnectionMode.Heads => "Rn = F·An/1.35",
        ConnectionMode.FastenerShear => "Rn = F·A, n planes in all",
        ConnectionMode.FastenerBearing => "Rn = 2.4·n·D·t·Fu",
        ConnectionMode.WhitmoreYield => "Rn = Fy·w·t",
        ConnectionMode.WhitmoreRupture => "Rn = Fu·An",
        ConnectionMode.WhitmoreBuckling => "Rn by the column curve of Pe and Fy·w·t, r = t/√12 of one plate",
        ConnectionMode.BlockShear => "Rn = min(0.58·Fu·An, 0.58·Fy·A) + Fu·w·t",
        ConnectionMode.PlaneYield => "Rn = 0.58·0.88·Fy·A",
        ConnectionMode.PlaneRupture => "Rn = 0.58·Fu·An",
        _ => throw new ArgumentOutOfRangeException(nameof(mode), mode, "Every mode has its formula."),
    };

    private static string Value(ConnectionStrength strength, double value, SheetUnits sheet) =>
        strength.Mode is ConnectionMode.PinBending or ConnectionMode.PinBendingAndShear ? sheet.Moment(value) : sheet.Force(value);
}
