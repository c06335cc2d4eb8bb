namespace SpanRater;

/// <summary>
/// Rates a bridge: its truss members, floor and connections under the same vehicles, by <c>RF = (C − gDC DC − gDW DW) / (gLL L (1 + IM))</c>.
/// Source: AASHTO Manual for Bridge Evaluation, 3rd ed. (2018), 6A.4.2.1 and 6B.4.1, from memory.
/// </summary>
public static class BridgeRater
{
    /// <summary>Rates every part for every vehicle and level.</summary>
    /// <param name="bridge">The bridge; it must have the dead load case DC.</param>
    /// <param name="method">The method.</param>
    /// <param name="vehicles">The vehicles, loadings and crowds.</param>
    /// <param name="stop">Ends the work between two vehicles.</param>
    /// <exception cref="ArgumentException">The bridge has no case DC.</exception>
    /// <exception cref="OperationCanceledException">It was told to stop.</exception>
    public static Outcome<BridgeRating> Rate(Bridge bridge, RatingMethod method, IReadOnlyList<LiveLoad> vehicles, CancellationToken stop = default)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(method);
        ArgumentNullException.ThrowIfNull(vehicles);
        if (bridge.FindCase(Bridge.ComponentsCase) is null)
        {
            throw new ArgumentException($"A bridge is rated with its dead load, case {Bridge.ComponentsCase}; it has none.", nameof(bridge));
        }

        // One truss stands for both where their dead loads are alike.
        var crossings = new List<TrussCrossing>();
        foreach (Bridge ofTruss in bridge.RightCases is null ? [bridge] : (Bridge[])[bridge.OfTruss(0), bridge.OfTruss(1)])
        {
            if (!TrussCrossing.Of(ofTruss).TryGet(out TrussCrossing? crossing, out Refusal? refusal))
            {
                return refusal;
            }

            crossings.Add(crossing);
        }

        var stamps = new RatingStamps(bridge, method);
        stamps.AddForBridge(vehicles, crossings.TrueForAll(c => c.WearingSurface is not null));
        IReadOnlyList<MemberRow> members = MemberRater.Rows(bridge, method, vehicles, [.. crossings], stamps, stop);
        stamps.AddForCapacities(members);
        IReadOnlyList<PartRow> floor = FloorRater.Rows(bridge, method, vehicles, stop);
        IReadOnlyList<PartRow> connections = ConnectionRater.Rows(bridge, method, vehicles, [.. crossings], members, stop);
        foreach (Stamp stamp in PartStamps.Of(bridge, method, [.. floor, .. connections]))
        {
            stamps.Add(stamp);
        }

        return new BridgeRating(bridge, method, [.. members, .. floor, .. connections], stamps.All, crossings);
    }
}
