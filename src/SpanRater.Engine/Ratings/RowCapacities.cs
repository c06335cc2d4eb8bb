namespace SpanRater;

/// <summary>
/// The capacity of each member by truss, sense and level: the one given in the bridge folder where there is one, else what its section and
/// material make of it.
/// </summary>
internal sealed class RowCapacities(Bridge bridge, RatingMethod method)
{
    private readonly Dictionary<(int Truss, int Member, Sense Sense, string Level), ResistanceCheck?> found = [];

    /// <summary>The capacity of a member, and the check that it comes from; no check where it is given.</summary>
    /// <param name="truss">0 for the left truss, 1 for the right one.</param>
    /// <param name="member">Its place in the truss.</param>
    /// <param name="sense">The sense.</param>
    /// <param name="level">The level.</param>
    public (double? Capacity, ResistanceCheck? Check) Of(int truss, int member, Sense sense, RatingLevel level)
    {
        if (bridge.Capacities[member][method.CapacityFor(sense, level)] is { } given)
        {
            return (given, null);
        }

        (int, int, Sense, string) key = (truss, member, sense, level.Name);
        if (!found.TryGetValue(key, out ResistanceCheck? check))
        {
            check = CheckOf(bridge.MakeOf(truss, member), bridge.Truss.Members[member], sense, level);
            found.Add(key, check);
        }

        return (check?.Resistance?.Value, check);
    }

    private ResistanceCheck? CheckOf(MemberMake? make, Member member, Sense sense, RatingLevel level) => make is null || (member.TensionOnly && sense == Sense.Compression) ? null
        : method.StrengthsAt(level) is { } rules ? MemberCapacity.Of(make, sense, rules, bridge.Rating.Condition)
        : new ResistanceCheck(null, [new MissingDatum.StrengthRules(method.Name)]);
}
