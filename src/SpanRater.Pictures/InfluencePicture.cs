using SpanRater.Files;

namespace SpanRater.Pictures;

/// <summary>Influence lines with the elevation they belong to.</summary>
public static class InfluencePicture
{
    /// <summary>Room for the axis beside an influence line [px].</summary>
    internal const double AxisRoom = 64;

    /// <summary>Draws the influence line of one member or reaction above the elevation, in one horizontal scale.</summary>
    /// <param name="title">Title, such as the bridge's name.</param>
    /// <param name="lines">The lines of a truss.</param>
    /// <param name="effect">Name of a member, or of a reaction as <see cref="InfluenceEffect.Name"/> has it.</param>
    /// <param name="units">Units shown.</param>
    /// <exception cref="ArgumentException">There is no such member or reaction.</exception>
    public static Picture OfEffect(string title, InfluenceLines lines, string effect, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(title);
        ArgumentNullException.ThrowIfNull(lines);
        ArgumentNullException.ThrowIfNull(units);
        InfluenceEffect found = lines.Members.Concat(lines.Reactions).FirstOrDefault(e => e.Name == effect)
            ?? throw new ArgumentException($"The truss has no member and no reaction \"{effect}\".", nameof(effect));
        EffectWords words = EffectWords.Of(found);
        var sheet = new Sheet(title);
        sheet.Paragraph("contents", $"Influence line: {words.Name} as a load of 1 {units.Symbol(Quantity.Force)} on this truss moves over the deck.");
        sheet.Space(4);
        Legend(sheet, words);
        Elevation elevation = ElevationOf(lines, found, units, []);
        (Drawing drawing, Axis left) = InfluenceDrawing.Of(found, First(lines.Truss), elevation.View, elevation.Drawing.Width * elevation.View.ScaleX, units, []);
        sheet.Place(drawing, AxisRoom, left);
        sheet.Place(elevation.Drawing, AxisRoom);
        sheet.Space(8);
        Remarks.Key(sheet, elevation.Key);
        Remarks.Rods(sheet, lines);
        Remarks.Signs(sheet, lines.Truss);
        return sheet.ToPicture();
    }

    /// <summary>Draws the influence lines of all members, small and in one scale, above the elevation.</summary>
    /// <param name="title">Title, such as the bridge's name.</param>
    /// <param name="lines">The lines of a truss.</param>
    /// <param name="units">Units shown.</param>
    public static Picture OfAll(string title, InfluenceLines lines, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(title);
        ArgumentNullException.ThrowIfNull(lines);
        ArgumentNullException.ThrowIfNull(units);
        var sheet = new Sheet(title);
        string force = units.Symbol(Quantity.Force);
        sheet.Paragraph(
            "contents",
            $"Influence lines of all {lines.Members.Count} members [{force}/{force}]: force as a load of 1 {force} on this truss moves over the deck; all in one scale.");
        sheet.Space(4);
        Legend(sheet, new EffectWords("", "tension", "compression"));
        SmallMultiples.Lay(sheet, lines);
        sheet.Space(10);
        Elevation elevation = new ElevationDrawing
        {
            Truss = lines.Truss,
            Units = units,
            Width = Sheet.InnerWidth,
            StyleOf = m => lines.Slack is null ? new LineStyle(Ink.Black, 2.4) : Remarks.StyleOf(lines, m),
            LabelOf = m => lines.Truss.Members[m].Name,
        }.Draw();
        sheet.Place(elevation.Drawing);
        sheet.Space(8);
        Remarks.Key(sheet, elevation.Key);
        Remarks.Rods(sheet, lines);
        Remarks.Signs(sheet, lines.Truss);
        return sheet.ToPicture();
    }

    /// <summary>The elevation below an influence line, with its member or reaction pointed out.</summary>
    internal static Elevation ElevationOf(InfluenceLines lines, InfluenceEffect effect, DisplayUnits units, IReadOnlyList<AxleEffect> axles)
    {
        Truss truss = lines.Truss;
        bool member = effect.Kind == EffectKind.Member;
        return new ElevationDrawing
        {
            Truss = truss,
            Units = units,
            Width = Sheet.InnerWidth - AxisRoom,
            StyleOf = m => member && truss.Members[m].Name == effect.Name ? new LineStyle(Ink.Black, 7) : Remarks.StyleOf(lines, m),
            LabelOf = m => member && truss.Members[m].Name == effect.Name ? effect.Name : "",
            Reaction = member ? null : ReactionOf(truss, effect.Name),
            Axles = axles,
        }.Draw();
    }

    /// <summary>Name of the first panel point, from which stations are told.</summary>
    internal static string First(Truss truss) => truss.Joints[truss.PanelPoints[0]].Name;

    private static void Legend(Sheet sheet, EffectWords words) => sheet.Legend(
        new LegendEntry($"{words.Positive}: solid line, plain", InfluenceStrokes.StyleOf(Sense.Tension, 2.4), Ink.TensionTint),
        new LegendEntry($"{words.Negative}: dashed line, hatched", InfluenceStrokes.StyleOf(Sense.Compression, 2.4), Ink.CompressionTint, Hatched: true));

    private static (int Joint, double Right, double Up) ReactionOf(Truss truss, string name)
    {
        int space = name.LastIndexOf(' ');
        bool up = name[(space + 1)..] == "up";
        return (truss.FindJoint(name[..space])!.Value, up ? 0 : 1, up ? 1 : 0);
    }
}
