namespace SpanRater;

/// <summary>The ways in which a connection may fail.</summary>
public enum ConnectionMode
{
    /// <summary>A pin in bending.</summary>
    PinBending,

    /// <summary>A pin in bending and shear together.</summary>
    PinBendingAndShear,

    /// <summary>A pin in shear.</summary>
    PinShear,

    /// <summary>A pin or plate in bearing.</summary>
    PinBearing,

    /// <summary>Eyebar heads through the pin hole.</summary>
    Heads,

    /// <summary>Fasteners in shear.</summary>
    FastenerShear,

    /// <summary>What fasteners bear on.</summary>
    FastenerBearing,

    /// <summary>Gross yield on the Whitmore width.</summary>
    WhitmoreYield,

    /// <summary>Rupture of the net Whitmore width.</summary>
    WhitmoreRupture,

    /// <summary>Buckling of the Whitmore width.</summary>
    WhitmoreBuckling,

    /// <summary>A block torn out around the fasteners.</summary>
    BlockShear,

    /// <summary>Yield of a plane in shear.</summary>
    PlaneYield,

    /// <summary>Rupture of a plane in shear.</summary>
    PlaneRupture,
}

/// <summary>What a number in a connection's strength measures.</summary>
public enum ConnectionTerm
{
    /// <summary>Diameter [m].</summary>
    Diameter,

    /// <summary>Yield [Pa].</summary>
    Yield,

    /// <summary>Tensile strength [Pa].</summary>
    Ultimate,

    /// <summary>Thickness [m].</summary>
    Thickness,

    /// <summary>Section modulus [m³].</summary>
    Modulus,

    /// <summary>Area [m²].</summary>
    Area,

    /// <summary>Net area [m²].</summary>
    NetArea,

    /// <summary>Width [m].</summary>
    Width,

    /// <summary>Length [m].</summary>
    Length,

    /// <summary>Stress [Pa].</summary>
    Stress,

    /// <summary>How many.</summary>
    Count,

    /// <summary>Shear that acts with a moment [N].</summary>
    Shear,

    /// <summary>Elastic buckling force [N].</summary>
    ElasticForce,
}

/// <summary>The strength of a connection in one mode by one method, before condition and system factors.</summary>
/// <param name="Mode">The mode.</param>
/// <param name="Nominal">Nominal strength, positive [N or N·m].</param>
/// <param name="Factors">Factors of the method on it.</param>
/// <param name="Clauses">What it rests on.</param>
/// <param name="Terms">The numbers that it is made of.</param>
public sealed record ConnectionStrength(
    ConnectionMode Mode, double Nominal, IReadOnlyList<StrengthFactor> Factors, IReadOnlyList<Clause> Clauses, IReadOnlyList<(ConnectionTerm Term, double Value)> Terms)
{
    /// <summary>The strength with its factors [N or N·m].</summary>
    public double Value => Factors.Aggregate(Nominal, (value, factor) => value * factor.Value);
}

/// <summary>What a connection carries, with all that led to it.</summary>
public sealed record ConnectionResistance : PartResistance
{
    /// <summary>The connection.</summary>
    public required Connection Connection { get; init; }

    /// <summary>Every mode, in the order examined.</summary>
    public required IReadOnlyList<ConnectionStrength> Modes { get; init; }

    /// <summary>Condition and system factors; null where the method has none.</summary>
    public MemberFactors? Factors { get; init; }

    /// <summary>The bar of a pin, or the direction of a plane, where it is worst; null where there is only one place.</summary>
    public string? At { get; init; }

    /// <summary>Direction of the pin's moment or shear that governs, from horizontal to the right, counter-clockwise as seen in elevation [rad]; null of anything else.</summary>
    public double? Direction { get; init; }

    /// <summary>Position of the bar of a pin at whose middle the moment acts, or after which the shear; null of anything else.</summary>
    public int? Bar { get; init; }

    /// <summary>Whether the moment at that bar is counted from the last bar of the packing, not from the first.</summary>
    public bool IsFromLast { get; init; }

    /// <summary>What each bar of a pin pushes with, in the order of its packing; empty of anything else.</summary>
    public IReadOnlyList<BarPush> Pushes { get; init; } = [];

    /// <summary>The mode that governs: the least strength, the earlier of equal ones.</summary>
    public ConnectionStrength Governing => Modes.MinBy(m => m.Value)!;

    /// <inheritdoc/>
    public override double Value => Governing.Value * (Factors?.Value ?? 1);

    /// <inheritdoc/>
    public override Material? Material => Connection.Material;

    /// <inheritdoc/>
    public override IEnumerable<Clause> Clauses => Governing.Clauses.Concat(Governing.Factors.Select(f => f.Clause));

    /// <inheritdoc/>
    public override MemberFactors? PartFactors => Factors;

    /// <inheritdoc/>
    public override string? Place => At;
}
