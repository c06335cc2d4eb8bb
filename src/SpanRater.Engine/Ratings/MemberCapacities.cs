namespace SpanRater;

/// <summary>What one member of one truss carries in one sense, as built and as found.</summary>
/// <param name="Truss">Name of the truss; null where all are alike.</param>
/// <param name="MemberIndex">Position of the member.</param>
/// <param name="Member">The member.</param>
/// <param name="Sense">The sense.</param>
/// <param name="Level">The level; null where the method asks for none.</param>
/// <param name="Given">The capacity given in the bridge folder, which counts before all others [N]; null where none is.</param>
/// <param name="Kind">The capacity that would be given.</param>
/// <param name="AsBuilt">From section and material as built; null where the member's make is not given.</param>
/// <param name="AsFound">The same with all that was found.</param>
public sealed record MemberCapacityRow(
    string? Truss, int MemberIndex, Member Member, Sense Sense, string? Level, double? Given, GivenCapacity Kind, ResistanceCheck? AsBuilt, ResistanceCheck? AsFound)
{
    /// <summary>The capacity that the rating takes [N]; null where there is none.</summary>
    public double? Value => Given ?? AsFound?.Resistance?.Value;

    /// <summary>Whether what was found changes the capacity that follows from section and material, beyond round-off.</summary>
    public bool IsChanged => Given is null && AsFound?.Resistance is { } found && AsBuilt?.Resistance is { } built && Math.Abs(found.Value - built.Value) > 1e-9 * built.Value;
}

/// <summary>The capacities of all members by one method, without any load.</summary>
public sealed class MemberCapacities
{
    private MemberCapacities(Bridge bridge, RatingMethod method)
    {
        Bridge = bridge;
        Method = method;
        IReadOnlyList<RatingLevel> levels = method.LevelsOf(VehicleClass.Legal, bridge.Rating);
        RatingLevel[] asked = method.StrengthGoesByLevel ? [.. levels] : [levels[0]];
        Rows =
        [
            .. from truss in bridge.RightMakes is null ? [(int?)null] : (int?[])[0, 1]
               from m in Enumerable.Range(0, bridge.Truss.Members.Count)
               from sense in (Sense[])[Sense.Tension, Sense.Compression]
               from level in asked
               where !(bridge.Truss.Members[m].TensionOnly && sense == Sense.Compression)
               select Row(truss, m, sense, level),
        ];
    }

    /// <summary>The bridge.</summary>
    public Bridge Bridge { get; }

    /// <summary>The method.</summary>
    public RatingMethod Method { get; }

    /// <summary>Every member of each truss in each sense and level; what only pulls has no row in compression.</summary>
    public IReadOnlyList<MemberCapacityRow> Rows { get; }

    /// <summary>The capacities of a bridge by a method.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="method">The method.</param>
    public static MemberCapacities Of(Bridge bridge, RatingMethod method)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(method);
        return new MemberCapacities(bridge, method);
    }

    private MemberCapacityRow Row(int? truss, int m, Sense sense, RatingLevel level)
    {
        GivenCapacity kind = Method.CapacityFor(sense, level);
        MemberMake? make = Bridge.MakeOf(truss ?? 0, m);
        ResistanceCheck? Check(MemberMake? of) => of is null ? null
            : Method.StrengthsAt(level) is { } rules ? MemberCapacity.Of(of, sense, rules, Bridge.Rating.Condition)
            : new ResistanceCheck(null, [new MissingDatum.StrengthRules(Method.Name)]);
        return new MemberCapacityRow(
            truss is { } index ? Bridge.Deck.TrussNames[index] : null, m, Bridge.Truss.Members[m], sense, Method.StrengthGoesByLevel ? level.Name : null,
            Bridge.Capacities[m][kind], kind, Check(make?.AsBuilt), Check(make));
    }
}
