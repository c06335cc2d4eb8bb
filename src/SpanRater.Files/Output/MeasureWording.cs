namespace SpanRater.Files;

/// <summary>Names what was read on a member, and what must remain of it.</summary>
public static class MeasureWording
{
    /// <summary>The member, the dimension that was read, and where.</summary>
    /// <param name="reading">The reading.</param>
    public static string Where(DoubtfulReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        return $"{RatingWording.Member(reading.Row)}, {What(reading.Reading)}";
    }

    /// <summary>The dimension that was read, and where on its member.</summary>
    /// <param name="reading">The reading.</param>
    public static string What(Reading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        Observation seen = reading.Seen;
        string what = seen switch
        {
            Observation.Remaining r => SectionWords.Of(r.Dimension),
            Observation.Hole => "hole",
            Observation.Decay => "decay",
            _ => "bow",
        };
        return $"{what}{(seen.Part.Length == 0 ? "" : $" of {seen.Part}")}{(seen.Place.Length == 0 ? "" : $", {seen.Place}")}";
    }

    /// <summary>The dimension that must remain, and of which part.</summary>
    /// <param name="needed">What must remain.</param>
    public static string What(NeededDimension needed)
    {
        ArgumentNullException.ThrowIfNull(needed);
        return $"{SectionWords.Of(needed.Dimension)} of {needed.Part}";
    }
}
