namespace SpanRater.Files;

/// <summary>Says what the dead load of one truss adds up to, so that a slipped decimal point is seen, and where it is from.</summary>
public static class DeadLoadWording
{
    /// <summary>The totals of DC and DW, each by length of the deck too, of every truss that differs; and where they are from.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="units">The units to show.</param>
    public static string Of(Bridge bridge, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(units);
        if (bridge.FindCase(Bridge.ComponentsCase) is null && bridge.FindCase(Bridge.WearingSurfaceCase) is null)
        {
            return "No dead load is given";
        }

        string[] trusses = bridge switch
        {
            { RightCases: not null } => [.. Enumerable.Range(0, 2).Select(t => OfOne(bridge.OfTruss(t), $"the {bridge.Deck.TrussNames[t]} truss", units))],
            { OnlyTruss: { } only } => [OfOne(bridge, $"the {bridge.Deck.TrussNames[only]} truss", units)],
            _ => [OfOne(bridge, "one truss", units)],
        };
        string[] origins = [.. CasesOf(bridge).Select(c => Origin(bridge, c)).Distinct()];
        string from = bridge.DeadAccount?.TakeOff is null ? ""
            : origins.Length == 1 ? $" ({origins[0]})"
            : $" ({string.Join("; ", CasesOf(bridge).Select(c => $"{NameOf(c)} {Origin(bridge, c)}"))})";
        return $"Dead load on {string.Join(". On ", trusses)}{from}";
    }

    /// <summary>Where a dead load case is from: "of loads.csv".</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="kind">The case.</param>
    public static string Origin(Bridge bridge, DeadCase kind)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        return bridge.DeadAccount?.Of(kind) switch
        {
            DeadOrigin.TakeOff => "of the take-off",
            DeadOrigin.Both => $"of the take-off and {BridgeFolder.LoadsFile} together",
            DeadOrigin.GivenInstead => $"of {BridgeFolder.LoadsFile}, in place of the take-off",
            _ => $"of {BridgeFolder.LoadsFile}",
        };
    }

    /// <summary>Name of a case: DC or DW.</summary>
    /// <param name="kind">The case.</param>
    public static string NameOf(DeadCase kind) => kind == DeadCase.Components ? Bridge.ComponentsCase : Bridge.WearingSurfaceCase;

    /// <summary>The dead load cases that a bridge has.</summary>
    /// <param name="bridge">The bridge.</param>
    public static IEnumerable<DeadCase> CasesOf(Bridge bridge) => Enum.GetValues<DeadCase>().Where(c => bridge.FindCase(NameOf(c)) is not null);

    private static string OfOne(Bridge bridge, string truss, DisplayUnits units) =>
        $"{truss}: {string.Join("; ", CasesOf(bridge).Select(c => Of(bridge.FindCase(NameOf(c))!, bridge.Truss, units)))}";

    private static string Of(LoadCase loads, Truss truss, DisplayUnits units)
    {
        string total = $"{loads.Name} {ResultTable.Figure(units.From(Quantity.Force, -loads.TotalUp), 1)} {units.Symbol(Quantity.Force)}";
        return truss.Stations.Count < 2
            ? total
            : $"{total}, {ResultTable.Figure(units.From(Quantity.LineLoad, -loads.TotalUp / (truss.Stations[^1] - truss.Stations[0])), 3)} {units.Symbol(Quantity.LineLoad)}";
    }
}
