namespace SpanRater;

/// <summary>The days of a record as blocks: the first and the last day, and a week that is not whole, are left out, since they may be cut short.</summary>
/// <param name="tally">What was counted.</param>
public sealed class BlockMaxima(TrafficTally tally)
{
    private const int DaysOfWeek = 7;

    private readonly int[] whole = [.. tally.Days.Skip(1).SkipLast(1)];

    /// <summary>Days from the first to the last, both counted, with trucks or without.</summary>
    public int DaysInAll { get; } = tally.Days.Count == 0 ? 0 : tally.Days.Last() - tally.Days.First() + 1;

    /// <summary>Days with trucks between the first and the last.</summary>
    public IReadOnlyList<int> Days => whole;

    /// <summary>Mondays of the weeks that have trucks on every day, the first and last day of the record not among them.</summary>
    public IReadOnlyList<int> Weeks { get; } =
    [
        .. tally.Days.Skip(1).SkipLast(1).GroupBy(d => d - (d % DaysOfWeek)).Where(g => g.Count() == DaysOfWeek).Select(g => g.Key),
    ];

    /// <summary>Whether weeks are the blocks: there are enough of them.</summary>
    public bool ByWeek => Weeks.Count >= GumbelFit.FewestBlocks;

    /// <summary>Blocks of a year [-].</summary>
    public double BlocksAYear => FatigueTraffic.DaysAYear / (ByWeek ? DaysOfWeek : 1);

    /// <summary>Number of blocks.</summary>
    public int Count => ByWeek ? Weeks.Count : whole.Length;

    /// <summary>Largest value of a channel in each block [N or N·m].</summary>
    /// <param name="channel">The channel.</param>
    public IReadOnlyList<double> Of(int channel) => ByWeek
        ? [.. Weeks.Select(w => Enumerable.Range(w, DaysOfWeek).Max(d => tally.MostOn(d, channel)))]
        : [.. whole.Select(d => tally.MostOn(d, channel))];

    /// <summary>Blocks whose largest value of a channel a truck marked as unlikely brought.</summary>
    /// <param name="channel">The channel.</param>
    public int UnlikelyOf(int channel) => ByWeek
        ? Weeks.Count(w => tally.IsUnlikelyOn(Enumerable.Range(w, DaysOfWeek).MaxBy(d => tally.MostOn(d, channel)), channel))
        : whole.Count(d => tally.IsUnlikelyOn(d, channel));
}
