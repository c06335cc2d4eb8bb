namespace SpanRater.Files;

/// <summary>Table [floor] of bridge.toml: what the floor bears beside its own parts, and which parts it does not have.</summary>
/// <param name="Where">Where the table stands.</param>
internal sealed record FloorSettings(Place Where)
{
    /// <summary>Weight per area of the deck and all on it but a wearing surface [Pa]; null where it is not given.</summary>
    public double? Components { get; init; }

    /// <summary>Weight per area of the wearing surface [Pa]; null where it is not given.</summary>
    public double? WearingSurface { get; init; }

    /// <summary>Weight per length of kerb and railing on each side [N/m]; null where it is not given.</summary>
    public double? Edge { get; init; }

    /// <summary>Kinds of parts that the bridge does not have.</summary>
    public IReadOnlyList<PartKind> Without { get; init; } = [];

    /// <summary>Where a kind is said not to be there.</summary>
    public Place PlaceOfWithout { get; init; } = Where;

    /// <summary>What the table says.</summary>
    public static FloorSettings Read(TomlSection section, FindingList findings)
    {
        double? Pressure(string key) => NotNegative(section, key, section.Quantity(key, Quantity.Stress), findings);
        var without = new List<PartKind>();
        foreach ((string word, Place where) in section.TextsWithPlaces("without") ?? [])
        {
            int index = Array.FindIndex(FloorWords.Kinds, k => k.Word == word);
            if (index >= 0)
            {
                without.Add(FloorWords.Kinds[index].Kind);
            }
            else
            {
                findings.Error(where, $"without: \"{word}\" is no part of a floor.{NearestName.Question(word, FloorWords.Kinds.Select(k => k.Word))} Write {string.Join(", ", FloorWords.Kinds.Select(k => k.Word))}: what this bridge does not have.");
            }
        }

        var settings = new FloorSettings(section.Where)
        {
            Components = Pressure("deck_dc"),
            WearingSurface = Pressure("deck_dw"),
            Edge = NotNegative(section, "edge_dc", section.Quantity("edge_dc", Quantity.LineLoad), findings),
            Without = without,
            PlaceOfWithout = section.PlaceOf("without"),
        };
        section.SayWhatIsUnknown();
        return settings;
    }

    private static double? NotNegative(TomlSection section, string key, double? value, FindingList findings)
    {
        if (value is not < 0)
        {
            return value;
        }

        findings.Error(section.PlaceOf(key), $"{key} = {section.Text(key)}: a weight is written without a sign, 0 where there is none.");
        return null;
    }
}
