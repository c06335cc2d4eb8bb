namespace SpanRater.Files;

/// <summary>What a bridge of a survey asks for, the most urgent first.</summary>
public enum SurveyStanding
{
    /// <summary>A rating is withheld, the dead load alone uses up a capacity, or the bridge is under the line of 3 US tons.</summary>
    Urgent,

    /// <summary>A legal type or an emergency vehicle needs a posting.</summary>
    PostingNeeded,

    /// <summary>A factor is below 1 that no posting rule covers.</summary>
    BelowOne,

    /// <summary>No factor is below 1, and something that is needed is not rated: more data first.</summary>
    RatedInPart,

    /// <summary>No factor is below 1, and everything that a rating here can hold is rated.</summary>
    NoFactorBelowOne,

    /// <summary>Not rated: the folder is refused, the truss cannot be solved, or nothing has a factor.</summary>
    NotRated,
}
