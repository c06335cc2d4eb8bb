using System.Globalization;

namespace SpanRater.Fuzz;

/// <summary>What a long run is asked for.</summary>
/// <param name="Root">The root of the repository, where the starting points are.</param>
/// <param name="Seed">The seed of the run.</param>
/// <param name="First">Number of the first input.</param>
/// <param name="Count">How many inputs are tried.</param>
/// <param name="Workers">How many are tried at the same time.</param>
/// <param name="Limit">Seconds that one input may take before it is a fault [s].</param>
/// <param name="Keep">A folder that takes the files of every input at fault; null for none.</param>
public sealed record FuzzOptions(string Root, int Seed, long First, long Count, int Workers, double Limit, string? Keep)
{
    /// <summary>How it is called.</summary>
    public const string Usage = "SpanRater.Fuzz kill N, or SpanRater.Fuzz [--seed N] [--first N] [--count N] [--workers N] [--limit SECONDS] [--keep FOLDER] [--root FOLDER]";

    /// <summary>Reads the command line; null with what is wrong with it.</summary>
    /// <param name="args">Options and values.</param>
    public static (FuzzOptions? Options, string? Wrong) Read(IReadOnlyList<string> args)
    {
        ArgumentNullException.ThrowIfNull(args);
        var options = new FuzzOptions(Directory.GetCurrentDirectory(), 1, 0, 10_000, 1, 60, null);
        for (int i = 0; i < args.Count; i += 2)
        {
            if (i + 1 == args.Count)
            {
                return (null, $"{args[i]} has no value. {Usage}");
            }

            string value = args[i + 1];
            bool isNumber = long.TryParse(value, NumberStyles.None, CultureInfo.InvariantCulture, out long number);
            FuzzOptions? next = args[i] switch
            {
                "--seed" when isNumber => options with { Seed = (int)number },
                "--first" when isNumber => options with { First = number },
                "--count" when isNumber => options with { Count = number },
                "--workers" when isNumber && number > 0 => options with { Workers = (int)number },
                "--limit" when isNumber && number > 0 => options with { Limit = number },
                "--keep" => options with { Keep = value },
                "--root" => options with { Root = value },
                _ => null,
            };
            if (next is null)
            {
                return (null, $"{args[i]} {value}: not understood. {Usage}");
            }

            options = next;
        }

        return (options, null);
    }
}
