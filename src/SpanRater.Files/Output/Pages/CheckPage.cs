using System.Globalization;
using System.Text.Json;

namespace SpanRater.Files;

/// <summary>What <c>check</c> says: whether it is a truss, determinate and stable, and what deserves a second look.</summary>
public static class CheckPage
{
    /// <summary>What the rank is called.</summary>
    public const string Rank = "rank";

    /// <summary>What the condition number is called.</summary>
    public const string Condition = "condition number";

    /// <summary>Makes the page.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="findings">What its reading found.</param>
    /// <param name="units">The units to show.</param>
    public static ResultPage Of(Bridge bridge, FindingList findings, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(findings);
        Truss truss = bridge.Truss;
        Stability stability = Stability.Of(truss);
        _ = SolvableTruss.Of(truss).TryGet(out SolvableTruss? system, out Refusal? refusal);
        var rods = system as RodTruss;
        var facts = Facts(bridge, stability, rods, units);
        var blocks = new List<ResultBlock>
        {
            new ResultBlock.Heading($"{bridge.Name}: check"),
            new ResultBlock.Paragraph(Verdict(stability, rods), Strong: stability.Verdict != StabilityVerdict.Determinate),
        };
        if (refusal is not null)
        {
            blocks.Add(new ResultBlock.Paragraph(RefusalWording.Sentence(refusal, truss, units), Strong: true));
        }

        blocks.Add(new ResultBlock.Grid(new ResultTable(
            [new ResultColumn("what"), new ResultColumn("value")],
            [.. facts.Select(f => (IReadOnlyList<object?>)[f.What, f.Value])])));
        string[] secondLooks = [.. findings.All.Select(f => f.ToString()), .. stability.WeakGeometry is { } weak ? (string[])[MechanismWording.Of(weak, truss)] : []];
        if (secondLooks.Length > 0)
        {
            blocks.Add(new ResultBlock.Items("Worth a second look:", secondLooks));
        }

        return new ResultPage(
            blocks,
            new ResultTable(
                [new ResultColumn("what"), new ResultColumn("value")],
                [
                    ["verdict", Word(stability.Verdict)],
                    .. facts.Select(f => (IReadOnlyList<object?>)[f.What, f.Value]),
                    .. secondLooks.Select(f => (IReadOnlyList<object?>)["finding", f]),
                ]),
            [],
            json => Write(json, bridge, stability, rods, refusal, findings),
            IsAnswer: stability.Verdict != StabilityVerdict.Mechanism);
    }

    private static string Word(StabilityVerdict verdict) => verdict switch
    {
        StabilityVerdict.Determinate => "determinate",
        StabilityVerdict.Redundant => "redundant",
        _ => "mechanism",
    };

    private static string Verdict(Stability s, RodTruss? rods) => s.Verdict switch
    {
        StabilityVerdict.Redundant when rods is { AreasDecide: false } =>
            "It is a truss and it stands. Of two rods that cross in a panel at most one acts; with one of each pair slack, statics alone gives every force.",
        StabilityVerdict.Redundant when rods is not null =>
            "It is a truss and it stands. Which rods act, areas and load decide together: with one rod of each crossed pair slack it still has more members or reactions than statics can find.",
        StabilityVerdict.Determinate => $"It is a truss, it stands, and statics alone gives every force. {RefusalWording.Count(s)}",
        StabilityVerdict.Redundant => $"It is a truss and it stands, with {s.Redundancy} member{(s.Redundancy == 1 ? "" : "s")} or reaction{(s.Redundancy == 1 ? "" : "s")} more than statics can find.",
        _ => "It is not a truss that stands: part of it can move.",
    };

