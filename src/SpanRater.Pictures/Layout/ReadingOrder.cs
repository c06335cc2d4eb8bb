namespace SpanRater.Pictures;

/// <summary>Members that have one role, from left to right.</summary>
/// <param name="Role">The role; empty where members have none.</param>
/// <param name="Members">Positions of the members in the truss.</param>
internal sealed record MemberGroup(string Role, IReadOnlyList<int> Members)
{
    /// <summary>The role as a heading; empty where the truss has no roles at all.</summary>
    /// <param name="groups">How many groups there are.</param>
    public string Heading(int groups) => Role.Length > 0 ? Role : groups > 1 ? "no role given" : "";
}

/// <summary>The order in which the members of a truss are read: role by role, each from left to right.</summary>
internal static class ReadingOrder
{
    /// <summary>The groups, in the order in which the truss first names their roles.</summary>
    /// <param name="truss">The truss.</param>
    public static IReadOnlyList<MemberGroup> Of(Truss truss) =>
    [
        .. Enumerable.Range(0, truss.Members.Count)
            .GroupBy(m => truss.Members[m].Role, StringComparer.Ordinal)
            .Select(group => new MemberGroup(group.Key, [.. group.OrderBy(m => Middle(truss, m))])),
    ];

    private static double Middle(Truss truss, int member) => truss.Joints[truss.FromJoint(member)].X + truss.Joints[truss.ToJoint(member)].X;
}
