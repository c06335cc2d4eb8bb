using System.Globalization;
using System.Text.Json;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>What <c>section</c> says: one member a second time, by cutting the truss in two.</summary>
public static class SectionPage
{
    /// <summary>Makes the page.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="asked">The load.</param>
    /// <param name="member">Name of the member.</param>
    /// <param name="outcome">The check, or why there is none.</param>
    /// <param name="units">The units to show.</param>
    public static ResultPage Of(Bridge bridge, LoadAsked asked, string member, Outcome<SectionCheck> outcome, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(asked);
        ArgumentNullException.ThrowIfNull(outcome);
        var title = new ResultBlock.Heading($"{bridge.Name}: {member} by sections under {asked.Title}", 1);
        Quantity force = asked.UnitLoadAt is null ? Quantity.Force : Quantity.Number;
        ResultColumn[] columns = [new("cut", Quantity.Number, 0), new("member"), new("force by section", force), new("sense"), new("force by joints", force)];
        if (!outcome.TryGet(out SectionCheck? check, out Refusal? refusal))
        {
            string why = RefusalWording.Sentence(refusal, bridge.Truss);
            return new ResultPage(
                [title, new ResultBlock.Paragraph(why, Strong: true)],
                new ResultTable(columns, []),
                [why],
                json =>
                {
                    WriteHead(json, bridge, asked, member);
                    json.WriteRefusal(refusal, bridge.Truss);
                },
                IsAnswer: false);
        }

        ForceNotation notation = asked.Notation(check.Worked, units);
        string conclusion = Conclusion(check, notation);
        return new ResultPage(
            [title, .. Body(check, notation), new ResultBlock.Paragraph(conclusion, Strong: true)],
            new ResultTable(
                columns,
                [
                    .. check.Cuts.Select((cut, c) => (IReadOnlyList<object?>)
                        [(double)(c + 1), check.Worked.Truss.Members[cut.Member].Name, check.Forces[cut.Member], SenseOf(check.Forces[cut.Member]), check.Worked.Forces[cut.Member]]),
                ]),
            check.Cuts.Count == 0 ? [conclusion] : [],
            json => Write(json, bridge, asked, member, check),
            IsAnswer: check.Cuts.Count > 0);
    }

    private static IEnumerable<ResultBlock> Body(SectionCheck check, ForceNotation notation)
    {
        WorkedSolution worked = check.Worked;
        if (WorkedSolutionPage.Slack(worked) is { } slack)
        {
            yield return slack;
        }

        if (check.Cuts.Count == 0)
        {
            yield break;
        }

        if (check.Cuts.Count > 1)
        {
            string[] before = [.. check.Cuts.SkipLast(1).Select(c => worked.Truss.Members[c.Member].Name)];
            yield return new ResultBlock.Paragraph($"No single cut through up to four members gives {check.Name} alone: {(before.Length == 1 ? "a cut of its own gives" : "cuts of their own give")} {BalanceWording.List(before)} first.");
        }

        // The reactions, where a part kept bears one.
        bool bears = check.Cuts.Any(c => c.Balance.Joints.Any(j => worked.Truss.Joints[j].Support is not null));
        for (int s = 0; bears && s < worked.Steps.Count; s++)
        {
            if (worked.Steps[s].Kind == StepKind.WholeTruss)
            {
                yield return new ResultBlock.Heading(StepWording.Title(worked, worked.Steps[s]));
                foreach (ResultBlock block in WorkedSolutionPage.Step(worked, s, notation, null).Skip(1))
                {
                    yield return block;
                }
            }
        }

        var found = new List<int>();
        for (int c = 0; c < check.Cuts.Count; c++)
        {
            foreach (ResultBlock block in Cut(check, c, found, notation))
            {
                yield return block;
            }

            found.Add(check.Cuts[c].Member);
        }
    }

