using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>A rated bridge with its posting review: what the pack, the letter and the sign are all made of, so that no two of them can disagree.</summary>
/// <param name="Rating">The rating.</param>
/// <param name="Posting">The posting; null where no posting rule belongs to the method.</param>
/// <param name="Measure">What to measure next.</param>
/// <param name="Reading">What the folder gave.</param>
/// <param name="Inputs">The input files.</param>
/// <param name="Units">Units shown.</param>
/// <param name="Date">Date to print; null for none.</param>
/// <param name="Version">Version of the program.</param>
public sealed record ReviewedBridge(
    BridgeRating Rating, Posting? Posting, MeasureFirst Measure, BridgeReading Reading, IReadOnlyList<InputFile> Inputs, DisplayUnits Units, string? Date, string Version)
{
    /// <summary>Name of the bridge.</summary>
    public string Name => Rating.Bridge.Name;

    /// <summary>The face of the sign that the posting review leads to.</summary>
    public SignFace Sign => SignFace.Of(Rating, Posting);

    /// <summary>What is not rated and why, one line a reason.</summary>
    public IReadOnlyList<string> NotRated => NotRatedList.Lines(Rating.NotRated, Reading.OwnVehiclesNotAsked, Units);

    /// <summary>Which legal types and emergency vehicles were not asked for; null where all were.</summary>
    public string? NotCovered => Posting is not null && Reading.PostedKindsNotAsked is { Count: > 0 } kinds ? $"{PostingWording.NotCovered(kinds)}." : null;

    /// <summary>Whether vehicles are to be kept off until an engineer has decided: a rating is withheld or missing, or the bridge is under the closure line.</summary>
    public bool IsToBeKeptOff => Rating.Withheld.Any() || Posting is { Closure: true } || Rating.Governing is null or { Status: RatingStatus.DeadExceeds };

    /// <summary>Reviews a rating.</summary>
    /// <param name="rating">The rating.</param>
    /// <param name="reading">What the folder gave.</param>
    /// <param name="inputs">The input files.</param>
    /// <param name="units">Units to show.</param>
    /// <param name="date">Date to print; null for none.</param>
    /// <param name="version">Version of the program.</param>
    public static ReviewedBridge Of(BridgeRating rating, BridgeReading reading, IReadOnlyList<InputFile> inputs, DisplayUnits units, string? date, string version)
    {
        ArgumentNullException.ThrowIfNull(rating);
        return new(rating, rating.Method.HasPosting ? SpanRater.Posting.Of(rating) : null, MeasureFirst.Of(rating), reading, inputs, units, date, version);
    }
}
