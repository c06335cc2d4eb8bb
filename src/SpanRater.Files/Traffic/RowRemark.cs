namespace SpanRater.Files;

/// <summary>What is remarked of a row of a traffic record: why it is not counted, or what is unlikely about the truck although it is.</summary>
public enum RowRemark
{
    /// <summary>Nothing: it is counted.</summary>
    None,

    /// <summary>Not counted: it has more cells than the header, or its quotes do not pair.</summary>
    Cells,

    /// <summary>Not counted: its time is missing or cannot be read.</summary>
    Time,

    /// <summary>Not counted: it has no axle loads.</summary>
    NoLoads,

    /// <summary>Not counted: an axle load or a spacing is no number.</summary>
    Number,

    /// <summary>Not counted: an axle load or a spacing is not above zero.</summary>
    NotPositive,

    /// <summary>Not counted: it has several axles and no spacings.</summary>
    NoSpacings,

    /// <summary>Not counted: its spacings are not one less than its axles.</summary>
    SpacingCount,

    /// <summary>Not counted: it has more axles than are read.</summary>
    TooManyAxles,

    /// <summary>Not counted: an axle or the truck is heavier, or the truck lighter, than can be.</summary>
    ImpossibleLoad,

    /// <summary>Not counted: axles stand closer together, or farther apart, than can be.</summary>
    ImpossibleSpacing,

    /// <summary>Counted, and unlikely: an axle is heavier than those of all but the rarest transports.</summary>
    HeavyAxle,

    /// <summary>Counted, and unlikely: axles stand farther apart than those of all but the rarest transports.</summary>
    LongSpacing,
}

/// <summary>Whether rows count.</summary>
public static class RowRemarks
{
    /// <summary>Whether a row of which this is remarked counts.</summary>
    /// <param name="remark">The remark.</param>
    public static bool Counts(this RowRemark remark) => remark is RowRemark.None or RowRemark.HeavyAxle or RowRemark.LongSpacing;
}
