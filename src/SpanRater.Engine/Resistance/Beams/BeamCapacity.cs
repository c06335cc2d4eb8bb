namespace SpanRater;

/// <summary>
/// What a beam carries: every mode at every cut by the rules of a method, the least of which governs. Loss at one cut counts as if it went all along, which no
/// beam is stronger than.
/// </summary>
public static class BeamCapacity
{
    /// <summary>The capacity of a beam, or all that is missing for it.</summary>
    /// <param name="make">What it is made of.</param>
    /// <param name="effect">The effect.</param>
    /// <param name="rules">How the method makes strengths at the level.</param>
    /// <param name="condition">Condition of the bridge; null where it is not given.</param>
    public static BeamCheck Of(BeamMake make, BeamEffect effect, StrengthRules rules, Condition? condition)
    {
        ArgumentNullException.ThrowIfNull(make);
        ArgumentNullException.ThrowIfNull(rules);
        var missing = new List<MissingDatum>();
        if (make.Section.Cracks.FirstOrDefault() is { } crack)
        {
            missing.Add(new MissingDatum.Cracked(crack.Place));
        }

        bool isOfTimber = make.Section.AsBuilt.Parts.SelectMany(p => p.Pieces).Any(p => p.Shape.Kind == ShapeKind.Timber);
        var modes = new List<BeamModeAtCut>();
        switch (make.Material)
        {
            case null:
                missing.Add(new MissingDatum.NoMaterial());
                break;
            case TimberMaterial timber when isOfTimber:
                modes.AddRange(OfTimber(make, timber, effect, rules, missing));
                break;
            case MetalMaterial metal when !isOfTimber:
                modes.AddRange(OfMetal(make, metal, effect, rules, missing));
                break;
            default:
                missing.Add(new MissingDatum.MaterialOfSection(make.Material.Name, make.Section.AsBuilt.Name));
                break;
        }

        return missing.Count > 0
            ? new BeamCheck(null, [.. missing.Distinct()])
            : new BeamCheck(new BeamResistance { Make = make, Effect = effect, Modes = modes, Factors = rules.HasMemberFactors ? MemberFactors.Of(condition, make.System) : null }, []);
    }

    private static IEnumerable<(string? Place, MemberSection Section)> Cuts(BeamMake make) =>
        make.Section.Cuts.Select(c => ((string?)c.Place, c.AsRead)).Prepend((null, make.Section.AllAlong));

    private static List<BeamModeAtCut> OfMetal(BeamMake make, MetalMaterial metal, BeamEffect effect, StrengthRules rules, List<MissingDatum> missing)
    {
        var modes = new List<BeamModeAtCut>();
        MemberSection asBuilt = make.Section.AsBuilt;
        missing.AddRange(new[] { metal.MissingYield, make.Unbraced > 0 || effect == BeamEffect.Shear ? metal.MissingModulus : null }.OfType<MissingDatum>());
        if (rules.Beam is null)
        {
            missing.Add(new MissingDatum.BeamRule(rules.Method));
        }

        if (effect == BeamEffect.Bearing)
        {
            missing.Add(new MissingDatum.MetalBearing());
        }
        else if (effect == BeamEffect.Moment)
        {
            if (asBuilt.PartsNotPlaced.Count > 0)
            {
                missing.Add(new MissingDatum.Positions(asBuilt.Name, string.Join(", ", asBuilt.PartsNotPlaced)));
            }

            if (make.Unbraced is null)
            {
                missing.Add(new MissingDatum.FlangeHeld());
            }
            else if (make.Unbraced > 0 && FlangeAndWeb.Of(asBuilt) is null)
            {
                missing.Add(new MissingDatum.LateralRule(asBuilt.Name));
            }
        }
        else if (Cuts(make).Any(c => !WebsOf(c.Section).Any()))
        {
            missing.Add(new MissingDatum.NoWeb(asBuilt.Name));
        }

        if (missing.Count > 0)
        {
            return modes;
        }

        foreach ((string? place, MemberSection section) in Cuts(make))
        {
            if (effect != BeamEffect.Moment)
            {
                modes.Add(new BeamModeAtCut(place, section, rules.Beam!.Shear(metal.Strength!, metal.Modulus!.Value, [.. WebsOf(section)])));
                continue;
            }

            double modulus = Math.Min(section.Properties!.TopModulus, section.Properties.BottomModulus);
            modes.Add(new BeamModeAtCut(place, section, rules.Beam!.Yielding(metal.Strength!, modulus)));
            if (make.Unbraced > 0)
            {
                modes.Add(new BeamModeAtCut(place, section, rules.Beam.Lateral(metal.Strength!, metal.Modulus!.Value, modulus, FlangeAndWeb.Of(section)!, make.Unbraced.Value)));
            }
        }

        return modes;
    }

