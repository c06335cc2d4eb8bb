namespace SpanRater;

/// <summary>Load factor rating, LFR.</summary>
internal sealed class LoadFactorRating : RatingMethod
{
    public override string Name => "LFR";

    public override string FullName => "load factor rating";

    public override IReadOnlyList<Clause> Basis { get; } =
        [FactorClauses.LfrAsrEquation, FactorClauses.Lfr, ImpactClauses.ByLength, LateralClauses.OlderPresence, FactorClauses.LfrAsrRelieving];

    public override CapacityMeaning GivenCapacityMeaning => CapacityMeaning.FactoredResistance;

    public override DeadFactors DeadFactors { get; } = new(1.3, 1.3, 1.0, 1.0);

    protected override IReadOnlyList<double> PresenceFactors { get; } = [1.00, 1.00, 0.90, 0.75];

    public override IReadOnlyList<RatingLevel> LevelsOf(VehicleClass vehicleClass, RatingSettings settings) => InventoryAndOperating(2.17, 1.3);

    public override double Impact(double loadedLength) => ImpactByLength(loadedLength);

    public override StrengthRules StrengthsAt(RatingLevel level) => new()
    {
        Method = Name,
        Tension = TensionRule.LoadFactor,
        Combined = CombinedRule.LoadFactor,
        Column = _ => ColumnCurve.LoadFactor,
        Beam = BeamRule.LoadFactor,
        OwnWeightFactor = DeadFactors.Components,
    };

    public override GivenCapacity CapacityFor(Sense sense, RatingLevel level) =>
        sense == Sense.Tension ? GivenCapacity.Tension : GivenCapacity.Compression;
}
