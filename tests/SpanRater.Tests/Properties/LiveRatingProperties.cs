using CsCheck;

namespace SpanRater.Tests;

/// <summary>How rating factors must follow what goes in, on random determinate trusses under trucks, lane loads, tracks and crowds.</summary>
public class LiveRatingProperties
{
    private const int Cases = 60;

    private const double Foot = 0.3048;

    private static readonly RatingMethod Lrfr = RatingMethod.Find("LRFR")!, Lfr = RatingMethod.Find("LFR")!;

    [Fact]
    public void Factor_MoreDeadLoadOfTheSameSense_Falls() => SeededCases.Check(Bridges(), Cases, c =>
    {
        Bridge heavier = c.Bridge with { Cases = [Scaled(c.Bridge.Cases[0], 1.25)] };
        foreach ((MemberRow row, MemberRow other) in Pairs(Rows(c.Bridge, Lrfr, c.Loads), Rows(heavier, Lrfr, c.Loads)))
        {
            if (row.Status != RatingStatus.Rated)
            {
                continue;
            }

            double sign = row.Sense == Sense.Tension ? 1 : -1, dead = sign * row.DeadComponents;
            Assert.True(
                dead > 1 ? other.Factor < row.Factor : dead < -1 ? other.Factor > row.Factor : true,
                $"{row.Member.Name}, {row.Sense}, {row.Vehicle.Name}: {row.Factor:R} with {dead:R} N, {other.Factor:R} with a quarter more.");
        }
    });

    [Fact]
    public void Factor_OfALoadThatMuchLighter_IsThatMuchLarger() => SeededCases.Check(
        from bridge in Bridges()
        from part in Gen.Double[0.2, 4]
        select (bridge.Bridge, bridge.Loads, part),
        Cases,
        c =>
        {
            foreach ((MemberRow row, MemberRow other) in Pairs(Rows(c.Bridge, Lfr, c.Loads), Rows(c.Bridge, Lfr, [.. c.Loads.Select(l => Times(l, 1 / c.part))])))
            {
                Assert.Equal(row.Status, other.Status);
                if (row.Factor is { } factor)
                {
                    Assert.Equal(c.part * factor, other.Factor!.Value, 1e-9 * Math.Max(1, c.part * factor));
                }
            }
        });

    // The span turned end for end, and the roadway moved to the other side: each truss has what the other had.
    [Fact]
    public void Factor_OfAMirroredBridge_IsThatOfTheOtherTruss() => SeededCases.Check(
        from bridge in Bridges()
        from offset in Gen.Double[0.01, 0.4]
        select (Bridge: bridge.Bridge with { Deck = bridge.Bridge.Deck with { RoadwayOffset = offset } }, bridge.Loads),
        Cases,
        c =>
        {
            double end = c.Bridge.Truss.Stations[0] + c.Bridge.Truss.Stations[^1];
            TrussCheck mirrored = Truss.Create([.. c.Bridge.Truss.Joints.Select(j => j with { X = end - j.X })], c.Bridge.Truss.Members);
            Bridge other = c.Bridge with { Truss = mirrored.Truss!, Deck = c.Bridge.Deck with { RoadwayOffset = -c.Bridge.Deck.RoadwayOffset } };
            IReadOnlyList<MemberRow> rows = Rows(c.Bridge, Lfr, c.Loads), others = Rows(other, Lfr, c.Loads);
            Assert.Equal(rows.Count, others.Count);
            Assert.All(rows, r => Assert.NotNull(r.Truss));
            var found = others.ToDictionary(Key);
            foreach (MemberRow row in rows)
            {
                MemberRow opposite = found[Key(row) with { Truss = row.Truss == "left" ? "right" : "left" }];
                Assert.Equal(row.Status, opposite.Status);
                Assert.Equal(row.Factor is null, opposite.Factor is null);
                if (row.Factor is { } factor)
                {
                    Assert.Equal(factor, opposite.Factor!.Value, 1e-6 * Math.Max(1, factor));
                }
            }
        });

