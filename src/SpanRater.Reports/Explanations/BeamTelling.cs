using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>How the capacity of a beam of the floor follows from section and material.</summary>
internal static class BeamTelling
{
    /// <summary>The sheet.</summary>
    public static IEnumerable<ResultBlock> Of(BeamResistance resistance, string name, SheetUnits sheet)
    {
        BeamModeAtCut governing = resistance.Governing;
        yield return new ResultBlock.Heading($"Capacity of {name} in {(resistance.Effect == BeamEffect.Moment ? "bending" : resistance.Effect == BeamEffect.Shear ? "shear" : "bearing")}", 3);
        if (resistance.Make.Section.Observations.Count > 0)
        {
            yield return new ResultBlock.Items("Seen on it:", [.. resistance.Make.Section.Observations.Select(MakeWording.Of)]);
        }

        foreach (BeamModeAtCut mode in resistance.Modes)
        {
            bool governs = ReferenceEquals(mode, governing);
            string word = PartWords.Of(mode.Strength.Mode), at = mode.Place is { } place ? $", {place}" : resistance.Make.Section.Cuts.Count > 0 ? ", away from the cuts" : "";
            yield return new ResultBlock.Paragraph($"{char.ToUpperInvariant(word[0])}{word[1..]}{at}{(governs ? ": governs" : "")}.", Strong: governs);
            foreach (string step in Steps(mode.Strength, sheet))
            {
                yield return SheetUnits.Step(step);
            }

            yield return new ResultBlock.Items("From:", [.. CapacitySheet.From(ClausesOf(mode.Strength))]);
        }

        string value = Value(governing.Strength, governing.Strength.Value, sheet), whole = Value(governing.Strength, resistance.Value, sheet);
        if (resistance.Factors is { } factors)
        {
            string product = $"{SheetUnits.Plain(factors.Condition.Value)}·{SheetUnits.Plain(factors.System.Value)}", held = factors.IsHeldAtLeast ? $", held at {SheetUnits.Plain(MemberFactors.Least)}" : "";
            yield return SheetUnits.Step($"C = φc·φs·{value}; φc·φs = {product} = {SheetUnits.Plain(factors.Condition.Value * factors.System.Value)}{held}; C = {whole}");
            yield return FactorsTelling.Of(factors);
        }
        else
        {
            yield return SheetUnits.Step($"C = {whole}");
        }
    }

    private static IEnumerable<Clause> ClausesOf(BeamStrength strength) => strength.Clauses.Concat(strength.Factors.Select(f => f.Clause))
        .Concat(strength is TimberBeamStrength timber ? timber.Stress.Factors.Select(f => f.Clause) : []);

    private static IEnumerable<string> Steps(BeamStrength strength, SheetUnits sheet)
    {
        string symbols = string.Concat(strength.Factors.Select(f => $"{StrengthTelling.Symbol(f)}·")), numbers = string.Concat(strength.Factors.Select(f => $"{SheetUnits.Plain(f.Value)}·"));
        switch (strength)
        {
            case MetalBending { Lateral: null } bending:
                // The allowable stress of a standard's table has no factors on a yield.
                string of = bending.Factors.Count == 0 && !bending.Clauses.Contains(BeamClauses.BendingLfr) ? "F" : "Fy";
                yield return $"M = {symbols}{of}·S = {numbers}{sheet.Stress(bending.Stress)}·{sheet.Modulus(bending.Modulus)} = {sheet.Moment(bending.Value)}, S of the weaker fibre{(of == "F" ? ", F the stress allowed" : "")}";
                break;
            case MetalBending { Lateral: { } lateral } bending:
                FlangeAndWeb shape = lateral.Shape;
                yield return lateral is { ShortLength: { } shortest, LongLength: { } longest }
                    ? $"rt = {sheet.Small(shape.Radius)}; Lp = {sheet.Length(shortest)}, Lr = {sheet.Length(longest)}, Lb = {sheet.Length(lateral.Unbraced)}: F = {sheet.Stress(bending.Stress)}, without buckling {sheet.Stress(lateral.Plain)}"
                    : $"Iyc = {sheet.Inertia(shape.FlangeInertia)}, J = {sheet.Inertia(shape.Torsion)}, d = {sheet.Small(shape.Depth)}, L = {sheet.Length(lateral.Unbraced)}: F = {sheet.Stress(bending.Stress)}, at most {sheet.Stress(lateral.Plain)}";
                yield return $"M = {symbols}F·S = {numbers}{sheet.Stress(bending.Stress)}·{sheet.Modulus(bending.Modulus)} = {sheet.Moment(bending.Value)}";
                break;
            case WebShear shear:
                yield return $"V = {symbols}{(shear.Clauses.Contains(BeamClauses.ShearAsr) ? "Fy" : "0.58·Fy")}·C·D·tw = {numbers}{sheet.Stress(shear.Stress)}·{SheetUnits.Plain(shear.Buckling)}·{sheet.Area(shear.Area)} = {sheet.Force(shear.Value)}";
                break;
            case TimberBeamStrength timber:
                foreach (string step in Timber(timber, symbols, numbers, sheet))
                {
                    yield return step;
                }

                break;
        }
    }

    private static IEnumerable<string> Timber(TimberBeamStrength timber, string symbols, string numbers, SheetUnits sheet)
    {
        string name = timber.Mode switch { BeamMode.TimberBending => "Fb", BeamMode.TimberShear => "Fv", _ => "Fc⊥" };
        AdjustedValue stress = timber.Stress;
        yield return $"{name}' = {string.Concat(stress.Factors.Select(f => $"{f.Name}·"))}{name} = {string.Concat(stress.Factors.Select(f => $"{SheetUnits.Plain(f.Value)}·"))}{sheet.Stress(stress.Reference)} = {sheet.Stress(stress.Value)}";
        string width = sheet.Small(timber.Width), depth = sheet.Small(timber.Depth);
        switch (timber.Mode)
        {
            case BeamMode.TimberBending:
                string stability = timber.Slenderness > 0 ? $"{SheetUnits.Plain(timber.Reduction)}·" : "";
                if (timber.Slenderness > 0)
                {
                    yield return $"RB = √(le·d/b²) = {SheetUnits.Plain(timber.Slenderness)}; CL = {SheetUnits.Plain(timber.Reduction)}";
                }

                yield return $"M = {symbols}{(timber.Slenderness > 0 ? "CL·" : "")}Fb'·b·d²/6 = {numbers}{stability}{sheet.Stress(stress.Value)}·{sheet.Modulus(timber.Section)} = {sheet.Moment(timber.Value)}, b = {width}, d = {depth}";
                break;
            case BeamMode.TimberShear:
                string notch = timber.Reduction < 1 ? $"{SheetUnits.Plain(timber.Reduction)}·" : "";
                yield return $"V = {symbols}{(timber.Reduction < 1 ? "(dn/d)²·" : "")}2/3·Fv'·b·d = {numbers}{notch}2/3·{sheet.Stress(stress.Value)}·{width}·{depth} = {sheet.Force(timber.Value)}";
                break;
            default:
                yield return $"R = {symbols}Fc⊥'·b·lb = {numbers}{sheet.Stress(stress.Value)}·{width}·{depth} = {sheet.Force(timber.Value)}";
                break;
        }
    }

    private static string Value(BeamStrength strength, double value, SheetUnits sheet) =>
        strength.Mode is BeamMode.FirstYield or BeamMode.LateralBuckling or BeamMode.TimberBending ? sheet.Moment(value) : sheet.Force(value);
}
