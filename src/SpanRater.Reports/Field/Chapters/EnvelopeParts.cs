using System.Globalization;
using SpanRater.Files;
using SpanRater.Pictures;

namespace SpanRater.Reports;

/// <summary>The largest live tension and compression of each member over all vehicles rated, with the vehicle and where it stood.</summary>
internal static class EnvelopeParts
{
    private static readonly Sense[] Senses = [Sense.Tension, Sense.Compression];

    /// <summary>The heading, the drawing and the table.</summary>
    public static IEnumerable<ReportPart> Of(BridgeRating rating, int? pointedOut, OrdinateSets sets, OpenedRatings opened, DisplayUnits units)
    {
        IReadOnlyList<EnvelopeRow> rows = LiveEnvelope.Of(rating);
        yield return new ReportPart.Said([new ResultBlock.Heading("Envelope of the live forces")]);
        if (rows.All(r => r is { Tension: null, Compression: null }))
        {
            yield return new ReportPart.Said([new ResultBlock.Paragraph("No vehicle has a live force here that the rating could use: see what is not rated.")]);
            yield break;
        }

        // Where the trusses are told apart by capacity or dead load alone, the live forces are the same.
        IGrouping<string?, EnvelopeRow>[] trusses = [.. rows.GroupBy(r => r.Truss)];
        bool alike = trusses.Length > 1 && trusses[0].Zip(trusses[1]).All(p => IsSame(p.First, p.Second));
        IGrouping<string?, EnvelopeRow>[] shown = alike ? trusses[..1] : trusses;
        yield return new ReportPart.Said(
        [
            new ResultBlock.Paragraph($"The largest tension and compression of each member over all vehicles asked for: with the share of the truss and presence, without impact and load factor, and without what stands in the next lane. {(rating.Withheld.Any() ? "Vehicles whose rating is withheld are among them. " : "")}{(alike ? "The two trusses have the same. " : "")}{(rating.Bridge.Truss.Members.Any(m => m.TensionOnly) ? "Of a member that only pulls, a force in compression is tension of the dead load that it loses." : "")}".TrimEnd()),
        ]);
        foreach (IGrouping<string?, EnvelopeRow> truss in shown)
        {
            string which = truss.Key is null || alike ? "" : $", {truss.Key} truss";
            Drawing bars = EnvelopePicture.Of(rating.Bridge.Truss, [.. truss.Select(r => (r.Tension?.Live, r.Compression?.Live))], pointedOut, units);
            yield return new ReportPart.Fold(
                $"envelope-{Array.IndexOf(shown, truss) + 1}",
                $"Drawn as bars{which}",
                [new ReportPart.Sketch(bars, $"Largest live force of each member [{units.Symbol(Quantity.Force)}]{which}. Tension: plain bars to the right; compression: hatched bars to the left{(pointedOut is null ? "" : "; framed: the member shown above")}.", $"Bars of the largest live tension and compression of each of {truss.Count()} members{which}; the table below holds the same numbers.")]);
        }

        EnvelopeRow[] all = [.. shown.SelectMany(t => t)];
        (int Row, Sense Sense, MemberRow Of)[] cells = [.. all.SelectMany((r, i) => Senses.Select(s => (i, s, r.Of(s))).Where(c => c.Item3 is not null).Select(c => (c.i, c.s, c.Item3!)))];

        // What the rating tables do not show has no factor opened: it is opened here.
        bool IsOpened(MemberRow row) => opened.Anchors.ContainsKey(row);
        (int Row, Sense Sense, MemberRow Of)[] own = [.. cells.Where(c => !IsOpened(c.Of))];
        string IdOf(MemberRow row) => IsOpened(row) ? opened.Anchors[row] : $"live-{(Array.FindIndex(own, c => ReferenceEquals(c.Of, row)) + 1).ToString(CultureInfo.InvariantCulture)}";
        bool apart = shown.Length > 1;
        yield return new ReportPart.Opening(
            Table(all, apart, rating.Bridge.Truss, units),
            null,
            cells.ToDictionary(c => (c.Row, (apart ? 2 : 1) + (c.Sense == Sense.Tension ? 0 : 3)), c => IdOf(c.Of)));
        if (own.Length > 0)
        {
            yield return new ReportPart.Fold("live", "Live forces of the envelope opened, of what the rating tables do not open", [.. own.Select(c => new ReportPart.Fold(IdOf(c.Of), Title(c.Of, apart, units), [new ReportPart.Said([.. LiveTelling.Of(c.Of, rating, units)]), .. sets.WaysFrom(c.Of)]))]);
        }
    }

    private static string Title(MemberRow row, bool apart, DisplayUnits units) =>
        ReportPart.Brief($"{row.Name}{(apart ? $", {row.Truss} truss" : "")}: {Words.ForceInWords(row.Live!.Value, units)} under {row.Vehicle.Name}");

    private static bool IsSame(EnvelopeRow one, EnvelopeRow other) =>
        Senses.All(s => one.Of(s)?.Live == other.Of(s)?.Live && one.Of(s)?.Vehicle == other.Of(s)?.Vehicle);

    private static ResultTable Table(IReadOnlyList<EnvelopeRow> rows, bool apart, Truss truss, DisplayUnits units) => new(
        [new("member"), .. apart ? [new ResultColumn("truss")] : Array.Empty<ResultColumn>(), new("tension", Quantity.Force), new("tension under"), new("where it stood then"), new("compression", Quantity.Force), new("compression under"), new("where it stood then")],
        [
            .. rows.Select(r => (IReadOnlyList<object?>)
                [r.Member.Name, .. apart ? [r.Truss ?? ""] : Array.Empty<object?>(), .. Cells(r.Tension, truss, units), .. Cells(r.Compression, truss, units)]),
        ]);

    private static object?[] Cells(MemberRow? row, Truss truss, DisplayUnits units) =>
        row is null ? [null, "none", ""] : [row.Live, row.Vehicle.Name, Where(row, truss, units)];

    private static string Where(MemberRow row, Truss truss, DisplayUnits units)
    {
        if (row.Effect is { } effect)
        {
            return string.Join("; ", effect.Parts.Select(p => $"{(effect.Parts.Count > 1 ? $"{LiveLoadWording.Name(p.Part, units)}: " : "")}{LiveLoadWording.Place(p.Part, units)}"));
        }

        return row.Peak is { } peak
            ? $"front axle at {Told.Length(peak.Station, units)}, driving {Words.Of(peak.Direction)}{(peak.Rods is { } rods ? $". {RodWording.AtPeak(rods.Slack, truss)}" : "")}"
            : "";
    }
}
