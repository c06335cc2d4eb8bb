namespace SpanRater.Files;

/// <summary>Why a row of a traffic record is not counted.</summary>
public enum RejectReason
{
    /// <summary>It is counted.</summary>
    None,

    /// <summary>It has more cells than the header, or its quotes do not pair.</summary>
    Cells,

    /// <summary>Its time is missing or cannot be read.</summary>
    Time,

    /// <summary>It has no axle loads.</summary>
    NoLoads,

    /// <summary>An axle load or a spacing is no number.</summary>
    Number,

    /// <summary>An axle load or a spacing is not above zero.</summary>
    NotPositive,

    /// <summary>It has several axles and no spacings.</summary>
    NoSpacings,

    /// <summary>Its spacings are not one less than its axles.</summary>
    SpacingCount,

    /// <summary>It has more axles than any vehicle.</summary>
    TooManyAxles,

    /// <summary>An axle is heavier, or the truck lighter, than can be.</summary>
    UnlikelyLoad,

    /// <summary>Axles stand closer together, or farther apart, than can be.</summary>
    UnlikelySpacing,
}
