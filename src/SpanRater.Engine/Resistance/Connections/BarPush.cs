namespace SpanRater;

/// <summary>What one bar pushes a pin with, on one truss: to the right and up.</summary>
/// <param name="Right">Influence line of the push to the right [-].</param>
/// <param name="Up">Influence line of the push upward [-].</param>
/// <param name="Components">Push of the components' dead load [N].</param>
/// <param name="Wearing">Push of the wearing surface [N].</param>
public sealed record BarPush(InfluenceLine Right, InfluenceLine Up, (double Right, double Up) Components, (double Right, double Up) Wearing)
{
    /// <summary>The push of axles where they stand [N].</summary>
    /// <param name="axles">The axles on the deck.</param>
    public (double Right, double Up) Of(IReadOnlyList<AxleEffect> axles)
    {
        ArgumentNullException.ThrowIfNull(axles);
        AxleEffect[] on = [.. axles.Where(a => a.Station >= Right.Stations[0] && a.Station <= Right.Stations[^1])];
        return (on.Sum(a => a.Load * Right.OrdinateAt(a.Station)), on.Sum(a => a.Load * Up.OrdinateAt(a.Station)));
    }
}
