using SpanRater.Files;

namespace SpanRater.Pictures;

/// <summary>The influence line of a member as the shape that the deck takes when the member is shortened.</summary>
public static class DisplacedDeckPicture
{
    /// <summary>Draws the influence line, and below it the displaced truss in the same horizontal scale.</summary>
    /// <param name="title">Title, such as the bridge's name.</param>
    /// <param name="lines">The lines of the truss.</param>
    /// <param name="moved">The truss with one member shortened.</param>
    /// <param name="units">Units shown.</param>
    public static Picture Of(string title, InfluenceLines lines, UnitShortening moved, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(title);
        ArgumentNullException.ThrowIfNull(lines);
        ArgumentNullException.ThrowIfNull(moved);
        ArgumentNullException.ThrowIfNull(units);
        Truss truss = lines.Truss;
        InfluenceEffect effect = lines.Members[moved.Member];
        double scale = DisplacedTruss.ScaleFor(truss, moved.Shifts);
        var sheet = new Sheet(title);
        sheet.Paragraph(
            "contents",
            $"Shorten {effect.Name} by one unit and let every other member keep its length: the deck rises by the influence line of {effect.Name}. Where it rises, a load there pulls {effect.Name}; where it sinks, a load there presses it.",
            Sheet.TextSize,
            Ink.Black);
        if (lines.Slack is { Count: > 0 } slack)
        {
            sheet.Paragraph("slack", $"Slack rods hold nothing and may change their length: {string.Join(", ", slack.Select(m => truss.Members[m].Name))}.", Sheet.TextSize, Ink.Black);
        }

        sheet.Space(4);
        sheet.Legend(
            new LegendEntry("as given", DisplacedTruss.Before),
            new LegendEntry($"displaced; heavy: {effect.Name}, shortened", DisplacedTruss.After),
            new LegendEntry("deck risen (tension): plain", InfluenceStrokes.StyleOf(Sense.Tension, 2.4), Ink.TensionTint),
            new LegendEntry("deck sunk (compression): hatched", InfluenceStrokes.StyleOf(Sense.Compression, 2.4), Ink.CompressionTint, Hatched: true));
        Elevation elevation = new ElevationDrawing
        {
            Truss = truss,
            Units = units,
            Width = Sheet.InnerWidth - InfluencePicture.AxisRoom,
            StyleOf = _ => DisplacedTruss.Before,
            Displaced = new DisplacedTruss(truss, moved.Shifts, scale, moved.Member) { Arrows = false },
            DeckMovement = new DeckMovement(truss, new InfluenceLine(truss.Stations, moved.DeckRise(truss)), scale),
        }.Draw();
        (Drawing drawing, Axis left) = InfluenceDrawing.Of(effect, InfluencePicture.First(truss), elevation.View, elevation.Drawing.Width * elevation.View.ScaleX, units, []);
        sheet.Place(drawing, InfluencePicture.AxisRoom, left);
        sheet.Place(elevation.Drawing, InfluencePicture.AxisRoom);
        sheet.Space(8);
        sheet.Paragraph(
            "scale",
            $"Above: the influence line, from unit loads. Below: the truss displaced, from its geometry alone, drawn for small movements; one unit of shortening is drawn as long as {Figures.Length(scale, units)} of the elevation. Figures: rise of the deck at each panel point for a shortening of 1, the ordinates.",
            14);
        Remarks.Signs(sheet, truss);
        return sheet.ToPicture();
    }
}
