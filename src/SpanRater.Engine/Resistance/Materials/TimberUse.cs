namespace SpanRater;

/// <summary>How long a load lasts over the life of the bridge, the longest that counts fully.</summary>
public enum LoadDuration
{
    /// <summary>Permanent, as dead load alone.</summary>
    Permanent,

    /// <summary>Ten years in sum.</summary>
    TenYears,

    /// <summary>Two months in sum.</summary>
    TwoMonths,

    /// <summary>Seven days in sum.</summary>
    SevenDays,

    /// <summary>Ten minutes in sum.</summary>
    TenMinutes,

    /// <summary>A blow.</summary>
    Impact,
}

/// <summary>How a timber is used. Each of it is given by the user.</summary>
/// <param name="IsWet">Whether it is wet in service, as weathered timber of bridges is.</param>
/// <param name="Duration">How long the load lasts, for allowable stresses.</param>
/// <param name="IsRepetitive">Whether three or more alike and close act together.</param>
public sealed record TimberUse(bool IsWet, LoadDuration Duration, bool IsRepetitive = false);
