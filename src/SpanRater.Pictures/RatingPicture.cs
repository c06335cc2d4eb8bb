using SpanRater.Files;

namespace SpanRater.Pictures;

/// <summary>The rating of a bridge: each member's lowest factor where it stands, and from the lowest up.</summary>
public static class RatingPicture
{
    /// <summary>Draws the elevation with the factors, and the factors as bars.</summary>
    /// <param name="rating">The rating.</param>
    /// <param name="units">Units shown.</param>
    public static Picture Of(BridgeRating rating, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(rating);
        ArgumentNullException.ThrowIfNull(units);
        Truss truss = rating.Bridge.Truss;
        IReadOnlyList<MemberVerdict> verdicts = MemberVerdict.Of(rating);
        var sheet = new Sheet($"{rating.Bridge.Title}: {Governing(rating)}");
        sheet.Paragraph("contents", $"Lowest rating factor of each truss member{(rating.PartRows.Count > 0 ? "; parts of the floor and connections stand among the bars" : "")}; {rating.Method.FullName} ({rating.Method.Name}).");
        sheet.Space(4);
        Legend(sheet);
        Elevation elevation = ElevationOf(truss, verdicts, units);
        sheet.Place(elevation.Drawing);
        Remarks.Key(sheet, elevation.Key);
        sheet.Space(12);
        IReadOnlyList<(string Name, MemberVerdict Verdict)> parts = MemberVerdict.OfParts(rating);
        sheet.Paragraph("bars", parts.Count > 0 ? "Parts of the floor, connections and truss members from the lowest factor" : "Members from the lowest factor", 17, Ink.Black);
        (string Name, MemberVerdict Verdict)[] shown =
        [
            .. verdicts.Select((v, m) => (truss.Members[m].Name, v)).Concat(parts)
                .OrderBy(s => s.Item2.Band >= RatingBand.NotRated ? s.Item2.Band : 0).ThenBy(s => Math.Round(s.Item2.Lowest?.Factor ?? 0, 9)),
        ];
        (Drawing bars, Axis bottom) = FactorBars.Of([.. shown.Select(s => s.Verdict)], [.. shown.Select(s => s.Name)]);
        sheet.Place(bars, bottom: bottom);
        Capped(sheet, rating.Bridge.Truss, verdicts);
        Incomplete(sheet, rating, verdicts);
        sheet.Paragraph("scope", ScopeWording.Of(rating), 15, Ink.Black);
        sheet.Paragraph("caution", Words.Caution, 15, Ink.Black);
        return sheet.ToPicture();
    }

    /// <summary>What the lines of the elevation mean, for a page that shows it without its legend.</summary>
    public const string LegendInWords =
        "Thick unbroken lines: lowest RF below 1.0. Thick dashes: 1.0 to 1.5. Thin unbroken lines: 1.5 and above. Dots: not rated, or withheld. Dashes and dots in turn: no live force.";

    /// <summary>The elevation alone, each member with its lowest factor.</summary>
    /// <param name="rating">The rating.</param>
    /// <param name="units">Units shown.</param>
    public static Drawing Elevation(BridgeRating rating, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(rating);
        ArgumentNullException.ThrowIfNull(units);
        return ElevationOf(rating.Bridge.Truss, MemberVerdict.Of(rating), units).Drawing;
    }

    private static Elevation ElevationOf(Truss truss, IReadOnlyList<MemberVerdict> verdicts, DisplayUnits units) => new ElevationDrawing
    {
        Truss = truss,
        Units = units,
        Width = Sheet.InnerWidth,
        StyleOf = m => MemberVerdict.StyleOf(verdicts[m].Band),
        LabelOf = m => verdicts[m].Words,
    }.Draw();

    private static string Governing(BridgeRating rating)
    {
        if (rating.Governing is not { } row)
        {
            return rating.Rows.Any(r => r.Status == RatingStatus.Withheld) ? "the rating is withheld" : "nothing is rated";
        }

        string truss = row.Truss is null ? "" : $" of the {row.Truss} truss";
        return $"{(row is PartRow ? $"governed by {RatingWording.NameAt(row)}" : $"{row.Name}{truss} governs")}, RF {Figures.Factor(row.Factor!.Value)} in {RatingWording.ActsIn(row)} ({RatingWording.Under(row)}, {row.Level.Name})";
    }

    private static void Legend(Sheet sheet) => sheet.Legend(
        new LegendEntry("RF below 1.0", MemberVerdict.StyleOf(RatingBand.Below)),
        new LegendEntry("RF 1.0 to 1.5", MemberVerdict.StyleOf(RatingBand.Near)),
        new LegendEntry("RF 1.5 and above", MemberVerdict.StyleOf(RatingBand.Above)),
        new LegendEntry("not rated, or withheld", MemberVerdict.StyleOf(RatingBand.NotRated)),
        new LegendEntry("no live force", MemberVerdict.StyleOf(RatingBand.NotLoaded)));

    // A factor that a bar going slack holds down is not that of the member's own capacity.
    private static void Capped(Sheet sheet, Truss truss, IReadOnlyList<MemberVerdict> verdicts)
    {
        foreach (IGrouping<string, int> capped in Enumerable.Range(0, verdicts.Count).Where(m => CappedBy(verdicts[m]) is not null).GroupBy(m => CappedBy(verdicts[m])!))
        {
            sheet.Paragraph("capped", $"Held down to where {capped.Key} goes slack, with nothing to take over: {string.Join(", ", capped.Select(m => truss.Members[m].Name))}.", 15, Ink.Black);
        }
    }

    private static string? CappedBy(MemberVerdict verdict) => (verdict.Lowest as MemberRow)?.CappedBy;

    // A factor stands for what could be rated: whoever reads it must know what could not.
    private static void Incomplete(Sheet sheet, BridgeRating rating, IReadOnlyList<MemberVerdict> verdicts)
    {
        string[] vehicles = [.. rating.NotRated.Where(r => r.IsAboutItsVehicle).Select(r => r.Vehicle.Name).Distinct()];
        if (vehicles.Length > 0)
        {
            foreach (IGrouping<string, string> rod in rating.Withheld.GroupBy(w => w.Reason.Member, w => w.Vehicle.Name))
            {
                sheet.Paragraph("withheld", $"Withheld: {rod.Key} goes slack, with nothing to take over, before the factored vehicle is on whole ({string.Join(", ", rod)}).", 15, Ink.Black);
            }

            sheet.Paragraph("vehicles", $"Not rated at all: {string.Join(", ", vehicles)}.", 15, Ink.Black);
        }

        string[] names = [.. Enumerable.Range(0, verdicts.Count).Where(m => verdicts[m].AlsoNotRated).Select(m => rating.Bridge.Truss.Members[m].Name)];
        if (names.Length > 0)
        {
            sheet.Paragraph("incomplete", $"Shown is the lowest of what could be rated. A capacity is missing in some sense for: {string.Join(", ", names)}.", 15, Ink.Black);
        }
    }
}