    private static (string? Truss, int Member, Sense Sense, string Level, string Vehicle) Key(MemberRow row) =>
        (row.Truss, row.MemberIndex, row.Sense, row.Level.Name, row.Vehicle.Name + "/" + row.Beside?.Vehicle.Name);

    private static IReadOnlyList<MemberRow> Rows(Bridge bridge, RatingMethod method, IReadOnlyList<LiveLoad> loads)
    {
        Assert.True(BridgeRater.Rate(bridge, method, loads).TryGet(out BridgeRating? rating, out Refusal? refusal), $"{refusal}");
        return rating.MemberRows;
    }

    private static IEnumerable<(MemberRow Row, MemberRow Other)> Pairs(IReadOnlyList<MemberRow> rows, IReadOnlyList<MemberRow> others)
    {
        Assert.Contains(rows, r => r.Status == RatingStatus.Rated);
        var found = others.Where(o => o.Beside is null).ToDictionary(Key);
        return rows.Where(r => r.Beside is null).Select(r => (r, found[Key(r)]));
    }

    private static LoadCase Scaled(LoadCase loads, double factor) =>
        new(loads.Name, [.. loads.Loads.Select(l => new JointLoad(l.Joint, factor * l.Right, factor * l.Up))]);

    private static LiveLoad Times(LiveLoad load, double factor) => load switch
    {
        Vehicle v => v with { Train = v.Train.Times(factor) },
        TrackedVehicle t => t with { Weight = factor * t.Weight },
        Crowd { Intensity: ConstantPressure p } crowd => crowd with { Intensity = p with { Pressure = factor * p.Pressure } },
        Loading { Lane: { Intensity: ConstantLineLoad lane } of } loading => loading with
        {
            Trains = [.. loading.Trains.Select(t => t with { Train = t.Train.Times(factor) })],
            Lane = of with { Intensity = lane with { Load = factor * lane.Load }, PointOnChords = factor * of.PointOnChords, PointOnOthers = factor * of.PointOnOthers },
        },
        _ => throw new ArgumentException("No such load is made here.", nameof(load)),
    };

    // Two lanes of 11 ft between trusses 26 ft apart; dead load on the panel points; every member strong enough for it.
    private static Gen<(Bridge Bridge, IReadOnlyList<LiveLoad> Loads)> Bridges() =>
        from form in RandomTrusses.Forms()
        let truss = form.Build()
        from dead in Gen.Double[5e3, 4e4]
        from train in RandomTrains.For(truss.Stations, 0)
        from weight in Gen.Double[5e4, 4e5]
        from length in Gen.Double[1, 20]
        from lane in Gen.Double[1e3, 2e4]
        from point in Gen.Double[1e4, 2e5]
        let vehicle = new Vehicle("truck", VehicleClass.Legal, train, Vehicle.StandardGauge, "random")
        select (
            new Bridge(
                "random",
                null,
                truss,
                new Deck { TrussSpacing = 26 * Foot, Roadway = 22 * Foot },
                new RatingSettings(),
                [new LoadCase(Bridge.ComponentsCase, [.. truss.Joints.Where(j => j.IsPanelPoint).Select(j => new JointLoad(j.Name, 0, -dead))])],
                [.. truss.Members.Select(_ => new GivenCapacities(Enum.GetValues<GivenCapacity>().ToDictionary(k => k, _ => 1e8)))]),
            (IReadOnlyList<LiveLoad>)
            [
                vehicle,
                new Vehicle("emergency", VehicleClass.Emergency, train, Vehicle.StandardGauge, "random"),
                new Loading("or", VehicleClass.Design, [vehicle], new LaneLoad(new ConstantLineLoad(lane, "random"), point, 1.4 * point, true), "random"),
                new Loading("with", VehicleClass.Design, [vehicle], new LaneLoad(new ConstantLineLoad(lane, "random")), "random"),
                new TrackedVehicle("tracked", VehicleClass.Farm, weight, length, 2.2, "random"),
                new Crowd("crowd", VehicleClass.Crowd, new ConstantPressure(4_000, "random"), null, "random"),
            ]);
}
