using System.Runtime.ExceptionServices;
using CsCheck;

namespace SpanRater.Tests;

/// <summary>
/// Random cases that are the same in every run. CsCheck holds only the first case of a sample to its seed, so each case
/// here is a sample of one with a seed of its own, which a failure prints.
/// </summary>
internal static class SeededCases
{
    /// <summary>The seed from which the seeds of all cases follow.</summary>
    internal const ulong Seed = 1908;

    /// <summary>Checks an assertion on cases drawn from a generator.</summary>
    internal static void Check<T>(Gen<T> cases, int count, Action<T> assertion)
    {
        Print(count);
        for (int i = 0; i < count; i++)
        {
            Exception? failure = null;
            string seed = SeedOf(i);
            cases.Sample(value => failure = Record.Exception(() => assertion(value)), seed: seed, iter: 1, threads: 1);
            Fail(failure, i, seed);
        }
    }

    /// <summary>Checks an assertion on values made beforehand, one a seed.</summary>
    internal static void CheckEach<T>(IReadOnlyList<T> values, Action<T> assertion)
    {
        Print(values.Count);
        for (int i = 0; i < values.Count; i++)
        {
            Fail(Record.Exception(() => assertion(values[i])), i, SeedOf(i));
        }
    }

    /// <summary>The values that a generator gives for the first seeds.</summary>
    internal static T[] Draw<T>(Gen<T> values, int count)
    {
        var drawn = new T[count];
        for (int i = 0; i < count; i++)
        {
            values.Sample(value => { drawn[i] = value; }, seed: SeedOf(i), iter: 1, threads: 1);
        }

        return drawn;
    }

    private static string SeedOf(int number) => new PCG((uint)number, Seed).ToString();

    private static void Print(int count) =>
        TestContext.Current.TestOutputHelper?.WriteLine($"{count} cases from seed {Seed}; CsCheck seed of the first: {SeedOf(0)}");

    private static void Fail(Exception? failure, int number, string seed)
    {
        if (failure is not null)
        {
            TestContext.Current.TestOutputHelper?.WriteLine($"Case {number} fails; CsCheck seed {seed}.");
            ExceptionDispatchInfo.Throw(failure);
        }
    }
}
