using SpanRater.Files;

namespace SpanRater.Pictures;

/// <summary>The bands into which a rating picture sorts members.</summary>
internal enum RatingBand
{
    /// <summary>The lowest factor is below 1.</summary>
    Below,

    /// <summary>The lowest factor is from 1 up to 1.5.</summary>
    Near,

    /// <summary>The lowest factor is 1.5 or more.</summary>
    Above,

    /// <summary>Something is missing, so that there is no factor.</summary>
    NotRated,

    /// <summary>No vehicle brings a force.</summary>
    NotLoaded,
}

/// <summary>What a rating picture says of one member or part.</summary>
/// <param name="Band">Its band.</param>
/// <param name="Lowest">Its lowest row; null where none may govern.</param>
/// <param name="AlsoNotRated">True when it has a factor, but other rows of it are not rated.</param>
/// <param name="Withheld">True when it has no factor since a rod goes slack under a vehicle.</param>
internal sealed record MemberVerdict(RatingBand Band, RatingRow? Lowest, bool AlsoNotRated, bool Withheld = false)
{
    /// <summary>What is written at the member.</summary>
    public string Words => Band switch
    {
        RatingBand.NotRated => Withheld ? "withheld" : "not rated",
        RatingBand.NotLoaded => "no live force",
        _ => Figures.Factor(Lowest!.Factor!.Value),
    };

    /// <summary>The verdicts on all members, in the order of the truss.</summary>
    /// <param name="rating">The rating.</param>
    public static IReadOnlyList<MemberVerdict> Of(BridgeRating rating)
    {
        IReadOnlyList<MemberRow?> lowest = rating.LowestByMember();
        return [.. Enumerable.Range(0, lowest.Count).Select(m => Of(rating, m, lowest[m]))];
    }

    /// <summary>The verdicts on all parts of the floor and connections, with their names, the lowest first.</summary>
    /// <param name="rating">The rating.</param>
    public static IReadOnlyList<(string Name, MemberVerdict Verdict)> OfParts(BridgeRating rating) =>
    [
        .. rating.PartRows.GroupBy(r => (r.Part, r.Name)).Select(g =>
            (RatingWording.NameAt(g.FirstOrDefault(rating.MayGovern) ?? g.First()), Of([.. g], g.FirstOrDefault(rating.MayGovern)))),
    ];

    /// <summary>How a band is drawn; each differs in weight and dash, not in colour alone.</summary>
    /// <param name="band">The band.</param>
    public static LineStyle StyleOf(RatingBand band) => band switch
    {
        RatingBand.Below => new(Ink.Alarm, 7),
        RatingBand.Near => new(Ink.Compression, 4.5, Dash.Dashed),
        RatingBand.Above => new(Ink.Tension, 2.2),
        RatingBand.NotRated => new(Ink.Black, 2.4, Dash.Dotted),
        _ => new(Ink.Grey, 1.8, Dash.DashDot),
    };

    private static MemberVerdict Of(BridgeRating rating, int member, MemberRow? lowest) => Of([.. rating.MemberRows.Where(r => r.MemberIndex == member)], lowest);

    private static MemberVerdict Of(RatingRow[] rows, RatingRow? lowest)
    {
        // A vehicle that is not rated at all says nothing about a member, unless no vehicle is.
        bool missing = rows.Any(r => r.Status is RatingStatus.NotRated or RatingStatus.Withheld && !r.IsAboutItsVehicle) || rows.All(r => r.IsAboutItsVehicle);
        return lowest?.Factor switch
        {
            null when rows.Any(r => r.Status == RatingStatus.Withheld) => new MemberVerdict(RatingBand.NotRated, null, false, Withheld: true),
            null => new MemberVerdict(missing ? RatingBand.NotRated : RatingBand.NotLoaded, null, false),
            < 1 => new MemberVerdict(RatingBand.Below, lowest, missing),
            < 1.5 => new MemberVerdict(RatingBand.Near, lowest, missing),
            _ => new MemberVerdict(RatingBand.Above, lowest, missing),
        };
    }
}
