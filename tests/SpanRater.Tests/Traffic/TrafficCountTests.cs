using System.Globalization;
using SpanRater.Files;
using SpanRater.Tests.CommandLine;

namespace SpanRater.Tests.Traffic;

/// <summary>What is counted of recorded trucks, held against the search that the ratings use, sorting, and counting by hand.</summary>
public sealed class TrafficCountTests : IDisposable
{
    private const double Kip = 4448.2216152605, Foot = 0.3048;
    private static readonly string Record = RecordedTrucks.Record(20260302, days: 12, aDay: 20);
    private readonly BridgeOnDisk bridge = FatigueKingPost.Make();

    public void Dispose() => bridge.Dispose();

    // 20 kip over the hanger of the king post: wheel lines 3 and 9 ft from the truss of 14 ft, (11 + 5)/28 of it. Dead 2 + 0.5 kip, capacity 40 kip, impact 0.33.
    [Fact]
    public void Effects_OneAxleOnAKingPost_AreByHand()
    {
        using var plain = new BridgeOnDisk();
        TrafficReading reading = RecordedTrucks.Counted(RecordedTrucks.Plan(plain.Folder), "time,loads [kip],spacings [ft]\n2026-05-04T10:00:00,20,\n");
        TrafficEffect hanger = reading.Tally.Plan.Effects.Single(e => e is { Name: "L1U1", Sense: Sense.Tension });

        double most = reading.Tally.Most(hanger.Channel);
        Assert.Equal(20 * Kip, most, 1e-6);
        Assert.Equal(16.0 / 28, hanger.Factor, 1e-12);
        Assert.Equal(0.33, hanger.Impact.Value);
        Assert.Equal((2.5 + (20 * 16.0 / 28 * 1.33)) / 40, hanger.UsedBy(most)!.Value, 1e-12);
        Assert.Equal(0, reading.Tally.Over(reading.Tally.Plan.Effects.ToList().IndexOf(hanger)));
    }

    [Fact]
    public void Effects_EveryMember_HaveThePeaksOfTheRatingsSearch()
    {
        TrafficReading reading = RecordedTrucks.Counted(RecordedTrucks.Plan(bridge.Folder), Record);
        TrafficTally tally = reading.Tally;
        Truss truss = tally.Plan.Bridge.Truss;
        Assert.True(InfluenceLines.Of(truss).TryGet(out InfluenceLines? lines, out _));
        (int Line, AxleTrain Train)[] trains = [.. Trains(Record)];
        Assert.Contains(tally.Plan.Effects, e => e.Member is not null);
        Assert.All(tally.Plan.Effects.Where(e => e.Member is not null), effect =>
        {
            (double Force, int Line)[] peaks = [.. trains.Select(t => (new RollingPlan(truss.Stations, t.Train).PeaksOf(lines.Members[effect.Member!.Value].Line).Of(effect.Sense!.Value), t.Line)).Select(p => (Math.Abs(p.Item1?.Force ?? 0), p.Line))];
            double most = peaks.Max(p => p.Force);
            Assert.Equal(most, tally.Most(effect.Channel), 1e-9 * (1 + most));
            Assert.Equal(peaks.First(p => p.Force >= most * (1 - 1e-12)).Line, tally.MostRecord(effect.Channel)!.Line);
            AssertDistribution(tally, effect, [.. peaks.Select(p => p.Force)]);
        });
    }

    [Fact]
    public void Stresses_OfTheHanger_AreByCubeRootOfTheMeanOfCubes()
    {
        TrafficReading reading = RecordedTrucks.Counted(RecordedTrucks.Plan(bridge.Folder), Record);
        TrafficStress stress = reading.Tally.Plan.Stresses.Single(s => s.Channel is not null);
        Assert.True(InfluenceLines.Of(reading.Tally.Plan.Bridge.Truss).TryGet(out InfluenceLines? lines, out _));

        // The two square bars of an inch: 2 in². The line never turns, so the range is the peak.
        InfluenceLine line = lines.Members[stress.Member].Line;
        double[] ranges = [.. Trains(Record).Select(t => new RollingPlan(line.Stations, t.Train).PeaksOf(line).Tension?.Force ?? 0).Select(f => f * (16.0 / 28) * 1.15 / (2 * 0.0254 * 0.0254))];
        double effective = Math.Pow(ranges.Sum(r => r * r * r) / ranges.Length, 1.0 / 3);
        Assert.Equal(effective, stress.StressOf(Math.Cbrt(reading.Tally.Cubes(stress.Channel!.Value) / reading.Tally.Trucks))!.Value, 1e-9 * effective);
    }