    private static List<(string What, string Value)> Facts(Bridge bridge, Stability s, RodTruss? rodTruss, DisplayUnits units)
    {
        Truss truss = bridge.Truss;
        string length = units.Symbol(Quantity.Length);
        var facts = new List<(string, string)>
        {
            ("joints", truss.Joints.Count.ToString(CultureInfo.InvariantCulture)),
            ("members", truss.Members.Count.ToString(CultureInfo.InvariantCulture)),
            ("reactions", s.ReactionCount.ToString(CultureInfo.InvariantCulture)),
            ("equations", s.EquationCount.ToString(CultureInfo.InvariantCulture)),
            (Rank, s.Rank.ToString(CultureInfo.InvariantCulture)),
            ("panel points", truss.PanelPoints.Count == 0 ? "none: no deck to load" : string.Join(" ", truss.PanelPoints.Select(p => truss.Joints[p].Name))),
        };
        if (truss.PanelPoints.Count >= 2)
        {
            facts.Add(("deck length", $"{Length(truss.Stations[^1] - truss.Stations[0], units)} {length}"));
        }

        double[] panels = [.. truss.Stations.Skip(1).Zip(truss.Stations, (right, left) => right - left)];
        if (panels.Length > 0)
        {
            facts.Add(("panel lengths", $"{string.Join("  ", panels.Select(p => Length(p, units)))} {length}"));
        }

        int[] byLength = [.. Enumerable.Range(0, truss.Members.Count).OrderBy(truss.Length)];
        facts.Add(("height", $"{Length(truss.Joints.Max(j => j.Y) - truss.Joints.Min(j => j.Y), units)} {length}"));
        facts.Add(("shortest member", $"{truss.Members[byLength[0]].Name}, {Length(truss.Length(byLength[0]), units)} {length}"));
        facts.Add(("longest member", $"{truss.Members[byLength[^1]].Name}, {Length(truss.Length(byLength[^1]), units)} {length}"));
        if (s.Condition is { } condition)
        {
            facts.Add((Condition, condition.ToString("0.0", CultureInfo.InvariantCulture)));
        }

        if (s.Movements > 0)
        {
            facts.Add(("independent movements", s.Movements.ToString(CultureInfo.InvariantCulture)));
            facts.Add(("joints that move", string.Join(" ", s.MovingJoints.Select(j => truss.Joints[j].Name))));
            facts.Add(("members that turn", string.Join(" ", truss.Members.Where((_, m) => s.WaysToMove.Any(w => w.Members.Contains(m))).Select(m => m.Name))));
            facts.Add(("panels that change shape", string.Join(" ", s.WaysToMove.SelectMany(w => w.Panels).Distinct().Select(p => MechanismWording.Name(p, truss)).DefaultIfEmpty("none"))));
        }

        int rods = truss.Members.Count(m => m.TensionOnly);
        if (rods > 0)
        {
            facts.Add(("members that only pull", rods.ToString(CultureInfo.InvariantCulture)));
        }

        if (rodTruss is not null)
        {
            facts.Add(("crossed pairs of rods", rodTruss.Pairs.Count == 0 ? "none" : string.Join(", ", rodTruss.Pairs.Select(p => $"{truss.Members[p.First].Name} and {truss.Members[p.Second].Name}"))));
        }

        facts.Add(("load cases", bridge.Cases.Count == 0 ? "none" : string.Join(" ", bridge.Cases.Select(c => c.Name))));
        facts.Add(("dead load", DeadLoadWording.Of(bridge, units)));
        return facts;
    }

    private static string Length(double metres, DisplayUnits units) => ResultTable.Figure(units.From(Quantity.Length, metres), 2);

    private static void Write(Utf8JsonWriter json, Bridge bridge, Stability s, RodTruss? rods, Refusal? refusal, FindingList findings)
    {
        json.WriteString("bridge", bridge.Name);
        json.WriteString("verdict", Word(s.Verdict));
        json.WriteNumber("joints", bridge.Truss.Joints.Count);
        json.WriteNumber("members", s.MemberCount);
        json.WriteNumber("reactions", s.ReactionCount);
        json.WriteNumber("equations", s.EquationCount);
        json.WriteNumber(Rank, s.Rank);
        json.WriteNumberOrNull("condition", s.Condition);
        json.WriteNames("movingJoints", s.MovingJoints.Select(j => bridge.Truss.Joints[j].Name));
        MovementFacts.Write(json, bridge.Truss, s);
        json.WriteNames("redundantAmong", s.StressedMembers.Select(m => bridge.Truss.Members[m].Name));
        json.WriteNames("panelPoints", bridge.Truss.PanelPoints.Select(p => bridge.Truss.Joints[p].Name));
        json.WriteNames("cases", bridge.Cases.Select(c => c.Name));
        if (rods is not null)
        {
            json.WriteStartArray("crossedPairs");
            foreach (CrossedPair pair in rods.Pairs)
            {
                json.WriteStartArray();
                json.WriteStringValue(bridge.Truss.Members[pair.First].Name);
                json.WriteStringValue(bridge.Truss.Members[pair.Second].Name);
                json.WriteEndArray();
            }

            json.WriteEndArray();
        }

        if (refusal is not null)
        {
            json.WriteRefusal(refusal, bridge.Truss);
        }

        json.WriteStartArray("findings");
        foreach (Finding finding in findings.All)
        {
            json.WriteStartObject();
            json.WriteString("severity", finding.Severity == FindingSeverity.Error ? "error" : "warning");
            json.WriteString("file", finding.Where.File);
            json.WriteNumberOrNull("line", finding.Where.Line);
            json.WriteNumberOrNull("column", finding.Where.Column);
            json.WriteString("text", finding.What);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }
}
