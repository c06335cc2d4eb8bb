namespace SpanRater;

/// <summary>What came of a rating.</summary>
public enum RatingStatus
{
    /// <summary>There is a factor.</summary>
    Rated,

    /// <summary>The dead load alone uses up the capacity: the factor is 0.</summary>
    DeadExceeds,

    /// <summary>The vehicle has no effect in that sense: there is no factor, and none is infinite.</summary>
    NotLoaded,

    /// <summary>A datum is missing.</summary>
    NotRated,

    /// <summary>A member that only pulls has no compression rating.</summary>
    Slack,

    /// <summary>The truss cannot carry the vehicle at all, or no answer could be found.</summary>
    Withheld,
}
