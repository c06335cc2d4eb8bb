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

        string[] given = [.. Floor.Kinds.Where(k => floor.Parts.Any(p => p.Kind == k && p is not DeckPart { HasRule: false })).Select(Plural)], missing = [.. floor.NotGiven.Select(Plural)];
        string lacking = missing.Length == 0 ? "" : $" The floor is not whole: {string.Join(", ", missing)} {(missing is ["deck"] ? "is" : "are")} not given.";
        string unruled = floor.Parts.Any(p => p is DeckPart { HasRule: false }) ? " The deck is not: there is no rule here for decks but of planks and laminated timber." : "";
        return $"Truss members{string.Concat(given.Select(g => $", {g}"))} are rated.{unruled}{lacking} {connections}";
    }

    private static string Plural(PartKind kind) => kind == PartKind.Deck ? "deck" : $"{PartWords.Of(kind)}s";
}
