namespace SpanRater.Tests.Ratings;

/// <summary>
/// The smallest truss that carries a deck: king post of two panels of 60 ft, 80 ft high, so that its rafters are 3-4-5
/// triangles. A load P at L1 gives P in the hanger L1U1, −5/8 P in the rafters, 3/8 P in the lower chord. Every line is one
/// triangle over 120 ft, for which 50/(L + 125) is 50/245.
/// </summary>
internal static class KingPostBridge
{
    public const double Foot = 0.3048;

    /// <summary>Impact of the formula for 120 ft [-].</summary>
    public const double ImpactOf120Feet = 50 / 245.0;

    /// <summary>Positions of the members.</summary>
    public const int LowerChord = 0, Rafter = 2, Hanger = 4;

    /// <summary>The bridge with a given share of 1, and no dead load but what is named.</summary>
    /// <param name="components">Dead load of the components at L1, down [kN].</param>
    /// <param name="wearingSurface">Wearing surface at L1, down [kN]; null where there is none.</param>
    /// <param name="capacities">Capacities of the hanger [kN]; null for 400 of every kind, on every member.</param>
    public static Bridge Of(double components, double? wearingSurface = null, Dictionary<GivenCapacity, double>? capacities = null)
    {
        Truss truss = Truss.Create(
            [
                new Joint("L0", 0, 0, Support.Pin, IsPanelPoint: true),
                new Joint("L1", 60 * Foot, 0, IsPanelPoint: true),
                new Joint("L2", 120 * Foot, 0, Support.Roller(), IsPanelPoint: true),
                new Joint("U1", 60 * Foot, 80 * Foot),
            ],
            [
                new Member("L0L1", "L0", "L1"),
                new Member("L1L2", "L1", "L2"),
                new Member("L0U1", "L0", "U1"),
                new Member("U1L2", "U1", "L2"),
                new Member("L1U1", "L1", "U1"),
            ]).Truss!;
        var cases = new List<LoadCase> { new(Bridge.ComponentsCase, [new JointLoad("L1", 0, -1000 * components)]) };
        if (wearingSurface is { } w)
        {
            cases.Add(new LoadCase(Bridge.WearingSurfaceCase, [new JointLoad("L1", 0, -1000 * w)]));
        }

        GivenCapacities strong = Kilonewtons(Enum.GetValues<GivenCapacity>().ToDictionary(kind => kind, _ => 400.0));
        GivenCapacities ofHanger = capacities is null ? strong : Kilonewtons(capacities);
        GivenCapacities ofOthers = capacities is null ? strong : GivenCapacities.None;
        return new Bridge(
            "King post",
            1900,
            truss,
            new Deck { TrussShare = 1 },
            new RatingSettings(),
            cases,
            [ofOthers, ofOthers, ofOthers, ofOthers, ofHanger]);
    }

    /// <summary>A vehicle of one axle of 100 kN.</summary>
    public static Vehicle OneAxle(VehicleClass vehicleClass, string? laneLoading = null) =>
        new("one axle", vehicleClass, new AxleTrain([100_000], []), Vehicle.StandardGauge, "made up for the test", laneLoading);

    /// <summary>The rating of the bridge.</summary>
    public static BridgeRating Rate(Bridge bridge, string method, params LiveLoad[] vehicles)
    {
        Assert.True(BridgeRater.Rate(bridge, RatingMethod.Find(method)!, vehicles).TryGet(out BridgeRating? rating, out Refusal? refusal), $"{refusal}");
        return rating;
    }

    /// <summary>The row of the hanger at a level.</summary>
    public static MemberRow HangerRow(BridgeRating rating, string level, Sense sense = Sense.Tension) =>
        rating.MemberRows.Single(r => r.MemberIndex == Hanger && r.Level.Name == level && r.Sense == sense);

    /// <summary>The bridge with another member at a position.</summary>
    public static Bridge WithMember(Bridge bridge, int position, Func<Member, Member> change) =>
        bridge with { Truss = Truss.Create(bridge.Truss.Joints, [.. bridge.Truss.Members.Select((m, i) => i == position ? change(m) : m)]).Truss! };

    /// <summary>The bridge with a role for the member at a position.</summary>
    public static Bridge WithRole(Bridge bridge, int position, string role) => WithMember(bridge, position, m => m with { Role = role });

    private static GivenCapacities Kilonewtons(Dictionary<GivenCapacity, double> values) =>
        new(values.ToDictionary(v => v.Key, v => 1000 * v.Value));
}
