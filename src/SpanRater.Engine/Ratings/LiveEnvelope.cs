namespace SpanRater;

/// <summary>The largest live force of one member of one truss in each sense, over all vehicles rated.</summary>
/// <param name="Truss">Name of the truss; null where both are alike.</param>
/// <param name="MemberIndex">Position of the member.</param>
/// <param name="Member">The member.</param>
/// <param name="Tension">The row whose vehicle brings most tension; null where none brings any.</param>
/// <param name="Compression">The row whose vehicle brings most compression; null where none brings any.</param>
public sealed record EnvelopeRow(string? Truss, int MemberIndex, Member Member, MemberRow? Tension, MemberRow? Compression)
{
    /// <summary>The row of a sense, or null.</summary>
    /// <param name="sense">The sense.</param>
    public MemberRow? Of(Sense sense) => sense == Sense.Tension ? Tension : Compression;
}

/// <summary>The envelope of live forces: picked from the rows of a rating, with nothing computed a second time.</summary>
public static class LiveEnvelope
{
    /// <summary>A row for every member of each truss, in the order of the members.</summary>
    /// <param name="rating">The rating.</param>
    public static IReadOnlyList<EnvelopeRow> Of(BridgeRating rating)
    {
        ArgumentNullException.ThrowIfNull(rating);
        string?[] trusses = [.. rating.MemberRows.Select(r => r.Truss).Distinct()];
        string?[] inOrder = [.. trusses.OrderBy(t => t is null ? -1 : rating.Bridge.Deck.TrussNames.ToList().IndexOf(t))];
        ILookup<(int, string?, Sense), MemberRow> rows = rating.MemberRows.Where(r => r.Live is not null and not 0).ToLookup(r => (r.MemberIndex, r.Truss, r.Sense));
        return
        [
            .. from m in Enumerable.Range(0, rating.Bridge.Truss.Members.Count)
               from truss in inOrder
               select new EnvelopeRow(truss, m, rating.Bridge.Truss.Members[m], Most(rows[(m, truss, Sense.Tension)]), Most(rows[(m, truss, Sense.Compression)])),
        ];
    }

    // Of equals the first: a vehicle has a row for every level. Rounded, since equals may differ in the last bit.
    private static MemberRow? Most(IEnumerable<MemberRow> rows) => rows.OrderByDescending(r => Math.Round(Math.Abs(r.Live!.Value), 6)).FirstOrDefault();
}
