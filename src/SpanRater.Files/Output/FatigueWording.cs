namespace SpanRater.Files;

/// <summary>Says why there is no fatigue note, and what detail categories are.</summary>
public static class FatigueWording
{
    /// <summary>What the note is not.</summary>
    public const string Indication = "An indication, and no inspection: cracks are found by looking.";

    /// <summary>What has no category.</summary>
    public const string NoCategory = "Loop-forged eyes, forge welds and wrought iron have no published category, and none is guessed.";

    /// <summary>Why there is no note, and the mend.</summary>
    /// <param name="why">What stands in the way.</param>
    /// <param name="truss">The truss.</param>
    /// <param name="units">The units to show.</param>
    public static string Of(FatigueObstacle why, Truss truss, DisplayUnits units) => why switch
    {
        FatigueObstacle.NoSection => "No section. Name one of sections.csv under section in members.csv",
        FatigueObstacle.NoMaterial => "No material. Name one of materials.toml under material in members.csv",
        FatigueObstacle.NotSteel { Kind: MaterialKind.Timber } => "It is of timber, and the published categories are of steel. There is no note for it",
        FatigueObstacle.NotSteel s => $"Material \"{s.Material}\" is {MaterialWords.Of(s.Kind)}, and the published categories are of steel. Ask an engineer, or have it tested",
        FatigueObstacle.Holes s => MissingDatumWording.Of(new MissingDatum.Holes(s.Section, s.Parts)),
        FatigueObstacle.NothingLeft s => $"Nothing is left that carries{(s.Place is null ? "" : $" at {s.Place}")}. Check findings.csv",
        FatigueObstacle.Cracked s => MissingDatumWording.Of(new MissingDatum.Cracked(s.Place)),
        FatigueObstacle.NoDeadLoad => "No dead load, and with it whether the member comes under tension. Give case DC in loads.csv, or items in dead.csv",
        FatigueObstacle.NoShare s => ShareWording.WhyNone(s.Why, units)!,
        FatigueObstacle.NotSolved s => RefusalWording.Sentence(s.Why, truss, units),
        _ => throw new ArgumentException($"Unknown obstacle {why}.", nameof(why)),
    };

    /// <summary>What is of a category, as common on old trusses.</summary>
    /// <param name="category">The category.</param>
    public static string Of(DetailCategory category)
    {
        ArgumentNullException.ThrowIfNull(category);
        return category.Name switch
        {
            "A" => "plain metal away from holes and welds",
            "B" => "continuous welds along the member; slip-critical bolted joints",
            "B'" => "such welds with backing bars left in",
            "C" => "welded attachments under 2 in long",
            "C'" => "welds of stiffeners across the member",
            "D" => "riveted connections, net section",
            "E" => "eyebar heads and pin plates, net section; long attachments",
            _ => "ends of thick cover plates; thick attachments",
        };
    }
}
