using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>What to measure next, its numbers leading to where they are worked: factors at worst, what the doubts leave, and what must remain.</summary>
internal static class MeasureChapter
{
    /// <summary>Rows whose factors the chapter shows: they are opened.</summary>
    /// <param name="measure">What to measure next.</param>
    public static IEnumerable<RatingRow> Shown(MeasureFirst measure) =>
    [
        .. measure.Readings.Take(MeasurePage.MostReadings).Select(r => r.Row),
        .. measure.Factors.Select(f => f.Row),
        .. MeasurePage.NeededShown(measure).Select(n => n.Row),
        .. measure.NotMeasured.Take(MeasurePage.MostReadings),
    ];

    /// <summary>The chapter.</summary>
    /// <param name="measure">What to measure next.</param>
    /// <param name="opened">Anchors of the factors that the report opens.</param>
    /// <param name="units">The units to show.</param>
    public static ReportChapter Of(MeasureFirst measure, IReadOnlyDictionary<RatingRow, string> opened, DisplayUnits units)
    {
        // Trusses alike have the same twice: it is worked once.
        (DoubtfulReading Of, string Id)[] readings = [.. Named(measure.Readings.Take(MeasurePage.MostReadings), r => (r.Row.MemberIndex, r.Row.Sense, r.Row.Vehicle, r.Row.Level.Name, r.Reading.Seen with { Origin = new ObservationOrigin() }, r.AtWorst, r.Row.Factor), "doubt")];
        (DoubtfulFactor Of, string Id)[] factors = [.. Named(measure.Factors, f => (f.Row.MemberIndex, f.Row.Sense, f.Row.Vehicle, f.Row.Level.Name, f.Low, f.Likely, f.High, f.ChanceBelowOne, f.Readings.Count), "chance")];
        (NeededDimension Of, string Id)[] needed = [.. Named(MeasurePage.NeededShown(measure), n => (n.Row.MemberIndex, n.Row.Sense, n.Row.Vehicle, n.Row.Level.Name, n.Part, n.Dimension, n.Needed, n.Row.Factor), "needed")];
        ReportPart PartOf(ResultBlock block) => block is ResultBlock.Grid { Content: var table } ? OpeningOf(table, readings, factors, needed, opened) : new ReportPart.Said([block]);
        return new ReportChapter("measure", "What to measure next", [])
        {
            Parts =
            [
                .. FieldReport.Body(MeasurePage.Of(measure, null, units)).Select(PartOf),
                .. Group("doubts", "Factors at worst, opened", readings, (r, both) => ReportPart.Brief($"{Words.Factor(r.AtWorst)}: {MeasureWording.Where(both ? r with { Row = OfBoth(r.Row) } : r)}, at its worst {new SheetUnits(units).Small(r.Reading.AtWorst)}"), r => DoubtTelling.AtWorst(r, measure.Rating, units)),
                .. Group("chances", "Low, high and the chance below 1, opened", factors, (f, both) => ReportPart.Brief($"{RatingWording.Member(both ? OfBoth(f.Row) : f.Row)} in {Words.Of(f.Row.Sense)}: {Words.Factor(f.Low)} to {Words.Factor(f.High)}"), f => DoubtTelling.Of(f, measure.Rating, units)),
                .. Group("needs", "What must remain, opened", [.. needed.Where(n => n.Of.ResistanceThen is not null)], (n, both) => ReportPart.Brief($"{RatingWording.Member(both ? OfBoth(n.Row) : n.Row)}: {MeasureWording.What(n)}"), n => DoubtTelling.Of(n, measure.Rating, units)),
            ],
        };
    }

    private static IEnumerable<(T Of, string Id)> Named<T, TKey>(IEnumerable<T> all, Func<T, TKey> key, string what)
        where TKey : notnull
    {
        var names = new Dictionary<TKey, string>();
        foreach (T one in all)
        {
            if (!names.TryGetValue(key(one), out string? id))
            {
                id = $"{what}-{(names.Count + 1).ToString(CultureInfo.InvariantCulture)}";
                names.Add(key(one), id);
            }

            yield return (one, id);
        }
    }

    private static IEnumerable<ReportPart> Group<T>(string id, string title, IReadOnlyList<(T Of, string Id)> all, Func<T, bool, string> titleOf, Func<T, IEnumerable<ResultBlock>> told) =>
        all.Count == 0 ? [] : [new ReportPart.Fold(id, title, [.. all.GroupBy(a => a.Id).Select(a => new ReportPart.Fold(a.Key, titleOf(a.First().Of, a.Count() > 1), [new ReportPart.Said([.. told(a.First().Of)])]))])];

    private static MemberRow OfBoth(MemberRow row) => row with { Truss = null };

    // Each table is known by a heading that no other has.
    private static ReportPart.Opening OpeningOf(ResultTable table, (DoubtfulReading Of, string Id)[] readings, (DoubtfulFactor Of, string Id)[] factors, (NeededDimension Of, string Id)[] needed, IReadOnlyDictionary<RatingRow, string> opened)
    {
        int Column(string heading) => table.Columns.ToList().FindIndex(c => c.Heading == heading);
        var cells = new Dictionary<(int Row, int Column), string>();
        void Lead(int row, string heading, string? id)
        {
            if (id is not null)
            {
                cells[(row, Column(heading))] = id;
            }
        }

        for (int r = 0; r < table.Rows.Count; r++)
        {
            if (Column("urgency") >= 0)
            {
                Lead(r, "factor", opened.GetValueOrDefault(readings[r].Of.Row));
                Lead(r, "at worst", readings[r].Id);
                Lead(r, "urgency", readings[r].Id);
            }
            else if (Column("chance below 1") >= 0)
            {
                Lead(r, "likely", opened.GetValueOrDefault(factors[r].Of.Row));
                foreach (string heading in (string[])["low", "high", "chance below 1"])
                {
                    Lead(r, heading, factors[r].Id);
                }
            }
            else if (Column("verdict") >= 0)
            {
                Lead(r, "factor", opened.GetValueOrDefault(needed[r].Of.Row));
                Lead(r, "needed", needed[r].Of.ResistanceThen is null ? null : needed[r].Id);
            }
        }

        return new ReportPart.Opening(table, null, cells);
    }
}
