namespace SpanRater.Files;

/// <summary>How far the reading of a traffic record has come.</summary>
/// <param name="Rows">Rows read, rejected ones among them.</param>
/// <param name="Bytes">Bytes read.</param>
/// <param name="AllBytes">Bytes of the file.</param>
public readonly record struct TrafficProgress(long Rows, long Bytes, long AllBytes);

/// <summary>What a traffic record gave on a bridge.</summary>
/// <param name="File">Name of the file.</param>
/// <param name="Tally">What was counted.</param>
/// <param name="Rejected">Rows that were not counted.</param>
/// <param name="Unlikely">Rows that were counted and are unlikely.</param>
/// <param name="OutOfOrder">Counted rows whose time is before that of the one before.</param>
/// <param name="FirstOutOfOrder">Line of the first of those; null where there is none.</param>
/// <param name="Further">Names of the columns beyond time, loads and spacings.</param>
public sealed record TrafficReading(string File, TrafficTally Tally, RemarkedRows Rejected, RemarkedRows Unlikely, long OutOfOrder, long? FirstOutOfOrder, IReadOnlyList<string> Further)
{
    /// <summary>Rows read: those counted and those rejected.</summary>
    public long Rows => Tally.Trucks + Rejected.Count;
}
