namespace SpanRater;

/// <summary>What parts of a floor carry.</summary>
public static class FloorCapacity
{
    /// <summary>A column that is held all along is no longer than this sideways [m].</summary>
    private const double HeldAllAlong = 0.01;

    /// <summary>The effects that a part is rated for.</summary>
    /// <param name="part">The part.</param>
    public static IReadOnlyList<PartEffect> EffectsOf(FloorPart part) => part switch
    {
        DeckPart => [PartEffect.Moment, PartEffect.Shear],
        FloorbeamPart { Trussed: not null, Make.Material: TimberMaterial } => [PartEffect.Moment, PartEffect.Shear, PartEffect.Bearing, PartEffect.Force],
        FloorbeamPart { Trussed: not null } => [PartEffect.Moment, PartEffect.Shear, PartEffect.Force],
        StringerPart { Make.Material: TimberMaterial } or FloorbeamPart { Make.Material: TimberMaterial } => [PartEffect.Moment, PartEffect.Shear, PartEffect.Bearing],
        HangerPart => [PartEffect.Force],
        _ => [PartEffect.Moment, PartEffect.Shear],
    };

    /// <summary>The capacity of a part for an effect, or what is missing for it.</summary>
    /// <param name="part">The part.</param>
    /// <param name="effect">The effect.</param>
    /// <param name="method">The method.</param>
    /// <param name="level">The level.</param>
    /// <param name="condition">Condition of the bridge; null where it is not given.</param>
    public static (PartResistance? Resistance, IReadOnlyList<MissingDatum> Missing) Of(FloorPart part, PartEffect effect, RatingMethod method, RatingLevel level, Condition? condition)
    {
        ArgumentNullException.ThrowIfNull(part);
        ArgumentNullException.ThrowIfNull(method);
        if (method.StrengthsAt(level) is not { } rules)
        {
            return (null, [new MissingDatum.StrengthRules(method.Name)]);
        }

        if (part is HangerPart || effect == PartEffect.Force)
        {
            if ((part is HangerPart hanger ? hanger.Make : ((FloorbeamPart)part).Trussed!.Rod) is not { } bars)
            {
                return (null, [part is HangerPart ? new MissingDatum.NoSection() : new MissingDatum.RodOfBeam(true)]);
            }

            ResistanceCheck check = MemberCapacity.Of(bars, Sense.Tension, rules, condition);
            return (check.Resistance is { } tension ? new HangerResistance(tension) { IsRodOfBeam = part is FloorbeamPart } : null, check.Missing);
        }

        BeamMake? make = part switch { DeckPart deck => deck.Make, StringerPart stringer => stringer.Make, FloorbeamPart beam => beam.Make, _ => null };
        if (make is null)
        {
            return (null, [new MissingDatum.NoSection()]);
        }

        BeamEffect asked = effect switch { PartEffect.Moment => BeamEffect.Moment, PartEffect.Shear => BeamEffect.Shear, _ => BeamEffect.Bearing };
        BeamCheck beamCheck = BeamCapacity.Of(make, asked, rules, condition);
        return part is FloorbeamPart { Trussed: { } trussed } && effect == PartEffect.Moment
            ? Pressed(beamCheck, make, trussed, rules, condition)
            : (beamCheck.Resistance, beamCheck.Missing);
    }

