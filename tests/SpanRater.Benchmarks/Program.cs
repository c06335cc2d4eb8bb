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

BenchmarkSwitcher.FromAssembly(typeof(PeakSearchBenchmarks).Assembly).Run(args);
return 0;
