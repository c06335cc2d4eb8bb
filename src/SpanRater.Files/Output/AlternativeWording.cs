using System.Globalization;

namespace SpanRater.Files;

/// <summary>Says what an alternative is, what it asks for, and why one is not offered.</summary>
public static class AlternativeWording
{
    /// <summary>What stands under every list of alternatives.</summary>
    public const string NotInForce =
        "None of these is in force: what is posted above holds until a change is made and kept up, and an engineer has rated the bridge with it.";

    /// <summary>The change in a word or two.</summary>
    /// <param name="kind">The change.</param>
    public static string Name(AlternativeKind kind) => kind switch
    {
        AlternativeKind.OneLane => "one lane",
        AlternativeKind.HeldToMiddle => "centred",
        AlternativeKind.CrawlSpeed => "crawl speed",
        AlternativeKind.OverlayOff => "overlay off",
        AlternativeKind.AsBuilt => "as built",
        AlternativeKind.AllTogether => "all of them together",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Every alternative has a name."),
    };

    /// <summary>The change as the JSON has it.</summary>
    /// <param name="kind">The change.</param>
    public static string InJson(AlternativeKind kind) => kind switch
    {
        AlternativeKind.OneLane => "oneLane",
        AlternativeKind.HeldToMiddle => "heldToMiddle",
        AlternativeKind.CrawlSpeed => "crawlSpeed",
        AlternativeKind.OverlayOff => "overlayOff",
        AlternativeKind.AsBuilt => "asBuilt",
        AlternativeKind.AllTogether => "allTogether",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "Every alternative has a name."),
    };

    /// <summary>What a change asks for, and what it assumes.</summary>
    /// <param name="alternative">The alternative.</param>
    /// <param name="bridge">The bridge as it is.</param>
    /// <param name="units">The units to show.</param>
    public static string AsksFor(Alternative alternative, Bridge bridge, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(alternative);
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(units);
        return alternative.Kind switch
        {
            AlternativeKind.OneLane => "one vehicle on the roadway at a time, at either kerb, with the presence factor of one lane and no vehicle beside an emergency vehicle. It needs barriers that leave one lane, or signals that are obeyed; signs alone force nobody",
            AlternativeKind.HeldToMiddle => "one vehicle on the roadway at a time and on its middle, lane loads too, with the presence factor of one lane; crowds stay as they are. It needs barriers or kerbs that force it; paint alone does not. Floorbeams may take more bending from it: where floor.csv gives them they are rated with it, else they are not rated",
            AlternativeKind.CrawlSpeed => $"every vehicle at 10 mph at most, so that none takes impact{(bridge.Rating.Impact is { } given ? string.Create(CultureInfo.InvariantCulture, $", in place of the impact of {given:0.00#} given") : "")}. It counts only where it is enforced",
            AlternativeKind.OverlayOff => $"{Surface(bridge, units)}. The whole of case DW is assumed to go; what is laid in its place, or left, counts again, and the deck below must bear wheels without it",
            AlternativeKind.AsBuilt => $"{alternative.Repaired} repaired to as built, wherever anything was seen on it; all else stays as found, and another may then govern. The repair has to be designed, made and checked, its connections with it, and what it weighs counts",
            _ => $"{string.Join(", ", alternative.Parts.Where(p => p != AlternativeKind.OneLane || !alternative.Parts.Contains(AlternativeKind.HeldToMiddle)).Select(Name))}, each with all that it needs",
        };
    }

    /// <summary>Why a change is not offered.</summary>
    /// <param name="reason">The reason.</param>
    public static string Why(NotOfferedReason reason) => reason switch
    {
        NotOfferedReason.GivenShare => "truss_share is given in bridge.toml, and what another place of the vehicles would make of it is not known: leave it out, with truss_spacing and roadway given, to see",
        NotOfferedReason.NoPlaceAcross => "no rating here rests on where vehicles stand across the roadway",
        NotOfferedReason.OneLaneAlready => "no rating here rests on more than one loaded lane",
        NotOfferedReason.NoImpact => "no rating here has impact in it",
        NotOfferedReason.NoWearingSurface => "there is no case DW",
        NotOfferedReason.NothingLost => "nothing seen on what has the lowest factor takes anything from its capacity, or that capacity is given",
        _ => throw new ArgumentOutOfRangeException(nameof(reason), reason, "Every reason has a sentence."),
    };

    /// <summary>The changes that are not offered, those with the same reason in one line.</summary>
    /// <param name="alternatives">The alternatives.</param>
    public static IEnumerable<string> NotOffered(Alternatives alternatives)
    {
        ArgumentNullException.ThrowIfNull(alternatives);
        return alternatives.NotOffered.GroupBy(n => n.Reason).Select(g => $"{string.Join(", ", g.Select(n => Name(n.Kind)))}: {Why(g.Key)}");
    }

    /// <summary>What the lowest factor gains, with its sign and cut to two decimals.</summary>
    /// <param name="gain">The gain; null where it is not known.</param>
    public static string Gain(double? gain) => gain is { } g
        ? $"{(g < 0 ? "−" : "+")}{ResultTable.Cut(g, 2).TrimStart('-')}"
        : "not known";

    private static string Surface(Bridge bridge, DisplayUnits units)
    {
        string[] items = bridge.DeadAccount is { TakeOff: { } takeOff, WearingSurface: DeadOrigin.TakeOff or DeadOrigin.Both }
            ? [.. takeOff.Items.Where(i => i.Item.Case == DeadCase.WearingSurface).Select(i => i.Item.Weight is DeadWeight.Layer layer
                ? $"{ResultTable.Figure(units.From(Quantity.Deflection, layer.Thickness), 1)} {units.Symbol(Quantity.Deflection)} of {i.Item.Name}"
                : i.Item.Name)]
            : [];
        return items.Length == 0 ? "the wearing surface taken off" : $"the wearing surface taken off: {string.Join(", ", items)}";
    }
}
