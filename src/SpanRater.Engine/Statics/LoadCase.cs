namespace SpanRater;

/// <summary>A static load on a joint.</summary>
/// <param name="Joint">Name of the joint.</param>
/// <param name="Right">Load to the right [N].</param>
/// <param name="Up">Load upward [N]; a weight is negative.</param>
public sealed record JointLoad(string Joint, double Right, double Up);

/// <summary>How far a support moves: a settlement is a negative up. A roller moves along its normal only; the rest has no effect.</summary>
/// <param name="Joint">Name of the supported joint.</param>
/// <param name="Right">Movement to the right [m].</param>
/// <param name="Up">Movement upward [m].</param>
public sealed record SupportMovement(string Joint, double Right, double Up);

/// <summary>A named set of static joint loads and support movements on one truss.</summary>
/// <param name="Name">Name of the case.</param>
/// <param name="Loads">The loads; several on one joint add up.</param>
public sealed record LoadCase(string Name, IReadOnlyList<JointLoad> Loads)
{
    /// <summary>Movements of supports; several of one joint add up.</summary>
    public IReadOnlyList<SupportMovement> Movements { get; init; } = [];

    /// <summary>The cases together, each times its factor.</summary>
    /// <param name="name">Name of the case that comes of it.</param>
    /// <param name="parts">The cases and their factors; a null is passed over.</param>
    public static LoadCase Sum(string name, params IReadOnlyList<(LoadCase? Case, double Factor)> parts)
    {
        ArgumentNullException.ThrowIfNull(parts);
        return new LoadCase(name, [.. parts.SelectMany(p => p.Case?.Loads.Select(l => l with { Right = p.Factor * l.Right, Up = p.Factor * l.Up }) ?? [])])
        {
            Movements = [.. parts.SelectMany(p => p.Case?.Movements.Select(m => m with { Right = p.Factor * m.Right, Up = p.Factor * m.Up }) ?? [])],
        };
    }

    /// <summary>Sum of the upward loads [N].</summary>
    public double TotalUp => Loads.Sum(l => l.Up);
}
