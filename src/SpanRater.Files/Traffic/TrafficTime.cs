namespace SpanRater.Files;

/// <summary>Reads the time of a record: an ISO 8601 date and time, with or without a zone, such as 2026-05-01T07:32:10 or 2026-05-01 07:32:10.5+02:00.</summary>
internal static class TrafficTime
{
    /// <summary>The first and the last year that a record can be of: a wrong century makes no day of its own.</summary>
    public const int FirstYear = 1950, LastYear = 2150;

    private const int DateLength = 10, ShortestTime = 5;

    /// <summary>Reads a time.</summary>
    /// <param name="text">The text, without surrounding space.</param>
    /// <param name="day">Day number of the date as written.</param>
    /// <param name="ticks">Ticks for the order of records: in universal time where there is a zone, else as written.</param>
    /// <returns>False where it cannot be read.</returns>
    public static bool TryRead(ReadOnlySpan<byte> text, out int day, out long ticks)
    {
        (day, ticks) = (0, 0);
        if (text.Length < DateLength + 1 + ShortestTime || text[4] != '-' || text[7] != '-' || text[10] is not ((byte)'T' or (byte)'t' or (byte)' ')
            || !Digits(text[..4], out int year) || !Digits(text[5..7], out int month) || !Digits(text[8..10], out int date)
            || year is < FirstYear or > LastYear || month is < 1 or > 12 || date < 1 || date > DateTime.DaysInMonth(year, month))
        {
            return false;
        }

        ReadOnlySpan<byte> time = text[(DateLength + 1)..];
        if (time[2] != ':' || !Digits(time[..2], out int hour) || !Digits(time[3..5], out int minute) || hour > 23 || minute > 59)
        {
            return false;
        }

        time = time[ShortestTime..];
        int second = 0;
        long part = 0;
        if (time.Length > 0 && time[0] == ':')
        {
            if (time.Length < 3 || !Digits(time[1..3], out second) || second > 59)
            {
                return false;
            }

            time = time[3..];
            if (time.Length > 0 && time[0] is (byte)'.' or (byte)',' && !Fraction(ref time, out part))
            {
                return false;
            }
        }

        if (!Zone(time, out int offset))
        {
            return false;
        }

        var written = new DateTime(year, month, date, hour, minute, second);
        day = DateOnly.FromDateTime(written).DayNumber;
        ticks = written.Ticks + part - (offset * TimeSpan.TicksPerMinute);
        return true;
    }

    private static bool Fraction(ref ReadOnlySpan<byte> time, out long part)
    {
        part = 0;
        int end = 1;
        long worth = TimeSpan.TicksPerSecond / 10;
        for (; end < time.Length && time[end] is >= (byte)'0' and <= (byte)'9'; end++)
        {
            part += (time[end] - '0') * worth;
            worth /= 10;
        }

        time = time[end..];
        return end > 1;
    }

    // Nothing, Z, +02:00, +0200 or +02: minutes ahead of universal time.
    private static bool Zone(ReadOnlySpan<byte> text, out int offset)
    {
        offset = 0;
        if (text.IsEmpty || (text.Length == 1 && text[0] is (byte)'Z' or (byte)'z'))
        {
            return true;
        }

        int minutes = 0;
        if (text[0] is not ((byte)'+' or (byte)'-') || text.Length is not (3 or 5 or 6) || !Digits(text[1..3], out int hours)
            || (text.Length == 5 && !Digits(text[3..5], out minutes)) || (text.Length == 6 && (text[3] != ':' || !Digits(text[4..6], out minutes))) || hours > 14 || minutes > 59)
        {
            return false;
        }

        offset = (text[0] == '-' ? -1 : 1) * ((60 * hours) + minutes);
        return true;
    }

    private static bool Digits(ReadOnlySpan<byte> text, out int value)
    {
        value = 0;
        foreach (byte b in text)
        {
            if (b is < (byte)'0' or > (byte)'9')
            {
                return false;
            }

            value = (10 * value) + (b - '0');
        }

        return true;
    }
}
