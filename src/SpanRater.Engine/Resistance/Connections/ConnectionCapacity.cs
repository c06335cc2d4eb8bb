namespace SpanRater;

/// <summary>What connections of one member carry, and what is missing for any connection.</summary>
public static class ConnectionCapacity
{
    /// <summary>All that is missing for a connection, whatever the sense of its force.</summary>
    /// <param name="connection">The connection.</param>
    /// <param name="rules">How the method makes strengths at the level; null where it makes none.</param>
    /// <param name="method">Name of the method.</param>
    public static IReadOnlyList<MissingDatum> Missing(Connection connection, StrengthRules? rules, string method)
    {
        ArgumentNullException.ThrowIfNull(connection);
        var missing = new List<MissingDatum>();
        if (rules is null)
        {
            return [new MissingDatum.StrengthRules(method)];
        }

        if (rules.Connections is not { } rule && connection is not HeadConnection)
        {
            return [new MissingDatum.ConnectionRule(method)];
        }

        bool needsUltimate = connection is GussetConnection or GussetShear or FastenerConnection;
        switch (connection.Material)
        {
            case null:
                missing.Add(new MissingDatum.NoMaterial());
                break;
            case MetalMaterial metal:
                missing.AddRange(new[] { metal.MissingYield, needsUltimate ? metal.MissingUltimate : null, connection is GussetConnection ? metal.MissingModulus : null }.OfType<MissingDatum>());
                break;
            default:
                missing.Add(new MissingDatum.ConnectionRule(method));
                break;
        }

        if (connection is FastenerConnection fasteners && (rules.Connections!.FastenerShear(fasteners) is null || rules.Connections.FastenerBearing(fasteners, 1) is null))
        {
            missing.Add(new MissingDatum.ConnectionRule(method));
        }

        if (missing.Count == 0 && connection is GussetShear or GussetConnection && connection.Material is MetalMaterial { Strength: { } strength }
            && (connection is GussetShear plane ? rules.Connections!.Plane(plane, strength) : rules.Connections!.Gusset((GussetConnection)connection, strength, 1, Sense.Tension)).Count == 0)
        {
            missing.Add(new MissingDatum.ConnectionRule(method));
        }

        return missing;
    }

    /// <summary>What is missing for one sense of the force.</summary>
    /// <param name="connection">The connection.</param>
    /// <param name="sense">The sense.</param>
    public static IReadOnlyList<MissingDatum> MissingFor(Connection connection, Sense sense) =>
        connection is GussetConnection { MiddleLength: null } && sense == Sense.Compression ? [new MissingDatum.MiddleLength()] : [];

    /// <summary>Every mode of a connection that carries one force; nothing may be missing.</summary>
    /// <param name="connection">The connection.</param>
    /// <param name="sense">The sense of its force.</param>
    /// <param name="rules">How the method makes strengths at the level.</param>
    public static IReadOnlyList<ConnectionStrength> Of(Connection connection, Sense sense, StrengthRules rules)
    {
        ArgumentNullException.ThrowIfNull(connection);
        ArgumentNullException.ThrowIfNull(rules);
        var metal = (MetalMaterial)connection.Material!;
        MetalStrength strength = metal.Strength!;
        switch (connection)
        {
            case HeadConnection heads:
                TensionStrength head = rules.Tension.Eyebar(strength, heads.NetArea, heads.NetArea);
                return [new ConnectionStrength(ConnectionMode.Heads, head.Nominal, head.Factors, head.Clauses, [(ConnectionTerm.NetArea, heads.NetArea), (ConnectionTerm.Stress, head.Stress)])];
            case PinPlateConnection plates:
                return [rules.Connections!.PinBearing(strength.Yield, plates.PinDiameter, plates.Thickness)];
            case FastenerConnection fasteners:
                return [rules.Connections!.FastenerShear(fasteners)!, rules.Connections.FastenerBearing(fasteners, strength.Ultimate!.Value)!];
            case GussetConnection gusset:
                return rules.Connections!.Gusset(gusset, strength, metal.Modulus ?? 1, sense);
            case GussetShear plane:
                return rules.Connections!.Plane(plane, strength);
            default:
                throw new ArgumentOutOfRangeException(nameof(connection), connection, "A pin is rated by its packing.");
        }
    }
}
