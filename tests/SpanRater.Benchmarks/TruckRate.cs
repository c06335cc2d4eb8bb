using System.Diagnostics;
using System.Globalization;

namespace SpanRater.Benchmarks;

/// <summary>How many recorded trucks a second one core lets cross.</summary>
internal static class TruckRate
{
    private const int Trucks = 200_000;
    private const int Runs = 10;

    /// <summary>Prints one line.</summary>
    internal static int Run()
    {
        InfluenceLine[] lines = [.. InfluenceLines.Of(new PrattTruss(16, 5, 7).Build()).Value!.Members.Select(m => m.Line)];
        var trucks = new RecordedTrucks(Trucks, 5, 1908);
        var search = new CrossingSearch(CrossedLines.Of(lines[0].Stations, lines));
        double[] greatest = new double[lines.Length], least = new double[lines.Length];
        double byClock = 0, byProcessor = 0, highest = 0;
        for (int run = 0; run < Runs; run++)
        {
            TimeSpan processor = Environment.CpuUsage.TotalTime;
            long clock = Stopwatch.GetTimestamp();
            for (int t = 0; t < Trucks; t++)
            {
                search.Cross(trucks.Loads(t), trucks.Gaps(t), greatest, least);
                highest = Math.Max(highest, greatest[0]);
            }

            byClock = Math.Max(byClock, Trucks / Stopwatch.GetElapsedTime(clock).TotalSeconds);
            byProcessor = Math.Max(byProcessor, Trucks / (Environment.CpuUsage.TotalTime - processor).TotalSeconds);
        }

        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"{byClock:0} trucks a second on one core by the clock, {byProcessor:0} by processor time: best of {Runs} runs of {Trucks} trucks of five axles, both directions, {lines.Length} members, {lines[0].Stations.Count} panel points (greatest force in the first member {highest / 1e3:0.0} kN)."));
        return 0;
    }
}
