namespace SpanRater;

/// <summary>What parts of a floor carry.</summary>
public static class FloorCapacity
{
    /// <summary>The effects that a part is rated for.</summary>
    /// <param name="part">The part.</param>
    public static IReadOnlyList<PartEffect> EffectsOf(FloorPart part) => part switch
    {
        DeckPart => [PartEffect.Moment, PartEffect.Shear],
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

        if (part is HangerPart hanger)
        {
            if (hanger.Make is not { } bars)
            {
                return (null, [new MissingDatum.NoSection()]);
            }

            ResistanceCheck check = MemberCapacity.Of(bars, Sense.Tension, rules, condition);
            return (check.Resistance is { } tension ? new HangerResistance(tension) : null, check.Missing);
        }

        BeamMake? make = part switch { DeckPart deck => deck.Make, StringerPart stringer => stringer.Make, FloorbeamPart beam => beam.Make, _ => null };
        if (make is null)
        {
            return (null, [new MissingDatum.NoSection()]);
        }

        BeamEffect asked = effect switch { PartEffect.Moment => BeamEffect.Moment, PartEffect.Shear => BeamEffect.Shear, _ => BeamEffect.Bearing };
        BeamCheck beamCheck = BeamCapacity.Of(make, asked, rules, condition);
        return (beamCheck.Resistance, beamCheck.Missing);
    }
}

/// <summary>What a hanger carries in tension.</summary>
/// <param name="Bars">Its bars as a member.</param>
public sealed record HangerResistance(MemberResistance Bars) : PartResistance
{
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
