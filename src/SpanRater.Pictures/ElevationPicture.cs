using SpanRater.Files;

namespace SpanRater.Pictures;

/// <summary>The labelled elevation of a truss.</summary>
public static class ElevationPicture
{
    /// <summary>Draws members and joints with their names, supports, panel points and dimensions.</summary>
    /// <param name="title">Title, such as the bridge's name.</param>
    /// <param name="truss">The truss; it need not be able to stand.</param>
    /// <param name="units">Units shown.</param>
    /// <param name="loads">Weights on joints, drawn as arrows; null for none.</param>
    public static Picture Of(string title, Truss truss, DisplayUnits units, LoadCase? loads = null)
    {
        ArgumentNullException.ThrowIfNull(title);
        ArgumentNullException.ThrowIfNull(truss);
        ArgumentNullException.ThrowIfNull(units);
        var sheet = new Sheet(title);
        sheet.Paragraph("contents", $"Elevation: {truss.Members.Count} members, {truss.Joints.Count} joints, {truss.PanelPoints.Count} panel points.");
        Elevation elevation = new ElevationDrawing
        {
            Truss = truss,
            Units = units,
            Width = Sheet.InnerWidth,
            LabelOf = m => truss.Members[m].Name,
            Dimensioned = true,
            Loads = loads?.Loads ?? [],
        }.Draw();
        sheet.Place(elevation.Drawing);
        sheet.Space(8);
        Remarks.Key(sheet, elevation.Key);
        Remarks.Signs(sheet, truss);
        return sheet.ToPicture();
    }
}
