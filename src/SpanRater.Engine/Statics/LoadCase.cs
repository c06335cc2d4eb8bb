namespace SpanRater;

/// <summary>A static load on a joint.</summary>
/// <param name="Joint">Name of the joint.</param>
/// <param name="Right">Load to the right [N].</param>
/// <param name="Up">Load upward [N]; a weight is negative.</param>
public sealed record JointLoad(string Joint, double Right, double Up);

/// <summary>A named set of static joint loads on one truss.</summary>
/// <param name="Name">Name of the case.</param>
/// <param name="Loads">The loads; several on one joint add up.</param>
public sealed record LoadCase(string Name, IReadOnlyList<JointLoad> Loads)
{
    /// <summary>Sum of the upward loads [N].</summary>
    public double TotalUp => Loads.Sum(l => l.Up);
}