    // The floorbeam takes the reaction at L1; its moment under wheels is that of the rating, one lane and no presence factor.
    [Fact]
    public void Effects_FloorbeamHangerAndStringer_AreThoseOfTheRatingUnderOneTruck()
    {
        TrafficPlan plan = RecordedTrucks.Plan(bridge.Folder);
        TrafficReading reading = RecordedTrucks.Counted(plan, "time,loads [kip],spacings [ft]\n2026-05-04T10:00:00,16 17 17,15 4\n");
        Bridge read = plan.Bridge;
        var type3 = new Vehicle("Type 3 by permit", VehicleClass.Permit, new AxleTrain([16 * Kip, 17 * Kip, 17 * Kip], [AxleGap.Fixed(15 * Foot), AxleGap.Fixed(4 * Foot)]), Vehicle.StandardGauge, "");
        Assert.True(BridgeRater.Rate(read with { Rating = read.Rating with { PermitFactor = 1 } }, read.Rating.Method!, [type3]).TryGet(out BridgeRating? rating, out _));
        (string Part, PartEffect Effect, double Below)[] cases = [("floorbeam", PartEffect.Moment, 1e-9), ("floorbeam", PartEffect.Shear, 1e-9), ("hangers", PartEffect.Force, 1e-9), ("stringers", PartEffect.Moment, 0.003)];
        Assert.All(cases, c =>
        {
            TrafficEffect effect = plan.Effects.Single(e => e.Name == c.Part && e.Acts == c.Effect);
            PartRow row = rating.PartRows.Single(r => r.PartName == c.Part && r.Of == c.Effect);
            double found = effect.Factor * reading.Tally.Most(effect.Channel);
            Assert.InRange(found, row.Live!.Value * (1 - c.Below) * (1 - 1e-9), row.Live!.Value * (1 + 1e-9));
            Assert.Equal(row.DeadComponents + row.DeadWearing, effect.Dead!.Value, 1e-6);
            Assert.Equal(row.Capacity, effect.Capacity);
        });
    }

    [Fact]
    public void Plan_WhatIsNotCounted_IsNamed()
    {
        TrafficPlan plan = RecordedTrucks.Plan(bridge.Folder);
        Assert.Contains(new NotCounted.DeckByWheels("planks"), plan.NotCounted);
        Assert.Contains(new NotCounted.AxleOverSupport("stringers", PartEffect.Shear), plan.NotCounted);
    }

    [Fact]
    public void Plan_MembersWhoseRodsDecide_AreNotComputed()
    {
        TrafficPlan plan = RecordedTrucks.Plan(Repository.Sample("hollis-fork"));
        NotCounted.RodsDecide decided = Assert.Single(plan.NotCounted.OfType<NotCounted.RodsDecide>());
        Assert.Contains("L2U3", decided.Members);
        Assert.DoesNotContain(plan.Effects, e => decided.Members.Contains(e.Name));
        Assert.Contains(plan.Effects, e => e.Member is not null);
    }

    // A bar that only pulls and has nothing to take over from it: pressed where a truck brings more than dead load holds.
    [Fact]
    public void Effects_BarThatOnlyPulls_CountsTheCrossingsThatWouldPressIt()
    {
        TrafficPlan plan = RecordedTrucks.Plan(Repository.Sample("wrenfield-ferry"));
        TrafficEffect[] bars = [.. plan.Effects.Where(e => e.OnlyPulls)];
        Assert.NotEmpty(bars);
        TrafficReading reading = RecordedTrucks.Counted(plan, "time,loads [kip],spacings [ft]\n2026-05-04T10:00:00,2,\n2026-05-04T10:01:00,20 59 59 59,12 4 4\n");
        long?[] pressed = [.. plan.Effects.Select((e, i) => (e, i)).Where(p => p.e.OnlyPulls).Select(p => reading.Tally.Over(p.i))];
        Assert.Contains(1L, pressed);
        Assert.DoesNotContain(2L, pressed);
    }

    private static void AssertDistribution(TrafficTally tally, TrafficEffect effect, double[] forces)
    {
        double[] sorted = [.. forces.Order()];
        double width = tally.Plan.Channels[effect.Channel].BinWidth;
        foreach (double part in (double[])[0.5, 0.9, 0.99, 0.999, 1])
        {
            double exact = sorted[(int)Math.Ceiling((part * sorted.Length) - 1e-9) - 1];
            Assert.InRange(tally.Quantile(effect.Channel, part), exact * (1 - 1e-9), exact + width);
        }

        Assert.Equal(forces.Length, tally.Histogram(effect.Channel).Sum());
        if (effect.Limit is not null)
        {
            long over = forces.Count(f => effect.Dead + (effect.WithImpact * f) > effect.Capacity);
            Assert.Equal(over, tally.Over(tally.Plan.Effects.ToList().IndexOf(effect)));
        }
    }

    private static IEnumerable<(int Line, AxleTrain Train)> Trains(string record)
    {
        string[] lines = record.Split('\n', StringSplitOptions.RemoveEmptyEntries);
        for (int i = 1; i < lines.Length; i++)
        {
            string[] cells = lines[i].Split(',');
            double[] Numbers(string cell, double unit) => [.. cell.Split(' ', StringSplitOptions.RemoveEmptyEntries).Select(n => double.Parse(n, CultureInfo.InvariantCulture) * unit)];
            yield return (i + 1, new AxleTrain(Numbers(cells[1], Kip), [.. Numbers(cells[2], Foot).Select(AxleGap.Fixed)]));
        }
    }
}
