namespace SpanRater;

/// <summary>Load and resistance factor rating, LRFR.</summary>
internal sealed class LoadAndResistanceFactorRating : RatingMethod
{
    public override string Name => "LRFR";

    public override string FullName => "load and resistance factor rating";

    public override IReadOnlyList<Clause> Basis { get; } =
    [
        FactorClauses.LrfrEquation, FactorClauses.LrfrDead, FactorClauses.LrfrDesign, FactorClauses.LrfrLegal, FactorClauses.SpecialHauling,
        ImpactClauses.OfLrfr, ImpactClauses.BySurface, LateralClauses.LrfrPresence, FactorClauses.LrfrRelieving, FactorClauses.Emergency,
    ];

    public override CapacityMeaning GivenCapacityMeaning => CapacityMeaning.FactoredResistance;

    public override DeadFactors DeadFactors { get; } = new(1.25, 1.50, 0.90, 0.65);

    /// <summary>Live-load factor of emergency vehicles unless another is given [-]. Source: <see cref="FactorClauses.Emergency"/>.</summary>
    public const double EmergencyFactor = 1.30;

    // Manual for Bridge Evaluation, 3rd ed. (2018), App. D6A: spans over 200 ft, from memory.
    public override double? LaneTypeLegalLoadAbove => 200 * 0.3048;

    public override DistributionTable Distribution => DistributionTable.Lanes;

    public override PostingRule LegalPosting => PostingRule.ReducedLegal;

    protected override IReadOnlyList<double> PresenceFactors { get; } = [1.20, 1.00, 0.85, 0.65];

    public override IReadOnlyList<RatingLevel> LevelsOf(VehicleClass vehicleClass, RatingSettings settings)
    {
        ArgumentNullException.ThrowIfNull(settings);
        return vehicleClass switch
        {
            // A design load stands for others; a maintenance vehicle is itself what crosses.
            VehicleClass.Design => InventoryAndOperating(1.75, 1.35, Governance.GovernsForWantOfOthers),
            VehicleClass.Maintenance or VehicleClass.Crowd => InventoryAndOperating(1.75, 1.35),
            VehicleClass.Emergency => [new RatingLevel("emergency", settings.EmergencyFactor ?? EmergencyFactor, Governance.Governs)],
            VehicleClass.Permit => [new RatingLevel("permit", settings.PermitFactor, Governance.Governs)],
            _ => [new RatingLevel("legal", LegalFactor(settings.TruckTraffic), Governance.Governs)],
        };
    }

    public override bool UsesTruckTraffic(VehicleClass vehicleClass) =>
        vehicleClass is VehicleClass.Legal or VehicleClass.Screening or VehicleClass.Farm;

    public override Clause? DoubtOf(LiveLoad load) => load switch
    {
        { Class: VehicleClass.Emergency } => FactorClauses.Emergency,
        { Class: VehicleClass.Screening } or { Class: VehicleClass.Legal, Name: "SU4" or "SU5" or "SU6" or "SU7" } => FactorClauses.SpecialHauling,
        Loading { Class: VehicleClass.Legal } loading => loading.Trains.Select(DoubtOf).FirstOrDefault(c => c is not null),
        _ => null,
    };

    public override double Impact(double loadedLength) => 0.33;

    // Manual for Bridge Evaluation, 3rd ed. (2018), Table C6A.4.4.3-1: longitudinal members of spans over 40 ft, from memory.
    public override double? SurfaceCountsAbove => 40 * 0.3048;

    public override double? ImpactOn(RidingSurface surface) => surface switch
    {
        RidingSurface.Smooth => 0.10,
        RidingSurface.MinorDeviations => 0.20,
        _ => null,
    };

    public override StrengthRules StrengthsAt(RatingLevel level)
    {
        ArgumentNullException.ThrowIfNull(level);
        return new StrengthRules
        {
            Method = Name,
            Tension = TensionRule.LoadAndResistance,
            Combined = CombinedRule.LoadAndResistance,
            Column = _ => ColumnCurve.LoadAndResistance,
            Timber = (timber, width, depth) => TimberDesign.LoadAndResistance(timber, width, depth, isPermit: level.Name == "permit"),
            Beam = BeamRule.LoadAndResistance,
            Connections = ConnectionRule.LoadAndResistance,
            HasMemberFactors = true,
            OwnWeightFactor = DeadFactors.Components,
        };
    }

    public override GivenCapacity CapacityFor(Sense sense, RatingLevel level) =>
        sense == Sense.Tension ? GivenCapacity.Tension : GivenCapacity.Compression;

    // 1.30 up to 1,000 trucks a day, 1.45 from 5,000 and where unknown, straight between.
    private static double LegalFactor(double? truckTraffic) =>
        1.30 + (0.15 * Math.Clamp(((truckTraffic ?? 5000) - 1000) / 4000, 0, 1));
}
