namespace SpanRater.Files;

/// <summary>The words of floor.csv.</summary>
internal static class FloorWords
{
    /// <summary>Kinds of parts.</summary>
    public static readonly (string Word, PartKind Kind)[] Kinds =
        [("deck", PartKind.Deck), ("stringer", PartKind.Stringer), ("floorbeam", PartKind.Floorbeam), ("hanger", PartKind.Hanger)];

    /// <summary>Kinds of decks.</summary>
    public static readonly (string Word, DeckType Type)[] Decks =
    [
        ("plank", DeckType.Plank), ("nail laminated", DeckType.NailLaminated), ("glued laminated", DeckType.GluedLaminated),
        ("concrete", DeckType.Concrete), ("steel grid", DeckType.SteelGrid), ("corrugated steel", DeckType.CorrugatedSteel),
    ];

    /// <summary>How a beam is cut away over its bearing.</summary>
    public static readonly (string Word, bool IsTapered)[] Ends = [("notched", false), ("tapered", true)];

    /// <summary>The word for a kind of deck.</summary>
    public static string Of(DeckType type) => Decks.First(d => d.Type == type).Word;

    /// <summary>The columns that mean something for a kind of part, beside part, kind, section, material and note.</summary>
    public static IReadOnlyList<string> ColumnsOf(PartKind kind) => kind switch
    {
        PartKind.Deck => ["type", "span", "continuous"],
        PartKind.Stringer => ["spacing", "span", "count", "unbraced", "bearing", "end", "end depth"],
        PartKind.Floorbeam => ["type", "at", "x", "unbraced", "bearing", "end", "end depth", .. FloorTrussing.Names],
        _ => ["at", "x", "count"],
    };
}
