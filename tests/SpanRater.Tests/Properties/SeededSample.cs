using System.Globalization;
using CsCheck;

namespace SpanRater.Tests.Properties;

/// <summary>
/// Runs a property over samples drawn one after another from one seed, so that every run of the suite sees the same
/// ones. A failure names the sample, its own seed and what it was.
/// </summary>
internal static class SeededSample
{
    public static void Run<T1, T2>(Gen<(T1, T2)> gen, string seed, int samples, Action<T1, T2> property) =>
        Run(gen, seed, samples, s => property(s.Item1, s.Item2));

    public static void Run<T1, T2, T3>(Gen<(T1, T2, T3)> gen, string seed, int samples, Action<T1, T2, T3> property) =>
        Run(gen, seed, samples, s => property(s.Item1, s.Item2, s.Item3));

    public static void Run<T>(Gen<T> gen, string seed, int samples, Action<T> property)
    {
        PCG random = PCG.Parse(seed);
        for (int i = 0; i < samples; i++)
        {
            string own = random.ToString();
            T sample = gen.Generate(random, null, out _);
            try
            {
                property(sample);
            }
            catch (Exception e)
            {
                string where = string.Create(CultureInfo.InvariantCulture, $"Sample {i} of seed {seed}, own seed {own}: {sample}");
                throw new Xunit.Sdk.XunitException(where + Environment.NewLine + e.Message, e);
            }
        }

        TestContext.Current.TestOutputHelper?.WriteLine($"Seed {seed}: {samples.ToString(CultureInfo.InvariantCulture)} samples.");
    }
}
