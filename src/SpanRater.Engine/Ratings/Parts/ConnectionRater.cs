namespace SpanRater;

/// <summary>Rates connections for the same live loads as the members whose forces they carry.</summary>
internal sealed class ConnectionRater
{
    private readonly Bridge bridge;
    private readonly RatingMethod method;
    private readonly TrussCrossing[] crossings;
    private readonly DeadFactors deadFactors;

    private ConnectionRater(Bridge bridge, RatingMethod method, TrussCrossing[] crossings)
    {
        this.bridge = bridge;
        this.method = method;
        this.crossings = crossings;
        deadFactors = method.DeadFactorsWith(bridge.Rating);
    }

    /// <summary>One row for every connection, effect, live load and level, and for each truss where they differ.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="method">The method.</param>
    /// <param name="loads">The live loads.</param>
    /// <param name="crossings">The trusses with their dead load on: one for both where they are alike.</param>
    /// <param name="members">The rows of the members.</param>
    /// <param name="stop">Ends the work between two live loads.</param>
    public static IReadOnlyList<PartRow> Rows(Bridge bridge, RatingMethod method, IReadOnlyList<LiveLoad> loads, TrussCrossing[] crossings, IReadOnlyList<MemberRow> members, CancellationToken stop)
    {
        if (bridge.Connections.Count == 0)
        {
            return [];
        }

        var rater = new ConnectionRater(bridge, method, crossings);
        var impact = ImpactPolicy.Of(bridge, method);
        var rows = new List<PartRow>();
        foreach (LiveLoad load in loads)
        {
            stop.ThrowIfCancellationRequested();
            // A load that the members are not rated for, or that is withheld, is not rated here either; the members say so.
            if (members.Where(r => r.Vehicle == load).All(r => r.IsAboutItsVehicle) || SharedLiveLoad.Of(load, bridge, method, impact).Shared is not { } shared)
            {
                continue;
            }

            int?[] trusses = bridge.OnlyTruss is { } only ? [only] : shared.Alike && crossings.Length == 1 ? [null] : [0, 1];
            rows.AddRange(trusses.SelectMany(t => bridge.Connections.SelectMany(c => rater.RowsOf(c, load, shared, t))));
        }

        return rows;
    }

    private IEnumerable<PartRow> RowsOf(Connection connection, LiveLoad load, SharedLiveLoad shared, int? truss)
    {
        TrussCrossing crossing = crossings.Length == 1 ? crossings[0] : crossings[truss ?? 0];
        string[] depend = [.. connection.Members.Where(crossing.DependsOnRods).Select(m => bridge.Truss.Members[m].Name)];
        var pin = connection is PinConnection packed ? new PinForces(packed, bridge, crossing) : null;
        foreach (RatingLevel level in method.LevelsOf(load.Class, bridge.Rating))
        {
            StrengthRules? rules = method.StrengthsAt(level);
            MissingDatum[] missing =
            [
                .. ConnectionCapacity.Missing(connection, rules, method.Name),
                .. depend.Length > 0 ? [new MissingDatum.RodsDecide(string.Join(", ", depend))] : Array.Empty<MissingDatum>(),
                .. pin is { IsBalanced: false } && depend.Length == 0 ? [new MissingDatum.PackingOutOfBalance()] : Array.Empty<MissingDatum>(),
            ];
            if (missing.Length > 0)
            {
                yield return Row(connection, load, level, truss, PartEffect.Force, null) with { Reason = new NotRatedReason.PartLacks([.. missing.Distinct()]) };
                continue;
            }

            SharedEffect? EffectOf(InfluenceLine line, Sense sense) => shared.MostOnConnection(truss ?? 0, line, sense, pin?.ImpactLength);

            MemberFactors? factors = rules!.HasMemberFactors ? MemberFactors.Of(bridge.Rating.Condition, SystemKind.RivetedTrussMember) : null;
            IEnumerable<PartRow> rows = pin is null
                ? ForceRows(connection, load, level, truss, crossing, rules, factors, EffectOf)
                : new PinRater(pin, rules.Connections!, factors, (line, dc, dw, effect) => Loaded(Row(connection, load, level, truss, effect, null), line, dc, dw, Sense.Tension, EffectOf, pin.ImpactLength)).Rows(bridge);
            foreach (PartRow row in rows)
            {
                yield return row;
            }
        }
    }

