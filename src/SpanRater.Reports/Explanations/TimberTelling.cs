using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>Timber along the grain: reference value, each adjustment factor, buckling, the moment of its own weight.</summary>
internal static class TimberTelling
{
    public static IEnumerable<ResultBlock> Of(TimberStrength strength, ModeAtCut mode, SheetUnits sheet)
    {
        bool compression = strength.Mode == MemberMode.TimberCompression;
        string name = compression ? "Fc" : "Ft";
        yield return Adjusted(compression ? "F'c before buckling" : "F't", name, strength.Stress, sheet);
        if (compression && strength is { EulerStress: { } euler, ColumnStress: { } before })
        {
            AdjustedValue modulus = mode.Timber!.LeastModulus;
            double ratio = euler / before, half = (1 + ratio) / (2 * TimberMember.Sawn);
            yield return Adjusted("E'min", "Emin", modulus, sheet);
            yield return SheetUnits.Step($"le/d = {SheetUnits.Plain(strength.Slenderness)}, the larger of both ways; FcE = 0.822·E'min/(le/d)² = 0.822·{sheet.Stress(modulus.Value)}/{SheetUnits.Plain(strength.Slenderness)}² = {sheet.Stress(euler)}");
            yield return SheetUnits.Step($"Fc* = {sheet.Stress(before)}, resistance factor in it; FcE/Fc* = {SheetUnits.Plain(ratio)}; CP = (1 + FcE/Fc*)/1.6 − √(((1 + FcE/Fc*)/1.6)² − (FcE/Fc*)/0.8) = {SheetUnits.Plain(half)} − √({SheetUnits.Plain(half)}² − {SheetUnits.Plain(ratio / TimberMember.Sawn)}) = {SheetUnits.Plain(strength.StabilityFactor)}");
        }

        string factors = string.Concat(strength.Factors.Select(f => $"{f.Name}·")), numbers = string.Concat(strength.Factors.Select(f => $"{SheetUnits.Plain(f.Value)}·"));
        yield return SheetUnits.Step(compression
            ? $"P = {factors}CP·F'c·A = {numbers}{SheetUnits.Plain(strength.StabilityFactor)}·{sheet.Stress(strength.Stress.Value)}·{sheet.Area(strength.Area)} = {sheet.Force(strength.Value)}"
            : $"P = {factors}F't·An = {numbers}{sheet.Stress(strength.Stress.Value)}·{sheet.Area(strength.Area)} = {sheet.Force(strength.Value)}");
    }

    /// <summary>The moment that the timber carries, and the eccentricity that its own weight makes besides.</summary>
    public static IEnumerable<ResultBlock> Moment(CombinedStrength strength, ModeAtCut mode, SheetUnits sheet)
    {
        TimberDesign design = mode.Timber!;
        SectionShape shape = mode.Section.Parts[0].Carrying.Single().Shape;
        double width = shape[ShapeDimension.Width]!.Value, depth = shape[ShapeDimension.Depth]!.Value, modulus = width * depth * depth / 6;
        yield return Adjusted("F'b", "Fb", design.Bending, sheet);
        string factors = string.Concat(design.BendingFactors.Select(f => $"{f.Name}·")), numbers = string.Concat(design.BendingFactors.Select(f => $"{SheetUnits.Plain(f.Value)}·"));
        yield return SheetUnits.Step($"S = b·d²/6 = {sheet.Small(width)}·{sheet.Small(depth)}²/6 = {sheet.Modulus(modulus)}; Mr = {factors}F'b·S = {numbers}{sheet.Stress(design.Bending.Value)}·{sheet.Modulus(modulus)} = {sheet.Moment(strength.MomentStrength)}");
        double own = mode.OwnMoment, seen = mode.EccentricityY + (mode.EccentricityX * depth / width);
        if (own > 0)
        {
            yield return SheetUnits.Step($"own weight, factored: M0 = {sheet.Moment(own)} in the middle; e = {(seen > 0 ? $"{sheet.Small(seen)} + " : "")}M0/P = {(seen > 0 ? $"{sheet.Small(seen)} + " : "")}{sheet.Moment(own)}/{sheet.Force(strength.Value)} = {sheet.Small(strength.Eccentricity)}");
        }
        else
        {
            yield return SheetUnits.Step($"e = ey + ex·d/b = {sheet.Small(mode.EccentricityY)} + {sheet.Small(mode.EccentricityX)}·{sheet.Small(depth)}/{sheet.Small(width)} = {sheet.Small(strength.Eccentricity)}");
        }
    }

    private static ResultBlock.Equation Adjusted(string name, string reference, AdjustedValue value, SheetUnits sheet) => SheetUnits.Step(
        $"{name} = {string.Concat(value.Factors.Select(f => $"{f.Name}·"))}{reference} = {string.Concat(value.Factors.Select(f => $"{SheetUnits.Plain(f.Value)}·"))}{sheet.Stress(value.Reference)} = {sheet.Stress(value.Value)}");
}
