namespace SpanRater;

/// <summary>
/// The capacity of each member by truss, sense and level: the one given in the bridge folder where there is one, else what its section and
/// material make of it.
/// </summary>
internal sealed class RowCapacities(Bridge bridge, RatingMethod method)
{
    private readonly Dictionary<(int Truss, int Member, Sense Sense, string Level), ResistanceCheck?> found = [];

    /// <summary>The row with its capacity.</summary>
    public MemberRow On(int truss, MemberRow row)
    {
        if (bridge.Capacities[row.MemberIndex][method.CapacityFor(row.Sense, row.Level)] is { } given)
        {
            return row with { Capacity = given };
        }

        (int, int, Sense, string) key = (truss, row.MemberIndex, row.Sense, row.Level.Name);
        if (!found.TryGetValue(key, out ResistanceCheck? check))
        {
            check = Of(bridge.MakeOf(truss, row.MemberIndex), row);
            found.Add(key, check);
        }

        return row with { Capacity = check?.Resistance?.Value, Resistance = check?.Resistance, Lacking = check?.Missing is { Count: > 0 } missing ? missing : null };
    }

    private ResistanceCheck? Of(MemberMake? make, MemberRow row) => make is null || (row.Member.TensionOnly && row.Sense == Sense.Compression) ? null
        : method.StrengthsAt(row.Level) is { } rules ? MemberCapacity.Of(make, row.Sense, rules, bridge.Rating.Condition)
        : new ResistanceCheck(null, [new MissingDatum.StrengthRules(method.Name)]);
}
