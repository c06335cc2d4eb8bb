namespace SpanRater;

/// <summary>
/// Gross weights of trucks, kept in narrow bins with their sums and sums of squares, so that mean and spread of the heaviest part follow in constant memory: exactly but for the bin that
/// the part cuts through, of which a part alike is taken.
/// </summary>
public sealed class GrossWeights
{
    /// <summary>Width of a bin, a tenth of a kip [N].</summary>
    public const double BinWidth = 444.82216152605;

    private long[] counts = new long[1024];
    private double[] sums = new double[1024];
    private double[] squares = new double[1024];

    /// <summary>Number of trucks.</summary>
    public long Count { get; private set; }

    /// <summary>Sum of their weights [N].</summary>
    public double Sum { get; private set; }

    /// <summary>Weight of the heaviest [N].</summary>
    public double Heaviest { get; private set; }

    /// <summary>Takes in a truck.</summary>
    /// <param name="gross">Its gross weight, positive [N].</param>
    public void Add(double gross)
    {
        int bin = (int)(gross / BinWidth);
        Reserve(bin + 1);
        counts[bin]++;
        sums[bin] += gross;

        // About the lower edge of the bin, so that squares of large numbers do not swallow the spread.
        double within = gross - (bin * BinWidth);
        squares[bin] += within * within;
        Count++;
        Sum += gross;
        Heaviest = Math.Max(Heaviest, gross);
    }

    /// <summary>Takes in the trucks of a later part of the record.</summary>
    /// <param name="other">The later part.</param>
    public void Add(GrossWeights other)
    {
        ArgumentNullException.ThrowIfNull(other);
        Reserve(other.counts.Length);
        for (int b = 0; b < other.counts.Length; b++)
        {
            counts[b] += other.counts[b];
            sums[b] += other.sums[b];
            squares[b] += other.squares[b];
        }

        Count += other.Count;
        Sum += other.Sum;
        Heaviest = Math.Max(Heaviest, other.Heaviest);
    }

    /// <summary>Mean and standard deviation (of a sample) of the heaviest part of the trucks [N]; null where that part holds fewer than two.</summary>
    /// <param name="part">The part, above 0 and at most 1 [-].</param>
    public (double Mean, double Deviation, double Trucks)? HeaviestPart(double part)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(part);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(part, 1);
        double wanted = Math.Round(part * Count), left = wanted, sum = 0;
        if (wanted < 2)
        {
            return null;
        }

        var taken = new List<(int Bin, double Part)>();
        for (int b = counts.Length - 1; b >= 0 && left > 0; b--)
        {
            if (counts[b] > 0)
            {
                double of = Math.Min(1, left / counts[b]);
                taken.Add((b, of));
                sum += of * sums[b];
                left -= of * counts[b];
            }
        }

        double mean = sum / wanted, spread = 0;
        foreach ((int b, double of) in taken)
        {
            // Sum of (x − mean)² from the sums about the lower edge.
            double edge = b * BinWidth, away = edge - mean, within = sums[b] - (counts[b] * edge);
            spread += of * (squares[b] + (2 * away * within) + (counts[b] * away * away));
        }

        return (mean, Math.Sqrt(Math.Max(0, spread / (wanted - 1))), wanted);
    }

    /// <summary>Empties it.</summary>
    internal void Clear()
    {
        Array.Clear(counts);
        Array.Clear(sums);
        Array.Clear(squares);
        (Count, Sum, Heaviest) = (0, 0, 0);
    }

    private void Reserve(int bins)
    {
        if (bins > counts.Length)
        {
            int size = Math.Max(bins, 2 * counts.Length);
            Array.Resize(ref counts, size);
            Array.Resize(ref sums, size);
            Array.Resize(ref squares, size);
        }
    }
}
