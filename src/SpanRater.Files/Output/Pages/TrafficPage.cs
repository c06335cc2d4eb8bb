using System.Globalization;

namespace SpanRater.Files;

/// <summary>What <c>traffic</c> says: what recorded trucks bring to members and floor, how often, and what follows from it.</summary>
public static class TrafficPage
{
    /// <summary>So many rows of the table are printed unless all are asked for.</summary>
    private const int Printed = 20;

    /// <summary>Where more than one truck in so many is unlikely, the unit is asked after.</summary>
    private const int OneIn = 100;

    private static readonly double[] Parts = [0.5, 0.9, 0.99, 0.999];

    private static readonly ResultColumn[] Csv =
    [
        new("truss"), new("part"), new("name"), new("at"), new("effect"), new("sense"), new("unit"), new("largest"), new("with impact"), new("impact", Quantity.Number), new("share, or arm in m"),
        .. Parts.Select(p => new ResultColumn($"quantile {p.ToString(CultureInfo.InvariantCulture)}")), new("bin width"), new("dead"), new("capacity"),
        new("used", Quantity.Number), new("crossings above capacity", Quantity.Number), new("line"), new("time"), new("gross", Quantity.Force), new("further"), new("unlikely"),
    ];

    /// <summary>The page.</summary>
    /// <param name="reading">What the record gave.</param>
    /// <param name="years">Return period of the extrapolation [years]; null for none.</param>
    /// <param name="member">Position of a member that is told in full; null for none.</param>
    /// <param name="everyRow">True to print every row.</param>
    /// <param name="units">The units to show.</param>
    public static ResultPage Of(TrafficReading reading, double? years, int? member, bool everyRow, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(reading);
        ArgumentNullException.ThrowIfNull(units);
        TrafficTally tally = reading.Tally;
        TrafficPlan plan = tally.Plan;
        Bridge bridge = plan.Bridge;
        string counted = TrafficWording.Counted(reading);
        string[] not = [.. plan.NotCounted.Select(n => TrafficWording.Of(n, units))];
        bool isAnswer = tally.Trucks > 0 && plan.Effects.Count > 0;
        string[] assumed = [.. TrafficWording.Assumed(plan, units)];
        var extremes = new TrafficExtremes(reading, years);
        IReadOnlyList<ResultBlock> factor = TrafficFactorSection.Of(reading, units), fatigue = TrafficFatigueSection.Of(reading, units);
        TrafficEffect[] ranked = [.. Ranked(tally)], brought = [.. Brought(ranked, tally)], shown = everyRow ? brought : [.. brought.Take(Printed)];
        string[] nearest = [.. isAnswer ? Nearest(ranked, reading, units) : []];
        ResultBlock[] blocks =
        [
            new ResultBlock.Heading($"{bridge.Title}: recorded trucks", 1),
            new ResultBlock.Paragraph(counted, Strong: true),
            .. tally.Trucks > 0 ? [new ResultBlock.Paragraph(TrafficWording.Weighed(tally, units))] : Array.Empty<ResultBlock>(),
            .. nearest.Select(n => new ResultBlock.Paragraph(n, Strong: true)),
            .. isAnswer ? [new ResultBlock.Paragraph(TrafficWording.Unfactored)] : Array.Empty<ResultBlock>(),
            .. not.Length > 0 ? [new ResultBlock.Items("Not taken into the count:", not)] : Array.Empty<ResultBlock>(),
            .. Rows(reading),
            .. isAnswer ? Table(shown, brought.Length, reading, units) : [],
            .. isAnswer && member is { } told ? TrafficMemberSection.Of(reading, told, units) : [],
            .. isAnswer ? extremes.Section(shown, brought, units) : [],
            .. isAnswer ? fatigue : [],
            .. tally.Trucks > 0 ? factor : [],
            new ResultBlock.Items("Assumed:", assumed),
            new ResultBlock.Paragraph(Words.Caution, Strong: true),
        ];
        return new ResultPage(
            blocks,
            new ResultTable(Csv, [.. isAnswer ? plan.Effects.Select((e, i) => CsvRow(e, i, reading, units)) : []]),
            [counted, .. nearest, TrafficWording.Unfactored, .. not.Select(n => $"Not taken into the count: {n}"), .. assumed.Select(a => $"Assumed: {a}"), Words.Caution],
            json => TrafficJson.Write(json, reading, extremes, not, assumed),
            isAnswer);
    }

