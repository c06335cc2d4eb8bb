using SpanRater.Files;

namespace SpanRater.Pictures;

/// <summary>What a vehicle does to a truss as it rolls over it.</summary>
public static class RollPicture
{
    /// <summary>
    /// Draws the vehicle where it stood at the largest force of one member, with that member's influence line, and the largest
    /// tension and compression of every member.
    /// </summary>
    /// <param name="title">Title, such as the bridge's name.</param>
    /// <param name="result">What came of rolling the vehicle; it must have peaks.</param>
    /// <param name="member">The member it is drawn for; null for the one with the largest peak.</param>
    /// <param name="units">Units shown.</param>
    /// <exception cref="ArgumentException">There is no such member, or there is not one pair of peaks for each member.</exception>
    public static Picture Of(string title, RollingResult result, string? member, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(title);
        ArgumentNullException.ThrowIfNull(result);
        ArgumentNullException.ThrowIfNull(units);
        if (result is not { Crossing: { } crossing, Peaks: { } peaks } || peaks.Count != crossing.Lines.Truss.Members.Count)
        {
            throw new ArgumentException("There must be one pair of peaks for each member.", nameof(result));
        }

        Truss truss = crossing.Lines.Truss;
        Vehicle vehicle = result.Vehicle;
        bool rods = crossing.Lines.Slack is not null;

        int shown = member is null
            ? Enumerable.Range(0, peaks.Count).MaxBy(m => Math.Abs(Larger(peaks[m])?.Force ?? 0))
            : truss.FindMember(member) ?? throw new ArgumentException($"The truss has no member \"{member}\".", nameof(member));

        var sheet = new Sheet(title);
        sheet.Paragraph(
            "contents",
            $"{vehicle.Name} ({Figures.Force(vehicle.Train.Weight, units)} on {vehicle.Train.Loads.Count} {(vehicle.Train.Loads.Count == 1 ? "axle" : "axles")}), {(result.Scale == 1 ? "whole" : Figures.OnAxis(result.Scale) + " of it")}, on one truss; {(rods ? "rolled with the dead load on, which is taken off again; without impact and load factors" : "without dead load, impact and load factors")}.",
            Sheet.TextSize,
            Ink.Black);
        Peak? peak = Larger(peaks[shown]);
        sheet.Paragraph("peak", Sentence(truss, shown, peak, units), 17, Ink.Black);
        DrawStand(sheet, peak is null ? crossing.Lines : crossing.LinesAt(peak), shown, peak, units);
        sheet.Space(14);
        sheet.Paragraph("envelope", $"Largest tension and compression of each member as {vehicle.Name} rolls over, in both directions", 17, Ink.Black);
        (Drawing bars, Axis bottom) = EnvelopeBars.Of(truss, [.. peaks.Select(p => (p.Tension?.Force, p.Compression?.Force))], shown, units);
        sheet.Place(bars, bottom: bottom);
        sheet.Paragraph("legend", "Tension: plain bars to the right. Compression: hatched bars to the left. Framed: the member shown above.", 14);
        if (rods)
        {
            sheet.Paragraph("rods", "Of a member that only pulls, a bar to the left is tension that it loses, not compression.", 14);
        }

        return sheet.ToPicture();
    }

    private static Peak? Larger(PeakPair pair) =>
        Math.Abs(pair.Compression?.Force ?? 0) > Math.Abs(pair.Tension?.Force ?? 0) ? pair.Compression : pair.Tension ?? pair.Compression;

    private static void DrawStand(Sheet sheet, InfluenceLines lines, int member, Peak? peak, DisplayUnits units)
    {
        IReadOnlyList<AxleEffect> axles = peak?.Axles ?? [];
        Elevation elevation = InfluencePicture.ElevationOf(lines, lines.Members[member], units, axles);
        sheet.Place(elevation.Drawing, InfluencePicture.AxisRoom);
        (Drawing line, Axis left) = InfluenceDrawing.Of(lines.Members[member], InfluencePicture.First(lines.Truss), elevation.View, elevation.Drawing.Width * elevation.View.ScaleX, units, axles);
        sheet.Place(line, InfluencePicture.AxisRoom, left);
        Remarks.Key(sheet, elevation.Key);
        Remarks.Rods(sheet, lines);
        sheet.Paragraph("signs", $"Below the elevation: influence line of {lines.Members[member].Name}; dots show the ordinate under each axle.", 14);
    }

    private static string Sentence(Truss truss, int member, Peak? peak, DisplayUnits units)
    {
        string name = truss.Members[member].Name;
        if (peak is null)
        {
            return $"{name}: no force, wherever the vehicle stands.";
        }

        double first = truss.Stations[0];
        int off = peak.Axles.Count(a => a.Station < first || a.Station > truss.Stations[^1]);
        string offWords = off switch
        {
            0 => "",
            1 => "; one axle is off the deck",
            _ => $"; {Figures.OnAxis(off)} axles are off the deck",
        };
        string side = peak.Approach == Approach.At ? "at" : $"{Words.Of(peak.Approach)} of";
        return $"{name}: {Words.Of(peak.Force > 0 ? Sense.Tension : Sense.Compression)} {Figures.Force(peak.Force, units)}, front axle {side} {Figures.Length(peak.Station - first, units)} from {InfluencePicture.First(truss)}, driving to the {Words.Of(peak.Direction)}{offWords}.";
    }
}
