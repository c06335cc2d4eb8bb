namespace SpanRater;

/// <summary>
/// What a member carries: every mode at every cut by the rules of a method, the least of which governs. Loss at one cut counts as if it
/// went all along, which no column is stronger than.
/// </summary>
public static class MemberCapacity
{
    /// <summary>A shift of the centroid below this is round-off [m].</summary>
    private const double NoShift = 1e-9;

    /// <summary>Least part of an area that is left beside its holes: they may take more than what loss has left, and then as good as nothing carries [-].</summary>
    private const double LeastNet = 1e-9;

    /// <summary>The capacity of a member in a sense, or all that is missing for it.</summary>
    /// <param name="make">What it is made of.</param>
    /// <param name="sense">The sense.</param>
    /// <param name="rules">How the method makes strengths at the level.</param>
    /// <param name="condition">Condition of the bridge; null where it is not given.</param>
    public static ResistanceCheck Of(MemberMake make, Sense sense, StrengthRules rules, Condition? condition)
    {
        ArgumentNullException.ThrowIfNull(make);
        ArgumentNullException.ThrowIfNull(rules);
        var missing = new List<MissingDatum>();
        if (make.Section.Cracks.FirstOrDefault() is { } crack)
        {
            missing.Add(new MissingDatum.Cracked(crack.Place));
        }

        IReadOnlyList<ModeAtCut> modes = make.Material switch
        {
            null => Without(new MissingDatum.NoMaterial(), missing),
            TimberMaterial timber => TimberCapacity.Modes(make, timber, sense, rules, missing),
            MetalMaterial when IsOfTimber(make) => Without(new MissingDatum.MaterialOfSection(make.Material.Name, make.Section.AsBuilt.Name), missing),
            MetalMaterial metal when sense == Sense.Tension => TensionCapacity.Modes(make, metal, rules, missing),
            MetalMaterial metal => CompressionCapacity.Modes(make, metal, rules, missing),
            _ => throw new ArgumentOutOfRangeException(nameof(make), make.Material, "A material is a metal or timber."),
        };
        if (missing.Count > 0)
        {
            return new ResistanceCheck(null, [.. missing.Distinct()]);
        }

        return new ResistanceCheck(
            new MemberResistance
            {
                Make = make,
                Modes = modes,
                Factors = rules.HasMemberFactors ? MemberFactors.Of(condition, KindOf(make)) : null,
                Slender = SlenderIn(modes, sense, make),
                HeadsNotMeasured = sense == Sense.Tension && Carrying(make.Section.AsBuilt).All(p => p.Shape.Kind == ShapeKind.Eyebar) && make.Section.AsBuilt.NetArea is null,
            },
            []);
    }

    /// <summary>The member away from all cuts, and at each of them.</summary>
    internal static IEnumerable<(string? Place, MemberSection Section, FoundCut? Cut)> Cuts(MemberMake make) =>
        make.Section.Cuts.Select(c => ((string?)c.Place, c.AsRead, (FoundCut?)c)).Prepend((null, make.Section.AllAlong, null));

    /// <summary>Net area of a section whose holes are known, never below as good as nothing and never above its area [m²].</summary>
    internal static double NetAreaOf(MemberSection section) => Math.Clamp(section.NetArea!.Value, LeastNet * section.Area, section.Area);

    internal static IEnumerable<SectionPiece> Carrying(MemberSection section) => section.Parts.SelectMany(p => p.Carrying);

    /// <summary>Whether every piece pulls on its own: bars and eyebars, whose pull finds its own line.</summary>
    internal static bool IsOfBars(MemberSection section) =>
        Carrying(section).All(p => p.Shape.Kind == ShapeKind.Eyebar || p.Shape.Kind == ShapeKind.RoundBar || p.Shape.Kind == ShapeKind.SquareBar);

    /// <summary>How far the force is off the centroid at a cut, the bow of the member included [m]: across, and in the plane of the truss.</summary>
    internal static (double X, double Y) Eccentricity(MemberMake make, FoundCut? cut)
    {
        // Where it is not said which way a member is bowed, it may be either.
        double bowX = make.Section.Bows.Where(b => b.InPlane is not true).Select(b => Math.Abs(b.Offset)).DefaultIfEmpty(0).Max();
        double bowY = make.Section.Bows.Where(b => b.InPlane is not false).Select(b => Math.Abs(b.Offset)).DefaultIfEmpty(0).Max();
        static double Shift(double? by) => Math.Abs(by ?? 0) is var shift && shift < NoShift ? 0 : shift;
        return (Shift(cut?.ShiftX) + bowX, Shift(cut?.ShiftY) + bowY);
    }

    private static IReadOnlyList<ModeAtCut> Without(MissingDatum datum, List<MissingDatum> missing)
    {
        missing.Add(datum);
        return [];
    }

    private static bool IsOfTimber(MemberMake make) => Carrying(make.Section.AsBuilt).Any(p => p.Shape.Kind == ShapeKind.Timber);

    private static SystemKind KindOf(MemberMake make) =>
        make.Material is TimberMaterial ? SystemKind.OtherTrussMember
        : IsOfBars(make.Section.AsBuilt)
            ? Carrying(make.Section.AllAlong).Count() > 1 && Carrying(make.Section.AllAlong).All(p => p.Shape.Kind == ShapeKind.Eyebar) ? SystemKind.MultipleEyebars : SystemKind.OtherTrussMember
        : make.Ends switch
        {
            EndFastening.Riveted or EndFastening.Bolted or EndFastening.Pinned => SystemKind.RivetedTrussMember,
            EndFastening.Welded => SystemKind.WeldedTrussMember,
            _ => SystemKind.OtherTrussMember,
        };

    private static SlendernessWarning? SlenderIn(IReadOnlyList<ModeAtCut> modes, Sense sense, MemberMake make)
    {
        if (sense == Sense.Compression)
        {
            double most = modes.Max(m => m.Axes is { } axes ? Math.Max(axes.InPlane.Slenderness, axes.OutOfPlane.Slenderness) : 0);
            return make.Pony is null ? SlendernessWarning.Of(MemberDuty.MainCompression, most) : null;
        }

        return IsOfBars(make.Section.AsBuilt) || make.Section.AllAlong.Properties is not { } section || make.Material is TimberMaterial ? null
            : SlendernessWarning.Of(MemberDuty.MainTension, Math.Max(make.InPlaneLength / section.Rx, (make.OutOfPlaneLength ?? 0) / section.Ry));
    }
}
