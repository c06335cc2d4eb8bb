namespace SpanRater.Files;

/// <summary>Rows of which something is remarked: how many for each remark, and the first of each with its place and what is wrong with it.</summary>
public sealed class RemarkedRows
{
    /// <summary>So many rows of each remark are told one by one.</summary>
    public const int Told = 5;

    private readonly long[] counts = new long[Enum.GetValues<RowRemark>().Length];
    private readonly List<Finding>[] first = [.. Enum.GetValues<RowRemark>().Select(_ => new List<Finding>())];

    /// <summary>How many there are.</summary>
    public long Count => counts.Sum();

    /// <summary>The remarks that there were, in the order of their kinds.</summary>
    public IEnumerable<RowRemark> Remarks => Enum.GetValues<RowRemark>().Where(r => counts[(int)r] > 0);

    /// <summary>Rows of a remark.</summary>
    /// <param name="remark">The remark.</param>
    public long Of(RowRemark remark) => counts[(int)remark];

    /// <summary>The first rows of a remark.</summary>
    /// <param name="remark">The remark.</param>
    public IReadOnlyList<Finding> First(RowRemark remark) => first[(int)remark];

    /// <summary>Counts a row.</summary>
    /// <param name="remark">The remark.</param>
    /// <returns>Whether it is to be told.</returns>
    internal bool Add(RowRemark remark)
    {
        counts[(int)remark]++;
        return first[(int)remark].Count < Told;
    }

    /// <summary>Tells a row.</summary>
    internal void Tell(RowRemark remark, Place where, string what) => first[(int)remark].Add(new Finding(FindingSeverity.Warning, where, what));

    /// <summary>Takes in those of the next part of the record.</summary>
    internal void Add(RemarkedRows next)
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
