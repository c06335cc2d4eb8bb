using System.Globalization;

namespace SpanRater.Files;

/// <summary>What <c>share</c> says: what part of each vehicle one truss carries, so that a pocket calculator can follow.</summary>
public static class SharePage
{
    private static readonly ResultColumn[] Columns =
    [
        new("vehicle"), new("class"), new("gauge", Quantity.Length), new("truss"), new("abreast"), new("wheel line", Quantity.Length),
        new("wheel to kerb", Quantity.Length), new("lever rule", Quantity.Number), new("presence", Quantity.Number), new("share", Quantity.Number),
        new("counts"), new("reason"),
    ];

    /// <summary>The page.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="method">The method whose presence factors are applied; null where the bridge names none.</param>
    /// <param name="shares">The vehicles and their shares.</param>
    /// <param name="strips">The lane loads and crowds.</param>
    /// <param name="units">The units to show.</param>
    public static ResultPage Of(Bridge bridge, RatingMethod? method, IReadOnlyList<VehicleShares> shares, IReadOnlyList<StripShares> strips, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(shares);
        ArgumentNullException.ThrowIfNull(strips);
        ArgumentNullException.ThrowIfNull(units);
        Deck deck = bridge.Deck;
        VehicleShares[] found = [.. shares.Where(s => s.Outcome is ShareOutcome.Found)];
        string[] without =
        [
            .. shares.SelectMany(s => s.Vehicles.Select(v => (v.Name, Why: ShareWording.WhyNone(s.Outcome, units)))).Where(s => s.Why is not null).Select(s => $"{s.Name}: {s.Why}"),
            .. strips.Where(s => !s.IsFound).Select(s => $"{s.Load.Name}: {WhyNone(deck, s, units)}"),
        ];
        string[] notes = [.. Notes(deck, method, found.Length > 0, units)];
        StripShares[] foundStrips = [.. strips.Where(s => s.IsFound)];
        var blocks = new List<ResultBlock> { new ResultBlock.Heading($"{bridge.Name}: share of one truss") };
        blocks.AddRange(notes.Select(n => new ResultBlock.Paragraph($"{n}.", Strong: true)));
        if (found.Length > 0)
        {
            blocks.Add(new ResultBlock.Grid(Summary(deck, found)));
        }

        if (without.Length > 0)
        {
            blocks.Add(new ResultBlock.Items(deck.TrussShare is null ? "No share:" : "No share by the lever rule:", without));
        }

        if (found.Length > 0)
        {
            blocks.Add(new ResultBlock.Paragraph(ShareWording.Section(deck, units)));
            blocks.Add(new ResultBlock.Paragraph(ShareWording.Rule(deck, method, units)));
            foreach (VehicleShares group in found)
            {
                blocks.AddRange(Worked(deck, method, group, units));
            }
        }

        if (found.Length == 0 && foundStrips.Length > 0)
        {
            blocks.Add(new ResultBlock.Paragraph(ShareWording.Section(deck, units)));
        }

        blocks.AddRange(foundStrips.SelectMany(s => Worked(deck, s, units)));
        blocks.Add(new ResultBlock.Paragraph(Words.Caution, Strong: true));
        return new ResultPage(
            blocks,
            new ResultTable(Columns, [.. shares.SelectMany(s => CsvRows(deck, s, units)), .. strips.SelectMany(s => CsvRows(deck, s, units))]),
            [.. notes, .. without.Select(w => $"No share: {w}"), Words.Caution],
            json => ShareJson.Write(json, bridge, method, shares, strips),
            IsAnswer: found.Length > 0 || foundStrips.Length > 0 || deck.TrussShare is not null);
    }

    private static IEnumerable<string> Notes(Deck deck, RatingMethod? method, bool hasLeverRule, DisplayUnits units)
    {
        if (deck.TrussShare is { } given)
        {
            yield return $"{RatingWording.Of(new Stamp.GivenShare(given, deck.TrussShareReason), units)}. {(hasLeverRule ? "What follows is what the lever rule would give, and nothing is rated with it" : "The lever rule gives no share beside it")}";
        }

        if (method is null)
        {
            yield return "No rating method is given in bridge.toml, and presence factors are a method's own: these shares have none. Write method = \"LRFR\", \"LFR\", \"ASR\" or \"partial factors\" under [rating]";
        }
    }

    private static ResultTable Summary(Deck deck, IReadOnlyList<VehicleShares> shares) => new(
        [new("vehicle"), new("truss"), new("abreast"), new("lever rule", Quantity.Number, 4), new("presence", Quantity.Number), new("share", Quantity.Number, 4)],
        [
            .. from s in shares
               let found = (ShareOutcome.Found)s.Outcome
               from vehicle in s.Vehicles
               from truss in found.Alike ? (int[])[0] : [0, 1]
               let counts = truss == 0 ? found.Left : found.Right
               select (IReadOnlyList<object?>)
               [
                   vehicle.Name, found.Alike ? "either" : deck.TrussNames[truss], counts.Lanes.ToString(CultureInfo.InvariantCulture),
                   VehicleShares.WithoutPresence(counts, deck.TrussSpacing!.Value), s.HasPresence ? counts.Presence : "none", counts.Value,
               ],
        ]);

