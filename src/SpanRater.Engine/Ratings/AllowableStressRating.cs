namespace SpanRater;

/// <summary>Allowable stress rating, ASR.</summary>
internal sealed class AllowableStressRating : RatingMethod
{
    public override string Name => "ASR";

    public override string FullName => "allowable stress rating";

    public override IReadOnlyList<Clause> Basis { get; } =
        [FactorClauses.LfrAsrEquation, FactorClauses.Asr, ImpactClauses.ByLength, LateralClauses.OlderPresence, FactorClauses.LfrAsrRelieving];

    public override CapacityMeaning GivenCapacityMeaning => CapacityMeaning.AllowableForce;

    public override DeadFactors DeadFactors { get; } = new(1.0, 1.0, 1.0, 1.0);

    protected override IReadOnlyList<double> PresenceFactors { get; } = [1.00, 1.00, 0.90, 0.75];

    public override IReadOnlyList<RatingLevel> LevelsOf(VehicleClass vehicleClass, RatingSettings settings) => InventoryAndOperating(1.0, 1.0);

    public override double Impact(double loadedLength) => ImpactByLength(loadedLength);

    public override bool StrengthGoesByLevel => true;

    public override StrengthRules StrengthsAt(RatingLevel level)
    {
        ArgumentNullException.ThrowIfNull(level);
        AllowableLevel allowable = level.Governance == Governance.Inventory ? AllowableLevel.Inventory : AllowableLevel.Operating;
        return new StrengthRules
        {
            Method = Name,
            Tension = TensionRule.Allowable(allowable),
            Combined = CombinedRule.Allowable(allowable),
            Column = strength => ColumnCurve.Allowable(strength, allowable),
            Beam = BeamRule.Allowable(allowable),
            Connections = ConnectionRule.Allowable(allowable),
            Timber = (timber, width, depth) => TimberDesign.Allowable(timber, width, depth, allowable),
            OwnWeightFactor = DeadFactors.Components,
        };
    }

    public override GivenCapacity CapacityFor(Sense sense, RatingLevel level)
    {
        ArgumentNullException.ThrowIfNull(level);
        return (sense, level.Governance == Governance.Inventory) switch
        {
            (Sense.Tension, true) => GivenCapacity.InventoryTension,
            (Sense.Tension, false) => GivenCapacity.OperatingTension,
            (Sense.Compression, true) => GivenCapacity.InventoryCompression,
            _ => GivenCapacity.OperatingCompression,
        };
    }
}
