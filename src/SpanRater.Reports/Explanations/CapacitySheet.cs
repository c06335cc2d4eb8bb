using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>The capacity sheet: every mode of a member as an equation, the one that governs, and the factors on top.</summary>
internal static class CapacitySheet
{
    public static IEnumerable<ResultBlock> Of(MemberResistance resistance, DisplayUnits units)
    {
        ModeAtCut governing = resistance.Governing;
        yield return new ResultBlock.Paragraph($"C follows from the section. {(resistance.Modes.Count == 1 ? "One mode is checked" : string.Create(CultureInfo.InvariantCulture, $"{resistance.Modes.Count} modes and cuts are checked"))}; {ModeWords.Of(governing)}{At(governing)} governs:");
        foreach (ResultBlock block in Mode(governing, resistance.Make, units))
        {
            yield return block;
        }

        string[] others = [.. resistance.Modes.Where(m => !ReferenceEquals(m, governing)).Select(m => $"{ModeWords.Of(m)}{At(m)}: {Force(m.Strength.Value, units)}")];
        if (others.Length > 0)
        {
            yield return new ResultBlock.Items("The others carry as much or more:", others);
        }

        if (resistance.Factors is { } factors)
        {
            yield return new ResultBlock.Paragraph(
                $"Condition factor φc = {Number(factors.Condition.Value)}{(factors.IsConditionAssumed ? ", assumed, since no condition is given" : "")} ({factors.Condition.Clause.CitationWithMark}), system factor φs = {Number(factors.System.Value)} ({factors.System.Clause.CitationWithMark}); their product {Number(factors.Condition.Value * factors.System.Value)}"
                + (factors.IsHeldAtLeast ? $" is held at {Number(MemberFactors.Least)}." : "."));
            Equation sum = new($"C = {Number(factors.Value)} × {Bare(governing.Strength.Value, units)} = {Force(resistance.Value, units)}");
            yield return sum.Block;
        }

        if (resistance.HeadsNotMeasured)
        {
            yield return new ResultBlock.Paragraph("Heads of the eyebars are not rated: head width and pin hole are not measured.", Strong: true);
        }

        if (resistance.Slender is { } slender)
        {
            yield return new ResultBlock.Paragraph(string.Create(CultureInfo.InvariantCulture, $"More slender than the standard allows: {slender.Slenderness:0} where {slender.Limit:0} is the limit ({ResistanceClauses.SlendernessLimits.CitationWithMark}). No strength is taken off for it."), Strong: true);
        }
    }

    private static IEnumerable<ResultBlock> Mode(ModeAtCut mode, MemberMake make, DisplayUnits units)
    {
        switch (mode.Strength)
        {
            case TensionStrength tension:
                yield return Tension(tension, mode.Section, make, units).Block;
                yield return Sources(tension);
                break;
            case ColumnStrength column:
                foreach (ResultBlock block in ColumnSheet.Of(mode.Axes!, column, make, mode.Section, units))
                {
                    yield return block;
                }

                yield return Sources(column);
                break;
            case TimberStrength timber:
                foreach (ResultBlock block in TimberSheet.Of(timber, mode.Section, units))
                {
                    yield return block;
                }

                yield return Sources(timber);
                break;
            case CombinedStrength combined:
                foreach (ResultBlock block in Combined(combined, mode, make, units))
                {
                    yield return block;
                }

                break;
        }
    }

    private static Equation Tension(TensionStrength tension, MemberSection section, MemberMake make, DisplayUnits units)
    {
        bool net = tension.Mode == MemberMode.NetRupture;
        string lag = net && make.ShearLag is { } u && u < 1 ? $" (net area {Area(section.NetArea!.Value, units)} × U {Number(u)})" : "";
        string stress = net ? "Fu" : tension.Clauses[0] == StrengthClauses.AllowableByYear || tension.Clauses[0] == StrengthClauses.AllowableIron ? "allowable" : "Fy";
        return new Equation($"{Area(tension.Area, units)}{lag} × {stress} {SectionWording.Stress(tension.Stress, units)}{Factors(tension)} = {Force(tension.Value, units)}");
    }

