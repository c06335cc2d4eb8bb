namespace SpanRater;

/// <summary>Load and resistance factor rating, LRFR.</summary>
internal sealed class LoadAndResistanceFactorRating : RatingMethod
{
    public override string Name => "LRFR";

    public override string FullName => "load and resistance factor rating";

    public override string Source =>
        "AASHTO Manual for Bridge Evaluation, 3rd ed. (2018), 6A.4.2.1 (equation), Table 6A.4.2.2-1 (dead and design factors), " +
        "6A.4.4.2.3 (legal loads by truck traffic), 6A.4.4.3 (dynamic allowance 33%; 20% or 10% by riding surface, Table C6A.4.4.3-1); AASHTO LRFD 3.6.1.1.2 (presence), Table 3.4.1-2 " +
        "(relieving dead load); FHWA memo of 3 November 2016 (emergency vehicles); all from memory";

    public override CapacityMeaning GivenCapacityMeaning => CapacityMeaning.FactoredResistance;

    public override DeadFactors DeadFactors { get; } = new(1.25, 1.50, 0.90, 0.65);

    // Manual for Bridge Evaluation, 3rd ed. (2018), App. D6A: spans over 200 ft, from memory.
    public override double? LaneTypeLegalLoadAbove => 200 * 0.3048;

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
            VehicleClass.Emergency => [new RatingLevel("emergency", 1.30, Governance.Governs)],
            VehicleClass.Permit => [new RatingLevel("permit", settings.PermitFactor, Governance.Governs)],
            _ => [new RatingLevel("legal", LegalFactor(settings.TruckTraffic), Governance.Governs)],
        };
    }

    public override bool UsesTruckTraffic(VehicleClass vehicleClass) =>
        vehicleClass is VehicleClass.Legal or VehicleClass.Screening or VehicleClass.Farm;

    public override double Impact(double loadedLength) => 0.33;

    // Manual for Bridge Evaluation, 3rd ed. (2018), Table C6A.4.4.3-1: longitudinal members of spans over 40 ft, from memory.
    public override double? SurfaceCountsAbove => 40 * 0.3048;

    public override double? ImpactOn(RidingSurface surface) => surface switch
    {
        RidingSurface.Smooth => 0.10,
        RidingSurface.MinorDeviations => 0.20,
        _ => null,
    };

    public override GivenCapacity CapacityFor(Sense sense, RatingLevel level) =>
        sense == Sense.Tension ? GivenCapacity.Tension : GivenCapacity.Compression;

    // 1.30 up to 1,000 trucks a day, 1.45 from 5,000 and where unknown, straight between.
    private static double LegalFactor(double? truckTraffic) =>
        1.30 + (0.15 * Math.Clamp(((truckTraffic ?? 5000) - 1000) / 4000, 0, 1));
}
