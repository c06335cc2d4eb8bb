using SpanRater.Files;

namespace SpanRater.Pictures;

/// <summary>Cross-sections that prove the share of one truss: the load where it counts, its distances, and the lever rule.</summary>
public static class CrossSectionPicture
{
    private const string Seen = "Seen along the span, the left truss at the left. Widths are to scale, heights are not.";
    private const string Wheels = " P is one whole vehicle; each of its two wheel lines carries half.";
    private const string Strips = " The load of a hatched strip acts at its middle.";
    private const string Rule =
        " The floorbeam is taken to span simply between the trusses, so that the reaction R follows from moments about the other truss (triangle); the sloping line gives the part of a load that goes to the truss considered.";

    /// <summary>Draws, for each group of vehicles, the arrangement that counts; for each truss apart where they differ.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="method">The method whose presence factors are applied; null for none.</param>
    /// <param name="shares">The vehicles and their shares; at least one group must have shares.</param>
    /// <param name="strips">Lane loads and crowds.</param>
    /// <param name="units">Units shown.</param>
    /// <exception cref="ArgumentException">No vehicle has a share by the lever rule.</exception>
    public static Picture Of(Bridge bridge, RatingMethod? method, IReadOnlyList<VehicleShares> shares, IReadOnlyList<StripShares> strips, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(shares);
        ArgumentNullException.ThrowIfNull(strips);
        ArgumentNullException.ThrowIfNull(units);
        VehicleShares[] drawn = [.. shares.Where(s => s.Outcome is ShareOutcome.Found)];
        StripShares[] drawnStrips = [.. strips.Where(s => s.IsFound)];
        if (drawn.Length + drawnStrips.Length == 0)
        {
            throw new ArgumentException("Nothing asked for has a share by the lever rule, so there is nothing to draw.", nameof(shares));
        }

        string presence = method is null ? "no rating method is given, so no presence factor is applied" : $"presence factors of {method.Name}";
        string? given = bridge.Deck.TrussShare is { } share
            ? $"Not what is rated with: {RatingWording.Of(new Stamp.GivenShare(share, bridge.Deck.TrussShareReason), units)}. What the lever rule would give:"
            : null;
        return Of(bridge.Name, $"Share of one truss by the lever rule, {presence}.", given, bridge.Deck, [.. drawn.SelectMany(s => SectionsOf(bridge.Deck, s)), .. drawnStrips.SelectMany(s => SectionsOf(bridge.Deck, s, units))], units);
    }

    /// <summary>Draws cross-sections one below the other.</summary>
    /// <param name="title">Title, such as the bridge's name.</param>
    /// <param name="contents">What they show.</param>
    /// <param name="warning">What must not be overlooked; null for nothing.</param>
    /// <param name="deck">The deck; its truss spacing and roadway must be given.</param>
    /// <param name="sections">The cross-sections.</param>
    /// <param name="units">Units shown.</param>
    public static Picture Of(string title, string contents, string? warning, Deck deck, IReadOnlyList<CrossSection> sections, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(deck);
        ArgumentNullException.ThrowIfNull(sections);
        ArgumentNullException.ThrowIfNull(units);
        var sheet = new Sheet(title);
        sheet.Paragraph("contents", contents);
        if (warning is not null)
        {
            sheet.Paragraph("warning", warning, Sheet.TextSize, Ink.Alarm);
        }

        foreach (CrossSection section in sections)
        {
            sheet.Space(12);
            sheet.Paragraph("section", section.Heading, 17, Ink.Black);
            sheet.Space(8);
            sheet.Place(new CrossSectionDrawing(deck, section, units).Draw());
            sheet.Paragraph("sum", section.Sum, Sheet.TextSize, Ink.Black);
        }

        sheet.Space(8);
        sheet.Paragraph("signs", SignsOf(sections), 14);
        sheet.Paragraph("caution", Words.Caution, 14);
        return sheet.ToPicture();
    }

