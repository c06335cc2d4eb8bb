using SpanRater.Files;
namespace SpanRater.Tests.Pictures;

/// <summary>Two invented bridges and what rolls over them.</summary>
internal static class ExampleBridges
{
    private const double Foot = 0.3048;
    private const double Kip = 4448.2216152605;

    public static Vehicle Type3 { get; } = new(
        "Type 3",
        VehicleClass.Legal,
        new AxleTrain([16 * Kip, 17 * Kip, 17 * Kip], [AxleGap.Fixed(15 * Foot), AxleGap.Fixed(4 * Foot)]),
        Vehicle.StandardGauge,
        "invented for tests");

    public static Vehicle Mower { get; } = new(
        "Mower and trailer",
        VehicleClass.Maintenance,
        new AxleTrain([40_000, 80_000], [AxleGap.Fixed(3)]),
        1.3,
        "invented for tests");

    /// <summary>A pony Warren footbridge: six panels of 3 m, 1.8 m deep.</summary>
    public static Truss Warren()
    {
        var joints = new List<Joint>();
        for (int i = 0; i <= 6; i++)
        {
            Support? support = i switch { 0 => Support.Pin, 6 => Support.Roller(), _ => null };
            joints.Add(new Joint($"L{i}", 3.0 * i, 0, support, IsPanelPoint: true));
        }

        joints.AddRange(Enumerable.Range(1, 5).Select(i => new Joint($"U{i}", 3.0 * i, 1.8)));
        return Made(
            joints,
            [
                .. Enumerable.Range(0, 6).Select(i => Between($"L{i}", $"L{i + 1}", "bottom chord")),
                .. Enumerable.Range(1, 4).Select(i => Between($"U{i}", $"U{i + 1}", "top chord")),
                .. Enumerable.Range(0, 6).Select(i => i % 2 == 0 ? Between($"L{i}", $"U{i + 1}", "diagonal") : Between($"U{i}", $"L{i + 1}", "diagonal")),
                .. Enumerable.Range(1, 5).Select(i => Between($"L{i}", $"U{i}", "vertical")),
            ]);
    }

    /// <summary>A K-truss: eight panels of 18 ft, 28 ft deep, joints halfway up verticals 1, 2, 3, 5, 6 and 7.</summary>
    public static Truss KTruss()
    {
        var joints = new List<Joint>();
        for (int i = 0; i <= 8; i++)
        {
            Support? support = i switch { 0 => Support.Pin, 8 => Support.Roller(), _ => null };
            joints.Add(new Joint($"L{i}", 18 * i * Foot, 0, support, IsPanelPoint: true));
        }

        joints.AddRange(Enumerable.Range(1, 7).Select(i => new Joint($"U{i}", 18 * i * Foot, 28 * Foot)));
        int[] halved = [1, 2, 3, 5, 6, 7];
        joints.AddRange(halved.Select(i => new Joint($"M{i}", 18 * i * Foot, 14 * Foot)));
        return Made(
            joints,
            [
                .. Enumerable.Range(0, 8).Select(i => Between($"L{i}", $"L{i + 1}", "bottom chord")),
                .. Enumerable.Range(1, 6).Select(i => Between($"U{i}", $"U{i + 1}", "top chord")),
                Between("L0", "U1", "end post"),
                Between("L8", "U7", "end post"),
                .. halved.SelectMany(i => (Member[])[Between($"U{i}", $"M{i}", "vertical"), Between($"M{i}", $"L{i}", "vertical")]),
                Between("U4", "L4", "vertical"),
                .. halved.SelectMany(i =>
                {
                    int next = i < 4 ? i + 1 : i - 1;
                    return (Member[])[Between($"M{i}", $"U{next}", "K-diagonal"), Between($"M{i}", $"L{next}", "K-diagonal")];
                }),
            ]);
    }

    public static InfluenceLines LinesOf(Truss truss)
    {
        Assert.True(DeterminateTruss.Of(truss).TryGet(out DeterminateTruss? system, out _));
        Assert.True(InfluenceLines.Of(system).TryGet(out InfluenceLines? lines, out _));
        return lines;
    }

    /// <summary>A vehicle rolled over the truss of some lines.</summary>
    public static RollingResult Rolled(InfluenceLines lines, Vehicle vehicle)
    {
        TrussCrossing crossing = TrussCrossing.Of(lines.Truss, null, null).Value!;
        return new RollingResult(vehicle, 1, crossing, crossing.Roll(vehicle).Value, null);
    }

    /// <summary>Rates a bridge whose members all have given capacities, but those that are left out.</summary>
    public static BridgeRating Rate(string name, Truss truss, double weight, double tension, double compression, Vehicle vehicle, params IReadOnlyList<string> withoutCapacity)
    {
        var given = new GivenCapacities(new Dictionary<GivenCapacity, double>
        {
            [GivenCapacity.Tension] = tension,
            [GivenCapacity.Compression] = compression,
        });
        var bridge = new Bridge(
            name,
            1926,
            truss,
            new Deck { TrussShare = 0.7 },
            new RatingSettings(),
            [new LoadCase(Bridge.ComponentsCase, [.. truss.PanelPoints.Select(p => new JointLoad(truss.Joints[p].Name, 0, -weight))])],
            [.. truss.Members.Select(m => withoutCapacity.Contains(m.Name) ? GivenCapacities.None : given)]);
        Assert.True(BridgeRater.Rate(bridge, RatingMethod.Find("LRFR")!, [vehicle]).TryGet(out BridgeRating? rating, out _));
        return rating;
    }

    public static BridgeRating RatedWarren(params IReadOnlyList<string> withoutCapacity) =>
        Rate("Tansy Weir footbridge", Warren(), 9_000, 330_000, 300_000, Mower, withoutCapacity);

    public static BridgeRating RatedKTruss(params IReadOnlyList<string> withoutCapacity) =>
        Rate("Garrow Landing road bridge", KTruss(), 16 * Kip, 160 * Kip, 190 * Kip, Type3, withoutCapacity);

    public static Truss Made(IReadOnlyList<Joint> joints, IReadOnlyList<Member> members)
    {
        TrussCheck check = Truss.Create(joints, members);
        Assert.NotNull(check.Truss);
        return check.Truss;
    }

    public static Member Between(string from, string to, string role = "") => new(from + to, from, to, role);
}