    private static IEnumerable<ResultBlock> Combined(CombinedStrength combined, ModeAtCut mode, MemberMake make, DisplayUnits units)
    {
        var plain = new ModeAtCut(mode.Place, mode.Section, combined.Plain) { Axes = mode.Axes };
        yield return new ResultBlock.Paragraph($"Without the moment, {ModeWords.Of(plain)}:");
        foreach (ResultBlock block in Mode(plain, make, units))
        {
            yield return block;
        }

        string own = mode.OwnMoment > 0 ? $", with the moment of its own weight, {Moment(mode.OwnMoment, units)} factored, as {SectionWording.Length(mode.OwnMoment / combined.Force, units)} of it" : "";
        yield return new ResultBlock.Paragraph(
            $"The force acts {SectionWording.Length(combined.Eccentricity, units)} off the centroid{own}: a bow, a shift of the centroid, both axes put together as one about x. The section alone carries a moment of {Moment(combined.MomentStrength, units)}."
            + (combined.ElasticForce is { } critical ? $" The moment grows by 1/(1 − P/Pe), Pe = {Force(critical, units)} in its plane." : ""));
        double ratio = combined.Force / (combined.Plain is TimberStrength ? combined.Force : combined.Plain.Value);
        string amplified = combined.ElasticForce is null ? "" : $" × {Number(combined.Amplification)}";
        yield return new Equation($"M = {Bare(combined.Force, units)} × {SectionWording.Length(combined.Eccentricity, units)}{amplified} = {Moment(combined.Moment, units)}").Block;
        yield return new Equation(combined.Plain is TimberStrength
            ? $"P = {Force(combined.Force, units)}{string.Concat(combined.Factors.Select(f => $" × {f.Name} {Number(f.Value)}"))} = {Force(combined.Value, units)}, where force and moment together use up the timber"
            : $"P = {Force(combined.Value, units)}, where P/Pr = {Number(ratio)} and M/Mr = {Number(combined.Moment / combined.MomentStrength)} use up the section").Block;
        yield return Sources(combined);
    }

    private static ResultBlock.Paragraph Sources(MemberStrength strength) =>
        new($"From {string.Join("; ", strength.Clauses.Concat(strength.Factors.Select(f => f.Clause)).Distinct().Select(c => $"{c.CitationWithMark} ({c.Name}: {c.Values})"))}.");

    public static string Factors(MemberStrength strength) => string.Concat(strength.Factors.Select(f => f.Name.All(c => char.IsAsciiDigit(c) || c == '.') ? $" × {f.Name}" : $" × {f.Name} {Number(f.Value)}"));

    public static string Number(double value) => value.ToString("0.00##", CultureInfo.InvariantCulture);

    public static string Area(double value, DisplayUnits units) => $"{ResultTable.Figure(units.From(Quantity.Area, value), units == DisplayUnits.Us ? 3 : 0)} {units.Symbol(Quantity.Area)}";

    public static string Bare(double value, DisplayUnits units) => ResultTable.Figure(units.From(Quantity.Force, value), 2);

    public static string Force(double value, DisplayUnits units) => $"{Bare(value, units)} {units.Symbol(Quantity.Force)}";

    private static string Moment(double value, DisplayUnits units) => $"{ResultTable.Figure(units.From(Quantity.Moment, value), 3)} {units.Symbol(Quantity.Moment)}";

    private static string At(ModeAtCut mode) => mode.Place is { } place ? $" ({place})" : "";

    /// <summary>A line of numbers, the same in TeX.</summary>
    internal readonly record struct Equation(string Text)
    {
        public ResultBlock.Equation Block => new(Text, string.Join(" ", Text.Split(" = ").Select((part, i) => $"{(i == 0 ? "" : "= ")}{Told.Tex(part)}")));
    }
}
