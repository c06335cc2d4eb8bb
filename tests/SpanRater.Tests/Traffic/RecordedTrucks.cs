using System.Globalization;
using System.Text;
using MathNet.Numerics.Distributions;
using MathNet.Numerics.Random;
using SpanRater.Files;

namespace SpanRater.Tests.Traffic;

/// <summary>Invented trucks by a seed, and their record.</summary>
internal static class RecordedTrucks
{
    /// <summary>A record of invented trucks on a country road: farm lorries, tankers and five-axle trucks over some days, fewer on weekends.</summary>
    public static string Record(int seed, int days, int aDay)
    {
        var random = new MersenneTwister(seed);
        var text = new StringBuilder("time,loads [kip],spacings [ft],lane,kind\n");
        var start = new DateTime(2026, 3, 2, 0, 0, 0, DateTimeKind.Unspecified);
        for (int day = 0; day < days; day++)
        {
            DateTime date = start.AddDays(day);
            int count = date.DayOfWeek is DayOfWeek.Saturday or DayOfWeek.Sunday ? Math.Max(1, aDay / 3) : aDay;
            int[] seconds = [.. Enumerable.Range(0, count).Select(_ => random.Next(5 * 3600, 21 * 3600)).Order()];
            foreach (int second in seconds)
            {
                (string kind, double[] loads, double[] gaps) = Truck(random);
                text.Append(CultureInfo.InvariantCulture, $"{date.AddSeconds(second):yyyy-MM-ddTHH:mm:ss},{List(loads)},{List(gaps)},{(random.NextDouble() < 0.5 ? "north" : "south")},{kind}\n");
            }
        }

        return text.ToString();
    }

    private static (string Kind, double[] Loads, double[] Gaps) Truck(RandomSource random)
    {
        double full = random.NextDouble() < 0.45 ? 1 : 0.45;
        double Load(double kips) => Math.Max(1.5, Normal.Sample(random, kips, 0.08 * kips));
        double Gap(double feet, double more) => feet + (more * random.NextDouble());
        return random.NextDouble() switch
        {
            < 0.35 => ("farm lorry", [Load(5 + (2 * full)), Load(16 * full)], [Gap(11, 6)]),
            < 0.60 => ("tanker", [Load(12), Load(15 * full), Load(15 * full)], [Gap(13, 3), Gap(4.1, 0.4)]),
            < 0.95 => ("five axles", [Load(10.5), Load(15 * full), Load(15 * full), Load(15 * full), Load(15 * full)], [Gap(11, 5), Gap(4.2, 0.3), Gap(26, 9), Gap(4, 0.3)]),
            _ => ("crane", [Load(14), Load(14), Load(17), Load(17)], [Gap(5, 1), Gap(12, 4), Gap(4.3, 0.3)]),
        };
    }

    private static string List(double[] numbers) => string.Join(' ', numbers.Select(n => n.ToString("0.0", CultureInfo.InvariantCulture)));

    /// <summary>What is counted on a bridge folder.</summary>
    public static TrafficPlan Plan(string folder)
    {
        BridgeReading reading = BridgeFolder.Read(folder, []);
        Assert.NotNull(reading.Bridge);
        Assert.True(TrafficPlan.Of(reading.Bridge, reading.Bridge.Rating.Method!).TryGet(out TrafficPlan? plan, out _));
        return plan;
    }

    /// <summary>A record counted by so many workers in blocks of any size.</summary>
    public static TrafficReading? Count(TrafficPlan plan, string record, FindingList findings, int workers = 1, int blockSize = 1 << 16) =>
        Count(plan, Encoding.UTF8.GetBytes(record), findings, workers, blockSize);

    public static TrafficReading? Count(TrafficPlan plan, byte[] record, FindingList findings, int workers = 1, int blockSize = 1 << 16)
    {
        using var stream = new MemoryStream(record);
        return TrafficFile.Read(stream, "trucks.csv", plan, findings, workers, blockSize, stop: TestContext.Current.CancellationToken);
    }

    /// <summary>A record that must be read.</summary>
    public static TrafficReading Counted(TrafficPlan plan, string record, int workers = 1, int blockSize = 1 << 16)
    {
        var findings = new FindingList();
        TrafficReading? reading = Count(plan, record, findings, workers, blockSize);
        Assert.Empty(findings.All);
        return reading!;
    }
}