    // Upright webs: of flanged shapes between their flanges, and standing plates.
    private static IEnumerable<(double Depth, double Thickness)> WebsOf(MemberSection section)
    {
        foreach (SectionShape shape in section.Parts.SelectMany(p => p.Carrying).Select(p => p.Shape))
        {
            if (shape.Kind == ShapeKind.StandingPlate)
            {
                yield return Pierced(shape, ShapeDimension.Thickness, shape[ShapeDimension.Depth]!.Value);
            }
            else if (shape.Kind == ShapeKind.IBeam || shape.Kind == ShapeKind.WideFlange || shape.Kind == ShapeKind.Channel || shape.Kind == ShapeKind.ParallelChannel)
            {
                double top = shape[ShapeDimension.TopFlange] ?? shape[ShapeDimension.Flange]!.Value, bottom = shape[ShapeDimension.BottomFlange] ?? shape[ShapeDimension.Flange]!.Value;
                yield return Pierced(shape, ShapeDimension.Web, shape[ShapeDimension.Depth]!.Value - top - bottom);
            }
        }
    }

    // Holes take from the thickness what they take from the depth, so that the web is as slender as with them at worst.
    private static (double Depth, double Thickness) Pierced(SectionShape shape, ShapeDimension web, double depth) =>
        (depth, shape[web]!.Value * (1 - (shape.HolesIn(web) / depth)));

    private static List<BeamModeAtCut> OfTimber(BeamMake make, TimberMaterial timber, BeamEffect effect, StrengthRules rules, List<MissingDatum> missing)
    {
        var modes = new List<BeamModeAtCut>();
        MemberSection asBuilt = make.Section.AsBuilt;
        if (asBuilt.Parts is not [{ Pieces: [{ Shape: var shape }] }])
        {
            missing.Add(new MissingDatum.SolidTimber(asBuilt.Name));
            return modes;
        }

        if (rules.Timber is null)
        {
            missing.Add(new MissingDatum.TimberRule(rules.Method));
        }

        bool isDeep = Cuts(make).Select(c => c.Section.Parts[0].Pieces[0].Shape).Any(s => s[ShapeDimension.Depth] > s[ShapeDimension.Width] * (1 + 1e-9));
        if (effect == BeamEffect.Moment && isDeep && make.Unbraced is null)
        {
            missing.Add(new MissingDatum.FlangeHeld());
        }

        if (effect == BeamEffect.Bearing && make.Bearing is null)
        {
            missing.Add(new MissingDatum.BearingLength());
        }

        if (missing.Count > 0)
        {
            return modes;
        }

        // Factors of size go by the timber that was graded: what has rotted away since makes none of them larger.
        (double builtWidth, double builtDepth) = (shape[ShapeDimension.Width]!.Value, shape[ShapeDimension.Depth]!.Value);
        bool isByWiderSide = timber.Values.SizeClass == TimberSizeClass.Dimension;
        foreach ((string? place, MemberSection section) in Cuts(make))
        {
            SectionShape left = section.Parts.SelectMany(p => p.Carrying).Single().Shape;
            double width = left[ShapeDimension.Width]!.Value, depth = left[ShapeDimension.Depth]!.Value;
            TimberDesign design = rules.Timber!(timber, isByWiderSide ? Math.Min(builtWidth, builtDepth) : builtWidth, isByWiderSide ? Math.Max(builtWidth, builtDepth) : builtDepth);
            TimberBeamStrength strength = effect switch
            {
                BeamEffect.Moment => TimberBeam.Bending(design, width, depth, make.Unbraced ?? 0),
                BeamEffect.Shear => TimberBeam.Shear(design, width, depth, make.DepthAtEnd, make.NotchIsTapered, shape[ShapeDimension.Depth]),
                _ => TimberBeam.Bearing(design, width, make.Bearing!.Value),
            };
            if (strength.Slenderness > TimberBeam.MostSlender)
            {
                missing.Add(new MissingDatum.TooSlenderBeam(strength.Slenderness));
                return [];
            }

            modes.Add(new BeamModeAtCut(place, section, strength));
        }

        return modes;
    }
}
