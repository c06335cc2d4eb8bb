using System.Diagnostics;
using System.Globalization;

namespace SpanRater.Benchmarks;

/// <summary>How many recorded trucks a second one core lets cross; by processor time too, since that is steadier where others use the machine.</summary>
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
    /// <summary>Prints the time of a truck by processor time at every size of the benchmarks, and that of the plain twin beside it: the best of some runs.</summary>
    internal static int Table()
    {
        Console.WriteLine("| axles | panels | lines | shapes | a truck [µs] | plain twin [µs] | twin over fast |");
        Console.WriteLine("|--:|--:|--:|--:|--:|--:|--:|");
        foreach (Type type in (Type[])[typeof(CrossingByAxlesBenchmarks), typeof(CrossingByPanelsBenchmarks), typeof(CrossingByLinesBenchmarks)])
        {
            foreach (CrossingBenchmarks size in SmokeRun.AtEverySize(type).Cast<CrossingBenchmarks>())
            {
                size.SetUp();
                double fast = Best(size.FastSearch, Runs, 0.1) / CrossingBenchmarks.Trucks, plain = Best(size.PlainTwin, 5, 0.1);
                Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"| {size.Sizes} | {1e6 * fast:0.00} | {1e6 * plain:0} | {plain / fast:0} |"));
            }
        }

        return 0;
    }

    // Processor time of a call [s], each run at least so long.
    private static double Best(Func<double> call, int runs, double atLeast)
    {
        double best = double.PositiveInfinity;
        call();
        for (int run = 0; run < runs; run++)
        {
            TimeSpan begin = Environment.CpuUsage.TotalTime, passed = TimeSpan.Zero;
            int calls = 0;
            while (passed.TotalSeconds < atLeast)
            {
                call();
                calls++;
                passed = Environment.CpuUsage.TotalTime - begin;
            }

            best = Math.Min(best, passed.TotalSeconds / calls);
        }

        return best;
    }
}
