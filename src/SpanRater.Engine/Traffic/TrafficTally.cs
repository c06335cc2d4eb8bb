namespace SpanRater;

/// <summary>
/// What was counted of recorded trucks: of each channel the largest value and the record that brought it, a histogram, and the largest of each day; of each effect how often it exceeded its
/// limit. A part of a record is counted by itself, and the parts are added up in the order of the record, so that sums do not depend on who counted what.
/// </summary>
public sealed class TrafficTally
{
    private readonly double[] perBin;
    private readonly double[] most;
    private readonly int[] mostRow;
    private readonly TrafficRecord?[] mostRecord;
    private readonly int[] limited;
    private readonly int[] limitedChannel;
    private readonly double[] limits;
    private readonly long[] over;
    private readonly int[] ranges;
    private readonly double[] cubes;
    private readonly SortedDictionary<int, DayMaxima> days = [];
    private long[] bins;
    private int stride = 128;
    private DayMaxima? today;
    private int todayIs;

    /// <summary>An empty tally.</summary>
    /// <param name="plan">What is counted.</param>
    public TrafficTally(TrafficPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        Plan = plan;
        int channels = plan.Channels.Count;
        perBin = [.. plan.Channels.Select(c => 1 / c.BinWidth)];
        most = new double[channels];
        mostRow = new int[channels];
        mostRecord = new TrafficRecord?[channels];
        limited = [.. Enumerable.Range(0, plan.Effects.Count).Where(e => plan.Effects[e].Limit is not null)];
        limitedChannel = [.. limited.Select(e => plan.Effects[e].Channel)];
        limits = [.. limited.Select(e => plan.Effects[e].Limit!.Value)];
        over = new long[limited.Length];
        ranges = [.. Enumerable.Range(0, channels).Where(c => plan.Channels[c].Value == CrossingValue.Range)];
        cubes = new double[ranges.Length];
        bins = new long[channels * stride];
    }

    /// <summary>What is counted.</summary>
    public TrafficPlan Plan { get; }

    /// <summary>Gross weights of the trucks.</summary>
    public GrossWeights Weights { get; } = new();

    /// <summary>Number of trucks.</summary>
    public long Trucks => Weights.Count;

    /// <summary>Days with trucks, in order, as day numbers of the proleptic Gregorian calendar from 0001-01-01.</summary>
    public IReadOnlyCollection<int> Days => days.Keys;

    /// <summary>Trucks of a day.</summary>
    /// <param name="day">A day with trucks.</param>
    public long TrucksOn(int day) => days[day].Trucks;

    /// <summary>Largest value of a channel [N or N·m]; 0 where there was none.</summary>
    /// <param name="channel">The channel.</param>
    public double Most(int channel) => most[channel];

    /// <summary>The record that brought it; of equal ones the first; null where no truck brought anything.</summary>
    /// <param name="channel">The channel.</param>
    public TrafficRecord? MostRecord(int channel) => mostRecord[channel];

    /// <summary>Largest value of a channel on a day [N or N·m].</summary>
    /// <param name="day">A day with trucks.</param>
    /// <param name="channel">The channel.</param>
    public double MostOn(int day, int channel) => days[day].Most[channel];

    /// <summary>Whether a truck marked as unlikely brought that; of equal ones the first counts.</summary>
    /// <param name="day">A day with trucks.</param>
    /// <param name="channel">The channel.</param>
    public bool IsUnlikelyOn(int day, int channel) => days[day].IsUnlikely(channel);

    /// <summary>Trucks by bin of a channel's histogram; the last one is the highest that holds any.</summary>
    /// <param name="channel">The channel.</param>
    public IReadOnlyList<long> Histogram(int channel)
    {
        ReadOnlySpan<long> row = bins.AsSpan(channel * stride, stride);
        return row[..(row.LastIndexOfAnyExcept(0L) + 1)].ToArray();
    }

    /// <summary>Crossings in which dead load and live load with impact exceeded the capacity of an effect; null where one of them is not known.</summary>
    /// <param name="effect">Place of the effect in the plan.</param>
    public long? Over(int effect) => Array.BinarySearch(limited, effect) is >= 0 and int at ? over[at] : null;

    /// <summary>Sum of the cubes of the values of a range channel [N³].</summary>
    /// <param name="channel">The channel.</param>
    public double Cubes(int channel) => cubes[Array.BinarySearch(ranges, channel)];

