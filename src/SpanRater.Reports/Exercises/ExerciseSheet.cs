using System.Globalization;
using SpanRater.Files;

namespace SpanRater.Reports;

/// <summary>The question sheet of an exercise.</summary>
public static class ExerciseSheet
{
    /// <summary>Name of the figure's file.</summary>
    public const string FigureFile = "figure.png";

    /// <summary>Makes the page.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="units">Its units.</param>
    public static ResultPage Of(Exercise exercise, DisplayUnits units)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        ArgumentNullException.ThrowIfNull(units);
        bool moving = exercise.Level == ExerciseLevel.Hard;
        NewBridge bridge = Bridge(exercise, units);
        var blocks = new List<ResultBlock>
        {
            new ResultBlock.Heading(TitleOf(exercise), 1),
            new ResultBlock.Paragraph(bridge.Description),
            new ResultBlock.Paragraph("Pinned at the left end, on a roller at the right one. Joints are frictionless pins, members carry axial force only, and their own weight is left out. "
                + (moving ? "The floor spans simply from panel point to panel point." : "The loads are weights at panel points.")
                + (bridge.MembersPass ? " Where members cross without a joint they pass each other." : "")),
            new ResultBlock.Figure(moving ? "The truss" : "The truss and its loads", FigureFile),
        };
        if (!moving)
        {
            blocks.Add(new ResultBlock.Paragraph($"Loads: {string.Join(", ", exercise.Loads.Loads.Select(l => $"{Whole(units.From(Quantity.Force, -l.Up))} {units.Symbol(Quantity.Force)} at {l.Joint}"))}."));
        }
        else
        {
            blocks.Add(new ResultBlock.Paragraph("This train crosses, once in each direction, with its whole weight on the one truss; no impact."));
            blocks.Add(TrainTable(exercise.Train!));
        }

        blocks.Add(new ResultBlock.Heading("Find", 2));
        blocks.Add(new ResultBlock.Grid(new ResultTable(
            [new("question"), new("find"), new("unit")],
            [.. exercise.Items.Select((item, i) => (IReadOnlyList<object?>)[Number(i), ExerciseWords.QuantityOf(item.Question), UnitWords(item.Question, units)])])));
        blocks.Add(new ResultBlock.Heading("Answer", 2));
        blocks.Add(new ResultBlock.Paragraph(
            $"Fill in {ExerciseTables.AnswersFile}: a number under answer, and tension or compression under sense. Or leave sense blank and write compression with a minus sign. An upward reaction is positive"
            + (moving ? ", and an influence ordinate is positive where a load there pulls the member." : ".")));
        blocks.Add(new ResultBlock.Paragraph("An invented truss, for practice."));
        return new ResultPage(blocks, new ResultTable([], []), [], _ => { });
    }

    /// <summary>The title of an exercise.</summary>
    /// <param name="exercise">The exercise.</param>
    public static string TitleOf(Exercise exercise)
    {
        ArgumentNullException.ThrowIfNull(exercise);
        return string.Create(CultureInfo.InvariantCulture, $"Exercise {exercise.Seed}: {FormWords.WithArticle(exercise.Kind)}, {ExerciseWords.Of(exercise.Level)}");
    }

    /// <summary>The bridge of an exercise.</summary>
    /// <param name="exercise">The exercise.</param>
    /// <param name="units">Its units.</param>
    internal static NewBridge Bridge(Exercise exercise, DisplayUnits units) => new(
        exercise.Kind, exercise.Measures, exercise.Truss, Stability.Of(exercise.Truss), TitleOf(exercise), IsPony: false, exercise.Loads.Loads.Count == 0 ? [] : [exercise.Loads], units);

    private static ResultBlock.Grid TrainTable(AxleTrain train) => new(new ResultTable(
        [new("axle, from the front"), new("load", Quantity.Force, 0), new("behind the axle ahead", Quantity.Length, 1)],
        [.. train.Loads.Select((load, i) => (IReadOnlyList<object?>)[Number(i), load, i == 0 ? null : train.Gaps[i - 1].Least])]));

    private static string UnitWords(ExerciseQuestion question, DisplayUnits units) =>
        ExerciseTables.UnitOf(question, units) is { Length: > 0 } unit ? unit : "none (force per force)";

    private static string Whole(double force) => ResultTable.Figure(force, 0);

    private static string Number(int index) => (index + 1).ToString(CultureInfo.InvariantCulture);
}
