using System.Globalization;

namespace SpanRater.Files;

/// <summary>What an inspector saw, an observation a row, as findings.csv has it.</summary>
public static class FindingsList
{
    /// <summary>The table of the observations, or that none were written down.</summary>
    /// <param name="reading">What the bridge folder gave.</param>
    public static IReadOnlyList<ResultBlock> Of(BridgeReading reading)
    {
        ArgumentNullException.ThrowIfNull(reading);
        if (reading.Seen is not { Rows.Count: > 0 } seen)
        {
            return [new ResultBlock.Paragraph($"None were written down: {BridgeFolder.FindingsFile} {(reading.Seen is null ? "is not there" : "has no row")}, and every part is taken to be as it was built.", Strong: true)];
        }

        Deck? deck = reading.Bridge?.Deck;
        bool apart = deck is { Trusses: 2 }, doubts = seen.Rows.Any(r => r.Seen.Doubt > 0), notes = seen.Rows.Any(r => r.Seen.Origin.Note.Length > 0);
        return
        [
            new ResultBlock.Paragraph("What is not listed was not looked at, or nothing was found: as found is as built there. A dash: not said."),
            new ResultBlock.Grid(new ResultTable(
                [
                    new("on"), .. apart ? [new ResultColumn("truss")] : Array.Empty<ResultColumn>(), new("where"), new("what"), .. doubts ? [new ResultColumn("doubt")] : Array.Empty<ResultColumn>(),
                    new("photo"), new("by"), new("how"), new("date"), .. notes ? [new ResultColumn("note")] : Array.Empty<ResultColumn>(),
                ],
                [
                    .. seen.Rows.Select(r => (IReadOnlyList<object?>)
                    [
                        r.Member, .. apart ? [Trusses(r.Trusses, r.IsOnFloor, deck!)] : Array.Empty<object?>(), Where(r.Seen), MakeWording.What(r.Seen),
                        .. doubts ? [r.Seen.Doubt > 0 ? $"± {SectionWords.Length(r.Seen.Doubt)}" : "–"] : Array.Empty<object?>(),
                        Said(r.Seen.Origin.Photo), Said(r.Seen.Origin.By), Said(r.Seen.Origin.How), Said(r.Seen.Origin.Date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? ""),
                        .. notes ? [Said(r.Seen.Origin.Note)] : Array.Empty<object?>(),
                    ]),
                ])),
        ];
    }

    private static string Said(string text) => text.Length == 0 ? "–" : text;

    private static string Trusses(IReadOnlyList<int> trusses, bool isOnFloor, Deck deck) =>
        isOnFloor ? "–" : trusses.Count == 2 ? FindingsTable.BothTrusses : deck.TrussNames[trusses[0]];

    private static string Where(Observation seen)
    {
        string piece = seen.Piece is { } number ? string.Create(CultureInfo.InvariantCulture, $", piece {number}") : "";
        string[] parts = [.. new[] { seen.Place, seen.Part.Length == 0 ? "" : seen.Part + piece }.Where(t => t.Length > 0)];
        return parts.Length == 0 ? "the whole of it" : string.Join("; ", parts);
    }
}
