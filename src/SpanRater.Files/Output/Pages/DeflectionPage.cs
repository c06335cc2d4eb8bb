namespace SpanRater.Files;

/// <summary>What <c>deflect</c> says: deflections of the panel points under a case, or their influence lines.</summary>
public static class DeflectionPage
{
    private const string HowFound = "Down is positive. Found by virtual work from the members' areas, and held against the stiffness of the whole truss; pinned joints, no play in them, no haunch or deck helping.";

    /// <summary>The page of a case.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="loads">The case.</param>
    /// <param name="outcome">The deflections, or why there are none.</param>
    /// <param name="units">The units to show.</param>
    public static ResultPage OfCase(Bridge bridge, LoadCase loads, Outcome<Deflections> outcome, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(loads);
        ArgumentNullException.ThrowIfNull(outcome);
        Truss truss = bridge.Truss;
        var title = new ResultBlock.Heading($"{bridge.Name}: deflections under case {loads.Name}");
        ResultColumn[] columns = [new("panel point"), new("station", Quantity.Length), new("down", Quantity.Deflection, 3)];
        if (!outcome.TryGet(out Deflections? found, out Refusal? refusal))
        {
            return Refused(bridge, title, columns, refusal, ("case", loads.Name));
        }

        IReadOnlyList<object?>[] rows =
        [
            .. found.Joints.Select((j, i) => (IReadOnlyList<object?>)[truss.Joints[j].Name, truss.Joints[j].X, found.Downward[i]]),
        ];
        string[] rods = found.Forces.Rods is { } state ? [.. RodWording.Of(state, truss)] : [];
        return new ResultPage(
            [title, .. rods.Select(r => new ResultBlock.Paragraph(r)), new ResultBlock.Grid(new ResultTable(columns, rows)), new ResultBlock.Paragraph(HowFound)],
            new ResultTable(columns, rows),
            rods,
            json =>
            {
                json.WriteString("bridge", bridge.Name);
                json.WriteString("case", loads.Name);
                json.WriteStartArray("deflections");
                for (int i = 0; i < found.Joints.Count; i++)
                {
                    json.WriteStartObject();
                    json.WriteString("joint", truss.Joints[found.Joints[i]].Name);
                    json.WriteNumber("down", found.Downward[i] + 0.0);
                    json.WriteEndObject();
                }

                json.WriteEndArray();
            });
    }

    /// <summary>The page of influence lines of deflection.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="outcome">The lines, or why there are none.</param>
    /// <param name="units">The units to show.</param>
    public static ResultPage OfLines(Bridge bridge, Outcome<DeflectionLines> outcome, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(outcome);
        ArgumentNullException.ThrowIfNull(units);
        Truss truss = bridge.Truss;
        string force = units.Symbol(Quantity.Force);
        double unit = 1 / units.From(Quantity.Force, 1);
        var title = new ResultBlock.Heading($"{bridge.Name}: influence lines of deflection, under 1 {force} on one truss");
        ResultColumn[] columns = [new("deflection of"), new("load at"), new("station", Quantity.Length), new($"down under 1 {force}", Quantity.Deflection, 4)];
        if (!outcome.TryGet(out DeflectionLines? found, out Refusal? refusal))
        {
            return Refused(bridge, title, columns, refusal, null);
        }

        IReadOnlyList<InfluenceEffect> lines = found.Effects;
        string[] rods = found.Slack is { } slack ? [RodWording.OfLines(slack, truss)] : [];
        string[] points = [.. truss.PanelPoints.Select(p => truss.Joints[p].Name)];
        return new ResultPage(
            [
                title,
                .. rods.Select(r => new ResultBlock.Paragraph(r, Strong: true)),
                new ResultBlock.Grid(new ResultTable(
                    [new($"down [{units.Symbol(Quantity.Deflection)}] of"), .. points.Select(p => new ResultColumn($"load at {p}", Quantity.Number, 4))],
                    [.. lines.Select((line, i) => (IReadOnlyList<object?>)[points[i], .. line.Line.Ordinates.Select(y => (object?)units.From(Quantity.Deflection, unit * y))])])),
                new ResultBlock.Paragraph("The table is the same read by rows or by columns: the deflection here for a load there is that there for a load here (Maxwell)."),
                new ResultBlock.Paragraph(HowFound),
            ],
            new ResultTable(
                columns,
                [.. lines.SelectMany((line, i) => line.Line.Ordinates.Select((y, k) => (IReadOnlyList<object?>)[points[i], points[k], truss.Stations[k], unit * y]))]),
            rods,
            json =>
            {
                json.WriteString("bridge", bridge.Name);
                json.WriteStartArray("effects");
                foreach (InfluenceEffect line in lines)
                {
                    json.WriteStartObject();
                    json.WriteString("name", line.Name);
                    json.WriteString("kind", "deflection");

                    // m per kN.
                    json.WriteNumbers("ordinates", line.Line.Ordinates.Select(y => 1000 * y));
                    json.WriteEndObject();
                }

                json.WriteEndArray();
                if (found.Slack is { } slackNames)
                {
                    json.WriteNames("slack", slackNames.Select(m => truss.Members[m].Name));
                }
            });
    }

