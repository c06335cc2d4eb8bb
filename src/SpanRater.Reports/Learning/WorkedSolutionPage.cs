using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>What <c>joints</c> says: the forces of a truss worked as on paper, every step, every equation, and what closes it.</summary>
public static class WorkedSolutionPage
{
    /// <summary>Makes the page.</summary>
    /// <param name="bridge">The bridge.</param>
    /// <param name="asked">The load.</param>
    /// <param name="outcome">The solution, or why there is none.</param>
    /// <param name="units">The units to show.</param>
    /// <param name="pictureOf">File of the picture of a step, by its position; null where it has none.</param>
    public static ResultPage Of(Bridge bridge, LoadAsked asked, Outcome<WorkedSolution> outcome, DisplayUnits units, Func<int, string?> pictureOf)
    {
        ArgumentNullException.ThrowIfNull(bridge);
        ArgumentNullException.ThrowIfNull(asked);
        ArgumentNullException.ThrowIfNull(outcome);
        ArgumentNullException.ThrowIfNull(units);
        ArgumentNullException.ThrowIfNull(pictureOf);
        var title = new ResultBlock.Heading($"{bridge.Name}: forces joint by joint under {asked.Title}", 1);
        ResultColumn[] columns = [new("step", Quantity.Number, 0), new("joint"), new("name"), new("force", asked.UnitLoadAt is null ? Quantity.Force : Quantity.Number), new("sense")];
        if (!outcome.TryGet(out WorkedSolution? worked, out Refusal? refusal))
        {
            string why = RefusalWording.Sentence(refusal, bridge.Truss);
            return new ResultPage(
                [title, new ResultBlock.Paragraph(why, Strong: true)],
                new ResultTable(columns, []),
                [why],
                json => WorkedSolutionJson.WriteRefused(json, bridge, asked, refusal),
                IsAnswer: false);
        }

        ForceNotation notation = asked.Notation(worked, units);
        var blocks = new List<ResultBlock> { title };
        blocks.AddRange(Beginning(worked, notation));
        for (int s = 0; s < worked.Steps.Count; s++)
        {
            blocks.AddRange(Step(worked, s, notation, pictureOf(s)));
        }

        blocks.AddRange(Closing(worked, notation));
        blocks.Add(Summary(worked, notation));
        return new ResultPage(
            blocks,
            new ResultTable(
                columns,
                [
                    .. worked.Steps.SelectMany((step, s) => step.Found.Select(f => (IReadOnlyList<object?>)
                        [(double)(s + 1), Place(worked, step), worked.Names[f], worked.Forces[f], SenseOf(worked, f)])),
                ]),
            Slack(worked) is { } slack ? [slack.Text] : [],
            json => WorkedSolutionJson.Write(json, bridge, asked, worked));
    }

    /// <summary>Title of a step: "Step 3. Joint U1".</summary>
    /// <param name="worked">The solution.</param>
    /// <param name="step">Position of the step.</param>
    public static string TitleOf(WorkedSolution worked, int step)
    {
        ArgumentNullException.ThrowIfNull(worked);
        return $"Step {(step + 1).ToString(CultureInfo.InvariantCulture)}. {StepWording.Title(worked, worked.Steps[step])}";
    }

    /// <summary>File name of a step's picture: "step-03-U1.png". What no file name should hold becomes a low line.</summary>
    /// <param name="worked">The solution.</param>
    /// <param name="step">Position of the step.</param>
    public static string PictureNameOf(WorkedSolution worked, int step)
    {
        ArgumentNullException.ThrowIfNull(worked);
        string place = worked.Steps[step].Kind == StepKind.WholeTruss ? "reactions" : Place(worked, worked.Steps[step]);
        return string.Create(CultureInfo.InvariantCulture, $"step-{step + 1:00}-{FileNames.Of(place)}.png");
    }

    /// <summary>What a step works at, in a table: the joint, or "whole truss", "section".</summary>
    internal static string Place(WorkedSolution worked, WorkedStep step) => step.Kind switch
    {
        StepKind.WholeTruss => "whole truss",
        StepKind.Section => "section",
        _ => string.Join(' ', step.Joints.Select(j => worked.Truss.Joints[j].Name)),
    };

