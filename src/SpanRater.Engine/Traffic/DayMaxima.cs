namespace SpanRater;

/// <summary>The largest values of each channel on one day.</summary>
/// <param name="channels">Number of channels.</param>
internal sealed class DayMaxima(int channels)
{
    /// <summary>Largest value by channel [N or N·m].</summary>
    public double[] Most { get; } = new double[channels];

    /// <summary>Trucks of the day.</summary>
    public long Trucks { get; set; }

    /// <summary>Takes in a later part of the same day.</summary>
    public void Add(DayMaxima other)
    {
        Trucks += other.Trucks;
        for (int c = 0; c < Most.Length; c++)
        {
            Most[c] = Math.Max(Most[c], other.Most[c]);
        }
    }
}
