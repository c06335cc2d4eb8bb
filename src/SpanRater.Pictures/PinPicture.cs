using SpanRater.Files;

namespace SpanRater.Pictures;

/// <summary>The packing of a pin, looked down upon: every bar where it is on the pin, with its thickness and the gaps.</summary>
public static class PinPicture
{
    /// <summary>Draws a packing.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="pin">The pin.</param>
    /// <param name="remark">What is said of it, such as where bending is worst; empty for nothing.</param>
    /// <param name="units">Units shown.</param>
    public static Picture Of(Bridge bridge, PinConnection pin, string remark, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(pin);
        ArgumentNullException.ThrowIfNull(units);
        var sheet = new Sheet(bridge.Name);
        sheet.Paragraph("contents", $"Packing of {pin.Name} at joint {bridge.Truss.Joints[pin.Joint].Name}, looked down upon: bars that go to the left of the joint lie to the left, those to the right to the right, the others, hatched, are cut across. Along the pin the drawing is to scale.");
        if (remark.Length > 0)
        {
            sheet.Paragraph("remark", remark, Sheet.TextSize, Ink.Black);
        }

        sheet.Space(14);
        sheet.Place(new PackingDrawing(bridge.Truss, pin, units).Draw());
        sheet.Space(8);
        sheet.Paragraph("signs", "Numbered as in packing.csv, from the first bar on. At the right the clear gaps. Bars of one member share its force by their thickness and push at their middles (dotted).", 14);
        sheet.Paragraph("caution", Words.Caution, 14);
        return sheet.ToPicture();
    }
}
