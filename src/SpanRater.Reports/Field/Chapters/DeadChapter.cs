using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>The dead load, its totals leading to the sum of what is on the joints, and the forces that come of it.</summary>
internal static class DeadChapter
{
    private const string Id = "dead-sums";

    /// <summary>The chapter.</summary>
    /// <param name="rating">The rating.</param>
    /// <param name="directions">Anchor of the fold that tells the directions of the members.</param>
    /// <param name="units">The units to show.</param>
    public static ReportChapter Of(BridgeRating rating, string directions, DisplayUnits units)
    {
        IReadOnlyList<ResultBlock> blocks = FieldReport.Body(DeadLoadPage.Of(rating.Bridge, units));
        ResultBlock[] sums = [.. Sums(rating.Bridge, units)];
        return new ReportChapter("dead", "Dead load", blocks)
        {
            Leads = sums.Length == 0 ? [] : [.. blocks.OfType<ResultBlock.Grid>().Select(g => new ReportPart.Opening(g.Content, null, Totals(g.Content).ToDictionary(a => a, _ => Id)))],
            Parts = [.. sums.Length == 0 ? (ReportPart[])[] : [new ReportPart.Fold(Id, "How the dead load adds up", [new ReportPart.Said(sums)])], DeadForces.Of(rating, directions, units)],
        };
    }

    private static IEnumerable<(int, int)> Totals(ResultTable table) =>
        from r in Enumerable.Range(0, table.Rows.Count)
        where table.Rows[r][0] is "all" || table.Columns[0].Heading == "item"
        from c in Enumerable.Range(1, table.Columns.Count - 1)
        where table.Rows[r][c] is double
        select (r, c);

    private static IEnumerable<ResultBlock> Sums(Bridge whole, DisplayUnits units)
    {
        int trusses = whole.RightCases is null ? 1 : 2;
        double deck = whole.Truss.Stations is [var first, .., var last] ? last - first : 0;
        string force = units.Symbol(Quantity.Force);
        foreach (TakeOffItem item in whole.DeadAccount?.TakeOff?.Items ?? [])
        {
            string along = item.PerLength is { } perLength && deck > 0 ? $"{ResultTable.Figure(units.From(Quantity.LineLoad, perLength), 4)}·{ResultTable.Figure(units.From(Quantity.Length, item.Total / perLength), 2)} = " : "";
            string shared = string.Join(" and ", Enumerable.Range(0, whole.Deck.Trusses == 2 && !whole.TrussesAlike ? 2 : 1).Select(t => $"{Figure(item.OnTruss(t), units)} on {(whole.TrussesAlike || whole.Deck.Trusses != 2 ? "one truss" : $"the {whole.Deck.TrussNames[t]} truss")}"));
            yield return SheetUnits.Step($"{item.Item.Name}: {DeadWeightWording.Of(item.Item, whole.Truss, units)}; {along}{Figure(item.Total, units)} {force} in all, {shared}");
        }

        if (whole.DeadAccount?.TakeOff is not null)
        {
            yield return new ResultBlock.Paragraph("What is spread along the span comes to a joint of its chord from half of each panel beside it, what is at a joint comes there, and a member from half of its length.");
        }

        string[] cases = [Bridge.ComponentsCase, Bridge.WearingSurfaceCase];
        foreach (string name in cases)
        {
            double all = 0;
            var totals = new List<string>();
            for (int t = 0; t < trusses; t++)
            {
                Bridge bridge = trusses == 1 ? whole : whole.OfTruss(t);
                if (bridge.FindCase(name) is not { } loads)
                {
                    continue;
                }

                double[] down = [.. whole.Truss.Joints.Select(j => 0.0 - loads.Loads.Where(l => l.Joint == j.Name).Sum(l => l.Up)).Where(d => d != 0)];
                string which = trusses == 1 ? "one truss" : $"{whole.Deck.TrussNames[t]} truss", total = Figure(down.Sum(), units);
                string over = deck > 0 ? $"; over the deck of {Told.Length(deck, units)}: {total}/{ResultTable.Figure(units.From(Quantity.Length, deck), 2)} = {ResultTable.Figure(units.From(Quantity.LineLoad, down.Sum() / deck), 3)} {units.Symbol(Quantity.LineLoad)}" : "";
                all += (trusses == 1 ? whole.Deck.Trusses : 1) * down.Sum();
                totals.Add(trusses == 1 ? $"{whole.Deck.Trusses.ToString(System.Globalization.CultureInfo.InvariantCulture)}·{total}" : total);
                yield return SheetUnits.Step($"{name}, {which}, joint after joint: {(down.Length == 0 ? "0" : string.Join(" + ", down.Select(d => Figure(d, units))))} = {total} {force}{over}");
            }

            if (totals.Count > 0)
            {
                yield return SheetUnits.Step($"{name}, whole bridge: {string.Join(" + ", totals)} = {Figure(all, units)} {force}");
            }
        }
    }

    private static string Figure(double value, DisplayUnits units) => ResultTable.Figure(units.From(Quantity.Force, value), 3).Replace('-', '−');
}
