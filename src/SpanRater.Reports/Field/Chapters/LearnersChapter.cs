using System.Globalization;
using SpanRater.Files;
using SpanRater.Pictures;

namespace SpanRater.Reports;

/// <summary>The forces under the dead load worked joint by joint, a step at a time, with values that stay hidden until asked for.</summary>
internal static class LearnersChapter
{
    /// <summary>The chapter.</summary>
    public static ReportChapter Of(Bridge whole, DisplayUnits units)
    {
        Bridge bridge = ChecksChapter.OfTruss(whole, null);
        LoadAsked dead = LoadAsked.Case(bridge.DeadLoad!);
        Outcome<WorkedSolution> outcome = WorkedSolution.Of(bridge.Truss, dead.Loads);
        const string Title = "For learners: the dead load worked joint by joint";
        if (outcome.Value is not { } worked)
        {
            return new ReportChapter("learners", Title, [new ResultBlock.Paragraph($"There is no solution joint by joint of this truss under {dead.Title}. {RefusalWording.Sentence(outcome.Refusal!, bridge.Truss, units)}")]);
        }

        ForceNotation notation = dead.Notation(worked, units);
        ResultBlock.Paragraph? slack = WorkedSolutionPage.Slack(worked);
        string which = bridge.OnlyTruss is { } truss ? $", {bridge.Deck.TrussNames[truss]} truss" : "";
        return new ReportChapter("learners", Title,
        [
            new ResultBlock.Paragraph($"Every force under {dead.Title}{which}, in {worked.Steps.Count.ToString(CultureInfo.InvariantCulture)} steps. Take a step, draw its free body, find its forces, and only then look. Not printed: this is for the screen."),
            .. slack is null ? (ResultBlock[])[] : [slack],
        ])
        {
            Parts =
            [
                new ReportPart.Steps(
                [
                    new ReportPart.Fold("step-0", "Before the first step: can statics solve it, signs, directions, and what is zero at a glance", [new ReportPart.Said([.. WorkedSolutionPage.Beginning(worked, notation).Where(b => b != slack)])]),
                    .. Enumerable.Range(0, worked.Steps.Count).Select(s => StepOf(worked, s, notation)),
                ]),
            ],
        };
    }

    private static ReportPart.Fold StepOf(WorkedSolution worked, int step, ForceNotation notation)
    {
        string title = ReportPart.Brief(WorkedSolutionPage.TitleOf(worked, step));
        return new ReportPart.Fold(
            $"step-{step + 1}",
            title,
            [
                new ReportPart.Sketch(FreeBodyPicture.DrawingOfStep(worked, step, notation), $"Free body. {FreeBodyPicture.SignsOf(worked.Steps[step].Kind, notation)}", $"Free body of {title}. {StepWording.FreeBody(worked, worked.Steps[step], notation)}"),
                new ReportPart.Said([.. WorkedSolutionPage.Step(worked, step, notation, null).Skip(1)]),
            ]);
    }
}
