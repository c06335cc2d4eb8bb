namespace SpanRater;

/// <summary>How a method makes the strength of members at one level.</summary>
public sealed record StrengthRules
{
    /// <summary>Name of the method.</summary>
    public required string Method { get; init; }

    /// <summary>Tension.</summary>
    public required TensionRule Tension { get; init; }

    /// <summary>Force and moment together.</summary>
    public required CombinedRule Combined { get; init; }

    /// <summary>The column curve of a metal.</summary>
    public required Func<MetalStrength, ColumnCurve> Column { get; init; }

    /// <summary>Stresses of a timber by its thickness and depth [m]; null where the method has no rule for timber.</summary>
    public Func<TimberMaterial, double, double, TimberDesign>? Timber { get; init; }

    /// <summary>Metal beams; null where the method has no rule for them.</summary>
    public BeamRule? Beam { get; init; }

    /// <summary>Connections; null where the method has no rule for them.</summary>
    public ConnectionRule? Connections { get; init; }

    /// <summary>Whether condition and system factors are on the resistance.</summary>
    public bool HasMemberFactors { get; init; }

    /// <summary>Factor on the moment of a member's own weight [-].</summary>
    public required double OwnWeightFactor { get; init; }
}
