using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Pictures;

/// <summary>How a truss that does not stand moves.</summary>
public static class SwayPicture
{
    /// <summary>Draws the simplest movement over the elevation.</summary>
    /// <param name="title">Title, such as the bridge's name.</param>
    /// <param name="truss">A truss that is a mechanism.</param>
    /// <param name="stability">Its count and rank.</param>
    /// <param name="units">Units shown.</param>
    /// <exception cref="ArgumentException">The truss cannot move.</exception>
    public static Picture Of(string title, Truss truss, Stability stability, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(title);
        ArgumentNullException.ThrowIfNull(truss);
        ArgumentNullException.ThrowIfNull(stability);
        ArgumentNullException.ThrowIfNull(units);
        if (stability.WaysToMove.Count == 0)
        {
            throw new ArgumentException("A truss that stands has no movement to draw.", nameof(stability));
        }

        Movement movement = stability.WaysToMove[0];
        var sheet = new Sheet($"{title}: it can move");
        sheet.Paragraph("count", RefusalWording.Count(stability));
        sheet.Paragraph("movement", movement.Kind == MovementKind.WholeTruss ? MechanismWording.Of(stability.SupportFault!, truss, units) : MechanismWording.Of(movement, truss), Sheet.TextSize, Ink.Black);
        if (stability.Movements > 1)
        {
            sheet.Paragraph(
                "others",
                string.Create(CultureInfo.InvariantCulture, $"The first of {stability.Movements} independent movements is drawn; any mixture of them is a movement too."),
                Sheet.TextSize,
                Ink.Black);
        }

        sheet.Space(4);
        sheet.Legend(
            new LegendEntry("as given: dashed, round joints", DisplacedTruss.Before),
            new LegendEntry("moved: solid, square joints", DisplacedTruss.After),
            new LegendEntry("arrows: the way each joint goes", new LineStyle(Ink.Alarm, 2.4)));
        Elevation elevation = new ElevationDrawing
        {
            Truss = truss,
            Units = units,
            Width = Sheet.InnerWidth,
            StyleOf = _ => DisplacedTruss.Before,
            Displaced = new DisplacedTruss(truss, movement.Shifts, DisplacedTruss.ScaleFor(truss, movement.Shifts)),
        }.Draw();
        sheet.Place(elevation.Drawing);
        sheet.Space(8);
        sheet.Paragraph(
            "size",
            "A small movement, drawn large enough to be seen: it has directions and proportions and no size of its own, and it may as well go the other way. Members keep their lengths while it is small; drawn so large, some look longer or shorter.",
            14);
        Remarks.Signs(sheet, truss);
        return sheet.ToPicture();
    }
}