    // Bent and pressed at once: as a beam, and as a column between posts.
    private static (PartResistance? Resistance, IReadOnlyList<MissingDatum> Missing) Pressed(BeamCheck bent, BeamMake make, Trussing trussed, StrengthRules rules, Condition? condition)
    {
        if (!(make.Span > 0))
        {
            // Without the spacing of the trusses nothing follows, and the demand asks for it.
            return (null, bent.Missing);
        }

        // Its lower side is held by posts and ends at best, unless more is said: a deck holds the upper one.
        BeamCheck hogging = BeamCapacity.Of(make with { Unbraced = trussed.HeldBelow ?? make.Span }, BeamEffect.Moment, rules, condition);
        ResistanceCheck column = trussed.LongestField(make.Span) is not { } field ? new ResistanceCheck(null, []) : MemberCapacity.Of(
            new MemberMake
            {
                Section = make.Section,
                Material = make.Material,
                InPlaneLength = field,
                OutOfPlaneLength = make.Unbraced is { } unbraced ? Math.Max(unbraced, HeldAllAlong) : null,
                InPlaneFactor = 1,
                OutOfPlaneFactor = 1,
                LooseJoints = ["the floorbeam"],
            },
            Sense.Compression,
            rules,
            condition);
        MissingDatum[] missing =
        [
            .. bent.Missing.Concat(hogging.Missing.Select(m => m is MissingDatum.LateralRule lateral ? new MissingDatum.HeldBelow(lateral.Section) : m)).Concat(column.Missing.Select(m => m switch
            {
                MissingDatum.HeldSideways => new MissingDatum.TrussedHeld(),
                MissingDatum.PartsHeld parts => new MissingDatum.TrussedOfParts(parts.Section),
                _ => m,
            })).Distinct(),
        ];
        return bent.Resistance is { } bending && hogging.Resistance is { } up && column.Resistance is { } pressed && missing.Length == 0 ? (new TrussedResistance(bending, up, pressed), []) : (null, missing);
    }
}

/// <summary>
/// What a trussed beam carries in bending while its rod presses it. Buckling within its depth makes a moment larger by 1/(1 − N/Pe); since Nc is not above Pe,
/// M/Mc + 2 N/Nc ≤ 1 is on the safe side of N/Nc + M/(Mc (1 − N/Pe)) ≤ 1 and of the curves of the methods: M/Mc ≤ (1 − N/Nc)², whose tangent at N = 0 it is.
/// Compression counts as the moment 2 Mc/Nc N then.
/// </summary>
/// <param name="Bending">As a beam whose upper side is pressed: what the capacity is told as.</param>
/// <param name="Hogging">As a beam whose lower side is pressed, which nothing holds unless it is said.</param>
/// <param name="Column">As a column over its longest field.</param>
public sealed record TrussedResistance(BeamResistance Bending, BeamResistance Hogging, MemberResistance Column) : PartResistance
{
    /// <summary>Moment that counts as much as a unit of compression [m].</summary>
    public double Arm => 2 * Bending.Value / Column.Value;

    /// <summary>What a hogging moment counts as, of one that sags [-].</summary>
    public double HoggingCounts => Bending.Value / Hogging.Value;

    /// <inheritdoc/>
    public override double Value => Bending.Value;

    /// <inheritdoc/>
    public override Material? Material => Bending.Material;

    /// <inheritdoc/>
    public override IEnumerable<Clause> Clauses => Bending.Clauses.Concat(Hogging.Clauses).Concat(Column.Governing.Strength.Clauses).Concat(Column.Governing.Strength.Factors.Select(f => f.Clause)).Append(FloorClauses.TrussedBeams);

    /// <inheritdoc/>
    public override MemberFactors? PartFactors => Bending.PartFactors ?? Column.Factors;

    /// <inheritdoc/>
    public override string? Place => Bending.Place;
}

/// <summary>What a hanger carries in tension.</summary>
/// <param name="Bars">Its bars as a member.</param>
public sealed record HangerResistance(MemberResistance Bars) : PartResistance
{
    /// <summary>Whether it is the rod of a trussed floorbeam.</summary>
    public bool IsRodOfBeam { get; init; }

    /// <inheritdoc/>
    public override double Value => Bars.Value;

    /// <inheritdoc/>
    public override Material? Material => Bars.Make.Material;

    /// <inheritdoc/>
    public override IEnumerable<Clause> Clauses => Bars.Governing.Strength.Clauses.Concat(Bars.Governing.Strength.Factors.Select(f => f.Clause));

    /// <inheritdoc/>
    public override MemberFactors? PartFactors => Bars.Factors;

    /// <inheritdoc/>
    public override string? Place => Bars.Governing.Place;
}
