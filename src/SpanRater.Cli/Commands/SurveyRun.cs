using System.Collections.Concurrent;
using System.Globalization;
using System.Security.Cryptography;
using System.Text;
using SpanRater.Cli.Terminal;
using SpanRater.Files;
using SpanRater.Reports;

namespace SpanRater.Cli.Commands;

/// <summary>Rates the bridges of a survey, several at a time, each on its own: whatever is wrong with one, the others are rated.</summary>
internal sealed class SurveyRun
{
    private readonly SurveyAsked asked;
    private readonly SurveyStore? store;
    private readonly Surroundings surroundings;
    private readonly SurveyedInput[] catalogues;
    private readonly ConcurrentDictionary<string, bool> found = [];
    private int all;
    private int taken;
    private int kept;

    public SurveyRun(SurveyAsked asked, SurveyStore? store, Surroundings surroundings)
    {
        this.asked = asked;
        this.store = store;
        this.surroundings = surroundings;
        catalogues = [.. asked.Catalogues.SelectMany(c => InputFile.InCatalogue(c)).Select(f => new SurveyedInput(f.Name, f.Hash))];
    }

    /// <summary>How many bridges are kept in the folder, where any is, as a sentence: what an earlier run kept of bridges that this one did not come to is not counted.</summary>
    public string? Kept => store is not null && kept > 0
        ? string.Create(CultureInfo.InvariantCulture, $"{(store.HasMoreThan(kept) ? "At least " : "")}{kept} of {all} bridge{(all == 1 ? "" : "s")} {(kept == 1 ? "is" : "are")} kept: the same command goes on from {(kept == 1 ? "it" : "them")}.")
        : null;

    /// <summary>Every bridge, in the order of its folders.</summary>
    /// <param name="folders">The folders.</param>
    /// <param name="workers">How many are worked at a time.</param>
    /// <exception cref="OperationCanceledException">The user interrupted it.</exception>
    public SurveyedBridge[] Rate(BridgeFolders folders, int workers)
    {
        var bridges = new SurveyedBridge[all = folders.Found.Count];
        try
        {
            RateEach(folders, bridges, workers);
        }
        catch (OperationCanceledException) when (Kept is not null)
        {
            surroundings.Error.WriteLine($"survey: {Kept}");
            throw;
        }

        if (taken > 0)
        {
            surroundings.Error.WriteLine(string.Create(CultureInfo.InvariantCulture, $"survey: {taken} of {all} bridge{(all == 1 ? "" : "s")} {(taken == 1 ? "is" : "are")} taken over from an earlier run, since neither input nor vehicles nor program changed."));
        }

        return bridges;
    }

    private void RateEach(BridgeFolders folders, SurveyedBridge[] bridges, int workers)
    {
        using var progress = new ProgressLine(surroundings, bridges.Length);
        try
        {
            Parallel.For(0, bridges.Length, new ParallelOptions { MaxDegreeOfParallelism = workers, CancellationToken = surroundings.Stop }, i =>
            {
                bridges[i] = Rate(folders.Found[i].Path, folders.Found[i].Shown);
                progress.Step();
            });
        }
        catch (AggregateException) when (surroundings.Stop.IsCancellationRequested)
        {
            throw new OperationCanceledException(surroundings.Stop);
        }
        catch (AggregateException e) when (e.Flatten().InnerExceptions is [var first, ..])
        {
            // What stops the whole survey is that its own folder cannot be written.
            System.Runtime.ExceptionServices.ExceptionDispatchInfo.Throw(first);
        }
    }

    private SurveyedBridge Rate(string path, string shown)
    {
        SurveyedInput[] inputs = InputsOf(path);
        string? hash = inputs.Length == 0 ? null : HashOf(inputs);
        if (hash is not null && store?.Kept(hash, shown) is { } before)
        {
            // Of two folders with the same input the second has what this run found of the first.
            Interlocked.Add(ref taken, found.ContainsKey(hash) ? 0 : 1);
            Interlocked.Increment(ref kept);
            return before;
        }

        SurveyedBridge bridge;
        try
        {
            bridge = BridgeSurveyor.Rate(path, shown, asked, surroundings.Stop);
        }
        catch (Exception e) when (e is not (OutOfMemoryException or OperationCanceledException))
        {
            bridge = new SurveyedBridge
            {
                Folder = shown,
                Standing = SurveyStanding.NotRated,
                Why = $"A fault of the program itself, not of your input: {e.GetType().Name}: {e.Message} Please report it with this bridge.",
                IsFault = true,
            };
        }

        bridge = bridge with { Hash = hash, Inputs = inputs };
        if (hash is not null)
        {
            found[hash] = true;
        }

        if (store?.Keep(bridge) == true)
        {
            Interlocked.Increment(ref kept);
        }

        return bridge;
    }

    // Empty where a file cannot be read: such a bridge is refused, and never taken from an earlier run.
    private SurveyedInput[] InputsOf(string path)
    {
        try
        {
            return [.. InputFile.In(path, []).Select(f => new SurveyedInput(f.Name, f.Hash)), .. catalogues];
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return [];
        }
    }

    private static string HashOf(SurveyedInput[] inputs) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(string.Concat(inputs.Select(i => $"{i.Name}\0{i.Hash}\n")))));
}
