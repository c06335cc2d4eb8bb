namespace SpanRater.Files;

/// <summary>What <c>influence</c> says: the influence lines of members and reactions.</summary>
public static class InfluencePage
{
    /// <summary>Makes the page.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="outcome">The lines, or why there are none.</param>
    /// <param name="only">Name of the one member or reaction asked for; null for all.</param>
    /// <param name="units">The units to show.</param>
    public static ResultPage Of(Bridge bridge, Outcome<InfluenceLines> outcome, string? only, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(outcome);
        ArgumentNullException.ThrowIfNull(units);
        Truss truss = bridge.Truss;
        var title = new ResultBlock.Heading($"{bridge.Name}: influence lines, force per unit downward load on one truss");
        ResultColumn[] columns = [new("effect"), new("kind"), new("panel point"), new("station", Quantity.Length), new("ordinate", Quantity.Number, 4)];
        if (!outcome.TryGet(out InfluenceLines? lines, out Refusal? refusal))
        {
            return new ResultPage(
                [title, new ResultBlock.Paragraph(RefusalWording.Sentence(refusal, truss, units), Strong: true)],
                new ResultTable(columns, []),
                [RefusalWording.Sentence(refusal, truss, units)],
                json =>
                {
                    json.WriteString("bridge", bridge.Name);
                    WritePanelPoints(json, truss);
                    json.WriteStartArray("effects");
                    json.WriteEndArray();
                    json.WriteRefusal(refusal, truss);
                },
                IsAnswer: false);
        }

        InfluenceEffect[] effects = [.. lines.Members.Concat(lines.Reactions).Where(e => only is null || e.Name == only)];
        string[] points = [.. truss.PanelPoints.Select(p => truss.Joints[p].Name)];
        var blocks = new List<ResultBlock>
        {
            title,
            new ResultBlock.Grid(new ResultTable(
                [new("effect"), .. points.Select(p => new ResultColumn(p, Quantity.Number, 4))],
                [
                    ["station " + $"[{units.Symbol(Quantity.Length)}]", .. truss.Stations.Select(s => (object?)units.From(Quantity.Length, s))],
                    .. effects.Select(e => (IReadOnlyList<object?>)[e.Name, .. e.Line.Ordinates.Select(y => (object?)y)]),
                ])),
        };
        if (lines.Slack is { } slack)
        {
            blocks.Insert(1, new ResultBlock.Paragraph(RodWording.OfLines(slack, truss), Strong: true));
        }

        if (only is not null && effects is [{ Kind: EffectKind.Member } one])
        {
            blocks.Add(Reading(one.Line, units));
        }

        if (only is null && ZeroMemberWording.UnderEveryDeckLoad(lines) is { } zero)
        {
            blocks.Add(zero);
        }

        blocks.Add(new ResultBlock.Paragraph("Tension and upward or rightward reactions are positive. Between panel points the floor spans simply, so a line is straight there; a load off the deck does nothing."));
        return new ResultPage(
            blocks,
            new ResultTable(
                columns,
                [
                    .. effects.SelectMany(e => e.Line.Ordinates.Select((y, i) =>
                        (IReadOnlyList<object?>)[e.Name, KindOf(e), points[i], truss.Stations[i], y])),
                ]),
            lines.Slack is { } slackInNotes ? [RodWording.OfLines(slackInNotes, truss)] : [],
            json =>
            {
                json.WriteString("bridge", bridge.Name);
                WritePanelPoints(json, truss);
                json.WriteStartArray("effects");
                foreach (InfluenceEffect effect in effects)
                {
                    json.WriteStartObject();
                    json.WriteString("name", effect.Name);
                    json.WriteString("kind", KindOf(effect));
                    json.WriteNumbers("ordinates", effect.Line.Ordinates);
                    json.WriteEndObject();
                }

                json.WriteEndArray();
                if (lines.Slack is { } slackNames)
                {
                    json.WriteNames("slack", slackNames.Select(m => truss.Members[m].Name));
                }

                json.WriteNumber("residual", lines.Residual);
            });
    }

    /// <summary>Where a line is loaded for either sense, its areas and its neutral points.</summary>
    /// <param name="line">The line of a member.</param>
    /// <param name="units">The units to show.</param>
    public static ResultBlock.Items Reading(InfluenceLine line, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(line);
        ArgumentNullException.ThrowIfNull(units);
        string unit = units.Symbol(Quantity.Length);
        var items = new List<string>();
        foreach (Sense sense in (Sense[])[Sense.Tension, Sense.Compression])
        {
            IReadOnlyList<DeckStretch> regions = line.Regions(sense);
            items.Add(regions.Count == 0
                ? $"{Words.Of(sense)}: under no load on the deck"
                : $"{Words.Of(sense)}: loads from {string.Join(" and from ", regions.Select(r => $"{Length(r.Left)} to {Length(r.Right)} {unit}"))}; area {Length(line.Area(sense))} {unit}");
        }

        IReadOnlyList<double> neutral = line.NeutralPoints();
        items.Add(neutral.Count == 0 ? "no neutral point" : $"neutral point at {string.Join(", ", neutral.Select(Length))} {unit}");
        return new ResultBlock.Items("Reading the line:", items);

        string Length(double metres) => ResultTable.Figure(units.From(Quantity.Length, metres), 2);
    }

    private static string KindOf(InfluenceEffect effect) => effect.Kind == EffectKind.Member ? "member" : "reaction";

    private static void WritePanelPoints(System.Text.Json.Utf8JsonWriter json, Truss truss)
    {
        json.WriteStartArray("panelPoints");
        for (int i = 0; i < truss.PanelPoints.Count; i++)
        {
            json.WriteStartObject();
            json.WriteString("joint", truss.Joints[truss.PanelPoints[i]].Name);
            json.WriteNumber("station", truss.Stations[i] + 0.0);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
