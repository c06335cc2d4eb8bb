using BenchmarkDotNet.Running;
using SpanRater.Benchmarks;

if (args is ["--smoke"])
{
    return SmokeRun.Run();
}

if (args is ["--trucks"])
{
    return TruckRate.Run();
}

if (args is ["--trucks", "table"])
{
    return TruckRate.Table();
}

if (args is ["--bridges", var folder, var count])
{
    ManyBridges.Write(folder, int.Parse(count, System.Globalization.CultureInfo.InvariantCulture), seed: 1908);
    return 0;
}

BenchmarkSwitcher.FromAssembly(typeof(PeakSearchBenchmarks).Assembly).Run(args);
return 0;
