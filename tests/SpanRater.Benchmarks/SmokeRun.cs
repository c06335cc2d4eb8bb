using System.Globalization;
using System.Reflection;
using BenchmarkDotNet.Attributes;

namespace SpanRater.Benchmarks;

/// <summary>Runs every benchmark method once at every size, so that a change that breaks or falsifies one is seen without measuring.</summary>
internal static class SmokeRun
{
    /// <summary>Prints one line; 0 when exact search and baseline agree at every size, else 1.</summary>
    internal static int Run()
    {
        int runs = 0;
        foreach (Type type in typeof(SmokeRun).Assembly.GetTypes().Where(t => t is { IsClass: true, IsAbstract: false } && t.IsAssignableTo(typeof(IHeldAgainstBruteForce))))
        {
            MethodInfo[] methods = [.. type.GetMethods().Where(m => m.IsDefined(typeof(BenchmarkAttribute)))];
            foreach (IHeldAgainstBruteForce benchmarks in AtEverySize(type))
            {
                benchmarks.SetUp();
                foreach (MethodInfo method in methods)
                {
                    method.Invoke(benchmarks, null);
                    runs++;
                }

                if (benchmarks.Disagreement() is { } disagreement)
                {
                    Console.WriteLine($"{type.Name}: exact search and sweep disagree: {disagreement}.");
                    return 1;
                }
            }
        }

        if (runs == 0)
        {
            Console.WriteLine("No benchmark method was found.");
            return 1;
        }

        Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{runs} benchmark runs; exact search and sweep agree at every size."));
        return 0;
    }

    /// <summary>The benchmarks of a class, once for every combination of its sizes.</summary>
    internal static IEnumerable<IHeldAgainstBruteForce> AtEverySize(Type type)
    {
        PropertyInfo[] sizes = [.. type.GetProperties().Where(p => p.IsDefined(typeof(ParamsAttribute)))];
        IEnumerable<object[]> combinations = [[]];
        foreach (PropertyInfo size in sizes)
        {
            combinations = [.. combinations.SelectMany(c => size.GetCustomAttribute<ParamsAttribute>()!.Values.Select(v => (object[])[.. c, v!]))];
        }

        foreach (object[] combination in combinations)
        {
            object benchmarks = Activator.CreateInstance(type)!;
            for (int s = 0; s < sizes.Length; s++)
            {
                sizes[s].SetValue(benchmarks, combination[s]);
            }

            yield return (IHeldAgainstBruteForce)benchmarks;
        }
    }
}
