using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>Tells where a dynamic allowance is from.</summary>
internal static class ImpactTelling
{
    /// <summary>In words, with the formula where there is one.</summary>
    /// <param name="reason">Why it is what it is.</param>
    /// <param name="row">The row that it is of.</param>
    /// <param name="rating">The rating.</param>
    /// <param name="length">Length that a formula takes [m]; null where there is none.</param>
    /// <param name="units">The units to show.</param>
    public static string Of(ImpactReason reason, RatingRow row, BridgeRating rating, double? length, DisplayUnits units) => reason switch
    {
        ImpactReason.Given => "given in bridge.toml, in place of the method's own",
        ImpactReason.NoneOnClass => $"none on class {VehicleClassNames.Name(row.Vehicle.Class)}",
        ImpactReason.NoneOnTimber => "none on timber",
        ImpactReason.NoneOnLane => "none on this lane load",
        ImpactReason.AtCrawl => "none, vehicles being taken to cross at crawl speed (crawl_speed in bridge.toml)",
        ImpactReason.BySurface => $"by the riding surface, {Words.Of(rating.Bridge.Rating.Surface!.Value)} (surface in bridge.toml)",
        _ when length is { } l && rating.Method.Impact(1) != rating.Method.Impact(100) =>
            $"50/(L + 125), at most 0.30, with L = {ResultTable.Figure(l / 0.3048, 2)} ft{(units.Name == "us" ? "" : $" ({Told.Length(l, units)})")}, {LengthOf(row.Part)}",
        _ => "the method's own, whatever the length",
    };

    private static string LengthOf(PartKind part) => part switch
    {
        PartKind.Deck or PartKind.Stringer or PartKind.Floorbeam => "its span",
        PartKind.Hanger => "the length of deck from which load comes to it",
        PartKind.Pin => "the shortest stretch that loads any of its bars in one sense, which gives the most",
        _ => "the stretch of the line in this sense that holds the load",
    };
}