    /// <summary>The page of a truss that cannot be solved.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="refusal">Why.</param>
    /// <param name="units">The units to show.</param>
    public static ResultPage Refused(Bridge bridge, Refusal refusal, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        string why = RefusalWording.Sentence(refusal, bridge.Truss, units);
        return new ResultPage(
            [new ResultBlock.Heading($"{bridge.Title}: recorded trucks", 1), new ResultBlock.Paragraph($"Nothing is counted: {why}", Strong: true), new ResultBlock.Paragraph(Words.Caution, Strong: true)],
            new ResultTable(Csv, []), [why, Words.Caution],
            json =>
            {
                json.WriteString("bridge", bridge.Name);
                json.WriteRefusal(refusal, bridge.Truss);
            },
            IsAnswer: false);
    }

    // Nearest to the capacity first; then those without one, as in the plan.
    private static IEnumerable<TrafficEffect> Ranked(TrafficTally tally) =>
        tally.Plan.Effects.Where(e => !e.OnlyPulls).Select((e, i) => (Effect: e, At: i, Used: e.UsedBy(tally.Most(e.Channel)))).OrderByDescending(r => r.Used ?? double.NegativeInfinity).ThenBy(r => r.At).Select(r => r.Effect);

    // Of the two trusses the one that is nearer to its capacity; CSV and JSON have both.
    private static IEnumerable<TrafficEffect> Brought(TrafficEffect[] ranked, TrafficTally tally) =>
        ranked.Where(e => tally.Most(e.Channel) > 0).GroupBy(e => (e.Kind, e.Name, e.At, e.Acts, e.Sense)).Select(g => g.First());

    private static IEnumerable<string> Nearest(TrafficEffect[] ranked, TrafficReading reading, DisplayUnits units)
    {
        TrafficTally tally = reading.Tally;
        Bridge bridge = tally.Plan.Bridge;
        foreach ((TrafficEffect rod, int at) in tally.Plan.Effects.Select((e, i) => (e, i)).Where(r => r.e.OnlyPulls && tally.Over(r.i) > 0))
        {
            yield return $"{rod.Name} only pulls, and in {TrafficWording.Whole(tally.Over(at)!.Value)} of the crossings dead load and truck together would press it, with nothing to take over from it{(rod.Truss is { } t ? $" ({bridge.Deck.TrussNames[t]} truss)" : "")}: no force of any member here holds for them.";
        }

        if (ranked.FirstOrDefault(e => tally.MostRecord(e.Channel) is not null && e.UsedBy(tally.Most(e.Channel)) is not null) is { } first)
        {
            double used = first.UsedBy(tally.Most(first.Channel))!.Value;
            long over = tally.Over(tally.Plan.Effects.ToList().IndexOf(first)) ?? 0;
            yield return string.Create(CultureInfo.InvariantCulture, $"Nearest to its capacity: {TrafficWording.Name(first, bridge)}: dead load and live load with impact come to {ResultTable.Figure(used, 2)} of it, under the truck of {TrafficWording.Of(tally.MostRecord(first.Channel)!, reading, units)}; {TrafficWording.Whole(over)} crossing{(over == 1 ? "" : "s")} ({TrafficWording.Share(over, tally.Trucks)} %) exceed{(over == 1 ? "s" : "")} it.");
        }
        else
        {
            yield return "No effect has both its dead load and its capacity: nothing is said of how near the trucks come to what the bridge carries.";
        }

        TrafficEffect[] brought = [.. Brought(ranked, tally)];
        int unlikely = brought.Count(e => tally.MostRecord(e.Channel)!.IsUnlikely);
        if (unlikely > 0)
        {
            yield return $"Trucks marked as unlikely brought {TrafficWording.Whole(unlikely)} of the {TrafficWording.Whole(brought.Length)} largest effects here: check their rows, and take out what is wrong.";
        }
    }

    private static IEnumerable<ResultBlock> Rows(TrafficReading reading)
    {
        if (reading.Rejected.Count > 0)
        {
            yield return new ResultBlock.Items(
                $"Rejected rows, the first {RemarkedRows.Told} of each reason:", Told(reading.Rejected));
        }

        if (reading.Unlikely.Count > 0)
        {
            string unit = reading.Unlikely.Count * OneIn > reading.Tally.Trucks ? $" Of all trucks more than one in {OneIn} is among them: look whether the unit in the heading is that of the numbers." : "";
            yield return new ResultBlock.Items($"Unlikely trucks are counted in every number here.{unit} The first {RemarkedRows.Told} of each reason:", Told(reading.Unlikely));
        }

        if (reading.OutOfOrder > 0)
        {
            yield return new ResultBlock.Paragraph($"The time of {TrafficWording.Whole(reading.OutOfOrder)} counted row{(reading.OutOfOrder == 1 ? " is" : "s is")} before that of the row above, first on line {TrafficWording.Whole(reading.FirstOutOfOrder!.Value)}: counted all the same. Are records of several lanes or files joined?");
        }
    }