    /// <summary>
    /// The value that a part of the crossings does not exceed, from the histogram: the upper edge of the bin in which the crossing of that rank is, so at most one bin above it,
    /// and never above the largest value [N or N·m].
    /// </summary>
    /// <param name="channel">The channel.</param>
    /// <param name="part">The part, above 0 and at most 1 [-].</param>
    public double Quantile(int channel, double part)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(part);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(part, 1);
        long rank = Math.Max(1, (long)Math.Ceiling((part * Trucks) - 1e-9)), below = 0;
        ReadOnlySpan<long> row = bins.AsSpan(channel * stride, stride);
        for (int b = 0; b < row.Length; b++)
        {
            below += row[b];
            if (below >= rank)
            {
                return Math.Min(most[channel], (b + 1) * Plan.Channels[channel].BinWidth);
            }
        }

        return most[channel];
    }

    /// <summary>Counts one crossing.</summary>
    /// <param name="values">Value of each channel, not negative [N or N·m].</param>
    /// <param name="gross">Gross weight of the truck [N].</param>
    /// <param name="day">Its day.</param>
    /// <param name="row">What its record is found by, once the part is counted.</param>
    /// <param name="isUnlikely">Whether it is marked as unlikely.</param>
    internal void Count(ReadOnlySpan<double> values, double gross, int day, int row, bool isUnlikely)
    {
        Weights.Add(gross);
        if (today is null || day != todayIs)
        {
            (today, todayIs) = (DayOf(day), day);
        }

        today.Trucks++;
        int needed = (int)(gross / TrafficChannel.BinWeight) + 3;
        if (needed > stride)
        {
            Widen(needed);
        }

        double[] ofDay = today.Most;
        for (int c = 0, at = 0; c < values.Length; c++, at += stride)
        {
            double value = values[c];
            bins[at + (int)(value * perBin[c])]++;
            if (value > ofDay[c])
            {
                // What beats the whole part beats its day as well.
                today.Set(c, value, isUnlikely);
                if (value > most[c])
                {
                    most[c] = value;
                    mostRow[c] = row;
                }
            }
        }

        for (int e = 0; e < limited.Length; e++)
        {
            if (values[limitedChannel[e]] > limits[e])
            {
                over[e]++;
            }
        }

        for (int r = 0; r < ranges.Length; r++)
        {
            double range = values[ranges[r]];
            cubes[r] += range * range * range;
        }
    }

    /// <summary>Names the records of the largest values, once a part is counted.</summary>
    /// <param name="recordOf">The record of a row.</param>
    public void NameRecords(Func<int, TrafficRecord> recordOf)
    {
        ArgumentNullException.ThrowIfNull(recordOf);
        var named = new Dictionary<int, TrafficRecord>();
        for (int c = 0; c < most.Length; c++)
        {
            if (most[c] > 0)
            {
                if (!named.TryGetValue(mostRow[c], out TrafficRecord? record))
                {
                    record = recordOf(mostRow[c]);
                    named.Add(mostRow[c], record);
                }

                mostRecord[c] = record;
            }
        }
    }

    /// <summary>Takes in the next part of the record, whose records are named.</summary>
    /// <param name="next">What was counted of it, by the same plan.</param>
    public void Add(TrafficTally next)
    {
        ArgumentNullException.ThrowIfNull(next);
        Weights.Add(next.Weights);
        if (next.stride > stride)
        {
            Widen(next.stride);
        }

        for (int c = 0; c < most.Length; c++)
        {
            Span<long> into = bins.AsSpan(c * stride, next.stride);
            ReadOnlySpan<long> from = next.bins.AsSpan(c * next.stride, next.stride);
            for (int b = 0; b < from.Length; b++)
            {
                into[b] += from[b];
            }

            if (next.most[c] > most[c])
            {
                (most[c], mostRecord[c]) = (next.most[c], next.mostRecord[c]);
            }
        }

        for (int e = 0; e < over.Length; e++)
        {
            over[e] += next.over[e];
        }

        for (int r = 0; r < cubes.Length; r++)
        {
            cubes[r] += next.cubes[r];
        }

        foreach ((int day, DayMaxima maxima) in next.days)
        {
            DayOf(day).Add(maxima);
        }
    }

    /// <summary>Empties it for another part.</summary>
    public void Clear()
    {
        Weights.Clear();
        Array.Clear(most);
        Array.Clear(mostRecord);
        Array.Clear(over);
        Array.Clear(cubes);
        Array.Clear(bins);
        days.Clear();
        today = null;
    }

    private DayMaxima DayOf(int day)
    {
        if (!days.TryGetValue(day, out DayMaxima? maxima))
        {
            maxima = new DayMaxima(most.Length);
            days.Add(day, maxima);
        }

        return maxima;
    }

    private void Widen(int needed)
    {
        int wide = stride;
        while (wide < needed)
        {
            wide *= 2;
        }

        var wider = new long[most.Length * wide];
        for (int c = 0; c < most.Length; c++)
        {
            bins.AsSpan(c * stride, stride).CopyTo(wider.AsSpan(c * wide));
        }

        (bins, stride) = (wider, wide);
    }
}