    /// <summary>The page of a frequency.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="outcome">The frequency, or why there is none.</param>
    /// <param name="units">The units to show.</param>
    public static ResultPage OfFrequency(Bridge bridge, Outcome<VerticalFrequency> outcome, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(outcome);
        ArgumentNullException.ThrowIfNull(units);
        var title = new ResultBlock.Heading($"{bridge.Name}: first vertical frequency under its dead load");
        ResultColumn[] columns = [new("what"), new("value", Quantity.Number, 3), new("unit")];
        if (!outcome.TryGet(out VerticalFrequency? found, out Refusal? refusal))
        {
            return Refused(bridge, title, columns, refusal, null);
        }

        IReadOnlyList<object?>[] rows =
        [
            ["first vertical frequency", found.Frequency, "Hz"],
            ["the same by 0.18 √(g/Δ)", found.SimpleFrequency, "Hz"],
            [$"largest dead-load deflection Δ, at {bridge.Truss.Joints[found.DeadDeflectionAt].Name}", units.From(Quantity.Deflection, found.DeadDeflection), units.Symbol(Quantity.Deflection)],
            ["weight that swings, on one truss", units.From(Quantity.Force, found.Mass * VerticalFrequency.Gravity), units.Symbol(Quantity.Force)],
        ];
        return new ResultPage(
            [
                title,
                new ResultBlock.Grid(new ResultTable(columns, rows)),
                new ResultBlock.Paragraph("The mass is that of DC and DW, lumped at the joints that carry them; people and vehicles on the deck lower the frequency. The stiffness is that of the pinned truss alone, without the deck. The simple formula is from AISC Steel Design Guide 11 (1997), 3.3, from memory."),
                new ResultBlock.Paragraph(Words.Caution, Strong: true),
            ],
            new ResultTable(columns, rows),
            [Words.Caution],
            json =>
            {
                json.WriteString("bridge", bridge.Name);
                json.WriteNumber("frequency", found.Frequency);
                json.WriteNumber("simpleFrequency", found.SimpleFrequency);
                json.WriteNumber("deadDeflection", found.DeadDeflection);
                json.WriteString("deadDeflectionAt", bridge.Truss.Joints[found.DeadDeflectionAt].Name);
                json.WriteNumber("mass", found.Mass);
            });
    }

    private static ResultPage Refused(Bridge bridge, ResultBlock.Heading title, ResultColumn[] columns, Refusal refusal, (string Name, string Value)? fact)
    {
        string why = RefusalWording.Sentence(refusal, bridge.Truss);
        return new ResultPage(
            [title, new ResultBlock.Paragraph(why, Strong: true)],
            new ResultTable(columns, []),
            [why],
            json =>
            {
                json.WriteString("bridge", bridge.Name);
                if (fact is { } known)
                {
                    json.WriteString(known.Name, known.Value);
                }

                json.WriteRefusal(refusal, bridge.Truss);
            },
            IsAnswer: false);
    }
}
