using MathNet.Numerics.RootFinding;

namespace SpanRater;

/// <summary>Timbers: one solid rectangle, with the moment of its own weight and of a bow in the plane of the truss or across it.</summary>
internal static class TimberCapacity
{
    public static IReadOnlyList<ModeAtCut> Modes(MemberMake make, TimberMaterial timber, Sense sense, StrengthRules rules, List<MissingDatum> missing)
    {
        MemberSection asBuilt = make.Section.AsBuilt;
        if (asBuilt.Parts is not [{ Pieces: [{ Shape: var shape }] }] || shape.Kind != ShapeKind.Timber)
        {
            missing.Add(asBuilt.Parts.SelectMany(p => p.Pieces).Any(p => p.Shape.Kind == ShapeKind.Timber)
                ? new MissingDatum.SolidTimber(asBuilt.Name)
                : new MissingDatum.MaterialOfSection(timber.Name, asBuilt.Name));
        }

        if (rules.Timber is null)
        {
            missing.Add(new MissingDatum.TimberRule(rules.Method));
        }

        if (sense == Sense.Tension && asBuilt.PartsWithoutNetArea.Count > 0)
        {
            missing.Add(new MissingDatum.Holes(asBuilt.Name, string.Join(", ", asBuilt.PartsWithoutNetArea)));
        }

        if (sense == Sense.Compression && make.OutOfPlaneLength is null)
        {
            missing.Add(new MissingDatum.HeldSideways(string.Join(", ", make.LooseJoints)));
        }

        if (missing.Count > 0)
        {
            return [];
        }

        var modes = new List<ModeAtCut>();
        foreach ((string? place, MemberSection section, FoundCut? cut) in MemberCapacity.Cuts(make))
        {
            SectionShape left = MemberCapacity.Carrying(section).Single().Shape;
            double width = left[ShapeDimension.Width]!.Value, depth = left[ShapeDimension.Depth]!.Value;
            TimberDesign design = rules.Timber!(timber, width, depth);
            (double x, double y) = MemberCapacity.Eccentricity(make, cut);
            double own = make.OwnMoment * rules.OwnWeightFactor;

            // Bending across the truss as one about the strong axis: a moment about the weak one uses up more by depth over width.
            double eccentricity = y + (x * depth / width);
            if (eccentricity + own > 0 && depth > 2 * width * (1 + 1e-9))
            {
                missing.Add(new MissingDatum.DeepTimber(asBuilt.Name));
                return [];
            }

            if (sense == Sense.Tension)
            {
                TimberStrength plain = TimberMember.Tension(design, MemberCapacity.NetAreaOf(section));
                modes.Add(new ModeAtCut(place, section, plain) { Timber = design });
                if (eccentricity + own > 0)
                {
                    modes.Add(new ModeAtCut(place, section, WithMoment(own, plain.Value, e => TimberMember.TensionAndMoment(plain, design, width, depth, 1, e), eccentricity)) { Timber = design, OwnMoment = own, EccentricityX = x, EccentricityY = y });
                }

                continue;
            }

            double lengthAcross = (make.OutOfPlaneFactor ?? 1) * make.OutOfPlaneLength!.Value, lengthAlong = (make.InPlaneFactor ?? 1) * make.InPlaneLength;
            TimberStrength column = TimberMember.Compression(design, width, depth, lengthAcross, lengthAlong);
            if (column.IsTooSlender)
            {
                missing.Add(new MissingDatum.TooSlenderTimber(column.Slenderness));
                return [];
            }

            modes.Add(new ModeAtCut(place, section, column) { Timber = design });
            if (eccentricity + own > 0)
            {
                modes.Add(new ModeAtCut(place, section, WithMoment(own, column.Value, e => TimberMember.CompressionAndMoment(column, design, width, depth, lengthAlong, 1, e), eccentricity)) { Timber = design, OwnMoment = own, EccentricityX = x, EccentricityY = y });
            }
        }

        return modes;
    }

    // A moment that stays while the force grows is an eccentricity that falls as the force grows: e + M/P, at the force P that it leaves.
    private static CombinedStrength WithMoment(double own, double plain, Func<double, CombinedStrength> at, double eccentricity)
    {
        if (own == 0)
        {
            return at(eccentricity);
        }

        double least = plain * 1e-9;
        double Excess(double force) => at(eccentricity + (own / force)).Value - force;
        double reached = Excess(least) <= 0 ? least : Brent.FindRoot(Excess, least, plain, plain * 1e-12);
        return at(eccentricity + (own / reached));
    }
}
