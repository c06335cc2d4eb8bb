using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>Force and moment together: where the moment is from, the limit, and the check at the force found.</summary>
internal static class CombinedTelling
{
    public static IEnumerable<ResultBlock> Of(CombinedStrength strength, ModeAtCut mode, MemberMake make, SheetUnits sheet)
    {
        bool isTimber = mode.Timber is not null;
        foreach (ResultBlock block in isTimber ? TimberTelling.Moment(strength, mode, sheet) : MetalMoment(strength, mode, sheet))
        {
            yield return block;
        }

        double plain = PlainOf(strength, mode), force = strength.Force, axial = force / plain, bending = strength.Moment / strength.MomentStrength;
        string cause = Cause(mode, make, sheet);
        if (cause.Length > 0)
        {
            yield return new ResultBlock.Paragraph($"The force is off the centroid: {cause}.");
        }

        if (strength.ElasticForce is { } critical)
        {
            string pe = SheetUnits.Plain(strength.Amplification);
            yield return SheetUnits.Step($"P = {sheet.Force(force)}: amplification 1/(1 − P/Pe) = 1/(1 − {sheet.Force(force)}/{sheet.Force(critical)}) = {pe}{(strength.Clauses.Contains(ResistanceClauses.CombinedAsr) ? ", Pe with the factor of safety of columns" : "")}; M = P·e·{pe} = {sheet.Force(force)}·{sheet.Small(strength.Eccentricity)}·{pe} = {sheet.Moment(strength.Moment)}");
        }
        else
        {
            yield return SheetUnits.Step($"P = {sheet.Force(force)}: M = P·e = {sheet.Force(force)}·{sheet.Small(strength.Eccentricity)} = {sheet.Moment(strength.Moment)}");
        }

        yield return Check(strength, mode, plain, axial, bending, sheet);
        foreach (StrengthFactor factor in strength.Factors)
        {
            yield return SheetUnits.Step($"{factor.Name}: {SheetUnits.Plain(factor.Value)}·{sheet.Force(force)} = {sheet.Force(strength.Value)}");
        }
    }

    // The strength without moment, with the method's factors but those on the whole, as it stands in the interaction.
    private static double PlainOf(CombinedStrength strength, ModeAtCut mode) =>
        strength.Plain.Value / (mode.Timber is null ? 1 : strength.Factors.Aggregate(1.0, (product, factor) => product * factor.Value));

    private static ResultBlock.Equation Check(CombinedStrength strength, ModeAtCut mode, double plain, double axial, double bending, SheetUnits sheet)
    {
        string p = SheetUnits.Plain(axial), m = SheetUnits.Plain(bending), from = $"Pr = {sheet.Force(plain)}, Mr = {sheet.Moment(strength.MomentStrength)}";
        if (mode.Timber is not null && strength.ElasticForce is not null)
        {
            return SheetUnits.Step($"{from}: (P/Pr)² + M/Mr = {p}² + {m} = {Sum((axial * axial) + bending)}");
        }

        if (mode.Timber is not null && axial + bending < 1 - 1e-6)
        {
            return SheetUnits.Step($"{from}: P/Pr + M/Mr = {p} + {m} = {Sum(axial + bending)}; the side that bending presses governs before: (M − P·d/6)/Mr = 1");
        }

        bool isLrfr = strength.Clauses.Contains(ResistanceClauses.CombinedLrfr);
        if (isLrfr)
        {
            return SheetUnits.Step(axial >= 0.2
                ? $"{from}; P/Pr is at least 0.2: P/Pr + (8/9)·M/Mr = {p} + (8/9)·{m} = {Sum(axial + (bending * 8 / 9))}"
                : $"{from}; P/Pr is below 0.2: P/(2·Pr) + M/Mr = {p}/2 + {m} = {Sum((axial / 2) + bending)}");
        }

        if (strength.Clauses.Contains(ResistanceClauses.CombinedLfr) && strength.Plain is ColumnStrength column && axial + bending < 1 - 1e-6)
        {
            double squash = 0.85 * column.SquashForce, end = strength.Force * strength.Eccentricity / strength.MomentStrength;
            return SheetUnits.Step($"{from}: at the ends, P/(0.85·Po) + P·e/Mr = {SheetUnits.Plain(strength.Force / squash)} + {SheetUnits.Plain(end)} = {Sum((strength.Force / squash) + end)}");
        }

        return SheetUnits.Step($"{from}: P/Pr + M/Mr = {p} + {m} = {Sum(axial + bending)}");
    }

    // What it comes to, not what it should.
    private static string Sum(double value) => ResultTable.Figure(value, 4);

    private static IEnumerable<ResultBlock> MetalMoment(CombinedStrength strength, ModeAtCut mode, SheetUnits sheet)
    {
        SectionProperties section = mode.Section.Properties!;
        double sx = Math.Min(section.TopModulus, section.BottomModulus), sy = Math.Min(section.LeftModulus, section.RightModulus), stress = strength.MomentStrength / sx;
        yield return SheetUnits.Step($"Mr = F·Sx = {sheet.Stress(stress)}·{sheet.Modulus(sx)} = {sheet.Moment(strength.MomentStrength)}");
        yield return mode.EccentricityX == 0
            ? SheetUnits.Step($"e = ey = {sheet.Small(mode.EccentricityY)}")
            : SheetUnits.Step($"both axes as one: e = ey + ex·Sx/Sy = {sheet.Small(mode.EccentricityY)} + {sheet.Small(mode.EccentricityX)}·{sheet.Modulus(sx)}/{sheet.Modulus(sy)} = {sheet.Small(strength.Eccentricity)}");
    }

    private static string Cause(ModeAtCut mode, MemberMake make, SheetUnits sheet)
    {
        FoundCut? cut = make.Section.Cuts.FirstOrDefault(c => c.Place == mode.Place);
        IEnumerable<string> causes =
        [
            .. cut?.ShiftX is { } x && Math.Abs(x) > 1e-9 ? [$"loss moves the centroid by {sheet.Small(Math.Abs(x))} in x"] : Array.Empty<string>(),
            .. cut?.ShiftY is { } y && Math.Abs(y) > 1e-9 ? [$"loss moves the centroid by {sheet.Small(Math.Abs(y))} in y"] : Array.Empty<string>(),
            .. make.Section.Bows.Select(b => $"the member is bowed by {sheet.Small(Math.Abs(b.Offset))}{(b.InPlane switch { true => " in y", false => " in x", null => ", counted both ways" })}"),
        ];
        return Told.List(causes);
    }
}