    /// <summary>tension, compression or zero; empty for a reaction.</summary>
    internal static string SenseOf(WorkedSolution worked, int force) =>
        !worked.Names.IsMember(force) ? ""
        : worked.Forces[force] == 0 ? "zero"
        : Words.Of(worked.Forces[force] > 0 ? Sense.Tension : Sense.Compression);

    /// <summary>What comes before the steps: count and rank, signs, directions, and what is zero at a glance.</summary>
    internal static IEnumerable<ResultBlock> Beginning(WorkedSolution worked, ForceNotation notation)
    {
        Truss truss = worked.Truss;
        yield return new ResultBlock.Heading("Is it a truss that statics can solve?");
        if (Slack(worked) is { } slack)
        {
            yield return slack;
        }

        yield return new ResultBlock.Paragraph($"{RefusalWording.Count(worked.Stability)} As many equations as unknown forces, and none says the same as others: every force follows from equilibrium.");

        if (worked.Loads.Movements.Count > 0)
        {
            yield return new ResultBlock.Paragraph("The supports that move in this case leave the truss without force: being determinate, it follows.");
        }

        yield return new ResultBlock.Heading("Signs and directions");
        yield return new ResultBlock.Paragraph("Every member is taken to pull at its joints, so a positive force is tension and a negative one compression. ΣX counts to the right, ΣY upward, moments anticlockwise. A force already found is put in with its sign: minus a compression becomes plus. Numbers are shown rounded and carried unrounded: by hand the last digit may differ by a few.");
        yield return Directions(worked);
        yield return new ResultBlock.Paragraph("Directions are seen from the first joint; from the second both signs turn.");
        string lead = "Zero at a glance under this load:";
        if (worked.ZeroMembers.Count > 0)
        {
            yield return new ResultBlock.Items(lead, [.. worked.ZeroMembers.Select(z => ZeroMemberWording.Rule(truss, z))]) { IsAnswer = true };
            yield return new ResultBlock.Paragraph("A member without force may still brace others against buckling.");
        }
    }

    /// <summary>The direction of every member, as the difference of its joints over its length.</summary>
    internal static ResultBlock.Grid Directions(WorkedSolution worked) => new(new ResultTable(
        [new("member"), new("from"), new("to"), new("right", Quantity.Length, 4), new("up", Quantity.Length, 4), new("length", Quantity.Length, 4), new("right/length", Quantity.Number, 5), new("up/length", Quantity.Number, 5)],
        [
            .. worked.Truss.Members.Select((m, i) =>
            {
                (double run, double rise, double length) = worked.Names.DirectionAt(i, worked.Truss.FromJoint(i));
                return (IReadOnlyList<object?>)[m.Name, m.From, m.To, run, rise, length, run / length, rise / length];
            }),
        ]));

    /// <summary>Which rods are left out; null where none is.</summary>
    internal static ResultBlock.Paragraph? Slack(WorkedSolution worked) => worked.Slack.Count == 0 ? null : new ResultBlock.Paragraph(
        $"{BalanceWording.List(worked.Slack)} only pull{(worked.Slack.Count == 1 ? "s" : "")} and stay{(worked.Slack.Count == 1 ? "s" : "")} slack under this load: the truss without {(worked.Slack.Count == 1 ? "it" : "them")} is worked. Under another load others may pull.");

    /// <summary>One step of the solution.</summary>
    internal static IEnumerable<ResultBlock> Step(WorkedSolution worked, int index, ForceNotation notation, string? picture)
    {
        WorkedStep step = worked.Steps[index];
        yield return new ResultBlock.Heading(TitleOf(worked, index));
        foreach (string sentence in StepWording.Before(worked, step))
        {
            yield return new ResultBlock.Paragraph(sentence);
        }

        yield return new ResultBlock.Paragraph(StepWording.FreeBody(worked, step, notation));
        if (picture is not null)
        {
            yield return new ResultBlock.Figure($"Free body. {TitleOf(worked, index)}", picture);
        }

        var open = new List<int>(step.Unknown);
        foreach (WorkedEquations equations in step.Equations)
        {
            foreach (ResultBlock block in equations.Found.Count == 1 ? One(worked, equations.Balances[0], equations.Found[0], open, worked.Forces, open.Count == step.Unknown.Count && step.Found.Count() > 1, notation) : Together(worked, equations, notation))
            {
                yield return block;
            }

            open.RemoveAll(equations.Found.Contains);
        }

        foreach (ZeroMember zero in step.ZeroByRule)
        {
            yield return new ResultBlock.Paragraph($"Seen without an equation: {ZeroMemberWording.Rule(worked.Truss, zero)}.") { IsAnswer = true };
        }
    }

