namespace SpanRater;

/// <summary>The level at which stresses are allowable.</summary>
public enum AllowableLevel
{
    /// <summary>For regular use over time.</summary>
    Inventory,

    /// <summary>The most that may be allowed at all.</summary>
    Operating,
}
