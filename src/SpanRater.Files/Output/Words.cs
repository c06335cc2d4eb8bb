namespace SpanRater.Files;

/// <summary>The words for senses, directions and statuses, and the caution that every rating carries.</summary>
public static class Words
{
    /// <summary>The caution that stands on every rating.</summary>
    public const string Caution =
        "An aid for qualified people, not a posting order: local codes and a licensed engineer decide.";

    /// <summary>What a rating of truss members leaves out.</summary>
    public const string TrussOnly =
        "Truss members only. Deck, stringers, floorbeams, hanger connections, pins, gussets and bearings are not rated here, and on old bridges they often govern.";

    /// <summary>What a rating without connections leaves out.</summary>
    public const string NoConnections =
        "Pins, gussets, the ends of floorbeams and stringers, and bearings are not rated here, and on old bridges they may govern.";

    /// <summary>What a rating with some connections leaves out.</summary>
    public const string OtherConnections =
        "Of the connections those that connections.csv gives are rated; all others, the ends of floorbeams and stringers, and bearings are not, and on old bridges they may govern.";

    /// <summary>What a rating without a floor leaves out.</summary>
    public const string NoFloor = "No floor. Deck, stringers, floorbeams and hanger connections are not rated here, and on old bridges they often govern.";

    /// <summary>tension or compression.</summary>
    /// <param name="sense">The sense.</param>
    public static string Of(Sense sense) => sense == Sense.Tension ? "tension" : "compression";

    /// <summary>right or left.</summary>
    /// <param name="direction">The direction.</param>
    public static string Of(Direction direction) => direction == Direction.Right ? "right" : "left";

    /// <summary>What is added to a station for a limit to one side of it; empty for the station itself.</summary>
    /// <param name="approach">The side.</param>
    public static string Of(Approach approach) => approach switch
    {
        Approach.JustLeft => "just left",
        Approach.JustRight => "just right",
        _ => "",
    };

    /// <summary>The riding surface, as bridge.toml has it.</summary>
    /// <param name="surface">The riding surface.</param>
    public static string Of(RidingSurface surface) => surface switch
    {
        RidingSurface.Smooth => "smooth",
        RidingSurface.MinorDeviations => "minor deviations",
        _ => "rough",
    };

    /// <summary>The status as the JSON has it.</summary>
    /// <param name="status">The status.</param>
    public static string Of(RatingStatus status) => status switch
    {
        RatingStatus.Rated => "rated",
        RatingStatus.DeadExceeds => "deadExceeds",
        RatingStatus.NotLoaded => "notLoaded",
        RatingStatus.NotRated => "notRated",
        RatingStatus.Slack => "slack",
        _ => "withheld",
    };

    /// <summary>The status as a table shows it.</summary>
    /// <param name="status">The status.</param>
    public static string InTable(RatingStatus status) => status switch
    {
        RatingStatus.Rated => "rated",
        RatingStatus.DeadExceeds => "dead load exceeds capacity",
        RatingStatus.NotLoaded => "not applicable: no live force",
        RatingStatus.NotRated => "not rated",
        RatingStatus.Slack => "only pulls",
        _ => "withheld",
    };

    /// <summary>A force in words: "34.1 kN tension".</summary>
    /// <param name="force">Force, tension positive [N].</param>
    /// <param name="units">The units to show.</param>
    public static string ForceInWords(double force, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(units);
        string size = ResultTable.Figure(Math.Abs(units.From(Quantity.Force, force)), 2);
        return force == 0 ? $"0 {units.Symbol(Quantity.Force)}" : $"{size} {units.Symbol(Quantity.Force)} {Of(force > 0 ? Sense.Tension : Sense.Compression)}";
    }

    /// <summary>A rating factor as people read it: two decimals, cut and never rounded up, and above ten only that it is.</summary>
    /// <param name="factor">The factor, or null.</param>
    public static string Factor(double? factor) => factor switch
    {
        null => "–",
        > 10 => ">10",
        { } value => ResultTable.Cut(value, 2),
    };
}
