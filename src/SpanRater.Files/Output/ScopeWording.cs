namespace SpanRater.Files;

/// <summary>Says what a rating holds and what it leaves out: a factor must never be read for more than was rated.</summary>
public static class ScopeWording
{
    /// <summary>What is rated of a bridge and what is not.</summary>
    /// <param name="bridge">The bridge.</param>
    public static string Of(Bridge bridge)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        string connections = bridge.Connections.Count == 0 ? Words.NoConnections : Words.OtherConnections;
        if (bridge.Floor is not { } floor)
        {
            return bridge.Connections.Count == 0 ? Words.TrussOnly : $"{Words.NoFloor} {connections}";
        }

        return Sentences(["truss members", .. Given(floor)], [], [], false, floor) + connections;
    }

    /// <summary>What a rating holds of its bridge: a part that lacks a datum or a rule is not said to be rated.</summary>
    /// <param name="rating">The rating.</param>
    public static string Of(BridgeRating rating)
    {
        ArgumentNullException.ThrowIfNull(rating);
        if (rating.Bridge.Floor is not { } floor)
        {
            return Of(rating.Bridge);
        }

        var rated = new List<string>();
        var inPart = new List<string>();
        var not = new List<string>();
        bool withheld = false;
        foreach ((PartKind kind, string name) in Given(floor).Select(g => (Floor.Kinds.First(k => Plural(k) == g), g)).Prepend((PartKind.TrussMember, "truss members")))
        {
            RatingRow[] all = [.. rating.Rows.Where(r => r.Part == kind)], rows = [.. all.Where(r => !r.IsAboutItsVehicle)];
            int lacking = rows.Count(r => r.Status == RatingStatus.NotRated);
            bool held = all.Any(r => r.Status == RatingStatus.Withheld) && !all.Any(r => r.Factor is not null);
            if (held)
            {
                withheld = true;
                continue;
            }

            (lacking == 0 ? rated : lacking < rows.Length ? inPart : not).Add(name);
        }

        return Sentences(rated, inPart, not, withheld, floor) + (rating.Bridge.Connections.Count == 0 ? Words.NoConnections : Words.OtherConnections);
    }

    private static IEnumerable<string> Given(Floor floor) => Floor.Kinds.Where(k => floor.Parts.Any(p => p.Kind == k && p is not DeckPart { HasRule: false })).Select(Plural);

    private static string Sentences(List<string> rated, List<string> inPart, List<string> not, bool trussIsWithheld, Floor floor)
    {
        string[] missing = [.. floor.NotGiven.Select(Plural)];
        string first = rated.Count == 0 ? "" : $"{Capital(string.Join(", ", rated))} are rated. ";
        string some = inPart.Count == 0 ? "" : $"Rated in part only, for want of data or a rule: {string.Join(", ", inPart)}. ";
        string none = not.Count == 0 ? "" : $"Given, and not rated for want of data or a rule: {string.Join(", ", not)}. ";
        string unruled = floor.Parts.Any(p => p is DeckPart { HasRule: false }) ? "The deck is not: there is no rule here for decks but of planks and laminated timber. " : "";
        string lacking = missing.Length == 0 ? "" : $"The floor is not whole: {string.Join(", ", missing)} {(missing is ["deck"] ? "is" : "are")} not given. ";
        string held = trussIsWithheld ? "Truss members are not: their ratings are withheld. " : "";
        return first + held + unruled + some + none + lacking;
    }

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];

    private static string Plural(PartKind kind) => kind == PartKind.Deck ? "deck" : $"{PartWords.Of(kind)}s";
}