    /// <summary>The same arrangements drawn each by itself, without the page around them.</summary>
    /// <param name="deck">The deck; its truss spacing and roadway must be given where anything has a share.</param>
    /// <param name="shares">The vehicles and their shares.</param>
    /// <param name="strips">Lane loads and crowds.</param>
    /// <param name="units">Units shown.</param>
    public static IReadOnlyList<(CrossSection Section, Drawing Drawing)> Drawings(Deck deck, IReadOnlyList<VehicleShares> shares, IReadOnlyList<StripShares> strips, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(deck);
        ArgumentNullException.ThrowIfNull(shares);
        ArgumentNullException.ThrowIfNull(strips);
        ArgumentNullException.ThrowIfNull(units);
        CrossSection[] sections =
        [
            .. shares.Where(s => s.Outcome is ShareOutcome.Found).SelectMany(s => SectionsOf(deck, s)),
            .. strips.Where(s => s.IsFound).SelectMany(s => SectionsOf(deck, s, units)),
        ];
        return [.. sections.Select(s => (s, Cropping.ToParts(new CrossSectionDrawing(deck, s, units).Draw())))];
    }

    /// <summary>How the cross-sections are to be read, in words.</summary>
    /// <param name="sections">The cross-sections.</param>
    public static string SignsOf(IReadOnlyList<CrossSection> sections) =>
        $"{Seen}{(sections.Any(s => s.Wheels.Count > 0) ? Wheels : "")}{(sections.Any(s => s.Strips.Count > 0) ? Strips : "")}{Rule}";

    private static IEnumerable<CrossSection> SectionsOf(Deck deck, VehicleShares group)
    {
        var found = (ShareOutcome.Found)group.Outcome;
        foreach (int truss in found.Alike ? (int[])[0] : [0, 1])
        {
            LateralShare counts = truss == 0 ? found.Left : found.Right;
            string reaction = $"R = {Share(VehicleShares.WithoutPresence(counts, deck.TrussSpacing!.Value))} P";
            yield return new CrossSection(truss, Heading(deck, group, truss, found.Alike, counts), counts.Wheels, [], "", reaction, Sum(deck, group, counts));
        }
    }

    private static IEnumerable<CrossSection> SectionsOf(Deck deck, StripShares strips, DisplayUnits units)
    {
        foreach (int truss in strips.Alike ? (int[])[0] : [0, 1])
        {
            string name = deck.TrussNames[truss];
            string which = strips.Alike ? $"The {name} truss is considered; the {deck.TrussNames[1]} truss carries the same, mirrored." : $"The {name} truss is considered.";
            (string reaction, string sum, IReadOnlyList<LateralStrip> covered) = ShareWording.StripsInShort(strips, truss, deck.TrussSpacing!.Value, units);
            yield return new CrossSection(truss, $"{strips.Load.Name}{(strips.Lane is null ? "" : ", its lane load")}. {which}", [], covered, strips.Lane is null ? "crowd" : "lane load", reaction, sum);
        }
    }

    private static string Heading(Deck deck, VehicleShares group, int truss, bool alike, LateralShare counts)
    {
        string name = deck.TrussNames[truss];
        string which = alike ? $"The {name} truss is considered; the {deck.TrussNames[1]} truss carries the same, mirrored" : $"The {name} truss is considered";
        string many = counts.Lanes == 1 ? group.MostLanes == 1 ? "one vehicle, whose class crosses alone" : "one vehicle counts" : $"{ShareWording.Count(counts.Lanes)} vehicles abreast count";
        return $"{string.Join(", ", group.Vehicles.Select(v => v.Name))}: {many}. {which}.";
    }

    private static string Sum(Deck deck, VehicleShares group, LateralShare counts)
    {
        double spacing = deck.TrussSpacing!.Value;
        string lever = Share(VehicleShares.WithoutPresence(counts, spacing));
        string sum = $"R = ½ P × ({string.Join(" + ", counts.Wheels.Select(w => Share((spacing - w) / spacing)))}) = {lever} P";
        return group.HasPresence
            ? $"{sum}; times the presence factor {ResultTable.Figure(counts.Presence, 2)}: share {Share(counts.Value)}."
            : $"{sum}: share {Share(counts.Value)}, without a presence factor.";
    }

    private static string Share(double value) => ResultTable.Figure(value, 3).Replace('-', '−');
}
