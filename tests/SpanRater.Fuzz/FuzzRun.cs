using System.Diagnostics;
using System.Globalization;
using SpanRater.Cli;

namespace SpanRater.Fuzz;

/// <summary>A long run: many inputs, several at a time, each within a time limit; faults are told as they are met.</summary>
/// <param name="options">What is asked for.</param>
/// <param name="output">Takes progress and faults.</param>
public sealed class FuzzRun(FuzzOptions options, TextWriter output)
{
    private readonly Lock gate = new();
    private readonly Dictionary<string, long> counts = [];
    private readonly Dictionary<string, int> faults = [];
    private long done;

    /// <summary>Runs. 0 where no fault was found, 1 otherwise.</summary>
    public int Run()
    {
        string exercise = Path.Combine(Path.GetTempPath(), "span-fuzz-exercise-" + Guid.NewGuid().ToString("N"));
        CommandLineProgram.Run(["exercise", "--form", "pratt", "--seed", "3", "--out", exercise], new Surroundings(Stream.Null, TextWriter.Null, null, Colour: false));
        IReadOnlyList<StartingPoint> points = StartingPoint.All(options.Root, exercise);
        var clock = Stopwatch.StartNew();
        var workers = new List<Thread>();
        for (int w = 0; w < options.Workers; w++)
        {
            int first = w;
            var worker = new Thread(() => Work(points, first), 16 * 1024 * 1024);
            worker.Start();
            workers.Add(worker);
        }

        while (workers.Exists(w => w.IsAlive))
        {
            workers.ForEach(w => w.Join(TimeSpan.FromSeconds(10)));
            Tell(clock);
        }

        Directory.Delete(exercise, recursive: true);
        return faults.Count == 0 ? 0 : 1;
    }

    private void Work(IReadOnlyList<StartingPoint> points, int first)
    {
        CultureInfo.CurrentCulture = CultureInfo.InvariantCulture;
        var maker = new InputMaker(points, options.Seed);
        using var trial = new Trial();
        for (long n = options.First + first; n < options.First + options.Count; n += options.Workers)
        {
            SpoiledInput input = maker.Make(n);
            // Measured by what the process computed, so that a machine that halts it, or does other work, brings no fault about.
            using var stop = new CancellationTokenSource();
            double before = Computed();
            bool tooLong = false;
            using var watch = new Timer(
                _ =>
                {
                    double taken = (Computed() - before) / options.Workers;
                    tooLong |= taken > options.Limit;
                    if (tooLong && !stop.IsCancellationRequested)
                    {
                        stop.Cancel();
                    }
                    else if (taken > 3 * options.Limit)
                    {
                        Say(input, "hangs: it does not end though it is told to", null);
                    }
                },
                null,
                TimeSpan.FromSeconds(5),
                TimeSpan.FromSeconds(5));
            TrialOutcome outcome = trial.Of(input, stop.Token);
            lock (gate)
            {
                done++;
                Count($"{input.Start.Kind}{(outcome.WasAccepted ? " taken" : " refused")}");
                if (outcome.Command is { } command)
                {
                    Count($"command ended with {outcome.Status}");
                    Count($"command {command[0]}");
                }
            }

            if (tooLong)
            {
                Say(input, "took longer than the limit", outcome.Command);
            }
            else if (outcome.Fault is { } fault)
            {
                Say(input, fault, outcome.Command);
            }
        }
    }

    // Seconds that all processors together gave to this process.
    private static double Computed() => Environment.CpuUsage.TotalTime.TotalSeconds;

    private void Count(string what) => counts[what] = counts.GetValueOrDefault(what) + 1;

    private void Say(SpoiledInput input, string fault, IReadOnlyList<string>? command)
    {
        lock (gate)
        {
            // Faults of one cause come in hundreds: the first three of a kind are told.
            string kind = string.Concat(fault.Split('\n').Where(l => !l.Contains(" at Tomlyn", StringComparison.Ordinal)).Take(4).Select(l => string.Concat(l.Where(c => !char.IsAsciiDigit(c)).Take(120))));
            faults[kind] = faults.GetValueOrDefault(kind) + 1;
            if (faults[kind] > 3)
            {
                return;
            }

            output.WriteLine(string.Create(CultureInfo.InvariantCulture, $"FAULT seed {options.Seed}, input {input.Number}, from {input.Start.Name}, files {string.Join(' ', input.Files.Keys)}, command {string.Join(' ', command ?? [])}\n{string.Join('\n', fault.Split('\n').Take(14))}\n"));
            output.Flush();
            if (options.Keep is { } keep)
            {
                string folder = Path.Combine(keep, string.Create(CultureInfo.InvariantCulture, $"{options.Seed}-{input.Number}"));
                Directory.CreateDirectory(folder);
                foreach ((string name, byte[] bytes) in input.Start.Files)
                {
                    File.WriteAllBytes(Path.Combine(folder, name), input.Files.GetValueOrDefault(name, bytes));
                }
            }
        }
    }

    private void Tell(Stopwatch clock)
    {
        lock (gate)
        {
            output.WriteLine(string.Create(
                CultureInfo.InvariantCulture,
                $"{DateTime.UtcNow:yyyy-MM-dd HH:mm:ss} UTC: seed {options.Seed}, {done} inputs in {clock.Elapsed.TotalSeconds:0} s, {faults.Values.Sum()} at fault of {faults.Count} kinds; {string.Join(", ", counts.OrderBy(c => c.Key, StringComparer.Ordinal).Select(c => $"{c.Key} {c.Value}"))}"));
            output.Flush();
        }
    }
}