    /// <summary>One equation that holds one unknown force: why it is taken, its lines, its result.</summary>
    internal static IEnumerable<ResultBlock> One(WorkedSolution worked, Balance balance, int force, IReadOnlyList<int> open, IReadOnlyList<double> forces, bool first, ForceNotation notation)
    {
        yield return new ResultBlock.Paragraph(BalanceWording.Why(worked, balance, force, open, notation, first));
        if (BalanceWording.Factors(worked, balance, notation) is { } factors)
        {
            yield return factors;
        }

        var lines = new EquationLines(worked, balance, forces, notation);
        yield return lines.WithNames([.. balance.Terms.Select(t => t.Force)]);
        if (balance.Terms.Count > 1)
        {
            yield return lines.WithNumbers([force]) with { IsAnswer = true };
        }

        yield return lines.Solved(force) with { IsAnswer = true };
        yield return new ResultBlock.Paragraph(StepWording.Result(worked, force, forces[force], notation)) { IsAnswer = true };
    }

    private static IEnumerable<ResultBlock> Together(WorkedSolution worked, WorkedEquations equations, ForceNotation notation)
    {
        yield return new ResultBlock.Paragraph($"{StepWording.Count(equations.Found.Count)} equations for {StepWording.Count(equations.Found.Count)} forces:");
        foreach (Balance balance in equations.Balances)
        {
            var lines = new EquationLines(worked, balance, worked.Forces, notation);
            yield return lines.WithNames([.. balance.Terms.Select(t => t.Force)]);
            yield return lines.WithNumbers(equations.Found) with { IsAnswer = true };
        }

        yield return new ResultBlock.Items("Solved together:", [.. equations.Found.Select(f => StepWording.Result(worked, f, worked.Forces[f], notation))]) { IsAnswer = true };
    }

    /// <summary>The equations that no step needed, which must close by themselves, and the order of the work.</summary>
    internal static IEnumerable<ResultBlock> Closing(WorkedSolution worked, ForceNotation notation)
    {
        yield return new ResultBlock.Heading("What is left over must close");
        int left = worked.LeftOver.Count, from = worked.Stability.EquationCount;
        yield return new ResultBlock.Paragraph($"Of the {from.ToString(CultureInfo.InvariantCulture)} equations of the joints {StepWording.Count(left)} were not needed, since the whole truss gave the reactions{(worked.Steps.Any(s => s.Kind == StepKind.Section) ? (worked.Steps.Count(s => s.Kind == StepKind.Section) == 1 ? " and a section gave members" : " and sections gave members") : "")}. They hold no unknown force any more, and must come to zero by themselves:");
        foreach (ClosingEquation closing in worked.LeftOver)
        {
            yield return new EquationLines(worked, closing.Balance, worked.Forces, notation).Closing(closing.Residual);
        }

        yield return new ResultBlock.Paragraph(string.Create(
            CultureInfo.InvariantCulture,
            $"Carried unrounded, the largest of them leaves {worked.LargestResidual:0.0e+0} of the largest force. The whole truss solved at once gives the same forces; the two routes agree within {ForceSolution.RouteLimit:0e+0} of the largest."));
        IEnumerable<string> order = worked.Steps.Select(s => s.Kind switch { StepKind.WholeTruss => "reactions", StepKind.Section => "section", _ => Place(worked, s) });
        yield return new ResultBlock.Paragraph($"Order: {string.Join(", ", order)}.");
    }

    private static ResultBlock.Grid Summary(WorkedSolution worked, ForceNotation notation) => new(new ResultTable(
        [new("name"), new("force", notation.ForceQuantity, notation.Decimals), new("sense"), new("found in step", Quantity.Number, 0)],
        [
            .. Enumerable.Range(0, worked.Forces.Count).Select(f => (IReadOnlyList<object?>)
                [worked.Names[f], worked.Forces[f], SenseOf(worked, f), (double)(StepOf(worked, f) + 1)]),
        ]));

    private static int StepOf(WorkedSolution worked, int force) => worked.Steps.TakeWhile(s => !s.Found.Contains(force)).Count();
}
