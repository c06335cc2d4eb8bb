using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>Plain tension and plain compression of metals: the equation in symbols, then in numbers.</summary>
internal static class StrengthTelling
{
    /// <summary>Tension: the area that counts times a stress and its factors.</summary>
    public static IEnumerable<ResultBlock> Of(TensionStrength strength, ModeAtCut mode, MemberMake make, SheetUnits sheet)
    {
        MetalStrength? metal = (make.Material as MetalMaterial)?.Strength;
        string stress = metal is null ? "F" : strength.Stress == metal.Yield ? "Fy" : strength.Stress == metal.Ultimate ? "Fu" : "F";
        string factors = string.Concat(strength.Factors.Select(f => $"{Symbol(f)}·")), numbers = string.Concat(strength.Factors.Select(f => $"{SheetUnits.Plain(f.Value)}·"));
        (string symbols, string area) = AreaOf(strength, mode, make, sheet);
        yield return SheetUnits.Step($"P = {factors}{stress}·{symbols}{(stress == "F" ? ", F the allowable stress as printed" : "")}");
        yield return SheetUnits.Step($"P = {numbers}{sheet.Stress(strength.Stress)}·{area} = {sheet.Force(strength.Value)}");
    }

    /// <summary>Compression: the squash force, the elastic force, the branch that holds.</summary>
    public static IEnumerable<ResultBlock> Of(ColumnStrength strength, MemberMake make, SheetUnits sheet)
    {
        string po = sheet.Force(strength.SquashForce), pe = sheet.Force(strength.ElasticForce);
        yield return SheetUnits.Step($"Po = A·Fy = {sheet.Area(strength.Area)}·{sheet.Stress(strength.Yield)} = {po}; Pe = {pe}, the lesser of both axes; Pe/Po = {SheetUnits.Plain(strength.ElasticForce / strength.SquashForce)}");
        bool inelastic = strength.Range == ColumnRange.Inelastic;
        if (strength.Clauses.Contains(ResistanceClauses.ColumnAsrByYear))
        {
            foreach (ResultBlock step in Printed(strength, make, inelastic, sheet))
            {
                yield return step;
            }

            yield break;
        }

        if (strength.Clauses.Contains(FactorClauses.EuropeanBuckling))
        {
            double slenderness = BucklingCurve.Slenderness(strength.SquashForce, strength.ElasticForce);
            yield return SheetUnits.Step($"λ = √(Po/Pe) = {SheetUnits.Plain(slenderness)}; χ = {SheetUnits.Plain(strength.Nominal / strength.SquashForce)} from the buckling curve of factors.toml; Pn = χ·Po = {sheet.Force(strength.Nominal)}");
        }
        else if (strength.Clauses.Contains(ResistanceClauses.ColumnLrfr))
        {
            yield return SheetUnits.Step(inelastic
                ? $"Pe/Po is at least 0.44: Pn = 0.658^(Po/Pe)·Po = 0.658^{SheetUnits.Plain(strength.SquashForce / strength.ElasticForce)}·{po} = {sheet.Force(strength.Nominal)}"
                : $"Pe/Po is below 0.44: Pn = 0.877·Pe = 0.877·{pe} = {sheet.Force(strength.Nominal)}");
        }
        else
        {
            yield return SheetUnits.Step(inelastic
                ? $"Pe/Po is at least 0.5: Pn = Po·(1 − Po/(4·Pe)) = {po}·(1 − {SheetUnits.Plain(strength.SquashForce / strength.ElasticForce)}/4) = {sheet.Force(strength.Nominal)}"
                : $"Pe/Po is below 0.5: Pn = Pe = {sheet.Force(strength.Nominal)}");
        }

        yield return SheetUnits.Step($"P = {string.Concat(strength.Factors.Select(f => $"{Symbol(f)}·"))}Pn = {string.Concat(strength.Factors.Select(f => $"{SheetUnits.Plain(f.Value)}·"))}{sheet.Force(strength.Nominal)} = {sheet.Force(strength.Value)}");
    }

    /// <summary>A factor's name as it stands in an equation.</summary>
    public static string Symbol(StrengthFactor factor) => factor.Name switch
    {
        "part allowed" => "part",
        "1/factor of safety" => "1/FS",
        "strength of columns" => "0.85",
        var name => name,
    };

    private static IEnumerable<ResultBlock> Printed(ColumnStrength strength, MemberMake make, bool inelastic, SheetUnits sheet)
    {
        AllowableColumn printed = ((MetalMaterial)make.Material!).Strength!.Row!.AllowableColumn!;
        double slenderness = ElasticBuckling.Slenderness(PublishedStrength.Modulus, strength.Area, strength.ElasticForce), stress = strength.Nominal / strength.Area;
        string at = SheetUnits.Plain(slenderness), atZero = sheet.Stress(printed.AtZero), fall = sheet.Stress(printed.Fall), limit = SheetUnits.Plain(printed.Limit);
        yield return SheetUnits.Step($"KL/r = π·√(E·A/Pe) = {at}, {(inelastic ? "up to" : "above")} Cc = {limit}");
        yield return SheetUnits.Step(inelastic
            ? $"F = a − b·(KL/r)² = {atZero} − {fall}·{at}² = {sheet.Stress(stress)}"
            : $"F = 135,008,740 psi/(KL/r)², at most a − b·Cc² = {atZero} − {fall}·{limit}²: {sheet.Stress(stress)}");
        yield return SheetUnits.Step($"P = F·A = {sheet.Stress(stress)}·{sheet.Area(strength.Area)} = {sheet.Force(strength.Value)}");
    }

    private static (string Symbols, string Numbers) AreaOf(TensionStrength strength, ModeAtCut mode, MemberMake make, SheetUnits sheet)
    {
        string u = SheetUnits.Plain(make.ShearLag ?? 1), whole = sheet.Area(strength.Area);
        switch (strength.Mode)
        {
            case MemberMode.NetRupture:
                return ("U·An", $"{u}·{sheet.Area(strength.Area / (make.ShearLag ?? 1))}");
            case MemberMode.NetYield when strength.Area < mode.Section.Area * (1 - 1e-12):
                return ("(U·An + 0.15·Ag)", $"({u}·{sheet.Area((strength.Area - (0.15 * mode.Section.Area)) / (make.ShearLag ?? 1))} + 0.15·{sheet.Area(mode.Section.Area)})");
            case MemberMode.NetYield:
                return ("Ag, since U·An + 0.15·Ag is above Ag", whole);
            case MemberMode.EyebarHead:
                return ("Ahead/1.35", $"{sheet.Area(strength.Area * TensionRule.LeastHead)}/1.35");
            case MemberMode.EyebarBody:
                return ("A, the bodies of all bars that carry", whole);
            case MemberMode.RodRoot:
                return ("A at the root of the thread", whole);
            default:
                return ("Ag", whole);
        }
    }
}