    private IEnumerable<PartRow> ForceRows(
        Connection connection, LiveLoad load, RatingLevel level, int? truss, TrussCrossing crossing, StrengthRules rules, MemberFactors? factors, Func<InfluenceLine, Sense, SharedEffect?> effectOf)
    {
        (InfluenceLine line, double dc, double dw) = ConnectionForce.Of(connection, bridge.Truss, crossing);
        foreach (Sense sense in connection is HeadConnection ? [Sense.Tension] : (Sense[])[Sense.Tension, Sense.Compression])
        {
            PartRow row = Loaded(Row(connection, load, level, truss, connection is GussetShear ? PartEffect.Shear : PartEffect.Force, connection is GussetShear ? null : sense), line, dc, dw, sense, effectOf);
            IReadOnlyList<MissingDatum> missing = ConnectionCapacity.MissingFor(connection, sense);
            if (missing.Count > 0)
            {
                // Asked for only where something presses it.
                yield return row.Live is null && row.FactoredDead <= 0 ? row with { Status = RatingStatus.NotLoaded } : row with { Reason = new NotRatedReason.PartLacks(missing) };
                continue;
            }

            var resistance = new ConnectionResistance { Connection = connection, Modes = ConnectionCapacity.Of(connection, sense, rules), Factors = factors };
            yield return Rated(row, resistance);
        }
    }

    internal static PartRow Rated(PartRow row, ConnectionResistance resistance) =>
        (PartRow)(row with { Capacity = resistance.Value, Resistance = resistance }).Rated(r => r);

    private PartRow Row(Connection connection, LiveLoad load, RatingLevel level, int? truss, PartEffect effect, Sense? sense) => new()
    {
        Kind = connection.Kind,
        PartName = connection.Name,
        Index = connection.Index,
        Of = effect,
        At = bridge.Truss.Joints[connection.Joint].Name,
        PartSense = sense,
        Truss = truss is { } index ? bridge.Deck.TrussNames[index] : null,
        Vehicle = load,
        Level = level,
        Status = RatingStatus.NotRated,
        Reason = level.LiveFactor is null ? method.WithoutLiveFactor(load.Class) : null,
    };

    // Dead effects keep their sign; what is positive in the sense rated adds.
    private PartRow Loaded(PartRow row, InfluenceLine line, double dc, double dw, Sense sense, Func<InfluenceLine, Sense, SharedEffect?> effectOf, double? impactLength = null)
    {
        double sign = sense == Sense.Tension ? 1 : -1;
        SharedEffect? effect = effectOf(line, sense);
        double onComponents = deadFactors.OnComponents(sign * dc), onWearing = deadFactors.OnWearingSurface(sign * dw);
        return row with
        {
            DeadComponents = dc,
            DeadWearing = dw,
            ComponentsFactor = onComponents,
            WearingFactor = onWearing,
            FactoredDead = sign * ((onComponents * dc) + (onWearing * dw)),
            LiveParts = effect is null ? [] : [.. effect.Parts.Select(p => new PartLive.InTruss(p))],
            Share = effect?.Lateral,
            Live = effect?.Force,
            LoadedLength = effect is null ? null : impactLength ?? effect.Parts[0].Part.LoadedLength,
            Impact = effect?.Impact,
        };
    }
}

/// <summary>The force that a connection carries as a sum of member forces: its influence line and its dead parts.</summary>
internal static class ConnectionForce
{
    /// <summary>The force: of one member, or of web members along a gusset's plane.</summary>
    public static (InfluenceLine Line, double Components, double Wearing) Of(Connection connection, Truss truss, TrussCrossing crossing) => connection switch
    {
        MemberConnection one => Sum(crossing, [(one.Member, 1)]),
        GussetShear plane => Sum(crossing, [.. plane.Webs.Select(m => (m, Toward(truss, m, plane.Joint).X))]),
        _ => throw new ArgumentOutOfRangeException(nameof(connection), connection, "A pin has forces of its own."),
    };

    /// <summary>Unit vector of a member away from a joint: the way in which it pulls.</summary>
    public static (double X, double Y) Toward(Truss truss, int member, int joint)
    {
        int from = truss.FromJoint(member), other = from == joint ? truss.ToJoint(member) : from;
        double x = truss.Joints[other].X - truss.Joints[joint].X, y = truss.Joints[other].Y - truss.Joints[joint].Y, length = double.Hypot(x, y);
        return (x / length, y / length);
    }

    private static (InfluenceLine Line, double Components, double Wearing) Sum(TrussCrossing crossing, IReadOnlyList<(int Member, double Part)> parts)
    {
        IReadOnlyList<double> stations = crossing.Lines.Truss.Stations;
        double[] ordinates = [.. stations.Select((_, i) => parts.Sum(p => p.Part * crossing.Lines.Members[p.Member].Line.Ordinates[i]))];
        return (new InfluenceLine(stations, ordinates), parts.Sum(p => p.Part * crossing.Components!.MemberForces[p.Member]), parts.Sum(p => p.Part * (crossing.WearingSurface?.MemberForces[p.Member] ?? 0)));
    }
}
