using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Pictures;

/// <summary>Cross-sections that prove the share of one truss: the load where it counts, its distances, and the lever rule.</summary>
public static class CrossSectionPicture
{
    private const string Signs =
        "Seen along the span, the left truss at the left. Widths are to scale, heights are not. P is one whole vehicle; each of its two wheel lines carries half. "
        + "The floorbeam is taken to span simply between the trusses, so that the reaction R follows from moments about the other truss (triangle); the sloping line gives the part of a load that goes to the truss considered.";

    /// <summary>Draws, for each group of vehicles, the arrangement that counts; for each truss apart where they differ.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="method">The method whose presence factors are applied; null for none.</param>
    /// <param name="shares">The vehicles and their shares; at least one group must have shares.</param>
    /// <param name="units">Units shown.</param>
    /// <exception cref="ArgumentException">No vehicle has a share by the lever rule.</exception>
    public static Picture Of(Bridge bridge, RatingMethod? method, IReadOnlyList<VehicleShares> shares, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(shares);
        ArgumentNullException.ThrowIfNull(units);
        VehicleShares[] drawn = [.. shares.Where(s => s.Outcome is ShareOutcome.Found)];
        if (drawn.Length == 0)
        {
            throw new ArgumentException("No vehicle has a share by the lever rule, so there is nothing to draw.", nameof(shares));
        }

        var sheet = new Sheet(bridge.Name);
        string presence = method is null ? "no rating method is given, so no presence factor is applied" : $"presence factors of {method.Name}";
        sheet.Paragraph("contents", $"Share of one truss by the lever rule, {presence}.");
        if (bridge.Deck.TrussShare is { } given)
        {
            string stamp = RatingWording.Of(new Stamp.GivenShare(given, bridge.Deck.TrussShareReason), units);
            sheet.Paragraph("given", $"Not what is rated with: {stamp}. What the lever rule would give:", Sheet.TextSize, Ink.Alarm);
        }

        foreach (VehicleShares group in drawn)
        {
            var found = (ShareOutcome.Found)group.Outcome;
            foreach (int truss in found.Alike ? (int[])[0] : [0, 1])
            {
                LateralShare counts = truss == 0 ? found.Left : found.Right;
                double lever = VehicleShares.WithoutPresence(counts, bridge.Deck.TrussSpacing!.Value);
                sheet.Space(10);
                sheet.Paragraph("section", Heading(bridge.Deck, group, truss, found.Alike, counts), 17, Ink.Black);
                sheet.Place(Of(bridge.Deck, new CrossSection(truss, counts.Wheels, [], "", $"R = {Share(lever)} P"), units));
                sheet.Paragraph("sum", Sum(bridge.Deck, group, counts, lever), Sheet.TextSize, Ink.Black);
            }
        }

        sheet.Space(8);
        sheet.Paragraph("signs", Signs, 14);
        sheet.Paragraph("caution", Words.Caution, 14);
        return sheet.ToPicture();
    }

    /// <summary>Draws one cross-section alone.</summary>
    /// <param name="deck">The deck; its truss spacing and roadway must be given.</param>
    /// <param name="section">What stands on it.</param>
    /// <param name="units">Units shown.</param>
    public static Drawing Of(Deck deck, CrossSection section, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(deck);
        ArgumentNullException.ThrowIfNull(section);
        ArgumentNullException.ThrowIfNull(units);
        return new CrossSectionDrawing(deck, section, units).Draw();
    }

    private static string Heading(Deck deck, VehicleShares group, int truss, bool alike, LateralShare counts)
    {
        string name = deck.TrussNames[truss];
        string which = alike ? $"The {name} truss considered; the {deck.TrussNames[1]} truss carries the same, mirrored" : $"The {name} truss considered";
        string many = counts.Lanes == 1 ? "one vehicle" : string.Create(CultureInfo.InvariantCulture, $"{counts.Lanes} vehicles abreast");
        string most = group.MostLanes is null ? "" : " (its class crosses alone)";
        return $"{which}. {many[..1].ToUpperInvariant()}{many[1..]}{most}: {string.Join(", ", group.Vehicles.Select(v => v.Name))}.";
    }

    private static string Sum(Deck deck, VehicleShares group, LateralShare counts, double lever)
    {
        double spacing = deck.TrussSpacing!.Value;
        string sum = $"R = ½ P × ({string.Join(" + ", counts.Wheels.Select(w => Share((spacing - w) / spacing)))}) = {Share(lever)} P";
        return group.HasPresence
            ? $"{sum}; times the presence factor {ResultTable.Figure(counts.Presence, 2)}: share {Share(counts.Value)}."
            : $"{sum}: share {Share(counts.Value)}, without a presence factor.";
    }

    private static string Share(double value) => ResultTable.Figure(value, 3).Replace('-', '−');
}
