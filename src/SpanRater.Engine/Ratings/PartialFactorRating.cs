namespace SpanRater;

/// <summary>
/// Rating by partial factors that the user gives. Its one level is named by the user; service vehicles and crowds take the factor
/// on crowds, no dynamic allowance and no factor for lanes; all other classes are traffic, in the lanes that their class
/// may load at once in every method.
/// </summary>
public sealed class PartialFactorRating : RatingMethod
{
    /// <summary>Short name of the method.</summary>
    public const string ShortName = "partial factors";

    /// <summary>Makes the method.</summary>
    /// <param name="factors">The factors, those of traffic or of crowds among them.</param>
    /// <exception cref="ArgumentException">There are no factors on any live load, or traffic has none for one lane.</exception>
    public PartialFactorRating(PartialFactors factors)
    {
        ArgumentNullException.ThrowIfNull(factors);
        if (factors is { Traffic: null, Crowd: null } or { Traffic.Lanes.Count: 0 })
        {
            throw new ArgumentException("Partial factors hold a factor on some live load, and for traffic one for each number of lanes.", nameof(factors));
        }

        Factors = factors;
        PresenceFactors = factors.Traffic is { Lanes: { } lanes } ? [.. lanes] : [1.0];
    }

    /// <summary>The factors as given.</summary>
    public PartialFactors Factors { get; }

    /// <inheritdoc/>
    public override PartialFactors? OwnFactors => Factors;

    /// <inheritdoc/>
    public override string Name => ShortName;

    /// <inheritdoc/>
    public override string FullName => "partial-factor rating";

    /// <inheritdoc/>
    public override CapacityMeaning GivenCapacityMeaning => CapacityMeaning.DesignResistance;

    /// <inheritdoc/>
    public override IReadOnlyList<Clause> Basis => [];

    /// <inheritdoc/>
    public override string Source => $"factors.toml, as given there: {Factors.Basis.TrimEnd('.')} ({Factors.Source.TrimEnd('.')}). Nothing is preset, and no national annex is in the program";

    /// <inheritdoc/>
    public override DeadFactors DeadFactors => Factors.Dead;

    /// <inheritdoc/>
    public override bool HasPosting => false;

    /// <inheritdoc/>
    protected override IReadOnlyList<double> PresenceFactors { get; }

    /// <inheritdoc/>
    public override IReadOnlyList<RatingLevel> LevelsOf(VehicleClass vehicleClass, RatingSettings settings) =>
        [new RatingLevel(Factors.Level, Factors.FactorOf(vehicleClass), Governance.Governs)];

    /// <inheritdoc/>
    public override double Impact(double loadedLength) => Factors.Traffic?.Impact ?? 0;

    /// <inheritdoc/>
    public override ClassRule RuleOf(VehicleClass vehicleClass) =>
        base.RuleOf(vehicleClass) with { HasPresence = Factors.Traffic is not null && !PartialFactors.IsCrowd(vehicleClass) };

    /// <inheritdoc/>
    public override NotRatedReason WithoutLiveFactor(VehicleClass vehicleClass) => new NotRatedReason.NoPartialFactor(vehicleClass);

    /// <inheritdoc/>
    public override StrengthRules? StrengthsAt(RatingLevel level) => Factors.Resistance is not { } resistance ? null : new StrengthRules
    {
        Method = Name,
        Tension = TensionRule.Partial(resistance),
        Combined = CombinedRule.Partial(resistance),
        Column = _ => ColumnCurve.Partial(resistance),
        OwnWeightFactor = DeadFactors.Components,
    };

    /// <inheritdoc/>
    public override GivenCapacity CapacityFor(Sense sense, RatingLevel level) =>
        sense == Sense.Tension ? GivenCapacity.Tension : GivenCapacity.Compression;
}
