using System.Globalization;
using BenchmarkDotNet.Attributes;
using SpanRater.Tests.Rolling;

namespace SpanRater.Benchmarks;

/// <summary>Every size of the benchmark once, untimed: the exact search and the sweep must agree within what the step allows.</summary>
internal static class SmokeRun
{
    public static int Run()
    {
        int sizes = 0, compared = 0;
        foreach (int panels in SizesOf(nameof(PeakBenchmarks.Panels)))
        {
            foreach (int axles in SizesOf(nameof(PeakBenchmarks.Axles)))
            {
                var benchmark = new PeakBenchmarks { Panels = panels, Axles = axles };
                benchmark.Setup();
                benchmark.Exact(out PeakPair[] exact);
                benchmark.Sweep(out (double Highest, double Lowest)[] swept);
                sizes++;
                for (int m = 0; m < exact.Length; m++)
                {
                    double round = 1e-9 * benchmark.Train.Weight;
                    double allowed = round + SteppedSweep.Shortfall(benchmark.Lines[m], benchmark.Train, PeakBenchmarks.Step, 1);
                    double tension = (exact[m].Tension?.Force ?? 0) - swept[m].Highest, compression = swept[m].Lowest - (exact[m].Compression?.Force ?? 0);
                    if (!(tension >= -round && tension <= allowed && compression >= -round && compression <= allowed))
                    {
                        Console.Error.WriteLine(string.Create(
                            CultureInfo.InvariantCulture,
                            $"{panels} panels, {axles} axles, member {m}: exact less sweep is {tension} N in tension and {compression} N in compression; 0 to {allowed} N is allowed."));
                        return 1;
                    }

                    compared += 2;
                }
            }
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{sizes} sizes, {compared} peaks: the exact search and the sweep agree."));
        return 0;
    }

    // The sizes are those of the benchmark, read from where they are declared.
    private static IEnumerable<int> SizesOf(string parameter) =>
        typeof(PeakBenchmarks).GetProperty(parameter)!.GetCustomAttributes(typeof(ParamsAttribute), false)
            .Cast<ParamsAttribute>().Single().Values.Cast<int>();
}
