namespace SpanRater;

/// <summary>Allowable stress rating, ASR.</summary>
internal sealed class AllowableStressRating : RatingMethod
{
    public override string Name => "ASR";

    public override string FullName => "allowable stress rating";

    public override string Source =>
        "AASHTO Manual for Bridge Evaluation, 3rd ed. (2018), 6B.4.1 and 6B.4.2 (equation, A1 = A2 = 1); AASHTO Standard Specifications, " +
        "17th ed. (2002), 3.8.2 (impact), 3.12 (presence); all from memory. Relieving dead load at 1.0 is common practice";

    public override CapacityMeaning GivenCapacityMeaning => CapacityMeaning.AllowableForce;

    public override DeadFactors DeadFactors { get; } = new(1.0, 1.0, 1.0, 1.0);

    protected override IReadOnlyList<double> PresenceFactors { get; } = [1.00, 1.00, 0.90, 0.75];

    public override IReadOnlyList<RatingLevel> LevelsOf(VehicleClass vehicleClass, RatingSettings settings) => InventoryAndOperating(1.0, 1.0);

    public override double Impact(double loadedLength) => ImpactByLength(loadedLength);

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