    private static IEnumerable<ResultBlock> Cut(SectionCheck check, int index, List<int> found, ForceNotation notation)
    {
        WorkedSolution worked = check.Worked;
        SectionCut cut = check.Cuts[index];
        string name = worked.Truss.Members[cut.Member].Name;
        yield return new ResultBlock.Heading($"Cut {(index + 1).ToString(CultureInfo.InvariantCulture)}, for {name}");
        string through = BalanceWording.List([.. cut.Cut.Select(m => worked.Truss.Members[m].Name)]);
        string kept = BalanceWording.List([.. cut.Balance.Joints.Select(j => worked.Truss.Joints[j].Name)]);
        bool joint = cut.Balance.Joints.Count == 1;
        yield return new ResultBlock.Paragraph($"The cut through {through} parts the truss in two. Kept is the part with joint{(joint ? "" : "s")} {kept}, which bears no more loads and reactions than the other.");
        string[] known =
        [
            .. found.Where(cut.Cut.Contains).Select(m => $"{worked.Truss.Members[m].Name} {notation.WithUnit(check.Forces[m])}"),
            .. Enumerable.Range(worked.Truss.Members.Count, worked.Forces.Count - worked.Truss.Members.Count)
                .Where(f => cut.Balance.Joints.Contains(worked.Names.JointOf(f))).Select(f => $"{worked.Names[f]} {notation.WithUnit(worked.Forces[f])}"),
        ];
        string row = known.Length == 0 ? "" : $"Known: {string.Join(", ", known)}. ";
        yield return new ResultBlock.Paragraph(row + StepWording.Loads(worked, cut.Balance.Joints, notation));
        foreach (ResultBlock block in WorkedSolutionPage.One(worked, cut.Balance, cut.Member, [.. cut.Cut.Where(m => !found.Contains(m))], check.Forces, first: false, notation))
        {
            yield return block;
        }
    }

    private static string Conclusion(SectionCheck check, ForceNotation notation)
    {
        string name = check.Name, joints = notation.MemberInWords(check.ByJoints);
        string agreement = check.Difference > ForceSolution.RouteLimit
            ? string.Create(CultureInfo.InvariantCulture, $"The two differ by {check.Difference:0.0e+0} of the largest member force.")
            : string.Create(CultureInfo.InvariantCulture, $"The two agree within {ForceSolution.RouteLimit:0e+0} of the largest member force.");
        return check.Member is null ? $"{name} only pulls, and stays slack under this load: it carries nothing."
            : check.BySections is not { } force ? $"No cut through up to four members gives {name}, alone or together with members that a cut gives: it is found joint by joint only, {joints}."
            : $"{name} by {(check.Cuts.Count == 1 ? "section" : "sections")}: {notation.MemberInWords(force)}. Joint by joint: {joints}. {agreement}";
    }

    private static void Write(Utf8JsonWriter json, Bridge bridge, LoadAsked asked, string member, SectionCheck check)
    {
        var writer = new BalanceJson(check.Worked, asked);
        WriteHead(json, bridge, asked, member);
        json.WriteStartArray("cuts");
        foreach (SectionCut cut in check.Cuts)
        {
            json.WriteStartObject();
            json.WriteString("member", check.Worked.Truss.Members[cut.Member].Name);
            json.WriteStartArray("through");
            foreach (int m in cut.Cut)
            {
                json.WriteStringValue(check.Worked.Truss.Members[m].Name);
            }

            json.WriteEndArray();
            json.WriteStartObject("equation");
            writer.WriteEquation(json, cut.Balance);
            json.WriteEndObject();
            json.WriteNumber("force", writer.Force(check.Forces[cut.Member]));
            json.WriteEndObject();
        }

        json.WriteEndArray();
        json.WriteNumberOrNull("bySections", check.BySections is { } force ? writer.Force(force) : null);
        json.WriteNumber("byJoints", writer.Force(check.ByJoints));
        json.WriteNumberOrNull("difference", check.Difference);
    }

    private static void WriteHead(Utf8JsonWriter json, Bridge bridge, LoadAsked asked, string member)
    {
        WorkedSolutionJson.WriteHead(json, bridge, asked);
        json.WriteString("member", member);
    }

    private static string SenseOf(double force) => force == 0 ? "zero" : Words.Of(force > 0 ? Sense.Tension : Sense.Compression);
}