    private static IEnumerable<ResultBlock> Worked(Deck deck, RatingMethod? method, VehicleShares group, DisplayUnits units)
    {
        var found = (ShareOutcome.Found)group.Outcome;
        yield return new ResultBlock.Heading($"{string.Join(", ", group.Vehicles.Select(v => v.Name))}");
        yield return new ResultBlock.Paragraph(ShareWording.Abreast(deck, method, group, units));
        foreach (int truss in found.Alike ? (int[])[0] : [0, 1])
        {
            IReadOnlyList<LateralShare> tried = truss == 0 ? found.OnLeft : found.OnRight;
            LateralShare counts = truss == 0 ? found.Left : found.Right;
            yield return new ResultBlock.Heading(found.Alike ? $"Either truss, by distances from the {deck.TrussNames[0]} one" : $"The {deck.TrussNames[truss]} truss", 3);
            foreach (LateralShare share in tried)
            {
                yield return new ResultBlock.Paragraph(ShareWording.Stands(share, deck, units));
                foreach (ResultBlock.Equation equation in ShareWording.Equations(share, deck.TrussSpacing!.Value, group.HasPresence, units))
                {
                    yield return equation;
                }
            }

            yield return new ResultBlock.Paragraph(ShareWording.Counts(counts, tried.Count));
        }
    }

    private static string WhyNone(Deck deck, StripShares strips, DisplayUnits units) => ShareWording.WhyNone(
        strips.Lane ?? (deck.Trusses != 2 ? new ShareOutcome.NotTwoTrusses(deck.Trusses) : new ShareOutcome.NotGiven(deck.TrussSpacing is null, deck.Roadway is null)), units)!;

    private static IEnumerable<ResultBlock> Worked(Deck deck, StripShares strips, DisplayUnits units)
    {
        yield return new ResultBlock.Heading(strips.Lane is null ? strips.Load.Name : $"{strips.Load.Name}: its lane load");
        foreach (int truss in strips.Alike ? (int[])[0] : [0, 1])
        {
            yield return new ResultBlock.Heading(strips.Alike ? $"Either truss, by distances from the {deck.TrussNames[0]} one" : $"The {deck.TrussNames[truss]} truss", 3);
            foreach (ResultBlock block in ShareWording.Strips(strips, truss, deck.TrussSpacing!.Value, units))
            {
                yield return block;
            }
        }
    }

    // A strip stands with its middle in the column of wheel lines; a crowd's share is a width in metres or feet.
    private static IEnumerable<IReadOnlyList<object?>> CsvRows(Deck deck, StripShares strips, DisplayUnits units)
    {
        string type = VehicleClassNames.Name(strips.Load.Class), unit = units.Symbol(Quantity.Length);
        if (!strips.IsFound)
        {
            yield return [strips.Load.Name, type, null, "", "", null, null, null, null, null, "", WhyNone(deck, strips, units)];
            yield break;
        }

        double spacing = deck.TrussSpacing!.Value;
        foreach (int truss in (int[])[0, 1])
        {
            if (strips.Crowd is { } both)
            {
                CrowdShare crowd = truss == 0 ? both.Left : both.Right;
                yield return
                [
                    strips.Load.Name, type, null, deck.TrussNames[truss], "", crowd.Strip.Middle, null, (spacing - crowd.Strip.Middle) / spacing, null,
                    units.From(Quantity.Length, crowd.Width), "yes", $"crowd {ResultTable.Figure(units.From(Quantity.Length, crowd.Strip.Width), 3)} {unit} wide; its share is a width in {unit}",
                ];
                continue;
            }

            var found = (ShareOutcome.Found)strips.Lane!;
            foreach (LateralShare share in truss == 0 ? found.OnLeft : found.OnRight)
            {
                foreach (LateralStrip strip in share.Strips)
                {
                    yield return
                    [
                        strips.Load.Name, type, null, deck.TrussNames[truss], share.Lanes.ToString(CultureInfo.InvariantCulture), strip.Middle, null,
                        share.Strips.Sum(t => (spacing - t.Middle) / spacing), strips.HasPresence ? share.Presence : null, share.Value,
                        share == (truss == 0 ? found.Left : found.Right) ? "yes" : "", "lane load",
                    ];
                }
            }
        }
    }

    private static IEnumerable<IReadOnlyList<object?>> CsvRows(Deck deck, VehicleShares group, DisplayUnits units)
    {
        foreach (LiveLoad vehicle in group.Vehicles)
        {
            if (group.Outcome is not ShareOutcome.Found found)
            {
                yield return [vehicle.Name, VehicleClassNames.Name(vehicle.Class), group.Gauge, "", "", null, null, null, null, null, "", ShareWording.WhyNone(group.Outcome, units)];
                continue;
            }

            foreach ((int truss, LateralShare share) in found.OnLeft.Select(s => (0, s)).Concat(found.OnRight.Select(s => (1, s))))
            {
                foreach (double wheel in share.Wheels)
                {
                    yield return
                    [
                        vehicle.Name, VehicleClassNames.Name(vehicle.Class), group.Gauge, deck.TrussNames[truss], share.Lanes.ToString(CultureInfo.InvariantCulture),
                        wheel, share.WheelToKerb, VehicleShares.WithoutPresence(share, deck.TrussSpacing!.Value), group.HasPresence ? share.Presence : null, share.Value,
                        share == (truss == 0 ? found.Left : found.Right) ? "yes" : "", "",
                    ];
                }
            }
        }
    }
}
