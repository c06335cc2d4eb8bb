namespace SpanRater;

/// <summary>Metal members in tension.</summary>
internal static class TensionCapacity
{
    public static IReadOnlyList<ModeAtCut> Modes(MemberMake make, MetalMaterial metal, StrengthRules rules, List<MissingDatum> missing)
    {
        if (metal.MissingYield is { } yield)
        {
            missing.Add(yield);
        }

        bool bars = MemberCapacity.IsOfBars(make.Section.AsBuilt);
        if (!bars)
        {
            AskForNetSection(make, metal, rules, missing);
        }

        return missing.Count > 0 ? [] : [.. MemberCapacity.Cuts(make).SelectMany(c => bars ? OfBars(c.Place, c.Section, metal.Strength!, rules) : OfShapes(make, c, metal.Strength!, rules))];
    }

    private static void AskForNetSection(MemberMake make, MetalMaterial metal, StrengthRules rules, List<MissingDatum> missing)
    {
        MemberSection section = make.Section.AsBuilt;
        if (section.PartsWithoutNetArea.Count > 0)
        {
            missing.Add(new MissingDatum.Holes(section.Name, string.Join(", ", section.PartsWithoutNetArea)));
        }

        if (make.ShearLag is null)
        {
            missing.Add(new MissingDatum.ShearLag());
        }

        if (rules.Tension.NetNeedsUltimate && metal.MissingYield is null && metal.MissingUltimate is { } ultimate)
        {
            missing.Add(ultimate);
        }

        bool isOff = make.Section.Bows.Any() || make.Section.Cuts.Count > 0;
        if (isOff && section.PartsNotPlaced.Count > 0)
        {
            missing.Add(new MissingDatum.Positions(section.Name, string.Join(", ", section.PartsNotPlaced)));
        }
    }

    // Bars of one kind go by their own rule; where kinds are mixed, each by its own, and the forces that they carry add up.
    private static IEnumerable<ModeAtCut> OfBars(string? place, MemberSection section, MetalStrength strength, StrengthRules rules)
    {
        bool eyebars = MemberCapacity.Carrying(section).All(p => p.Shape.Kind == ShapeKind.Eyebar);
        MemberStrength whole = eyebars ? rules.Tension.Eyebar(strength, section.Area, section.NetArea)
            : rules.Tension.Rod(strength, section.Area, section.Parts.Sum(p => p.NetArea ?? p.Area));
        yield return new ModeAtCut(place, section, whole);
    }

    private static IEnumerable<ModeAtCut> OfShapes(MemberMake make, (string? Place, MemberSection Section, FoundCut? Cut) at, MetalStrength strength, StrengthRules rules)
    {
        double gross = at.Section.Area, net = MemberCapacity.NetAreaOf(at.Section);
        IReadOnlyList<TensionStrength> plain = rules.Tension.Strengths(strength, new TensionArea(gross, net, make.ShearLag!.Value, IsPunched: net < gross));
        foreach (TensionStrength each in plain)
        {
            yield return new ModeAtCut(at.Place, at.Section, each);
        }

        (double x, double y) = MemberCapacity.Eccentricity(make, at.Cut);
        if (x + y > 0)
        {
            SectionProperties section = at.Section.Properties!;
            (double moment, double eccentricity) = TogetherOn(section, strength, rules, x, y);
            yield return new ModeAtCut(at.Place, at.Section, rules.Combined.Tension(plain.MinBy(p => p.Value)!, moment, eccentricity)) { EccentricityX = x, EccentricityY = y };
        }
    }

    /// <summary>Moments about both axes as one: the moment strength about x, and the eccentricity that uses it up as both do.</summary>
    internal static (double Moment, double Eccentricity) TogetherOn(SectionProperties section, MetalStrength strength, StrengthRules rules, double x, double y)
    {
        double aboutX = rules.Combined.MomentStrength(strength, Math.Min(section.TopModulus, section.BottomModulus));
        double aboutY = rules.Combined.MomentStrength(strength, Math.Min(section.LeftModulus, section.RightModulus));
        return (aboutX, y + (x * aboutX / aboutY));
    }
}
