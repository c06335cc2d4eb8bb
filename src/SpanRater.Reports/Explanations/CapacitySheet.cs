using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>How a capacity follows from section and material: every mode with its equation, its numbers and its value.</summary>
internal static class CapacitySheet
{
    /// <summary>The sheet of a row that has such a capacity, or what is missing for one; nothing where the capacity is given.</summary>
    public static IEnumerable<ResultBlock> Of(MemberRow row, DisplayUnits units) => row switch
    {
        { Resistance: { } resistance } => Sheet(resistance, row.Member.Name, row.Sense, new SheetUnits(units)),
        { Lacking: { Count: > 0 } lacking } => [new ResultBlock.Items("Missing for a capacity from its section, and how to give it:", [.. lacking.Select(MissingDatumWording.Of)])],
        _ => [],
    };

    /// <summary>The sheet of a capacity without any load; nothing where it does not follow from section and material.</summary>
    public static IEnumerable<ResultBlock> Of(MemberCapacityRow row, DisplayUnits units) =>
        row.AsFound?.Resistance is { } resistance ? Sheet(resistance, row.Member.Name, row.Sense, new SheetUnits(units)) : [];

    /// <summary>The sheet of a capacity as built, where what was found changes it; else nothing.</summary>
    public static IEnumerable<ResultBlock> AsBuilt(MemberCapacityRow row, DisplayUnits units) =>
        row is { IsChanged: true, AsBuilt.Resistance: { } built } ? Of(built, $"{row.Member.Name} as built", row.Sense, units) : [];

    /// <summary>The sheet of what a member would carry.</summary>
    public static IEnumerable<ResultBlock> Of(MemberResistance resistance, string name, Sense sense, DisplayUnits units) => Sheet(resistance, name, sense, new SheetUnits(units));

    /// <summary>The sheet of bars that hang something.</summary>
    public static IEnumerable<ResultBlock> OfBars(MemberResistance bars, string name, SheetUnits sheet) => Sheet(bars, name, Sense.Tension, sheet);

    /// <summary>The sheet of a beam as a column.</summary>
    public static IEnumerable<ResultBlock> OfColumn(MemberResistance column, string name, SheetUnits sheet) => Sheet(column, name, Sense.Compression, sheet);

    /// <summary>What a strength rests on, a line a clause.</summary>
    public static IEnumerable<string> From(IEnumerable<Clause> clauses) =>
        clauses.Distinct().Select(c => $"{c.Says}: {c.Values} ({(c.Mark == ClauseMark.Practice ? "common practice" : c.CitationWithMark)})");

    private static IEnumerable<ResultBlock> Sheet(MemberResistance resistance, string name, Sense sense, SheetUnits sheet)
    {
        ModeAtCut governing = resistance.Governing;
        yield return new ResultBlock.Heading($"Capacity of {name} in {Words.Of(sense)}", 3);
        if (sense == Sense.Compression && resistance.Modes.Any(m => m.Axes is not null))
        {
            yield return new ResultBlock.Paragraph("As a column, about both axes:");
            yield return new ResultBlock.Grid(ColumnTelling.Table(resistance, sheet));
            foreach (ResultBlock block in ColumnTelling.Of(resistance, governing, sheet))
            {
                yield return block;
            }
        }

        foreach (ModeAtCut mode in resistance.Modes)
        {
            string at = mode.Place is { } place ? $", {place}" : resistance.Make.Section.Cuts.Count > 0 ? ", away from the cuts" : "";
            yield return new ResultBlock.Paragraph($"{Capital(ModeWords.Of(mode))}{at}{(ReferenceEquals(mode, governing) ? ": governs" : "")}.", Strong: ReferenceEquals(mode, governing));
            foreach (ResultBlock step in Steps(mode, resistance.Make, sheet))
            {
                yield return step;
            }

            yield return new ResultBlock.Items("From:", [.. From(mode.Strength.Clauses.Concat(mode.Strength.Factors.Select(f => f.Clause)))]);
        }

        yield return new ResultBlock.Paragraph($"The least governs: {ModeWords.Of(governing)}{(governing.Place is { } worst ? $" at {worst}, the worst cut, counted as if it went all along" : "")}, {sheet.Force(governing.Strength.Value)}.");
        if (resistance.Factors is { } factors)
        {
            yield return Factors(factors, governing, resistance, sheet);
            yield return FactorsTelling.Of(factors);
        }
        else
        {
            yield return SheetUnits.Step($"C = {sheet.Force(resistance.Value)}");
        }

        foreach (string note in Notes(resistance))
        {
            yield return new ResultBlock.Paragraph(note, Strong: true);
        }
    }

    private static IEnumerable<ResultBlock> Steps(ModeAtCut mode, MemberMake make, SheetUnits sheet) => mode.Strength switch
    {
        TensionStrength strength => StrengthTelling.Of(strength, mode, make, sheet),
        ColumnStrength strength => StrengthTelling.Of(strength, make, sheet),
        TimberStrength strength => TimberTelling.Of(strength, mode, sheet),
        CombinedStrength strength => CombinedTelling.Of(strength, mode, make, sheet),
        _ => throw new ArgumentOutOfRangeException(nameof(mode), mode, "Every strength has its steps."),
    };

    private static ResultBlock.Equation Factors(MemberFactors factors, ModeAtCut governing, MemberResistance resistance, SheetUnits sheet)
    {
        string product = $"{SheetUnits.Plain(factors.Condition.Value)}·{SheetUnits.Plain(factors.System.Value)}";
        string held = factors.IsHeldAtLeast ? $", which is below {SheetUnits.Plain(MemberFactors.Least)} and is held there" : "";
        return SheetUnits.Step($"C = φc·φs·P; φc·φs = {product} = {SheetUnits.Plain(factors.Condition.Value * factors.System.Value)}{held}; C = {SheetUnits.Plain(factors.Value)}·{sheet.Force(governing.Strength.Value)} = {sheet.Force(resistance.Value)}");
    }

    private static IEnumerable<string> Notes(MemberResistance resistance)
    {
        if (resistance.HeadsNotMeasured)
        {
            yield return "The heads of these eyebars are not measured: their bodies alone are rated. Write head width and pin hole in sections.csv.";
        }

        if (resistance.Slender is { } slender)
        {
            yield return $"More slender than the standard allows: {SheetUnits.Plain(slender.Slenderness)}, and the limit is {SheetUnits.Plain(slender.Limit)} ({ResistanceClauses.SlendernessLimits.CitationWithMark}). A warning; no strength is taken off for it.";
        }
    }

    private static string Capital(string word) => char.ToUpperInvariant(word[0]) + word[1..];
}