    private static string[] Told(RemarkedRows rows) =>
        [.. rows.Remarks.SelectMany(r => (string[])[$"{RowRemarkWording.Of(r)}: {TrafficWording.Whole(rows.Of(r))}", .. rows.First(r).Select(f => f.ToString())])];

    private static IEnumerable<ResultBlock> Table(TrafficEffect[] shown, int brought, TrafficReading reading, DisplayUnits units)
    {
        TrafficTally tally = reading.Tally;
        var places = tally.Plan.Effects.Select((e, i) => (e, i)).ToDictionary(p => p.e, p => p.i);
        yield return new ResultBlock.Heading("What the trucks bring");
        yield return new ResultBlock.Paragraph($"Live effects without impact unless said; quantiles are upper edges of histogram bins, a bin being what {TrafficWording.Show(TrafficChannel.BinWeight, Quantity.Force, units)} brings on the largest ordinate.{(shown.Length < brought ? $" The {shown.Length} nearest to their capacity of {brought}; --all prints every one." : "")}");
        yield return new ResultBlock.Grid(new ResultTable(
            [
                new("part"), new("in"), new("truss"), new("largest"), new("with impact"), .. Parts.Select(p => new ResultColumn(p.ToString(CultureInfo.InvariantCulture))), new("dead"), new("capacity"),
                new("used", Quantity.Number), new("above %"), new("line"), new("gross", Quantity.Force, 1),
            ],
            [
                .. shown.Select(e => (IReadOnlyList<object?>)
                [
                    e.Name + (e.At.Length > 0 ? $" at {e.At}" : ""), e.Sense is { } sense ? Words.Of(sense) : PartWords.InWords(e.Acts), TrafficWording.TrussOf(e, tally.Plan),
                    In(e, e.Factor * tally.Most(e.Channel), units), In(e, e.WithImpact * tally.Most(e.Channel), units), .. Parts.Select(p => In(e, e.Factor * tally.Quantile(e.Channel, p), units)),
                    In(e, e.Dead, units), In(e, e.Capacity, units), e.UsedBy(tally.Most(e.Channel)), tally.Over(places[e]) is { } over ? TrafficWording.Share(over, tally.Trucks) : "–",
                    $"{TrafficWording.Whole(tally.MostRecord(e.Channel)!.Line)}{(tally.MostRecord(e.Channel)!.IsUnlikely ? ", unlikely" : "")}", tally.MostRecord(e.Channel)!.Gross,
                ]),
            ]));
        string[] lacking = [.. tally.Plan.Effects.Where(e => !e.OnlyPulls && e.WithoutCapacity is not null).GroupBy(e => RatingWording.Of(e.WithoutCapacity!, units)).Select(g => $"{string.Join(", ", g.Select(e => $"{e.Name} in {(e.Sense is { } s ? Words.Of(s) : PartWords.InWords(e.Acts))}").Distinct())}: {g.Key}")];
        if (lacking.Length > 0)
        {
            yield return new ResultBlock.Items("Not set against a capacity:", lacking);
        }
    }

    // A force or a moment, with its unit where the column has both.
    private static string In(TrafficEffect effect, double? value, DisplayUnits units) =>
        value is { } si ? TrafficWording.Show(si, PartWords.QuantityOf(effect.Acts), units, 1) : "–";

    private static IReadOnlyList<object?> CsvRow(TrafficEffect e, int at, TrafficReading reading, DisplayUnits units)
    {
        TrafficTally tally = reading.Tally;
        Quantity quantity = PartWords.QuantityOf(e.Acts);
        double most = tally.Most(e.Channel);
        TrafficRecord? record = tally.MostRecord(e.Channel);
        string Plain(double? si) => si is { } value ? units.From(quantity, value).ToString("R", CultureInfo.InvariantCulture) : "";
        return
        [
            e.Truss is { } t ? tally.Plan.Bridge.Deck.TrussNames[t] : "", PartWords.Of(e.Kind), e.Name, e.At, PartWords.Of(e.Acts), e.Sense is { } sense ? Words.Of(sense) : "", units.Symbol(quantity),
            Plain(e.Factor * most), Plain(e.WithImpact * most), e.Impact.Value, e.Factor.ToString("R", CultureInfo.InvariantCulture), .. Parts.Select(p => Plain(e.Factor * tally.Quantile(e.Channel, p))),
            Plain(e.Factor * tally.Plan.Channels[e.Channel].BinWidth), Plain(e.Dead), Plain(e.OnlyPulls ? null : e.Capacity), e.UsedBy(most), tally.Over(at) is { } over ? (double)over : null,
            record?.Line.ToString(CultureInfo.InvariantCulture) ?? "", record?.Time ?? "", record?.Gross, record is null ? "" : string.Join("; ", reading.Further.Zip(record.Further, (n, v) => $"{n}: {v}")), record?.IsUnlikely == true ? "yes" : "",
        ];
    }
}
