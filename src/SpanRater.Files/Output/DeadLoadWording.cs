namespace SpanRater.Files;

/// <summary>Says what the dead load of one truss adds up to, so that a slipped decimal point is seen.</summary>
public static class DeadLoadWording
{
    /// <summary>The totals of DC and DW, and each by length of the deck.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="units">The units to show.</param>
    public static string Of(Bridge bridge, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(units);
        string[] parts = [.. new[] { Bridge.ComponentsCase, Bridge.WearingSurfaceCase }.Select(bridge.FindCase).OfType<LoadCase>().Select(c => Of(c, bridge.Truss, units))];
        return parts.Length == 0 ? "No dead load is given" : $"Dead load on one truss: {string.Join("; ", parts)}";
    }

    private static string Of(LoadCase loads, Truss truss, DisplayUnits units)
    {
        string total = $"{loads.Name} {ResultTable.Figure(units.From(Quantity.Force, -loads.TotalUp), 1)} {units.Symbol(Quantity.Force)}";
        return truss.Stations.Count < 2
            ? total
            : $"{total}, {ResultTable.Figure(units.From(Quantity.LineLoad, -loads.TotalUp / (truss.Stations[^1] - truss.Stations[0])), 3)} {units.Symbol(Quantity.LineLoad)}";
    }
}
