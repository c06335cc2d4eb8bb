using System.Reflection;
using BenchmarkDotNet.Attributes;

namespace SpanRater.Benchmarks;

/// <summary>Runs every benchmark method once, so that a change that breaks or falsifies one is seen without measuring.</summary>
internal static class SmokeRun
{
    /// <summary>Prints one line; 0 when exact search and sweep agree at every size, else 1.</summary>
    internal static int Run()
    {
        int runs = 0;
        MethodInfo[] methods = [.. typeof(PeakSearchBenchmarks).GetMethods().Where(m => m.IsDefined(typeof(BenchmarkAttribute)))];
        foreach (int panels in ValuesOf(nameof(PeakSearchBenchmarks.Panels)))
        {
            foreach (int axles in ValuesOf(nameof(PeakSearchBenchmarks.Axles)))
            {
                var benchmarks = new PeakSearchBenchmarks { Panels = panels, Axles = axles };
                benchmarks.SetUp();
                foreach (MethodInfo method in methods)
                {
                    method.Invoke(benchmarks, null);
                    runs++;
                }

                if (benchmarks.Disagreement() is { } disagreement)
                {
                    Console.WriteLine($"Exact search and sweep disagree: {disagreement}.");
                    return 1;
                }
            }
        }

        if (runs == 0)
        {
            Console.WriteLine("No benchmark method was found.");
            return 1;
        }

        Console.WriteLine($"{runs} benchmark runs; exact search and sweep agree at every size.");
        return 0;
    }

    private static IEnumerable<int> ValuesOf(string property) =>
        typeof(PeakSearchBenchmarks).GetProperty(property)!.GetCustomAttribute<ParamsAttribute>()!.Values.Cast<int>();
}
