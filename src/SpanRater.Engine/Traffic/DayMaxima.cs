namespace SpanRater;

/// <summary>The largest values of each channel on one day.</summary>
/// <param name="channels">Number of channels.</param>
internal sealed class DayMaxima(int channels)
{
    private bool[]? unlikely;

    /// <summary>Largest value by channel [N or N·m].</summary>
    public double[] Most { get; } = new double[channels];

    /// <summary>Trucks of the day.</summary>
    public long Trucks { get; set; }

    /// <summary>Whether a truck marked as unlikely brought the largest value of a channel.</summary>
    public bool IsUnlikely(int channel) => unlikely?[channel] ?? false;

    /// <summary>Takes a value that is larger than all before.</summary>
    public void Set(int channel, double value, bool isUnlikely)
    {
        Most[channel] = value;
        if (isUnlikely)
        {
            unlikely ??= new bool[Most.Length];
        }

        if (unlikely is not null)
        {
            unlikely[channel] = isUnlikely;
        }
    }

    /// <summary>Takes in a later part of the same day.</summary>
    public void Add(DayMaxima other)
    {
        Trucks += other.Trucks;
        for (int c = 0; c < Most.Length; c++)
        {
            if (other.Most[c] > Most[c])
            {
                Set(c, other.Most[c], other.IsUnlikely(c));
            }
        }
    }
}
