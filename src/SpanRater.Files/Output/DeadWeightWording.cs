namespace SpanRater.Files;

/// <summary>Says how the weight of an item of dead load is found: "3 in × 13 ft × 50 pcf (timber)".</summary>
public static class DeadWeightWording
{
    /// <summary>How an item's weight comes about, its number and stretch with it.</summary>
    /// <param name="item">The item.</param>
    /// <param name="truss">The truss.</param>
    /// <param name="units">The units to show.</param>
    public static string Of(DeadItem item, Truss truss, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(item);
        ArgumentNullException.ThrowIfNull(truss);
        ArgumentNullException.ThrowIfNull(units);
        bool us = units == DisplayUnits.Us;
        string weight = item.Weight switch
        {
            DeadWeight.Layer l => $"{Length(l.Thickness, us ? "in" : "mm")} × {Length(l.Width, us ? "ft" : "m")} × {Figure(l.UnitWeight, us ? "pcf" : "kN/m3", us ? 1 : 2)}{(l.Published is null ? "" : $" ({l.Published.Material})")}",
            DeadWeight.Area a => $"{Figure(a.Pressure, us ? "psf" : "kPa", us ? 1 : 3)} × {Length(a.Width, us ? "ft" : "m")}",
            DeadWeight.Line l => Figure(l.Load, us ? "plf" : "kN/m", us ? 1 : 3),
            DeadWeight.AtJoints p => $"{Figure(p.Load, us ? "kip" : "kN", 3)} at {(item.Joints is null ? $"each of {truss.PanelPoints.Count} panel points" : string.Join(" ", item.Joints))}",
            DeadWeight.Members { Part: 1 } => "weight per length × length of each, half to either end",
            DeadWeight.Members m => $"{ResultTable.Figure(100 * m.Part, 1).Replace(".0", "", StringComparison.Ordinal)}% of the bare members",
            _ => throw new ArgumentOutOfRangeException(nameof(item), item.Weight, "Every kind of weight is told."),
        };
        string count = item.Count == 1 ? "" : $"{item.Count} × ";
        string stretch = item.From is null && item.To is null ? "" : $", from {End(item.From, "the first joint", us)} to {End(item.To, "the last joint", us)}";
        string joints = item.Joints is null || item.Weight is DeadWeight.AtJoints ? "" : $", between {string.Join(" ", item.Joints)}";
        string centre = item.Centre == 0 ? "" : $", {Length(Math.Abs(item.Centre), us ? "ft" : "m")} {(item.Centre > 0 ? "right" : "left")} of the middle";
        return count + weight + stretch + joints + centre;
    }

    /// <summary>Where the sizes of an item are from, and its published unit weight.</summary>
    /// <param name="item">The item.</param>
    public static string Source(DeadItem item)
    {
        ArgumentNullException.ThrowIfNull(item);
        string published = item.Weight is DeadWeight.Layer { Published: { } material } ? $"unit weight of {material.Material}: {material.Source}" : "";
        return string.Join("; ", ((string[])[item.Source, published]).Where(s => s.Length > 0));
    }

    private static string End(double? x, string unset, bool us) => x is { } station ? $"x = {Length(station, us ? "ft" : "m")}" : unset;

    private static string Length(double metres, string unit) => Figure(metres, unit, unit == "mm" ? 1 : 3);

    // Without idle zeros, as on a take-off sheet.
    private static string Figure(double si, string unit, int decimals)
    {
        string figure = ResultTable.Figure(si / Unit.Find(unit)!.Size, decimals);
        return $"{(figure.Contains('.', StringComparison.Ordinal) ? figure.TrimEnd('0').TrimEnd('.') : figure)} {unit}";
    }
}
