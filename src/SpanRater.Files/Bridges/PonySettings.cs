namespace SpanRater.Files;

/// <summary>Table [pony] of bridge.toml: what holds the top chord of a pony truss.</summary>
/// <param name="Where">Where the table stands.</param>
internal sealed record PonySettings(Place Where)
{
    private string? Post { get; init; }

    private string? Beam { get; init; }

    private double? PostHeight { get; init; }

    private double? BeamLength { get; init; }

    private double KneeHeight { get; init; }

    private double Modulus { get; init; } = Member.SteelModulus;

    private double? Factor { get; init; }

    private Place PostPlace { get; init; } = new("");

    private Place BeamPlace { get; init; } = new("");

    /// <summary>What the table says.</summary>
    public static PonySettings Read(TomlSection section, FindingList findings)
    {
        string[] missing = [.. ((string[])["post", "beam", "post_height"]).Where(k => !section.Has(k))];
        if (missing.Length > 0)
        {
            findings.Error(section.Where, $"[pony] needs {string.Join(", ", missing)}: post and beam are sections of {BridgeFolder.SectionsFile}, post_height is from the middle of the floorbeam to that of the chord.");
        }

        var settings = new PonySettings(section.Where)
        {
            Post = section.Text("post"),
            Beam = section.Text("beam"),
            PostHeight = section.PositiveQuantity("post_height", Quantity.Length),
            BeamLength = section.PositiveQuantity("beam_length", Quantity.Length),
            KneeHeight = section.Quantity("knee_height", Quantity.Length) ?? 0,
            Modulus = section.PositiveQuantity("modulus", Quantity.Stress) ?? Member.SteelModulus,
            Factor = section.Number("k", 1, 5, "write the effective length factor read in the guide's table, 1 or more, such as 1.15."),
            PostPlace = section.PlaceOf("post"),
            BeamPlace = section.PlaceOf("beam"),
        };
        if (settings.KneeHeight < 0 || settings.KneeHeight >= settings.PostHeight)
        {
            findings.Error(section.PlaceOf("knee_height"), "knee_height is how far up a knee holds the post stiff: from 0 to less than post_height.");
        }

        section.SayWhatIsUnknown();
        return settings;
    }

    /// <summary>The frame of a floorbeam and its posts; null where something of it is missing or wrong, which has been said.</summary>
    /// <param name="sections">The sections.</param>
    /// <param name="deck">The deck.</param>
    /// <param name="findings">Takes what is wrong.</param>
    public PonyFrame? FrameOf(SectionsTable? sections, Deck deck, FindingList findings)
    {
        SectionProperties? post = PropertiesOf(Post, PostPlace, sections, findings), beam = PropertiesOf(Beam, BeamPlace, sections, findings);
        if ((BeamLength ?? deck.TrussSpacing) is not { } length)
        {
            findings.Error(Where, "[pony] needs the length of the floorbeam: write truss_spacing under [deck], or beam_length here.");
            return null;
        }

        // Posts bend across the bridge, about the y axis of their drawing; the floorbeam is drawn upright.
        return post is null || beam is null || PostHeight is not { } height || KneeHeight < 0 || KneeHeight >= height
            ? null
            : new PonyFrame(Modulus, height, post.Iy, length, beam.Ix, KneeHeight);
    }

    /// <summary>How the chord is held.</summary>
    public PonyHold Hold(PonyFrame frame, double panelLength) => new(frame, panelLength, Factor);

    private static SectionProperties? PropertiesOf(string? name, Place where, SectionsTable? sections, FindingList findings)
    {
        if (name is null)
        {
            return null;
        }

        if (sections?.Names.Contains(name) != true)
        {
            findings.Error(where, $"there is no section \"{name}\" in {BridgeFolder.SectionsFile}.{NearestName.Question(name, sections?.Names ?? [])}");
            return null;
        }

        if (sections.Find(name) is { Properties: null })
        {
            findings.Error(where, $"section \"{name}\" gives no position of its parts, and with it no moment of inertia: write arrangement and gap, or x and y, in {BridgeFolder.SectionsFile}.");
        }

        return sections.Find(name)?.Properties;
    }
}
