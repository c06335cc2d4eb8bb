namespace SpanRater.Files;

/// <summary>The rows that are not counted: how many for each reason, and the first of each with its place and what is wrong with it.</summary>
public sealed class RejectedRows
{
    /// <summary>So many rows of each reason are told one by one.</summary>
    public const int Told = 5;

    private readonly long[] counts = new long[Enum.GetValues<RejectReason>().Length];
    private readonly List<Finding>[] first = [.. Enum.GetValues<RejectReason>().Select(_ => new List<Finding>())];

    /// <summary>How many there are.</summary>
    public long Count => counts.Sum();

    /// <summary>The reasons that there were, in the order of their kinds.</summary>
    public IEnumerable<RejectReason> Reasons => Enum.GetValues<RejectReason>().Where(r => counts[(int)r] > 0);

    /// <summary>Rows of a reason.</summary>
    /// <param name="reason">The reason.</param>
    public long Of(RejectReason reason) => counts[(int)reason];

    /// <summary>The first rows of a reason.</summary>
    /// <param name="reason">The reason.</param>
    public IReadOnlyList<Finding> First(RejectReason reason) => first[(int)reason];

    /// <summary>Counts a row.</summary>
    /// <param name="reason">The reason.</param>
    /// <returns>Whether it is to be told.</returns>
    internal bool Add(RejectReason reason)
    {
        counts[(int)reason]++;
        return first[(int)reason].Count < Told;
    }

    /// <summary>Tells a row.</summary>
    internal void Tell(RejectReason reason, Place where, string what) => first[(int)reason].Add(new Finding(FindingSeverity.Warning, where, what));

    /// <summary>Takes in those of the next part of the record.</summary>
    internal void Add(RejectedRows next)
    {
        for (int r = 0; r < counts.Length; r++)
        {
            counts[r] += next.counts[r];
            first[r].AddRange(next.first[r].Take(Told - first[r].Count));
        }
    }

    /// <summary>Empties it.</summary>
    internal void Clear()
    {
        Array.Clear(counts);
        foreach (List<Finding> each in first)
        {
            each.Clear();
        }
    }
}
