namespace SpanRater;

/// <summary>One recorded truck, as far as it is told again.</summary>
/// <param name="Line">Physical line of its record, from 1.</param>
/// <param name="Time">Its time, as recorded.</param>
/// <param name="Gross">Gross weight [N].</param>
/// <param name="Further">What its further columns hold, in their order.</param>
public sealed record TrafficRecord(long Line, string Time, double Gross, IReadOnlyList<string> Further)
{
    /// <summary>Whether the truck is marked as unlikely: counted, and to be checked.</summary>
    public bool IsUnlikely { get; init; }
}
